// What was done, as a file that a spreadsheet opens. It knows no page.
//
// The file is CSV (RFC 4180): a line for each session, with no exercise in it, and below it a line for each of its exercises.
// Its columns: date (2026-12-07), session and week (numbers), exercise (as in the address of its page), sets and repetitions
// done, load, effort and pain (0 to 10), where it hurts and on which side, stopped (yes: the line was ended early), note, and
// whether it was worse the morning after (yes or no). Where a session was stopped for a sign that cannot wait, a column alarm
// says which.
// A cell that a spreadsheet would take for a formula has an apostrophe
// before it.
//
// A column is found by its name, wherever it stands; one that is missing is empty. What is not known here, a column or what
// stands in a cell, is kept as it is (more: pairs of a name and a text) and written again.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const columns = [
    'date', 'session', 'week', 'exercise', 'sets', 'repetitions', 'load', 'effort', 'pain', 'where', 'side', 'stopped', 'note',
    'worse-next-morning'
  ];

  // The numbers that a line may have: the least and the most.
  const numbers = { sets: [0, 1000], repetitions: [0, 9999], effort: [0, 10], pain: [0, 10] };
  const formula = /^'*[=+\-@\t\r]/;
  const separators = [',', ';', '\t'];

  function cell(value) {
    const text = value === undefined || value === null ? '' : String(value);
    const safe = formula.test(text) ? "'" + text : text;
    return /[",\r\n]/.test(safe) || safe !== text ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }

  // What a cell says without the apostrophe that was put before it.
  function bare(text) {
    return text[0] === "'" && formula.test(text) ? text.slice(1) : text;
  }

  function moreOf(part) {
    return Array.isArray(part.more) ? part.more.filter(Array.isArray) : [];
  }

  // What an unknown column has to say of a line, or a cell of a known one that could not be read.
  function keptIn(part, name) {
    const pair = moreOf(part).find(function (one) { return one[0] === name; });
    return pair ? pair[1] : '';
  }

  function lineOf(row, of, names) {
    const known = {
      date: row.day, session: row.session, week: row.week, exercise: of.exercise, sets: of.sets, repetitions: of.repetitions,
      load: of.load, effort: of.effort, pain: of.pain, where: of.where, side: of.side, stopped: of.stopped ? 'yes' : '',
      note: of.note, 'worse-next-morning': of.morning
    };
    return names.map(function (name) {
      const value = columns.indexOf(name) < 0 ? '' : known[name];
      return cell(value === undefined || value === null || value === '' ? keptIn(of, name) : value);
    }).join(',');
  }

  // The line of the session, and one for each of its exercises.
  function linesOf(row, names) {
    const whole = Object.assign({}, row, { exercise: '', stopped: row.done === false });
    return [lineOf(row, whole, names)].concat((row.exercises || []).map(function (one) { return lineOf(row, one, names); }));
  }

  gradus.writeLog = function (rows) {
    const more = rows.flatMap(function (row) { return [row].concat(row.exercises || []).flatMap(moreOf); });
    const names = Array.from(new Set(columns.concat(more.map(function (pair) { return pair[0]; }))));
    const lines = rows.flatMap(function (row) { return linesOf(row, names); });
    return [names.map(cell).join(',')].concat(lines).join('\r\n') + '\r\n';
  };

  // The cells of each line.
  function cellsOf(text, separator) {
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
      while (at < text.length && text[at] !== separator && text[at] !== '\r' && text[at] !== '\n') value += text[at++];
      line.push(bare(value));
      if (text[at] === separator) {
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

  function isSaid(text) {
    return text !== '';
  }

  function isDay(text) {
    return /^\d{4}-\d\d-\d\d$/.test(text);
  }

  function numberIn(text, least, most) {
    const number = /^\d{1,4}$/.test(text) ? Number(text) : null;
    return number !== null && number >= least && number <= most ? number : undefined;
  }

  // The columns that a line names; null where it is no head of a log.
  function headOf(line) {
    const names = line.map(function (name) {
      const plain = name.trim();
      return columns.indexOf(plain.toLowerCase()) < 0 ? plain : plain.toLowerCase();
    });
    return names.indexOf('date') >= 0 && names.indexOf('session') >= 0 ? names : null;
  }

  // What a line says under each name; nothing where the column is missing. A cell without a name of its own is lost.
  function namedIn(line, head) {
    const of = {};
    for (const name of columns) of[name] = line[head.indexOf(name)] || '';
    const isOwn = function (i) { return head[i] && head.indexOf(head[i]) === i; };
    const more = head.map(function (name, i) { return [name, line[i] || '']; })
      .filter(function (pair, i) { return isOwn(i) && columns.indexOf(pair[0]) < 0 && pair[1] !== ''; });
    return { of: of, more: more, isLost: line.some(function (text, i) { return text !== '' && !isOwn(i); }) };
  }

  // What a line says of how it went, and what of it could not be read.
  function partOf(named) {
    const of = named.of;
    const more = named.more.slice();
    const part = {
      exercise: of.exercise, load: of.load, where: of.where, side: of.side, stopped: of.stopped === 'yes' ? true : undefined,
      note: of.note, morning: of['worse-next-morning']
    };
    for (const name of Object.keys(numbers)) part[name] = numberIn(of[name], numbers[name][0], numbers[name][1]);
    const checked = Object.keys(numbers).concat('stopped');
    const strange = checked.filter(function (name) { return of[name] !== '' && part[name] === undefined; });
    for (const name of strange) more.push([name, of[name]]);
    for (const name of Object.keys(part)) if (part[name] === undefined || part[name] === '') delete part[name];
    if (more.length > 0) part.more = more;
    return { part: part, isWhole: strange.length === 0 && !named.isLost };
  }

  // The rows, and in how many lines something could not be read. What stands before the head is no line of the log, and a head
  // may come again, where somebody has put two logs into one file. Null where there is none.
  function rowsIn(lines) {
    const rows = [];
    let head = null;
    let unread = 0;
    for (const line of lines) {
      const isBelow = head !== null && isDay(line[head.indexOf('date')] || '');
      const next = isBelow ? null : headOf(line);
      if (next) head = next;
      else if (head !== null && line.some(isSaid)) unread += read(namedIn(line, head)) ? 0 : 1;
    }
    return head === null ? null : { rows: rows, unread: unread };

    // Whether all of the line could be read.
    function read(named) {
      const of = named.of;
      const session = numberIn(of.session, 1, 9999);
      const week = numberIn(of.week, 1, 9999);
      const found = partOf(named);
      const last = rows[rows.length - 1];
      if (!isDay(of.date) || session === undefined || week === undefined) return false;
      if (!found.part.exercise) {
        const row = Object.assign({ day: of.date, week: week, session: session }, found.part);
        if (row.stopped) row.done = false;
        delete row.stopped;
        rows.push(row);
      } else if (last && last.day === of.date && last.session === session) {
        last.exercises = (last.exercises || []).concat([found.part]);
      } else return false;
      return found.isWhole;
    }
  }

  // A spreadsheet may have put another separator between the cells. Null where it is no log.
  gradus.readLog = function (text) {
    for (const separator of separators) {
      const read = rowsIn(cellsOf(text, separator));
      if (read) return read;
    }
    return null;
  };

  // The same line with what either of two files keeps of it.
  function together(one, other) {
    const names = moreOf(one).map(function (pair) { return pair[0]; });
    const more = moreOf(one).concat(moreOf(other).filter(function (pair) { return names.indexOf(pair[0]) < 0; }));
    return more.length > 0 ? Object.assign({}, one, { more: more }) : one;
  }

  function bothOf(row, same) {
    const exercises = (row.exercises || []).map(function (one, i) { return together(one, same.exercises[i]); });
    return Object.assign({}, together(row, same), exercises.length > 0 ? { exercises: exercises } : {});
  }

  // Those of both, in the order of their days; what is in both stands there once.
  gradus.joinLogs = function (kept, read) {
    const textOf = function (row) { return linesOf(row, columns).join('\n'); };
    const texts = kept.map(textOf);
    const joined = kept.slice();
    for (const row of read) {
      const at = texts.indexOf(textOf(row));
      if (at < 0) joined.push(row);
      else joined[at] = bothOf(joined[at], row);
    }
    return joined.map(function (row, i) { return { row: row, i: i }; })
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
})();
