/** Seeded numbers for synthetic rigs: mulberry32 (T. Ettinger, public domain), and normal ones by Box and Muller. */
export const seeded = (seed: number): { uniform: () => number; normal: () => number } => {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    // Half a step up keeps it above nought, where the logarithm has no value.
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32 + 2 ** -33;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
};
