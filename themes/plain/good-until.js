// After the last day on which the pages are good, this says so before anything else on the page. Without scripts the foot of
// every page names the same day.
(function () {
  'use strict';

  function twoDigits(number) {
    return String(number).padStart(2, '0');
  }

  // The day where the client is, written as the page writes days, so that the two can be compared as texts.
  function today() {
    const now = new Date();
    return now.getFullYear() + '-' + twoDigits(now.getMonth() + 1) + '-' + twoDigits(now.getDate());
  }

  const notice = document.querySelector('[data-good-until]');
  if (notice && today() > notice.getAttribute('data-good-until')) {
    notice.hidden = false;
  }
})();
