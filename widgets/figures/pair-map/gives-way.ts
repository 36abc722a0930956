/** Why no pair passes, and which of the wishes could give way, to what. */
import { WORDS } from '#words/figures/pair-map.ts';
import { FILTER_WORDS } from '#words/pair.ts';
import {
  divisionsFor,
  type Filter,
  type Nothing,
  type PairRow,
  type ShortOfThread,
  shortOfThread,
} from '../../engine/index.ts';
import { grouped, numeral, show, type UnitView } from '../../input/format.ts';
import type { Asked } from './ask.ts';
import { factsOf, motion, named } from './words.ts';

export const nothingText = (asked: Asked, view: UnitView): string => {
  const { answer, catalogue, wish } = asked;
  if (answer.kind !== 'nothing') return '';
  const short = shortOfThread(catalogue, wish);
  const why = short === undefined ? mostText(answer) : shortText(asked, short, view);
  // Where thread is short, the pair outside one filter is no better news than those below.
  const nearest = short === undefined || answer.ways.length === 0 ? nearestText(answer, view) : '';
  const parts = [why, nearest, waysText(asked, answer, nearest !== '', view), ...(short ? longWay(answer, view) : [])];
  return WORDS.nothing(parts.filter((part) => part !== ''));
};

const mostText = ({ most, excluded, pairs }: Nothing): string =>
  WORDS.excludesMost(FILTER_WORDS[most], grouped(excluded[most]), grouped(pairs));

const shortText = ({ wish }: Asked, s: ShortOfThread, view: UnitView): string =>
  WORDS.shortOfThread({
    stroke: motion(wish.leastStroke, view),
    step: motion(wish.motion, view),
    steps: numeral(s.steps, 3),
    turns: numeral(s.turns, 3),
    k: s.k,
    needed: motion(s.needed, view),
    thread: s.thread.designation,
    there: motion(s.there, view),
    turnsThere: numeral(s.turnsThere, 3),
    reach: motion(s.reach, view),
  });

const nearestText = ({ most, nearest, also }: Nothing, view: UnitView): string => {
  if (nearest === undefined) return '';
  const to = MEASURED[most]?.(nearest, view);
  return WORDS.nearest(
    factsOf(nearest, view),
    to === undefined ? undefined : { filter: FILTER_WORDS[most], to },
    also.map((filter) => FILTER_WORDS[filter]),
  );
};

/** To what a filter would have to give way, where the facts of a pair do not say it. */
const MEASURED: { readonly [F in Filter]?: (p: PairRow, view: UnitView) => string } = {
  load: (p, view) => show(p.carries, { shown: 'force', digits: 3 }, view),
  wall: (p, view) => (p.wall ? show(p.wall.limit, { shown: 'size', digits: 3 }, view) : WORDS.noWall),
};
const TO: typeof MEASURED = {
  ...MEASURED,
  motion: (p, view) => WORDS.aStep(motion(p.step, view)),
  stroke: (p, view) => motion(p.stroke, view),
};

/** Which single wish could be relaxed, and to what; the one that excludes the most is left out where its pair was told. */
const waysText = ({ wish }: Asked, nothing: Nothing, told: boolean, view: UnitView): string => {
  const parts = nothing.ways
    .filter(({ filter }) => !(told && filter === nothing.most))
    .map(({ filter, row }) => {
      const to = TO[filter]?.(row, view);
      return WORDS.giveWay(
        FILTER_WORDS[filter],
        to,
        named(row),
        filter === 'stroke' ? undefined : motion(row.stroke, view),
      );
    });
  const divided = nothing.ways.find((way) => way.filter === 'motion')?.row;
  const k = divided && stepsThatFit(divided, wish.motion, wish.band);
  if (divided && k !== undefined) parts.push(WORDS.dividerGivesWay(k, named(divided)));
  return parts.length === 0 ? '' : WORDS.couldGiveWay(parts, told);
};

/** What is left where the stroke is too long for the step. */
const longWay = ({ ways, anyStroke }: Nothing, view: UnitView): readonly string[] => [
  ...(anyStroke && !ways.some((way) => way.filter === 'stroke') ? [WORDS.anyStroke(factsOf(anyStroke, view))] : []),
  WORDS.longWay,
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
