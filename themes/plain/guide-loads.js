// What an exercise loads, and what is left out when something hurts. It knows no page.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // What a step loads: "knee left", or "lower-back" where there are no sides. Without a side at work it is both.
  gradus.placesOf = function (step) {
    return (step.loads || []).flatMap(function (load) {
      const parts = load.split(':');
      if (parts.length === 1) return [parts[0]];
      if (!step.side) return [parts[0] + ' left', parts[0] + ' right'];
      const opposite = step.side === 'left' ? 'right' : 'left';
      return [parts[0] + ' ' + (parts[1] === 'other' ? opposite : step.side)];
    });
  };

  // place: where, and the side; without a side it is both. Pain in the chest is everywhere.
  gradus.loadsPlace = function (step, place) {
    return gradus.loadsAny(gradus.placesOf(step), place);
  };

  // places: as placesOf gives them.
  gradus.loadsAny = function (places, place) {
    if (place.where === 'chest' || place.where === 'whole-body') return true;
    return places.some(function (loaded) {
      const parts = loaded.split(' ');
      return parts[0] === 'whole-body'
        || (parts[0] === place.where && (!place.side || parts.length === 1 || parts[1] === place.side));
    });
  };

  // Where it hurts in a step: where somebody says; where nobody does, all that it loads.
  gradus.hurtsAt = function (step, place) {
    return place ? [place] : gradus.placesOf(step).map(function (loaded) {
      const parts = loaded.split(' ');
      return { where: parts[0], side: parts[1] || '' };
    });
  };

  // The exercises that load one of those places.
  gradus.loadingAny = function (steps, places) {
    const found = steps.filter(function (step) { return places.some(function (one) { return gradus.loadsPlace(step, one); }); });
    return Array.from(new Set(found.map(function (step) { return step.exercise; })));
  };

  // Every exercise that is to be left out when that one hurts at those places.
  gradus.leftOutBy = function (steps, exercise, places) {
    return Array.from(new Set([exercise].concat(gradus.loadingAny(steps, places))));
  };
})();
