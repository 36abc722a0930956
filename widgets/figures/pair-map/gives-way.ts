/** Why no pair passes, and which of the wishes could give way, to what. */

import { FILTER_WORDS } from '#words/pair.ts';
import {
  divisionsFor,
  type Filter,
  listed,
  type Nothing,
  type PairRow,
  type ShortOfThread,
  shortOfThread,
} from '../../engine/index.ts';
import { grouped, numeral, show, type UnitView } from '../../input/format.ts';
import type { Asked } from './ask.ts';
import { motion, named, off } from './words.ts';

export const nothingText = (asked: Asked, view: UnitView): string => {
  const { answer, catalogue, wish } = asked;
  if (answer.kind !== 'nothing') return '';
  const short = shortOfThread(catalogue, wish);
  const why = short === undefined ? mostText(answer) : shortText(asked, short, view);
  // Where thread is short, the pair outside one filter is no better news than those below.
  const nearest = short === undefined || answer.ways.length === 0 ? nearestText(answer, view) : '';
  const parts = [why, nearest, waysText(asked, answer, nearest !== '', view), ...(short ? longWay(answer, view) : [])];
  return `No pair passes. ${parts.filter((part) => part !== '').join(' ')}`;
};

const mostText = ({ most, excluded, pairs }: Nothing): string =>
  `What excludes the most is ${FILTER_WORDS[most]}: ${grouped(excluded[most])} of ${grouped(pairs)} pairs.`;

const shortText = ({ wish }: Asked, s: ShortOfThread, view: UnitView): string =>
  `No pair can: a stroke of ${motion(wish.leastStroke, view)} in steps of ${motion(wish.motion, view)} is ${numeral(s.steps, 3)} steps, ${numeral(s.turns, 3)} turns at ${s.k} steps in a turn, whichever the pair. ` +
  `Each turn uses up a whole lead of both threads: that would be ${motion(s.needed, view)} of ${s.thread.designation}, the thread with the most turns of those allowed, of which ${motion(s.there, view)} may be used up, ${numeral(s.turnsThere, 3)} turns. ` +
  `At that step no pair has more stroke than ${motion(s.reach, view)}.`;

const facts = (p: PairRow, view: UnitView): string =>
  `${named(p)}: ${motion(Math.abs(p.Delta), view)} a turn, ${motion(p.step, view)} a step (${off(p.off)}), stroke ${motion(p.stroke, view)}, gain ${numeral(p.gain, 3)}`;

const nearestText = ({ most, nearest, also }: Nothing, view: UnitView): string => {
  if (nearest === undefined) return '';
  const to = MEASURED[most]?.(nearest, view);
  const fails = also.length > 0 ? `; it also fails ${listed(also.map((f) => FILTER_WORDS[f]))}` : '';
  return `The nearest pair outside it is ${facts(nearest, view)}${to === undefined ? '' : `, ${FILTER_WORDS[most]} ${to}`}${fails}.`;
};

/** To what a filter would have to give way, where the facts of a pair do not say it. */
const MEASURED: { readonly [F in Filter]?: (p: PairRow, view: UnitView) => string } = {
  load: (p, view) => show(p.carries, { shown: 'force', digits: 3 }, view),
  wall: (p, view) => (p.wall ? show(p.wall.limit, { shown: 'size', digits: 3 }, view) : 'none'),
};
const TO: typeof MEASURED = {
  ...MEASURED,
  motion: (p, view) => `${motion(p.step, view)} a step`,
  stroke: (p, view) => motion(p.stroke, view),
};

/** Which single wish could be relaxed, and to what; the one that excludes the most is left out where its pair was told. */
const waysText = ({ wish }: Asked, nothing: Nothing, told: boolean, view: UnitView): string => {
  const parts = nothing.ways
    .filter(({ filter }) => !(told && filter === nothing.most))
    .map(({ filter, row }) => {
      const to = TO[filter]?.(row, view);
      const stroke = filter === 'stroke' ? '' : `, stroke ${motion(row.stroke, view)}`;
      return `${FILTER_WORDS[filter]}${to === undefined ? '' : `, to ${to}`} (${named(row)}${stroke})`;
    });
  const divided = nothing.ways.find((way) => way.filter === 'motion')?.row;
  const k = divided && stepsThatFit(divided, wish.motion, wish.band);
  if (divided && k !== undefined) parts.push(`the divider, to ${k} steps in a turn (${named(divided)})`);
  return parts.length === 0 ? '' : `What could give way${told ? ' instead' : ''}, each alone: ${parts.join('; ')}.`;
};

/** What is left where the stroke is too long for the step. */
const longWay = ({ ways, anyStroke }: Nothing, view: UnitView): readonly string[] => [
  ...(anyStroke && !ways.some((way) => way.filter === 'stroke')
    ? [`With no stroke asked, the nearest step is that of ${facts(anyStroke, view)}.`]
    : []),
  'For a long way let the carried part turn with the middle: then only thread A moves it, a whole lead a turn; keep the pair for the last part.',
];

/** A degree each; finer ones are hardly told apart by eye. Common practice, no source. */
const MOST_DIVISIONS = 360;

/** A usual divider that makes a step of the motion wanted out of this pair, else the whole number of divisions that does. */
const stepsThatFit = (p: PairRow, wanted: Asked['wish']['motion'], band: number): number | undefined => {
  const m = divisionsFor.of({ Delta: p.Delta, v: wanted });
  if (!m.ok) return undefined;
  const fits = (k: number) => Math.abs(m.value.m / k - 1) <= band;
  const k = [6, 12, 4].find(fits) ?? Math.round(m.value.m);
  return k >= 1 && k <= MOST_DIVISIONS && fits(k) ? k : undefined;
};
