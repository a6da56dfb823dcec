// What an exercise loads, and what is left out when something hurts. It knows no page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // What a step loads: "knee left", or "lower-back" where there are no sides. Without a side at work it is both.
  gradus.placesOf = function (step) {
    return (step.loads || []).flatMap(function (load) {
      const parts = load.split(':');
      if (parts.length === 1) return [parts[0]];
      if (!step.side) return [parts[0] + ' left', parts[0] + ' right'];
      const opposite = step.side === 'left' ? 'right' : 'left';
      return [parts[0] + ' ' + (parts[1] === 'other' ? opposite : step.side)];
    });
  };

  // place: where, and the side; without a side it is both. Pain in the chest is everywhere.
  gradus.loadsPlace = function (step, place) {
    return gradus.loadsAny(gradus.placesOf(step), place);
  };

  // places: as placesOf gives them.
  gradus.loadsAny = function (places, place) {
    if (place.where === 'chest' || place.where === 'whole-body') return true;
    return places.some(function (loaded) {
      const parts = loaded.split(' ');
      return parts[0] === 'whole-body'
        || (parts[0] === place.where && (!place.side || parts.length === 1 || parts[1] === place.side));
    });
  };

  // Where it hurts in a step: where somebody says; where nobody does, all that it loads.
  gradus.hurtsAt = function (step, place) {
    return place ? [place] : gradus.placesOf(step).map(function (loaded) {
      const parts = loaded.split(' ');
      return { where: parts[0], side: parts[1] || '' };
    });
  };

  // The exercises that load one of those places.
  gradus.loadingAny = function (steps, places) {
    const found = steps.filter(function (step) { return places.some(function (one) { return gradus.loadsPlace(step, one); }); });
    return Array.from(new Set(found.map(function (step) { return step.exercise; })));
  };

  // Every exercise that is to be left out when that one hurts at those places.
  gradus.leftOutBy = function (steps, exercise, places) {
    return Array.from(new Set([exercise].concat(gradus.loadingAny(steps, places))));
  };
})();

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

// What is heard, said and drawn at a step: which sound when, which words, how high the gauge stands, whether to breathe in or
// out. It knows no page and no clock.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const second = 1000;
  const contractions = ['press', 'pull', 'raise'];

  // The last seconds that are counted with beeps, and how long a step must be for it.
  const counting = 3;
  const shortest = 5 * second;

  gradus.soundOf = function (step) {
    if (gradus.isWork(step)) return 'work';
    return step.kind === 'switch' ? 'switch' : 'rest';
  };

  // ahead: the steps that run on without waiting. Gives each sound with how far off it is; what is past is left out.
  gradus.soundsOf = function (ahead, steps, isEnd) {
    const sounds = [];
    for (const piece of ahead) {
      const over = piece.from + piece.length;
      sounds.push({ in: piece.from, sound: gradus.soundOf(steps[piece.at]), side: steps[piece.at].side || '' });
      for (let n = counting; n >= 1 && piece.length >= shortest; n--) {
        sounds.push({ in: over - n * second, sound: 'count', side: '' });
      }
    }
    const last = ahead[ahead.length - 1];
    if (last) sounds.push({ in: last.from + last.length, sound: isEnd ? 'end' : 'wait', side: '' });
    return sounds.filter(function (s) { return s.in >= 0; });
  };

  // 1 to 5, very gentle to very hard; 0 where no effort is asked for. softer: how often somebody asked for less.
  gradus.effortOf = function (step, softer) {
    const level = typeof step.percent === 'number' ? Math.ceil(step.percent / 20)
      : typeof step.felt === 'number' ? Math.ceil(step.felt / 2) : 0;
    return level === 0 ? 0 : Math.max(Math.min(level, 5) - (softer || 0), 1);
  };

  // Who holds the breath in a hard contraction raises the pressure of the blood: no pacer there, and the word to keep breathing.
  gradus.isContraction = function (step) {
    return contractions.indexOf(step.kind) >= 0 || gradus.effortOf(step, 0) >= 3;
  };

  gradus.isPaced = function (step) {
    return step.breaths > 0 && !gradus.isContraction(step);
  };

  // The share of a breath that goes in.
  const inwards = 0.4;

  // elapsed: milliseconds since the step began. The breath out is the longer part. Null where nothing is paced.
  gradus.breathAt = function (step, elapsed) {
    if (!gradus.isPaced(step)) return null;
    const length = step.seconds * second / step.breaths;
    const number = Math.min(Math.floor(elapsed / length) + 1, step.breaths);
    const share = elapsed / length - (number - 1);
    return { way: share < inwards ? 'in' : 'out', number: number, of: step.breaths };
  };

  // Milliseconds until the other way of the breath begins; without end where nothing is paced.
  gradus.untilBreath = function (step, elapsed) {
    if (!gradus.isPaced(step)) return Infinity;
    const length = step.seconds * second / step.breaths;
    const inside = elapsed % length;
    return (inside < inwards * length ? inwards * length : length) - inside;
  };

  // "2 minutes 30 seconds", as the page says it.
  gradus.spanOf = function (seconds, phrases) {
    const minutes = Math.floor(seconds / 60);
    const rest = seconds % 60;
    if (minutes === 0) return gradus.countedOf(phrases, 'seconds', seconds);
    if (rest === 0) return gradus.countedOf(phrases, 'minutes', minutes);
    return gradus.filled(phrases.minutesAndSecondsOther, {
      minutes: gradus.countedOf(phrases, 'minutes', minutes), seconds: gradus.countedOf(phrases, 'seconds', rest)
    });
  };

  // Whether only the effort is another, as on a ramp: its steps are too short for the name to be said again and again.
  gradus.isNextEffort = function (steps, i) {
    const step = steps[i];
    const last = steps[i - 1];
    const isOther = last !== undefined && (last.percent !== step.percent || last.felt !== step.felt);
    return isOther && gradus.effortOf(step, 0) > 0
      && ['kind', 'exercise', 'side', 'set'].every(function (name) { return last[name] === step[name]; });
  };

  // How much of a step there is to do: as the coach counts it, or the time that is left of it.
  function amountOf(guide, phrases) {
    const step = guide.steps[guide.state.at];
    const left = Math.ceil(guide.leftNow() / second);
    if (left === step.seconds && step.breaths > 0) return gradus.countedOf(phrases, 'breaths', step.breaths);
    if (left === step.seconds && step.reps > 0) return gradus.countedOf(phrases, 'repetitions', step.reps);
    return gradus.spanOf(left, phrases);
  }

  function phraseOf(kind) {
    return 'do' + kind.split('-').map(function (word) { return word[0].toUpperCase() + word.slice(1); }).join('');
  }

  // What is to be done now: "Press for 5 seconds, gentle".
  gradus.toldOf = function (guide, phrases) {
    const step = guide.steps[guide.state.at];
    const level = gradus.effortOf(step, guide.state.softer[step.exercise]);
    const told = gradus.filled(phrases[phraseOf(step.kind)], { time: amountOf(guide, phrases) });
    return level === 0 ? told : gradus.filled(phrases.doEffort, { do: told, effort: phrases['effort' + level] });
  };

  gradus.sideOf = function (step, phrases) {
    return step.side === 'left' ? phrases.sideLeft : step.side === 'right' ? phrases.sideRight : '';
  };

  // What comes next: of the same exercise what is done, of another one which it is.
  gradus.nextOf = function (steps, at, next, phrases) {
    if (next < 0) return phrases.nextEnd;
    const step = steps[next];
    const side = step.side === '' ? '' : ', ' + phrases[step.side];
    return gradus.filled(phrases.next, { what: step.exercise === steps[at].exercise ? step.words : step.title + side });
  };

  // For each step which exercise and side of the session it belongs to, counted from 1 without those that are left out.
  gradus.blocksOf = function (steps, isOut) {
    let number = 0;
    let last = null;
    return steps.map(function (step, i) {
      if (isOut(i)) return number;
      if (!last || last.exercise !== step.exercise || last.side !== step.side) number++;
      last = step;
      return number;
    });
  };

  // One sentence for what was told at once; empty where there is nothing new. What to do stands elsewhere.
  gradus.sayingOf = function (events, guide, phrases) {
    const said = [];
    for (const event of events) {
      const step = guide.steps[event.at];
      if (['half', 'end', 'longer', 'slept', 'hurts'].indexOf(event.type) >= 0) said.push(phrases[event.type]);
      if (event.type === 'softer') {
        const level = gradus.effortOf(step, guide.state.softer[step.exercise]);
        said.push(level === 0 ? phrases.softerPlain : gradus.filled(phrases.softer, { effort: phrases['effort' + level] }));
      }
    }
    return said.join(' ');
  };

  // Speech: the side and the exercise where they are others than before, what to do, and to keep breathing; on a ramp the effort
  // alone. "Left side. Chest turn. Hold for 8 slow breaths."
  gradus.spokenOf = function (guide, phrases) {
    const at = guide.state.at;
    const step = guide.steps[at];
    const last = guide.steps[at - 1];
    const level = gradus.effortOf(step, guide.state.softer[step.exercise]);
    if (gradus.isNextEffort(guide.steps, at)) return phrases['effort' + level] + '.';
    const named = [gradus.sideOf(step, phrases), step.title];
    const told = [gradus.toldOf(guide, phrases), gradus.isWork(step) && gradus.isContraction(step) ? phrases.keepBreathing : ''];
    const isOther = !last || last.exercise !== step.exercise || last.side !== step.side;
    const parts = guide.state.phase === 'waiting' ? named : isOther ? named.concat(told) : told;
    return parts.filter(Boolean).map(function (part) { return part + '.'; }).join(' ');
  };
})();

