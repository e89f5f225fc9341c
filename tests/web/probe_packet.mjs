// Opens a handover packet as the people do who take it home: telephone, desk, dark, without script, on paper.
//   node probe_packet.mjs PROGRAM PLAN
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { openBrowser } from './browser.mjs';

const [program, plan] = process.argv.slice(2);
if (!plan) {
  console.error('usage: probe_packet.mjs PROGRAM PLAN');
  process.exit(64);
}
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const faults = [];
const must = (held, claim) => { if (!held) faults.push(claim); };
const folder = mkdtempSync(join(tmpdir(), 'berthwright-packet-'));

function packetOf(text, name) {
  const file = join(folder, `${name}.json`);
  writeFileSync(file, text);
  execFileSync(program, ['packet', file, '--out', join(folder, `${name}.html`)], { stdio: 'pipe' });
  return pathToFileURL(join(folder, `${name}.html`)).href;
}

const browser = await openBrowser();
/** A page that complains of everything a packet must not do. */
async function opened(address, how, options = {}) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce', ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  page.on('request', request => must(request.url() === address, `${how}: asks for ${request.url()}`));
  page.on('console', message => must(message.type() !== 'error' && message.type() !== 'warning', `${how}: ${message.text()}`));
  page.on('pageerror', error => must(false, `${how}: ${error.message}`));
  page.on('dialog', dialog => { must(false, `${how}: a dialog opens`); dialog.dismiss(); });
  await page.goto(address);
  return page;
}
// The drawings of the stages of one conversion, all or those that are shown, without the box of a piece on its way.
const drawnIn = (way, all) => [...way.querySelectorAll('.stages > li')].filter(stage => all || !stage.hidden).map(stage =>
  [...stage.querySelectorAll('.view')].map(view => {
    const copy = view.cloneNode(true);
    for (const box of copy.querySelectorAll('.carried')) box.remove();
    return copy.outerHTML;
  }).join(''));

