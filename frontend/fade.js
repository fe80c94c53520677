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

// Paper shows a figure whole, even while it fades in on the screen.
addEventListener('beforeprint', () => {
  for (const a of document.getAnimations()) if (a.effect?.getComputedTiming().endTime !== Infinity) a.finish();
});
