// After the last day on which the pages are good, this says so before anything else on the page. Without scripts the foot of every page names the same day.
(function () {
  'use strict';

  function twoDigits(number) {
    return String(number).padStart(2, '0');
  }

  // The day where the client is, written as the page writes days, so that the two can be compared as texts.
  function today() {
    const now = new Date();
    return now.getFullYear() + '-' + twoDigits(now.getMonth() + 1) + '-' + twoDigits(now.getDate());
  }

  const notice = document.querySelector('[data-good-until]');
  if (notice && today() > notice.getAttribute('data-good-until')) {
    notice.hidden = false;
  }
})();

// What the client has done, as this browser keeps it: a day, a week, a session and how it went for each, and no names. A browser may keep nothing at all; then there is none.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const course = document.querySelector('[data-course]');
  const place = 'gradus.' + (course ? course.getAttribute('data-course') : '') + '.';

  function read(what) {
    try {
      return JSON.parse(window.localStorage.getItem(place + what));
    } catch {
      return null;
    }
  }

  // Whether it was kept.
  function write(what, value) {
    try {
      window.localStorage.setItem(place + what, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  }

  function twoDigits(number) {
    return String(number).padStart(2, '0');
  }

  function isRow(row) {
    return row !== null && typeof row === 'object' && /^\d{4}-\d\d-\d\d$/.test(row.day) && Number.isInteger(row.week) && Number.isInteger(row.session);
  }

  gradus.today = function () {
    const now = new Date();
    return now.getFullYear() + '-' + twoDigits(now.getMonth() + 1) + '-' + twoDigits(now.getDate());
  };

  function counts(row) {
    return row.done !== false;
  }

  gradus.log = {
    // In the order in which they were done. What somebody else wrote there is left out.
    all: function () {
      const kept = read('log');
      return Array.isArray(kept) ? kept.filter(isRow) : [];
    },
    // Those that the weeks go on from: a session that was ended early is done again.
    rows: function () {
      return gradus.log.all().filter(counts);
    },
    add: function (row) {
      return write('log', gradus.log.all().concat([row]));
    },
    // The last one as it is now.
    change: function (row) {
      return write('log', gradus.log.all().slice(0, -1).concat([row]));
    },
    replace: function (rows) {
      return write('log', rows);
    },
    takeBack: function () {
      const kept = gradus.log.all();
      const last = kept.map(counts).lastIndexOf(true);
      return write('log', kept.filter(function (row, i) { return i !== last; }));
    },
    // Whatever else is kept for this programme: how somebody likes to be led, and what was read.
    kept: read,
    keep: write,
    wipe: function () {
      try {
        const names = Array.from({ length: window.localStorage.length }, function (none, i) { return window.localStorage.key(i); });
        for (const name of names) if (name.indexOf(place) === 0) window.localStorage.removeItem(name);
        return true;
      } catch {
        return false;
      }
    },
    // The week that the client chose, and on which day.
    chosen: function () {
      const kept = read('week');
      return kept && Number.isInteger(kept.week) && typeof kept.day === 'string' ? kept : null;
    },
    choose: function (week, day) {
      return write('week', { week: week, day: day });
    }
  };
})();

