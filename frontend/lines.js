// The lines from the keyboard: Enter for the next, arrows from field to field, Escape puts back what stood there, and a
// list from a spreadsheet is handed over whole instead of falling into one field.

const fields = (line) => [...line.querySelectorAll('.main .in')];
const first = (line) => line.querySelector('.main [data-first]') ?? fields(line)[0];
const lines = (table) => [...table.querySelectorAll('tbody:not(.spare), tbody.came')];
let before = new WeakMap();

function go(field) {
  if (!field) return;
  field.focus();
  field.select?.();
}

// A line is begun once something of its own is typed or chosen in it; only then is there one after it.
const isBegun = (line) => !line.matches('.next, .spare') || line.chosenIn
  || [...line.querySelectorAll('.main input.in, .main [data-first]')].some((f) => f.value.trim() !== '');

// A line takes material and place of the one above until it has its own, unless that is the buried pipe to a regulator;
// which fields it has hangs on both, so the page knows it before the program has said so.
function carry(line) {
  const above = line.matches('.next, .spare') && line.previousElementSibling;
  const of = (l, entry) => l.querySelector(`[data-of=${entry}]`);
  if (!above || !of(line, 'setting') || !of(above, 'setting')) return;
  const ends = of(above, 'setting').value === 'underground' && above.querySelector('[data-first]').value.startsWith('reg:');
  for (const entry of ['material', 'setting']) {
    const list = of(line, entry);
    if (list.pending === undefined) list.value = ends ? '' : of(above, entry).value;
  }
}

// What Tab comes to hangs on what is typed, never on whether the program has answered: a line that is begun has all its
// fields, and the one after it stands in sight.
function settle(line) {
  carry(line);
  if (!line.matches('.next, .spare')) line.chosenIn = false;
  line.classList.toggle('begun', isBegun(line));
  const spares = [line.nextElementSibling, ...line.parentElement.querySelectorAll('.spare.came')];
  for (const spare of spares) {
    if (!spare?.matches('.spare')) continue;
    spare.classList.toggle('came', isBegun(spare.previousElementSibling) || isBegun(spare) || spare.contains(document.activeElement));
  }
}
for (const heard of ['input', 'change', 'focusin', 'keydown']) {
  document.addEventListener(heard, (e) => {
    const line = e.target.closest?.('.lines tbody');
    if (!line) return;
    if (heard === 'change' && e.target.matches('select')) line.chosenIn = true;
    settle(line);
  }, true);
}

// Letters typed for a choice whose option is still on its way go to the program as they are; and a choice that stands
// there already is told all the same, since what will stand there may be another.
let letters = '';
let lettersIn;
let lettersAt = 0;
document.addEventListener('keypress', (e) => {
  const list = e.target;
  if (!list.matches?.('.lines select.in') || e.key.length !== 1 || e.ctrlKey || e.metaKey || e.altKey) return;
  const goesOn = list === lettersIn && performance.now() - lettersAt < 1000;
  if (e.key === ' ' && !goesOn) return;
  letters = ((goesOn ? letters : '') + e.key).toLowerCase();
  lettersIn = list;
  lettersAt = performance.now();
  const typed = letters;
  const was = list.value;
  const notBegun = list.closest('tbody').matches('.next, .spare');
  setTimeout(() => {
    if (list.value !== was) return;
    const fits = (option) => option?.text.trim().toLowerCase().startsWith(typed);
    if (![...list.options].some(fits)) list.dispatchEvent(new CustomEvent('spelled', { detail: typed }));
    else if (notBegun && fits(list.selectedOptions[0])) list.dispatchEvent(new Event('change', { bubbles: true }));
  });
});

