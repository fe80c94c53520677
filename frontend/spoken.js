// The answer is spoken one second after the last key, one sentence, only what changed.
let lastKey = 0;
for (const key of ['input', 'keydown']) document.addEventListener(key, () => { lastKey = performance.now(); }, true);

class SpokenAnswer extends HTMLElement {
  #facts = {};
  #spoken;
  #timer;
  connectedCallback() {
    if (Object.hasOwn(this, 'facts')) {
      const early = this.facts;
      delete this.facts;
      this.facts = early;
    }
  }
  get facts() { return JSON.stringify(this.#facts); }
  set facts(text) {
    this.#facts = text ? JSON.parse(text) : {};
    if (this.#spoken === undefined) { this.#spoken = { ...this.#facts }; return; }
    this.#wait();
  }
  #wait() {
    clearTimeout(this.#timer);
    const since = performance.now() - lastKey;
    this.#timer = setTimeout(() => (performance.now() - lastKey < 990 ? this.#wait() : this.#speak()), Math.max(1000 - since, 10));
  }
  #speak() {
    const changed = Object.keys(this.#facts).filter((k) => this.#facts[k] !== this.#spoken[k]).map((k) => this.#facts[k]).filter(Boolean);
    this.#spoken = { ...this.#facts };
    if (changed.length === 0) return;
    const said = changed.slice(0, 3).join('; ') + (changed.length > 3 ? `; and ${changed.length - 3} more` : '');
    this.textContent = said.charAt(0).toUpperCase() + said.slice(1) + '.';
  }
}
customElements.define('spoken-answer', SpokenAnswer);
