/** A maker’s judgement of a pair, and what a pair can be refused for. */
import { type Filter, type Grade, listed, type PairRemark, say } from '../../engine/index.ts';

export const FILTER_WORDS: Readonly<Record<Filter, string>> = {
  motion: 'the wanted motion',
  hand: 'the hands',
  wall: 'the wall of the sleeve',
  size: 'the range of diameters',
  series: 'the series you would buy from',
  owned: 'what you own',
  stroke: 'the least stroke',
  load: 'the load',
};

export const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  sound: 'sound',
  'with care': 'with care',
  delicate: 'delicate',
  nearest: 'nearest',
};

/** One short remark, without a capital and without a period. */
export const remarkText = ({ code, values }: PairRemark): string => {
  switch (code) {
    case 'off-the-motion':
      return `${values.off > 0 ? '+' : ''}${say(100 * values.off, 2)} % off the wanted motion`;
    case 'misses':
      return `misses ${FILTER_WORDS[values.filter]}`;
    case 'touchy':
      return `${say(100 * values.leadError)} % of lead error in one thread is ${say(100 * values.ofMotion, 2)} % of the motion`;
    case 'thin-wall':
      return 'thin wall, less than a pitch';
    case 'one-core-weaker':
      return 'one core is much weaker';
    case 'left-hand-to-order':
      return `left-hand tools to order: ${listed(values.threads)}`;
    case 'to-buy':
      return `to buy: ${listed(values.threads)}`;
    case 'all-owned':
      return 'both in your drawer';
  }
};
