/** Wörter einer Feder, die nachlässt. */
import type * as En from '../../en/figures/spring-days.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Kraft einer nachlassenden Feder über der Zeit',
  panel: 'Kraft der Feder, in Newton',
  drawing: 'Kraft der Feder über der Zeit, jeder Schritt der Skala das Zehnfache des vorigen',
  mustBeLeft: 'muss bleiben',
  endOfLife: 'Ende der Lebensdauer',
  timeAxis: 'Zeit unter gleichbleibender Dehnung',
  verdict: (enough, left, life, needed) =>
    `${enough ? 'genug' : 'nicht genug'}: Nach ${life} bleiben ${left}, und ${needed} müssen bleiben.`,
  caption: ({ fitted, start, loss, life, left, needed, falls, guess }) => {
    const fallen =
      falls === 'never'
        ? 'darauf fällt sie in hundert Jahren nicht'
        : falls === 'from the start'
          ? 'mehr hat sie von Anfang an nicht'
          : `darauf ist sie nach ${falls.after} gefallen`;
    return (
      `${fitted ? 'An zwei Ablesungen angepasst' : 'Wie angegeben'}: ${start} am Anfang, davon gehen ${loss} je Zehnfaches der Zeit verloren. ` +
      `Nach ${life} bleiben ${left}, und ${needed} müssen bleiben; ${fallen}.` +
      (guess ? ' Das liegt über dem Zehnfachen der letzten Ablesung und ist darum geraten: Lies später wieder ab.' : '')
    );
  },
  head: ['Zeit', 'Kraft übrig', 'über dem, was bleiben muss'],
  rows: {
    left: 'Kraft übrig am Ende der Lebensdauer',
    falls: 'Zeit, bis nicht mehr bleibt, als muss',
    loss: 'Verlust je Zehnfaches der Zeit',
  },
};
