// Follows a plan in two browsers as a person does who writes it.
//   node probe_watch.mjs PROGRAM PLAN            save good, broken, good; keyboard; telephone; requests
//   node probe_watch.mjs PROGRAM PLAN --saves N  N saves more, and what memory the program holds meanwhile
import { spawn } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openBrowser } from './browser.mjs';

const [program, plan, option, count] = process.argv.slice(2);
if (!plan || (option && !(option === '--saves' && Number(count) > 0))) {
  console.error('usage: probe_watch.mjs PROGRAM PLAN [--saves N]');
  process.exit(64);
}
const patience = 60_000;
const faults = [];
const must = (held, claim) => { if (!held) faults.push(claim); };
const folder = mkdtempSync(join(tmpdir(), 'berthwright-watch-'));
const file = join(folder, 'plan.json');
const good = readFileSync(plan, 'utf8');
copyFileSync(plan, file);
const titled = words => good.replace('"title": "', `"title": "${words}`);
const save = text => { writeFileSync(`${file}.new`, text); renameSync(`${file}.new`, file); };

const watch = spawn(program, ['watch', file, '--port', '0']);
const ended = new Promise(done => { watch.on('exit', (code, signal) => done(code ?? signal)); });
const address = await new Promise((done, fail) => {
  let said = '';
  watch.stdout.on('data', bytes => {
    said += bytes;
    const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(said);
    if (found) done(found[0]);
  });
  ended.then(() => fail(new Error('the program ended')));
});
const memory = () => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${watch.pid}/status`, 'utf8'))[1]);

const browsers = [await openBrowser(), await openBrowser()];
const pages = [];
const told = [];
for (const [i, browser] of browsers.entries()) {
  const page = await browser.newPage({ viewport: i === 0 ? { width: 1280, height: 900 } : { width: 390, height: 844 } });
  page.on('request', request => must(request.url().startsWith(address), `asks for ${request.url()}`));
  // A picture may be asked for while the next save takes its place: the page then renews itself and asks for that.
  const overtaken = message => /status of 404/.test(message.text()) && message.location().url.endsWith('.svg');
  page.on('console', message => must(message.type() !== 'error' || /ERR_CONNECTION/.test(message.text()) || overtaken(message),
                                     `${message.text()} ${message.location().url}`));
  page.on('pageerror', error => must(false, error.message));
  await page.goto(address);
  pages.push(page);
}
const reached = (page, test, value) => page.waitForFunction(test, value, { timeout: patience });
const all = test => Promise.all(pages.map(test));

async function saves() {
  await all(page => reached(page, () => document.body.dataset.others === '1'));
  await all(async page => {
    must(await page.evaluate(() => {
      const image = document.querySelector('figure.sheet:not([hidden]) img');
      return image.complete && image.naturalWidth > 0;
    }), 'the first sheet is seen');
    must(await page.locator('.pin:visible').count() > 0, 'findings are marked on it');
    must(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'no wider than the window');
  });
  // Chosen things stay chosen over a save.
  await pages[0].selectOption('#sheet', 'night');
  await pages[0].fill('.way:not([hidden]) input', '2');
  save(good.replace('"title"', '"titel"'));
  await all(page => reached(page, () => document.querySelector('#faults li')));
  await all(async page => {
    must(await page.locator('#state').textContent() === 'Save 2 has 1 fault. What is drawn is save 1, the last good one.', 'state of a broken save');
    must(await page.locator('figure.sheet:visible img').count() === 1, 'the last good sheet stays');
    must(await page.locator('#text mark').count() === 1, 'the line of the fault is marked in the file');
  });
  await pages[0].click('#faults .line');
  must(await pages[0].locator('#text li:target').isVisible(), 'a line opens the file at its place');
  save(titled('Second '));
  await all(page => reached(page, () => document.body.dataset.plans === '3'));
  must(await pages[0].locator('#sheet').inputValue() === 'night', 'the sheet stays chosen');
  must(await pages[0].locator('.way:visible input').inputValue() === '2', 'the step stays chosen');
  must(await pages[1].locator('#faults li').count() === 0, 'the faults are gone');
  await all(page => reached(page, () => document.body.dataset.others === '3'));
}

async function keyboard(page) {
  await page.focus('#before');
  const seen = new Set();
  for (let i = 0; i < 400; ++i) {
    await page.keyboard.press('Tab');
    seen.add(await page.evaluate(() => document.activeElement.id || document.activeElement.type || document.activeElement.className));
  }
  for (const wanted of ['sheet', 'after', 'larger', 'pins', 'paper', 'way', 'range'])
    must(seen.has(wanted), `the keyboard reaches ${wanted}`);
  await page.focus('.way:not([hidden]) input');
  await page.keyboard.press('ArrowRight');
  must((await page.locator('.way:visible li:visible h3').textContent()).startsWith('Step 3 of '), 'arrows move the slider');
  await page.focus('button.number');
  await page.keyboard.press('Enter');
  must(await page.locator('.pin.chosen:visible').count() === 1, 'a finding shows its mark');
}

// From the moment at which the board has them to the moment at which the browser shows them.
async function delays(page) {
  const waited = [];
  for (let i = 0; i < 3; ++i) {
    const number = Number(await page.evaluate(() => document.body.dataset.save)) + 1;
    save(titled(`Third ${i} `));
    const port = new URL(address).port;
    let edition = await page.evaluate(() => document.body.dataset.edition);
    // Asked from beside the browser, as soon as it is out.
    for (;;) {
      const next = await (await fetch(`http://127.0.0.1:${port}/next?after=${edition}`)).text();
      const html = await (await fetch(address)).text();
      edition = next;
      if (html.includes(` data-findings="${number}"`)) break;
    }
    const out = Date.now();
    await page.waitForFunction(n => Number(document.body.dataset.findings) >= n, number, { polling: 5, timeout: patience });
    waited.push(Date.now() - out);
  }
  return waited;
}

try {
  if (option) {
    await reached(pages[0], () => document.body.dataset.others === '1');
    const figures = [];
    for (let i = 1; i <= Number(count); ++i) {
      save(`${good}\n// ${i}\n`);
      await pages[0].waitForFunction(n => Number(document.body.dataset.findings) >= n, i + 1, { polling: 20, timeout: patience });
      if (i % (Number(count) / 10) === 0) {
        await reached(pages[0], () => document.body.dataset.others === document.body.dataset.save);
        figures.push(memory());
      }
    }
    console.log(`resident kB at every tenth of ${count} saves: ${figures.join(', ')}`);
    must(figures.at(-1) < figures[1] * 1.2 + 4096, 'memory stays flat');
  } else {
    await saves();
    await keyboard(pages[0]);
    const waited = await delays(pages[0]);
    console.log(`findings shown after they were out, ms: ${waited.join(', ')}`);
    // Told and not judged: a loaded machine is slower. What stands there in the end is judged.
    await reached(pages[0], () => document.body.dataset.others === document.body.dataset.save);
    await reached(pages[0], () => {
      const image = document.querySelector('figure.sheet:not([hidden]) img');
      return image.complete && image.naturalWidth > 0;
    });
  }
  watch.kill('SIGINT');
  must(await ended === 0, 'Ctrl-C ends it with 0');
  await reached(pages[0], () => !document.querySelector('#lost').hidden);
} catch (error) {
  faults.push(error.message);
} finally {
  watch.kill('SIGKILL');
  for (const browser of browsers) await browser.close();
  rmSync(folder, { recursive: true });
}
for (const fault of faults) console.log(fault);
console.log(`watch: ${faults.length} complaints`);
process.exitCode = faults.length === 0 ? 0 : 1;
