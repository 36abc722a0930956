/** Wie ein Macher ein Paar beurteilt, und weshalb es ausscheiden kann. */
import { listed, say } from '../../engine/index.ts';
import type * as En from '../en/pair.ts';
import type { Same } from '../same.ts';

export const FILTER_WORDS: Same<typeof En.FILTER_WORDS> = {
  motion: 'die gewünschte Bewegung',
  hand: 'die Gangrichtungen',
  wall: 'die Wand der Hülse',
  size: 'den Bereich der Durchmesser',
  series: 'die Reihen, aus denen du kaufst',
  owned: 'was du hast',
  stroke: 'den kleinsten Hub',
  load: 'die Last',
};

export const GRADE_WORDS: Same<typeof En.GRADE_WORDS> = {
  sound: 'gut',
  'with care': 'mit Sorgfalt',
  delicate: 'heikel',
  nearest: 'am nächsten',
};

export const remarkText: typeof En.remarkText = ({ code, values }) => {
  switch (code) {
    case 'off-the-motion':
      return `${values.off > 0 ? '+' : ''}${say(100 * values.off, 2)} % neben der gewünschten Bewegung`;
    case 'misses':
      return `verfehlt ${FILTER_WORDS[values.filter]}`;
    case 'touchy':
      return `${say(100 * values.leadError)} % Steigungsfehler in einem Gewinde sind ${say(100 * values.ofMotion, 2)} % der Bewegung`;
    case 'thin-wall':
      return 'dünne Wand, weniger als eine Teilung';
    case 'one-core-weaker':
      return 'ein Kern ist viel schwächer';
    case 'left-hand-to-order':
      return `Linkswerkzeug zu bestellen: ${listed(values.threads)}`;
    case 'to-buy':
      return `zu kaufen: ${listed(values.threads)}`;
    case 'all-owned':
      return 'beide in deiner Schublade';
  }
};