// Which of the sessions that the coach wrote it is today, by what the client answers. It makes up no dose, and knows no page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // What it is, and why: full, ease, or no session and why not: ill, pain, no-easier.
  // answers: pain 0 to 10, worse, ill, sore (places). versions: session, kind, seconds (null where it is not in this week), loads
  // (the places that each exercise loads). limits: easeOff and stop.
  gradus.versionFor = function (answers, versions, here, limits) {
    const open = versions.filter(function (v) { return v.seconds !== null; });
    const own = open.find(function (v) { return v.session === here; });
    if (answers.ill) return { session: null, why: 'ill' };
    if (answers.pain > limits.stop) return { session: null, why: 'pain' };
    if (answers.pain > limits.easeOff || answers.worse) return easier(open, own, answers.sore || []);
    if (!own) return { session: null, why: 'no-easier' };
    return { session: here, why: 'full' };
  };

  function first(versions, own, kind) {
    if (own && own.kind === kind) return own;
    return versions.find(function (v) { return v.kind === kind; });
  }

  // Nothing that loads a sore place: a session of which nothing is left then is none.
  function easier(versions, own, sore) {
    const left = versions.filter(function (v) {
      return !v.loads || v.loads.some(function (places) {
        return !sore.some(function (one) { return gradus.loadsAny(places, one); });
      });
    });
    const still = left.indexOf(own) < 0 ? null : own;
    const found = first(left, still, 'flare') || first(left, still, 'short');
    return found ? { session: found.session, why: 'ease' } : { session: null, why: 'no-easier' };
  }

  // What is asked before a session, as long as it is the same day: nothing twice.
  gradus.isFresh = function (kept, now, hours) {
    return kept !== null && typeof kept === 'object' && Number.isFinite(kept.time)
      && Math.abs(now - kept.time) <= hours * 60 * 60 * 1000;
  };
})();

// Reads from a page what the guided session plays: the steps of this week's list, what each exercise loads, the versions of
// the session and the limits of pain.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // Of the page itself: what the guided session has copied from it does not count.
  function all(selector, inside) {
    return Array.from(inside.querySelectorAll(selector))
      .filter(function (one) { return inside.closest('dialog') || !one.closest('dialog'); });
  }

  // "press E l p50 s1": kind and letter, then what there is of side, percent, felt effort, breaths, set, repetitions and load.
  function partsOf(text) {
    const load = / w(.*)$/.exec(text);
    const said = (load ? text.slice(0, load.index) : text).split(' ');
    const parts = { kind: said[0], letter: said[1], side: '', load: load ? load[1] : '' };
    for (const one of said.slice(2)) {
      if (one === 'l' || one === 'r') parts.side = one === 'l' ? 'left' : 'right';
      else parts[one[0]] = Number(one.slice(1));
    }
    return parts;
  }

  function textOf(element) {
    return element ? element.textContent.replace(/\s+/g, ' ').trim() : '';
  }

  // The part of the document that is one page: all of it, or its section where all pages are one.
  gradus.pageAround = function (element) {
    return element.closest('[data-page]') || document.querySelector('main');
  };

  gradus.articleOf = function (root, exercise) {
    return all('[data-about]', root).find(function (article) { return article.getAttribute('data-about') === exercise; }) || null;
  };

  gradus.titleOf = function (root, exercise) {
    const article = gradus.articleOf(root, exercise) || gradus.articleOf(document.querySelector('main'), exercise);
    return article ? textOf(article.querySelector('h2 a')) : exercise.replace(/-/g, ' ');
  };

  function letterOf(article) {
    return article.querySelector('[data-dose]').getAttribute('data-dose');
  }

  // What it says: the letter and what is done, then how, then the time.
  function stepOf(item, root) {
    const parts = partsOf(item.getAttribute('data-step'));
    const article = all('[data-about]', root).find(function (one) { return letterOf(one) === parts.letter; });
    const time = item.querySelector('time');
    const [whole, work] = [textOf(item).slice(0, -textOf(time).length).trim(), item.querySelector('b')];
    const said = work ? textOf(work) : whole;
    const named = parts.letter + ' ';
    const plain = said.replace(/[\u2068\u2069]/g, '');
    const detail = whole.slice(said.length).trim();
    const title = textOf(article.querySelector('h2 a'));
    const words = plain.indexOf(named) === 0 ? plain.slice(named.length) : plain;
    return {
      kind: parts.kind,
      letter: parts.letter,
      exercise: article.getAttribute('data-about'),
      side: parts.side,
      percent: 'p' in parts ? parts.p : null,
      felt: 'f' in parts ? parts.f : null,
      breaths: parts.b || 0,
      set: parts.s || 0,
      reps: parts.n || 0,
      load: parts.load,
      seconds: Number(/^PT(\d+)S$/.exec(time.getAttribute('datetime'))[1]),
      title: title,
      words: words,
      what: title + ': ' + words,
      detail: [detail, parts.load].filter(Boolean).join(', '),
      loads: (article.getAttribute('data-loads') || '').split(' ').filter(Boolean)
    };
  }

  // The steps of that week; none where nothing is planned in it.
  gradus.stepsOf = function (root, week) {
    const part = all('.weeks[data-weeks]', root)
      .find(function (weeks) { return weeks.getAttribute('data-weeks').split(' ').indexOf(String(week)) >= 0; });
    return part ? all('[data-step]', part).map(function (item) { return stepOf(item, root); }) : [];
  };

  gradus.versionsOf = function (dialog, week) {
    return all('[data-version]', dialog).map(function (item) {
      const length = item.getAttribute('data-lengths').split(' ')
        .map(function (pair) { return pair.split('='); })
        .find(function (pair) { return pair[0] === String(week); });
      return {
        session: Number(item.getAttribute('data-version')),
        kind: item.getAttribute('data-kind'),
        loads: (item.getAttribute('data-loads') || '').split(' ').filter(Boolean).map(function (exercise) {
          return exercise.split('=')[1].split(',').filter(Boolean).map(function (place) { return place.replace(':', ' '); });
        }),
        seconds: length ? Number(length[1]) : null
      };
    });
  };

  gradus.limitsOf = function () {
    const limits = document.querySelector('[data-pain]').getAttribute('data-pain').split(' ').map(Number);
    return { easeOff: limits[0], stop: limits[1] };
  };

  // What stands there in every week, without the numbers that a script put in for this one.
  function writtenIn(element) {
    const copy = element.cloneNode(true);
    for (const one of copy.querySelectorAll('.this-week, [data-dose] *')) one.remove();
    return textOf(copy);
  }

  // A sum of everything that this page tells somebody to do and to mind, and of how long it is good.
  gradus.editionOf = function (root) {
    const end = document.querySelector('[data-good-until]');
    const texts = all('.cautions, .exercise, [data-step]', root).map(writtenIn);
    return gradus.checkSum(texts.concat([end ? end.getAttribute('data-good-until') : '']).join('\n'));
  };

  function isOf(caution, letter) {
    const belongs = caution.querySelector('.belongs');
    return !belongs || belongs.textContent.split(/[^A-Z]+/).indexOf(letter) >= 0;
  }

  // Copies of the cautions of an exercise, kind by kind; one without letters is for all of them.
  gradus.signsOf = function (root, letter) {
    return all('.cautions .kind', root).map(function (kind) {
      const copy = gradus.copyOf(kind);
      for (const caution of all('.caution', copy)) if (!isOf(caution, letter)) caution.remove();
      return copy;
    }).filter(function (copy) { return copy.querySelector('.caution'); });
  };

  // A sum of each caution that is shown: what is not done yet has signs that nobody has read.
  gradus.shownCautions = function (root) {
    return all('.cautions .caution', root)
      .filter(function (one) { return !one.closest('[hidden]'); })
      .map(function (one) { return gradus.checkSum(textOf(one)); });
  };

  function cautionsRead(ui) {
    const read = (gradus.kept('read') || {})[ui.session];
    return read && read.edition === ui.edition && Array.isArray(read.cautions) ? read.cautions : [];
  }

  // Whether everything that the page shows to mind today was read.
  gradus.isRead = function (ui) {
    const read = cautionsRead(ui);
    return gradus.shownCautions(ui.root).every(function (sum) { return read.indexOf(sum) >= 0; });
  };

  // Who presses the button below the cautions has read them.
  gradus.noteRead = function (ui) {
    const read = Object.assign({}, gradus.kept('read'));
    read[ui.session] = { edition: ui.edition, cautions: gradus.shownCautions(ui.root) };
    gradus.keep('read', read);
  };

  gradus.sumOfExercise = function (root, exercise) {
    return gradus.checkSum(writtenIn(gradus.articleOf(root, exercise)));
  };

  // A copy to read: without what names or leads somewhere, since it stands on the page already.
  gradus.copyOf = function (element) {
    const copy = element.cloneNode(true);
    for (const one of [copy].concat(all('[id], [aria-labelledby], [data-weeks]', copy))) {
      for (const name of ['id', 'aria-labelledby', 'data-weeks', 'data-about']) one.removeAttribute(name);
    }
    for (const link of all('a:not([href^="tel:"])', copy)) link.replaceWith.apply(link, Array.from(link.childNodes));
    return copy;
  };

  // Pain there is never trained with, however little it is.
  gradus.isAlarming = function (place, level) {
    return place !== null && place.where === 'chest' && level !== 0;
  };

  // From 0 to 10; null where nothing is chosen.
  gradus.levelIn = function (part) {
    const level = part.querySelector('[data-level]').value;
    return level === '' ? null : Number(level);
  };

  // The first question of a form that is not answered, with the field that answers it; null where none is left. How bad the
  // morning after was may be left open: that it was worse is enough to do less today.
  gradus.missingIn = function (form) {
    for (const part of form.querySelectorAll('fieldset:not([hidden])')) {
      const choices = part.querySelectorAll('input[type="radio"]');
      const isOpen = choices.length > 0 && !part.querySelector('input:checked');
      if (isOpen) return { question: textOf(part.querySelector('legend')), field: choices[0] };
      if (part.hasAttribute('data-worse-where')) continue;
      for (const field of part.querySelectorAll('[data-where], [data-level]')) {
        if (field.value === '') return { question: textOf(field.closest('label').firstChild), field: field };
      }
    }
    return null;
  };

  // "knee, left", in the words of the page.
  gradus.placeWords = function (part) {
    const names = gradus.placeIn(part).side ? ['[data-where]', '[data-side]'] : ['[data-where]'];
    const fields = names.map(function (name) { return part.querySelector(name); });
    return fields.map(function (field) { return textOf(field.selectedOptions[0]); }).join(', ');
  };

  // What is written where somebody says where it hurts; null where nothing is.
  gradus.placeIn = function (part) {
    const where = part.querySelector('[data-where]');
    const side = part.querySelector('[data-side]');
    if (where.value === '') return null;
    const isOneSide = where.selectedOptions[0].hasAttribute('data-sided') && side.value !== 'both';
    return { where: where.value, side: isOneSide ? side.value : '' };
  };
})();

