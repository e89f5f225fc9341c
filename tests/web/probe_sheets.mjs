// Looks at sheets as a reader does, in a browser.
//   node probe_sheets.mjs --controls FOLDER    sheets that must fail as their own first comment says
//   node probe_sheets.mjs PLANS OUT            OUT/NAME/*.svg of every PLANS/NAME.json, at least one each
//   node probe_sheets.mjs --folder FOLDER      the sheets of one folder
import { readFileSync, readdirSync, existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import { mmPerPixel, openBrowser, openSheet } from './browser.mjs';
import { finestMm, heavyMm, judgeSheet } from './judge_sheet.mjs';
import { measureSheet } from './measure_sheet.mjs';

const svgsIn = folder => (existsSync(folder) ? readdirSync(folder) : []).filter(f => f.endsWith('.svg')).sort()
  .map(f => join(folder, f));

async function look(page, file) {
  const asked = await openSheet(page, file);
  const sheet = await page.evaluate(measureSheet, { heavyMm, finestMm, mmPerPixel });
  return { texts: sheet.texts?.length ?? 0, heavy: sheet.heavy ?? 0, complaints: judgeSheet(sheet, asked) };
}

/** A control says `expect: nothing` or the start of the one complaint that it must raise. */
async function controls(page, folder) {
  const faults = [];
  const files = svgsIn(folder);
  for (const file of files) {
    const expected = /<!-- expect: (.*?) -->/s.exec(readFileSync(file, 'utf8'))?.[1];
    const { complaints } = await look(page, file);
    const kept = expected === 'nothing' ? complaints.length === 0
      : complaints.length === 1 && expected && complaints[0].startsWith(expected);
    if (!kept) faults.push(`${basename(file)} expects "${expected}", got ${JSON.stringify(complaints)}`);
  }
  return { faults, seen: files.length, told: `${files.length} controls` };
}

async function folder(page, where) {
  const files = svgsIn(where);
  const faults = [];
  for (const file of files) {
    const { complaints } = await look(page, file);
    faults.push(...complaints.map(c => `${basename(file)}: ${c}`));
  }
  return { faults, seen: files.length, told: `${files.length} sheets` };
}

async function sheets(page, plans, out) {
  const faults = [];
  const names = readdirSync(plans).filter(f => /\.json$/.test(f) && !/schema\.json$/.test(f)).map(f => basename(f, '.json'));
  let seen = 0, texts = 0, heavy = 0;
  for (const name of names.sort()) {
    const files = svgsIn(join(out, name));
    if (files.length === 0) faults.push(`${name}: no sheet in ${join(out, name)}`);
    for (const file of files) {
      const found = await look(page, file);
      faults.push(...found.complaints.map(c => `${name}/${basename(file)}: ${c}`));
      seen += 1; texts += found.texts; heavy += found.heavy;
    }
  }
  return { faults, seen, told: `${seen} sheets of ${names.length} plans, ${texts} texts, ${heavy} heavy lines` };
}

const [first, second] = process.argv.slice(2);
if (!second) {
  console.error('usage: probe_sheets.mjs --controls FOLDER | --folder FOLDER | PLANS OUT');
  process.exit(64);
}
const browser = await openBrowser();
try {
  const page = await browser.newPage();
  const { faults, seen, told } = await (first === '--controls' ? controls(page, second)
    : first === '--folder' ? folder(page, second) : sheets(page, first, second));
  for (const fault of faults) console.log(fault);
  console.log(`${told}: ${faults.length} complaints`);
  process.exitCode = faults.length === 0 && seen > 0 ? 0 : 1;
} finally {
  await browser.close();
}
