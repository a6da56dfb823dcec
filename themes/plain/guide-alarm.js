// A sign that cannot wait: the number to call, and no other way on. Whatever runs is over, and the reason is noted.
(function () {
  'use strict';

  const gradus = window.gradus;

  function show(ui, isKept) {
    ui.fill('alarm-kept', isKept ? ui.phrases.alarmNoted : '');
    ui.show('alarm');
  }

  // What a row says of it; as a column of its own it stands in the file too, and is found again in one that was opened.
  gradus.alarmIn = function (reason) {
    return { done: false, alarm: reason, more: [['alarm', reason]] };
  };

  gradus.hadAlarm = function (row) {
    return row !== null && (row.more || []).some(function (pair) { return pair[0] === 'alarm'; });
  };

  // Before the start there is no session yet, so there is one that was stopped.
  function note(ui, reason) {
    gradus.keep('run', null);
    gradus.keep('today', null);
    const about = { day: gradus.today(), week: ui.week, session: ui.session, edition: ui.edition };
    ui.row = Object.assign(about, gradus.alarmIn(reason), { exercises: [] });
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
