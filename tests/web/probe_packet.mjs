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

// The piece leaves its ghost, comes to its place, and is then where the picture has it. The page's clock is ours,
// so that a loaded machine sees what a quiet one sees.
async function motion(address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, reducedMotion: 'no-preference' });
  const page = await context.newPage();
  await page.clock.install();
  await page.goto(address);
  await page.clock.pauseAt(Date.now() + 3_600_000);
  const steps = await page.locator('.way').first().locator('.stages > li').evaluateAll(stages => stages.map(stage => stage.dataset.way !== undefined));
  must(steps.filter(Boolean).length > 3, 'pieces have ways');
  for (let step = 1; step < steps.length; ++step) {
    const places = new Set();
    await page.evaluate(() => document.querySelector('.way .on').click());
    for (let tenth = 0; tenth < 8; ++tenth) {
      await page.clock.runFor(100);
      places.add(await page.evaluate(number => {
        const stage = document.querySelectorAll('.way .stages > li')[number];
        const box = stage.classList.contains('going') && stage.querySelector('.carried[d]')?.getBBox();
        return box && !stage.hidden ? [box.x, box.y, box.width, box.height].map(Math.round).join() : '';
      }, step));
    }
    await page.clock.runFor(200);
    const left = await page.evaluate(number => {
      const stage = document.querySelectorAll('.way .stages > li')[number];
      return stage.hidden || stage.classList.contains('going') || stage.querySelector('.carried[d]') !== null;
    }, step);
    must(!left, `step ${step} does not come to rest`);
    places.delete('');
    must(!steps[step] || places.size >= 3, `step ${step}: the piece is seen at ${places.size} places`);
  }
  await context.close();
}

// By the clock of the machine; told and not judged, since a loaded one is slower.
async function pace(address) {
  const page = await opened(address, 'pace', { reducedMotion: 'no-preference' });
  const rate = await page.evaluate(async () => {
    const stages = document.querySelectorAll('.way .stages > li');
    for (let i = 0; i < 3; ++i) document.querySelector('.way .on').click();
    const begun = performance.now();
    let count = 0;
    for (; performance.now() - begun < 10_000 && (stages[3].hidden || stages[3].classList.contains('going')); ++count)
      await new Promise(requestAnimationFrame);
    return stages[3].hidden ? 0 : count / (performance.now() - begun) * 1000;
  });
  must(rate > 0, 'three steps come to rest');
  console.log(`frames a second while pieces move: ${rate.toFixed(0)}`);
  await page.context().close();
}

// Each drawing is one picture with a name, and the rows of a table are alike: marks and more rows took axe most of its time.
// Colours are those of the telephone on a desk too, and on a dark screen nothing else is other than there.
async function accessible(address) {
  const contrast = 'color-contrast';
  for (const [how, options, rules] of [['telephone', {}, {}], ['dark', { colorScheme: 'dark' }, { runOnly: [contrast] }],
    ['desk', { viewport: { width: 1280, height: 900 } }, { rules: { [contrast]: { enabled: false } } }]]) {
    const page = await opened(address, how, options);
    await page.evaluate(() => {
      for (const one of document.querySelectorAll('.view, .sign, .shapes')) one.replaceChildren();
      for (const one of document.querySelectorAll('tr:nth-child(n + 9)')) one.remove();
    });
    await page.evaluate(axe);
    const { violations, passes } = await page.evaluate(rules => axe.run(document, { resultTypes: ['violations'], ...rules }), rules);
    const looked = passes.map(one => one.id);
    must(looked.includes(contrast) === (how !== 'desk') && looked.includes('svg-img-alt') === (how !== 'dark'), `${how}: axe looked at ${looked}`);
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

// A title that would be a script, a name without a place to break, a name read from right to left.
async function hostile(text) {
  const title = '</title></script><script>window.got = 1; alert(1)</script><img src=x onerror=alert(2)>';
  const address = packetOf(text.replace(/"title": "/, `"title": ${JSON.stringify(title).slice(0, -1)}`)
    .replace('"name": "Left bench"', `"name": "${'M'.repeat(60)}"`).replace('"name": "Left seat"', '"name": "مقعد"'), 'hostile');
  const page = await opened(address, 'hostile');
  must(await page.evaluate(() => window.got === undefined), 'a script of the plan runs');
  must((await page.textContent('h1')).startsWith(title), 'the title is shown as it was written');
  must(await page.locator('.way.live').count() > 0, 'the page works all the same');
  must(await page.locator('.key', { hasText: 'M'.repeat(60) }).count() > 0, 'the long name is in a key');
  must((await page.locator('main').textContent()).includes('مقعد'), 'the name from right to left is there');
  // What follows such a name, in its line, stands at its right: no figure changes its side.
  const turned = await page.evaluate(() => [...document.querySelectorAll('main p, main li, main td')].filter(one => one.checkVisibility()).flatMap(one => {
    const words = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
    const seen = [];
    let turned = false;
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      for (const { 0: word, index } of node.data.matchAll(/\S+/g)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const box = range.getBoundingClientRect();
        const before = seen.at(-1);
        // Higher than a line is a word that is broken over two.
        if (box.height < 30 && before?.height < 30 && box.top < before.bottom - 6 && before.top < box.bottom - 6 && box.left < before.left) turned = true;
        seen.push(box);
      }
    }
    return turned ? [one.textContent.slice(0, 80)] : [];
  }));
  must(turned.length === 0, `words out of order: ${turned.slice(0, 2).join(' | ')}`);
  await page.context().close();
  await sizes(address);
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
  await pace(address);
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