function nextLine(table, line) {
  const next = line.nextElementSibling;
  const text = next?.querySelector('tr.text');
  if (text) { text.focus(); return; }
  if (next && (isBegun(line) || !next.matches('.spare'))) {
    // Behind the next line a few are kept ready, so that nobody waits for the program between two lines.
    if (next.matches('.spare')) next.classList.add('came');
    go(first(next));
    return;
  }
  if (next || !isBegun(line)) return;
  // The line after the one being typed is on its way: go there when it comes.
  const wait = new MutationObserver(() => {
    const came = line.nextElementSibling;
    if (came) { wait.disconnect(); if (line.contains(document.activeElement)) go(first(came)); }
  });
  wait.observe(table, { childList: true, subtree: true });
  setTimeout(() => wait.disconnect(), 15000);
}

document.addEventListener('focusout', (e) => {
  const line = e.target.closest?.('.lines tbody.came');
  if (line && !line.contains(e.relatedTarget)) setTimeout(() => settle(line));
});

document.addEventListener('focusin', (e) => {
  if (e.target.matches?.('.lines .in')) before.set(e.target, e.target.value);
});

document.addEventListener('keydown', (e) => {
  const field = e.target;
  const table = field.closest?.('.lines');
  if (!table || e.ctrlKey || e.metaKey || e.altKey || e.isComposing) return;
  const line = field.closest('tbody');
  if (!line || !field.matches('.in')) return;
  const column = field.dataset.column;
  if (e.key === 'Enter') {
    e.preventDefault();
    nextLine(table, line);
  } else if (e.key === 'Escape') {
    const was = before.get(field);
    if (was !== undefined && was !== field.value && field.matches('input')) {
      field.value = was;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }
  } else if (field.matches('select')) {
    return;
  } else if (e.key === 'ArrowDown' || e.key === 'ArrowUp') {
    e.preventDefault();
    const all = lines(table);
    const step = e.key === 'ArrowDown' ? 1 : -1;
    for (let i = all.indexOf(line) + step; all[i]; i += step) {
      const there = all[i].querySelector(`.main .in[data-column=${column}]`);
      if (there) { go(there); return; }
      const text = all[i].querySelector('tr.text'); // its fields come once it is in hand
      if (text) { text.focus(); return; }
    }
  } else if (!e.shiftKey && (e.key === 'ArrowLeft' || e.key === 'ArrowRight')) {
    const left = e.key === 'ArrowLeft';
    const edge = left ? 0 : field.value.length;
    if (field.selectionStart !== edge || field.selectionEnd !== edge) return;
    const row = fields(line);
    const there = row[row.indexOf(field) + (left ? -1 : 1)];
    if (there) {
      e.preventDefault();
      there.focus();
      there.setSelectionRange(left ? there.value.length : 0, left ? there.value.length : 0);
    }
  }
});

// Of a long list only the lines or blocks in sight have fields: the program is told which these are.
let sightTimer;
function tellSight() {
  for (const table of document.querySelectorAll('.many')) {
    const all = table.tBodies ? lines(table) : [...table.children];
    const above = (y) => { // how many lines end above a height
      let from = 0, to = all.length;
      while (from < to) { const mid = (from + to) >> 1; if (all[mid].getBoundingClientRect().bottom < y) from = mid + 1; else to = mid; }
      return from;
    };
    const first = Math.max(0, above(0) - 4);
    const last = Math.min(all.length - 1, above(innerHeight) + 4);
    const seen = first + ' ' + last;
    if (table.seen === seen) continue;
    table.seen = seen;
    table.dispatchEvent(new CustomEvent('in-sight', { detail: { first, last } }));
  }
}
const sightSoon = () => { clearTimeout(sightTimer); sightTimer = setTimeout(tellSight, 80); };
addEventListener('scroll', sightSoon, { passive: true, capture: true });
addEventListener('resize', sightSoon);
new MutationObserver(() => { // a list may come with its page, as well as grow on it
  if (document.querySelector('.many')) sightSoon();
}).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });

document.addEventListener('paste', (e) => {
  const table = e.target.closest?.('.lines');
  const text = e.clipboardData?.getData('text/plain') ?? '';
  if (!table || !/\t|\n./.test(text.trim())) return;
  e.preventDefault();
  table.dispatchEvent(new CustomEvent('pasted', { detail: text.slice(0, 200000) }));
});
