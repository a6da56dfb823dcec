// How long a session took, as its load is reckoned: from start to end, without the pauses of more than five minutes. It knows no
// page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const minute = 60000;
  const longPause = 5 * minute;

  // now: milliseconds of the device's clock, which goes on while the page is closed. kept: what snapshot gave; null at the start.
  gradus.watchOf = function (kept, now) {
    const it = Object.assign({ start: now, lost: 0, still: null }, kept);

    function lostUntil(moment) {
      const still = it.still === null ? 0 : moment - it.still;
      return it.lost + (still > longPause ? still : 0);
    }

    return {
      start: function () { return it.start; },
      // Whether nothing runs from now on.
      be: function (isStill, moment) {
        if (isStill === (it.still !== null)) return;
        it.lost = lostUntil(moment);
        it.still = isStill ? moment : null;
      },
      minutes: function (moment) { return Math.max(Math.round((moment - it.start - lostUntil(moment)) / minute * 2) / 2, 0); },
      snapshot: function (moment) { return Object.assign({}, it, { still: it.still === null ? moment : it.still }); }
    };
  };
})();
