/** Wörter des Gewindes, das ein Hub verbraucht. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/thread-eaten.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Gewinde, das ein Hub verbraucht',
  drawing: 'Gewünschter Hub und verbrauchtes Gewinde, in einem Maßstab',
  thread: (name, designation) => `Gewinde ${name}, ${spokenNumber(designation)}`,
  wanted: (stroke) => `gewünschter Hub: ${stroke}`,
  uses: (thread, used, there, tooMuch) =>
    `${thread}: verbraucht ${used} von ${there}${tooMuch ? ', mehr als da ist' : ''}`,
  caption: ({ gainA, gainC, limiting, turns, stroke, enough, stated }) => {
    const verdict = enough ? 'genug für den gewünschten Hub' : 'weniger als der gewünschte Hub';
    const first = `Jeder Teil Hub verbraucht ${gainA} Teile von Gewinde A und ${gainC} von Gewinde C. Gewinde ${limiting} ist zuerst zu Ende, nach ${turns} Umdrehungen und ${stroke} Hub`;
    return stated
      ? `${first}. So zusammengebaut lassen die Anschläge ${stated.turns} Umdrehungen und ${stated.stroke}, ${verdict}.`
      : `${first}, ${verdict}.`;
  },
  used: (thread) => `vom Hub verbraucht, ${thread}`,
  stroke: 'vorhandener Hub',
  turns: 'vorhandene Umdrehungen',
  gain: (thread) => `Verstärkung, ${thread}`,
  head: ['Gewinde', 'nutzbare Länge', 'vom Hub verbraucht', 'Verstärkung'],
};
