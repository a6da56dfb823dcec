// What comes before the start: go on where somebody was, the cautions, the questions, and what follows from the answers.
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

  function lastRow() {
    const rows = gradus.log.all();
    return rows.length > 0 ? rows[rows.length - 1] : null;
  }

  // The exercises that were stopped last time, whichever session it was.
  function stoppedBefore() {
    const row = lastRow();
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
    if (isOfToday && ui.stepsIn(run.week)[run.snap.at]) {
      ui.fill('at-step', gradus.filled(ui.phrases.atStep, { n: run.snap.at + 1, what: ui.stepsIn(run.week)[run.snap.at].what }));
      ui.show('resume');
    } else askToRead(ui);
  };

  function askToRead(ui) {
    const read = kept('read') || {};
    if (read[ui.session] === ui.edition) {
      ask(ui);
      return;
    }
    const cautions = ui.root.querySelector('.cautions');
    const copy = gradus.copyOf(cautions);
    copy.querySelector('h2').remove();
    ui.part('cautions').replaceChildren(copy);
    ui.show('cautions');
  }

  function ask(ui) {
    const answered = kept('today');
    if (gradus.isFresh(answered, Date.now(), hours) && answered.session === ui.session) {
      getReady(ui, answered.still || [], answered.sore || []);
      return;
    }
    const form = ui.form('questions');
    const one = form.querySelector('[data-still]');
    for (const old of form.querySelectorAll('[data-still]')) if (old !== one) old.remove();
    stoppedBefore().forEach(function (stopped, i) {
      const again = one.cloneNode(true);
      again.hidden = false;
      again.dataset.still = stopped.exercise;
      const exercise = gradus.titleOf(ui.root, stopped.exercise);
      again.querySelector('legend').textContent = gradus.filled(ui.phrases.stillHurts, { exercise: exercise });
      for (const choice of again.querySelectorAll('input')) choice.name = 'still-' + i;
      one.after(again);
    });
    const lengths = gradus.versionsOf(ui.dialog, ui.week)
      .filter(function (v) { return v.seconds !== null && v.kind !== 'travel'; });
    form.querySelector('[data-minutes]').hidden = lengths.length < 2;
    form.querySelector('[data-missing]').textContent = '';
    ui.show('questions');
  }

  function reply(form, name) {
    const chosen = form.querySelector('input[name="' + name + '"]:checked');
    return chosen ? chosen.value : null;
  }

  // What was answered; null where something is missing.
  function answersIn(form) {
    const level = form.querySelector('[data-level]').value;
    const place = gradus.placeIn(form);
    const stills = Array.from(form.querySelectorAll('[data-still]:not([hidden])'));
    const isWhole = level !== '' && (level === '0' || place !== null) && reply(form, 'worse') && reply(form, 'ill')
      && stills.every(function (s) { return s.querySelector('input:checked'); });
    if (!isWhole) return null;
    const isStill = function (one) {
      return stills.some(function (s) {
        return s.dataset.still === one.exercise && s.querySelector('input:checked').value === 'yes';
      });
    };
    const minutes = reply(form, 'minutes');
    return {
      pain: Number(level),
      morning: reply(form, 'worse'),
      worse: reply(form, 'worse') === 'yes',
      ill: reply(form, 'ill') === 'yes',
      place: place,
      minutes: minutes === 'all' || form.querySelector('[data-minutes]').hidden ? null : Number(minutes),
      still: stoppedBefore().filter(isStill)
    };
  }

  function noteMorning(answers) {
    const row = lastRow();
    if (!row || row.day >= gradus.today() || row.morning || answers.morning === 'first') return;
    gradus.log.change(Object.assign({}, row, { morning: answers.morning }));
  }

  // What still hurts, and what loads the same place, is left out today. So is what loads a place that is sore, but not of the
  // session that the coach wrote for such days.
  function leftOut(ui, still, sore) {
    const own = gradus.versionsOf(ui.dialog, ui.week).find(function (v) { return v.session === ui.session; });
    const loading = own && own.kind === 'flare' ? [] : gradus.loadingAny(ui.steps, sore);
    return still
      .flatMap(function (one) { return gradus.leftOutBy(ui.steps, one.exercise, placesThen(ui, one)); })
      .concat(loading);
  }

  function answer(ui) {
    const form = ui.form('questions');
    const answers = answersIn(form);
    const missing = form.querySelector('[data-missing]');
    missing.textContent = answers ? '' : missing.dataset.missing;
    if (!answers) return;
    noteMorning(answers);
    const limits = gradus.limitsOf();
    const found = gradus.versionFor(answers, gradus.versionsOf(ui.dialog, ui.week), ui.session, limits);
    const sore = answers.pain > limits.easeOff && answers.place ? [answers.place] : [];
    if (found.session === ui.session) {
      keep('today', { time: Date.now(), session: ui.session, still: answers.still, sore: sore });
      getReady(ui, answers.still, sore);
      return;
    }
    const panel = ui.panel(found.session === null ? 'not-today' : 'other');
    sayWhy(panel, found.why);
    ui.next = { session: found.session, still: answers.still, sore: sore };
    for (const item of panel.querySelectorAll('[data-version]')) {
      item.hidden = Number(item.dataset.version) !== found.session;
      if (item.hidden) continue;
      const version = gradus.versionsOf(ui.dialog, ui.week).find(function (v) { return v.session === found.session; });
      const link = item.querySelector('a');
      link.dataset.name = link.dataset.name || link.textContent;
      const time = gradus.spanOf(version.seconds, ui.phrases);
      link.textContent = gradus.filled(ui.phrases.take, { session: link.dataset.name, time: time });
    }
    ui.show(panel.dataset.panel);
  }

  function sayWhy(panel, because) {
    for (const why of panel.querySelectorAll('[data-because]')) why.hidden = why.dataset.because !== because;
  }

  // What hurts is left out of the other session too.
  function take(ui, event, link) {
    keep('today', { time: Date.now(), session: ui.next.session, still: ui.next.still, sore: ui.next.sore });
    if (link.getAttribute('href')[0] !== '#') {
      link.hash = 'lead';
      return;
    }
    event.preventDefault();
    ui.close();
    window.location.hash = link.getAttribute('href');
    gradus.guides[ui.next.session].lead();
  }

  function getReady(ui, still, sore) {
    const out = leftOut(ui, still, sore);
    ui.still = still;
    ui.leaveOut = out;
    const guide = gradus.guideOf(ui.steps, gradus.clock, {});
    guide.leaveOut(out);
    if (guide.msLeft() === 0) {
      sayWhy(ui.panel('not-today'), 'no-easier');
      ui.show('not-today');
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
      gradus.play(ui, run.snap);
    },
    afresh: function (ui) {
      keep('run', null);
      askToRead(ui);
    },
    read: function (ui) {
      const read = Object.assign({}, kept('read'));
      read[ui.session] = ui.edition;
      keep('read', read);
      ask(ui);
    },
    start: function (ui) {
      gradus.play(ui, null);
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
  gradus.takeVersion = take;
})();
