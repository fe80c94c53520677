// What every page shares in the browser: undo keys, light and dark, the spoken answer, the fade of a changed figure,
// and our own words when the program does not answer.

const root = document.documentElement;
const THEME = 'longrun-theme';

const page = () => document.querySelector('.page');
const tell = (name, detail) => page()?.dispatchEvent(new CustomEvent(name, { detail }));

// Light and dark: the person's choice, else the computer's.
const darkAsked = matchMedia('(prefers-color-scheme: dark)');
function chosenTheme() {
  try { return localStorage.getItem(THEME); } catch { return null; }
}
function showTheme() {
  const dark = (chosenTheme() ?? (darkAsked.matches ? 'dark' : 'light')) === 'dark';
  root.setAttribute('theme', dark ? 'dark' : 'light');
}
darkAsked.addEventListener('change', showTheme);

document.addEventListener('click', (e) => {
  const button = e.target.closest?.('[data-do]');
  if (!button) return;
  if (button.dataset.do === 'theme') {
    try { localStorage.setItem(THEME, root.getAttribute('theme') === 'dark' ? 'light' : 'dark'); } catch { /* not kept */ }
    showTheme();
  } else if (button.dataset.do === 'answer') {
    openAnswer(!page().classList.contains('open'));
  } else if (button.dataset.do === 'go') {
    openAnswer(false);
    document.getElementById(button.dataset.to)?.focus();
  } else if (button.dataset.do === 'unfold') {
    const more = button.parentElement.querySelector(':scope > [data-more]');
    more.hidden = !more.hidden;
    button.setAttribute('aria-expanded', String(!more.hidden));
  } else if (button.dataset.do === 'print') {
    print();
  }
});

// Below 900 px the answer opens upward from the foot strip.
function openAnswer(open) {
  page().classList.toggle('open', open);
  const button = document.querySelector('[data-do=answer]');
  button?.setAttribute('aria-expanded', String(open));
  button?.setAttribute('aria-label', open ? 'Close the answer' : 'Open the answer upward');
}

let lastKey = 0;
document.addEventListener('input', () => { lastKey = performance.now(); }, true);
document.addEventListener('keydown', (e) => {
  lastKey = performance.now();
  if (e.key === 'Escape' && page()?.classList.contains('open')) {
    openAnswer(false);
    document.querySelector('[data-do=answer]')?.focus();
  }
  if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
  const key = e.key.toLowerCase();
  if (key === 'z' || key === 'y') {
    e.preventDefault();
    tell(key === 'y' || e.shiftKey ? 'sheet-redo' : 'sheet-undo');
  }
});

// The answer is spoken one second after the last key, one sentence, only what changed.
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

// A changed figure fades in over 120 ms, and at once where less motion is asked for. While key follows key it does not
// fade either, and a key ends the fade before it: whoever types on waits for the next figure, not for the last.
const still = matchMedia('(prefers-reduced-motion: reduce)');
const fading = new Set();
let typing = false;
let keyAt = -1000;
new MutationObserver((changes) => {
  if (still.matches || typing) return;
  const figures = new Set();
  for (const c of changes) {
    const at = c.target.nodeType === Node.ELEMENT_NODE ? c.target : c.target.parentElement;
    const figure = at?.closest('[data-fig]');
    if (figure) figures.add(figure);
  }
  for (const f of figures) {
    const fade = f.animate([{ opacity: 0.35 }, { opacity: 1 }], { duration: 120, easing: 'ease-out' });
    fading.add(fade);
    fade.finished.then(() => fading.delete(fade), () => fading.delete(fade));
  }
}).observe(document.body, { subtree: true, childList: true, characterData: true });
document.addEventListener('pointerdown', () => { typing = false; }, true);
document.addEventListener('keydown', () => {
  typing = performance.now() - keyAt < 500;
  keyAt = performance.now();
  for (const fade of fading) fade.finish();
}, true);

// Our own words when the program does not answer; what was typed stays in the browser.
function watchConnection() {
  const state = window.Vaadin?.connectionState;
  if (!state) { setTimeout(watchConnection, 200); return; }
  const show = (now) => {
    const gone = now === 'reconnecting' || now === 'connection-lost';
    if (gone) root.dataset.server = 'gone'; else delete root.dataset.server;
  };
  state.addStateChangeListener((before, now) => show(now));
  show(state.state);
}
watchConnection();

// A sheet says when it was printed.
addEventListener('beforeprint', () => {
  const today = new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  for (const e of document.querySelectorAll('[data-today]')) e.textContent = today;
});

showTheme();

// paper shows a figure whole, even while it fades in on the screen
addEventListener('beforeprint', () => {
  for (const a of document.getAnimations()) if (a.effect?.getComputedTiming().endTime !== Infinity) a.finish();
});
