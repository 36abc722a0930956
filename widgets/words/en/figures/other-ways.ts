/** Words of the five ways to one motion. */
import { listed } from '../../../engine/index.ts';

/** What is wanted, as texts. */
interface Wanted {
  readonly motion: string;
  readonly hand: string;
  readonly stroke: string;
  readonly height: string;
}

/** A way that is the best of those that do it, and its amount. */
interface Best {
  readonly name: string;
  readonly amount: string;
}

interface Caption {
  readonly wanted: Wanted;
  /** Ways that do it, by name. */
  readonly able: readonly string[];
  readonly unpriced: readonly string[];
  /** Whether no way at all has a price. */
  readonly noPrices: boolean;
  readonly lightest: Best | undefined;
  readonly stiffest: string | undefined;
  readonly lowest: Best | undefined;
  readonly cheapest: Best | undefined;
}

const askedFor = ({ motion, hand, stroke, height }: Wanted): string =>
  `${motion} for ${hand} of the hand and ${stroke} of stroke within ${height} of height`;

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const FACTS = {
  resolution: 'for the hand angle',
  stroke: 'stroke',
  effort: 'effort',
  stiffness: 'stiffness, at most',
  play: 'play, felt when push changes to pull',
  height: 'height',
  length: 'length across',
  price: 'price',
} as const;

export const WORDS = {
  /** The fold in the foot. */
  numbers: 'The five compared, and all numbers',
  title: 'Five ways to the same motion, to one scale',
  drawing: (way: string) => `${way}, from the side, to scale`,
  way: (name: string) => name,
  cutOff: '(larger than the picture: cut off)',

  noPrice: 'no price given',
  cantBeTurned: 'can’t be turned',
  noFigure: 'no figure',
  gives: (much: string, softest: string) => `${much}, mostly ${softest}`,
  ownWidth: 'its own width',

  tooCoarse: (wanted: string) => `too coarse: ${wanted} was wanted`,
  tooShort: (wanted: string) => `too short: ${wanted} was wanted`,
  tooHigh: (free: string) => `too high: ${free} is free`,
  doesAll: 'does all that is wanted',
  doesAllWithin: (band: string) => `does all that is wanted, its step to within ${band}`,

  coarserScrew: (lead: string, screw: string) => `a lead of ${lead}, coarser than ${screw}`,
  finestScrew: (screw: string) => `${screw}, the finest on sale`,
  wedge: (slope: string, screw: string) => `1 in ${slope}, pushed by ${screw}`,
  lever: (arms: string, screw: string) => `arms 1 to ${arms}, on ${screw}`,
  balls: (rise: string, screw: string) => `${rise} per unit of spread, on ${screw}`,
  pair: (A: string, C: string) => `${A} with ${C}`,

  facts: FACTS,

  turned: 'turned or driven',
  carried: 'moves the tip',
  fixed: 'fixed (hatched)',
  tip: 'tip',
  roof: (height: string, above: boolean) => `allowed height: ${height}${above ? ', above the picture' : ''}`,

  caption: ({ wanted, able, unpriced, noPrices, lightest, stiffest, lowest, cheapest }: Caption) => {
    const asked = askedFor(wanted);
    const missing =
      unpriced.length === 0
        ? ''
        : ` No price is given for ${noPrices ? 'any of them' : listed(unpriced.map((name) => `the ${name}`))}; the rest holds.`;
    const [first] = able;
    if (first === undefined) return `None of the five gives ${asked}.${missing}`;
    if (able.length === 1) return `Of the five, only the ${first} gives ${asked}.${missing}`;
    const best = [
      lightest ? `lightest to turn is the ${lightest.name} with ${lightest.amount}` : '',
      stiffest ? `stiffest the ${stiffest}` : '',
      lowest ? `lowest the ${lowest.name} with ${lowest.amount}` : '',
      cheapest ? `cheapest of those priced the ${cheapest.name} at ${cheapest.amount}` : '',
    ].filter((part) => part !== '');
    return `${capital(asked)}: the ${listed(able)} do it; ${best.join(', ')}.${missing}`;
  },

  head: [
    'way',
    'a turn',
    FACTS.resolution,
    FACTS.stroke,
    FACTS.effort,
    FACTS.stiffness,
    'gives under the load',
    FACTS.play,
    FACTS.height,
    FACTS.length,
    FACTS.price,
    'verdict',
  ],
};
