// Firefox over WebDriver BiDi, with its own strict policy for files switched on and nothing of its own to say to the world.
import { launch } from 'puppeteer-core';

// A machine that opens every other page at the same time may take long to start one more browser.
const patience = 120000;

export const launchFirefox = firefox => launch({
  browser: 'firefox', executablePath: firefox, headless: true, timeout: patience, protocolTimeout: patience,
  extraPrefsFirefox: { 'security.fileuri.strict_origin_policy': true, 'datareporting.policy.dataSubmissionEnabled': false, 'app.update.enabled': false, 'network.captive-portal-service.enabled': false, 'network.connectivity-service.enabled': false }
});

/** A page of a browser or of one of its contexts, waited for as long as the browser is. */
export async function openPage(where) {
  const page = await where.newPage();
  page.setDefaultTimeout(patience);
  return page;
}
