/** Words of an adjuster: its stops, its parts and what was assumed of them. */

interface StopFacts {
  readonly at: 'A' | 'C' | 'base and carried';
  readonly bound: { readonly kind: 'least engagement' } | { readonly kind: 'contact'; readonly lower: string };
}

export const WORDS = {
  /** A line of the list of parts. */
  list: {
    part: (kind: string, threads: readonly string[]) => `${kind} ${threads.join(', ')}`,
    ball: (mm: number) => `ball ${mm} mm`,
    spring: 'spring',
    lock: { key: 'key', post: 'post' },
  },
  /** Why it turns no further. */
  stop: ({ at, bound }: StopFacts): string =>
    at === 'base and carried'
      ? 'the carried part meets the base'
      : bound.kind === 'least engagement'
        ? `thread ${at} has only its least engagement left`
        : bound.lower === 'ground'
          ? 'its end stands on the ground'
          : `thread ${at} is home`,
  /** The same in two words, for a picture. */
  stopMark: ({ at, bound }: StopFacts, count: string): string =>
    at === 'base and carried'
      ? `parts meet, ${count}`
      : bound.kind === 'least engagement'
        ? `${at} at its least, ${count}`
        : bound.lower === 'ground'
          ? `on the ground, ${count}`
          : `${at} home, ${count}`,
};
