/** From the reader's numbers to the engine's question and its answer. */

import {
  type Catalogue,
  catalogueOf,
  type Found,
  good,
  type Millimetres,
  megapascals,
  mm,
  type Nothing,
  newtons,
  type Order,
  plain,
  type Result,
  searchPairs,
  type Wish,
  wantedNetLead,
} from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import { readDividers } from '../../input/dividers.ts';
import { readSeriesList, readThreadList } from '../../input/thread-list.ts';
import type { NumbersOf } from '../kit/figure.ts';

export const QUANTITIES = ['s_w', 'k', 'q_w', 't_l', 'd_least', 'd_most', 'q_X', 'S_w', 'F', 'sigma_a'] as const;
export const CHOSEN = ['hands', 'fitted', 'drawer', 'against', 'order'] as const;
export const TEXTS = ['dividers', 'taps', 'series'] as const;
export type Given = NumbersOf<never, (typeof QUANTITIES)[number], (typeof CHOSEN)[number], (typeof TEXTS)[number]>;

export interface Asked {
  readonly catalogue: Catalogue;
  readonly wish: Wish;
  readonly order: Order;
  /** Steps in a turn of the divider in use, the first of those at hand; and the motion a turn that is wanted with it. */
  readonly k: number;
  readonly aTurn: Millimetres;
  readonly answer: Found | Nothing;
}

// Reading the limits of every thread takes longer than the search itself, and the drawer seldom changes.
let kept: { readonly taps: string; readonly catalogue: Catalogue } | undefined;

const catalogueFor = (taps: string): Result<Catalogue> => {
  if (kept?.taps === taps) return good(kept.catalogue);
  const list = readThreadList(taps);
  if (!list.ok) return list;
  kept = { taps, catalogue: catalogueOf(list.value.threads) };
  return good(kept.catalogue);
};

const HANDS: Readonly<Record<OptionOf<'hands'>, Wish['hands']>> = {
  'same hand': 'same',
  'opposite hands': 'opposite',
  either: 'either',
};
const FITTED: Readonly<Record<OptionOf<'fitted'>, Wish['arrangement']>> = {
  'either way': 'either',
  'in line': 'in line',
  nested: 'nested',
};
const DRAWER: Readonly<Record<OptionOf<'drawer'>, Wish['owned']>> = {
  anywhere: 'none',
  'at least one you own': 'one',
  'both you own': 'both',
};
const ORDER: Readonly<Record<OptionOf<'order'>, Order>> = {
  'nearest motion': 'nearest',
  'smallest gain': 'gain',
  'smallest size': 'size',
  'longest stroke': 'stroke',
};

/** The answer with as many rows as are wanted. */
export const ask = ({ values, choices, texts }: Given, rows: number): Result<Asked> => {
  const { k } = values;
  const motion = mm(values.s_w);
  const aTurn = wantedNetLead.of({ s_w: motion, k: plain(k) });
  if (!aTurn.ok) return aTurn;
  const others = readDividers(texts.dividers);
  if (!others.ok) return others;
  const series = readSeriesList(texts.series);
  if (!series.ok) return series;
  const catalogue = catalogueFor(texts.taps);
  if (!catalogue.ok) return catalogue;
  const wish: Wish = {
    motion,
    band: values.q_w,
    dividers: [...new Set([k, ...others.value])],
    hands: HANDS[choices.hands],
    arrangement: FITTED[choices.fitted],
    leastWall: mm(values.t_l),
    smallest: mm(values.d_least),
    largest: mm(values.d_most),
    series: series.value,
    owned: DRAWER[choices.drawer],
    usable: values.q_X,
    leastStroke: mm(values.S_w),
    load: newtons(values.F),
    stress: megapascals(values.sigma_a),
  };
  const order = ORDER[choices.order];
  const answer = searchPairs(catalogue.value, wish, order, rows);
  return answer.ok
    ? good({ catalogue: catalogue.value, wish, order, k, aTurn: aTurn.value.Delta_w, answer: answer.value })
    : answer;
};

/** The same answer with more of its rows; one without any hits has none to add. */
export const withMore = (asked: Asked, rows: number): Asked => {
  if (asked.answer.kind === 'nothing') return asked;
  const answer = searchPairs(asked.catalogue, asked.wish, asked.order, rows);
  return answer.ok ? { ...asked, answer: answer.value } : asked;
};
