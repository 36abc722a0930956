/**
 * A solid on its stage: its canvas outlives the pictures drawn under it, and one frame is asked for when something has changed. It is drawn coarsely
 * while it moves slowly, and once finely when it rests. Where it can't be drawn, or its reader has colours of their own, the line drawing stands.
 */
import type { Body } from './bodies.ts';
import { coloursOf } from './colours.ts';
import { type Drawing, drawingInWorker, drawingOnPage, SILENCE, type Told } from './drawing.ts';
import { type Colours, type Net, shotOf, type View } from './shot.ts';

/** What is to be seen. */
export interface Seen {
  /** Bodies are made anew when this is another. */
  readonly of: unknown;
  /** Those for a machine that is slow are of fewer triangles. */
  readonly bodies: (net: Net) => readonly Body[];
  /** Asked at every frame, and another frame is asked for while it moves by itself. What lies over the picture is put there by `over`, with it. */
  readonly view: () => { readonly view: View; readonly moves: boolean; readonly over?: () => void };
}

export interface Canvas {
  readonly show: (seen: Seen) => void;
  /** Whether the solid stands there, and the line drawing does not. */
  readonly drawn: () => boolean;
  /** Whether it stands there or is about to. */
  readonly comes: () => boolean;
}

/**
 * Buffer pixels to a CSS pixel: at rest finer than the screen, so that edges are smooth; while it moves, as fine as the machine can. Few
 * levels, since a buffer of another size is made anew.
 */
const LEVELS = [2, 1.4, 1, 0.75] as const;
/** Below this, nets of fewer triangles are drawn too. */
const MIDDLING = 1.4;
/** Where a frame takes longer than this, ms, the next is coarser, and finer again where it takes far less. */
const SLOW = 30;
const QUICK = 10;
/** A hand that pauses for less has not let go, ms. */
const RESTS = 350;

