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
