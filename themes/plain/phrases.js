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
