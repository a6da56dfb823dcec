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
    if (row.skip) return phrases.toldSkipped;
    const end = row.alarm ? [phrases.toldAlarm] : row.done === false ? [phrases.toldStopped] : [];
    return steps.concat(end).join(' ') || phrases.toldDone;
  }

  // "2 (knee, left)": the place in the words in which it was chosen, as far as they are known.
  function painOf(row) {
    return row.pain === undefined ? notSaid : row.pain + (row.pain > 0 && row.placed ? ' (' + row.placed + ')' : '');
  }

  function lineForPeopleOf(row, phrases) {
    return gradus.filled(phrases.told, {
      day: dayOf(row, phrases), week: row.week, session: nameOf(row, phrases), how: howOf(row, phrases),
      effort: row.effort === undefined ? notSaid : row.effort,
      pain: painOf(row)
    });
  }

  // A part says nothing that would end it.
  function plain(text) {
    return String(text).replace(/[;\r\n]+/g, ',').trim();
  }

  function outcomeOf(row) {
    if (row.skip) return 'not today ' + row.skip;
    return row.done === false ? 'stopped' + (row.feel ? ' ' + row.feel : '') : 'done';
  }

  // "ankle-rock left 2, ankle-rock right 2, plank 1": what of each exercise and side the row has under that name.
  function eachOf(row, what) {
    return (row.exercises || [])
      .map(function (one) { return [one.exercise, one.side, what(one)]; })
      .filter(function (parts) { return parts[2] !== undefined && parts[2] !== ''; })
      .map(function (parts) { return parts.filter(function (part) { return part !== '' && part !== undefined; }).join(' '); })
      .join(', ');
  }

  function leftOutOf(row) {
    return (row.exercises || []).filter(function (one) { return one.stopped; })
      .map(function (one) { return [one.exercise, one.feel, gradus.painText((one.places || [])[0])].filter(Boolean).join(' '); })
      .join(', ');
  }

  // The line that a program checks (src/Reading/Logs/log-format.md): what was not said is left out.
  gradus.machineLineOf = function (row) {
    const hurt = row.pain !== undefined || row.where ? { level: row.pain, where: row.where, side: row.side } : null;
    const named = [
      ['edition', row.edition], ['course', row.course], ['week', row.week], ['session', row.session], ['kind', row.kind],
      ['', outcomeOf(row)], ['steps', row.of === undefined ? '' : row.did + ' of ' + row.of], ['minutes', row.minutes],
      ['effort', row.effort], ['pain-before', gradus.painText(row.before)], ['pain-during', gradus.painText(hurt)],
      ['pain-morning', gradus.painText(row.after)], ['worse', row.morning === 'first' ? '' : row.morning],
      ['alarm', row.alarm], ['sets', eachOf(row, function (one) { return one.sets; })], ['left out', leftOutOf(row)],
      ['measured', eachOf(row, function (one) { return one.measured ? one.measured.join(' ') : ''; })], ['note', row.note]
    ].filter(function (part) { return part[1] !== undefined && part[1] !== null && part[1] !== ''; });
    const parts = named.map(function (part) { return (part[0] + ' ' + plain(part[1])).trim(); });
    const text = ['gradus ' + [row.day, row.start].filter(Boolean).join(' ')].concat(parts).join('; ');
    return text + '; sum ' + gradus.checkSum(text);
  };

  // Told of the last row; the lines for a program of the one before it too, which knows by now how the morning after was.
  gradus.messageOf = function (rows, phrases) {
    const told = rows.slice(-2);
    return [lineForPeopleOf(told[told.length - 1], phrases)].concat(told.map(gradus.machineLineOf)).join('\n');
  };
})();
