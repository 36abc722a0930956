/**
 * Three adjusters under a plate, from the numbers of the plan beside it: where each stands and how far it has been turned, and how high the plate is over
 * it. Heights of plate and carried parts are drawn larger than they are, and the feet nearer to each other, each by a round factor; the adjusters and
 * what their heads have turned are true.
 */
import { type Adjuster, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../assembly/adjuster/from-numbers.ts';
import { reach } from '../../assembly/adjuster/part.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
import { at, good, heightAt, type Plane, type Result } from '../../engine/index.ts';
import { type Given, type PlateState, plateOf, type Round } from '../kit/levelling/rounds.ts';
import { type Aim, aimAt, type Frame, type Look } from '../kit/solid/view.ts';

export const PICTURE: Frame = { width: 660, height: 430, axis: 330 };

export interface StandingFoot {
  readonly name: string;
  /** On the picture, mm from the middle of the feet. */
  readonly x: number;
  readonly y: number;
  /** Of the plate over it, mm, from the foot that stays or from the mean. */
  readonly height: number;
  /** Drawn, over the adjuster as it was put together, mm. */
  readonly lift: number;
  /** Turns clockwise from the middle of its stroke. */
  readonly turns: number;
}

export interface State {
  readonly plate: PlateState;
  readonly adjuster: Adjuster;
  readonly feet: readonly StandingFoot[];
  /** How many times heights are drawn larger, and distances smaller. */
  readonly times: number;
  readonly closer: number;
  /** Rise of the plate as drawn, along x and y, and how high its middle is over the adjusters as they were put together. */
  readonly tilt: readonly [number, number];
  readonly middle: number;
}

/** The largest of 1, 2, 5, 10 … that is no more than this. */
const roundBelow = (x: number): number => {
  const ten = 10 ** Math.floor(Math.log10(x));
  return ([5, 2, 1].find((k) => k * ten <= x * (1 + 1e-9)) ?? 1) * ten;
};

/** What the plate may rise on the picture, and how far a foot may stand from the middle of all, in widths of an adjuster. */
const RISE = 0.35;
const APART = 0.9;

const widthOf = (a: Adjuster): number => 2 * Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));

const heightsOver = (s: PlateState, plane: Plane, datum: number): number[] =>
  s.feet.map((foot) => heightAt(plane, foot) - datum);

/** Heights are told from the foot that stays, or from the mean, as the first round found it. */
const datumOf = ({ kept, feet, first }: PlateState): number => {
  const { plane } = first.levelling;
  const heights = feet.map((foot) => heightAt(plane, foot));
  const stays = kept.kind === 'foot' ? feet.findIndex((foot) => foot.name === kept.name) : -1;
  return stays < 0 ? heights.reduce((sum, z) => sum + z, 0) / heights.length : at(heights, stays);
};

export const stateOf = (numbers: Given): Result<State> => {
  const plate = plateOf(numbers);
  if (!plate.ok) return plate;
  const parts =
    partsStated(numbers.texts.adjuster) ??
    adjusterOf({ threads: numbers.threads, choices: { arrangement: 'in line', assembly: 'both at mid-range' } });
  if (!parts.ok) return parts;
  const [s, adjuster] = [plate.value, parts.value];
  const { feet, first, now } = s;
  const datum = datumOf(s);
  const rounds = (round: Round) => heightsOver(s, round.levelling.plane, datum);
  const [before, heights] = [rounds(first), rounds(now)];
  const spreadOf = (z: readonly number[]) => Math.max(...z) - Math.min(...z);
  const width = widthOf(adjuster);
  const times = roundBelow(Math.max(1, (RISE * width) / Math.max(spreadOf(before), spreadOf(heights), 1e-6)));
  const mean = (pick: (foot: { x: number; y: number }) => number) =>
    feet.reduce((sum, foot) => sum + pick(foot), 0) / feet.length;
  const centre = { x: mean((f) => f.x), y: mean((f) => f.y) };
  const far = Math.max(...feet.map((f) => Math.hypot(f.x - centre.x, f.y - centre.y)));
  const closer = roundBelow(Math.max(1, far / (APART * width)));
  const low = Math.min(...before, ...heights);
  const { plane } = now.levelling;
  return good({
    plate: s,
    adjuster,
    times,
    closer,
    feet: feet.map((foot, i) => ({
      name: foot.name,
      x: (foot.x - centre.x) / closer,
      y: (foot.y - centre.y) / closer,
      // An indicator is read to a tenth of a micrometre.
      height: Math.abs(at(heights, i)) < 1e-4 ? 0 : at(heights, i),
      lift: times * (at(heights, i) - low),
      turns: at(now.stands, i),
    })),
    tilt: [times * closer * plane.q, times * closer * plane.r],
    middle: times * (heightAt(plane, centre) - datum - low),
  });
};

export interface Plate {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly thick: number;
}

/** The plate goes a little beyond the feet. */
export const plateBox = ({ feet, adjuster }: State): Plate => {
  const over = 0.45 * widthOf(adjuster);
  const [xs, ys] = [feet.map((f) => f.x), feet.map((f) => f.y)];
  return {
    x: [Math.min(...xs) - over, Math.max(...xs) + over],
    y: [Math.min(...ys) - over, Math.max(...ys) + over],
    thick: 0.16 * widthOf(adjuster),
  };
};

/** Height of the tips as the adjusters were put together, mm over the ground. */
export const groundOf = (a: Adjuster): number => standing(a, 0).height;

/** The lower ends of the turned parts may stand below the ground that the bases stand on, over a bench with holes. */
export const lowest = ({ adjuster, feet }: State): number =>
  Math.min(0, ...feet.map((foot) => standing(adjuster, foot.turns).at.turned));

const LETTERS = 0.25;

export const aimOf = (s: State, look: Look): Aim => {
  const { x, y, thick } = plateBox(s);
  const far = Math.hypot(Math.max(...x.map(Math.abs)), Math.max(...y.map(Math.abs)));
  const [bottom, top] = [lowest(s), groundOf(s.adjuster) + Math.max(...s.feet.map((f) => f.lift)) + thick];
  // Two lines of letters stand under the feet.
  return aimAt(look, bottom - LETTERS * (top - bottom), top, far, PICTURE);
};
