/** What a maker asks of a pair, and in which order the answers are wanted. */

import type { Megapascals, Millimetres, Newtons } from '../kernel/quantity.ts';
import type { SeriesName } from '../thread/series.ts';

/** What the maker asks. Nought asks nothing of wall, stroke and load. */
export interface Wish {
  /** Motion per step looked for, and the share of it that a pair may be off either way. */
  readonly motion: Millimetres;
  readonly band: number;
  /** Steps in a turn of each divider at hand; one at least. */
  readonly dividers: readonly number[];
  readonly hands: 'same' | 'opposite' | 'either';
  readonly arrangement: 'in line' | 'nested' | 'either';
  /** Least wall of a sleeve, at the limits of size; there has to be some in any case. */
  readonly leastWall: Millimetres;
  /** Bounds for both major diameters. */
  readonly smallest: Millimetres;
  readonly largest: Millimetres;
  /** Series to buy from; what is owned counts whatever its series. */
  readonly series: readonly SeriesName[];
  /** How many of the two threads must be owned. */
  readonly owned: 'none' | 'one' | 'both';
  /** Length of each thread that may be used up, in diameters of it. */
  readonly usable: number;
  readonly leastStroke: Millimetres;
  readonly load: Newtons;
  /** Tensile stress allowed in the core. */
  readonly stress: Megapascals;
}

/** Nearest motion first, smallest gain first, smallest size first, longest stroke first. */
export type Order = 'nearest' | 'gain' | 'size' | 'stroke';
