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
