// Which of the sessions that the coach wrote it is today, by what the client answers. It makes up no dose, and knows no page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // What it is, and why: full, ease, or no session and why not: ill, pain, no-easier.
  // answers: pain 0 to 10, worse, ill, sore (places). versions: session, kind, seconds (null where it is not in this week), loads
  // (the places that each exercise loads). limits: easeOff and stop.
  gradus.versionFor = function (answers, versions, here, limits) {
    const open = versions.filter(function (v) { return v.seconds !== null; });
    const own = open.find(function (v) { return v.session === here; });
    if (answers.ill) return { session: null, why: 'ill' };
    if (answers.pain > limits.stop) return { session: null, why: 'pain' };
    if (answers.pain > limits.easeOff || answers.worse) return easier(open, own, answers.sore || []);
    if (!own) return { session: null, why: 'no-easier' };
    return { session: here, why: 'full' };
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

  // What is asked before a session, as long as it is the same day: nothing twice.
  gradus.isFresh = function (kept, now, hours) {
    return kept !== null && typeof kept === 'object' && Number.isFinite(kept.time)
      && Math.abs(now - kept.time) <= hours * 60 * 60 * 1000;
  };
})();