/** `again` is called when what is drawn must be told anew, since canvas and line drawing have changed places. */
export const canvasOn = (
  stage: HTMLElement,
  { width, height }: { readonly width: number; readonly height: number },
  again: () => void,
): Canvas => {
  const forced = window.matchMedia('(forced-colors: active)');
  let drawing: Drawing | undefined;
  let byWorker = false;
  let stands: 'coming' | 'there' | 'lost' | 'none' = 'coming';
  /** Whether anything is on this canvas yet; the line drawing stands until then. */
  let begun = false;
  let seen: Seen | undefined;
  const made: Partial<Record<Net, { readonly of: unknown; readonly bodies: readonly Body[] }>> = {};
  let frame = 0;
  let rest = 0;
  let level = 0;
  const sharpness = (): number => LEVELS[level] ?? 1;
  /** CSS pixels across the picture. */
  let wide = 0;
  /** Of the frame that was painted last, as the page counts time: it stands still within a frame. */
  let painted: unknown;
  /** Read from the styles once, and again when these change. */
  let colours: Colours | undefined;
  /** Changed while nobody could see it. */
  let owed = false;
  /** The picture that is being drawn, whether it is the fine one of a solid at rest, and what is to be done when it is seen. */
  let drawn: { readonly fine: boolean; readonly over: (() => void) | undefined } | undefined;
  /** Until that picture is given up. */
  let patience = 0;
  /** Changed since that one was begun, or moves on by itself. */
  let next = false;

  /** Paper takes the line drawing, as the numbers stand then. */
  let onPaper = false;
  const draws = () => stands === 'there' && !forced.matches && !onPaper;
  const isThere = () => begun && draws();
  const put = () => {
    const place = stage.querySelector<HTMLElement>('[data-solid]');
    if (!drawing || !place) return;
    if (drawing.canvas.parentElement !== place) {
      place.prepend(drawing.canvas);
      widths.observe(drawing.canvas);
    }
    place.classList.toggle('is-live', isThere());
    place.classList.toggle('is-coming', draws() && !begun);
  };
  const paint = (fineness: number, net: Net, fine = false) => {
    if (!drawing || !seen || !draws()) return;
    put();
    const before = made[net];
    const now = before && before.of === seen.of ? before : { of: seen.of, bodies: seen.bodies(net) };
    if (now !== before) {
      made[net] = now;
      drawing.setBodies(net, now.bodies);
    }
    colours ??= coloursOf(drawing.canvas);
    wide ||= drawing.canvas.clientWidth;
    const { view, moves, over } = seen.view();
    next = moves;
    // A worker shows its picture when it says so, the page with this frame: labels never run ahead of it.
    drawn = { fine, over: drawing.later ? over : undefined };
    if (!drawing.later) over?.();
    // A browser ends a worker without a word; its reader need not ask again.
    window.clearTimeout(patience);
    patience = window.setTimeout(() => drawn && byWorker && begin(drawingOnPage), SILENCE);
    drawing.render(shotOf(view, colours, now.bodies, { net, unit: (wide || width) / width, fineness }));
  };
  const step = () => {
    painted = document.timeline.currentTime;
    paint(sharpness(), sharpness() < MIDDLING ? 'coarse' : 'fine');
  };
  const drew = (took: number) => {
    const { fine, over } = drawn ?? {};
    drawn = undefined;
    over?.();
    if (!begun) {
      begun = true;
      put();
      again();
    }
    if (!fine && took > SLOW) level = Math.min(LEVELS.length - 1, level + 1);
    else if (!fine && took < QUICK) level = Math.max(0, level - 1);
    if (next) ask();
    else if (!fine) rest = window.setTimeout(settle, RESTS);
  };
  const settle = () => {
    if (document.hidden) owed = true;
    // A machine that can hardly move it is not held up by a picture finer than its screen.
    else paint(Math.max(level === LEVELS.length - 1 ? 1.5 : 2, 1.5 * (window.devicePixelRatio || 1)), 'fine', true);
  };
  /**
   * Once a frame, and at once where this one has not been painted yet, so that picture and words change together; where one is still being drawn, when
   * that is done.
   */
  const ask = () => {
    if (stands !== 'there') return;
    window.clearTimeout(rest);
    if (document.hidden) {
      owed = true;
      return;
    }
    if (drawn) next = true;
    else if (painted !== document.timeline.currentTime) step();
    else if (frame === 0)
      frame = requestAnimationFrame(() => {
        frame = 0;
        step();
      });
  };
  const widths = new ResizeObserver(([entry]) => {
    const now = entry?.contentRect.width ?? 0;
    if (now === 0 || now === wide) return;
    wide = now;
    ask();
  });
  /** What belonged to one canvas is of no use to the next: a new one is begun when a context is back too. */
  const begin = (open: typeof drawingInWorker) => {
    if (drawing) {
      widths.unobserve(drawing.canvas);
      drawing.canvas.remove();
      drawing.close();
    }
    delete made.fine;
    delete made.coarse;
    drawn = undefined;
    begun = false;
    stands = 'coming';
    byWorker = open === drawingInWorker;
    const opened = open({ width, height }, (told) => {
      if (opened === drawing) hear(told);
    });
    drawing = opened;
    if (!opened) begin(drawingOnPage);
  };
  const hear = (told: Told) => {
    if (told.what === 'drew') return drew(told.took);
    if (told.what === 'back') return begin(drawingInWorker);
    // Perhaps the page can what its worker can’t.
    if (told.what === 'none' && byWorker) return begin(drawingOnPage);
    drawn = undefined;
    stands = told.what === 'ready' ? 'there' : told.what;
    put();
    again();
  };
  begin(drawingInWorker);
  for (const change of [forced, window.matchMedia('(prefers-color-scheme: dark)')])
    change.addEventListener('change', () => {
      colours = undefined;
      put();
      again();
    });
  for (const moment of ['beforeprint', 'afterprint'])
    window.addEventListener(moment, () => {
      onPaper = moment === 'beforeprint';
      put();
      again();
    });
  document.addEventListener('visibilitychange', () => {
    if (!owed || document.hidden) return;
    owed = false;
    ask();
  });
  return {
    show: (next) => {
      seen = next;
      put();
      ask();
    },
    drawn: isThere,
    comes: () => stands !== 'lost' && stands !== 'none' && !forced.matches && !onPaper,
  };
};
