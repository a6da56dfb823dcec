// Which of the sessions that the coach wrote it is today, by what the client answers. It makes up no dose, and knows no page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // What it is, and why: full, time, time-none, ease, or no session and why not: ill, pain, no-easier.
  // answers: pain 0 to 10, worse, ill, minutes (null for all), sore (places). versions: session, kind, seconds (null where it is
  // not in this week), loads (the places that each exercise loads). limits: easeOff and stop.
  gradus.versionFor = function (answers, versions, here, limits) {
    const open = versions.filter(function (v) { return v.seconds !== null; });
    const own = open.find(function (v) { return v.session === here; });
    if (answers.ill) return { session: null, why: 'ill' };
    if (answers.pain > limits.stop) return { session: null, why: 'pain' };
    if (answers.pain > limits.easeOff || answers.worse) return easier(open, own, answers.sore || []);
    if (!own) return { session: null, why: 'no-easier' };
    return answers.minutes === null ? { session: here, why: 'full' } : within(open, own, answers.minutes * 60);
  };

  function first(versions, own, kind) {
    if (own && own.kind === kind) return own;
    return versions.find(function (v) { return v.kind === kind; });
  }

  // Nothing that loads a sore place: a session of which nothing is left then is none.
  function easier(versions, own, sore) {
    const left = versions.filter(function (v) {
      return !v.loads || v.loads.some(function (places) {
        return !sore.some(function (one) { return gradus.loadsAny(places, one); });
      });
    });
    const still = left.indexOf(own) < 0 ? null : own;
    const found = first(left, still, 'flare') || first(left, still, 'short');
    return found ? { session: found.session, why: 'ease' } : { session: null, why: 'no-easier' };
  }

  // The longest that fits; where none does, the shortest of all.
  function within(versions, own, seconds) {
    if (own.seconds <= seconds) return { session: own.session, why: 'full' };
    const others = versions.filter(function (v) { return v.kind === 'short' || v.kind === ''; }).concat([own]);
    const fitting = others
      .filter(function (v) { return v.seconds <= seconds; })
      .sort(function (a, b) { return b.seconds - a.seconds; });
    if (fitting.length > 0) return { session: fitting[0].session, why: 'time' };
    const least = others.slice().sort(function (a, b) { return a.seconds - b.seconds || a.session - b.session; })[0];
    return { session: least.session, why: 'time-none' };
  }

  // What is asked before a session, as long as it is the same day: nothing twice.
  gradus.isFresh = function (kept, now, hours) {
    return kept !== null && typeof kept === 'object' && Number.isFinite(kept.time)
      && Math.abs(now - kept.time) <= hours * 60 * 60 * 1000;
  };
})();
