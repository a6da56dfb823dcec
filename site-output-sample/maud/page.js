// After the last day on which the pages are good, this says so before anything else on the page. Without scripts the foot of
// every page names the same day.
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

// What the client has done, as this browser keeps it: a day, a week, a session and how it went for each, and no names. A
// browser may keep nothing at all; then there is none.
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
    return row !== null && typeof row === 'object' && /^\d{4}-\d\d-\d\d$/.test(row.day)
      && Number.isInteger(row.week) && Number.isInteger(row.session);
  }

  // "2026-12-07"
  gradus.isoOf = function (day) {
    return day.getFullYear() + '-' + twoDigits(day.getMonth() + 1) + '-' + twoDigits(day.getDate());
  };

  gradus.today = function () {
    return gradus.isoOf(new Date());
  };

  // "18:05", so many milliseconds after 1970.
  gradus.clockOf = function (time) {
    const moment = new Date(time);
    return twoDigits(moment.getHours()) + ':' + twoDigits(moment.getMinutes());
  };

  function isBegun(row) {
    return !row.skip;
  }

  function counts(row) {
    return row.done !== false;
  }

  gradus.log = {
    // In the order in which they were done. What somebody else wrote there is left out.
    all: function () {
      const kept = read('log');
      return Array.isArray(kept) ? kept.filter(isRow) : [];
    },
    // The last one that was begun, or stopped before it was; null where there is none.
    last: function () {
      return gradus.log.all().filter(isBegun).pop() || null;
    },
    // Those that the weeks go on from: a session that was ended early is done again.
    rows: function () {
      return gradus.log.all().filter(counts);
    },
    add: function (row) {
      return write('log', gradus.log.all().concat([row]));
    },
    // The last one that was begun as it is now.
    change: function (row) {
      const kept = gradus.log.all();
      const at = kept.map(isBegun).lastIndexOf(true);
      return write('log', kept.slice(0, Math.max(at, 0)).concat([row], kept.slice(at + 1)));
    },
    replace: function (rows) {
      return write('log', rows);
    },
    takeBack: function () {
      const kept = gradus.log.all();
      const last = kept.map(counts).lastIndexOf(true);
      return write('log', kept.filter(function (row, i) { return i !== last; }));
    },
    // By what whoever receives a log finds whose it is.
    course: course ? course.getAttribute('data-course') : '',
    edition: course ? course.getAttribute('data-edition') || '' : '',
    // Whatever else is kept for this programme: how somebody likes to be led, and what was read.
    kept: read,
    keep: write,
    wipe: function () {
      try {
        const store = window.localStorage;
        const names = Array.from({ length: store.length }, function (none, i) { return store.key(i); });
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

// Which week it is. Until something was done it is the first, whatever the calendar says: nobody begins with what others have
// grown to. From then on the weeks go on with the sessions: a week is over when its sessions are done and seven days have passed
// since its first one. After a break it is the last completed week, after a long one the first. A pause that the coach wrote is
// days without training like any others; the weeks of the calendar begin anew after it.
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

  // The pause that has that day; undefined on any other.
  gradus.pauseOn = function (course, day) {
    return course.pauses.find(function (pause) { return pause.from <= day && day <= pause.until; });
  };

  // The week that the calendar has on a day, from 1 to the last: one that a pause touches begins anew on the day after it.
  function calendarWeek(course, day) {
    const last = course.needs.length;
    const gone = daysBetween(course.start, day);
    let first = 0;
    let at = 0;
    for (let week = 1; week <= last; week++) {
      for (; at < course.pauses.length && daysBetween(course.start, course.pauses[at].from) < first + 7; at++) {
        first = daysBetween(course.start, course.pauses[at].until) + 1;
      }
      if (gone < first + 7) return week;
      first += 7;
    }
    return last;
  }

  // course: start, pauses (from and until, both inclusive, in their order), back [days, days],
  // needs (for each week its sessions and times), instead (session to session).
  // Gives the week, why it is that one ('early', 'calendar', 'late', 'log', 'break' or 'long-break'), and the last week that may
  // be chosen instead; late is who has done nothing yet in a later week, or did it where it was not kept, and may say so.
  gradus.weekOf = function (course, rows, chosen, today) {
    const last = course.needs.length;
    const done = rows
      .filter(function (row) { return row.day <= today && row.week >= 1 && row.week <= last; })
      .sort(function (a, b) { return a.day < b.day ? -1 : a.day > b.day ? 1 : 0; });
    const found = done.length === 0 ? byCalendar() : byLog();
    const since = done.length === 0 ? course.start : done[done.length - 1].day;
    const isFresh = chosen && chosen.day <= today && chosen.day >= since && daysBetween(chosen.day, today) <= course.back[0];
    const isFree = isFresh && chosen.week >= 1 && chosen.week <= found.most;
    return isFree ? { week: chosen.week, why: 'chosen', most: found.most } : found;

    function byCalendar() {
      const week = calendarWeek(course, today);
      if (week > 1) return { week: 1, why: 'late', most: week };
      return { week: 1, why: today < course.start ? 'early' : 'calendar', most: 1 };
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
      pauses: (element.getAttribute('data-pauses') || '').split(' ').filter(Boolean).map(function (pause) {
        const days = pause.split('/');
        return { from: days[0], until: days[1] };
      }),
      back: element.getAttribute('data-back').split(' ').map(Number),
      needs: element.getAttribute('data-needs').split(';').map(function (week) {
        return week.split(' ').filter(Boolean).map(function (need) {
          const parts = need.split('x').map(Number);
          return { session: parts[0], times: parts[1], between: parts.length > 2 ? parts[2] : 1 };
        });
      }),
      instead: instead
    };
  };
})();

// Puts this week's numbers into the page: the dose of each exercise, taken from the table of all weeks, and the numbers in its
// steps. What is not done yet is one line, and its signs come with it, unless every week is shown. On paper the numbers of all
// weeks stay.
(function () {
  'use strict';

  const gradus = window.gradus;

  function all(selector, inside) {
    return Array.from(inside.querySelectorAll(selector));
  }

  function weeksOf(element, name) {
    return element.getAttribute(name).split(' ').filter(Boolean).map(Number);
  }

  // "1 2=30 seconds;3=45 seconds"; null where that week has none.
  function figureIn(text, week) {
    const run = text.split(';').find(function (one) { return one.split('=')[0].split(' ').map(Number).indexOf(week) >= 0; });
    return run ? run.slice(run.indexOf('=') + 1) : null;
  }

  function fillFigure(figure, week) {
    const said = figureIn(figure.getAttribute('data-by-week'), week);
    const next = figure.nextElementSibling;
    const isThere = next !== null && next.classList.contains('this-week');
    const shown = isThere ? next : document.createElement('span');
    if (!isThere) {
      shown.className = 'on-screen this-week';
      figure.after(shown);
    }
    shown.textContent = said || '';
    figure.classList.toggle('on-paper', said !== null);
  }

  // Of each row of the table what it says in that column; a cell may be wider than one week.
  function doseIn(rows, column) {
    const said = [];
    for (const row of rows) {
      let at = 0;
      for (const cell of all('td', row)) {
        at += cell.colSpan;
        if (column < at) {
          if (cell.textContent !== '–') said.push([row.querySelector('th').textContent, cell.textContent]);
          break;
        }
      }
    }
    return said;
  }

  function fillDose(dose, root, week) {
    const table = root.querySelector('[data-doses="' + dose.getAttribute('data-dose') + '"]');
    const columns = all('thead th', table.closest('table')).slice(1).map(function (head) { return Number(head.textContent); });
    dose.replaceChildren();
    for (const pair of doseIn(all('tr', table), columns.indexOf(week))) {
      const part = document.createElement('span');
      const figure = document.createElement('b');
      figure.textContent = pair[1];
      part.append(pair[0] + ' ', figure);
      if (dose.childNodes.length > 0) dose.append(' · ');
      dose.append(part);
    }
  }

  // Every exercise of a sign or condition that is not done yet has a letter of its own.
  function showSigns(root, away) {
    const isAway = function (said) {
      const letters = said.split(/[^A-Z]+/).filter(Boolean);
      return letters.length > 0 && letters.every(function (letter) { return away.indexOf(letter) >= 0; });
    };
    for (const condition of all('.cautions .not-with li', root)) {
      const letters = /\(([A-Z, ]+)\)$/.exec(condition.textContent.trim());
      condition.hidden = letters !== null && isAway(letters[1]);
    }
    for (const sign of all('.cautions .caution', root)) {
      const [belongs, conditions] = [sign.querySelector('.belongs'), all('li', sign)];
      sign.hidden = belongs ? isAway(belongs.textContent)
        : conditions.length > 0 && conditions.every(function (condition) { return condition.hidden; });
    }
    for (const kind of all('.cautions .kind', root)) {
      const signs = all('.caution', kind);
      const isNothingElse = Array.from(kind.children).every(function (child) {
        return signs.indexOf(child) >= 0 || /^H[1-6]$/.test(child.tagName);
      });
      kind.hidden = isNothingElse && signs.length > 0 && signs.every(function (sign) { return sign.hidden; });
    }
  }

  // isWhole: whether what is not done in that week is shown too, with its signs.
  gradus.fillWeek = function (week, isWhole) {
    for (const figure of all('[data-by-week]', document)) fillFigure(figure, week);
    for (const root of gradus.pages()) {
      const away = [];
      for (const article of all('article[data-planned]', root)) {
        const weeks = weeksOf(article, 'data-planned');
        const dose = article.querySelector('[data-dose]');
        const letter = dose.getAttribute('data-dose');
        article.hidden = !isWhole && weeks.indexOf(week) < 0;
        if (article.hidden) away.push(letter);
        else fillDose(dose, root, week);
        for (const line of all('[data-later="' + letter + '"]', root)) line.hidden = isWhole || week >= weeks[0];
        const place = '.index [href$="-' + letter.toLowerCase() + '"]';
        for (const link of all(place, root)) link.parentElement.hidden = article.hidden;
      }
      showSigns(root, away);
    }
  };

  // The parts of the document that are one page each.
  gradus.pages = function () {
    const parts = all('[data-page]', document);
    return parts.length > 0 ? parts : all('main', document);
  };
})();

// Shows on page one what was done: the days of this week, and the last sessions as a list.
(function () {
  'use strict';

  const gradus = window.gradus;
  const most = 12;

  function days(today) {
    const noon = new Date(today + 'T12:00:00');
    const monday = new Date(noon);
    monday.setDate(noon.getDate() - (noon.getDay() + 6) % 7);
    return Array.from({ length: 7 }, function (_, i) {
      const day = new Date(monday);
      day.setDate(monday.getDate() + i);
      return day;
    });
  }

  function show(part, lines) {
    const list = part.querySelector('[data-fill]');
    list.replaceChildren.apply(list, lines.map(function (text) {
      const item = document.createElement('li');
      item.textContent = text;
      return item;
    }));
    part.hidden = false;
  }

  // A session is called what its link on this page is called.
  function nameOf(session) {
    const card = document.querySelector('[data-due="' + session + '"] h3 a');
    return card ? card.textContent : '';
  }

  // lastWeek: what was to be done in the week before this one, session by session.
  gradus.showDone = function (week, lastWeek) {
    const rows = gradus.log.rows();
    const language = document.documentElement.lang;
    for (const line of document.querySelectorAll('[data-first]')) line.hidden = rows.length > 0;
    if (rows.length === 0) return;
    const done = rows.map(function (row) { return row.day; });
    for (const part of document.querySelectorAll('[data-days-done]')) {
      show(part, days(gradus.today()).map(function (day) {
        const name = day.toLocaleDateString(language, { weekday: 'short' });
        return name + ' ' + (done.indexOf(gradus.isoOf(day)) >= 0 ? '●' : '–');
      }));
    }
    const asked = lastWeek.reduce(function (sum, need) { return sum + need.times; }, 0);
    const kept = rows.filter(function (row) { return row.week === week - 1; }).length;
    for (const line of document.querySelectorAll('[data-last-week]')) {
      line.hidden = asked === 0;
      line.textContent = line.textContent.split(':')[0] + ': ' + kept + '/' + asked;
    }
    for (const part of document.querySelectorAll('[data-list-done]')) {
      show(part, rows.slice(-most).reverse().map(function (row) {
        const day = new Date(row.day + 'T12:00:00');
        const when = day.toLocaleDateString(language, { weekday: 'short', day: 'numeric', month: 'long' });
        return [when, nameOf(row.session)].filter(Boolean).join(': ');
      }));
    }
  };
})();

// Shows this week and puts the others away, says what is due today, and notes what was done. Without scripts every week
// stands there.
(function () {
  'use strict';

  const gradus = window.gradus;
  const holder = document.querySelector('[data-course]');
  if (!holder) return;

  const course = gradus.courseOf(holder);
  const today = gradus.today();
  const dueCards = all('[data-due]');
  const insteadOf = {};
  for (const one of all('[data-while-planned]')) {
    insteadOf[Number(one.closest('[data-due]').getAttribute('data-due'))] = one.parentElement;
  }
  const cardList = dueCards.length > 0 ? dueCards[0].parentElement : null;
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

  // What was done of a session, or in its place.
  function rowsOf(session) {
    return gradus.log.rows()
      .filter(function (row) { return row.session === session || course.instead[row.session] === session; });
  }

  function isDone(session) {
    return rowsOf(session).some(function (row) { return row.day === today; });
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

  // Whether a session without fixed days is still to be done this week, and was not done too lately: the coach may want a
  // day between.
  function isOpen(session, week) {
    const need = (course.needs[week - 1] || []).find(function (one) { return one.session === session; });
    const done = rowsOf(session);
    return need !== undefined && done.filter(function (row) { return row.week === week; }).length < need.times
      && done.every(function (row) { return gradus.daysBetween(row.day, today) > need.between; });
  }

  // What keeps somebody from training, whatever is due: a sign that needs a doctor, or pages that are too old, of which the top
  // of the page tells. Null where nothing does.
  function keptFromTraining() {
    const last = gradus.log.last();
    if (last !== null && last.alarm) return 'stopped';
    const until = document.querySelector('[data-good-until]');
    return until && today > until.getAttribute('data-good-until') ? '' : null;
  }

  function sayWhatIsDue(now) {
    const isFree = now.why === 'early' || gradus.pauseOn(course, today) !== undefined;
    const cards = dueCards.map(function (card) {
      const weeks = all('[data-weeks]', card).flatMap(weeksOf);
      const session = Number(card.getAttribute('data-due'));
      const due = isFree ? null : dueIn(card);
      return {
        card: card,
        instead: insteadOf[session] || null,
        session: session,
        inWeek: weeks.indexOf(now.week) >= 0,
        due: due,
        isOpen: !isFree && due === null && isOpen(session, now.week)
      };
    });
    const isToday = cards.some(function (c) { return c.inWeek && c.due === 0; });
    const keeps = keptFromTraining();
    const ahead = cards.filter(function (c) { return c.inWeek && c.due !== null; }).map(function (c) { return c.due; });
    const next = ahead.length > 0 ? Math.min.apply(null, ahead) : null;
    for (const c of cards) {
      const isNext = !isToday && c.due !== null && c.due === next;
      const isFor = c.inWeek && (c.due === 0 || c.isOpen || isNext) && !isDone(c.session);
      for (const link of all('[data-go]', c.card)) link.hidden = !isFor || keeps !== null;
      say(c.card, isDone(c.session) ? 'done'
        : !c.inWeek ? 'not-this-week'
        : keeps !== null ? keeps
        : c.due === 0 ? 'today'
        : c.isOpen ? 'any-day'
        : isNext ? 'next' : '');
    }
    const isAnyOpen = cards.some(function (c) { return c.isOpen; });
    for (const line of all('[data-nothing-today]')) line.hidden = isToday || next === null || isAnyOpen;

    placeCards(cards, isToday ? 0 : next);
  }

  // What is due today comes first, or what may be done on any day, or what is next: alone where there is room for the others, and
  // for what may be done instead, below what to stop for.
  function placeCards(cards, next) {
    const due = cards.filter(function (c) { return c.inWeek && c.due !== null && c.due === next; });
    const inWeek = cards.filter(function (c) { return c.inWeek; });
    const open = inWeek.filter(function (c) { return c.isOpen; });
    const ahead = next === 0 || open.length === 0 ? due : [];
    const first = ahead.length > 0 ? ahead : open.concat(inWeek).slice(0, 1);
    const others = document.querySelector('[data-others]');
    const below = others ? others.querySelector('[data-fill]') : null;
    for (const c of cards) {
      const isFirst = below === null || first.length === 0 || first.indexOf(c) >= 0;
      (isFirst ? cardList : below).append(c.card);
      if (c.instead === null) continue;
      if (isFirst && below !== null && first.length > 0) below.before(c.instead);
      else c.card.append(c.instead);
    }
    if (others) others.hidden = others.querySelector('[data-due], [data-while-planned]') === null;
    else if (cardList) cardList.prepend.apply(cardList, first.map(function (c) { return c.card; }));
  }

  function showButtons() {
    for (const one of all('[data-one-week]')) {
      const parts = all('[data-weeks]', one);
      for (const button of all('[data-all-weeks]', one)) {
        button.hidden = !showAll && parts.every(function (part) { return !part.hidden; });
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
    for (const one of all('[data-while-planned]')) {
      one.hidden = all('[data-weeks]', one).every(function (part) { return part.hidden; });
    }
    for (const line of all('[data-week-now]')) line.hidden = Number(line.getAttribute('data-week-now')) !== now.week;
    for (const line of all('[data-why]')) line.hidden = line.getAttribute('data-why') !== now.why;
    const pause = gradus.pauseOn(course, today);
    for (const line of all('[data-on-pause]')) {
      line.hidden = !pause || line.getAttribute('data-on-pause') !== pause.from + '/' + pause.until;
    }
    for (const choice of all('[data-choose-week]')) {
      const week = Number(choice.getAttribute('data-choose-week'));
      choice.hidden = week > now.most;
      choice.setAttribute('aria-pressed', String(week === now.week));
    }
    for (const line of all('[data-week-new]')) line.hidden = Number(line.getAttribute('data-week-new')) !== now.week;
    gradus.showDone(now.week, course.needs[now.week - 2] || []);
    for (const choice of all('[data-choose]')) choice.hidden = now.most < 2;
    gradus.fillWeek(now.week, showAll);
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
    } else if (button.hasAttribute('data-print')) {
      window.print();
      return;
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
  for (const button of all('[data-print]')) button.hidden = false;
  show();

  // The link on page one that prints a session's sheet leads to it.
  if (window.location.hash === '#print') window.addEventListener('load', function () { window.print(); });
})();

// The words of a page with something filled in.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  gradus.filled = function (phrase, fills) {
    return phrase.replace(/\{(\w+)\}/g, function (whole, name) { return name in fills ? String(fills[name]) : whole; });
  };

  // The phrase for so many: the language says which kind of number it is, the catalogue what is said of that kind.
  gradus.countedOf = function (phrases, name, n, fills) {
    const form = new Intl.PluralRules(phrases.language).select(n);
    const phrase = phrases[name + form[0].toUpperCase() + form.slice(1)] || phrases[name + 'Other'];
    return gradus.filled(phrase, Object.assign({ n: n }, fills));
  };

  // The time of day, so many milliseconds from now.
  gradus.hourIn = function (ms) {
    const shown = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' };
    return new Date(Date.now() + ms).toLocaleTimeString(document.documentElement.lang, shown);
  };

  // What is left of a step: seconds, or minutes and seconds.
  gradus.digitsOf = function (ms) {
    const seconds = Math.ceil(ms / 1000);
    return seconds < 100 ? String(seconds) : Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
  };
})();

// Lines of cells, as a spreadsheet writes and reads them (CSV, RFC 4180), and the sum of a text. It knows no log.
//
// A cell that a spreadsheet would take for a formula has an apostrophe before it.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const formula = /^'*[=+\-@\t\r]/;

  gradus.cell = function (value) {
    const text = value === undefined || value === null ? '' : String(value);
    const safe = formula.test(text) ? "'" + text : text;
    return /[",\r\n]/.test(safe) || safe !== text ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  };

  // What a cell says without the apostrophe that was put before it.
  function bare(text) {
    return text[0] === "'" && formula.test(text) ? text.slice(1) : text;
  }

  // The cells of each line.
  gradus.cellsOf = function (text, separator) {
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
      text.value = rows.length > 0 ? gradus.messageOf(rows, tools.dataset) : '';
      tools.querySelector('[data-log-message]').hidden = false;
      text.focus();
      text.select();
      text.scrollTop = 0;
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
