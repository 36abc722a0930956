/** Long work of the engine driven on the page in slices, so that the page draws and listens between them. */

/** How long a slice may last, ms: beside it there must be room for what else a frame holds. */
const SLICE = 12;

/** Drives the work and hands its result over, and after each slice what the last step gave; the function given back stops it. */
export const runInSlices = <Step, T>(
  run: Generator<Step, T, void>,
  done: (result: T) => void,
  between: (step: Step) => void = () => {},
): (() => void) => {
  let pending: ReturnType<typeof setTimeout> | undefined;
  const slice = () => {
    const end = performance.now() + SLICE;
    let step = run.next();
    while (!step.done && performance.now() < end) step = run.next();
    if (step.done) return done(step.value);
    pending = setTimeout(slice);
    between(step.value);
  };
  pending = setTimeout(slice);
  return () => clearTimeout(pending);
};
