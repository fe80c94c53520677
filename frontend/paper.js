// A sheet says when it was printed.
addEventListener('beforeprint', () => {
  const today = new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  for (const e of document.querySelectorAll('[data-today]')) e.textContent = today;
});

// A house's sheets bear its name and their number; what is folded up on the screen is told on paper.
const margin = document.createElement('style');
let unfolded = [];
const quoted = (words) => '"' + words.replace(/[\\"]/g, '\\$&').replace(/[\n\r]+/g, ' ') + '"';
const unfold = (which) => {
  unfolded = [...document.querySelectorAll(`${which}:not([open])`)];
  for (const fold of unfolded) fold.open = true;
};
addEventListener('beforeprint', () => {
  unfold('.checked-fold');
  const house = document.querySelector('.page:has(.thread-nav) .head h1')?.textContent;
  if (house === undefined) return;
  const place = document.querySelector('h2.place')?.textContent ?? '';
  const letters = 'font:400 9pt/1.2 "Liberation Sans",Arial,sans-serif;content:';
  margin.textContent = `@page{margin-bottom:15mm;@bottom-left{${letters}${quoted(`${house}, ${place}`)}}`
    + `@bottom-right{${letters}"page " counter(page) " of " counter(pages)}}`;
  document.head.append(margin);
  unfold('.work details:not(.own-days, .tubing)');
});
addEventListener('afterprint', () => {
  margin.remove();
  for (const fold of unfolded) fold.open = false;
  unfolded = [];
});