// Turns the figures of an exercise to the side at work: the mirror image, with its letter upright in it.
(function () {
  'use strict';

  // side: left or right; empty where no side is at work, and the figures stay as the page has them.
  window.gradus.turnFigures = function (root, side) {
    for (const figure of root.querySelectorAll('[data-letters]')) {
      const shape = figure.querySelector('use');
      const letter = figure.querySelector('text');
      const isLeft = side === 'left';
      if (!side || isLeft === shape.hasAttribute('transform')) continue;
      const paper = figure.viewBox.baseVal;
      const across = 2 * paper.x + paper.width;
      if (isLeft) shape.setAttribute('transform', 'matrix(-1 0 0 1 ' + across + ' 0)');
      else shape.removeAttribute('transform');
      letter.setAttribute('x', across - letter.getAttribute('x'));
      letter.textContent = figure.dataset.letters.split(' ')[isLeft ? 0 : 1];
    }
  };

  // Of what is to be done only what tells of this kind of step, under its own number; all of it where nothing does. Whether
  // something does.
  window.gradus.tellOne = function (doing, kind) {
    const items = Array.from(doing.querySelectorAll('li'));
    const isOf = function (item) { return (item.dataset.asks || '').split(' ').indexOf(kind) >= 0; };
    const isAny = items.some(isOf);
    items.forEach(function (item, i) {
      item.hidden = isAny && !isOf(item);
      if (item.parentElement.localName === 'ol') item.value = i + 1;
    });
    return isAny;
  };
}());

// What somebody says where it hurts, and what follows from it. It knows the form alone.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // place: where and the side, null where nobody says; level: 0 to 10 or null; feel: what it is like, empty where nobody says.
  gradus.hurtIn = function (form) {
    const chosen = form.querySelector('[name="feel"]:checked');
    return { place: gradus.placeIn(form), level: gradus.levelIn(form), feel: chosen ? chosen.value : '' };
  };

  // Only with a dull pain of which the practice says that it is little; in any other there are two safer ways.
  gradus.mayEaseOff = function (hurt) {
    return hurt.level !== null && hurt.level <= gradus.limitsOf().easeOff && hurt.place !== null && hurt.feel === 'dull'
      && !gradus.isAlarming(hurt.place, hurt.level);
  };

  // What a clinician should see on the same day.
  gradus.isForToday = function (feel) {
    return ['numb', 'snap', 'swollen', 'no-weight'].indexOf(feel) >= 0;
  };

  // What the coach is asked about before the next session.
  gradus.isForCoach = function (feel) {
    return gradus.isForToday(feel) || feel === 'sharp' || feel === 'giving-way';
  };
})();

// How long a session took, as its load is reckoned: from start to end, without the pauses of more than five minutes. It knows no
// page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const minute = 60000;
  const longPause = 5 * minute;

  // now: milliseconds of the device's clock, which goes on while the page is closed. kept: what snapshot gave; null at the start.
  gradus.watchOf = function (kept, now) {
    const it = Object.assign({ start: now, lost: 0, still: null }, kept);

    function lostUntil(moment) {
      const still = it.still === null ? 0 : moment - it.still;
      return it.lost + (still > longPause ? still : 0);
    }

    return {
      start: function () { return it.start; },
      // Whether nothing runs from now on.
      be: function (isStill, moment) {
        if (isStill === (it.still !== null)) return;
        it.lost = lostUntil(moment);
        it.still = isStill ? moment : null;
      },
      minutes: function (moment) { return Math.max(Math.round((moment - it.start - lostUntil(moment)) / minute * 2) / 2, 0); },
      snapshot: function (moment) { return Object.assign({}, it, { still: it.still === null ? moment : it.still }); }
    };
  };
})();

// Sound, speech, vibration, a screen that stays awake, and a tick when the page is hidden. A browser may have none of it, and
// nothing waits for any of it.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // For each sound its tones: hertz, when it begins and how long it is, in seconds.
  const tones = {
    work: [[660, 0, 0.22]],
    'work left': [[660, 0, 0.22]],
    'work right': [[660, 0, 0.14], [660, 0.2, 0.14]],
    rest: [[330, 0, 0.4]],
    switch: [[440, 0, 0.14], [660, 0.16, 0.14], [440, 0.32, 0.2]],
    wait: [[392, 0, 0.15], [392, 0.25, 0.15]],
    count: [[880, 0, 0.08]],
    end: [[523, 0, 0.2], [659, 0.22, 0.2], [784, 0.44, 0.5]]
  };
  const shakes = { work: [200], rest: [80], switch: [80, 80, 80, 80, 80], wait: [80, 120, 80], end: [300, 120, 300] };

  // Two clocks never go quite alike. Further apart than this, in seconds, what was planned on the one is planned again.
  const apart = 0.02;

  // No loudspeaker is later than this, in seconds.
  const likely = 0.5;

  let audio = null;
  let gate = null;
  let changed = null;
  let between = 0;

  // Only after a click; whether sound can ever come.
  function wake() {
    if (audio) return true;
    const Audio = window.AudioContext || window.webkitAudioContext;
    if (!Audio) return false;
    try {
      audio = new Audio();
      audio.onstatechange = function () { if (changed) changed(); };
    } catch {
      audio = null;
      return false;
    }
    return true;
  }

  // The answer may never come, so nobody waits for it.
  function stir() {
    if (audio && audio.state !== 'running' && audio.resume) {
      const coming = audio.resume();
      if (coming && coming.catch) coming.catch(function () { });
    }
  }

  // How far the clock of the sound that is heard now is ahead of the page's, in seconds. A browser that cannot say which one
  // is heard gives the one that it works at.
  function lead() {
    const worked = audio.currentTime - window.performance.now() / 1000;
    const mark = audio.getOutputTimestamp ? audio.getOutputTimestamp() : null;
    if (!mark || !(mark.performanceTime > 0)) return worked;
    const heard = mark.contextTime - mark.performanceTime / 1000;
    return Math.abs(heard - worked) < likely ? heard : worked;
  }

  function cut() {
    if (gate) gate.disconnect();
    gate = null;
  }

  function tone(hertz, at, length, pan) {
    const source = audio.createOscillator();
    const swell = audio.createGain();
    source.frequency.value = hertz;
    swell.gain.setValueAtTime(0, at);
    swell.gain.linearRampToValueAtTime(1, at + 0.01);
    swell.gain.setValueAtTime(1, Math.max(at + length - 0.02, at + 0.01));
    swell.gain.linearRampToValueAtTime(0, at + length);
    source.connect(swell);
    if (pan !== 0 && audio.createStereoPanner) {
      const panner = audio.createStereoPanner();
      panner.pan.value = pan;
      swell.connect(panner).connect(gate);
    } else swell.connect(gate);
    source.start(at);
    source.stop(at + length + 0.02);
  }

  // sounds: what, how many milliseconds off, on which side. They go by the clock of the sound from here on, until they are cut.
  function schedule(sounds, volume) {
    if (!audio) return;
    cut();
    gate = audio.createGain();
    gate.gain.value = volume;
    gate.connect(audio.destination);
    between = lead();
    const now = window.performance.now() / 1000 + between;
    for (const sound of sounds) {
      const own = tones[sound.sound + ' ' + sound.side] || tones[sound.sound];
      const pan = sound.side === 'left' ? -0.8 : sound.side === 'right' ? 0.8 : 0;
      for (const part of own) tone(part[0], Math.max(now + sound.in / 1000 + part[1], audio.currentTime), part[2], pan);
    }
  }

  gradus.sound = {
    wake: function () {
      const can = wake();
      stir();
      return can;
    },
    isRunning: function () { return audio !== null && audio.state === 'running'; },
    hasDrifted: function () { return gate !== null && gradus.sound.isRunning() && Math.abs(lead() - between) > apart; },
    whenChanged: function (then) { changed = then; },
    schedule: function (sounds, volume) {
      try {
        schedule(sounds, volume);
      } catch {
        cut();
      }
    },
    volume: function (volume) { if (gate) gate.gain.value = volume; },
    cut: cut,
    test: function (volume) {
      const order = ['work', 'rest', 'switch', 'count', 'count', 'count', 'end'];
      gradus.sound.schedule(order.map(function (sound, i) { return { sound: sound, in: 100 + i * 900, side: '' }; }), volume);
    }
  };

  gradus.speech = {
    isThere: function () { return Boolean(window.speechSynthesis) && typeof window.SpeechSynthesisUtterance === 'function'; },
    say: function (text) {
      if (!gradus.speech.isThere()) return;
      try {
        const words = new window.SpeechSynthesisUtterance(text);
        words.lang = document.documentElement.lang;
        window.speechSynthesis.cancel();
        window.speechSynthesis.speak(words);
      } catch { /* It stays silent. */ }
    },
    hush: function () {
      try {
        if (gradus.speech.isThere()) window.speechSynthesis.cancel();
      } catch { /* It was silent. */ }
    }
  };

  gradus.vibration = {
    isThere: function () { return typeof window.navigator.vibrate === 'function'; },
    shake: function (sound) {
      try {
        if (gradus.vibration.isThere() && shakes[sound]) window.navigator.vibrate(shakes[sound]);
      } catch { /* It lies still. */ }
    }
  };

  gradus.touch = {
    isThere: function () { return window.matchMedia('(pointer: coarse)').matches; }
  };

  let isAwake = false;
  let lock = null;

  function askForLight() {
    if (!isAwake || lock || document.hidden || !gradus.awake.isThere()) return;
    window.navigator.wakeLock.request('screen').then(function (given) {
      lock = given;
      given.addEventListener('release', function () { lock = null; });
      if (!isAwake) given.release();
    }).catch(function () { });
  }

  gradus.awake = {
    isThere: function () { return Boolean(window.navigator.wakeLock); },
    keep: function () {
      isAwake = true;
      askForLight();
    },
    release: function () {
      isAwake = false;
      if (lock) lock.release().catch(function () { });
    }
  };

  // A hidden page's own timers come once a second, then once a minute; those of a worker go on.
  const longest = 100;
  let tick = null;
  let slow = 0;
  let worker = null;

  // Asks, and asks again when there is something new to see, or a little sooner.
  function ask() {
    if (tick) slow = window.setTimeout(ask, Math.min(tick(), longest));
  }

  function tickHidden() {
    if (worker || !tick || typeof window.Worker !== 'function') return;
    try {
      const text = 'setInterval(function () { postMessage(0); }, 250);';
      const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
      worker = new Worker(address);
      worker.onmessage = function () { if (tick) tick(); };
      URL.revokeObjectURL(address);
    } catch {
      worker = null;
    }
  }

  function seen() {
    if (document.hidden) tickHidden();
    else {
      if (worker) worker.terminate();
      worker = null;
      askForLight();
      stir();
      if (tick) tick();
    }
  }

  document.addEventListener('visibilitychange', seen);

  gradus.ticker = {
    // then: gives the milliseconds until it wants to be asked again.
    start: function (then) {
      tick = then;
      window.clearTimeout(slow);
      ask();
      if (document.hidden) tickHidden();
    },
    stop: function () {
      tick = null;
      window.clearTimeout(slow);
      if (worker) worker.terminate();
      worker = null;
    }
  };
})();

