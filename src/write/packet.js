(() => {
  'use strict';
  const still = matchMedia('(prefers-reduced-motion: reduce)');
  const perStep = 900;   // milliseconds that a piece is on its way
  const atMost = 3600;   // over however many steps the slider jumps
  const picture = 'http://www.w3.org/2000/svg';

  // Where the piece is at every moment of a step, with the part of the way that is behind it then.
  function momentsOf(stage) {
    const moments = (stage.dataset.way ?? '').split(';').filter(Boolean).map(text => ({ is: text.split(' ').map(Number), behind: 0 }));
    for (let i = 1; i < moments.length; ++i) {
      const [a, b] = [moments[i - 1].is, moments[i].is];
      moments[i].behind = moments[i - 1].behind + 1 + Math.max(...a.slice(0, 10).map((from, j) => Math.abs(b[j] - from)));
    }
    return moments;
  }

  function boxAt(moments, part) {
    const goal = part * moments.at(-1).behind;
    const i = Math.max(moments.findIndex(moment => moment.behind >= goal), 1);
    const [before, after] = [moments[i - 1], moments[i]];
    const share = (goal - before.behind) / (after.behind - before.behind);
    return { is: before.is.map((from, j) => from + (after.is[j] - from) * share), followed: after.is[10] === 1 };
  }

  const fromAbove = ([x, y, width, height]) => `M${x} ${y}h${width}v${height}h${-width}z`;
  function raised([, , , , x, y, along, lean, depth, height]) {
    const end = x + along;
    return `M${x} ${y}h${along}v${-height}h${-along}z` +
      `M${end} ${y}l${lean} ${-depth}v${-height}l${-lean} ${depth}z` +
      `M${x} ${y - height}h${along}l${lean} ${-depth}h${-along}z`;
  }

  class Way {
    constructor(root) {
      this.slide = root.querySelector('input');
      this.said = root.querySelector('[role="status"]');
      [this.back, this.on] = root.querySelectorAll('button');
      this.stages = [...root.querySelectorAll('.stages > li')].map(item => ({
        item, moments: momentsOf(item), boxes: [...item.querySelectorAll('.view')].map(view => {
          const box = document.createElementNS(picture, 'path');
          box.setAttribute('class', 'carried');
          view.append(box);
          return box;
        }),
      }));
      this.last = this.stages.length - 1;
      this.at = 0;
      this.goal = 0;
      this.slide.value = 0;
      root.classList.add('live');
      this.back.addEventListener('click', () => this.go(this.goal - 1, true));
      this.on.addEventListener('click', () => this.go(this.goal + 1, true));
      this.slide.addEventListener('input', () => this.go(Number(this.slide.value), false));
      this.show();
    }

    // Shows the stage whose step is being done, with its piece as far as it has come.
    show() {
      const number = Math.ceil(this.at);
      const part = this.at - (number - 1);
      const onItsWay = part < 1 && this.stages[number].moments.length > 1;
      this.stages.forEach(({ item, boxes, moments }, i) => {
        item.hidden = i !== number;
        item.classList.toggle('going', i === number && onItsWay);
        if (i !== number || !onItsWay) return boxes.forEach(box => box.removeAttribute('d'));
        const { is, followed } = boxAt(moments, part);
        boxes[0].setAttribute('d', fromAbove(is));
        boxes[1].setAttribute('d', raised(is));
        boxes.forEach(box => box.classList.toggle('loose', !followed));
      });
    }

    go(goal, tell) {
      this.goal = Math.min(Math.max(goal, 0), this.last);
      this.slide.value = this.goal;
      const item = this.stages[this.goal].item;
      const name = item.querySelector('h4').textContent;
      this.slide.setAttribute('aria-valuetext', `${name}. ${item.querySelector('p')?.textContent ?? ''}`);
      // A disabled button would lose the focus of who has just pressed it.
      this.back.setAttribute('aria-disabled', this.goal === 0);
      this.on.setAttribute('aria-disabled', this.goal === this.last);
      if (tell) this.said.textContent = this.slide.getAttribute('aria-valuetext');
      if (still.matches) {
        this.at = this.goal;
        this.show();
        return;
      }
      this.from = this.at;
      this.begun = performance.now();
      this.lasts = Math.min(Math.abs(this.goal - this.from) * perStep, atMost);
      if (!this.moving) this.frame();
    }

    frame() {
      const part = this.lasts > 0 ? Math.min((performance.now() - this.begun) / this.lasts, 1) : 1;
      this.at = part === 1 ? this.goal : this.from + (this.goal - this.from) * part;
      this.show();
      this.moving = part < 1;
      if (this.moving) requestAnimationFrame(() => this.frame());
    }
  }

  for (const root of document.querySelectorAll('.way')) new Way(root).go(0, false);

  const larger = document.querySelector('#larger');
  larger.hidden = false;
  larger.addEventListener('click', () => {
    larger.setAttribute('aria-pressed', document.documentElement.classList.toggle('large'));
  });
})();
