/**
 * How what can be dragged on a stage is pulled. A mouse takes hold at once. A finger or a pen may only be on its way down the
 * page, which must change nothing: it tells by a tap, by a pull that begins sideways, or, on what goes in more directions than
 * one, by resting on it first. What the browser takes back, for a scroll or a pinch, is undone.
 */

/** What was taken hold of. */
export interface Held {
  /** What has the focus while it is held. */
  readonly control?: HTMLElement | SVGElement | null;
  /** Follows the pointer. */
  readonly move: (event: PointerEvent) => void;
  /** Puts the numbers back as they were. */
  readonly undo: () => void;
  /** What a tap does; else a tap, and a mouse that is pressed, moves it there. */
  readonly tap?: () => void;
  /** Whether it goes up and down too, and so is taken by a finger that rests on it. */
  readonly anyWay?: boolean;
  /** Whichever way it ended. */
  readonly end?: () => void;
}

/** Pixels that a finger, and a mouse, may stray while it taps. */
const STILL = { finger: 8, mouse: 4 };
/** Milliseconds after which a finger rests. */
const RESTED = 300;

/** `take` says what stands at the pointer. The stage listens, so a pull outlives a drawing that is made anew under it. */
export const mountPull = (stage: HTMLElement, take: (event: PointerEvent) => Held | undefined): void => {
  let pull:
    | { readonly held: Held; readonly from: PointerEvent; readonly mouse: boolean; on: boolean; resting: number }
    | undefined;

  // touch-action knows no parts of a drawing, and some browsers begin to scroll in the middle of a pull.
  const stay = (event: Event) => {
    if (pull?.on && event.cancelable) event.preventDefault();
  };
  const takeHold = () => {
    if (!pull) return;
    pull.on = true;
    stage.dataset.held = '';
    pull.held.control?.focus({ preventScroll: true });
  };
  const leave = (undo: boolean) => {
    if (!pull) return;
    const { held, on, resting, from } = pull;
    window.clearTimeout(resting);
    from.target?.removeEventListener('touchmove', stay);
    pull = undefined;
    delete stage.dataset.held;
    if (undo && on) held.undo();
    held.end?.();
  };

  stage.addEventListener('pointerdown', (event) => {
    // Two fingers pinch.
    if (pull) return leave(true);
    const held = event.button === 0 ? take(event) : undefined;
    if (!held) return;
    event.preventDefault();
    stage.setPointerCapture(event.pointerId);
    const mouse = event.pointerType === 'mouse';
    pull = { held, from: event, mouse, on: false, resting: 0 };
    // What the finger came down on may be drawn anew; a touch is told to the old one, which is on the stage no longer.
    event.target?.addEventListener('touchmove', stay, { passive: false });
    if (!mouse && held.anyWay) pull.resting = window.setTimeout(takeHold, RESTED);
    if (mouse && !held.tap) {
      takeHold();
      held.move(event);
    }
  });
  stage.addEventListener('pointermove', (event) => {
    if (event.pointerId !== pull?.from.pointerId) return;
    if (!pull.on) {
      const [dx, dy] = [Math.abs(event.clientX - pull.from.clientX), Math.abs(event.clientY - pull.from.clientY)];
      if (Math.max(dx, dy) < (pull.mouse ? STILL.mouse : STILL.finger)) return;
      if (!pull.mouse && dx <= dy) return leave(false);
      takeHold();
    }
    pull.held.move(event);
  });
  stage.addEventListener('pointerup', (event) => {
    if (event.pointerId !== pull?.from.pointerId) return;
    if (!pull.on) {
      takeHold();
      if (pull.held.tap) pull.held.tap();
      else pull.held.move(event);
    }
    leave(false);
  });
  stage.addEventListener('pointercancel', () => leave(true));
  // A browser asks before it scrolls only where it was told so before the finger came down.
  stage.addEventListener('touchmove', stay, { passive: false });
  stage.addEventListener('contextmenu', (event) => {
    if (pull && !pull.mouse) event.preventDefault();
  });
};
