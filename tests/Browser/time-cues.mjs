// Leads through steps of one second each in a real browser and in real time, and answers with how late each was seen and heard, in milliseconds.
import { readFileSync } from 'node:fs';
import { launch } from 'puppeteer-core';

const { chromium, page: path, cues, slower, hidden, planted } = JSON.parse(readFileSync(0, 'utf8'));

// A driver keeps hidden pages awake, which no client's browser does.
const browser = await launch({
  executablePath: chromium, headless: true, args: ['--no-sandbox'],
  ignoreDefaultArgs: ['--disable-background-timer-throttling', '--disable-backgrounding-occluded-windows', '--disable-renderer-backgrounding'],
});

/** In the page, before its scripts: notes when each sound is to be heard by the clock of the page, and when the words of each step are there. */
function listen() {
  window.starts = [];
  window.shown = [];
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (when) {
    window.starts.push({ node: this, when, hertz: this.frequency.value, cut: false });
    start.call(this, when);
  };
  const disconnect = AudioNode.prototype.disconnect;
  AudioNode.prototype.disconnect = function (...of) {
    if (this instanceof GainNode) for (const one of window.starts) one.cut = one.cut || one.when > this.context.currentTime;
    disconnect.apply(this, of);
  };
}

try {
  const page = await browser.newPage();
  await page.evaluateOnNewDocument(listen);
  await page.evaluateOnNewDocument(day => {
    const Day = Date;
    const ahead = new Day(day).getTime() - Day.now();
    window.Date = class extends Day { constructor(...of) { if (of.length > 0) super(...of); else super(Day.now() + ahead); } static now() { return Day.now() + ahead; } };
  }, '2026-12-14T10:00:00');
  await page.goto('file://' + path, { waitUntil: 'load' });
  const client = await page.createCDPSession();
  await client.send('Emulation.setCPUThrottlingRate', { rate: slower });

  // The page's own player, on a list of another length: five seconds to get ready, then the cues.
  await page.evaluate(count => {
    const { gradus } = window;
    const given = gradus.stepsOf;
    gradus.stepsOf = (root, week) => {
      const one = { ...given(root, week).find(gradus.isWork), percent: null, felt: null, breaths: 0, seconds: 1 };
      return [{ ...one, kind: 'get-ready', seconds: 5 }, ...Array.from({ length: count }, (_, i) => ({ ...one, what: `Cue ${i + 1}` })), { ...one, what: 'Last', seconds: 3 }];
    };
  }, cues);
  // A page that looks seldom and sounds late, to see that it is noticed.
  if (planted) {
    await page.evaluate(() => {
      const { sound, ticker } = window.gradus;
      const { schedule } = sound;
      const { start } = ticker;
      sound.schedule = (sounds, volume) => schedule(sounds.map(one => ({ ...one, in: one.in + 80 })), volume);
      ticker.start = then => {
        let last = 0;
        start(() => { if (performance.now() - last > 700) { last = performance.now(); then(); } return 100; });
      };
    });
  }

  await page.evaluate(() => [...document.querySelectorAll('[data-lead-in]')].find(one => one.getClientRects().length > 0).click());
  const press = async act => page.click(`dialog[open] [data-panel]:not([hidden]) [data-act="${act}"]`);
  await press('read');
  await press('no-pain');
  await page.evaluate(() => {
    const form = document.querySelector('dialog[open] [data-form="questions"]');
    for (const name of ['worse', 'ill', 'minutes']) form.querySelector(`[name="${name}"][value="${name === 'minutes' ? 'all' : 'no'}"]`)?.click();
  });
  await page.click('dialog[open] [data-form="questions"] [type="submit"]');
  await page.evaluate(() => {
    const what = document.querySelector('dialog[open] [data-fill="what"]');
    new MutationObserver(() => {
      const now = performance.now();
      const note = { what: what.textContent, script: now };
      window.shown.push(note);
      requestAnimationFrame(() => { note.frame = performance.now(); });
    }).observe(what, { childList: true, characterData: true, subtree: true });
  });
  await press('start');
  await press('go');
  const session = await browser.target().createCDPSession();
  if (hidden) {
    const { windowId } = await session.send('Browser.getWindowForTarget', { targetId: page.target()._targetId });
    await session.send('Browser.setWindowBounds', { windowId, bounds: { windowState: 'minimized' } });
  }

  const wasHidden = await page.evaluate(() => document.hidden);
  await new Promise(done => setTimeout(done, (cues + 6) * 1000));
  const answer = await page.evaluate(count => {
    const guide = Object.values(window.gradus.guides).find(one => one.dialog.open).guide;
    const { shown, starts } = window;

    // The last step ends at its deadline; the cues lie a second apart before it.
    const end = guide.state.ends - 3000;
    const due = Array.from({ length: count }, (_, i) => end - (count - i) * 1000);
    const { context } = starts[0].node;
    const mark = context.getOutputTimestamp();
    const heard = starts.filter(one => !one.cut && one.hertz === 660).map(one => mark.performanceTime + (one.when - mark.contextTime) * 1000);
    return {
      audio: context.state,
      shown: due.map((at, i) => { const note = shown.find(one => one.what === `Cue ${i + 1}`); return note ? Math.abs((note.frame ?? note.script) - at) : -1; }),
      heard: due.map(at => Math.min(...heard.map(one => Math.abs(one - at)))),
    };
  }, cues);
  process.stdout.write(JSON.stringify({ ...answer, wasHidden }));
} finally {
  await browser.close();
}
