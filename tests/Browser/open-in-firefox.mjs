// Opens each page in Firefox over WebDriver BiDi, with its own strict policy for files switched on, and answers with what it asked for and said.
import { readFileSync } from 'node:fs';
import { launchFirefox, openPage } from './firefox.mjs';

const { firefox, pages } = JSON.parse(readFileSync(0, 'utf8'));
const browser = await launchFirefox(firefox);
const seen = [];
try {
  for (const path of pages) {
    const page = await openPage(browser);
    const asked = [];
    const said = [];
    page.on('request', request => asked.push(request.url()));
    page.on('console', message => said.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', error => said.push(`error: ${error}`));
    await page.goto('file://' + path, { waitUntil: 'load' });
    await new Promise(done => setTimeout(done, 200));
    const heading = await page.evaluate(() => document.querySelector('h1').textContent);
    const width = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    const weeks = await page.evaluate(() => document.querySelectorAll('[data-week-now]:not([hidden])').length);
    seen.push({ path, asked, said, heading, width, weeks });
    await page.close();
  }
} finally {
  await browser.close();
}
process.stdout.write(JSON.stringify(seen));
