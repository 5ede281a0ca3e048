// Opens pages in a headless Chromium and holds them against the rules of axe-core, on the screen and as printed.
// node axe.mjs CHROMIUM PAGE...
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';

const [chromium, ...pages] = process.argv.slice(2);
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const browser = await puppeteer.launch({ executablePath: chromium, args: ['--no-sandbox', '--disable-gpu'] });
let faults = 0;
try {
  for (const file of pages) {
    const page = await browser.newPage();
    await page.setOfflineMode(true);
    await page.goto(pathToFileURL(file).href);
    await page.evaluate(axe);
    for (const medium of ['screen', 'print']) {
      await page.emulateMediaType(medium);
      const { violations, passes } = await page.evaluate(() => globalThis.axe.run());
      for (const rule of violations) {
        faults++;
        console.error(`${file} (${medium}): ${rule.id}: ${rule.help}`);
        for (const node of rule.nodes.slice(0, 3)) console.error(`    ${node.html.slice(0, 200)}`);
      }
      if (passes.length < 10) {
        faults++;
        console.error(`${file} (${medium}): only ${passes.length} rules found something to look at`);
      }
    }
    await page.close();
  }
} finally {
  await browser.close();
}
console.log(`axe: ${pages.length} pages, ${faults} faults`);
process.exit(faults === 0 ? 0 : 1);
