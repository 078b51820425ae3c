// Runs axe-core over HTML files in headless Chromium, at phone and at desktop width, and prints one line for each violation.
// node axe.mjs CHROMIUM FILE...   (puppeteer-core and axe-core are found from the working folder)
import {createRequire} from 'node:module';
import {readFileSync} from 'node:fs';
import {pathToFileURL} from 'node:url';
const require = createRequire(process.cwd() + '/');
const puppeteer = require('puppeteer-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const [chromium, ...files] = process.argv.slice(2);
const browser = await puppeteer.launch({executablePath: chromium, args: ['--no-sandbox']});
for (const file of files) {
  for (const width of [390, 1200]) {
    const page = await browser.newPage();
    await page.setViewport({width, height: 900});
    await page.goto(pathToFileURL(file).href);
    await page.evaluate(axe);
    const found = await page.evaluate(() => axe.run(document));
    for (const violation of found.violations) {
      console.log(`${file} at ${width}: ${violation.id}, ${violation.nodes.length} times, first ${violation.nodes[0].html.slice(0, 120)}`);
    }
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    if (over > 0) {
      console.log(`${file} at ${width}: scrolls sideways by ${over} px`);
    }
    await page.close();
  }
}
await browser.close();
console.log('looked at ' + files.length);
