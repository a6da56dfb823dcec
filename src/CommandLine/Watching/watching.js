'use strict';

// Keeps a page of watch true: what was found, and the client's page, each put in place of the one before as soon as it is other.
(function () {
  const body = document.body;
  const root = body.dataset.root;
  const client = body.dataset.client;
  const found = document.getElementById('found');
  const alive = document.getElementById('alive');
  const lives = alive.textContent;
  const behind = client ? '/' + client : '';
  let version = Number(body.dataset.version || 0);
  let source = null;
  let coming = null;

  function frameNow() {
    return document.querySelector('#frames iframe:not(.coming)');
  }

  // The part of the address behind the client's site: session-1.html#week-2
  function placeOf(frame) {
    try {
      const at = frame.contentWindow.location;
      const mark = '/sites/' + client + '/';
      const from = at.pathname.indexOf(mark);
      return from < 0 ? '' : at.pathname.slice(from + mark.length) + at.hash;
    } catch {
      return '';
    }
  }

  function addressOf(place) {
    return root + 'sites/' + client + '/' + place;
  }

  // Whoever loads this page again finds the same page of the client in it.
  function follow(frame) {
    const place = placeOf(frame);
    if (!place)
      return;
    window.history.replaceState(null, '', '#' + place);
    document.getElementById('alone').href = addressOf(place);
  }

  function isLed(frame) {
    return !!frame.contentDocument && !!frame.contentDocument.querySelector('dialog[open]');
  }

  function keepPlace(from, to) {
    const opened = Array.from(from.contentDocument.querySelectorAll('details'));
    const openable = Array.from(to.contentDocument.querySelectorAll('details'));
    if (opened.length === openable.length)
      opened.forEach(function (part, at) { openable[at].open = part.open; });
    to.contentWindow.scrollTo({ left: from.contentWindow.scrollX, top: from.contentWindow.scrollY, behavior: 'instant' });
  }

  function keepFocus(from, to) {
    if (document.activeElement !== from)
      return;
    const held = from.contentDocument.activeElement;
    to.focus({ preventScroll: true });
    const same = held && held.id ? to.contentDocument.getElementById(held.id) : null;
    if (same)
      same.focus({ preventScroll: true });
  }

  // Made ready behind the page that is seen, which it then takes the place of: nothing blinks, and nothing moves.
  function show() {
    const old = frameNow();
    const place = placeOf(old) || 'index.html';
    document.getElementById('waits').hidden = true;
    if (coming)
      coming.remove();
    const next = old.cloneNode(false);
    coming = next;
    next.className = 'coming';
    next.src = addressOf(place);
    next.addEventListener('load', function () {
      if (coming === next) {
        coming = null;
        if (old.contentDocument && next.contentDocument) {
          keepPlace(old, next);
          next.className = '';
          keepFocus(old, next);
        }
        next.className = '';
        old.remove();
      }
      if (next.className === '') {
        follow(next);
        tell();
      }
    });
    old.after(next);
  }

  function showSoon() {
    if (isLed(frameNow())) {
      document.getElementById('waits').hidden = false;
      tell();
    } else
      show();
  }

  async function tell() {
    const answer = await window.fetch(root + 'found' + behind);
    if (!answer.ok)
      return;
    found.innerHTML = await answer.text();
    head();
  }

  function head() {
    const state = found.querySelector('.state');
    const errors = Number(state.dataset.errors);
    document.title = (errors > 0 ? '(' + errors + ') ' : '') + body.dataset.title;
    const counted = document.getElementById('counted');
    if (counted && counted.textContent !== state.dataset.counted)
      counted.textContent = state.dataset.counted;
  }

  function listen() {
    source = new window.EventSource(root + 'events' + behind);
    source.addEventListener('hello', function (event) {
      alive.textContent = lives;
      if (client && Number(event.data) !== version) {
        version = Number(event.data);
        showSoon();
      }
      tell();
    });
    source.addEventListener('page', function (event) {
      const lines = event.data.split('\n');
      version = Number(lines[0]);
      const place = placeOf(frameNow()).split('#')[0];
      if (!place || lines.includes('*') || lines.includes(place))
        showSoon();
      else
        tell();
    });
    source.addEventListener('found', tell);
    source.addEventListener('error', function () {
      alive.textContent = 'gradus watch does not answer: it has ended. What you see is as it was.';
    });
  }

  // A browser holds few lines open to one place, so a page that nobody sees lets go of its own.
  function listenWhileSeen() {
    if (document.hidden && source) {
      source.close();
      source = null;
    } else if (!document.hidden && !source)
      listen();
  }

  if (client) {
    const first = frameNow();
    const place = decodeURIComponent(window.location.hash.slice(1));
    if (/^[a-z0-9-]+\.html(#.*)?$/.test(place))
      first.src = addressOf(place);
    first.addEventListener('load', function () { follow(first); });
    document.getElementById('now').addEventListener('click', show);
    const beside = document.querySelector('#beside details');
    beside.open = window.matchMedia('(min-width: 60rem)').matches;
  }
  head();
  document.addEventListener('visibilitychange', listenWhileSeen);
  listenWhileSeen();
})();
