// What was done, as a file that a spreadsheet opens, and as a short text for a message. It knows no page.
//
// The file is CSV (RFC 4180): a line for each session, with no exercise in it, and below it a line for each of its exercises. Its columns: date (2026-12-07), session and week
// (numbers), exercise (as in the address of its page), sets and repetitions done, load, effort and pain (0 to 10), where it hurts and on which side, stopped (yes: the line was
// ended early), note, and whether it was worse the morning after (yes or no). A cell that a spreadsheet would take for a formula has an apostrophe before it.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const columns = ['date', 'session', 'week', 'exercise', 'sets', 'repetitions', 'load', 'effort', 'pain', 'where', 'side', 'stopped', 'note', 'worse-next-morning'];
  const formula = /^'*[=+\-@\t\r]/;

  function cell(value) {
    const text = value === undefined || value === null ? '' : String(value);
    const safe = formula.test(text) ? "'" + text : text;
    return /[",\r\n]/.test(safe) || safe !== text ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }

  // What a cell says without the apostrophe that was put before it.
  function bare(text) {
    return text[0] === "'" && formula.test(text) ? text.slice(1) : text;
  }

  function lineOf(row, of) {
    return [row.day, row.session, row.week, of.exercise, of.sets, of.repetitions, of.load, of.effort, of.pain, of.where, of.side, of.stopped ? 'yes' : '', of.note, of.morning].map(cell).join(',');
  }

  gradus.logColumns = columns;

  gradus.writeLog = function (rows) {
    const lines = rows.flatMap(function (row) {
      const whole = Object.assign({}, row, { exercise: '', stopped: row.done === false });
      return [lineOf(row, whole)].concat((row.exercises || []).map(function (one) { return lineOf(row, one); }));
    });
    return [columns.join(',')].concat(lines).join('\r\n') + '\r\n';
  };

  // The cells of each line.
  function cellsOf(text) {
    const lines = [];
    let line = [];
    let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    while (at < text.length) {
      let value = '';
      if (text[at] === '"') {
        for (at++; at < text.length && !(text[at] === '"' && text[at + 1] !== '"'); at++) {
          if (text[at] === '"') at++;
          value += text[at];
        }
        at++;
      }
      while (at < text.length && ',\r\n'.indexOf(text[at]) < 0) value += text[at++];
      line.push(bare(value));
      if (text[at] === ',') {
        at++;
        if (at === text.length || text[at] === '\r' || text[at] === '\n') line.push('');
        if (at < text.length && text[at] !== '\r' && text[at] !== '\n') continue;
      }
      while (text[at] === '\r' || text[at] === '\n') at++;
      lines.push(line);
      line = [];
    }
    return lines;
  }

  function numberIn(text, least, most) {
    const number = /^\d{1,4}$/.test(text) ? Number(text) : null;
    return number !== null && number >= least && number <= most ? number : undefined;
  }

  function partOf(of) {
    const part = {
      exercise: of.exercise, sets: numberIn(of.sets, 0, 1000), repetitions: numberIn(of.repetitions, 0, 9999), load: of.load, effort: numberIn(of.effort, 0, 10), pain: numberIn(of.pain, 0, 10),
      where: of.where, side: of.side, stopped: of.stopped === 'yes' ? true : undefined, note: of.note, morning: of['worse-next-morning']
    };
    for (const name of Object.keys(part)) if (part[name] === undefined || part[name] === '') delete part[name];
    return part;
  }

  // The rows, and how many lines could not be read. Null where it is no such file.
  gradus.readLog = function (text) {
    const lines = cellsOf(text);
    if (lines.length === 0 || columns.some(function (name, i) { return lines[0][i] !== name; })) return null;
    const rows = [];
    let unread = 0;
    for (const line of lines.slice(1)) {
      const of = {};
      columns.forEach(function (name, i) { of[name] = line[i] || ''; });
      const session = numberIn(of.session, 1, 9999);
      const week = numberIn(of.week, 1, 9999);
      const part = partOf(of);
      const last = rows[rows.length - 1];
      if (!/^\d{4}-\d\d-\d\d$/.test(of.date) || session === undefined || week === undefined) unread++;
      else if (!part.exercise) {
        const row = Object.assign({ day: of.date, week: week, session: session }, part, part.stopped ? { done: false } : {});
        delete row.stopped;
        rows.push(row);
      } else if (last && last.day === of.date && last.session === session) last.exercises = (last.exercises || []).concat([part]);
      else unread++;
    }
    return { rows: rows, unread: unread };
  };

  // Those of both, in the order of their days; what is in both stands there once.
  gradus.joinLogs = function (kept, read) {
    const known = kept.map(function (row) { return gradus.writeLog([row]); });
    return kept.concat(read.filter(function (row) { return known.indexOf(gradus.writeLog([row])) < 0; }))
      .map(function (row, i) { return { row: row, i: i }; })
      .sort(function (a, b) { return a.row.day < b.row.day ? -1 : a.row.day > b.row.day ? 1 : a.i - b.i; })
      .map(function (one) { return one.row; });
  };

  // CRC-32 (ISO 3309, as in zip files) of the text in UTF-8, eight hexadecimal digits. The sum of "123456789" is cbf43926.
  gradus.checkSum = function (text) {
    let sum = 0xffffffff;
    for (const byte of unescape(encodeURIComponent(text))) {
      sum ^= byte.charCodeAt(0);
      for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
    }
    return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
  };

  // One line that a person can read and a program can check.
  gradus.messageOf = function (row) {
    const hurts = row.pain > 0 ? row.pain + ' of 10' + (row.where ? ', ' + [row.side, row.where].filter(Boolean).join(' ') : '') : row.pain === 0 ? 'none' : 'not said';
    const stopped = (row.exercises || []).filter(function (one) { return one.stopped; }).map(function (one) { return one.exercise; });
    const parts = [
      'gradus ' + row.day, 'edition ' + (row.edition || 'unknown'), 'week ' + row.week, 'session ' + row.session, row.done === false ? 'stopped' : 'done', 'pain ' + hurts
    ].concat(stopped.length > 0 ? ['left out ' + stopped.join(', ')] : []);
    const text = parts.join('; ');
    return text + '; sum ' + gradus.checkSum(text);
  };
})();
