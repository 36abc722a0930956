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
    post: (diameter: number, length: number) => `post ⌀${diameter} × ${length} mm`,
    arm: 'arm on the post',
    foot: 'plate that holds the post',
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
  /** Whether drawn springs have their room; sizes as text. */
  springRoom: {
    fits: (clear: string, least: string, most: string, strain: string) =>
      `The springs fit: ${clear === '' ? '' : `they stay ${clear} clear of all else, and `}over the stroke they are stretched by ${least} to ${most}${strain === '' ? '' : `, which strains them by ${strain} at most`}.`,
    folds: (length: string, room: string) =>
      `The springs do not fit: they are ${length} long at the mark, and ${room} is left between what holds them. Give them fewer folds or more length.`,
    gap: (wanted: string, is: string) =>
      `The springs do not fit: they are drawn for ${wanted} between their ends at the mark, and the two parts can hold them ${is} apart. Draw them for that length.`,
    slack: (turns: string, clockwise: boolean) =>
      `The springs pull no more ${turns} turns ${clockwise ? 'clockwise' : 'anticlockwise'} of the middle. Stretch them further at the mark.`,
    strain: (strain: string, limit: string) =>
      `The springs fit, but at the end of the stroke they are strained by ${strain}; held for months a print stands about ${limit}. Take more folds or a thinner strip.`,
    part: (role: 'base' | 'turned' | 'carried', by: string, reaches: string) =>
      `The springs do not fit: the ${{ base: 'base', turned: 'turned part', carried: 'carried part' }[role]} reaches ${reaches} from the axis and would cut ${by} into them. Set them further out, or print them less high.`,
    eachOther: (width: string, room: string) =>
      `The springs do not fit: each is ${width} wide, and beside the next one there is ${room}. Take fewer, narrower ones or a larger radius.`,
    above: (by: string) =>
      `The springs do not fit: their upper ends stand ${by} above the tip, and so in the plate that rests on it. Hold them lower.`,
    below: (by: string) => `The springs do not fit: their lower ends reach ${by} below the base. Hold them higher.`,
  },
};
