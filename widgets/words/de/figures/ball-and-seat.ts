/** Wörter der Kugel in ihrem Sitz. */
import type * as En from '../../en/figures/ball-and-seat.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Kugel in ihrem Sitz',
  label: (rests) => `Eine Kugel, sie liegt ${rests}, mit den Kräften an den Berührstellen`,
  notElastic: 'nicht elastisch',
  rows: {
    forceOnRing: 'Kraft auf den Ring',
    forceOnOne: 'Kraft auf die Berührstelle',
    forceOnEach: 'Kraft auf jede Berührstelle',
    halfWidthOfRing: 'halbe Breite des Rings',
    halfWidthOfPatch: 'halbe Breite der Berührfläche',
    peak: 'größter Druck',
    sinks: 'sinkt ein um',
    sinksEstimate: 'sinkt ein um, eine Schätzung',
    stiffness: 'Steifigkeit in Richtung der Last, für jedes weitere Newton',
    yields: 'beginnt zu fließen bei',
  },
  caption: (v) => {
    const where = `Eine gehärtete Kugel mit ${v.radius} Radius unter ${v.force}, ${v.rests} aus ${v.seat}`;
    return v.elastic
      ? `${where}, sinkt um ${v.elastic.sink} ein${v.elastic.estimate ? ' (eine Schätzung)' : ''}, bei einem größten Druck von ${v.elastic.peak}; sie begänne bei ${v.yields} zu fließen.`
      : `${where}, ist über dem ersten Fließen, das bei ${v.yields} kam. Darum gelten die elastischen Zahlen nicht mehr.`;
  },
  head: ['die Kugel liegt', 'sinkt ein um', 'größter Druck', 'beginnt zu fließen bei'],
};
