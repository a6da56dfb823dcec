// Is led through whole sessions in Firefox over WebDriver BiDi, with its own strict policy for files switched on: from the cautions to the end, and once more on the page to see what was kept.
// In: {firefox, first (scripts before those of the page), whole (plays a session), pages: [{path, root (of the session on its page), list (reads its list), together (whether it has the store of the one before)}]} as JSON on standard input.
// Out: for each page its address, what was listed and played, the log after a new visit (as it is kept, as a file and as a message), and everything that was said and asked for. That a file was read Firefox tells nobody, so what the page
// itself has to load counts as asked for.
import { readFileSync } from 'node:fs';
import { launchFirefox, openPage } from './firefox.mjs';

const { firefox, first, whole, pages } = JSON.parse(readFileSync(0, 'utf8'));
const browser = await launchFirefox(firefox);

async function lead(page, root) {
  const click = async selector => (await page.waitForSelector(selector, { visible: true })).click();
  await click(`${root} [data-lead-in]`);
  await click('dialog[open] [data-act="none"]');
  await click('dialog[open] [data-act="start"]');
}

const loads = `[...document.querySelectorAll('[src], [poster], link[href], object[data]')].map(one => one.src || one.poster || one.href || one.data)`;
const seen = [];
let context = null;
try {
  for (const { path, root, list, together } of pages) {
    // What is kept on one page is not on another, unless they are visited together.
    if (!together || context === null) context = await browser.createBrowserContext();
    const page = await openPage(context);
    const asked = [];
    const said = [];
    page.on('request', request => asked.push(request.url()));
    page.on('console', message => said.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', error => said.push(`error: ${error}`));
    await page.evaluateOnNewDocument(first);
    await page.goto('file://' + path, { waitUntil: 'load' });
    const lists = await page.evaluate(list);
    await lead(page, root);
    const played = await page.evaluate(whole);
    asked.push(...await page.evaluate(loads));
    await page.goto('file://' + path, { waitUntil: 'load' });
    const kept = await page.evaluate('JSON.stringify(window.gradus.log.rows())');
    const file = await page.evaluate('window.gradus.writeLog(window.gradus.log.all())');
    const message = await page.evaluate("window.gradus.log.all().length === 0 ? '' : window.gradus.messageOf(window.gradus.log.all(), { language: 'en', day: '{day}', told: '{how}', stepsOther: '', stepsOne: '', titles: '', toldDone: '', toldStopped: '', toldSession: '' })");
    seen.push({ file, message, address: page.url(), lists: JSON.parse(lists), played: JSON.parse(played), kept: JSON.parse(kept), asked, said });
    await page.close();
  }
} finally {
  await browser.close();
}
process.stdout.write(JSON.stringify(seen));
