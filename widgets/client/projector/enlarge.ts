/**
 * A figure's picture as large as the window lets it be. The stage is laid out at the width at which, scaled up, it covers most of the
 * room above its chief fields, and is then scaled as a whole: letters grow with lines. Where they would stay too small to read, it grows beyond the window.
 */

/** Widths at which a stage may be laid out, CSS pixels. */
const WIDTHS = [520, 640, 760, 880, 1000, 1140];

/** Letters of a picture that a room reads from its last row, CSS pixels of a window 1080 high; common practice, no source. */
const LETTERS = 24;
const TEXTS = 'text, p, td, th, li, label, span, button, figcaption';

/** How high the smallest letters of the stage stand, as it is laid out now. */
const smallest = (stage: HTMLElement): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const text of stage.querySelectorAll<HTMLElement | SVGGraphicsElement>(TEXTS)) {
    if ((text.childElementCount > 0 && text.localName !== 'text') || !text.textContent?.trim()) continue;
    if (text.closest('.visually-hidden') || !text.checkVisibility()) continue;
    const drawn = text instanceof SVGGraphicsElement ? text.getScreenCTM() : null;
    const size = Number.parseFloat(getComputedStyle(text).fontSize) * (drawn ? Math.hypot(drawn.a, drawn.b) : 1);
    least = Math.min(least, size);
  }
  // A plot that is drawn anew a moment later is shrunk meanwhile; no page has smaller letters than these.
  return Math.max(least, 12);
};

/** The sentence keeps room for this many lines, so that the picture does not jump as it changes. */
const LINES = 3;

/** Returns what puts the stage back. */
export const enlarge = (figure: HTMLElement, bar: HTMLElement): (() => void) => {
  const stage = figure.querySelector<HTMLElement>('[data-stage]');
  const bench = stage?.parentElement;
  if (!stage || !bench) return () => {};
  const lay = () => {
    stage.removeAttribute('style');
    const room = bench.clientWidth;
    const says = figure.querySelector<HTMLElement>('[data-says]');
    const line = says ? Number.parseFloat(getComputedStyle(says).lineHeight) : 0;
    const fields = bench.querySelector<HTMLElement>('.chief')?.offsetHeight ?? 0;
    const high = Math.max(200, innerHeight - bar.offsetHeight - fields - LINES * line - 56);
    const readable = LETTERS * Math.min(1, innerHeight / 1080);
    let best = { width: room, scale: 1, height: stage.offsetHeight, covers: 0, reads: 0 };
    for (const width of WIDTHS) {
      if (width > room) break;
      stage.style.width = `${width}px`;
      const height = stage.offsetHeight;
      const letters = smallest(stage);
      // A sheet taller than the window is scrolled, not shrunk; so is a picture whose letters would be too small.
      const scale = Math.min(room / width, Math.max(high / height, 1, readable / letters));
      // What does not fit is scrolled, which counts against it.
      const covers = scale * width * Math.min(high, scale * height) * Math.min(1, high / (scale * height));
      // Letters first, so far as they are too small; then the size of the picture.
      const reads = Math.min(1, (scale * letters) / readable);
      if (reads > best.reads * 1.02 || (reads > best.reads * 0.98 && covers > best.covers * 1.02))
        best = { width, scale, height, covers, reads };
    }
    const { width, scale, height } = best;
    const aside = Math.max(0, (room - scale * width) / 2);
    Object.assign(stage.style, {
      width: `${width}px`,
      transform: `translateX(${aside}px) scale(${scale})`,
      marginBottom: `${(scale - 1) * height}px`,
    });
  };
  lay();
  window.addEventListener('resize', lay);
  return () => {
    window.removeEventListener('resize', lay);
    stage.removeAttribute('style');
  };
};
