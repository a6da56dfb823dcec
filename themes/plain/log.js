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
