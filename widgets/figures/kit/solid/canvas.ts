/**
 * A solid on its stage: its canvas outlives the pictures drawn under it, and one frame is asked for when something has changed. It is drawn coarsely
 * while it moves slowly, and once finely when it rests. Where it can't be drawn, or its reader has colours of their own, the line drawing stands.
 */
import type { Body } from './bodies.ts';
import { coloursOf } from './colours.ts';
import { type Colours, makeScene, type Net, type Scene, type View } from './scene.ts';

/** What is to be seen. */
export interface Seen {
  /** Bodies are made anew when this is another. */
  readonly of: unknown;
  /** Those for a machine that is slow are of fewer triangles. */
  readonly bodies: (net: Net) => readonly Body[];
  /** Asked at every frame, and another frame is asked for while it moves by itself. */
  readonly view: () => { readonly view: View; readonly moves: boolean };
}

export interface Canvas {
  readonly show: (seen: Seen) => void;
  /** Whether the solid stands there, and the line drawing does not. */
  readonly drawn: () => boolean;
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
  let scene: Scene | undefined;
  let lost = false;
  let seen: Seen | undefined;
  const made: Partial<Record<Net, unknown>> = {};
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

  /** Paper takes the line drawing, as the numbers stand then. */
  let onPaper = false;
  const drawn = () => scene !== undefined && !lost && !forced.matches && !onPaper;
  const put = () => {
    const place = stage.querySelector<HTMLElement>('[data-solid]');
    if (!scene || !place) return;
    if (scene.canvas.parentElement !== place) {
      place.prepend(scene.canvas);
      widths.observe(scene.canvas);
    }
    place.classList.toggle('is-live', drawn());
  };
  /** Gives whether it moves on by itself. */
  const paint = (fineness: number, net: Net): boolean => {
    if (!scene || !seen || !drawn()) return false;
    put();
    if (made[net] !== seen.of) {
      made[net] = seen.of;
      scene.setBodies(net, seen.bodies(net));
    }
    colours ??= coloursOf(scene.canvas);
    wide ||= scene.canvas.clientWidth;
    const { view, moves } = seen.view();
    scene.render(view, colours, { net, unit: (wide || width) / width, fineness });
    return moves;
  };
  const took = (time: number) => {
    if (time > SLOW) level = Math.min(LEVELS.length - 1, level + 1);
    else if (time < QUICK) level = Math.max(0, level - 1);
  };
  const step = (asked: number) => {
    painted = document.timeline.currentTime;
    const moves = paint(sharpness(), sharpness() < MIDDLING ? 'coarse' : 'fine');
    // A timer comes after the frame that is being made, and after the picture where there is no graphics processor.
    window.setTimeout(() => {
      took(performance.now() - asked);
      if (moves) ask();
      else if (frame === 0) rest = window.setTimeout(settle, RESTS);
    });
  };
  const settle = () => {
    if (document.hidden) owed = true;
    // A machine that can hardly move it is not held up by a picture finer than its screen.
    else paint(Math.max(level === LEVELS.length - 1 ? 1.5 : 2, 1.5 * (window.devicePixelRatio || 1)), 'fine');
  };
  /** Once a frame, and at once where this one has not been painted yet, so that picture and words change together. */
  const ask = () => {
    if (!scene) return;
    window.clearTimeout(rest);
    if (document.hidden) {
      owed = true;
      return;
    }
    const asked = performance.now();
    if (painted !== document.timeline.currentTime) step(asked);
    else if (frame === 0)
      frame = requestAnimationFrame(() => {
        frame = 0;
        step(asked);
      });
  };
  const widths = new ResizeObserver(([entry]) => {
    const now = entry?.contentRect.width ?? 0;
    if (now === 0 || now === wide) return;
    wide = now;
    ask();
  });
  // What belonged to a lost context is of no use to the next: a new canvas is made for it.
  const begin = () => {
    if (scene) {
      widths.unobserve(scene.canvas);
      scene.canvas.remove();
    }
    delete made.fine;
    delete made.coarse;
    scene = makeScene(
      { width, height },
      () => {
        lost = true;
        put();
        again();
      },
      () => {
        lost = false;
        begin();
        again();
      },
    );
    scene?.canvas.setAttribute('aria-hidden', 'true');
  };
  begin();
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
    drawn,
  };
};
