// Where the pages are on a host, keeps them for when there is no network, and says what the site is called. A file that was
// opened from a disk needs nothing of it, and may ask for no manifest.
(function () {
  'use strict';

  if (window.location.protocol.indexOf('http') !== 0) return;

  const manifest = document.createElement('link');
  manifest.rel = 'manifest';
  manifest.href = 'site.webmanifest';
  document.head.appendChild(manifest);

  if ('serviceWorker' in window.navigator) {
    window.navigator.serviceWorker.register('offline.js').catch(function () { });
  }
})();
