// node render.mjs FILE.svg OUT.png WIDTH: a picture of a sheet, WIDTH pixels wide, for people to look at.
import { openBrowser, openSheet } from './browser.mjs';

const [file, picture, width] = process.argv.slice(2);
if (!(Number(width) > 0)) {
  console.error('usage: render.mjs FILE.svg OUT.png WIDTH');
  process.exit(64);
}
const browser = await openBrowser();
try {
  const probe = await browser.newPage();
  await openSheet(probe, file);
  const box = await probe.evaluate(() => {
    const { width: w, height: h } = document.documentElement.getBoundingClientRect();
    return { width: w, height: h };
  });
  // The scale of the device is fixed when a page is made, hence a second page.
  const page = await browser.newPage({ deviceScaleFactor: Number(width) / box.width });
  await openSheet(page, file);
  await page.screenshot({ path: picture, clip: { x: 0, y: 0, ...box } });
} finally {
  await browser.close();
}
