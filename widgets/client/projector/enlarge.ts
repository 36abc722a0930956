/**
 * A figure's picture as large as the window lets it be. The stage is laid out at the width at which, scaled up, it covers most of the
 * room above its chief fields, and is then scaled as a whole: letters grow with lines.
 */

/** Widths at which a stage may be laid out, CSS pixels. */
const WIDTHS = [520, 640, 760, 880, 1000, 1140];

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
    let best = { width: room, scale: 1, height: stage.offsetHeight, covers: 0 };
    for (const width of WIDTHS) {
      if (width > room) break;
      stage.style.width = `${width}px`;
      const height = stage.offsetHeight;
      // A sheet taller than the window is scrolled, not shrunk.
      const scale = Math.min(room / width, Math.max(high / height, 1));
      const covers = scale * width * Math.min(high, scale * height);
      if (covers > best.covers * 1.02) best = { width, scale, height, covers };
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
