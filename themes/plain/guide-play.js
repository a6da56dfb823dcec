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
