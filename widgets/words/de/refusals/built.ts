/** Ablehnungen des gebauten Stellelements: was nicht zusammengeht, was kippt, was klemmt, was sich nicht lösen lässt. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const TIPS: Readonly<Record<Refusals['built-push-tips']['joint'], string>> = {
  ring: 'kippt das Grundteil auf seinem Ring: Mache den Ring breiter oder drücke tiefer',
  A: 'kippt das Stellteil in Gewinde A: Nimm mehr Einschraublänge oder drücke tiefer',
  C: 'kippt das Hubteil in Gewinde C: Nimm mehr Einschraublänge oder gib ihm eine Führung',
  guide: 'kippt das Hubteil in seiner Führung: Mache die Führung länger',
  key: 'dreht sich das Hubteil aus seiner Passfeder: Mache die Passfeder steifer',
};
const LOCKS: typeof TIPS = {
  ring: 'unter dem Grundteil: Drücke weniger',
  A: 'in Gewinde A: Fette es oder nimm ein feineres Gewinde',
  C: 'in Gewinde C: Fette es oder nimm ein feineres Gewinde',
  guide: 'in der Führung: Mache sie länger oder glatter oder belaste sie näher an der Achse',
  key: 'an der Passfeder: Mache sie glatter oder rücke sie weiter von der Achse',
};
const UNSETTLED: typeof TIPS = {
  ring: 'unter dem Grundteil: Mache seinen Ring breiter oder drücke weniger',
  A: 'in Gewinde A: Gib ihm mehr Spiel oder mehr Einschraublänge',
  C: 'in Gewinde C: Gib ihm mehr Spiel oder mehr Einschraublänge',
  guide: 'in der Führung: Gib ihr mehr Spiel',
  key: 'an der Passfeder: Rücke sie weiter von der Achse',
};

export const BUILT = {
  'built-no-clearance': ({ thread, clearance }) =>
    `Gewinde ${thread} hat mit seiner Schicht ein Flankenspiel von ${say(1000 * clearance)} µm und geht darum nicht zusammen: Wähle eine dünnere Schicht oder eine größere Mutter.`,
  'built-lead-eats-clearance': ({ thread, deviation, play }) =>
    `Gewinde ${thread} liegt über die Einschraublänge um ${say(1000 * deviation)} µm neben seiner Steigung, mehr als sein Spiel von ${say(1000 * play)} µm. So weit lässt es sich nicht einschrauben: Nimm weniger Einschraublänge oder schneide ein Teil neu.`,
  'built-number-outside': ({ what, value }) =>
    `Das Stellelement lässt sich mit ${what} = ${asRead(value)} nicht rechnen: Gib ein Maß oder eine Kraft, die ein Teil haben kann.`,
  'built-without-lock': () =>
    'Nichts hindert das Hubteil am Drehen, darum geht es mit der Hand herum: Gib der Verdrehsicherung eine Steifigkeit über 0.',
  'built-none-together': ({ count }) =>
    `Keines von ${count} aus diesen Fehlern gezogenen Stücken kam zur Ruhe: Mache die Fehler kleiner oder drücke weniger.`,
  'built-threads-overlap': ({ lower, upper }) =>
    `Gewinde A endet ${say(lower)} mm über der Messplatte, und Gewinde C beginnt bei ${say(upper)} mm, also darin. So gehen die Teile nicht zusammen: Setze Gewinde C höher oder nimm bei einem weniger Einschraublänge.`,
  'built-tip-inside': ({ tip, least }) =>
    `Die Spitze stünde bei ${say(tip)} mm im Gewinde C, das ${say(least)} mm über der Messplatte endet: Setze die Spitze höher oder nimm bei Gewinde C weniger Einschraublänge.`,
  'built-lock-winds-up': ({ turns }) =>
    `Nach ${say(turns)} Umdrehungen sind die Federn der Verdrehsicherung um mehr als einen Radiant verdreht, und das Hubteil geht mit der Hand herum: Mache sie steifer oder setze sie weiter von der Achse.`,
  'built-push-tips': ({ joint, turns }) => `Nach ${say(turns)} Umdrehungen ${TIPS[joint]}.`,
  'built-does-not-settle': ({ joint, turns }) =>
    `Nach ${say(turns)} Umdrehungen fand sich keine Ruhelage. Am größten sind die Kräfte ${UNSETTLED[joint]}.`,
  'built-friction-locks': ({ joint, turns }) =>
    `Nach ${say(turns)} Umdrehungen klemmt Reibung das Stellelement, am meisten ${LOCKS[joint]}.`,
} satisfies Partial<RefusalWords>;
