// What every page shares in the browser: undo keys, light and dark, the answer that opens on a phone, what folds and prints.

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

// Whoever was led to an entry sees which it is, also where it was in sight before.
document.addEventListener('arrived', ({ target }) => {
  const goal = target.closest('.fld, .pics, fieldset') ?? target;
  goal.classList.remove('arrived');
  requestAnimationFrame(() => goal.classList.add('arrived'));
  goal.addEventListener('animationend', () => goal.classList.remove('arrived'), { once: true });
});

// Below 900 px the answer opens upward from the foot strip.
function openAnswer(open) {
  page().classList.toggle('open', open);
  const button = document.querySelector('[data-do=answer]');
  button?.setAttribute('aria-expanded', String(open));
  button?.setAttribute('aria-label', open ? 'Close the answer' : 'Open the answer upward');
}

document.addEventListener('keydown', (e) => {
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

showTheme();