// Which week it is. The calendar says so until something was done; from then on the weeks go on with the sessions: a week is over when its sessions are done and seven days have passed
// since its first one. After a break it is the last completed week, after a long one the first.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const dayLength = 24 * 60 * 60 * 1000;

  // Whole days from one day to another, both written as 2026-12-07.
  function daysBetween(first, last) {
    return Math.round((Date.parse(last + 'T00:00:00Z') - Date.parse(first + 'T00:00:00Z')) / dayLength);
  }

  gradus.daysBetween = daysBetween;

  // The rows split where the week changes, or where there was a break: each run is one try at one week.
  function runsOf(rows, backOneWeek) {
    const runs = [];
    let before = null;
    for (const row of rows) {
      if (!before || before.week !== row.week || daysBetween(before.day, row.day) > backOneWeek) runs.push([]);
      runs[runs.length - 1].push(row);
      before = row;
    }
    return runs;
  }

  function isComplete(run, course) {
    const done = {};
    for (const row of run) {
      const session = course.instead[row.session] || row.session;
      done[session] = (done[session] || 0) + 1;
    }
    return (course.needs[run[0].week - 1] || []).every(function (need) { return (done[need.session] || 0) >= need.times; });
  }

  // course: start, back [days, days], needs (for each week its sessions and times), instead (session to session).
  // Gives the week, why it is that one ('calendar', 'log', 'break' or 'long-break'), and the last week that may be chosen instead.
  gradus.weekOf = function (course, rows, chosen, today) {
    const last = course.needs.length;
    const done = rows
      .filter(function (row) { return row.day <= today && row.week >= 1 && row.week <= last; })
      .sort(function (a, b) { return a.day < b.day ? -1 : a.day > b.day ? 1 : 0; });
    const found = done.length === 0 ? byCalendar() : byLog();
    const since = done.length === 0 ? course.start : done[done.length - 1].day;
    const isFresh = chosen && chosen.day <= today && chosen.day >= since && daysBetween(chosen.day, today) <= course.back[0];
    return isFresh && chosen.week >= 1 && chosen.week <= found.most ? { week: chosen.week, why: 'chosen', most: found.most } : found;

    function byCalendar() {
      const week = Math.min(Math.max(Math.floor(daysBetween(course.start, today) / 7) + 1, 1), last);
      return { week: week, why: today < course.start ? 'early' : 'calendar', most: week };
    }

    function byLog() {
      const runs = runsOf(done, course.back[0]);
      const run = runs[runs.length - 1];
      const reached = run[0].week;
      const idle = daysBetween(run[run.length - 1].day, today);
      const complete = isComplete(run, course);
      if (idle > course.back[1]) return { week: 1, why: 'long-break', most: reached };
      if (idle > course.back[0]) {
        const whole = runs.filter(function (r) { return isComplete(r, course); });
        return { week: whole.length > 0 ? whole[whole.length - 1][0].week : reached, why: 'break', most: reached };
      }
      const week = complete && daysBetween(run[0].day, today) >= 7 ? Math.min(reached + 1, last) : reached;
      return { week: week, why: 'log', most: week };
    }
  };

  gradus.courseOf = function (element) {
    const instead = {};
    for (const pair of (element.getAttribute('data-instead') || '').split(' ').filter(Boolean)) {
      const parts = pair.split('=').map(Number);
      instead[parts[0]] = parts[1];
    }
    return {
      start: element.getAttribute('data-start'),
      back: element.getAttribute('data-back').split(' ').map(Number),
      needs: element.getAttribute('data-needs').split(';').map(function (week) {
        return week.split(' ').filter(Boolean).map(function (need) {
          const parts = need.split('x').map(Number);
          return { session: parts[0], times: parts[1] };
        });
      }),
      instead: instead
    };
  };
})();

