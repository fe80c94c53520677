// The parts of a connection, moved with the mouse in their drawing. The keyboard moves them by their names below it.

class HookupBoard extends HTMLElement {
  #held;

  connectedCallback() {
    this.addEventListener('pointerdown', (e) => this.#take(e));
    this.addEventListener('pointermove', (e) => this.#carry(e));
    this.addEventListener('pointerup', (e) => this.#drop(e));
    this.addEventListener('pointercancel', () => this.#letGo());
  }

  #take(e) {
    // A finger slides the drawing sideways; on touch the buttons move a part.
    if (e.pointerType === 'touch' || e.button !== 0) return;
    const part = e.target.closest?.('[data-part]');
    if (!part) return;
    e.preventDefault();
    const svg = part.ownerSVGElement;
    this.#held = { part, x: e.clientX, scale: svg.viewBox.baseVal.width / svg.clientWidth, middle: middle(part) };
    part.classList.add('held');
    this.setPointerCapture(e.pointerId);
  }

  #carry(e) {
    if (!this.#held) return;
    const { part, x, scale } = this.#held;
    part.setAttribute('transform', `translate(${((e.clientX - x) * scale).toFixed(1)} 0)`);
  }

  #drop(e) {
    if (!this.#held) return;
    const { part, x, middle: from } = this.#held;
    const moved = e.clientX - x;
    const all = [...part.ownerSVGElement.querySelectorAll('[data-part]')];
    const to = all.filter((p) => p !== part && middle(p) < from + moved).length;
    const index = Number(part.dataset.part);
    this.#letGo();
    if (Math.abs(moved) < 6) {
      this.dispatchEvent(new CustomEvent('part-chosen', { detail: { part: index } }));
    } else if (to !== index) {
      this.dispatchEvent(new CustomEvent('part-moved', { detail: { from: index, to } }));
    }
  }

  #letGo() {
    this.#held?.part.removeAttribute('transform');
    this.#held?.part.classList.remove('held');
    this.#held = undefined;
  }
}

function middle(part) {
  const box = part.querySelector('.grip').getBoundingClientRect();
  return box.left + box.width / 2;
}

customElements.define('hookup-board', HookupBoard);
