/**
 * Long work of the engine driven on the page in slices, so that the page draws and listens between them. While a reader holds a key or drags, the
 * page is theirs and the work all but waits: what they change would be worked anew anyhow.
 */

/** How long a slice may last, ms: beside it there must be room for what else a frame holds. */
const SLICE = 12;
/** How long a hand has to rest before the work goes on, and the longest that it waits for that, ms. */
const REST = 150;
const LONGEST = 2000;

let lastUse = Number.NEGATIVE_INFINITY;
if (typeof window !== 'undefined') {
  const used = (event: Event) => {
    if (event.type !== 'pointermove' || (event as PointerEvent).buttons !== 0) lastUse = performance.now();
  };
  for (const name of ['keydown', 'pointermove']) window.addEventListener(name, used, { capture: true, passive: true });
}

/** Drives the work and hands its result over, and after each slice what the last step gave; the function given back stops it. */
export const runInSlices = <Step, T>(
  run: Generator<Step, T, void>,
  done: (result: T) => void,
  between: (step: Step) => void = () => {},
): (() => void) => {
  let pending: ReturnType<typeof setTimeout> | undefined;
  let worked = performance.now();
  const slice = () => {
    const now = performance.now();
    const wait = Math.min(lastUse + REST, worked + LONGEST) - now;
    if (wait > 0) {
      pending = setTimeout(slice, wait);
      return;
    }
    const end = now + SLICE;
    let step = run.next();
    while (!step.done && performance.now() < end) step = run.next();
    if (step.done) return done(step.value);
    worked = performance.now();
    pending = setTimeout(slice);
    between(step.value);
  };
  pending = setTimeout(slice);
  return () => clearTimeout(pending);
};
