// A service worker: the network first, so that a new caution is not hidden by an old copy; the copy only where there is no
// network. files.txt has the edition of the site and each of its files.
'use strict';

const list = 'files.txt';
const patience = 4000;

// The copies of this folder only: another client's may be on the same host.
function nameOf(edition) {
  return 'gradus ' + self.registration.scope + ' ' + edition;
}

async function readList() {
  const given = await fetch(list, { cache: 'no-store' });
  if (!given.ok) throw new Error(list + ': ' + given.status);
  const lines = (await given.text()).split('\n').filter(Boolean);
  return { edition: lines[0], files: lines.slice(1) };
}

// Fetches a whole edition, and drops the others only when it is there. An edition that came meanwhile is the one to keep: a slow
// network must not put an old caution back in place of a new one.
async function keep() {
  const site = await readList();
  const name = nameOf(site.edition);
  if (await caches.has(name + ' whole')) return;
  const cache = await caches.open(name);
  await cache.addAll(site.files.map(function (file) { return new Request(file, { cache: 'no-store' }); }));
  if ((await readList()).edition !== site.edition) return keep();
  await caches.open(name + ' whole');
  for (const old of await caches.keys()) {
    if (old.indexOf(nameOf('')) === 0 && old.indexOf(name) !== 0) await caches.delete(old);
  }
}

// One after the other.
let keeping = Promise.resolve();

function keepInTurn() {
  keeping = keeping.then(keep, keep);
  return keeping;
}

async function copyOf(request) {
  const address = new URL(request.url);
  address.hash = '';
  address.search = '';
  if (address.pathname.endsWith('/')) address.pathname += 'index.html';
  for (const name of await caches.keys()) {
    if (name.indexOf(nameOf('')) !== 0) continue;
    const copy = await (await caches.open(name)).match(address.href);
    if (copy) return copy;
  }
  return undefined;
}

async function answerTo(request) {
  const waiting = new AbortController();
  const timer = setTimeout(function () { waiting.abort(); }, patience);
  try {
    return await fetch(request, { cache: 'no-store', signal: waiting.signal });
  } catch (failed) {
    const copy = await copyOf(request);
    if (copy) return copy;
    throw failed;
  } finally {
    clearTimeout(timer);
  }
}

self.addEventListener('install', function (event) {
  self.skipWaiting();
  event.waitUntil(keepInTurn());
});

self.addEventListener('activate', function (event) {
  event.waitUntil(self.clients.claim());
});

self.addEventListener('fetch', function (event) {
  if (event.request.method !== 'GET' || event.request.url.indexOf(self.registration.scope) !== 0) return;
  event.respondWith(answerTo(event.request));
  if (event.request.mode === 'navigate') event.waitUntil(keepInTurn().catch(function () { }));
});
