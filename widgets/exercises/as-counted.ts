/**
 * Flats, points and divisions as units of an answer, and angles. A count of steps is a plain number to the engine, yet people write `2.57 flats`; and who
 * writes turns or degrees where steps are asked, or flats or degrees where turns are, has said as much, once the steps of a turn are known. A motion can
 * be said so too, where a pair gives the motion of a turn.
 */
import { STEP_WORDS } from '#words/papers.ts';
import { UNITS, type Unit } from '../engine/index.ts';
import { readNumber, unitNamed } from '../input/quantity.ts';
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

/** Parts of a turn that need no count of steps. */
const OF_TURN: Partial<Record<Unit, number>> = { turns: 1, '°': 1 / 360, rad: 1 / (2 * Math.PI) };

/** The text with its word turned into what is asked; as it stands where there is nothing to turn. */
export const inCounts = (text: string, { unit, of, steps, motion }: Counted): string => {
  const [, number = '', word = ''] =
    /^\s*([+\-−–]?\s*[\d.,/]+)\s*(\p{L}+\.?|[°º˚])\s*$/iu.exec(text.slice(0, 60)) ?? [];
  if (number === '') return text;
  const counts = STEP_WORDS.includes(word.toLowerCase());
  const countsSteps = unit === '1' && COUNTS.includes(of);
  if (countsSteps && counts) return number;
  const named = unitNamed(word);
  const share = counts ? steps && 1 / steps : named && OF_TURN[named];
  const typed = readNumber(number.replace(/\s/g, ''));
  if (share === undefined || named === unit || !typed.ok) return text;
  const turned = typed.value * share;
  if (countsSteps) return steps === undefined ? text : String(turned * steps);
  if (unit === 'turns') return String(turned);
  // A bare angle, such as that of a wedge, can be said in turns too, though nothing turns.
  if (unit === '°') return counts ? text : `${turned * 360}°`;
  return UNITS[unit].base === 'mm' && motion !== undefined ? `${turned * motion} mm` : text;
};

export const asCounted = ({ exercise: { unit, steps }, outcomes }: Item, text: string): string =>
  inCounts(text, {
    unit,
    of: steps.at(-1)?.as,
    steps: outcomes.map((o) => (o.ok ? o.inputs.k : undefined)).find((k) => k !== undefined),
  });