// A sign that cannot wait: the number to call, and no other way on. Whatever runs is over, and the reason is noted.
(function () {
  'use strict';

  const gradus = window.gradus;

  function show(ui, isKept) {
    ui.fill('alarm-kept', isKept ? ui.phrases.alarmNoted : '');
    ui.show('alarm');
  }

  // What every row begins with. time: when the session began, in milliseconds after 1970.
  gradus.rowAbout = function (ui, time) {
    const own = gradus.versionsOf(ui.dialog, ui.week).find(function (version) { return version.session === ui.session; });
    return {
      day: gradus.isoOf(new Date(time)), start: gradus.clockOf(time), week: ui.week, session: ui.session,
      kind: own && own.kind ? own.kind : 'full', edition: gradus.log.edition, course: gradus.log.course
    };
  };

  gradus.alarmIn = function (reason) {
    return { done: false, alarm: reason };
  };

  gradus.hadAlarm = function (row) {
    return row !== null && Boolean(row.alarm);
  };

  // Before the start there is no session yet, so there is one that was stopped.
  function note(ui, reason) {
    gradus.keep('run', null);
    gradus.keep('today', null);
    ui.row = Object.assign(gradus.rowAbout(ui, Date.now()), gradus.alarmIn(reason), { exercises: [] });
    return gradus.log.add(ui.row);
  }

  // reason: chest, breath, faint, weakness, speech, sight, headache or saddle.
  gradus.alarm = function (ui, reason) {
    if (ui.actions.abandon) {
      ui.alarm = reason;
      ui.actions.abandon();
    } else show(ui, note(ui, reason));
  };

  gradus.showAlarm = show;
})();

// What comes before the start: go on where somebody was, the questions, and what follows from the answers.
(function () {
  'use strict';

  const gradus = window.gradus;
  const hours = 3;

  // What was read and answered, also where the browser keeps nothing.
  const here = {};

  function keep(what, value) {
    here[what] = value;
    gradus.log.keep(what, value);
  }

  function kept(what) {
    return what in here ? here[what] : gradus.log.kept(what);
  }

  // The exercises that were stopped last time, whichever session it was.
  function stoppedBefore() {
    const row = gradus.log.last();
    return row && Array.isArray(row.exercises) ? row.exercises.filter(function (one) { return one.stopped; }) : [];
  }

  // Where it hurt then, as far as it is known: a log that was opened from a file has one place, and what nobody said is what
  // this session's own steps load.
  function placesThen(ui, one) {
    if (Array.isArray(one.places)) return one.places;
    if (one.where) return [{ where: one.where, side: one.side || '' }];
    const steps = ui.steps.filter(function (step) { return step.exercise === one.exercise; });
    const hurting = steps.find(function (step) { return step.side === (one.side || ''); }) || steps[0];
    return hurting ? gradus.hurtsAt(hurting, null) : [];
  }

  gradus.kept = kept;
  gradus.keep = keep;

  // The beginning: opens the dialog at what has to come first.
  gradus.lead = function (ui) {
    ui.read();
    const run = kept('run');
    const isOfToday = gradus.isFresh(run, Date.now(), hours) && run.session === ui.session && run.edition === ui.edition;
    const step = isOfToday ? ui.stepsIn(run.week)[run.snap.at] : null;
    if (step) {
      const isOut = function (i) { return run.snap.out.indexOf(ui.stepsIn(run.week)[i].exercise) >= 0; };
      const number = gradus.blocksOf(ui.stepsIn(run.week), isOut)[run.snap.at];
      ui.fill('at-step', gradus.filled(ui.phrases.atStep, { n: number, what: step.what }));
      ui.show('resume');
    } else ask(ui);
  };

  // Who is sent to a session is led at once, or to the cautions first.
  gradus.leadOrRead = function (ui) {
    ui.read();
    if (gradus.isRead(ui)) {
      gradus.lead(ui);
      return;
    }
    const note = ui.root.querySelector('[data-lead-unread]');
    const isNew = note !== null && (kept('read') || {})[ui.session] !== undefined;
    if (isNew) note.hidden = false;
    window.location.replace('#' + (isNew ? note : ui.root.querySelector('.cautions h2')).id);
  };

  // What cannot wait, and whether anything is other than usual: in one look, with one press.
  function ask(ui) {
    const answered = kept('today');
    if (gradus.isFresh(answered, Date.now(), hours) && answered.session === ui.session) {
      getReady(ui, answered.still || [], answered.sore || []);
      return;
    }
    ui.show('today');
  }

  // isAny: whether something was true; otherwise only what is left over from last time is asked.
  function askMore(ui, isAny) {
    const form = ui.form('questions');
    form.reset();
    const one = form.querySelector('[data-still]');
    for (const old of form.querySelectorAll('[data-still]')) if (old !== one) old.remove();
    stoppedBefore().forEach(function (stopped, i) {
      const again = one.cloneNode(true);
      again.hidden = false;
      again.dataset.still = stopped.exercise;
      const exercise = gradus.titleOf(ui.root, stopped.exercise);
      again.querySelector('legend').textContent = gradus.filled(ui.phrases.stillHurts, { exercise: exercise });
      for (const choice of again.querySelectorAll('input')) choice.name = 'still-' + i;
      const isTold = gradus.isForCoach(stopped.feel) ? 'yes' : 'no';
      for (const choice of again.querySelectorAll('[data-spoken]')) choice.hidden = choice.dataset.spoken !== isTold;
      one.after(again);
    });
    form.querySelector('[data-cleared]').hidden = !gradus.hadAlarm(gradus.log.last());
    for (const asked of form.querySelectorAll('[data-asked]')) asked.hidden = !isAny;
    askWhere(form);
    form.querySelector('[data-missing]').textContent = '';
    if (form.querySelectorAll('fieldset:not([hidden])').length > 0) ui.show('questions');
    else answer(ui);
  }

  // Where it hurts is asked as soon as somebody says that it does, or did on that morning.
  function askWhere(form) {
    form.querySelector('[data-pain-where]').hidden = reply(form, 'pain') !== 'yes';
    form.querySelector('[data-worse-where]').hidden = reply(form, 'worse') !== 'yes';
  }

  // Whether all is answered; what is not is named, and the keyboard is there.
  function isWhole(ui, form) {
    const missing = gradus.missingIn(form);
    const line = form.querySelector('[data-missing]');
    line.textContent = missing ? gradus.filled(ui.phrases.missing, { question: missing.question }) : '';
    if (missing) missing.field.focus();
    return missing === null;
  }

  function reply(form, name) {
    const chosen = form.querySelector('input[name="' + name + '"]:checked');
    return chosen ? chosen.value : null;
  }

  function answersIn(ui, form) {
    const stills = Array.from(form.querySelectorAll('[data-still]:not([hidden])'));
    const isStill = function (one) {
      return stills.some(function (s) {
        return s.dataset.still === one.exercise && s.querySelector('input:checked').value !== 'no';
      });
    };
    const hurts = reply(form, 'pain') === 'yes';
    const now = form.querySelector('[data-pain-where]');
    const then = form.querySelector('[data-worse-where]');
    const level = hurts ? gradus.levelIn(now) : 0;
    return {
      pain: level,
      after: then.hidden ? null : Object.assign({ level: gradus.levelIn(then) }, gradus.placeIn(then)),
      morning: reply(form, 'worse') || 'no',
      worse: reply(form, 'worse') === 'yes',
      ill: reply(form, 'ill') === 'yes',
      isUncleared: !form.querySelector('[data-cleared]').hidden && reply(form, 'cleared') === 'no',
      place: level > 0 ? gradus.placeIn(now) : null,
      still: stoppedBefore().filter(isStill)
    };
  }

  // What is spared today: where it hurts more than a little, and what was worse the morning after.
  function soreOf(ui, answers, limits) {
    const row = gradus.log.last();
    const now = answers.place && (answers.pain > limits.easeOff || answers.worse) ? [answers.place] : [];
    const after = answers.after && answers.after.where ? answers.after : row;
    const then = answers.worse && after && after.where ? [{ where: after.where, side: after.side || '' }] : [];
    const stopped = answers.worse ? stoppedBefore().flatMap(function (one) { return placesThen(ui, one); }) : [];
    return now.concat(then, stopped);
  }

  function noteMorning(answers) {
    const row = gradus.log.last();
    if (!row || row.day >= gradus.today() || row.morning || answers.morning === 'first') return;
    gradus.log.change(Object.assign({}, row, { morning: answers.morning }, answers.after ? { after: answers.after } : {}));
  }

  // What still hurts, and what loads the same place, is left out today. So is what loads a place that is sore.
  function leftOut(ui, still, sore) {
    return still
      .flatMap(function (one) { return gradus.leftOutBy(ui.steps, one.exercise, placesThen(ui, one)); })
      .concat(gradus.loadingAny(ui.steps, sore));
  }

  // Which reason of the log each of those is that keep somebody from training.
  const reasons = { alarm: 'health', ill: 'ill', pain: 'pain', 'no-easier': 'pain' };

  function notToday(ui, why) {
    gradus.noteSkip(ui, reasons[why]);
    gradus.showNotToday(ui, why);
  }

  gradus.showNotToday = function (ui, why) {
    sayWhy(ui.panel('not-today'), why);
    ui.show('not-today');
  };

  function answer(ui) {
    const form = ui.form('questions');
    if (!isWhole(ui, form)) return;
    const answers = answersIn(ui, form);
    if (gradus.isAlarming(answers.place, answers.pain)) {
      gradus.alarm(ui, 'chest');
      return;
    }
    noteMorning(answers);
    const limits = gradus.limitsOf();
    answers.sore = soreOf(ui, answers, limits);
    const isChest = function (one) { return placesThen(ui, one).some(function (place) { return place.where === 'chest'; }); };
    if (answers.still.some(isChest)) {
      gradus.alarm(ui, 'chest');
      return;
    }
    if (answers.isUncleared) {
      notToday(ui, 'alarm');
      return;
    }
    const versions = gradus.versionsOf(ui.dialog, ui.week);
    const found = gradus.versionFor(answers, versions, ui.session, limits);
    if (found.session === null) notToday(ui, found.why);
    else if (found.session === ui.session) {
      keep('today', todayOf(ui.session, answers));
      getReady(ui, answers.still, answers.sore);
    } else offer(ui, found, answers, versions.find(function (v) { return v.session === found.session; }));
  }

  // What was answered before a session, as it is kept.
  function todayOf(session, answers) {
    const pain = Object.assign({ level: answers.pain }, answers.place);
    return { time: Date.now(), session: session, still: answers.still, sore: answers.sore, pain: pain };
  }

  function offer(ui, found, answers, version) {
    const panel = ui.panel('other');
    sayWhy(panel, found.why);
    ui.next = todayOf(found.session, answers);
    for (const item of panel.querySelectorAll('[data-version]')) {
      item.hidden = Number(item.dataset.version) !== found.session;
      if (item.hidden) continue;
      const link = item.querySelector('a');
      link.dataset.name = link.dataset.name || link.textContent;
      const time = gradus.spanOf(version.seconds, ui.phrases);
      link.textContent = gradus.filled(ui.phrases.take, { session: link.dataset.name, time: time });
    }
    ui.show('other');
  }

  function sayWhy(panel, because) {
    for (const why of panel.querySelectorAll('[data-because]')) why.hidden = why.dataset.because !== because;
  }

  // What hurts is left out of the other session too.
  function take(ui, event, link) {
    keep('today', ui.next);
    if (link.getAttribute('href')[0] !== '#') {
      link.hash = 'lead';
      return;
    }
    event.preventDefault();
    ui.close();
    window.location.hash = link.getAttribute('href');
    gradus.leadOrRead(gradus.guides[ui.next.session]);
  }

  function getReady(ui, still, sore) {
    const out = leftOut(ui, still, sore);
    ui.still = still;
    ui.leaveOut = out;
    const guide = gradus.guideOf(ui.steps, gradus.clock, {});
    guide.leaveOut(out);
    if (guide.msLeft() === 0) {
      notToday(ui, 'no-easier');
      return;
    }
    ui.fill('ends-ready', gradus.filled(ui.phrases.endsAt, { time: gradus.hourIn(guide.msLeft()) }));
    ui.tellLeftOut(ui.panel('ready'), out);
    ui.show('ready');
  }

  gradus.beforeActions = {
    resume: function (ui) {
      const run = kept('run');
      ui.week = run.week;
      ui.steps = ui.stepsIn(run.week);
      ui.still = (kept('today') || {}).still || [];
      gradus.play(ui, run);
    },
    afresh: function (ui) {
      keep('run', null);
      ask(ui);
    },
    start: function (ui) {
      gradus.play(ui, null);
    },
    none: function (ui) {
      askMore(ui, false);
    },
    some: function (ui) {
      askMore(ui, true);
    },
    'test-sound': function (ui) {
      const can = gradus.sound.wake();
      if (can) gradus.sound.test(ui.likes().volume / 10);
      ui.fill('sound', can ? ui.phrases.soundStarts : ui.phrases.noSound);
      gradus.sound.whenChanged(function () {
        if (!gradus.sound.isRunning()) return;
        gradus.sound.test(ui.likes().volume / 10);
        ui.fill('sound', ui.phrases.soundOn);
      });
      if (gradus.sound.isRunning()) ui.fill('sound', ui.phrases.soundOn);
    }
  };
  gradus.answerQuestions = answer;
  gradus.askWhere = askWhere;
  gradus.takeVersion = take;
})();

