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
