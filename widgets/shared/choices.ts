/** Inputs that are picked, not typed: each with its options, the first being what a chapter gets if it says nothing. */
export const CHOICES = {
  arrangement: { says: 'arrangement', options: ['in line', 'nested', 'one spindle, two nuts'] },
  lock: { says: 'lock of the carried part', options: ['holds', 'gives'] },
  divider: { says: 'divided by', options: ['hexagon', 'square', 'twelve points', 'knob'] },
} as const;

export type ChoiceName = keyof typeof CHOICES;
export const isChoice = (name: string): name is ChoiceName => Object.hasOwn(CHOICES, name);
