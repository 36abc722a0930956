/**
 * Flats, points and divisions as units of an answer. A count of steps is a plain number to the engine, yet people write `2.57 flats`; and who
 * writes turns where steps are asked, or flats where turns are, has said as much, once the steps of a turn are known. A motion can be said in
 * flats or turns too, where a pair gives the motion of one.
 */
import { STEP_WORDS } from '#words/papers.ts';
import { UNITS, type Unit } from '../engine/index.ts';
import { unitNamed } from '../input/quantity.ts';
import type { Item } from './exercise.ts';

/** What is asked, and what a turn is worth there: its steps, and mm of motion with their sign. */
export interface Counted {
  readonly unit: Unit;
  /** The symbol of the answer. */
  readonly of: string | undefined;
  readonly steps: number | undefined;
  readonly motion?: number | undefined;
}

/** The symbols that are counts of steps. */
const COUNTS: readonly (string | undefined)[] = ['m', 'm_j'];

/** The text with its word turned into what is asked; as it stands where there is nothing to turn. */ export const inCounts =
  (text: string, { unit, of, steps, motion }: Counted): string => {
    const [, number = '', word = ''] = /^\s*([+\-−–]?[\d.,]+)\s*(\p{L}+\.?)\s*$/iu.exec(text.slice(0, 60)) ?? [];
    if (number === '') return text;
    const counts = STEP_WORDS.includes(word.toLowerCase());
    const inTurns = unitNamed(word) === 'turns';
    const countsSteps = unit === '1' && COUNTS.includes(of);
    if (countsSteps && counts) return number;
    if (steps === undefined || !(counts || inTurns)) return text;
    const value = Number(number.replace(/[−–]/g, '-').replace(',', '.'));
    if (!Number.isFinite(value)) return text;
    if (countsSteps) return String(value * steps);
    const turned = counts ? value / steps : value;
    if (unit === 'turns') return counts ? String(turned) : text;
    return UNITS[unit].base === 'mm' && motion !== undefined ? `${turned * motion} mm` : text;
  };

export const asCounted = ({ exercise: { unit, steps }, outcomes }: Item, text: string): string =>
  inCounts(text, {
    unit,
    of: steps.at(-1)?.as,
    steps: outcomes.map((o) => (o.ok ? o.inputs.k : undefined)).find((k) => k !== undefined),
  });
