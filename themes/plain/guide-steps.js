// Where somebody is in a session: a list of plain steps and a clock go in, what to show, say and sound comes out. It knows no
// page. Every step ends at a fixed moment of the clock, so whoever asks late still gets it right.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const second = 1000;
  const between = ['transition', 'switch', 'rest', 'pause'];

  // After so long without a question nobody can have heard anything: the device slept.
  const asleep = 90 * second;

  // Later than this "back" begins the step again; before, it is the one before.
  const justBegun = 3 * second;

  gradus.isWork = function (step) {
    return between.indexOf(step.kind) < 0 && step.kind !== 'get-ready';
  };

  // The steps at which another exercise or another side begins; the first is not among them.
  gradus.gatesOf = function (steps) {
    let before = null;
    return steps.map(function (step) {
      if (between.indexOf(step.kind) >= 0) return false;
      const isOther = before !== null && (before.exercise !== step.exercise || before.side !== step.side);
      before = step;
      return isOther;
    });
  };

  // now: milliseconds that never go back. options: wait (whether to wait at each exercise and side), learnt (whether somebody
  // knows an exercise).
  gradus.guideOf = function (steps, now, options) {
    const gates = gradus.gatesOf(steps);
    const learnt = options.learnt || function () { return true; };
    let events = [];
    let seen = now();
    let isHalfSaid = false;
    const it = {
      at: 0, phase: 'ready', left: 0, ends: 0, wait: options.wait === true, extra: {}, softer: {}, out: [], did: {}, stopped: [],
      felt: null, ask: false
    };

    function lengthOf(i) {
      return (steps[i].seconds + (it.extra[i] || 0)) * second;
    }

    function isOut(i) {
      return it.out.indexOf(steps[i].exercise) >= 0;
    }

    function after(i) {
      for (let n = i + 1; n < steps.length; n++) if (!isOut(n)) return n;
      return -1;
    }

    function before(i) {
      for (let n = i - 1; n >= 0; n--) if (!isOut(n)) return n;
      return i;
    }

    // Of several steps that are over at once, only the last is told.
    function tell(type) {
      if (type === 'step') events = events.filter(function (e) { return e.type !== 'step' && e.type !== 'half'; });
      events.push({ type: type, at: it.at });
    }

    function finish(early) {
      it.phase = early ? 'ended' : 'done';
      it.left = 0;
      tell('end');
    }

    function stand(i, phase) {
      it.at = i;
      it.left = lengthOf(i);
      it.phase = phase;
      isHalfSaid = false;
    }

    function run(i, from) {
      stand(i, 'running');
      it.ends = from + it.left;
      seen = now();
      tell('step');
    }

    function mustWait(i) {
      return (gates[i] && it.wait) || ((gates[i] || i === after(-1)) && !learnt(steps[i].exercise));
    }

    function enter(i, from) {
      if (i < 0) finish(false);
      else if (mustWait(i)) {
        stand(i, 'waiting');
        tell('wait');
      } else run(i, from);
    }

    function leftNow() {
      return it.phase === 'running' ? Math.max(it.ends - now(), 0) : it.left;
    }

    function jump(i) {
      if (i < 0) finish(false);
      else if (it.phase === 'paused') {
        stand(i, 'paused');
        tell('step');
      } else run(i, now());
    }

    const guide = {
      steps: steps,
      state: it,
      leftNow: leftNow,
      lengthNow: function () { return lengthOf(it.at); },
      nextAt: function () { return after(it.at); },
      isOut: isOut,

      // Once; what comes after the first time does nothing.
      start: function () {
        if (it.phase !== 'ready') return false;
        enter(after(-1), now());
        return true;
      },
      tick: function () {
        if (it.phase !== 'running') return;
        const time = now();
        const gap = time - seen;
        if (gap > asleep) {
          it.left = Math.max(it.ends - seen, 0);
          it.phase = 'paused';
          seen = time;
          tell('slept');
          return;
        }
        seen = time;
        while (it.phase === 'running' && time >= it.ends) {
          if (gradus.isWork(steps[it.at])) it.did[it.at] = true;
          enter(after(it.at), it.ends);
        }
        if (it.phase === 'running' && !isHalfSaid && lengthOf(it.at) > 20 * second && it.ends - time <= lengthOf(it.at) / 2) {
          isHalfSaid = true;
          tell('half');
        }
      },
      pause: function () {
        guide.tick();
        if (it.phase !== 'running') return;
        it.left = leftNow();
        it.phase = 'paused';
        tell('pause');
      },
      // After a pause, or when somebody was waited for.
      go: function () {
        guide.tick();
        if (it.phase !== 'paused' && it.phase !== 'waiting') return;
        const wasWaiting = it.phase === 'waiting';
        it.phase = 'running';
        it.ends = now() + it.left;
        seen = now();
        tell(wasWaiting ? 'step' : 'go');
      },
      back: function () {
        guide.tick();
        if (['running', 'paused', 'waiting'].indexOf(it.phase) < 0) return;
        const isLate = it.phase !== 'waiting' && lengthOf(it.at) - leftNow() > justBegun;
        jump(isLate ? it.at : before(it.at));
      },
      forward: function () {
        guide.tick();
        if (['running', 'paused', 'waiting'].indexOf(it.phase) < 0) return;
        jump(after(it.at));
      },
      longer: function () {
        guide.tick();
        if (['running', 'paused', 'waiting'].indexOf(it.phase) < 0) return;
        it.extra[it.at] = (it.extra[it.at] || 0) + 10;
        it.left += 10 * second;
        it.ends += 10 * second;
        tell('longer');
      },
      // For the rest of the exercise; the time stays.
      softer: function () {
        guide.tick();
        if (['running', 'paused', 'waiting'].indexOf(it.phase) < 0) return;
        const exercise = steps[it.at].exercise;
        it.softer[exercise] = (it.softer[exercise] || 0) + 1;
        tell('softer');
      },
      // The step is over at once, and nothing goes on before somebody says how.
      hurts: function () {
        guide.tick();
        if (['running', 'paused', 'waiting'].indexOf(it.phase) < 0) return false;
        it.left = leftNow();
        it.phase = 'hurt';
        tell('hurts');
        return true;
      },
      // With less effort for the rest of the exercise, where it stopped: the step and its side are still to be done.
      easeOff: function (place, level) {
        if (it.phase !== 'hurt') return;
        const exercise = steps[it.at].exercise;
        it.softer[exercise] = (it.softer[exercise] || 0) + 1;
        feel(place, level);
        it.phase = 'paused';
        tell('softer');
      },
      // place, level: null where nobody says which. Gives what is left out.
      endExercise: function (place, level, likeness) {
        if (it.phase !== 'hurt') return [];
        const out = gradus.leftOutBy(steps, steps[it.at].exercise, gradus.hurtsAt(steps[it.at], place));
        note(place, level, likeness);
        guide.leaveOut(out);
        resumeAt(after(it.at));
        return out;
      },
      endSession: function (place, level, likeness) {
        guide.tick();
        if (it.phase === 'hurt') note(place, level, likeness);
        if (it.phase !== 'done' && it.phase !== 'ended') finish(true);
      },
      // At once, with nothing noted of the exercise: it was not the cause.
      abandon: function () {
        if (it.phase !== 'done' && it.phase !== 'ended') finish(true);
      },
      leaveOut: function (exercises) {
        for (const exercise of exercises) if (it.out.indexOf(exercise) < 0) it.out.push(exercise);
      },

      // What was told since somebody asked.
      take: function () {
        const told = events;
        events = [];
        return told;
      },
      // The steps that run without anybody being waited for, from where it is: how far off each begins (before now where it
      // has begun), and how long it is.
      ahead: function () {
        const found = [];
        let from = leftNow() - lengthOf(it.at);
        for (let i = it.at; i >= 0 && (i === it.at || !mustWait(i)); i = after(i)) {
          found.push({ at: i, from: from, length: lengthOf(i) });
          from += lengthOf(i);
        }
        return found;
      },
      msLeft: function () {
        if (it.phase === 'done' || it.phase === 'ended') return 0;
        let sum = it.phase === 'ready' ? 0 : leftNow();
        for (let i = it.phase === 'ready' ? after(-1) : after(it.at); i >= 0; i = after(i)) sum += lengthOf(i);
        return sum;
      },
      msInAll: function () {
        return steps.reduce(function (sum, step, i) { return isOut(i) ? sum : sum + lengthOf(i); }, 0);
      },

      snapshot: function () {
        return JSON.parse(JSON.stringify({
          at: it.at, left: leftNow(), wait: it.wait, extra: it.extra, softer: it.softer, out: it.out, did: it.did,
          stopped: it.stopped, felt: it.felt, ask: it.ask, hurt: it.phase === 'hurt'
        }));
      },
      // At the beginning of the step that it was at, and only when somebody says so. Where it hurt, that comes first.
      restore: function (kept) {
        if (it.phase !== 'ready' || !Number.isInteger(kept.at) || kept.at < 0 || kept.at >= steps.length) return false;
        const parts = ['wait', 'extra', 'softer', 'out', 'did', 'stopped', 'felt', 'ask'];
        for (const what of parts) if (kept[what]) it[what] = kept[what];
        const at = isOut(kept.at) ? after(kept.at) : kept.at;
        if (at < 0) return false;
        stand(at, kept.hurt === true ? 'hurt' : 'waiting');
        tell(kept.hurt === true ? 'hurts' : 'wait');
        return true;
      }
    };
    return guide;

    // The worst that was felt counts for the session.
    function feel(place, level) {
      if (typeof level !== 'number' || (it.felt && it.felt.level >= level)) return;
      it.felt = { level: level, where: place ? place.where : '', side: place ? place.side : '' };
    }

    function note(place, level, likeness) {
      feel(place, level);
      const step = steps[it.at];
      const where = { side: step.side || '', said: place !== null, places: gradus.hurtsAt(step, place) };
      it.stopped.push(Object.assign({ exercise: step.exercise, feel: likeness || '' }, where));
    }

    function resumeAt(i) {
      if (i < 0) {
        finish(false);
        return;
      }
      stand(i, 'waiting');
      tell('wait');
    }
  };
})();
