// What was done, as a file that a spreadsheet opens (CSV): a line for each session, with no exercise in it, and below it a line
// for each of its exercises, or two where left and right were counted apart. It knows no page.
//
// A column is found by its name, wherever it stands; one that is missing is empty. What is not known here, a column or what
// stands in a cell, is kept as it is (more: pairs of a name and a text) and written again.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const separators = [',', ';', '\t'];

  function whole(least, most) {
    return function (text) {
      const number = /^\d{1,4}$/.test(text) ? Number(text) : null;
      return number !== null && number >= least && number <= most ? number : undefined;
    };
  }

  function like(pattern) {
    return function (text) { return pattern.test(text) ? text : undefined; };
  }

  function among(words) {
    return function (text) { return words.indexOf(text) < 0 ? undefined : text; };
  }

  function decimal(text) {
    return /^\d{1,4}(\.\d{1,2})?$/.test(text) ? Number(text) : undefined;
  }

  function measured(text) {
    const numbers = text.split(' ').map(decimal);
    return numbers.indexOf(undefined) < 0 ? numbers : undefined;
  }

  const reasons = ['sharp', 'dull', 'numb', 'giving-way', 'snap', 'swollen', 'no-weight', 'tired', 'time'];
  const any = like(/[^]/);

  // Each column: its name, what of a line's part it holds, and how that is read from a text; what cannot be read is undefined.
  const ofSessions = [
    ['start', 'start', like(/^([01]\d|2[0-3]):[0-5]\d$/)], ['kind', 'kind', among(['full', 'short', 'travel', 'flare'])],
    ['edition', 'edition', any], ['course', 'course', any], ['steps-done', 'did', whole(0, 9999)],
    ['steps-planned', 'of', whole(0, 9999)], ['minutes', 'minutes', decimal], ['effort', 'effort', whole(0, 10)],
    ['pain-before', 'before', painIn], ['pain-during', 'during', painIn], ['pain-morning', 'after', painIn],
    ['worse-next-morning', 'morning', any], ['stopped', 'stopped', yes], ['stopped-for', 'feel', among(reasons)],
    ['not-today', 'skip', among(['ill', 'pain', 'health', 'time', 'other'])], ['alarm', 'alarm', any], ['note', 'note', any]
  ];
  const ofExercises = [
    ['exercise', 'exercise', any], ['side', 'side', among(['left', 'right'])], ['sets', 'sets', whole(0, 1000)],
    ['repetitions', 'repetitions', whole(0, 9999)], ['load', 'load', any], ['stopped', 'stopped', yes],
    ['stopped-for', 'feel', among(reasons)], ['where', 'hurts', painIn], ['measured', 'measured', measured]
  ];

  // Before December 2026 the worst pain and its place stood in three columns, those of a stopped exercise too.
  const before = ['pain', 'where', 'side'];

  const columns = [
    'date', 'start', 'session', 'week', 'kind', 'edition', 'course', 'exercise', 'side', 'sets', 'repetitions', 'load',
    'steps-done', 'steps-planned', 'minutes', 'effort', 'pain-before', 'pain-during', 'pain-morning', 'worse-next-morning',
    'stopped', 'stopped-for', 'where', 'not-today', 'alarm', 'measured', 'note'
  ];

  function yes(text) {
    return text === 'yes' ? true : undefined;
  }

  // "2 left knee", or the level or the place alone.
  gradus.painText = function (pain) {
    return pain ? [pain.level, pain.side, pain.where].filter(function (part) { return part || part === 0; }).join(' ') : '';
  };

  function painIn(text) {
    const found = /^(?:(\d\d?)(?: |$))?(?:(left|right) )?([a-z-]*)$/.exec(text);
    if (!found || Number(found[1] || 0) > 10 || (found[2] && !found[3])) return undefined;
    return { level: found[1] === undefined ? undefined : Number(found[1]), where: found[3], side: found[2] || '' };
  }

  function moreOf(part) {
    return Array.isArray(part.more) ? part.more.filter(Array.isArray) : [];
  }

  // What an unknown column has to say of a line, or a cell of a known one that could not be read.
  function keptIn(part, name) {
    const pair = moreOf(part).find(function (one) { return one[0] === name; });
    return pair ? pair[1] : '';
  }

  function textOf(value) {
    if (typeof value === 'boolean') return value ? 'yes' : '';
    if (Array.isArray(value)) return value.join(' ');
    return value !== null && typeof value === 'object' ? gradus.painText(value) : value;
  }

  function lineOf(row, part, fields, names) {
    const known = { date: row.day, session: row.session, week: row.week };
    for (const field of fields) known[field[0]] = textOf(part[field[1]]);
    return names.map(function (name) {
      const value = columns.indexOf(name) < 0 ? '' : known[name];
      return gradus.cell(value === undefined || value === null || value === '' ? keptIn(part, name) : value);
    }).join(',');
  }

  // As a row keeps it: the worst pain lies open, and where a stopped exercise hurt in a list of places.
  function sessionOf(row) {
    const hurt = row.pain !== undefined || row.where ? { level: row.pain, where: row.where, side: row.side } : undefined;
    return Object.assign({}, row, { during: hurt, stopped: row.done === false && !row.skip });
  }

  function exerciseOf(one) {
    const places = Array.isArray(one.places) ? one.places : one.where ? [{ where: one.where, side: one.side }] : [];
    return Object.assign({}, one, { hurts: places[0], side: one.where ? '' : one.side });
  }

  // The line of the session, and one for each of its exercises.
  function linesOf(row, names) {
    return [lineOf(row, sessionOf(row), ofSessions, names)]
      .concat((row.exercises || []).map(function (one) { return lineOf(row, exerciseOf(one), ofExercises, names); }));
  }

  gradus.writeLog = function (rows) {
    const more = rows.flatMap(function (row) { return [row].concat(row.exercises || []).flatMap(moreOf); });
    const names = Array.from(new Set(columns.concat(more.map(function (pair) { return pair[0]; }))));
    const lines = rows.flatMap(function (row) { return linesOf(row, names); });
    return [names.map(gradus.cell).join(',')].concat(lines).join('\r\n') + '\r\n';
  };

  function isSaid(text) {
    return text !== '';
  }

  function isDay(text) {
    return /^\d{4}-\d\d-\d\d$/.test(text);
  }

  // The columns that a line names; null where it is no head of a log.
  function headOf(line) {
    const known = columns.concat(before);
    const names = line.map(function (name) {
      const plain = name.trim();
      return known.indexOf(plain.toLowerCase()) < 0 ? plain : plain.toLowerCase();
    });
    return names.indexOf('date') >= 0 && names.indexOf('session') >= 0 ? names : null;
  }

  // What a line says under each name; nothing where the column is missing. A cell without a name of its own is lost.
  function namedIn(line, head) {
    const isOld = head.indexOf('pain') >= 0 && head.indexOf('pain-during') < 0;
    const of = {};
    for (const name of columns.concat(isOld ? before : [])) of[name] = line[head.indexOf(name)] || '';
    const isOwn = function (i) { return head[i] && head.indexOf(head[i]) === i; };
    const more = head.map(function (name, i) { return [name, line[i] || '']; })
      .filter(function (pair, i) { return isOwn(i) && !Object.hasOwn(of, pair[0]) && pair[1] !== ''; });
    const isLost = line.some(function (text, i) { return text !== '' && !isOwn(i); });
    return { of: isOld ? renewed(of) : of, more: more, isLost: isLost };
  }

  // The three columns of before as those of today.
  function renewed(of) {
    const pain = [of.pain, of.where && of.side, of.where].filter(Boolean).join(' ');
    const isLevel = of.pain === '' || whole(0, 10)(of.pain) !== undefined;
    if (of.exercise) return Object.assign({}, of, { where: of.where ? pain : '', side: of.where ? '' : of.side });
    return Object.assign({}, of, { 'pain-during': isLevel ? pain : of.pain, where: '', side: '' });
  }

  // What a line says of how it went, and what of it could not be read.
  function partOf(named) {
    const of = named.of;
    const fields = of.exercise ? ofExercises : ofSessions;
    const part = {};
    const more = named.more.slice();
    for (const field of fields) {
      const value = of[field[0]] === '' ? undefined : field[2](of[field[0]]);
      if (value !== undefined) part[field[1]] = value;
    }
    const strange = columns.filter(function (name) {
      const field = fields.find(function (one) { return one[0] === name; });
      const isOfLine = ['date', 'session', 'week'].indexOf(name) >= 0;
      return of[name] !== '' && !isOfLine && (!field || part[field[1]] === undefined);
    });
    for (const name of strange) more.push([name, of[name]]);
    if (more.length > 0) part.more = more;
    return { part: part, isWhole: strange.length === 0 && !named.isLost };
  }

  function asExercise(part) {
    if (part.hurts) part.places = [{ where: part.hurts.where, side: part.hurts.side }];
    delete part.hurts;
    return part;
  }

  function asSession(day, week, session, part) {
    const row = Object.assign({ day: day, week: week, session: session }, part);
    if (row.during && row.during.level !== undefined) row.pain = row.during.level;
    if (row.during && row.during.where) Object.assign(row, { where: row.during.where, side: row.during.side });
    if (row.stopped || row.skip) row.done = false;
    delete row.during;
    delete row.stopped;
    return row;
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
      const session = whole(1, 9999)(of.session);
      const week = whole(1, 9999)(of.week);
      const found = partOf(named);
      const last = rows[rows.length - 1];
      if (!isDay(of.date) || session === undefined || week === undefined) return false;
      if (!of.exercise) rows.push(asSession(of.date, week, session, found.part));
      else if (last && last.day === of.date && last.session === session) {
        last.exercises = (last.exercises || []).concat([asExercise(found.part)]);
      } else return false;
      return found.isWhole;
    }
  }

  // A spreadsheet may have put another separator between the cells. Null where it is no log.
  gradus.readLog = function (text) {
    for (const separator of separators) {
      const read = rowsIn(gradus.cellsOf(text, separator));
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
    const exercises = (row.exercises || []).map(function (one, i) { return together(one, (same.exercises || [])[i] || {}); });
    const filled = Object.assign({}, same, row);
    return Object.assign({}, together(filled, same), exercises.length > 0 ? { exercises: exercises } : {});
  }

  // By what a session is known again: when it began; where that is not said, by all that is said of it.
  function identityOf(row) {
    return row.start ? [row.day, row.start, row.session, row.edition].join(' ') : linesOf(row, columns).join('\n');
  }

  // Those of both, in the order of their days; what is in both stands there once.
  gradus.joinLogs = function (kept, read) {
    const known = kept.map(identityOf);
    const joined = kept.slice();
    for (const row of read) {
      const at = known.indexOf(identityOf(row));
      if (at < 0) joined.push(row);
      else joined[at] = bothOf(joined[at], row);
    }
    return joined.map(function (row, i) { return { row: row, i: i }; })
      .sort(function (a, b) { return a.row.day < b.row.day ? -1 : a.row.day > b.row.day ? 1 : a.i - b.i; })
      .map(function (one) { return one.row; });
  };
})();
