/**
 * Long work in steps, so that whoever drives it may pause between them: a generator that gives nothing on the way and its result at
 * the end. The engine has no clock; how long a slice lasts is for the caller to say.
 */
export type Task<T> = Generator<void, T, void>;

/** Drives the work to its end without a pause, whatever it gives on the way. */
export const runToEnd = <T>(run: Generator<unknown, T, void>): T => {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
};
