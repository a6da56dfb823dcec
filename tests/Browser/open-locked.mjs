// Opens locked pages: with Node's own crypto, and in Firefox over file://. Answers with what each of them saw.
import { createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { launchFirefox, openPage } from './firefox.mjs';

const { firefox, path, words, tries } = JSON.parse(readFileSync(0, 'utf8'));

function inside(text) {
  const lines = /id="locked">\n([^<]*)\n<\/script>/.exec(text)[1].split('\n');
  const bytes = line => Buffer.from(line.split(' ').at(-1), 'base64');
  const data = Buffer.from(lines[3], 'base64');
  const key = pbkdf2Sync(words, bytes(lines[1]), 600000, 32, 'sha256');
  const cipher = createDecipheriv('aes-256-gcm', key, bytes(lines[2]));
  cipher.setAAD(Buffer.from(lines.slice(0, 3).join('\n')));
  cipher.setAuthTag(data.subarray(-16));
  return cipher.update(data.subarray(0, -16), undefined, 'utf8') + cipher.final('utf8');
}

const browser = await launchFirefox(firefox);
const page = await openPage(browser);
const said = [];
page.on('console', message => said.push(`${message.type()}: ${message.text()}`));
page.on('pageerror', error => said.push(`error: ${error}`));
const sentences = [];
let opened;
try {
  for (const at of tries) {
    await page.goto('file://' + at.path, { waitUntil: 'load' });
    if (at.words !== null) {
      await page.type('#words', at.words);
      await page.click('#do');
      await page.waitForFunction(() => !document.getElementById('do').disabled);
    }
    sentences.push(await page.$eval('#said', e => e.textContent));
  }
  await page.goto('file://' + path, { waitUntil: 'load' });
  await page.type('#words', words);
  await page.click('#do');
  await page.waitForSelector('#index');
  opened = await page.evaluate(() => ({ title: document.title, week: document.querySelectorAll('[data-week-now]:not([hidden])').length, kept: localStorage.length + sessionStorage.length }));
} finally {
  await browser.close();
}
process.stdout.write(JSON.stringify({ inside: inside(readFileSync(path, 'utf8')), sentences, said, ...opened }));
