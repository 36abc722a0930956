/** Wörter der Arten, auf die eine Platte auf drei Füßen schwingt. */
import type * as En from '../../en/figures/plate-modes.ts';
import type { Same } from '../../same.ts';

const KINDS = { heave: 'auf und ab', rock: 'kippend' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Wie die Platte auf ihren Füßen schwingt',
  kinds: KINDS,
  plan: (kind, frequency) =>
    `Die Platte von oben, ${kind} mit ${frequency} Hertz: was hinaufgeht, was hinuntergeht, und die Linie, die bleibt`,
  row: (which, kind) => `Art ${which}: ${kind}`,
  foot: (name) => `Fuß ${name}`,
  caption: (modes) => {
    const [first, ...others] = modes;
    if (!first) return '';
    return `Am langsamsten schwingt sie ${KINDS[first.kind]} mit ${first.frequency}; die anderen sind ${others.map((m) => `${KINDS[m.kind]} mit ${m.frequency}`).join(' und ')}.`;
  },
  head: ['Art', 'Frequenz'],
};
