// Asks Lighthouse about each address, and answers with its scores (0 to 100) and with what keeps them from 100.
import { readFileSync } from 'node:fs';
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';

const { chromium, addresses } = JSON.parse(readFileSync(0, 'utf8'));
const chrome = await launch({ chromePath: chromium, chromeFlags: ['--headless=new', '--no-sandbox'], logLevel: 'silent' });
const said = [];
try {
  for (const address of addresses) {
    const { lhr } = await lighthouse(address, { port: chrome.port, output: 'json', logLevel: 'silent', onlyCategories: ['accessibility', 'best-practices'] });
    const short = Object.values(lhr.categories).flatMap(c => c.auditRefs).filter(r => r.weight > 0).map(r => lhr.audits[r.id]).filter(a => a.score !== null && a.score < 1).map(a => `${a.id}: ${a.title}`);
    said.push({ address, accessibility: Math.round(lhr.categories.accessibility.score * 100), bestPractices: Math.round(lhr.categories['best-practices'].score * 100), short });
  }
} finally {
  await chrome.kill();
}
process.stdout.write(JSON.stringify(said));