// A day on which the pages were opened and no session was begun: it leaves a line in the log, so that the coach does not see
// silence. Whoever is ill or hurt is told what to do.
(function () {
  'use strict';

  const gradus = window.gradus;

  // Once a day and session: what was said last counts. reason: ill, pain, health, time or other.
  gradus.noteSkip = function (ui, reason) {
    const row = Object.assign(gradus.rowAbout(ui, Date.now()), { done: false, skip: reason });
    const kept = gradus.log.all();
    const last = kept[kept.length - 1];
    const isAgain = last && last.skip && last.day === row.day && last.session === row.session;
    ui.row = row;
    return gradus.log.replace((isAgain ? kept.slice(0, -1) : kept).concat([row]));
  };

  gradus.skipActions = {
    skip: function (ui) {
      ui.fill('skipped', '');
      ui.show('skip');
    },
    'skip-for': function (ui, button) {
      const reason = button.dataset.skip;
      const isKept = gradus.noteSkip(ui, reason);
      if (reason === 'time' || reason === 'other') ui.fill('skipped', isKept ? ui.phrases.skipped : ui.phrases.notKept);
      else gradus.showNotToday(ui, reason === 'pain' ? 'rest' : 'ill');
    }
  };
})();

// Draws the session while it runs, and passes on what somebody presses.
(function () {
  'use strict';

  const gradus = window.gradus;

  gradus.clock = function () { return window.performance.now(); };

  // What of an exercise's article stands beside a step that runs.
  const beside = { cue: '.side', pictures: '.pair', doing: 'ol' };

  // run: where somebody was; null for the beginning.
  gradus.play = function (ui, run) {
    const phrases = ui.phrases;
    const watch = ui.watch = gradus.watchOf(run ? run.watch : null, Date.now());
    const learnt = Object.assign({}, gradus.kept('learnt'));
    const guide = gradus.guideOf(ui.steps, gradus.clock, { wait: ui.likes().wait, learnt: isLearnt });
    let shown = '';
    let isTold = false;
    ui.guide = guide;
    ui.isNoted = run !== null && run.isNoted === true;
    ui.before = (gradus.kept('today') || {}).pain;
    ui.tellLeftOut(ui.panel('play'), ui.leaveOut || []);
    if (!run) guide.leaveOut(ui.leaveOut || []);

    function isLearnt(exercise) {
      return learnt[exercise] === gradus.sumOfExercise(ui.root, exercise);
    }

    function schedule() {
      if (guide.state.phase !== 'running') {
        gradus.sound.cut();
        return;
      }
      const ahead = guide.ahead();
      const last = ahead[ahead.length - 1];
      gradus.sound.schedule(gradus.soundsOf(ahead, guide.steps, last.at === lastAt()), ui.likes().volume / 10);
    }

    function lastAt() {
      for (let i = guide.steps.length - 1; i >= 0; i--) if (!guide.isOut(i)) return i;
      return 0;
    }

    function save() {
      if (['done', 'ended', 'ready'].indexOf(guide.state.phase) >= 0) return;
      const about = { time: Date.now(), session: ui.session, week: ui.week, edition: ui.edition, isNoted: ui.isNoted };
      gradus.keep('run', Object.assign(about, { snap: guide.snapshot(), watch: watch.snapshot(Date.now()) }));
    }

    // Milliseconds until the digits, the breath or the step are others.
    function untilChange() {
      if (guide.state.phase !== 'running') return 1000;
      const left = guide.leftNow();
      return Math.min(left % 1000, gradus.untilBreath(guide.steps[guide.state.at], guide.lengthNow() - left)) + 1;
    }

    function draw() {
      const state = guide.state;
      const left = guide.leftNow();
      const set = function (name, text) {
        const part = ui.part(name);
        if (part.textContent !== text) part.textContent = text;
      };
      set('digits', gradus.digitsOf(left));
      ui.part('digits').classList.toggle('long', gradus.digitsOf(left).length > 3);
      ui.part('progress').value = guide.msInAll() > 0 ? 1 - guide.msLeft() / guide.msInAll() : 0;
      set('ends', gradus.filled(phrases.endsAt, { time: gradus.hourIn(guide.msLeft()) }));
      const breath = state.phase === 'running' ? gradus.breathAt(guide.steps[state.at], guide.lengthNow() - left) : null;
      ui.part('breath').hidden = breath === null;
      if (breath) {
        ui.part('breath').dataset.way = breath.way;
        set('breath-words', breath.way === 'in' ? phrases.breatheIn : phrases.breatheOut);
      }
    }

    // What is the same for as long as a step lasts.
    function drawStep() {
      const state = guide.state;
      const step = guide.steps[state.at];
      const level = gradus.effortOf(step, state.softer[step.exercise]);
      const picture = ui.dialog.querySelector('[data-picture]');
      picture.dataset.phase = state.phase;
      picture.dataset.kind = step.kind;
      picture.dataset.at = step.side;
      ui.fill('what', step.title);
      ui.fill('side', gradus.sideOf(step, phrases));
      ui.fill('told', toldNow(step));
      const softer = state.softer[step.exercise] > 0;
      ui.fill('detail', !softer ? step.detail : level > 0 ? '' : [step.detail, phrases.softerPlain].filter(Boolean).join(' · '));
      ui.fill('next', gradus.nextOf(guide.steps, state.at, guide.nextAt(), phrases));
      ui.part('effort').hidden = level === 0;
      ui.part('effort').dataset.level = String(level);
      Array.from(ui.part('effort').querySelectorAll('rect')).forEach(function (stair, i) {
        stair.setAttribute('class', i < level ? 'on' : 'off');
      });
      ui.part('digits').hidden = state.phase === 'waiting';
      ui.part('keep-breathing').hidden = !gradus.isWork(step) || !gradus.isContraction(step);
      const blocks = gradus.blocksOf(guide.steps, guide.isOut);
      ui.fill('place', gradus.filled(phrases.place, { n: blocks[state.at], of: blocks[blocks.length - 1] }));
      ui.part('more').hidden = state.phase !== 'paused';
      showButton({ running: 'pause', waiting: 'in-place' }[state.phase] || 'go');
      drawHow(step);
    }

    function toldNow(step) {
      if (guide.state.phase === 'paused') return phrases.pause;
      if (guide.state.phase !== 'waiting') return gradus.toldOf(guide, phrases);
      return isLearnt(step.exercise) ? phrases.waits : phrases.learn;
    }

    // One of three stands in the same place, and has the keyboard if another had it, or nothing has.
    function showButton(name) {
      const buttons = ['pause', 'go', 'in-place'].map(ui.press);
      const button = ui.press(name);
      const at = document.activeElement;
      const takes = buttons.indexOf(at) >= 0 || !ui.panel('play').contains(at);
      for (const one of buttons) one.hidden = one !== button;
      if (takes) button.focus({ preventScroll: true });
    }

    // How it is done, to be read before it begins and whenever it stands still; the cautions in full where it is new.
    function drawHow(step) {
      const isNew = guide.state.phase === 'waiting' && !isLearnt(step.exercise);
      const article = gradus.articleOf(ui.root, step.exercise);
      ui.part('how').hidden = guide.state.phase === 'running' || !article;
      ui.part('signs').hidden = !isNew;
      ui.part('way-out').hidden = !isNew;
      if (article && shown !== step.exercise) {
        for (const name of Object.keys(beside)) {
          const copies = Array.from(article.querySelectorAll(beside[name]), gradus.copyOf);
          ui.part(name).replaceChildren.apply(ui.part(name), copies);
        }
        ui.part('how-body').replaceChildren(gradus.copyOf(article));
        ui.part('signs').replaceChildren.apply(ui.part('signs'), gradus.signsOf(ui.root, step.letter));
      }
      shown = step.exercise;
      isTold = gradus.tellOne(ui.part('doing'), step.kind);
      gradus.turnFigures(ui.panel('play'), step.side);
      ui.part('how-details').open = isNew;
      ui.dialog.scrollTop = 0;
    }

    // What it looks like and what to do stay beside it while it runs, as far as there is room; the buttons are not pushed off.
    function fit() {
      const parts = (isTold ? ['cue', 'doing', 'pictures'] : Object.keys(beside)).map(ui.part);
      for (const part of parts) part.hidden = true;
      for (const part of parts) {
        part.hidden = guide.state.phase !== 'running' || part.childNodes.length === 0;
        part.hidden = part.hidden || ui.dialog.scrollHeight > ui.dialog.clientHeight;
      }
    }

    // isNatural: the time went on, and the sounds with it; otherwise somebody pressed something.
    function follow(isNatural) {
      const events = guide.take();
      if (events.length > 0) {
        watch.be(guide.state.phase !== 'running', Date.now());
        const saying = gradus.sayingOf(events, guide, phrases);
        if (ui.part('said').textContent !== saying) ui.fill('said', saying);
        const types = events.map(function (e) { return e.type; });
        if (!isNatural || types.indexOf('slept') >= 0 || gradus.sound.hasDrifted()) schedule();
        tell(types);
        if (guide.state.phase === 'done' || guide.state.phase === 'ended') {
          leave();
          return;
        }
        if (types.some(function (type) { return type !== 'half'; })) drawStep();
        save();
      }
      draw();
      if (events.length > 0) fit();
    }

    function tell(types) {
      const step = guide.steps[guide.state.at];
      const likes = ui.likes();
      const begins = types.indexOf('step') >= 0 || types.indexOf('wait') >= 0;
      if (likes.vibration && begins) gradus.vibration.shake(types.indexOf('wait') >= 0 ? 'wait' : gradus.soundOf(step));
      if (likes.vibration && types.indexOf('end') >= 0) gradus.vibration.shake('end');
      if (likes.speech && begins) gradus.speech.say(gradus.spokenOf(guide, phrases));
      if (types.indexOf('pause') >= 0 || types.indexOf('hurts') >= 0) gradus.speech.hush();
    }

    function leave() {
      gradus.ticker.stop();
      gradus.awake.release();
      if (guide.state.phase === 'ended') gradus.sound.cut();
      gradus.keep('run', null);
      gradus.keep('today', null);
      ui.actions = {};
      gradus.finish(ui, guide);
    }

    function does(what) {
      return function () {
        what();
        follow(false);
      };
    }

    function goOn() {
      const exercise = guide.steps[guide.state.at].exercise;
      if (guide.state.phase === 'waiting' && !isLearnt(exercise)) {
        learnt[exercise] = gradus.sumOfExercise(ui.root, exercise);
        gradus.keep('learnt', learnt);
      }
      gradus.sound.wake();
      guide.go();
    }

    function afterHurt(then) {
      return function () {
        const hurt = gradus.hurtIn(ui.form('hurts'));
        const [place, level, feel] = [hurt.place, hurt.level, hurt.feel];
        ui.form('hurts').reset();
        if (gradus.isAlarming(place, level)) {
          gradus.alarm(ui, 'chest');
          return;
        }
        const isOver = level > gradus.limitsOf().stop || gradus.isForToday(feel);
        guide.state.ask = guide.state.ask || isOver || gradus.isForCoach(feel);
        if (isOver) guide.endSession(place, level, feel);
        else then(place, level, feel);
        if (['waiting', 'paused'].indexOf(guide.state.phase) >= 0) ui.show('play');
        if (guide.state.stopped.length > 0 && ['done', 'ended'].indexOf(guide.state.phase) < 0) gradus.noteStop(ui, guide);
        follow(false);
      };
    }

    ui.mayEaseOff = function () { return gradus.mayEaseOff(gradus.hurtIn(ui.form('hurts'))); };

    function showHurts() {
      ui.form('hurts').reset();
      ui.panel('hurts').querySelector('[data-gently]').hidden = true;
      ui.show('hurts');
    }

    ui.actions = {
      pause: does(function () { guide.pause(); }),
      go: does(goOn),
      'in-place': does(goOn),
      back: does(guide.back),
      forward: does(guide.forward),
      longer: does(guide.longer),
      softer: does(guide.softer),
      hurts: function () {
        if (!guide.hurts()) return;
        gradus.sound.cut();
        follow(false);
        showHurts();
      },
      'ease-off': afterHurt(guide.easeOff),
      'end-exercise': afterHurt(function (place, level, feel) {
        guide.endExercise(place, level, feel);
        ui.tellLeftOut(ui.panel('play'), guide.state.out);
      }),
      'end-session': afterHurt(guide.endSession),
      abandon: does(guide.abandon),
      'end-here': does(function () { guide.endSession(null); }),
      toggle: function () {
        ui.actions[guide.state.phase === 'running' ? 'pause' : 'go']();
      },
      wait: function (on) {
        guide.state.wait = on;
        if (guide.state.phase === 'running') schedule();
      },
      // Who closes it while it hurts has ended the session.
      leave: function () {
        if (guide.state.phase === 'hurt') {
          ui.actions['end-session']();
          return;
        }
        guide.pause();
        gradus.sound.cut();
        gradus.speech.hush();
        save();
        gradus.ticker.stop();
        gradus.awake.release();
        guide.take();
      }
    };
    ui.save = save;
    gradus.sound.wake();
    gradus.sound.whenChanged(function () { if (gradus.sound.isRunning() && guide.state.phase === 'running') schedule(); });
    gradus.awake.keep();
    ui.show('play');
    if (!run || !guide.restore(run.snap)) guide.start();
    gradus.ticker.start(function () {
      guide.tick();
      follow(true);
      return untilChange();
    });
    follow(false);
    if (guide.state.phase === 'hurt') showHurts();
  };
})();

