/** The words of the force of the hand and the smallest step it makes. */
export const WORDS = {
  title: 'Force of the hand and the smallest step it makes',
  plan: (v: { readonly force: string; readonly radius: string; readonly sense: string }) =>
    `From above: the hand pushes with ${v.force} at a radius of ${v.radius}, ${v.sense}, to raise the load`,
  bars: {
    step: (step: string, motion: string) => `one ${step}: ${motion}`,
    hand: (v: { readonly angle: string; readonly motion: string; readonly share: string; readonly step: string }) =>
      `a hand that repeats to ${v.angle}: ${v.motion}, ${v.share} of a ${v.step}`,
    jump: (v: { readonly angle: string; readonly motion: string; readonly share: string; readonly step: string }) =>
      `one jump, ${v.angle} at most: ${v.motion}, ${v.share} of a ${v.step}`,
  },
  forces: (start: string, keep: string) => `To start: ${start}, to keep turning: ${keep}`,
  caption: (v: {
    readonly radius: string;
    readonly keep: string;
    readonly start: string;
    /** The force that lowering takes, or that must hold the load back. */
    readonly lower: { readonly force: string; readonly holds: boolean };
    readonly hand: string;
    readonly jump: string;
    /** Which is the larger; nothing jumps where nothing sticks. */
    readonly decides: 'jump' | 'hand' | 'hand alone';
  }) => {
    const rules = {
      jump: `The jump is larger, so a step is ${v.jump} and not the ${v.hand} that the hand could set.`,
      hand: `The jump of ${v.jump} is smaller, so the hand decides: ${v.hand}.`,
      'hand alone': `Nothing sticks, so the hand alone decides: ${v.hand}.`,
    }[v.decides];
    const lowering = v.lower.holds
      ? `when let go, the load turns it back, and ${v.lower.force} must hold it`
      : `lowering takes ${v.lower.force}`;
    return `At a radius of ${v.radius} raising takes ${v.keep}, ${v.start} to start; ${lowering}. ${rules}`;
  },
  head: [
    'way',
    'torque to start',
    'torque to keep turning',
    'force to start',
    'force to keep turning',
    'jump, angle',
    'jump, motion',
  ],
  toStart: (way: string) => `force to start, ${way}`,
  toKeep: (way: string) => `force to keep turning, ${way}`,
  jump: (way: string) => `jump, ${way}`,
  byHand: 'smallest motion of the hand',
  perStep: (step: string) => `motion of one ${step}`,
  raising: (sense: string) => `raising, ${sense}`,
  lowering: (sense: string) => `lowering, ${sense}`,
};
