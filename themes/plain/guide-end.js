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