// Shows this week and puts the others away, says what is due today, and notes what was done. Without scripts every week stands there.
(function () {
  'use strict';

  const gradus = window.gradus;
  const holder = document.querySelector('[data-course]');
  if (!holder) return;

  const course = gradus.courseOf(holder);
  const today = gradus.today();
  let showAll = false;
  let chosenHere = null;

  function all(selector, inside) {
    return Array.from((inside || document).querySelectorAll(selector));
  }

  function weeksOf(element) {
    return element.getAttribute('data-weeks').split(' ').map(Number);
  }

  // 1 for Monday to 7 for Sunday.
  function weekday() {
    return (new Date().getDay() + 6) % 7 + 1;
  }

  function isDone(session) {
    return gradus.log.rows().some(function (row) { return row.day === today && (row.session === session || course.instead[row.session] === session); });
  }

  // How many days from today a session is due; null where its days are not fixed.
  function dueIn(card) {
    const days = (card.getAttribute('data-weekdays') || '').split(' ').filter(Boolean).map(Number);
    if (days.length === 0) return null;
    return Math.min.apply(null, days.map(function (day) { return (day - weekday() + 7) % 7; }));
  }

  function say(card, what) {
    for (const line of all('[data-say]', card)) line.hidden = line.getAttribute('data-say') !== what;
  }

  // Whether a session without fixed days is still to be done this week, and was not done yesterday: the coach wants a day between.
  function isOpen(session, week) {
    const need = (course.needs[week - 1] || []).find(function (one) { return one.session === session; });
    const done = gradus.log.rows().filter(function (row) { return row.session === session || course.instead[row.session] === session; });
    return need !== undefined && done.filter(function (row) { return row.week === week; }).length < need.times
      && done.every(function (row) { return gradus.daysBetween(row.day, today) > 1; });
  }

  function sayWhatIsDue(now) {
    const cards = all('[data-due]').map(function (card) {
      const weeks = all('[data-weeks]', card).flatMap(weeksOf);
      const session = Number(card.getAttribute('data-due'));
      return { card: card, session: session, inWeek: weeks.indexOf(now.week) >= 0, due: now.why === 'early' ? null : dueIn(card), isOpen: now.why !== 'early' && dueIn(card) === null && isOpen(session, now.week) };
    });
    const isToday = cards.some(function (c) { return c.inWeek && c.due === 0; });
    const ahead = cards.filter(function (c) { return c.inWeek && c.due !== null; }).map(function (c) { return c.due; });
    const next = ahead.length > 0 ? Math.min.apply(null, ahead) : null;
    for (const c of cards) {
      say(c.card, isDone(c.session) ? 'done' : !c.inWeek ? 'not-this-week' : c.due === 0 ? 'today' : c.isOpen ? 'any-day' : !isToday && c.due !== null && c.due === next ? 'next' : '');
    }
    for (const line of all('[data-nothing-today]')) line.hidden = isToday || next === null || cards.some(function (c) { return c.isOpen; });

    // What is due comes first.
    const due = cards.filter(function (c) { return c.inWeek && c.due !== null && c.due === next; });
    if (due.length > 0) due[0].card.parentElement.prepend.apply(due[0].card.parentElement, due.map(function (c) { return c.card; }));
  }

  function showButtons() {
    for (const one of all('[data-one-week]')) {
      const parts = all('[data-weeks]', one);
      const none = one.querySelector('[data-none-now]');
      if (none) none.hidden = showAll || parts.some(function (part) { return !part.hidden; });
      for (const button of all('[data-all-weeks]', one)) {
        button.hidden = parts.length < 2 && !(none && !none.hidden);
        button.setAttribute('aria-pressed', String(showAll));
      }
    }
    for (const part of all('[data-done]')) {
      part.hidden = false;
      const done = isDone(Number(part.getAttribute('data-done')));
      part.querySelector('[data-do]').hidden = done;
      part.querySelector('[data-undo]').hidden = !done;
    }
  }

  function show() {
    const now = gradus.weekNow();
    for (const part of all('[data-weeks]')) {
      const isNow = weeksOf(part).indexOf(now.week) >= 0;
      part.classList.toggle('this-week', isNow);
      part.hidden = !isNow && !showAll && part.closest('[data-one-week]') !== null;
    }
    for (const one of all('[data-while-planned]')) one.hidden = all('[data-weeks]', one).every(function (part) { return part.hidden; });
    for (const line of all('[data-week-now]')) line.hidden = Number(line.getAttribute('data-week-now')) !== now.week;
    for (const line of all('[data-why]')) line.hidden = line.getAttribute('data-why') !== now.why;
    for (const choice of all('[data-choose-week]')) {
      const week = Number(choice.getAttribute('data-choose-week'));
      choice.hidden = week > now.most;
      choice.setAttribute('aria-pressed', String(week === now.week));
    }
    for (const choice of all('[data-choose]')) choice.hidden = now.most < 2;
    showButtons();
    sayWhatIsDue(now);
    return now;
  }

  function tell(part, what) {
    const line = part.querySelector('[role="status"]');
    line.textContent = what ? line.getAttribute(what) : '';
  }

  document.addEventListener('click', function (event) {
    const button = event.target.closest('button');
    if (!button) return;
    if (button.hasAttribute('data-choose-week')) {
      chosenHere = { week: Number(button.getAttribute('data-choose-week')), day: today };
      gradus.log.choose(chosenHere.week, today);
    } else if (button.hasAttribute('data-all-weeks')) {
      showAll = !showAll;
    } else if (button.hasAttribute('data-do')) {
      const part = button.closest('[data-done]');
      const now = show();
      const kept = gradus.log.add({ day: today, week: now.week, session: Number(part.getAttribute('data-done')) });
      tell(part, kept ? 'data-noted' : 'data-not-kept');
      if (kept) {
        show();
        part.querySelector('[data-undo]').focus();
      }
      return;
    } else if (button.hasAttribute('data-undo')) {
      const part = button.closest('[data-done]');
      gradus.log.takeBack();
      tell(part, '');
      show();
      part.querySelector('[data-do]').focus();
      return;
    } else {
      return;
    }
    show();
  });

  gradus.weekNow = function () {
    return gradus.weekOf(course, gradus.log.rows(), chosenHere || gradus.log.chosen(), today);
  };
  gradus.showWeek = show;

  for (const line of all('[data-without-scripts]')) line.remove();
  show();
})();

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

