// Leads through steps of one second each in a real browser and in real time, in one condition after the other, and answers with how late each was seen and heard, in milliseconds.
import { readFileSync } from 'node:fs';
import { launch } from 'puppeteer-core';

const { chromium, page: path, cues, looks, planted } = JSON.parse(readFileSync(0, 'utf8'));

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
  const session = await browser.target().createCDPSession();
  const change = async ({ slower, hidden }) => {
    await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
    if (!hidden) return;
    const { windowId } = await session.send('Browser.getWindowForTarget', { targetId: page.target()._targetId });
    await session.send('Browser.setWindowBounds', { windowId, bounds: { windowState: 'minimized' } });
  };

  // The page's own player, on a list of another length: two seconds to get ready, then for each condition a second to change to it, and its cues.
  await page.evaluate((count, conditions) => {
    const { gradus } = window;
    const given = gradus.stepsOf;
    gradus.stepsOf = (root, week) => {
      const one = { ...given(root, week).find(gradus.isWork), percent: null, felt: null, breaths: 0, seconds: 1 };
      const cuesOf = look => [{ ...one, title: `Change ${look}` }, ...Array.from({ length: count }, (_, i) => ({ ...one, title: `Cue ${look} ${i}` }))];
      return [{ ...one, kind: 'get-ready', seconds: 2 }, ...Array.from({ length: conditions }, (_, look) => cuesOf(look)).flat(), { ...one, title: 'Last', seconds: 3 }];
    };
  }, cues, looks.length);
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
  await press('none');
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
  await press('in-place');
  const begun = performance.now();
  const until = second => new Promise(done => setTimeout(done, begun + second * 1000 - performance.now()));
  const wasHidden = [];
  for (const [i, look] of looks.entries()) {
    await until(2.1 + i * (cues + 1));
    await change(look);
    wasHidden.push(await page.evaluate(() => document.hidden));
  }
  await until(2 + looks.length * (cues + 1) + 1);
  const answer = await page.evaluate((count, conditions) => {
    const guide = Object.values(window.gradus.guides).find(one => one.dialog.open).guide;
    const { shown, starts } = window;

    // The last step ends at its deadline; the cues lie a second apart before it.
    const end = guide.state.ends - 3000;
    const { context } = starts[0].node;
    const mark = context.getOutputTimestamp();
    const heard = starts.filter(one => !one.cut && one.hertz === 660).map(one => mark.performanceTime + (one.when - mark.contextTime) * 1000);
    return Array.from({ length: conditions }, (_, look) => {
      const due = Array.from({ length: count }, (_, i) => end - ((conditions - 1 - look) * (count + 1) + count - i) * 1000);
      return {
        audio: context.state,
        shown: due.map((at, i) => { const note = shown.find(one => one.what === `Cue ${look} ${i}`); return note ? Math.abs((note.frame ?? note.script) - at) : -1; }),
        heard: due.map(at => Math.min(...heard.map(one => Math.abs(one - at)))),
      };
    });
  }, cues, looks.length);
  process.stdout.write(JSON.stringify(answer.map((one, i) => ({ ...one, wasHidden: wasHidden[i] }))));
} finally {
  await browser.close();
}