// A self-test: three numbers a side, asked at the end of a session. They are kept in the log and judged by nobody here, but
// three that lie far apart are measured again.
(function () {
  'use strict';

  const gradus = window.gradus;
  const farApart = 1.5;

  function numbersIn(fields) {
    return Array.from(fields.querySelectorAll('[data-try]'))
      .filter(function (field) { return field.value !== '' && field.validity.valid; })
      .map(function (field) { return Number(field.value); });
  }

  function again(event) {
    const fields = event.target.closest('[data-measured]');
    if (!fields) return;
    const numbers = numbersIn(fields);
    fields.querySelector('[data-again]').hidden = numbers.length < 3 || Math.max(...numbers) - Math.min(...numbers) <= farApart;
  }

  // A group of fields for each exercise of the row that measures something, and each side.
  gradus.fillMeasures = function (ui, form, row) {
    const [first, ...others] = form.querySelectorAll('[data-measured]');
    for (const old of others) old.remove();
    if (!first) return;
    for (const one of row.exercises.slice().reverse()) {
      const article = gradus.articleOf(ui.root, one.exercise);
      if (!article || !article.hasAttribute('data-measure')) continue;
      const fields = first.cloneNode(true);
      fields.hidden = false;
      fields.setAttribute('data-measured', one.exercise + ' ' + one.side);
      fields.querySelector('legend').textContent = gradus.nameOfPart(ui, one) + ' (' + article.getAttribute('data-measure') + ')';
      fields.addEventListener('input', again);
      first.after(fields);
    }
  };

  gradus.measuredIn = function (form, one) {
    const fields = form.querySelector('[data-measured="' + one.exercise + ' ' + one.side + '"]');
    return fields ? numbersIn(fields) : [];
  };
})();

