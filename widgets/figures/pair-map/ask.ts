/** From the reader's numbers to the engine's question and its answer. */

import type { Numbers } from '../../assembly/numbers.ts';
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
  SERIES_NAMES,
  searchPairs,
  type Wish,
  wantedNetLead,
} from '../../engine/index.ts';
import { readDividers } from '../../input/dividers.ts';
import { readSeriesList, readThreadList } from '../../input/thread-list.ts';

export interface Asked {
  readonly catalogue: Catalogue;
  readonly wish: Wish;
  /** Steps in a turn of the divider in use, the first of those at hand; and the motion a turn that is wanted with it. */
  readonly k: number;
  readonly aTurn: Millimetres;
  readonly answer: Found | Nothing;
}

// Reading the limits of every thread takes longer than the search itself, and the drawer seldom changes.
let kept: { readonly taps: string; readonly catalogue: Catalogue } | undefined;

const catalogueFor = (taps: string): Catalogue => {
  if (kept?.taps === taps) return kept.catalogue;
  const list = readThreadList(taps);
  kept = { taps, catalogue: catalogueOf(list.ok ? list.value.threads : []) };
  return kept.catalogue;
};

const HANDS = { 'same hand': 'same', 'opposite hands': 'opposite', either: 'either' } as const;
const FITTED = { 'either way': 'either', 'in line': 'in line', nested: 'nested' } as const;
const DRAWER = { anywhere: 'none', 'at least one you own': 'one', 'both you own': 'both' } as const;
const ORDER = {
  'nearest motion': 'nearest',
  'smallest gain': 'gain',
  'smallest size': 'size',
  'longest stroke': 'stroke',
} as const;

const chosen = <T>(options: Readonly<Record<string, T>>, picked: string | undefined, first: T): T =>
  picked !== undefined && Object.hasOwn(options, picked) ? (options[picked] ?? first) : first;

export const ask = (numbers: Numbers, rows: number): Result<Asked> => {
  const { values, choices, texts = {} } = numbers;
  const k = values.k ?? 1;
  const motion = mm(values.s_w ?? 0.001);
  const aTurn = wantedNetLead.of({ s_w: motion, k: plain(k) });
  if (!aTurn.ok) return aTurn;
  const others = readDividers(texts.dividers ?? '');
  const series = readSeriesList(texts.series ?? 'all');
  const wish: Wish = {
    motion,
    band: values.q_w ?? 0.1,
    dividers: [...new Set([k, ...(others.ok ? others.value : [])])],
    hands: chosen(HANDS, choices.hands, 'same'),
    arrangement: chosen(FITTED, choices.fitted, 'either'),
    leastWall: mm(values.t_l ?? 0),
    smallest: mm(values.d_least ?? 0),
    largest: mm(values.d_most ?? 400),
    series: series.ok ? series.value : SERIES_NAMES,
    owned: chosen(DRAWER, choices.drawer, 'none'),
    usable: values.q_X ?? 1,
    leastStroke: mm(values.S_w ?? 0),
    load: newtons(values.F ?? 0),
    stress: megapascals(values.sigma_a ?? 100),
  };
  const catalogue = catalogueFor(texts.taps ?? '');
  const answer = searchPairs(catalogue, wish, chosen<Order>(ORDER, choices.order, 'nearest'), rows);
  return answer.ok ? good({ catalogue, wish, k, aTurn: aTurn.value.Delta_w, answer: answer.value }) : answer;
};
