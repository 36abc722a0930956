/**
 * Flats, points and divisions as units of an answer. A count of steps is a plain number to the engine, yet people write `2.57 flats`; and who
 * writes turns where steps are asked, or flats where turns are, has said as much, once the steps of a turn are known.
 */
import { STEP_WORDS } from '#words/papers.ts';
import { unitNamed } from '../input/quantity.ts';
import type { Item } from './exercise.ts';

/** The symbols that are counts of steps. */
const COUNTS: readonly (string | undefined)[] = ['m', 'm_j'];

/** The text with its word turned into what is asked; as it stands where there is nothing to turn. */
export const asCounted = ({ exercise: { unit, steps }, outcomes }: Item, text: string): string => {
  const [, number = '', word = ''] = /^\s*([+\-−–]?[\d.,]+)\s*(\p{L}+\.?)\s*$/iu.exec(text.slice(0, 60)) ?? [];
  if (number === '') return text;
  const counts = STEP_WORDS.includes(word.toLowerCase());
  const inTurns = unitNamed(word) === 'turns';
  const last = steps.at(-1)?.as;
  if (unit === '1' && COUNTS.includes(last) && counts) return number;
  const perTurn = outcomes.map((o) => (o.ok ? o.inputs.k : undefined)).find((k) => k !== undefined);
  if (perTurn === undefined || !(counts || inTurns)) return text;
  const value = Number(number.replace(/[−–]/g, '-').replace(',', '.'));
  if (!Number.isFinite(value)) return text;
  if (unit === '1' && COUNTS.includes(last) && inTurns) return String(value * perTurn);
  return unit === 'turns' && counts ? String(value / perTurn) : text;
};