// The end: what was done is noted at once, and again when somebody has said how it was.
(function () {
  'use strict';

  const gradus = window.gradus;

  function workOf(guide, exercise) {
    return guide.steps.map(function (step, i) { return { step: step, did: guide.state.did[i] === true }; })
      .filter(function (one) { return gradus.isWork(one.step) && (!exercise || one.step.exercise === exercise); });
  }

  // A set is done when all of its steps are.
  function setsOf(work) {
    const sets = {};
    for (const one of work) {
      const name = String(one.step.set);
      sets[name] = sets[name] !== false && one.did;
    }
    return Object.keys(sets).filter(function (name) { return sets[name]; }).length;
  }

  function without(part) {
    for (const name of Object.keys(part)) if (['', undefined, 0].indexOf(part[name]) >= 0) delete part[name];
    return part;
  }

  // Left and right have doses of their own, so each has a line; what both do together belongs to either.
  function sidesOf(work) {
    const sides = ['left', 'right'].filter(function (side) {
      return work.some(function (one) { return one.step.side === side; });
    });
    return sides.length > 0 ? sides : [''];
  }

  function exerciseOf(guide, exercise) {
    const work = workOf(guide, exercise);
    const stop = guide.state.stopped.find(function (one) { return one.exercise === exercise; });
    const sides = sidesOf(work);
    return sides.map(function (side, i) {
      const own = work.filter(function (one) { return one.step.side === side || one.step.side === ''; });
      const isStopped = stop && (stop.side === side || (i === 0 && sides.indexOf(stop.side) < 0));
      const row = without({
        exercise: exercise,
        side: side,
        repetitions: own.reduce(function (most, one) { return one.did ? Math.max(most, one.step.reps) : most; }, 0),
        load: own.length > 0 ? own[0].step.load : '',
        stopped: isStopped ? true : undefined,
        feel: isStopped ? stop.feel : '',
        places: isStopped ? stop.places : undefined
      });
      row.sets = setsOf(own);
      return row;
    });
  }

  function exercisesOf(guide) {
    const names = Array.from(new Set(guide.steps.map(function (step) { return step.exercise; })));
    return names.flatMap(function (exercise) { return exerciseOf(guide, exercise); });
  }

  // What still hurts is asked again next time, whether or not it is an exercise of this session.
  function withStill(exercises, still) {
    const isAmong = function (list, exercise) { return list.some(function (one) { return one.exercise === exercise; }); };
    const stopped = exercises.filter(function (one) { return one.stopped; });
    const again = still.filter(function (old) { return !isAmong(stopped, old.exercise); });
    const others = exercises.filter(function (one) { return !isAmong(again, one.exercise); });
    return others.concat(again.map(function (old) { return Object.assign({}, old, { sets: 0, more: undefined }); }));
  }

  // The least share of its pieces of work with which a session counts as one: with less, next to nothing was done. Common
  // practice, no source.
  const leastShare = 1 / 3;

  // What it was like where it was worst: what a clinician should see first.
  function worstFeel(stopped) {
    const feels = stopped.map(function (one) { return one.feel; }).filter(Boolean);
    return feels.find(gradus.isForToday) || feels.find(gradus.isForCoach) || feels[0] || '';
  }

  // A session that was ended early, or of which next to nothing was done, is none for the weeks.
  function rowOf(ui, guide) {
    const work = workOf(guide, '');
    const did = work.filter(function (one) { return one.did; }).length;
    const isDone = guide.state.phase === 'done' && did > 0 && did >= work.length * leastShare;
    const exercises = withStill(exercisesOf(guide), ui.still || []);
    const about = Object.assign(gradus.rowAbout(ui, ui.watch.start()), { minutes: ui.watch.minutes(Date.now()) });
    const felt = guide.state.felt;
    const pain = felt ? without({ pain: felt.level || undefined, where: felt.where, side: felt.side }) : {};
    if (ui.before) about.before = ui.before;
    const alarm = ui.alarm ? gradus.alarmIn(ui.alarm) : {};
    const feel = worstFeel(guide.state.stopped);
    const ended = isDone || feel === '' ? {} : { feel: feel };
    return Object.assign(about, { done: isDone, did: did, of: work.length }, pain, alarm, ended, { exercises: exercises });
  }

  function keptSaying(ui) {
    const phrases = ui.phrases;
    if (ui.row.done === false) return ui.isKept ? phrases.notCounted : phrases.notCountedLost;
    return ui.isKept ? phrases.noted : phrases.notKept;
  }

  function numberOr(field) {
    return field.value === '' || !field.validity.valid ? undefined : Number(field.value);
  }

  function withAnswers(row, form) {
    const place = gradus.placeIn(form);
    const note = form.querySelector('[data-note]').value.trim();
    const said = without({
      where: place ? place.where : '', side: place ? place.side : '', placed: place ? gradus.placeWords(form) : '', note: note,
      feel: form.querySelector('[data-stopped-for]').value
    });
    const effort = numberOr(form.querySelector('[data-effort]'));
    const pain = numberOr(form.querySelector('[data-level]'));
    if (effort !== undefined) said.effort = effort;
    if (pain !== undefined) said.pain = pain;
    const exercises = row.exercises.map(function (one) {
      const fields = form.querySelector('[data-exercise="' + partOf(one) + '"]');
      if (!fields) return one;
      const measured = gradus.measuredIn(form, one);
      const changed = Object.assign({}, one, {
        sets: numberOr(fields.querySelector('[data-sets]')),
        repetitions: numberOr(fields.querySelector('[data-repetitions]')),
        load: fields.querySelector('[data-load]').value.trim(),
        measured: measured.length > 0 ? measured : undefined
      });
      for (const name of ['sets', 'repetitions', 'load', 'measured']) {
        if (changed[name] === undefined || changed[name] === '') delete changed[name];
      }
      return changed;
    });
    return Object.assign({}, row, said, { exercises: exercises });
  }

  function partOf(one) {
    return one.exercise + ' ' + (one.side || '');
  }

  // "Ankle press: left side"
  gradus.nameOfPart = function (ui, one) {
    const side = one.side ? gradus.sideOf(one, ui.phrases) : '';
    return [gradus.titleOf(ui.root, one.exercise), side].filter(Boolean).join(': ');
  };

  function fillExercises(ui, form, row) {
    const first = form.querySelector('[data-exercise]');
    for (const old of form.querySelectorAll('[data-exercise]')) if (old !== first) old.remove();
    for (const one of row.exercises.slice().reverse()) {
      const fields = first.cloneNode(true);
      fields.hidden = false;
      fields.setAttribute('data-exercise', partOf(one));
      fields.querySelector('legend').textContent = gradus.nameOfPart(ui, one);
      fields.querySelector('[data-sets]').value = one.sets === undefined ? '' : one.sets;
      fields.querySelector('[data-repetitions]').value = one.repetitions === undefined ? '' : one.repetitions;
      fields.querySelector('[data-load]').value = one.load || '';
      first.after(fields);
    }
  }

  // What was said when it hurt stands there already.
  function fillPain(form, row) {
    if (row.pain !== undefined) form.querySelector('[data-level]').value = String(row.pain);
    if (row.where) form.querySelector('[data-where]').value = row.where;
    if (row.side) form.querySelector('[data-side]').value = row.side;
  }

  function keepRow(ui, guide) {
    ui.row = rowOf(ui, guide);
    ui.isKept = ui.isNoted ? gradus.log.change(ui.row) : gradus.log.add(ui.row);
    return ui.isKept;
  }

  // What hurt is noted at once: whoever closes the page afterwards is asked about it next time all the same.
  gradus.noteStop = function (ui, guide) {
    ui.isNoted = keepRow(ui, guide);
  };

  gradus.finish = function (ui, guide) {
    const form = ui.form('log');
    form.reset();
    const isKept = keepRow(ui, guide);
    ui.alarm = null;
    fillExercises(ui, form, ui.row);
    fillPain(form, ui.row);
    gradus.fillMeasures(ui, form, ui.row);
    form.querySelector('[data-stopped-early]').hidden = guide.state.phase === 'done' || guide.state.stopped.length > 0;
    ui.part('see-today').hidden = !gradus.isForToday(ui.row.feel || '');
    ui.fill('did', gradus.countedOf(ui.phrases, 'did', ui.row.of, { done: ui.row.did, of: ui.row.of }));
    ui.tellLeftOut(ui.panel('end'), guide.state.out);
    ui.part('ask-first').hidden = !guide.state.ask;
    ui.fill('kept', keptSaying(ui));
    for (const tools of ui.panel('end').querySelectorAll('[data-log-tools]')) tools.hidden = false;
    if (ui.row.alarm) gradus.showAlarm(ui, isKept);
    else ui.show('end');
    gradus.showWeek();
  };

  gradus.keepAnswers = function (ui) {
    const form = ui.form('log');
    ui.row = withAnswers(ui.row, form);
    const isAlarm = gradus.isAlarming(gradus.placeIn(form), gradus.levelIn(form));
    if (isAlarm) Object.assign(ui.row, gradus.alarmIn('chest'));
    ui.isKept = ui.isKept && gradus.log.change(ui.row);
    ui.fill('kept', '');
    ui.fill('kept', keptSaying(ui));
    if (isAlarm) {
      gradus.showAlarm(ui, ui.isKept);
      gradus.showWeek();
    }
    const tools = ui.panel('end').querySelector('[data-log-tools]');
    const text = tools.querySelector('[data-log-text]');
    if (text.value) text.value = gradus.messageOf(ui.isKept ? gradus.log.all() : [ui.row], tools.dataset);
  };

  // What is sent has in it what was just answered, saved or not.
  document.addEventListener('click', function (event) {
    const button = event.target.closest('[data-panel="end"] button[data-log]');
    if (button) gradus.keepAnswers(gradus.guides[Number(button.closest('dialog').dataset.guide)]);
  }, true);
})();

