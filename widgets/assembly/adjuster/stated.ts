/**
 * The adjuster that a page’s field of parts states. Pages that ask for threads and lengths may also ask for parts; where these are stated they rule,
 * and net lead, steps, turns and stroke are those of the record. `none` states nothing.
 */
import { bad, type Result } from '../../engine/index.ts';
import { NO_PARTS } from '../../input/texts.ts';
import type { Adjuster } from './adjuster.ts';
import { readAdjuster } from './text.ts';

/** An adjuster that a reader describes; one that can’t turn at all is refused, where a lesson may show it. */
export const describedAdjuster = (text: string): Result<Adjuster> => {
  const read = readAdjuster(text);
  if (!read.ok) return read;
  const { turns, clockwise, anticlockwise } = read.value;
  return turns > 1e-9 ? read : bad('no-turns-left', { clockwise, anticlockwise });
};

export const partsStated = (text: string): Result<Adjuster> | undefined =>
  text === NO_PARTS ? undefined : describedAdjuster(text);
