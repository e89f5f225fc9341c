// Looks at sheets as librsvg draws them: the scale bar measured in pixels against what it declares, and ink
// where a home printer does not reach.
//   node raster_sheets.mjs FOLDER [EVERY]   each sheet of the folder and of those in it, or every so many
//   node raster_sheets.mjs --controls FILE  the sheet spoilt in two ways; each must raise its own complaint
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';

const perMm = 4;
const dpi = String(25.4 * perMm);
const toleranceMm = 0.3;   // a pixel and a bit
const marginMm = 12.5;     // half an inch less a pixel

/** Brightness, 0 to 255, of each pixel of an eight-bit PNG without interlacing, as librsvg writes them. */
function brightness(png) {
  let at = 8;
  let width = 0, height = 0, channels = 0;
  const parts = [];
  while (at < png.length) {
    const size = png.readUInt32BE(at);
    const kind = png.toString('latin1', at + 4, at + 8);
    const body = png.subarray(at + 8, at + 8 + size);
    if (kind === 'IHDR') {
      [width, height] = [body.readUInt32BE(0), body.readUInt32BE(4)];
      channels = { 0: 1, 2: 3, 6: 4 }[body[9]];
      if (body[8] !== 8 || !channels || body[12] !== 0) throw new Error('a kind of PNG that is not read here');
    }
    if (kind === 'IDAT') parts.push(body);
    at += size + 12;
  }
  const raw = inflateSync(Buffer.concat(parts));
  const stride = width * channels;
  const grey = new Uint8Array(width * height);
  let before = new Uint8Array(stride);
  for (let y = 0; y < height; ++y) {
    const filter = raw[y * (stride + 1)];
    const line = Uint8Array.from(raw.subarray(y * (stride + 1) + 1, (y + 1) * (stride + 1)));
    for (let i = 0; i < stride; ++i) {
      const left = i >= channels ? line[i - channels] : 0;
      const up = before[i];
      const corner = i >= channels ? before[i - channels] : 0;
      const guess = left + up - corner;
      const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
      const paeth = a <= b && a <= c ? left : b <= c ? up : corner;
      line[i] += [0, left, up, (left + up) >> 1, paeth][filter];
    }
    for (let x = 0; x < width; ++x) {
      const p = x * channels;
      grey[y * width + x] = channels >= 3 ? (line[p] * 2 + line[p + 1] * 5 + line[p + 2]) >> 3 : line[p];
    }
    before = line;
  }
  return { width, height, grey };
}

const number = (text, pattern) => Number(pattern.exec(text)?.[1]);

/** Where the bar stands by the file's own numbers, in millimetres, and how long it must be. */
function barOf(svg) {
  const group = /<g data-scale="1:(\d+)" data-bar-mm="([\d.]+)">(.*?)<\/g>/s.exec(svg);
  if (!group) return null;
  const points = [...group[3].matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(m => [m[1] / 10, m[2] / 10]);
  const [xs, ys] = [0, 1].map(k => points.map(p => p[k]));
  return { left: Math.min(...xs), right: Math.max(...xs), y: (Math.min(...ys) + Math.max(...ys)) / 2,
    due: group[2] / group[1] };
}

function complaintsOf(svg) {
  const complaints = [];
  const png = execFileSync('rsvg-convert', ['--dpi-x', dpi, '--dpi-y', dpi, '-f', 'png'],
    { input: svg, maxBuffer: 1 << 28 });
  const { width, height, grey } = brightness(png);
  const dark = (x, y) => x >= 0 && y >= 0 && x < width && y < height && grey[y * width + x] < 128;
  const declared = number(svg, /<svg[^>]* width="([\d.]+)mm"/);
  if (Math.abs(width / perMm - declared) > toleranceMm) complaints.push(`page: ${width / perMm} mm for ${declared} mm`);
  const margin = Math.floor(marginMm * perMm);
  let inked = 0;
  let beyond = 0;
  for (let y = 0; y < height; ++y)
    for (let x = 0; x < width; ++x) {
      if (!dark(x, y)) continue;
      ++inked;
      if (Math.min(x, y, width - 1 - x, height - 1 - y) < margin) ++beyond;
    }
  if (inked === 0) complaints.push('ink: none');
  if (beyond > 0) complaints.push(`margin: ${beyond} dark pixels within ${marginMm} mm of the edge`);
  const bar = barOf(svg);
  if (bar) {
    const y = Math.round(bar.y * perMm);
    const from = Math.round((bar.left - 3) * perMm);
    const to = Math.round((bar.right + 3) * perMm);
    let first = null;
    let last = null;
    for (let x = from; x <= to; ++x)
      if (dark(x, y)) {
        first ??= x;
        last = x;
      }
    const line = 0.18;  // half of the bar's outline stands beyond each end
    const measured = first === null ? 0 : (last - first + 1) / perMm - line;
    if (Math.abs(measured - bar.due) > toleranceMm)
      complaints.push(`scale: the bar measures ${measured.toFixed(2)} mm, due are ${bar.due.toFixed(2)} mm`);
  } else if (!/<svg[^>]* data-scale="none"/.test(svg)) {
    complaints.push('scale: no bar');
  }
  return complaints;
}

function svgsIn(folder) {
  return readdirSync(folder).sort().flatMap(name => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? svgsIn(path) : name.endsWith('.svg') ? [path] : [];
  });
}

const [first, second] = process.argv.slice(2);
if (!first) {
  console.error('usage: raster_sheets.mjs FOLDER [EVERY] | --controls FILE');
  process.exit(64);
}
const faults = [];
let seen = 0;
if (first === '--controls') {
  const svg = readFileSync(second, 'utf8');
  const spoilt = {
    // The same drawing shrunk within its page, as a printer's "fit" does.
    scale: svg.replace(/viewBox="0 0 ([\d.]+) ([\d.]+)"/, (_, w, h) => `viewBox="-50 -50 ${w * 1.05} ${h * 1.05}"`),
    margin: svg.replace('</svg>', '<path fill="none" stroke="#000000" stroke-width="3" d="M20 1000L20 1500"/></svg>'),
  };
  if (complaintsOf(svg).length > 0) faults.push('the sheet itself: ' + complaintsOf(svg));
  for (const [kind, bad] of Object.entries(spoilt)) {
    const raised = complaintsOf(bad);
    if (bad === svg || !raised.some(c => c.startsWith(kind + ':'))) faults.push(`${kind}: not found, got ${JSON.stringify(raised)}`);
    ++seen;
  }
} else {
  const every = Number(second ?? 1);
  svgsIn(first).forEach((file, i) => {
    if (i % every !== 0) return;
    ++seen;
    faults.push(...complaintsOf(readFileSync(file, 'utf8')).map(c => `${file}: ${c}`));
  });
}
for (const fault of faults) console.log(fault);
console.log(`${seen} seen: ${faults.length} complaints`);
process.exitCode = faults.length === 0 && seen > 0 ? 0 : 1;