// The dialog of the guided session: opens it, shows one panel of it at a time, and passes on keys and buttons.
(function () {
  'use strict';

  const gradus = window.gradus;
  const usual = { wait: null, volume: 7, speech: false, vibration: true };

  gradus.guides = {};

  function guideIn(dialog) {
    const root = gradus.pageAround(dialog);
    const ui = {
      dialog: dialog,
      root: root,
      session: Number(dialog.dataset.guide),
      phrases: dialog.dataset,
      actions: {},
      save: null,
      row: null,
      edition: gradus.editionOf(root),
      stepsIn: function (week) { return gradus.stepsOf(root, week); },
      read: function () {
        ui.week = gradus.weekNow().week;
        ui.steps = ui.stepsIn(ui.week);
        ui.leaveOut = [];
      },
      panel: function (name) { return dialog.querySelector('[data-panel="' + name + '"]'); },
      form: function (name) { return dialog.querySelector('[data-form="' + name + '"]'); },
      part: function (name) { return dialog.querySelector('[data-fill="' + name + '"]'); },
      press: function (name) { return dialog.querySelector('[data-act="' + name + '"]'); },
      fill: function (name, text) { ui.part(name).textContent = text; },
      show: function (name) {
        for (const panel of dialog.querySelectorAll('[data-panel]')) panel.hidden = panel.dataset.panel !== name;
        settle();
        if (!dialog.open) dialog.showModal();
        dialog.scrollTop = 0;
        ui.part('leave').hidden = name === 'play';
        if (name !== 'play') ui.panel(name).querySelector('h2').focus();
      },
      tellLeftOut: function (panel, exercises) {
        const line = panel.querySelector('[data-fill="left-out"]');
        const titles = Array.from(new Set(exercises))
          .filter(function (exercise) { return gradus.articleOf(root, exercise); })
          .map(function (exercise) { return gradus.titleOf(root, exercise); });
        line.hidden = titles.length === 0;
        line.textContent = gradus.filled(ui.phrases.leftOut, { exercises: titles.join(', ') });
      },
      likes: function () {
        const likes = Object.assign({}, usual, gradus.kept('likes'));
        if (likes.wait === null) likes.wait = ui.week === 1;
        return likes;
      },
      close: function () {
        const wasHurt = !ui.panel('hurts').hidden;
        if (ui.actions.leave) ui.actions.leave();
        if (wasHurt) return;
        ui.actions = {};
        ui.save = null;
        dialog.close();
        offer(ui);
      }
    };

    function settle() {
      const likes = ui.likes();
      for (const field of dialog.querySelectorAll('[data-set]')) {
        if (field.type === 'checkbox') field.checked = likes[field.dataset.set];
        else field.value = likes[field.dataset.set];
      }
      for (const part of dialog.querySelectorAll('[data-if]')) part.hidden = !gradus[part.dataset.if].isThere();
      for (const part of dialog.querySelectorAll('[data-unless]')) part.hidden = gradus[part.dataset.unless].isThere();
    }

    function like(field) {
      const likes = Object.assign({}, usual, gradus.kept('likes'));
      likes[field.dataset.set] = field.type === 'checkbox' ? field.checked : Number(field.value);
      gradus.keep('likes', likes);
      settle();
      if (field.dataset.set === 'volume') gradus.sound.volume(likes.volume / 10);
      if (field.dataset.set === 'wait' && ui.actions.wait) ui.actions.wait(likes.wait);
    }

    dialog.addEventListener('click', function (event) {
      const link = event.target.closest('a[data-take]');
      if (link) {
        gradus.takeVersion(ui, event, link);
        return;
      }
      const button = event.target.closest('button[data-act]');
      const act = button ? button.dataset.act : event.target.closest('[data-picture]') ? 'toggle' : null;
      if (act === 'close') ui.close();
      else if (act === 'alarm') gradus.alarm(ui, button.dataset.alarm);
      else if (act !== null && ui.actions[act]) ui.actions[act]();
      else if (act !== null && gradus.beforeActions[act]) gradus.beforeActions[act](ui);
      else if (act !== null && gradus.skipActions[act]) gradus.skipActions[act](ui, button);
    });
    dialog.addEventListener('change', function (event) {
      if (event.target.dataset.set) like(event.target);
      if (event.target.name === 'pain' || event.target.name === 'worse') gradus.askWhere(event.target.form);
      if (event.target.closest('[data-form="hurts"]') && ui.mayEaseOff) {
        ui.panel('hurts').querySelector('[data-gently]').hidden = !ui.mayEaseOff();
      }
    });
    dialog.addEventListener('submit', function (event) {
      event.preventDefault();
      if (event.target.dataset.form === 'questions') gradus.answerQuestions(ui);
      if (event.target.dataset.form === 'log') gradus.keepAnswers(ui);
    });
    dialog.addEventListener('cancel', function (event) {
      event.preventDefault();
      if (ui.guide && ui.actions.toggle && ui.guide.state.phase === 'running') ui.actions.toggle();
      else ui.close();
    });
    dialog.addEventListener('keydown', function (event) {
      if (!ui.actions.toggle || ui.panel('play').hidden || event.target.closest('input, select, textarea, summary, a')) return;
      const isButton = event.target.closest('button') !== null;
      const act = event.key === ' ' && !isButton ? 'toggle'
        : event.key === 'ArrowLeft' ? 'back'
        : event.key === 'ArrowRight' ? 'forward' : null;
      if (act === null) return;
      event.preventDefault();
      ui.actions[act]();
    });
    window.addEventListener('pagehide', function () {
      if (ui.save) ui.save();
    });
    return ui;
  }

  function isPast() {
    const end = document.querySelector('[data-good-until]');
    return end !== null && gradus.today() > end.getAttribute('data-good-until');
  }

  // What can be led through today; past its last day nothing is.
  function offer(ui) {
    const lead = ui.root.querySelector('[data-lead]');
    const past = ui.root.querySelector('[data-lead-past]');
    if (!lead) return;
    ui.read();
    past.hidden = !isPast();
    lead.hidden = isPast();
    const button = lead.querySelector('[data-lead-in]');
    button.hidden = ui.steps.length === 0;
    ui.unread = ui.unread || button.textContent;
    button.textContent = gradus.isRead(ui) ? ui.phrases.leadAgain : ui.unread;
    lead.querySelector('[data-lead-none]').hidden = ui.steps.length > 0;
  }

  // The dialog that a script of this site holds.
  function dialogIn(html) {
    const holder = document.createElement('template');
    holder.innerHTML = html;
    return holder.content.querySelector('dialog');
  }

  // Where all pages are one, the first dialog holds what all of them have; the others have only their own versions of the
  // session.
  function complete(dialog) {
    if (dialog.querySelector('[data-panel]')) return;
    const panel = document.querySelector('dialog[data-guide] [data-panel]');
    const whole = panel ? panel.closest('dialog') : dialogIn(gradus.guideDialog);
    const own = dialog.querySelector('[data-versions]');
    for (const attribute of whole.attributes) {
      if (!dialog.hasAttribute(attribute.name)) dialog.setAttribute(attribute.name, attribute.value);
    }
    dialog.replaceChildren.apply(dialog, Array.from(whole.children, function (child) { return child.cloneNode(true); }));
    dialog.querySelector('[data-versions]').replaceWith(own);
  }

  // What is chosen from again and again stands once.
  function fillLists(dialog) {
    for (const name of ['[data-where]', '[data-level]']) {
      const [first, ...others] = dialog.querySelectorAll(name);
      for (const list of others) {
        if (list.options.length > 1) continue;
        for (const option of Array.from(first.options).slice(1)) list.append(option.cloneNode(true));
      }
    }
  }

  for (const dialog of document.querySelectorAll('dialog[data-guide]')) {
    complete(dialog);
    fillLists(dialog);
    if (typeof dialog.showModal !== 'function' || !gradus.weekNow) continue;
    const ui = guideIn(dialog);
    gradus.guides[ui.session] = ui;
    offer(ui);
  }

  document.addEventListener('click', function (event) {
    const button = event.target.closest('[data-lead-in]');
    const ui = button ? Object.values(gradus.guides).find(function (one) { return one.root.contains(button); }) : null;
    if (ui && !isPast() && !ui.dialog.open) {
      gradus.noteRead(ui);
      gradus.lead(ui);
    } else for (const one of Object.values(gradus.guides)) if (!one.dialog.open) offer(one);
  });

  // Somebody was sent here from another session of the day.
  const sent = window.location.hash === '#lead' ? Object.values(gradus.guides)[0] : null;
  if (sent && !isPast() && sent.steps.length > 0) gradus.leadOrRead(sent);
})();
