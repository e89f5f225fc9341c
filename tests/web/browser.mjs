// Debian's Chromium without its windows (they cost a third more time) and without network, and sheets opened in it at their true size.
import { chromium } from 'playwright-core';
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

export const mmPerPixel = 25.4 / 96;

export function openBrowser() {
  return chromium.launch({
    executablePath: '/usr/bin/chromium-headless-shell',
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-gpu-compositing', '--disable-gpu-rasterization',
      '--disable-software-rasterizer', '--disable-quic', '--no-first-run',
      '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
}

/** Opens an SVG file with the whole page in view; returns the addresses it asked for beside its own. */
export async function openSheet(page, file) {
  const address = pathToFileURL(file).href;
  const asked = [];
  const listen = request => { if (request.url() !== address) asked.push(request.url()); };
  page.on('request', listen);
  const root = readFileSync(file, 'utf8').match(/<svg[^>]*>/)?.[0] ?? '';
  const pixels = name => Math.ceil((root.match(new RegExp(`\\s${name}="([\\d.]+)mm"`))?.[1] ?? 300) / mmPerPixel) + 20;
  const view = { width: pixels('width'), height: pixels('height') };
  if (JSON.stringify(view) !== JSON.stringify(page.viewportSize())) await page.setViewportSize(view);
  await page.goto(address);
  page.off('request', listen);
  return asked;
}
