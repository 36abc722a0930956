/** Words of the log of readings after a setting. */
import { listed, type SettlingKind } from '../../../engine/index.ts';

const DOES: Readonly<Record<SettlingKind, string>> = { still: 'stands still', settling: 'settles', creeping: 'creeps' };

export const WORDS = {
  title: 'Readings after a setting, judged',
  panel: (unit: string) => `Indicator, in ${unit}`,
  drawing: 'Readings against time, each step of the scale ten times the one before, and the law that fits them',
  axis: 'time since the setting',
  rows: {
    toCome: 'yet to come, at most, in ten times the time',
    digit: 'last digit of the readings, below which nothing counts',
    scatter: 'scatter of the readings about the law',
    settling: 'settles in all',
    creeping: 'creeps in each tenfold time',
    heat: 'for each kelvin of the room',
  },
  verdict: (v: {
    readonly kind: SettlingKind;
    readonly rivals: readonly SettlingKind[];
    readonly amount: string;
    readonly sinks: boolean;
    readonly tau: string;
    readonly last: string;
    readonly later: string;
    /** Nothing where no indicator shows it. */
    readonly toCome: string | undefined;
    readonly heat: { readonly perKelvin: string; readonly half: string; readonly falls: boolean } | undefined;
  }) => {
    const way = v.sinks ? 'down' : 'up';
    const law =
      v.kind === 'still'
        ? 'It stands still, as far as these readings can tell.'
        : v.kind === 'settling'
          ? `It settles: ${v.amount} ${way} in all, 63 % of it in the first ${v.tau}.`
          : `It creeps: ${v.amount} ${way} in each tenfold time.`;
    const unsure =
      v.rivals.length === 0
        ? ''
        : ` The readings would nearly as well say that it ${listed(v.rivals.map((kind) => DOES[kind]))}: read on.`;
    const warmth = v.heat
      ? ` It follows the room: ${v.heat.perKelvin} ± ${v.heat.half} ${v.heat.falls ? 'down' : 'up'} for each kelvin warmer.`
      : '';
    const rest =
      v.toCome === undefined
        ? `From ${v.last} to ${v.later}, nothing more is to come that would show.`
        : `From ${v.last} to ${v.later}, up to ${v.toCome} may yet come.`;
    return `${law}${unsure}${warmth} ${rest}`;
  },
  head: ['time', 'read', 'at the mean temperature', 'by the law'],
};
