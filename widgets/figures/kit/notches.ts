/**
 * Notches in what a wheel or a trackpad says. A wheel speaks once a notch, with a large number whose size is the browser's
 * own; a trackpad speaks a hundred times in one stroke, with small ones, which are gathered until they make a notch.
 */

/** Pixels that make a notch: less than any wheel's notch is, more than one word of a trackpad mostly is. */
const NOTCH = 40;
/** A stroke is over after so long, in milliseconds, and what was gathered is forgotten. */
const PAUSE = 300;

export interface Rolled {
  readonly deltaY: number;
  /** 0: pixels; 1: lines; 2: pages. */
  readonly deltaMode: number;
  readonly timeStamp: number;
}

/** A counter of notches, plus away from the reader: give it each event, and it says how many the event completes. */
export const notchCounter = (): ((event: Rolled) => 0 | 1 | -1) => {
  let gathered = 0;
  let last = Number.NEGATIVE_INFINITY;
  return ({ deltaY, deltaMode, timeStamp }) => {
    if (timeStamp - last > PAUSE || deltaY * gathered < 0) gathered = 0;
    last = timeStamp;
    if (deltaY === 0) return 0;
    if (deltaMode !== 0 || Math.abs(deltaY) >= NOTCH) {
      gathered = 0;
      return deltaY < 0 ? 1 : -1;
    }
    gathered += deltaY;
    if (Math.abs(gathered) < NOTCH) return 0;
    gathered -= Math.sign(gathered) * NOTCH;
    return deltaY < 0 ? 1 : -1;
  };
};
