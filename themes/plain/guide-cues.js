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
