/** Wörter der Ablesungen nach einer Einstellung. */
import { listed } from '../../../engine/index.ts';
import type * as En from '../../en/figures/settling-log.ts';
import type { Same } from '../../same.ts';

const DOES = { still: 'still steht', settling: 'sich setzt', creeping: 'kriecht' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ablesungen nach einer Einstellung, beurteilt',
  panel: (unit) => `Messuhr, in ${unit}`,
  drawing:
    'Ablesungen über der Zeit, jeder Schritt der Skala das Zehnfache des vorigen, und das Gesetz, das zu ihnen passt',
  axis: 'Zeit seit der Einstellung',
  rows: {
    toCome: 'kommt noch, höchstens, in der zehnfachen Zeit',
    digit: 'letzte Stelle der Ablesungen, unter der nichts zählt',
    scatter: 'Streuung der Ablesungen um das Gesetz',
    settling: 'setzt sich insgesamt um',
    creeping: 'kriecht je Zehnfaches der Zeit um',
    heat: 'für jedes Kelvin des Raums',
  },
  verdict: (v) => {
    const way = v.sinks ? 'nach unten' : 'nach oben';
    const law =
      v.kind === 'still'
        ? 'Es steht still, soweit diese Ablesungen es zeigen.'
        : v.kind === 'settling'
          ? `Es setzt sich: insgesamt ${v.amount} ${way}, 63 % davon in den ersten ${v.tau}.`
          : `Es kriecht: ${v.amount} ${way} in jedem Zehnfachen der Zeit.`;
    const unsure =
      v.rivals.length === 0
        ? ''
        : ` Die Ablesungen sagen fast ebenso gut, dass es ${listed(v.rivals.map((kind) => DOES[kind]))}: Lies weiter ab.`;
    const warmth = v.heat
      ? ` Es folgt dem Raum: ${v.heat.perKelvin} ± ${v.heat.half} ${v.heat.falls ? 'nach unten' : 'nach oben'} für jedes Kelvin wärmer.`
      : '';
    const rest =
      v.toCome === undefined
        ? `Von ${v.last} bis ${v.later} kommt nichts mehr, das sich zeigen würde.`
        : `Von ${v.last} bis ${v.later} können noch bis zu ${v.toCome} kommen.`;
    return `${law}${unsure}${warmth} ${rest}`;
  },
  head: ['Zeit', 'abgelesen', 'bei mittlerer Temperatur', 'nach dem Gesetz'],
};
