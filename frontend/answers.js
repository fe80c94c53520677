// From the keyboard a field and the answers without a figure at its end ("not known", "none") go together: Tab passes the
// answers once something is typed, the arrow down goes to them from the field at any time, up comes back. In an empty
// field ? is not known and - is none. Escape puts a field's help away until it is in hand again.

const answers = (field) => [...field.parentElement.querySelectorAll(':scope > .ans > button')];

function pass() {
  for (const field of document.querySelectorAll('.fld > input.in')) {
    const stop = field.value.trim() === '' ? 0 : -1;
    for (const answer of answers(field)) answer.tabIndex = stop;
  }
}

document.addEventListener('focusout', (e) => { e.target.closest?.('.fld.hushed')?.classList.remove('hushed'); });

document.addEventListener('keydown', (e) => {
  if (e.key === 'Tab') {
    pass();
    return;
  }
  if (e.ctrlKey || e.metaKey || e.altKey || e.isComposing) return;
  const at = e.target;
  const inField = at.matches?.('.fld > input.in');
  if (inField && e.key.length === 1 && at.value.trim() === '') {
    const meant = answers(at).find((answer) => answer.dataset.key === e.key);
    if (!meant) return;
    e.preventDefault();
    meant.click();
    return;
  }
  if (e.shiftKey) return;
  if (inField && e.key === 'Escape') {
    at.parentElement.classList.add('hushed');
  } else if (inField && e.key === 'ArrowDown') {
    const first = answers(at)[0];
    if (!first) return;
    e.preventDefault();
    first.focus();
  } else if (at.matches?.('.fld > .ans > button')) {
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[e.key];
    if (!step && e.key !== 'Escape') return;
    const field = at.closest('.fld').querySelector(':scope > input.in');
    if (!field) return;
    e.preventDefault();
    const all = answers(field);
    const to = step ? all[all.indexOf(at) + step] ?? (step < 0 ? field : at) : field;
    to.focus();
  }
});
