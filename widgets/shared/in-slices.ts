/** Long work of the engine driven on the page in slices, so that the page draws and listens between them. */
import type { InSteps } from '../engine/index.ts';

/** How long a slice may last, ms: beside it there must be room for what else a frame holds. */
const SLICE = 12;

/** Drives the work and hands its result over; the function given back stops it. */
export const inSlices = <T>(run: InSteps<T>, done: (result: T) => void): (() => void) => {
  let pending = 0;
  const slice = () => {
    const end = performance.now() + SLICE;
    do {
      const step = run.next();
      if (step.done) return done(step.value);
    } while (performance.now() < end);
    pending = window.setTimeout(slice);
  };
  pending = window.setTimeout(slice);
  return () => window.clearTimeout(pending);
};
