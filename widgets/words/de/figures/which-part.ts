/** Wörter der Rangfolge: welches Teil man verbessern soll. */
import type * as En from '../../en/figures/which-part.ts';
import type { Same } from '../../same.ts';

const PARTS = {
  'lead A': 'Steigung von Gewinde A',
  'lead C': 'Steigung von Gewinde C',
  waves: 'Wellen der Gewinde',
  offset: 'Versatz der Achsen',
  angle: 'Winkel der Achsen',
  guide: 'Spiel der Führung',
  key: 'Spiel der Passfeder',
};
const ASKED = { height: 'neben der Höhe', place: 'seitlich neben dem Ort' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Welches Teil man verbessern soll',
  histogram: (count) => `${count} Stücke, danach, wie weit die Spitze höchstens danebenliegt`,
  marks: { sampled: '95 von 100', statistical: 'statistisch', worst: 'schlimmster Fall' },
  ranking: 'Was es wegnimmt, wenn ein Teil doppelt so gut gemacht wird',
  part: (part) => PARTS[part],
  working: 'Die Stücke werden gelöst …',
  workingCaption: (count) => `${count} Stücke werden gelöst; die Rangfolge folgt.`,
  nothing: 'nichts',
  caption: (v) =>
    `Von ${v.count} Stücken liegen 95 von 100 höchstens um ${v.sampled} ${ASKED[v.asked]}; statistisch sind es ${v.statistical}, im schlimmsten Fall ${v.worst}. ${
      v.best === undefined
        ? 'Kein Teil, doppelt so gut gemacht, nimmt etwas weg.'
        : `Am meisten nimmt dies weg, doppelt so gut gemacht: ${v.best}, ${v.gains}.`
    }${v.differ ? ' Die beiden Rechenarten weichen um mehr als ein Zehntel ab: Die Teile wirken nicht jedes für sich im Verhältnis, darum zählen die gezogenen Stücke.' : ''}`,
  head: ['Teil', 'allein am meisten', 'nimmt weg, doppelt so gut gemacht'],
  sums: {
    sampled: '95 von 100 Stücken',
    statistical: 'statistisch, 95 %',
    worst: 'schlimmster Fall',
    failed: 'gingen nicht zusammen',
  },
  noneYet: { head: ['Teil'], rows: [['noch keine'], ['noch keine']] },
};
