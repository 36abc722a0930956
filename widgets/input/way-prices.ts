/**
 * The reader's own prices of the five ways, typed as a list: `plain screw: 1 × 46; wedge: 2 × 9`. Several rows of one
 * way add up. A way without a row, or with one that has no price, has none: it is never taken as nought.
 */

import { good, type Result, type WayName } from '../engine/index.ts';
import { readPartsList } from './parts-list.ts';

export const WAY_NAMES: readonly WayName[] = ['plain screw', 'wedge', 'lever', 'squeezed balls', 'differential screw'];

export interface WayPrices {
  readonly prices: Readonly<Partial<Record<WayName, number>>>;
  /** Ways that have no price, in the order of `WAY_NAMES`. */
  readonly missing: readonly WayName[];
  /** Rows that name none of the five, as typed. */
  readonly unknown: readonly string[];
}

export const readWayPrices = (text: string): Result<WayPrices> => {
  const list = readPartsList(text);
  if (!list.ok) return list;
  const prices: Partial<Record<WayName, number>> = {};
  const unpriced = new Set<WayName>();
  const unknown: string[] = [];
  for (const { name, count, price } of list.value.parts) {
    const way = WAY_NAMES.find((w) => w === name.toLowerCase());
    if (way === undefined) unknown.push(name);
    else if (price === undefined) unpriced.add(way);
    else prices[way] = (prices[way] ?? 0) + count * price;
  }
  // Half a price is none: a way that has a row without one would look cheaper than it is.
  for (const way of unpriced) delete prices[way];
  return good({ prices, missing: WAY_NAMES.filter((way) => prices[way] === undefined), unknown });
};
