/** Wörter des Bildes, das eine Schublade mit Teilen durchsucht. */
import type * as En from '../../en/figures/drawer.ts';
import type { Same } from '../../same.ts';
import { inGerman } from '../lists.ts';

const part = (text: string): string => inGerman('hardware', text);

interface Facts {
  readonly name: string;
  readonly step: string;
  readonly divisions: number;
  readonly stroke: string;
  readonly height: string;
}
const factsText = ({ name, step, divisions, stroke, height }: Facts): string =>
  `${part(name)}: ${divisions === 1 ? `${step} je Umdrehung` : `${step} je Schritt bei ${divisions} Schritten je Umdrehung`}, Hub ${stroke}, ${height} hoch`;

type Nothing = Parameters<typeof En.WORDS.nothing>[0];
const turnsText = (t: NonNullable<Nothing['turns']>): string =>
  `Ein Hub von ${t.stroke} ${t.divisions === 1 ? `bei ${t.step} je Umdrehung sind mindestens ${t.asked} Umdrehungen` : `in Schritten von ${t.step} sind ${t.steps} Schritte, mindestens ${t.asked} Umdrehungen bei ${t.divisions} Schritten je Umdrehung`}. Das mit den meisten Umdrehungen hat ${t.there}: Sie würden ${t.needed} von Gewinde ${t.thread} verbrauchen, und es hat ${t.usable} übrig.`;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Was deine Schublade bauen kann',
  numbers: 'Die besten, zum Nehmen',
  stopSearch: 'Suche anhalten',
  searchAgain: 'Noch einmal suchen',
  mapOf:
    'Karte aller Stellelemente, welche die Schublade bauen kann: Schritt nach rechts, Hub nach oben, mit der besten Kante',
  strokeAxis: 'feiner Hub',
  stepAxis: { 'a step': 'Schritt', 'a flat': 'Bewegung je Fläche', 'a turn': 'Bewegung je Umdrehung' },
  wished: 'gewünscht',
  key: {
    all: 'lässt sich bauen; innerhalb von „gewünscht“ zu hoch oder zu teuer',
    met: 'erfüllt den Wunsch',
    edge: 'beste Kante: Kein anderes ist so fein und geht so weit',
    ring: 'zuerst in der Liste, oder die Zeile, auf die du zeigst',
  },
  wishes: { step: 'den Schritt', stroke: 'den Hub', height: 'die Höhe', price: 'den Preis' },
  noPrice: 'nicht angegeben',
  notKnown: 'nicht bekannt',
  locks: (shift, stroke, gap) =>
    `Ein Sechstel einer Umdrehung weiter wieder angeklemmt, verschiebt die Sicherung den feinen Hub um ${shift}; ${gap === undefined ? `das ist nicht mehr als die ${stroke} des feinen Hubs, darum wird jede Höhe erreicht` : `der feine Hub ist ${stroke}, darum werden ${gap} zwischen zwei Stellen der Sicherung nie erreicht`}.`,
  plainScrew: 'einfache Schraube, alles ist ihr Hub',
  short: (text) =>
    part(text.replace(/,\s*(?:body |head |neck |hexagon |width |height |price |coat |on the ground)[^,]*/gi, '')),
  brief: (text) =>
    part(text.replace(/,\s*(?:\d|thread |body |head |hexagon |width |height |price |on the ground).*$/i, '')),
  onTop: ' + ',
  coarse: (range, lead, gap) =>
    `${range} bei ${lead} je Umdrehung${gap === undefined ? ', ohne Lücke' : `; lässt Lücken von ${gap}`}`,
  atSteps: (step, k) => (k === 1 ? `${step} je Umdrehung` : `${step} bei ${k}`),
  take: (rank) => `Nummer ${rank} zusammenbauen`,
  taken: (rank) => `Nummer ${rank} ist zusammengebaut. Sie steht in `,
  metList: (count, first, several) =>
    `${count} erfüllen den Wunsch${first === undefined ? '' : `; die ersten ${first}`}.${several ? ' Jedes nimmt den Teiler mit den wenigsten Schritten je Umdrehung, der fein genug ist' : ''}`,
  nearestList: 'Keines erfüllt den Wunsch. Die nächsten, und was jedes verfehlt',
  listHead: (nothing) => [
    'Grundteil + Stellteil + Hubteil',
    'Schritt, bei Schritten je Umdrehung',
    'feiner Hub',
    'grob, mit gelöster Sicherung',
    'Höhe',
    'wächst je Kelvin',
    'Preis',
    ...(nothing ? ['verfehlt'] : []),
  ],
  head: [
    'Grundteil',
    'Stellteil',
    'Hubteil',
    'Schritt',
    'Schritte je Umdrehung',
    'feiner Hub',
    'Umdrehungen',
    'grober Bereich',
    'Verschiebung an einer Stelle der Sicherung',
    'bleibende Lücke',
    'Höhe in der Mitte',
    'Wachsen je Kelvin',
    'Preis',
  ],
  leftOut: (wrong, alike, more) =>
    `Aus der Schublade ausgelassen: ${wrong.join(' ')}${alike.length > 0 ? ` Ebenso ${alike.map(part).join(', ')}.` : ''}${more > 0 ? ` Und ${more} weitere.` : ''}`,
  found: (v) =>
    `${v.met} von ${v.stacks} Stellelementen, die sich aus ${v.parts} Teilen bauen lassen, erfüllen den Wunsch. Zuerst in der Liste: ${factsText(v.first)}. Grob: ${v.first.coarse}.${v.first.locks === '' ? '' : ` ${v.first.locks}`}`,
  nothing: (v) =>
    [
      `Keines von ${v.stacks} Stellelementen, die sich aus ${v.parts} Teilen bauen lassen, erfüllt den Wunsch.`,
      ...(v.turns ? [turnsText(v.turns)] : []),
      ...(v.ways.length > 0
        ? [
            `Gib einen Wunsch allein auf, und es findet sich eines: ${v.ways.map((w) => `${w.wish}, auf ${w.to} (${part(w.name)})`).join('; ')}.`,
          ]
        : ['Kein einzelner Wunsch ist schuld: Zwei oder mehr müssen nachgeben.']),
      `Das nächste ist ${factsText(v.nearest)}.`,
    ].join(' '),
};
