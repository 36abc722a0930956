/**
 * A solid on its stage: its canvas outlives the pictures drawn under it, and one frame is asked for when something has changed. It is drawn coarsely
 * while it moves slowly, and once finely when it rests. Where it can't be drawn, or its reader has colours of their own, the line drawing stands.
 */
import type { Body } from './bodies.ts';
import { coloursOf } from './colours.ts';
import { type Colours, makeScene, type Scene, type View } from './scene.ts';

/** What is to be seen. */
export interface Seen {
  /** Bodies are made anew when this is another. */
  readonly of: unknown;
  readonly bodies: () => readonly Body[];
  /** Asked at every frame, and another frame is asked for while it moves by itself. */
  readonly view: () => { readonly view: View; readonly moves: boolean };
}

export interface Canvas {
  readonly show: (seen: Seen) => void;
  /** Whether the solid stands there, and the line drawing does not. */
  readonly drawn: () => boolean;
}

/** Buffer pixels to a picture unit: fine at rest; while it moves, as fine as the machine can. */
const FINE = 2;
const COARSEST = 0.75;
/** Where a frame comes later than this after it was asked for, ms, the next is coarser. */
const SLOW = 40;
const RESTS = 160;

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
  let made: unknown;
  let frame = 0;
  let rest = 0;
  let sharpness = FINE;
  let asked = 0;
  /** Read from the styles once, and again when these change. */
  let colours: Colours | undefined;

  const drawn = () => scene !== undefined && !lost && !forced.matches;
  const put = () => {
    const place = stage.querySelector<HTMLElement>('[data-solid]');
    if (!scene || !place) return;
    if (scene.canvas.parentElement !== place) place.prepend(scene.canvas);
    place.classList.toggle('is-live', drawn());
  };
  /** Gives whether it moves on by itself. */
  const paint = (fineness: number): boolean => {
    if (!scene || !seen || !drawn()) return false;
    put();
    if (made !== seen.of) {
      made = seen.of;
      scene.setBodies(seen.bodies());
    }
    colours ??= coloursOf(scene.canvas);
    const { view, moves } = seen.view();
    scene.render(view, colours, fineness * Math.min(1, window.devicePixelRatio || 1));
    return moves;
  };
  const ask = () => {
    if (!scene) return;
    window.clearTimeout(rest);
    if (frame === 0) {
      asked = performance.now();
      frame = requestAnimationFrame(() => {
        frame = 0;
        if (performance.now() - asked > SLOW) sharpness = Math.max(COARSEST, sharpness / 1.4);
        if (paint(sharpness)) ask();
      });
    }
    rest = window.setTimeout(() => paint(FINE), RESTS);
  };
  // What belonged to a lost context is of no use to the next: a new canvas is made for it.
  const begin = () => {
    scene?.canvas.remove();
    made = undefined;
    scene = makeScene(
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
    scene?.size(width, height);
  };
  begin();
  for (const change of [forced, window.matchMedia('(prefers-color-scheme: dark)')])
    change.addEventListener('change', () => {
      colours = undefined;
      put();
      again();
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
