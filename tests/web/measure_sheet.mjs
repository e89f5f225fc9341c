// Runs inside the browser, in an SVG document: what stands where, in millimetres of paper. It judges nothing.

/** One function, since it is sent into the page as text. Quads are four corners in order, in mm. */
export function measureSheet({ heavyMm, finestMm, mmPerPixel }) {
  const root = document.documentElement;
  if (root.localName !== 'svg' || document.querySelector('parsererror')) return { broken: true };
  const fix = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  fix.textContent = '* { pointer-events: visiblePainted !important }';
  root.append(fix);

  // What does not move itself lies as its parent does; nothing moves while it is measured.
  const matrices = new Map();
  const matrixOf = element => {
    if (!matrices.has(element)) {
      const still = element !== root && element.parentElement !== root && getComputedStyle(element).transform === 'none' &&
        element.localName !== 'svg' && element.parentElement.localName === 'g';
      matrices.set(element, still ? matrixOf(element.parentElement) : element.getScreenCTM());
    }
    return matrices.get(element);
  };
  const toPaper = (element, x, y) => {
    const m = matrixOf(element);
    return [(m.a * x + m.c * y + m.e) * mmPerPixel, (m.b * x + m.d * y + m.f) * mmPerPixel];
  };
  const scaleOf = element => {
    const m = matrixOf(element);
    return Math.sqrt(Math.abs(m.a * m.d - m.b * m.c)) * mmPerPixel;
  };
  const opacities = new Map([[null, 1]]);
  const opacityOf = element => {
    if (!opacities.has(element)) {
      opacities.set(element, opacityOf(element.parentElement) * Number(getComputedStyle(element).opacity));
    }
    return opacities.get(element);
  };
  const hides = element => {  // filled so that what lies beneath is not seen
    const style = getComputedStyle(element);
    return !['text', 'tspan', 'line'].includes(element.localName) && style.fill !== 'none' &&
      !style.fill.startsWith('rgba') && !style.fill.startsWith('url') &&
      Number(style.fillOpacity) * opacityOf(element) > 0.95;
  };
  const name = element => `<${element.localName}${element.id ? ` id="${element.id}"` : ''}>`;
  const shown = element => {
    const style = getComputedStyle(element);
    return style.visibility === 'visible' && element.getClientRects().length > 0 && opacityOf(element) > 0;
  };

  // A text is measured in runs: a new run starts where a character does not follow the one before it. The second
  // half of a surrogate pair stands where the first does.
  const runs = text => {
    const count = text.getNumberOfChars();
    const found = [];
    for (let i = 0; i < count; ++i) {
      const start = text.getStartPositionOfChar(i);
      const last = found.at(-1);
      const code = text.textContent.charCodeAt(i);
      if (last && code >= 0xdc00 && code <= 0xdfff) {
        last.count += 1;
      } else if (last && Math.hypot(start.x - last.end.x, start.y - last.end.y) < last.em * 0.05) {
        last.end = text.getEndPositionOfChar(i);
        last.count += 1;
      } else {
        const em = parseFloat(getComputedStyle(text).fontSize);
        found.push({ first: i, count: 1, start, end: text.getEndPositionOfChar(i), em });
      }
    }
    return found;
  };
  const quadOfRun = (text, run) => {
    // One run: the length that the layout was made with. More: that of the run alone.
    const whole = run.count === text.getNumberOfChars();
    const length = whole ? text.getComputedTextLength() : text.getSubStringLength(run.first, run.count);
    const x = Math.min(run.start.x, run.end.x);  // read from right to left it ends at the left
    const { y } = run.start;
    return [[x, y - 0.76 * run.em], [x + length, y - 0.76 * run.em], [x + length, y + 0.24 * run.em],
      [x, y + 0.24 * run.em]].map(([px, py]) => toPaper(text, px, py));
  };
  const atPaper = ([x, y]) => document.elementsFromPoint(x / mmPerPixel, y / mmPerPixel);
  const coverOf = (text, quad) => {
    for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const point = [0, 1].map(k => (quad[0][k] + quad[3][k]) / 2 * (1 - part) + (quad[1][k] + quad[2][k]) / 2 * part);
      const top = document.elementFromPoint(point[0] / mmPerPixel, point[1] / mmPerPixel);
      if (top && hides(top) && text.compareDocumentPosition(top) & Node.DOCUMENT_POSITION_FOLLOWING) return name(top);
    }
    return null;
  };

  const texts = [];
  for (const text of document.querySelectorAll('text')) {
    const words = text.textContent.trim();
    if (!words) continue;
    const style = getComputedStyle(text);
    const about = { words, shown: shown(text), fill: style.fill,
      opacity: Number(style.fillOpacity) * opacityOf(text) };
    if (!about.shown) { texts.push({ ...about, quad: null }); continue; }
    for (const run of runs(text)) {
      const quad = quadOfRun(text, run);
      const part = [...words].length === run.count ? words : `${words} [part ${run.first}+${run.count}]`;
      texts.push({ ...about, words: part, quad, emMm: run.em * scaleOf(text), cover: coverOf(text, quad) });
    }
  }

  // A line is a chain of straight stretches; curves are walked in steps of a quarter millimetre.
  const chain = shape => {
    const list = points => Array.from(points, p => [p.x, p.y]);
    const value = key => shape[key].baseVal.value;
    if (shape.localName === 'line') return [[value('x1'), value('y1')], [value('x2'), value('y2')]];
    if (shape.localName === 'polyline') return list(shape.points);
    if (shape.localName === 'polygon') return [...list(shape.points), ...list(shape.points).slice(0, 1)];
    const total = shape.getTotalLength();
    const steps = Math.max(1, Math.ceil(total * scaleOf(shape) / 0.25));
    return Array.from({ length: steps + 1 }, (_, i) => {
      const p = shape.getPointAtLength(total * i / steps);
      return [p.x, p.y];
    });
  };
  const strokes = [];
  const thin = [];
  for (const shape of document.querySelectorAll('line, polyline, polygon, path, rect, circle, ellipse')) {
    const style = getComputedStyle(shape);
    if (style.stroke === 'none') continue;
    const width = parseFloat(style.strokeWidth) * scaleOf(shape);
    const [isThin, isHeavy] = [width < finestMm - 0.001, width >= heavyMm - 0.001];
    if (!isThin && !isHeavy) continue;  // most of them, and the rest takes time
    if (shape.closest('defs, clipPath, pattern, mask, marker, symbol') || !shown(shape)) continue;
    if (isThin) thin.push({ name: name(shape), width });
    if (!isHeavy) continue;
    const points = chain(shape).map(([x, y]) => toPaper(shape, x, y));
    strokes.push({ index: strokes.length, name: name(shape), width, points, shape });
  }

  // Where a stretch meets a text: is the line seen there? An opaque fill painted over it hides it.
  const apart = (p, q) => [p, q].some(quad => quad.some((corner, i) => {
    const next = quad[(i + 1) % 4];
    const axis = [corner[1] - next[1], next[0] - corner[0]];
    const size = Math.hypot(...axis) || 1;
    const range = points => points.map(([x, y]) => (x * axis[0] + y * axis[1]) / size);
    const [a, b] = [range(p), range(q)];
    return Math.min(Math.max(...a), Math.max(...b)) - Math.max(Math.min(...a), Math.min(...b)) <= 0.05;
  }));
  const inside = ([x, y], quad) => {
    const signs = quad.map(([ax, ay], i) => {
      const [bx, by] = quad[(i + 1) % 4];
      return Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
    });
    return !signs.includes(1) || !signs.includes(-1);
  };
  const seenThere = (stroke, quads) => {
    const span = k => [Math.max(...quads.map(q => Math.min(...q.map(c => c[k])))),
      Math.min(...quads.map(q => Math.max(...q.map(c => c[k]))))];
    const [[left, right], [top, bottom]] = [span(0), span(1)];
    for (let x = left + 0.03; x < right; x += 0.1) {
      for (let y = top + 0.03; y < bottom; y += 0.1) {
        if (!quads.every(quad => inside([x, y], quad))) continue;
        for (const element of atPaper([x, y])) {
          if (element === stroke.shape) return true;
          if (hides(element)) break;
        }
      }
    }
    return false;
  };
  // Most stretches are far from most texts, which their upright boxes tell at once.
  const boxOf = points => [0, 1].map(k => [Math.min(...points.map(p => p[k])), Math.max(...points.map(p => p[k]))]);
  const farFrom = (box, start, end, by) => [0, 1].some(k =>
    Math.min(start[k], end[k]) - by > box[k][1] || Math.max(start[k], end[k]) + by < box[k][0]);
  const crossings = [];
  for (const text of texts.filter(t => t.quad)) {
    const box = boxOf(text.quad);
    for (const stroke of strokes) {
      const meets = stroke.points.slice(1).some((end, i) => {
        const start = stroke.points[i];
        if (farFrom(box, start, end, stroke.width / 2)) return false;
        const size = Math.hypot(end[0] - start[0], end[1] - start[1]);
        if (size === 0) return false;
        const side = [(start[1] - end[1]) / size * stroke.width / 2, (end[0] - start[0]) / size * stroke.width / 2];
        const band = [[start, 1], [end, 1], [end, -1], [start, -1]]
          .map(([p, sign]) => [p[0] + sign * side[0], p[1] + sign * side[1]]);
        return !apart(band, text.quad) && seenThere(stroke, [band, text.quad]);
      });
      if (meets) crossings.push({ words: text.words, line: stroke.name, width: stroke.width });
    }
  }

  const bars = Array.from(document.querySelectorAll('[data-bar-mm]'), bar => {
    const points = Array.from(bar.querySelectorAll('line, polyline, polygon, path, rect')).flatMap(shape => {
      const box = shape.getBBox();
      return [toPaper(shape, box.x, box.y), toPaper(shape, box.x + box.width, box.y + box.height)];
    });
    const xs = points.map(p => p[0]);
    return { scale: bar.getAttribute('data-scale'), naturalMm: Number(bar.getAttribute('data-bar-mm')),
      paperMm: points.length ? Math.max(...xs) - Math.min(...xs) : 0 };
  });
  const own = tag => Array.from(root.children).find(e => e.localName === tag)?.textContent.trim() ?? '';
  const box = root.viewBox.baseVal;
  return {
    width: root.getAttribute('width') ?? '', height: root.getAttribute('height') ?? '',
    viewBox: box ? [box.x, box.y, box.width, box.height] : null,
    title: own('title'), desc: own('desc'), notToScale: root.getAttribute('data-scale') === 'none', bars,
    texts, crossings, thin, heavy: strokes.length,
  };
}