async function sizes(address) {
  const page = await opened(address, 'sizes');
  for (const width of [320, 768, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    const seen = await page.evaluate(() => document.documentElement.scrollWidth);
    must(seen <= width, `${seen} pixels wide in a window of ${width}`);
    // Nothing stands out beside the page either where the window would not scroll.
    const outside = await page.evaluate(() => [...document.querySelectorAll('main *:not(svg *)')]
      .filter(one => one.checkVisibility() && (one.getBoundingClientRect().right > innerWidth + 1) && !one.closest('.unseen, thead'))
      .map(one => one.tagName).slice(0, 3));
    must(outside.length === 0, `beside the page at ${width}: ${outside}`);
  }
  await page.setViewportSize({ width: 320, height: 640 });
  const smallest = await page.evaluate(() => Math.min(...[...document.querySelectorAll('.view text')].filter(one => one.checkVisibility())
    .map(one => Number(one.getAttribute('font-size')) * one.ownerSVGElement.getScreenCTM().a)));
  console.log(`smallest lettering of a drawing at 320 pixels: ${smallest.toFixed(1)}`);
  must(smallest > 6.5, `lettering of ${smallest} pixels`);
  await page.click('#larger');
  must(await page.evaluate(() => document.documentElement.scrollWidth <= 320), 'larger letters widen the page');
  must(await page.getAttribute('#larger', 'aria-pressed') === 'true', 'larger letters are told');
  await page.context().close();
}

// Every stage by the arrow key: the picture is the one that stands there without script.
async function slider(address, still) {
  const page = await opened(address, 'slider');
  const ways = await page.locator('.way').count();
  must(ways === still.length && ways > 1, `${ways} ways`);
  for (let i = 0; i < ways; ++i) {
    const way = page.locator('.way').nth(i);
    await way.locator('input').focus();
    for (let stage = 0; stage < still[i].length; ++stage) {
      if (stage > 0) await page.keyboard.press('ArrowRight');
      const shown = await way.evaluate(drawnIn, false);
      must(shown.length === 1 && shown[0] === still[i][stage], `way ${i}, stage ${stage}: another picture`);
      const told = await way.locator('input').getAttribute('aria-valuetext');
      must(told.startsWith(stage === 0 ? 'At the start' : `Step ${stage} of ${still[i].length - 1}. `), told);
    }
    must(await way.locator('.on').getAttribute('aria-disabled') === 'true', 'nothing comes after the last step');
    await page.keyboard.press('Home');
    must(await way.locator('input').inputValue() === '0', 'Home goes to the start');
    await way.locator('.on').click();
    must(await way.locator('[role=status]').textContent() === await way.locator('input').getAttribute('aria-valuetext'), 'a button tells its step');
    await page.keyboard.press('End');
  }
  await page.evaluate(() => document.body.focus());
  const reached = new Set();
  for (let i = 0; i < 40; ++i) {
    await page.keyboard.press('Tab');
    reached.add(await page.evaluate(() => document.activeElement.id || document.activeElement.type || document.activeElement.className || document.activeElement.tagName));
  }
  for (const wanted of ['larger', 'A', 'range', 'button']) must(reached.has(wanted), `the keyboard reaches ${wanted}`);
  await page.context().close();
}

// The piece leaves its ghost, comes to its place, and is then where the picture has it.
async function motion(address) {
  const page = await opened(address, 'motion', { reducedMotion: 'no-preference' });
  const seen = await page.evaluate(async () => {
    const way = document.querySelector('.way');
    const box = path => { const b = path.getBBox(); return [b.x, b.y, b.width, b.height].map(Math.round); };
    const frames = [];
    const on = way.querySelector('.on');
    for (let step = 1; step < way.querySelectorAll('.stages > li').length; ++step) {
      on.click();
      const stage = way.querySelectorAll('.stages > li')[step];
      const boxes = [];
      const begun = performance.now();
      let count = 0;
      do {
        const carried = stage.querySelector('.carried[d]');
        if (carried && stage.classList.contains('going')) boxes.push(box(carried));
        ++count;
        await new Promise(requestAnimationFrame);
      } while (performance.now() - begun < 5000 && (stage.hidden || stage.classList.contains('going')));
      frames.push({ boxes, rate: count / (performance.now() - begun) * 1000, settled: !stage.hidden && !stage.classList.contains('going'),
        left: stage.querySelectorAll('.carried[d]').length, ways: stage.dataset.way !== undefined });
    }
    return frames;
  });
  const withWay = seen.filter(one => one.ways);
  must(withWay.length > 3, 'pieces have ways');
  for (const [i, { boxes, settled, left }] of withWay.entries()) {
    must(settled && left === 0, `step ${i + 1} does not come to rest`);
    // On a loaded machine there are few frames, but the piece is at another place in each.
    must(boxes.length > 0 && new Set(boxes.map(String)).size >= Math.min(boxes.length, 2), `step ${i + 1}: the piece does not move (${boxes.length} frames)`);
  }
  // Told and not judged: a loaded machine is slower.
  console.log(`frames a second while pieces move: ${seen.map(one => one.rate.toFixed(0)).join(' ')}`);
  await page.context().close();
}

async function accessible(address) {
  for (const [how, options] of [['telephone', {}], ['dark', { colorScheme: 'dark' }], ['desk', { viewport: { width: 1280, height: 900 } }]]) {
    const page = await opened(address, how, options);
    await page.evaluate(axe);
    const { violations, passes } = await page.evaluate(() => axe.run({ exclude: ['.view > *', '.shapes'] }, { resultTypes: ['violations'] }));
    must(passes.length > 10, 'axe looked at the page');
    for (const one of violations) must(false, `${how}: axe ${one.id}: ${one.help}: ${one.nodes.slice(0, 2).map(node => node.html.slice(0, 120)).join(' | ')}`);
    await page.context().close();
  }
}

async function withoutScript(address) {
  const page = await opened(address, 'without script', { javaScriptEnabled: false });
  must(await page.locator('.stages > li:visible').count() === await page.locator('.stages > li').count(), 'every stage is there without script');
  must(await page.locator('.slide:visible, #larger:visible').count() === 0, 'no control that does nothing');
  await page.context().close();
}

async function onPaper(address) {
  const page = await opened(address, 'paper');
  const steps = await page.evaluate(() => [...document.querySelectorAll('.stages > li')]
    .map(stage => [stage.querySelector('h4').textContent, stage.querySelector('p')?.textContent.split(' ').slice(0, 4).join(' ')]));
  for (const format of ['Letter', 'A4']) {
    const file = join(folder, `${format}.pdf`);
    await page.pdf({ path: file, format, preferCSSPageSize: false });
    const pages = execFileSync('pdftotext', ['-raw', file, '-']).toString().split('\f').slice(0, -1).map(text => text.replace(/\s+/g, ' '));
    console.log(`${format}: ${pages.length} pages`);
    must(pages.length > 4 && pages.length < 45, `${pages.length} pages`);
    must(pages.every(text => text.length > 40), `an empty page of ${format}`);
    for (const [name, words] of steps) must(pages.some(text => text.includes(name) && (!words || text.includes(words))), `${format}: ${name} is broken over two pages`);
  }
  await page.context().close();
}

async function hostile(text) {
  const title = '</title></script><script>window.got = 1; alert(1)</script><img src=x onerror=alert(2)>';
  const address = packetOf(text.replace(/"title": "/, `"title": ${JSON.stringify(title).slice(0, -1)}`), 'hostile');
  const page = await opened(address, 'hostile');
  must(await page.evaluate(() => window.got === undefined), 'a script of the plan runs');
  must((await page.textContent('h1')).startsWith(title), 'the title is shown as it was written');
  must(await page.locator('.way.live').count() > 0, 'the page works all the same');
  await page.context().close();
}

try {
  const text = readFileSync(plan, 'utf8');
  const address = packetOf(text, 'packet');
  const quiet = await opened(address, 'still', { javaScriptEnabled: false });
  const still = [];
  for (const way of await quiet.locator('.way').all()) still.push(await way.evaluate(drawnIn, true));
  await quiet.context().close();
  await sizes(address);
  await slider(address, still);
  await motion(address);
  await accessible(address);
  await withoutScript(address);
  await onPaper(address);
  await hostile(text);
} catch (error) {
  faults.push(error.stack);
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}
for (const fault of faults) console.log(fault);
console.log(`packet: ${faults.length} complaints`);
process.exitCode = faults.length === 0 ? 0 : 1;
