/** The words of torque against friction. */
export const WORDS = {
  title: 'Torque against friction',
  curves: {
    raise: (A: string, C: string) => `${A} with ${C}, raising`,
    lower: 'the same, lowering',
    plain: (C: string) => `${C} alone`,
  },
  noFriction: (pair: string, alone: string) => `no friction: ${pair}, alone ${alone}`,
  even: (friction: string) => `the same torque at friction ${friction}`,
  panel: 'Torque, in N·mm',
  marks: 'Friction, set by its mark',
  handle: 'Coefficient of friction',
  handleText: (friction: string, torque: string) => `${friction}, raising takes ${torque}`,
  across: 'coefficient of friction, the same in both threads',
  caption: (v: {
    readonly frictionless: string;
    readonly C: string;
    /** The friction at which pair and thread C cost the same, where there is one. */
    readonly even: string | undefined;
    /** Whether the pair is the lighter where there is less friction than that. */
    readonly lighterBelow: boolean;
    readonly friction: string;
    readonly pair: string;
    readonly alone: string;
  }) => {
    const crossing =
      v.even === undefined
        ? `the pair needs ${v.lighterBelow ? 'less' : 'more'} torque at every friction`
        : `the pair needs less torque than ${v.C} alone only ${v.lighterBelow ? 'below' : 'above'} friction ${v.even}`;
    return `From ${v.frictionless} without friction the torque of raising grows with friction, almost in a straight line; ${crossing}. Here, at ${v.friction}, the pair takes ${v.pair} and ${v.C} alone ${v.alone}.`;
  },
  head: ['friction', 'pair, raising', 'pair, lowering', 'thread C alone, raising', 'efficiency of the pair'] as const,
  evenAt: 'friction at which both take the same',
};
