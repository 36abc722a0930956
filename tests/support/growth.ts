/**
 * How many times longer work takes when it is ten times as much: about ten where it grows in step, a hundred where it grows with the
 * square. A ratio says the same on a slow machine and on a fast one; it is of processor time, the best of three on either side, since machines are shared.
 */
export const growth = (work: (size: number) => unknown, small: number): number => {
  const best = (size: number) =>
    Math.min(
      ...[0, 1, 2].map(() => {
        const start = process.cpuUsage();
        work(size);
        const { user, system } = process.cpuUsage(start);
        return user + system;
      }),
    );
  // Once before it is timed, for the compiler to have seen it.
  work(small);
  const few = best(small);
  return best(10 * small) / few;
};

/** Far from ten, and far from a hundred. */
export const IN_STEP = 35;
