/** What the reader has done at the bench, and what that has shown: it lasts as long as the jack lies there. */
import { WORDS } from '#words/figures/fault-bench.ts';
import { type Fault, SCATTER, WAITED } from '../../assembly/bench/hidden-fault.ts';
import { show, type UnitView, withSign } from '../../input/format.ts';
import { PER_TURN, readingAt, type State } from './state.ts';

export interface Note {
  readonly work: boolean;
  readonly direction: 'up' | 'down';
  readonly place: number;
}

export type Check = 'block' | 'drift' | 'line';

/** What was done last and has a result to tell. */
export type Told = Check | 'read' | 'read-all';

export interface Desk {
  /** Steps of putting it together that are done. */
  step: number;
  work: boolean;
  /** Which way the head was turned last, and how far it then stood. */
  direction: 'up' | 'down';
  n: number;
  notes: readonly Note[];
  checks: readonly Check[];
  told: Told | undefined;
  /** How many readings were just handed to the calibration. */
  taken: number;
  said: { readonly fault: Fault; readonly right: boolean } | undefined;
}

export const BEGUN: Readonly<Desk> = {
  step: 0,
  work: false,
  direction: 'up',
  n: 0,
  notes: [],
  checks: [],
  told: undefined,
  taken: 0,
  said: undefined,
};

export interface Evidence {
  /** The check it comes of, if it comes of one and not of readings. */
  readonly of?: Check;
  readonly seen: string;
  readonly here: string;
  readonly good: string;
  /** How far from a good jack scatter and pieces alone may take it. */
  readonly within: string;
  readonly differs: boolean;
}

/** Twice the scatter of one reading is nothing; this many times is something. */
const CLEARLY = 8;
/** A pencil line that came round by less is not seen to have, rad. */
const BY_EYE = 0.01;
const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;

/** Whatever the notes and checks tell, each beside what a good jack shows. */
export const evidenceOf = (s: State, { notes, checks }: Desk, view: UnitView): readonly Evidence[] => {
  const { adjuster, bench, loaded, free } = s;
  const motion = (x: number) => show(x, { shown: 'motion', digits: 3 }, view);
  const signed = (x: number) => withSign(motion(x));
  const list: Evidence[] = [];
  /** `off` is how far from a good jack, `limit` what scatter and pieces alone may make of it. */
  const put = (seen: string, here: string, good: string, off: number, limit: number, more: Partial<Evidence> = {}) =>
    list.push({ seen, here, good, within: motion(limit), differs: Math.abs(off) > limit, ...more });
  const has = (work: boolean, direction: 'up' | 'down', place: number) =>
    notes.some((x) => x.work === work && x.direction === direction && x.place === place);
  const height = (work: boolean, direction: 'up' | 'down', place: number) =>
    readingAt(work ? loaded : free, place, direction).height;
  const whole = Array.from({ length: PER_TURN + 1 }, (_, i) => i);
  const along = SCATTER.height * CLEARLY;
  if (has(true, 'up', 0) && has(true, 'up', PER_TURN)) {
    const turn = height(true, 'up', PER_TURN) - height(true, 'up', 0);
    put(WORDS.evidence.lead, motion(turn), motion(adjuster.Delta), turn - adjuster.Delta, along);
    if (whole.every((place) => has(true, 'up', place))) {
      const off = whole.map((i) => height(true, 'up', i) - height(true, 'up', 0) - (turn * i) / PER_TURN);
      const range = Math.max(...off) - Math.min(...off);
      put(WORDS.evidence.wave, motion(range), WORDS.none, range, along);
    }
  }
  if (has(true, 'up', 0) && has(true, 'down', 0)) {
    const back = height(true, 'down', 0) - height(true, 'up', 0);
    put(WORDS.evidence.back, signed(back), motion(0), back, along);
  }
  for (const work of [true, false]) {
    const both = whole.filter((place) => has(work, 'up', place) && has(work, 'down', place));
    // At the turning point a warm jack has not moved on yet.
    const place = both.at(-1);
    if (place === undefined) continue;
    const loop = height(work, 'down', place) - height(work, 'up', place);
    const play = work ? 0 : Math.sign(adjuster.Delta) * (bench.play.A + bench.play.C);
    put(
      work ? WORDS.evidence.loop : WORDS.evidence.free,
      motion(Math.abs(loop)),
      motion(Math.abs(play)),
      Math.abs(loop) - Math.abs(play),
      Math.max(along, 0.4 * Math.abs(play)),
    );
  }
  const sides = notes.filter((x) => x.work && x.direction === 'up').map((x) => readingAt(loaded, x.place, 'up').side);
  const across = SCATTER.side * CLEARLY;
  if (sides.length === PER_TURN + 1) {
    const swing = Math.max(...sides) - Math.min(...sides);
    put(WORDS.evidence.swing, motion(swing), WORDS.none, swing, across);
    // A whole turn of a swing stands on the axis, its last place being its first.
    const aside = mean(sides.slice(0, PER_TURN));
    put(WORDS.evidence.aside, signed(aside), WORDS.none, aside, across);
  }
  const { block, drift, line } = s.checks;
  const size = (x: number) => show(x, { shown: 'size', digits: 5 }, view);
  if (checks.includes('block'))
    put(WORDS.evidence.block, size(block.reads), size(block.is), block.reads - block.is, along, { of: 'block' });
  if (checks.includes('drift'))
    put(WORDS.evidence.drift(WAITED), signed(drift), motion(0), drift, along, { of: 'drift' });
  if (checks.includes('line'))
    put(
      WORDS.evidence.line,
      show(line, { shown: 'degrees', digits: 2 }, view),
      show(0, { shown: 'degrees' }, view),
      line,
      BY_EYE,
      { of: 'line', within: show(BY_EYE, { shown: 'degrees', digits: 2 }, view) },
    );
  return list;
};
