/** Words of the ways in which a plate on three feet swings. */
import type { PlateMode } from '../../../engine/index.ts';

const KINDS: Readonly<Record<PlateMode['kind'], string>> = { heave: 'up and down', rock: 'rocking' };

export const WORDS = {
  title: 'How the plate swings on its feet',
  kinds: KINDS,
  plan: (kind: string, frequency: string) =>
    `The plate from above, ${kind} at ${frequency} hertz: what goes up, what goes down, and the line that stays`,
  row: (which: number, kind: string) => `way ${which}: ${kind}`,
  foot: (name: string) => `foot ${name}`,
  caption: (modes: readonly { readonly kind: PlateMode['kind']; readonly frequency: string }[]) => {
    const [first, ...others] = modes;
    if (!first) return '';
    return `The slowest swing is ${KINDS[first.kind]} at ${first.frequency}; the others are ${others.map((m) => `${KINDS[m.kind]} at ${m.frequency}`).join(' and ')}.`;
  },
  head: ['way', 'frequency'],
};
