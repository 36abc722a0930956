/** Words of the rig to practise on. */

interface Caption {
  readonly count: string;
  readonly seed: string;
  readonly lowest: string;
  readonly highest: string;
  readonly truth: string;
}

export const WORDS = {
  title: 'A practice rig and what its indicator reads',
  up: 'turning up',
  down: 'turning down',
  panel: 'Indicator minus the nominal motion',
  readings: 'readings',
  nominal: 'nominal net lead',
  truth: 'net lead of this rig',
  flanks: 'flanks',
  loose: 'loose: play shows',
  touching: (threads: readonly { readonly thread: string; readonly flank: string }[]) =>
    `${threads.map(({ thread, flank }) => `thread ${thread}: the ${flank} touches`).join('; ')}; play does not show`,
  take: 'Take these readings over',
  again: 'Read again with the next seed',
  taken: (count: number) => `Taken over: ${count} readings stand in the calibration’s field.`,
  caption: ({ count, seed, lowest, highest, truth }: Caption) =>
    `${count} readings with seed ${seed}: compared with the nominal motion the indicator goes from ${lowest} to ${highest}, and the net lead of this rig is ${truth} a turn.`,
  directions: { up: 'up', down: 'down' },
  head: ['turns', 'direction', 'indicator'],
};
