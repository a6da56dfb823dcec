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
