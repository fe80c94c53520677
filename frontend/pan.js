// A drawing larger and smaller: by + and - and 0 in it, by the wheel with Control, by buttons; moved by the arrows and
// pulled about by the mouse. What is drawn stays the program's; only its size on the page changes.

const LEAST = 0.25;
const MOST = 5;
const STEP = 1.25;
// As drawn it may shrink to its place by so much, and its letters are still read; where that is not enough it slides.
const READ = 0.85;
const ARROWS = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};

class PanTools extends HTMLElement {
  #size = 1;
  #off;

  connectedCallback() {
    this.#off = new AbortController();
    const box = this.previousElementSibling;
    const on = (what, does, more) => box.addEventListener(what, does, {signal: this.#off.signal, ...more});
    this.box = box;
    if (!this.childElementCount) this.#build();
    on('keydown', (e) => this.#key(e));
    on('wheel', (e) => {
      if (!e.ctrlKey) return;
      e.preventDefault();
      this.#to(this.#size * (e.deltaY < 0 ? STEP : 1 / STEP), e);
    }, {passive: false});
    on('pointerdown', (e) => this.#pull(e));
    // the program draws anew at each answer; the size a person chose stays
    this.seen = new MutationObserver(() => this.#show());
    this.seen.observe(box, {childList: true});
    this.#show();
  }

  disconnectedCallback() {
    this.#off.abort();
    this.seen.disconnect();
  }

  #build() {
    for (const [words, does] of [
      ['Larger', () => this.#to(this.#size * STEP)],
      ['Smaller', () => this.#to(this.#size / STEP)],
      ['Whole', () => this.#to(Math.min(1, this.box.clientWidth / this.#drawn()))],
      ['As drawn', () => this.#to(1)],
    ]) {
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'act';
      button.textContent = words;
      button.addEventListener('click', does);
      this.append(button);
    }
    this.told = document.createElement('span');
    this.told.className = 'q s';
    this.told.setAttribute('role', 'status');
    this.append(this.told);
  }

  #svg() {
    return this.box.querySelector('svg');
  }

  // Width in pixels as the page would show it by itself.
  #drawn() {
    const svg = this.#svg();
    return svg ? svg.getBoundingClientRect().width / this.#size : 1;
  }

  #to(size, at) {
    const next = Math.min(MOST, Math.max(LEAST, size));
    const box = this.box;
    const around = box.getBoundingClientRect();
    const x = at ? at.clientX - around.left : box.clientWidth / 2;
    const y = at ? at.clientY - around.top : box.clientHeight / 2;
    const grown = next / this.#size;
    const [left, top] = [box.scrollLeft, box.scrollTop];
    this.width = this.#drawn();
    this.#size = next;
    this.#show();
    box.scrollLeft = (left + x) * grown - x;
    box.scrollTop = (top + y) * grown - y;
    this.told.textContent = next === 1 ? '' : `${Math.round(next * 100)} %`;
  }

  #show() {
    const svg = this.#svg();
    if (!svg) return;
    if (this.#size === 1) {
      for (const what of ['width', 'height', 'max-width']) svg.style.removeProperty(what);
      svg.style.minWidth = `${READ * svg.viewBox.baseVal.width}px`;
      this.box.style.maxHeight = '';
    } else {
      svg.style.setProperty('width', `${this.width * this.#size}px`, 'important');
      svg.style.setProperty('height', 'auto', 'important');
      svg.style.setProperty('max-width', 'none', 'important');
      svg.style.minWidth = '';
      this.box.style.maxHeight = '85vh';
    }
    this.box.style.overflow = 'auto';
    this.box.classList.toggle('moves',
      this.box.scrollWidth > this.box.clientWidth + 1 || this.box.scrollHeight > this.box.clientHeight + 1);
  }

  #key(e) {
    if (e.ctrlKey || e.altKey || e.metaKey) return;
    const size = {'+': this.#size * STEP, '=': this.#size * STEP, '-': this.#size / STEP, 0: 1}[e.key];
    if (size) {
      e.preventDefault();
      this.#to(size);
    } else if (ARROWS[e.key] && this.box.classList.contains('moves')) {
      e.preventDefault();
      const [x, y] = ARROWS[e.key];
      this.box.scrollBy(60 * x, 60 * y);
    }
  }

  // A press that does not move is a choice of a section, as before.
  #pull(e) {
    if (e.button !== 0 || e.pointerType !== 'mouse') return;
    const box = this.box;
    const from = [e.clientX + box.scrollLeft, e.clientY + box.scrollTop];
    let moved = false;
    const move = (m) => {
      if (!moved && Math.hypot(m.clientX - e.clientX, m.clientY - e.clientY) < 5) return;
      moved = true;
      box.classList.add('moved');
      box.scrollTo(from[0] - m.clientX, from[1] - m.clientY);
    };
    const end = () => {
      box.classList.remove('moved');
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', end);
      window.removeEventListener('pointercancel', end);
      if (moved) {
        const swallow = (c) => c.stopImmediatePropagation();
        box.addEventListener('click', swallow, {capture: true, once: true});
        setTimeout(() => box.removeEventListener('click', swallow, {capture: true}), 0);
      }
    };
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', end);
    window.addEventListener('pointercancel', end);
  }
}

customElements.define('pan-tools', PanTools);
