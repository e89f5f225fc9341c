// Follows the plan: waits for the next edition of the page, takes over what differs, keeps what was chosen.
'use strict';
(() => {
  const find = (what, where = document) => where.querySelector(what);
  const all = (what, where = document) => [...where.querySelectorAll(what)];
  const chosen = { sheet: '', way: '', step: {}, size: 1, pins: true, finding: '', open: {} };
  const raw = new Map(all('.part').map(part => [part.id, part.innerHTML]));

  const sheets = () => all('figure.sheet');
  const shownSheet = () => sheets().find(sheet => !sheet.hidden);
  const keyOf = element => element.dataset.key;

  // Pins that would hide each other stand side by side.
  function placePins(sheet) {
    const page = find('.page', sheet);
    const { width, height } = page.getBoundingClientRect();
    const placed = [];
    for (const pin of all('.pin', page)) {
      let x = pin.dataset.x * width;
      let y = pin.dataset.y * height;
      const size = pin.offsetWidth;
      if (size > 0) {
        while (placed.some(([px, py]) => Math.abs(px - x) < size && Math.abs(py - y) < size * 0.9)) {
          x += size;
          if (x > width - size / 2) { x = size / 2; y += size; }
        }
        placed.push([x, y]);
      }
      pin.style.left = `${x}px`;
      pin.style.top = `${y}px`;
    }
  }

  function showSheet() {
    const list = sheets();
    if (list.length === 0) return;
    const at = Math.max(list.findIndex(sheet => keyOf(sheet) === chosen.sheet), 0);
    list.forEach((sheet, i) => { sheet.hidden = i !== at; });
    find('#sheet').value = keyOf(list[at]);
    find('#before').disabled = at === 0;
    find('#after').disabled = at === list.length - 1;
    find('#smaller').disabled = chosen.size <= 1;
    find('#larger').disabled = chosen.size >= 4;
    find('#pins').checked = chosen.pins;
    find('#drawing').classList.toggle('no-pins', !chosen.pins);
    find('.page', list[at]).style.width = `${chosen.size * 100}%`;
    for (const mark of all('.pin, .ties path')) mark.classList.toggle('chosen', mark.dataset.finding === chosen.finding);
    for (const item of all('.finding')) item.classList.toggle('chosen', item.id === `f${chosen.finding}`);
    placePins(list[at]);
  }

  function showWay() {
    const list = all('.way');
    if (list.length === 0) return;
    const way = list.find(one => keyOf(one) === chosen.way) ?? list[0];
    for (const one of list) one.hidden = one !== way;
    find('#way').value = keyOf(way);
    const slide = find('input', way);
    if (!slide) return;
    const step = Math.min(chosen.step[keyOf(way)] ?? 0, Number(slide.max));
    slide.value = step;
    all('li', way).forEach((stage, i) => { stage.hidden = i !== step; });
    slide.setAttribute('aria-valuetext', find('li:not([hidden]) h3', way).textContent);
    find('.back', way).disabled = step === 0;
    find('.on', way).disabled = step === Number(slide.max);
    // The next picture is there before it is asked for.
    for (const image of all('img', way)) if (Math.abs([...way.querySelectorAll('li')].indexOf(image.closest('li')) - step) <= 1) image.loading = 'eager';
  }

  function show() {
    for (const group of all('#findings details')) group.open = chosen.open[group.dataset.group] ?? group.open;
    const text = find('#text');
    if (text) text.open = chosen.open.text ?? text.open;
    showSheet();
    showWay();
  }

  function chooseFinding(number, from) {
    chosen.finding = chosen.finding === number && from === 'list' ? '' : number;
    const pinned = sheet => find(`.pin[data-finding="${number}"]`, sheet);
    if (from === 'list' && chosen.finding && !pinned(shownSheet())) {
      const other = sheets().find(pinned);
      if (other) chosen.sheet = keyOf(other);
    }
    showSheet();
    const item = find(`#f${number}`);
    if (from === 'drawing' && item) {
      const group = item.closest('details');
      if (group) chosen.open[group.dataset.group] = group.open = true;
      item.focus({ preventScroll: true });
      item.scrollIntoView({ block: 'nearest' });
    } else if (chosen.finding) {
      pinned(shownSheet())?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    }
  }

  function turnTo(step) {
    const way = all('.way').find(one => !one.hidden);
    chosen.step[keyOf(way)] = step;
    showWay();
  }

  document.addEventListener('click', event => {
    const button = event.target.closest('button, a');
    if (!button) return;
    const list = sheets();
    const at = list.indexOf(shownSheet());
    if (button.id === 'before' || button.id === 'after') {
      chosen.sheet = keyOf(list[at + (button.id === 'after' ? 1 : -1)]);
      showSheet();
    } else if (button.id === 'smaller' || button.id === 'larger') {
      chosen.size = Math.min(Math.max(chosen.size * (button.id === 'larger' ? 1.5 : 1 / 1.5), 1), 4);
      if (chosen.size < 1.1) chosen.size = 1;
      showSheet();
    } else if (button.dataset.finding) {
      chooseFinding(button.dataset.finding, button.classList.contains('pin') ? 'drawing' : 'list');
    } else if (button.matches('.back, .on')) {
      turnTo(Number(find('input', button.parentElement).value) + (button.matches('.on') ? 1 : -1));
    } else if (button.matches('a[href^="#L"]')) {
      chosen.open.text = find('#text').open = true;
    }
  });
  document.addEventListener('input', event => {
    if (event.target.type === 'range') turnTo(Number(event.target.value));
  });
  document.addEventListener('change', event => {
    if (event.target.id === 'sheet') chosen.sheet = event.target.value;
    if (event.target.id === 'way') chosen.way = event.target.value;
    if (event.target.id === 'pins') chosen.pins = event.target.checked;
    show();
  });
  document.addEventListener('toggle', event => {
    const name = event.target.id === 'text' ? 'text' : event.target.dataset.group;
    if (name) chosen.open[name] = event.target.open;
  }, true);
  window.addEventListener('resize', showSheet);

  // The picture is ready before it takes the place of the old one, so that nothing flickers.
  async function readyPicture(fresh) {
    const list = all('figure.sheet', fresh);
    const sheet = list.find(one => keyOf(one) === chosen.sheet) ?? list[0];
    if (!sheet) return;
    const picture = new Image();
    picture.src = find('img', sheet).getAttribute('src');
    const late = new Promise(done => { setTimeout(done, 400); });
    await Promise.race([picture.decode().catch(() => {}), late]);
  }

  async function renew() {
    const answer = await fetch('/', { cache: 'no-store' });
    if (!answer.ok) throw new Error(answer.statusText);
    const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html');
    await readyPicture(fresh);
    const focused = document.activeElement?.id;
    const paper = shownSheet() && find('.paper', shownSheet());
    const at = paper && [paper.scrollLeft, paper.scrollTop];
    const numbers = JSON.stringify(all('.pin').map(pin => pin.getAttribute('aria-label')));
    for (const part of all('.part', fresh)) {
      const old = document.getElementById(part.id);
      if (part.id === 'state') old.toggleAttribute('data-broken', part.hasAttribute('data-broken'));
      if (raw.get(part.id) === part.innerHTML) continue;
      raw.set(part.id, part.innerHTML);
      old.replaceChildren(...part.childNodes);
    }
    // Numbers of findings are those of one save.
    if (numbers !== JSON.stringify(all('.pin').map(pin => pin.getAttribute('aria-label')))) chosen.finding = '';
    document.title = fresh.title;
    for (const [name, value] of Object.entries(fresh.body.dataset)) document.body.dataset[name] = value;
    show();
    const now = shownSheet() && find('.paper', shownSheet());
    if (now && at) [now.scrollLeft, now.scrollTop] = at;
    if (focused && document.activeElement?.id !== focused) document.getElementById(focused)?.focus({ preventScroll: true });
  }

  const pause = ms => new Promise(done => { setTimeout(done, ms); });
  // A browser grants few connections to one place: pages that nobody sees hold none.
  const seen = () => new Promise(done => {
    if (!document.hidden) done();
    else document.addEventListener('visibilitychange', () => done(), { once: true });
  });

  async function follow() {
    for (;;) {
      await seen();
      try {
        const answer = await fetch(`/next?after=${document.body.dataset.edition}`, { cache: 'no-store' });
        if (!answer.ok) throw new Error(answer.statusText);
        if (await answer.text() !== document.body.dataset.edition) await renew();
        find('#lost').hidden = true;
      } catch {
        find('#lost').hidden = false;
        await pause(1000);
      }
    }
  }

  show();
  follow();
})();
