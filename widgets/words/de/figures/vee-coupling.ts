/** Wörter von drei Kugeln in drei Prismen. */
import type * as En from '../../en/figures/vee-coupling.ts';
import type { Same } from '../../same.ts';

const opens = (force: string): string => `müsste mit ${force} ziehen: Sie öffnet sich`;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Drei Kugeln in drei Prismen',
  plan: 'Plan von drei Kugeln in ihren Rillen, von oben, mit dem Druck jeder Flanke',
  loose: 'Lose entlang der Rillen: Keine sechs Kräfte halten es.',
  opens,
  pushes: (force) => `drückt ${force}`,
  held: (least, most) =>
    `Alle sechs Flanken drücken, darum ist das Teil gehalten: am wenigsten Flanke ${least.name} mit ${least.force}, am meisten Flanke ${most.name} mit ${most.force}.`,
  leaves: (flanks) =>
    `${flanks.map(({ name, force }) => `Flanke ${name} ${opens(force)}`).join('; ')}. Eine Flanke kann nicht ziehen, darum verlässt das Teil seine Prismen: Bringe die Last näher zur Mitte, gib Gewicht dazu oder nimm Seitenkraft weg.`,
  forceOn: (flank) => `Kraft auf Flanke ${flank}`,
  head: ['Flanke', 'Kugel bei', 'Rille, von x aus', 'drückt, entlang der Rille nach außen gesehen', 'Kraft', 'Zustand'],
  place: (x, y) => `x ${x}, y ${y}`,
  flanks: { left: 'a', right: 'b' },
  sides: { left: 'nach links', right: 'nach rechts' },
  standing: { opens: 'öffnet sich', pressed: 'gedrückt', loose: 'lose' },
};
