// What was done, as a short text for a message: a line for people, and below it one for a program. It knows no page.
(function () {
  'use strict';

  const gradus = window.gradus;
  const notSaid = '\u2013';

  // "Mon 7 Dec": the language has the short names, the catalogue the order.
  function dayOf(row, phrases) {
    const day = new Date(row.day + 'T00:00:00Z');
    if (Number.isNaN(day.getTime())) return row.day;
    const shown = { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' };
    const fills = { day: Number(row.day.slice(-2)) };
    for (const part of new Intl.DateTimeFormat(phrases.language, shown).formatToParts(day)) {
      if (part.type === 'weekday' || part.type === 'month') fills[part.type] = part.value;
    }
    return gradus.filled(phrases.day, fills);
  }

  // titles: each session's number and name, a line each. One of an earlier edition may have none.
  function nameOf(row, phrases) {
    const own = row.session + '=';
    const line = phrases.titles.split('\n').find(function (one) { return one.indexOf(own) === 0; });
    return line ? line.slice(own.length) : gradus.filled(phrases.toldSession, { number: row.session });
  }

  // A log that was opened from a file says no steps.
  function howOf(row, phrases) {
    const steps = row.of === undefined ? [] : [gradus.countedOf(phrases, 'steps', row.of, { done: row.did, of: row.of })];
    const end = row.alarm ? [phrases.toldAlarm] : row.done === false ? [phrases.toldStopped] : [];
    return steps.concat(end).join(' ') || phrases.toldDone;
  }

  function lineForPeopleOf(row, phrases) {
    return gradus.filled(phrases.told, {
      day: dayOf(row, phrases), week: row.week, session: nameOf(row, phrases), how: howOf(row, phrases),
      effort: row.effort === undefined ? notSaid : row.effort, pain: row.pain === undefined ? notSaid : row.pain
    });
  }

  // The line that a program checks. Whoever reads old messages reads it: it stays as it is, to the letter.
  function machineLineOf(row) {
    const where = row.where ? ', ' + [row.side, row.where].filter(Boolean).join(' ') : '';
    const hurts = row.pain > 0 ? row.pain + ' of 10' + where : row.pain === 0 ? 'none' : 'not said';
    const stopped = (row.exercises || [])
      .filter(function (one) { return one.stopped; })
      .map(function (one) { return one.exercise; });
    const parts = [
      'gradus ' + row.day, 'edition ' + (row.edition || 'unknown'), 'week ' + row.week, 'session ' + row.session,
      row.done === false ? 'stopped' : 'done'
    ].concat(
      row.of === undefined ? [] : ['steps ' + row.did + ' of ' + row.of],
      row.alarm ? ['alarm ' + row.alarm] : [],
      ['pain ' + hurts],
      stopped.length > 0 ? ['left out ' + stopped.join(', ')] : []);
    const text = parts.join('; ');
    return text + '; sum ' + gradus.checkSum(text);
  }

  gradus.messageOf = function (row, phrases) {
    return lineForPeopleOf(row, phrases) + '\n' + machineLineOf(row);
  };
})();
