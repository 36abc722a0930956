/** Wörter der fünf Arten zu einer Bewegung. */
import { listed, spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/other-ways.ts';
import type { Same } from '../../same.ts';
import { softestPart, wayName } from '../kinds.ts';

type Wanted = Parameters<typeof En.WORDS.caption>[0]['wanted'];

const askedFor = ({ motion, hand, stroke, height }: Wanted): string =>
  `${motion} für ${hand} der Hand und ${stroke} Hub in ${height} Höhe`;

const FACTS = {
  resolution: 'für den Handwinkel',
  stroke: 'Hub',
  effort: 'Kraftaufwand',
  stiffness: 'Steifigkeit, höchstens',
  play: 'Spiel, spürbar, wenn Druck in Zug umschlägt',
  height: 'Höhe',
  length: 'Länge quer',
  price: 'Preis',
};

export const WORDS: Same<typeof En.WORDS> = {
  numbers: 'Die fünf im Vergleich, und alle Zahlen',
  title: 'Fünf Arten zu derselben Bewegung, in einem Maßstab',
  drawing: (way) => `${way}, von der Seite, maßstäblich`,
  way: wayName,
  cutOff: '(größer als das Bild: abgeschnitten)',
  noPrice: 'kein Preis angegeben',
  cantBeTurned: 'lässt sich nicht drehen',
  noFigure: 'keine Zahl',
  gives: (much, softest) => `${much}, am meisten: ${softestPart(softest)}`,
  ownWidth: 'die eigene Breite',
  tooCoarse: (wanted) => `zu grob: gewünscht war ${wanted}`,
  tooShort: (wanted) => `zu kurz: gewünscht war ${wanted}`,
  tooHigh: (free) => `zu hoch: frei sind ${free}`,
  doesAll: 'tut alles Gewünschte',
  doesAllWithin: (band) => `tut alles Gewünschte, den Schritt auf ${band} genau`,
  coarserScrew: (lead, screw) => `eine Steigung von ${lead}, gröber als ${spokenNumber(screw)}`,
  finestScrew: (screw) => `${spokenNumber(screw)}, die feinste zu kaufen`,
  wedge: (slope, screw) => `1 zu ${slope}, geschoben von ${spokenNumber(screw)}`,
  lever: (arms, screw) => `Arme 1 zu ${arms}, auf ${spokenNumber(screw)}`,
  balls: (rise, screw) => `${rise} je Spreizung, auf ${spokenNumber(screw)}`,
  pair: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}`,
  facts: FACTS,
  turned: 'gedreht oder geschoben',
  carried: 'bewegt die Spitze',
  fixed: 'fest (schraffiert)',
  tip: 'Spitze',
  roof: (height, above) => `erlaubte Höhe: ${height}${above ? ', über dem Bild' : ''}`,
  caption: ({ wanted, able, unpriced, noPrices, lightest, stiffest, lowest, cheapest }) => {
    const asked = askedFor(wanted);
    const missing =
      unpriced.length === 0
        ? ''
        : ` Kein Preis ist angegeben für ${noPrices ? 'irgendeine davon' : listed(unpriced)}; das Übrige gilt.`;
    const [first] = able;
    if (first === undefined) return `Keine der fünf gibt ${asked}.${missing}`;
    if (able.length === 1) return `Von den fünf gibt nur diese ${asked}: ${first}.${missing}`;
    const best = [
      lightest ? `am leichtesten zu drehen ist: ${lightest.name} mit ${lightest.amount}` : '',
      stiffest ? `am steifsten: ${stiffest}` : '',
      lowest ? `am niedrigsten: ${lowest.name} mit ${lowest.amount}` : '',
      cheapest ? `von denen mit Preis am billigsten: ${cheapest.name} mit ${cheapest.amount}` : '',
    ].filter((part) => part !== '');
    return `${asked}: Das können ${listed(able)}; ${best.join('; ')}.${missing}`;
  },
  head: [
    'Art',
    'eine Umdrehung',
    FACTS.resolution,
    FACTS.stroke,
    FACTS.effort,
    FACTS.stiffness,
    'gibt unter der Last nach',
    FACTS.play,
    FACTS.height,
    FACTS.length,
    FACTS.price,
    'Urteil',
  ],
};
