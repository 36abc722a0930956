/** Wörter der Karte aller Paare und der Liste darunter. */
import { listed, spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/pair-map.ts';
import type { Same } from '../../same.ts';

interface Facts {
  readonly pair: string;
  readonly aTurn: string;
  readonly step: string;
  readonly off: string;
  readonly stroke: string;
  readonly gain: string;
}

const factsText = ({ pair, aTurn, step, off, stroke, gain }: Facts): string =>
  `${spokenNumber(pair)}: ${aTurn} je Umdrehung, ${step} je Schritt (${off}), Hub ${stroke}, Verstärkung ${gain}`;

const COLUMNS = {
  exactly: 'genau',
  off: 'neben der gewünschten Bewegung',
  gain: 'Verstärkung',
  stroke: 'Hub',
  judgement: 'Urteil',
};

export const WORDS: Same<typeof En.WORDS> = {
  numbers: 'Die gefundenen Paare, und alle Zahlen',
  title: 'Karte aller Paare',
  mapOf: (axes) => `Karte aller Gewindepaare: ${axes}, mit Linien gleicher Bewegung`,
  leadAgainstLead: 'kürzere Steigung über längerer Steigung',
  againstMotion: (what) => `${what} über der Nettosteigung`,
  longerLead: (unit) => `längere Steigung, ${unit}`,
  shorterLead: (unit) => `kürzere Steigung, ${unit}`,
  upAxis: {
    gain: () => 'Verstärkung, der längeren Steigung',
    stroke: (unit) => `Hub, ${unit}`,
    size: (unit) => `größerer Durchmesser, ${unit}`,
  },
  motionPerTurn: 'Nettosteigung',
  wanted: (motion) => `gewünscht: ${motion}`,
  leastStroke: (stroke) => `kleinster Hub: ${stroke}`,
  grains: 'ein Paar oder viele',
  passes: 'besteht',
  ring: 'zuerst in der Liste, oder die Zeile, auf die du zeigst',
  onTheMark: 'genau getroffen',
  with: 'mit',
  openIn: 'In den Bildern öffnen',
  atSteps: (step, k) => `${step} bei ${k}`,
  noNest: 'geht nicht ineinander',
  tooThin: (wall) => `${wall}, zu dünn`,
  listHead: (severalDividers) => [
    'Paar, A mit C',
    'eine Umdrehung',
    COLUMNS.exactly,
    ...(severalDividers ? ['ein Schritt, bei Schritten je Umdrehung'] : []),
    COLUMNS.off,
    COLUMNS.gain,
    COLUMNS.stroke,
    'Wand, wenn ineinander',
    COLUMNS.judgement,
  ],
  pass: (hits, pairs, listedFirst) =>
    `${hits} von ${pairs} Paaren bestehen${listedFirst === undefined ? '' : `; die ersten ${listedFirst}`}`,
  nonePasses: (several) =>
    `Kein Paar besteht. ${several ? 'Die nächsten, und was jedes verfehlt' : 'Das nächste außerhalb'}`,
  fromParts: 'Teile, die du hast oder kaufen kannst, brauchen keine Gewindebohrer:',
  toDrawer: 'was deine Schublade bauen kann',

  found: ({ hits, pairs, band, aTurn, step, dividers, best }) => {
    const several = dividers.length > 1;
    const wanted = several
      ? `${step} je Schritt mit ${listed(dividers.map(String))} Schritten je Umdrehung`
      : `${aTurn} je Umdrehung`;
    const bestStep = several ? `, ${best.step} je Schritt bei ${best.k} auf eine Umdrehung` : '';
    return `${hits} von ${pairs} Paaren liegen innerhalb von ${band} % um ${wanted}; zuerst in der Liste steht ${spokenNumber(best.pair)}, ${best.aTurn} je Umdrehung${bestStep} (${best.off}), Verstärkung ${best.gain}, ${best.grade}.`;
  },
  nothing: (sentences) => `Kein Paar besteht. ${sentences.join(' ')}`,
  excludesMost: (filter, excluded, pairs) =>
    `Die Grenze, die am meisten ausschließt, betrifft ${filter}: ${excluded} von ${pairs} Paaren.`,
  shortOfThread: (s) =>
    `Kein Paar kann das: Ein Hub von ${s.stroke} in Schritten von ${s.step} sind ${s.steps} Schritte, ${s.turns} Umdrehungen bei ${s.k} Schritten je Umdrehung, mit jedem Paar. ` +
    `Jede Umdrehung verbraucht eine ganze Steigung beider Gewinde. Von den erlaubten Gewinden hat ${spokenNumber(s.thread)} die meisten Umdrehungen: Es bräuchte ${s.needed}, und seine nutzbare Länge ist ${s.there}, ${s.turnsThere} Umdrehungen. ` +
    `Bei diesem Schritt hat kein Paar mehr Hub als ${s.reach}.`,
  nearest: (facts, outside, alsoFails) =>
    `Das nächste Paar außerhalb ist ${factsText(facts)}${outside === undefined ? '' : `, ${outside.filter}: ${outside.to}`}${
      alsoFails.length > 0 ? `; es verfehlt auch ${listed(alsoFails)}` : ''
    }.`,
  noWall: 'keine',
  aStep: (motion) => `${motion} je Schritt`,
  giveWay: (filter, to, pair, stroke) =>
    `${filter}${to === undefined ? '' : `, auf ${to}`} (${spokenNumber(pair)}${stroke === undefined ? '' : `, Hub ${stroke}`})`,
  dividerGivesWay: (k, pair) => `die Teilung, auf ${k} Schritte je Umdrehung (${spokenNumber(pair)})`,
  couldGiveWay: (ways, instead) =>
    `Was du ${instead ? 'stattdessen ' : ''}ändern könntest, jedes allein: ${ways.join('; ')}.`,
  anyStroke: (facts) => `Ohne kleinsten Hub ist der nächste Schritt der von ${factsText(facts)}.`,
  longWay:
    'Für einen langen Weg lass das Hubteil mit dem Stellteil mitdrehen. Dann bewegt es nur Gewinde A, eine ganze Steigung je Umdrehung. Benutze das Paar für das letzte Stück.',
  head: (step, severalDividers) => [
    'Gewinde A',
    'Gewinde C',
    'gezeigt',
    'Nettosteigung',
    `${COLUMNS.exactly}, mm`,
    ...(step ? ['je Schritt'] : []),
    ...(severalDividers ? ['Schritte je Umdrehung'] : []),
    COLUMNS.off,
    COLUMNS.gain,
    COLUMNS.stroke,
    'größerer Durchmesser',
    'Wand, Nennmaß',
    'Wand, an den Grenzmaßen',
    'Kern trägt',
    'Teilungen zuerst auf 0,001 mm gerundet',
    'Fehler davon',
    COLUMNS.judgement,
  ],
};
