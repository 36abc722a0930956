/**
 * The cost of rounding first: both leads kept to one, two, three … decimals of a millimetre before they are subtracted,
 * beside the exact difference.
 */

import { WORDS } from '#words/figures/rounding-cost.ts';
import type { BothThreads } from '../../assembly/pair-of.ts';
import {
  at,
  bad,
  fractionText,
  good,
  leadFraction,
  leastCommonMultiple,
  netLeadFraction,
  numberOf,
  type Result,
  type RoundedFirst,
  roundedFirst,
} from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { following, signedAmount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'nothing-to-round': { readonly A: string; readonly C: string };
  }
}

const WIDTH = 420;
const ROW = 26;
const TOP = 28;
/** Room for the longest names on the narrowest page. */
const LEFT = 168;
const RIGHT = 94;
const DECIMALS = [1, 2, 3, 4, 5] as const;
/** Bars are drawn as far as this many times the exact net lead, and broken off there. */
const MOST = 2.2;

/** Rounded leads beside a net lead that is not zero. */
type Rounded = RoundedFirst & { readonly error: number };

interface State extends BothThreads {
  readonly exact: number;
  readonly rows: readonly Rounded[];
}

const stateOf = ({ A, C }: BothThreads): Result<State> => {
  const rows: Rounded[] = [];
  for (const decimals of DECIMALS) {
    const { error, ...row } = roundedFirst(A, C, decimals);
    if (error === undefined) return bad('nothing-to-round', { A: A.designation, C: C.designation });
    rows.push({ ...row, error });
  }
  return good({ A, C, exact: numberOf(netLeadFraction(A, C)), rows });
};

/** `127/180 − 126/180 = 1/180 mm`, both leads over their common denominator. */
const inFractions = ({ A, C }: BothThreads): string => {
  const [a, c] = [leadFraction(A), leadFraction(C)];
  const common = leastCommonMultiple(a.bottom, c.bottom);
  const over = (f: typeof a) => `${(f.top * common) / f.bottom}/${common}`;
  const negative = C.h < 0 ? '−' : '';
  const sign = A.h > 0 ? '−' : '+';
  return `${negative}${over(c)} ${sign} ${over(a)} = ${fractionText(netLeadFraction(A, C))} mm`;
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
const errorText = ({ error, Delta }: Rounded): string => {
  if (error === 0) return WORDS.nothingLost;
  if (Delta === 0) return WORDS.standsStill;
  return `${withSign(numeral(100 * error, 2))} %`;
};
const leads = (row: Rounded, s: State): string =>
  `${s.C.h < 0 ? '−' : ''}${fixed(row.L_C, row.decimals)} ${s.A.h > 0 ? '−' : '+'} ${fixed(row.L_A, row.decimals)} mm`;

const draw = (s: State, view: UnitView): string => {
  const unit = (WIDTH - LEFT - RIGHT) / MOST;
  const height = TOP + ROW * (DECIMALS.length + 1) + 8;
  const bar = (ratio: number, y: number, name: string) => {
    const shown = Math.min(MOST, Math.max(0, ratio));
    const torn = ratio > MOST ? `<path class="torn" d="M${px(LEFT + unit * MOST - 9)} ${y + 4}l5 5l-5 5l5 5"/>` : '';
    return `<rect class="${name}" x="${LEFT}" y="${y + 6}" width="${px(Math.max(unit * shown, 1.5))}" height="${ROW - 13}"/>${torn}`;
  };
  const line = (index: number, label: string, ratio: number, end: string, name: string) => {
    const y = TOP + ROW * index;
    return `<g><text x="${LEFT - 8}" y="${y + 17}" text-anchor="end">${escapeText(label)}</text>${bar(ratio, y, name)}<text class="cost-end" data-told x="${WIDTH - RIGHT + 8}" y="${y + 17}">${escapeText(end)}</text></g>`;
  };
  const rows = s.rows.map((row, i) =>
    line(i, leads(row, s), row.Delta / s.exact, errorText(row), row.error === 0 ? 'cost-bar true' : 'cost-bar'),
  );
  const last = TOP + ROW * DECIMALS.length;
  return (
    `<p class="in-fractions">${WORDS.exactly(escapeText(inFractions(s)))}</p><div class="cost-box" tabindex="0" role="group" aria-label="${WORDS.bars}"><svg class="cost" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${WORDS.drawing(escapeText(s.A.designation), escapeText(s.C.designation))}">` +
    `<text class="map-label" x="${LEFT - 8}" y="0" dy="1em" text-anchor="end">${WORDS.keptTo}</text><text class="map-label" x="${LEFT}" y="0" dy="1em">${WORDS.give}</text><text class="map-label" x="${WIDTH - RIGHT + 8}" y="0" dy="1em">${WORDS.offBy}</text>` +
    `${rows.join('')}${line(DECIMALS.length, WORDS.notRounded, 1, motion(s.exact, view === 'both' ? 'metric' : view), 'cost-bar exact')}` +
    `<path class="cost-line" d="M${px(LEFT + unit)} ${TOP - 4}V${last + ROW}"/></svg></div>`
  );
};

export const roundingCost = defineFigure({
  name: 'rounding-cost',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: [],
  chief: ['A', 'C'],
  state: ({ threads }) => stateOf(threads),
  draw,
  rows: (s) => [following(signedAmount('exact', WORDS.give, s.exact, 'motion', 4), 'net-lead')],
  caption: (s, view) => {
    const third = at(s.rows, DECIMALS.indexOf(3));
    return WORDS.caption(motion(s.exact, view), motion(third.Delta, view), errorText(third));
  },
  table: (s, view) => {
    return {
      head: WORDS.head,
      rows: [
        ...s.rows.map((r) => [String(r.decimals), leads(r, s), motion(r.Delta, view), errorText(r)]),
        [WORDS.exact, inFractions(s), motion(s.exact, view), WORDS.none],
      ],
    };
  },
});
