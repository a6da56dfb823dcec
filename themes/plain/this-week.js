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
