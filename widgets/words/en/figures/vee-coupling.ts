/** Words of three balls in three vees. */

interface FlankForce {
  readonly name: string;
  readonly force: string;
}

const opens = (force: string): string => `would have to pull ${force}: it opens`;

export const WORDS = {
  title: 'Three balls in three vees',
  plan: 'Plan of three balls in their grooves, seen from above, with the push of each flank',
  loose: 'Loose along its grooves: no six forces hold it.',
  opens,
  pushes: (force: string) => `pushes ${force}`,
  held: (least: FlankForce, most: FlankForce) =>
    `All six flanks push, so the part is held: the least is flank ${least.name} with ${least.force}, the most flank ${most.name} with ${most.force}.`,
  leaves: (flanks: readonly FlankForce[]) =>
    `${flanks.map(({ name, force }, i) => `${i === 0 ? 'Flank' : 'flank'} ${name} ${opens(force)}`).join('; ')}. A flank can’t pull, so the part leaves its vees: bring the load nearer to the middle, add weight, or take side force away.`,
  forceOn: (flank: string) => `force on flank ${flank}`,
  head: ['flank', 'ball at', 'groove, from x', 'pushes, seen along the groove outward', 'force', 'standing'],
  place: (x: string, y: string) => `x ${x}, y ${y}`,
  /** After the number of its ball. */
  flanks: { left: 'a', right: 'b' },
  sides: { left: 'to the left', right: 'to the right' },
  standing: { opens: 'opens', pressed: 'pressed', loose: 'loose' },
};