// The log as a file: saved, opened again, wiped, and the text to paste into a message.
(function () {
  'use strict';

  const gradus = window.gradus;
  const part = document.querySelector('[data-log-page]');

  function rowsFor(button) {
    const dialog = button.closest('dialog');
    const kept = gradus.log.all();
    const own = dialog && gradus.guides ? gradus.guides[dialog.getAttribute('data-guide')] : null;
    return kept.length === 0 && own && own.row ? [own.row] : kept;
  }

  function download(text) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
    link.download = 'log-' + gradus.today() + '.csv';
    link.click();
    window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 60000);
  }

  function say(what) {
    const line = part && part.querySelector('[data-log-said]');
    if (line) line.textContent = what ? line.getAttribute('data-' + what) : '';
  }

  function show() {
    if (!part) return;
    const rows = gradus.log.all();
    part.hidden = false;
    part.querySelector('[data-log-count]').textContent = String(rows.length);
    part.querySelector('[data-log-tools]').hidden = rows.length === 0;
  }

  async function open(field) {
    const file = field.files[0];
    if (!file) return;
    let read;
    try {
      read = file.size > 4000000 ? null : gradus.readLog(await file.text());
    } catch {
      read = null;
    }
    field.value = '';
    if (!read) {
      say('no-log');
      return;
    }
    const isKept = gradus.log.replace(gradus.joinLogs(gradus.log.all(), read.rows));
    say(!isKept ? 'not-kept' : read.unread > 0 ? 'unread' : 'opened');
    show();
    if (gradus.showWeek) gradus.showWeek();
  }

  const actions = {
    save: function (button) {
      download(gradus.writeLog(rowsFor(button)));
      say('saved');
    },
    message: function (button) {
      const rows = rowsFor(button);
      const tools = button.closest('[data-log-tools]');
      const text = tools.querySelector('[data-log-text]');
      text.value = rows.length > 0 ? gradus.messageOf(rows[rows.length - 1]) : '';
      tools.querySelector('[data-log-message]').hidden = false;
      text.focus();
      text.select();
    },
    wipe: function () {
      const really = part.querySelector('[data-log="wipe-really"]');
      really.hidden = false;
      really.focus();
    },
    'wipe-really': function (button) {
      button.hidden = true;
      say(gradus.log.wipe() ? 'wiped' : 'not-kept');
      part.querySelector('[data-log-message]').hidden = true;
      show();
      if (gradus.showWeek) gradus.showWeek();
      part.querySelector('[data-log="wipe"]').focus();
    }
  };

  document.addEventListener('click', function (event) {
    const button = event.target.closest('button[data-log]');
    if (button) actions[button.getAttribute('data-log')](button);
  });
  document.addEventListener('change', function (event) {
    if (event.target.matches('input[data-log="open"]')) open(event.target);
  });
  show();
})();
