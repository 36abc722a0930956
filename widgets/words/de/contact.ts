/** Was von einer Kugel in ihrem Sitz gesagt wird. */
import { say } from '../../engine/index.ts';
import type * as En from '../en/contact.ts';

export const seatText: typeof En.seatText = ({ state, yieldLoad }) =>
  state === 'elastic'
    ? `Elastisch: Das erste Fließen käme bei ${say(yieldLoad, 3)} N.`
    : `Über dem ersten Fließen, das bei ${say(yieldLoad, 3)} N kam: Das elastische Ergebnis gilt nicht mehr, die wirkliche Eindrückung ist größer. Eine bleibende Delle ist zuerst sehr klein; weit über dieser Last ist sie zu sehen.`;
