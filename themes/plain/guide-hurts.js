// What somebody says where it hurts, and what follows from it. It knows the form alone.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // place: where and the side, null where nobody says; level: 0 to 10 or null; feel: what it is like, empty where nobody says.
  gradus.hurtIn = function (form) {
    const chosen = form.querySelector('[name="feel"]:checked');
    return { place: gradus.placeIn(form), level: gradus.levelIn(form), feel: chosen ? chosen.value : '' };
  };

  // Only with a dull pain of which the practice says that it is little; in any other there are two safer ways.
  gradus.mayEaseOff = function (hurt) {
    return hurt.level !== null && hurt.level <= gradus.limitsOf().easeOff && hurt.place !== null && hurt.feel === 'dull'
      && !gradus.isAlarming(hurt.place, hurt.level);
  };

  // What a clinician should see on the same day.
  gradus.isForToday = function (feel) {
    return ['numb', 'snap', 'swollen', 'no-weight'].indexOf(feel) >= 0;
  };

  // What the coach is asked about before the next session.
  gradus.isForCoach = function (feel) {
    return gradus.isForToday(feel) || feel === 'sharp' || feel === 'giving-way';
  };
})();
