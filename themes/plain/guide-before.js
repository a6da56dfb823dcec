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
