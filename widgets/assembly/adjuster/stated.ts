/**
 * The adjuster that a page’s field of parts states. Pages that ask for threads and lengths may also ask for parts; where these are stated they rule,
 * and net lead, steps, turns and stroke are those of the record. `none` states nothing.
 */
import type { Result } from '../../engine/index.ts';
import { NO_PARTS } from '../../input/texts.ts';
import type { Adjuster } from './adjuster.ts';
import { readAdjuster } from './text.ts';

export const partsStated = (text: string): Result<Adjuster> | undefined =>
  text === NO_PARTS ? undefined : readAdjuster(text);
