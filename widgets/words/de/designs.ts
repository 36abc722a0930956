/** Was von Entwürfen gesagt wird, die aus einer Datei oder aus diesem Browser gelesen wurden. */
import type * as En from '../en/designs.ts';
import { clause } from './clause.ts';

export const designLeftOut: typeof En.designLeftOut = (nth, why) => `Entwurf ${nth} wurde ausgelassen: ${clause(why)}`;
export const designsLeftOut: typeof En.designsLeftOut = (count) => `Insgesamt wurden ${count} Entwürfe ausgelassen.`;
export const numberLeftOut: typeof En.numberLeftOut = (design, why) =>
  `Von „${design}“ wurde eine Zahl ausgelassen: ${why}`;
export const numbersLeftOut: typeof En.numbersLeftOut = (count, design, why) =>
  `${count} Zahlen wurden ausgelassen. Die erste, von „${design}“: ${why}`;
export const usableLengthStated: typeof En.usableLengthStated = (threads) =>
  `Er nennt ${threads.map((t) => `X_${t}`).join(' und ')}, nutzbare Gewindelänge. Das Entwurfsblatt rechnet sie aus und nimmt sie nicht an: Gib dort die Längen von ${threads.length === 1 ? `Schraube und Mutter von Gewinde ${threads[0]}` : 'beiden Schrauben und Muttern'} ein und behalte den Entwurf neu.`;
