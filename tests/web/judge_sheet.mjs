// What a sheet must keep, judged from what was measured. Each complaint is "kind: what and by how much".
//
// The rules, so that the makers of sheets can keep them:
//  - width and height in mm, viewBox of the same shape, non-empty <title> and <desc> as children of the root;
//  - lettering: capitals (0.73 em) at least 1.8 mm high, contrast to white at least 4.5, on the page, visible;
//  - boxes of lettering (0.76 em above and 0.24 em below the baseline) do not overlap by more than 0.05 mm;
//  - no lettering over a stroke of 0.5 mm or more. The only exemption: where an opaque fill lies over that stroke (a
//    patch under a label, the floor over the inner half of a wall), the stroke is not seen and so not crossed;
//  - no opaque fill over lettering;
//  - no stroke finer than 0.13 mm;
//  - <g data-scale="1:20" data-bar-mm="1000">, whose shapes (lettering apart) are 1000/20 mm wide within 0.05 mm; "1:20" stands in
//    some lettering too. A sheet that has no scale says so: data-scale="none" on the root;
//  - nothing is loaded from outside the file.

const tolerance = 0.05;
export const heavyMm = 0.5;
export const finestMm = 0.13;  // the finest of the line width series of ISO 128-2, from memory
const leastCapitals = 1.8;
const capitalsPerEm = 0.729;  // DejaVu Sans: 1493 of 2048 units
const leastContrast = 4.5;    // WCAG 2.2, 1.4.3

function overlapDepth(p, q) {
  let depth = Infinity;
  for (const quad of [p, q]) {
    for (let i = 0; i < 4; ++i) {
      const [a, b] = [quad[i], quad[(i + 1) % 4]];
      const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (size === 0) continue;
      const along = ([x, y]) => (x * (a[1] - b[1]) + y * (b[0] - a[0])) / size;
      const [s, t] = [p.map(along), q.map(along)];
      depth = Math.min(depth, Math.min(Math.max(...s), Math.max(...t)) - Math.max(Math.min(...s), Math.min(...t)));
    }
  }
  return depth;
}

const reach = (quad, k) => [Math.min(...quad.map(p => p[k])), Math.max(...quad.map(p => p[k]))];

function contrastToWhite(fill, opacity) {
  const channels = fill.match(/[\d.]+/g)?.map(Number);
  if (!fill.startsWith('rgb') || !channels) return 1;
  const alpha = opacity * (channels[3] ?? 1);
  const [r, g, b] = channels.slice(0, 3).map(c => (c * alpha + 255 * (1 - alpha)) / 255)
    .map(c => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 1.05 / (0.2126 * r + 0.7152 * g + 0.0722 * b + 0.05);
}

function judgePage(sheet, complain) {
  const mm = [sheet.width, sheet.height].map(s => (/^\d+(\.\d+)?mm$/.test(s) ? parseFloat(s) : null));
  if (mm.includes(null)) complain('page-not-mm', `width="${sheet.width}" height="${sheet.height}"`);
  else if (!sheet.viewBox?.[2]) complain('page-stretched', 'no viewBox');
  else if (Math.abs(mm[0] / sheet.viewBox[2] * sheet.viewBox[3] - mm[1]) > tolerance) {
    complain('page-stretched', `${sheet.width} × ${sheet.height} shows a viewBox of ${sheet.viewBox.slice(2).join(' × ')}`);
  }
  if (!sheet.title) complain('no-title', 'the root has no <title>');
  if (!sheet.desc) complain('no-desc', 'the root has no <desc>');
  return mm;
}

function judgeScale(sheet, complain) {
  if (sheet.notToScale && sheet.bars.length === 0) return;
  if (sheet.bars.length !== 1) complain('bar-missing', `${sheet.bars.length} scale bars`);
  for (const bar of sheet.bars) {
    const ratio = Number(/^1:(\d+(\.\d+)?)$/.exec(bar.scale ?? '')?.[1]);
    const due = bar.naturalMm / ratio;
    if (!(Math.abs(bar.paperMm - due) <= tolerance)) {
      complain('bar-wrong', `${bar.paperMm.toFixed(2)} mm on paper for ${bar.naturalMm} mm at ${bar.scale}`);
    }
    const said = new RegExp(`(^|[^\\d])${bar.scale}([^\\d]|$)`);
    if (!sheet.texts.some(t => said.test(t.words))) complain('scale-unsaid', `no lettering says ${bar.scale}`);
  }
}

function judgeText(text, [width, height], complain) {
  const quoted = `"${text.words}"`;
  if (!text.shown) return complain('text-hidden', quoted);
  const capitals = text.emMm * capitalsPerEm;
  if (capitals < leastCapitals) complain('text-small', `${quoted} has capitals of ${capitals.toFixed(2)} mm`);
  const contrast = contrastToWhite(text.fill, text.opacity);
  if (contrast < leastContrast) complain('text-faint', `${quoted} has a contrast of ${contrast.toFixed(2)}`);
  const off = Math.max(...text.quad.map(([x, y]) => Math.max(-x, -y, x - width, y - height)));
  if (width && off > tolerance) complain('text-off-page', `${quoted} by ${off.toFixed(2)} mm`);
  if (text.cover) complain('text-covered', `${quoted} by ${text.cover}`);
}

export function judgeSheet(sheet, asked) {
  if (sheet.broken) return ['broken-xml: the browser cannot read it'];
  const complaints = [];
  const complain = (kind, what) => complaints.push(`${kind}: ${what}`);
  for (const address of asked) complain('outside-load', address);
  const page = judgePage(sheet, complain);
  judgeScale(sheet, complain);
  for (const text of sheet.texts) judgeText(text, page, complain);
  const placed = sheet.texts.filter(t => t.quad);
  const boxes = placed.map(t => [reach(t.quad, 0), reach(t.quad, 1)]);
  const farApart = (a, b) => [0, 1].some(k => a[k][1] < b[k][0] || b[k][1] < a[k][0]);
  placed.forEach((a, i) => placed.forEach((b, j) => {
    if (j <= i || farApart(boxes[i], boxes[j])) return;
    const depth = overlapDepth(a.quad, b.quad);
    if (depth > tolerance) complain('text-over-text', `"${a.words}" and "${b.words}" by ${depth.toFixed(2)} mm`);
  }));
  for (const c of sheet.crossings) {
    complain('text-over-line', `"${c.words}" and ${c.line} of ${c.width.toFixed(2)} mm`);
  }
  for (const line of sheet.thin) complain('stroke-thin', `${line.name} of ${line.width.toFixed(2)} mm`);
  if (placed.length === 0) complain('no-text', 'a sheet without lettering');
  return complaints;
}
