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
