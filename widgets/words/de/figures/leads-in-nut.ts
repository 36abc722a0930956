/** Wörter der Schraube in einer Mutter mit anderer Steigung. */
import type * as En from '../../en/figures/leads-in-nut.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Schraube in einer Mutter mit anderer Steigung',
  drawing:
    'Fünf Gänge einer Schraube in ihrer Mutter, die Spalte viel zu groß gezeichnet; die dicke Linie liegt an, der Pfeil ist die Last',
  far: 'fern vom Grundteil',
  near: 'nahe am Grundteil',
  magnified: (play) => `Spalte in einem Maßstab: neben der Flanke, die anliegt, ist der Spalt ${play}`,
  rows: { bare: 'Spiel eines genauen Paars', left: 'Spiel übrig' },
  caption: (v) =>
    v.carries === 'all'
      ? `Beide Steigungen sind gleich: Jeder Gang trägt, und das Spiel ist ${v.left}.`
      : `Die Schraube ist um ${v.deviation} zu ${v.longer ? 'lang' : 'kurz'} für ihre Mutter, und der Gang, der dem Grundteil am ${v.carries === 'near' ? 'nächsten' : 'fernsten'} liegt, trägt allein. Vom Spiel von ${v.bare} bleiben ${v.left}.`,
  head: ['Gang, vom fernen Ende', 'Spalt an der Druckflanke', 'Spalt an der anderen'],
};
