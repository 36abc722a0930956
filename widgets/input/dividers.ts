/** What a turn is divided by, and lists of it as a maker writes them: `hexagon, twelve points, 50`. */

import { STEP_NAMES } from '#words/choices.ts';
import { bad, good, type Result, symbolFact } from '../engine/index.ts';
import { LONGEST_LIST } from './thread-list.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'divider-list-too-long': { readonly text: string };
    'divider-unknown': { readonly typed: string; readonly least: number; readonly most: number };
    'too-many-dividers': { readonly dividers: number; readonly most: number };
  }
}

export type Divider = 'hexagon' | 'square' | 'twelve points' | 'knob';

/** Steps in a turn of a head; only a knob has divisions of its own. */
export const stepsOf = (divider: string, divisions: number): number =>
  divider === 'hexagon' ? 6 : divider === 'square' ? 4 : divider === 'twelve points' ? 12 : divisions;

/** The head that has so many steps in a turn. */
export const dividerOf = (steps: number): Divider =>
  steps === 6 ? 'hexagon' : steps === 4 ? 'square' : steps === 12 ? 'twelve points' : 'knob';

/** What one step is called across the context. */
export const stepName = (divider: string): string =>
  divider === 'knob' || divider === 'twelve points' ? STEP_NAMES[divider] : STEP_NAMES.other;

/** Each divider is one more search. */
const MOST_DIVIDERS = 12;
const NAMED = ['hexagon', 'square', 'twelve points'];
/** As they are called in the languages of the notebook. */
const ALSO = new Map([
  ['sechskant', 'hexagon'],
  ['vierkant', 'square'],
  ['zwölfkant', 'twelve points'],
  ['keine', 'none'],
]);

/** Steps in a turn of each divider named, every count once; an empty text or “none” is an empty list. */
export const readDividers = (text: string): Result<readonly number[]> => {
  if (!(text.length <= LONGEST_LIST)) return bad('divider-list-too-long', { text });
  const found = new Set<number>();
  for (const typed of text.split(/[,;\n]/).map((p) => p.trim().replace(/\s+/g, ' ').toLowerCase())) {
    const piece = ALSO.get(typed) ?? typed;
    if (piece === '' || piece === 'none') continue;
    const [, count] = /^(?:knob (?:of )?)?(\d{1,5})(?:[ -](?:flats?|points?|divisions?|steps?))?$/.exec(piece) ?? [];
    const k = NAMED.includes(piece) ? stepsOf(piece, 1) : Number(count);
    const { min, max } = symbolFact('k');
    if (!(k >= min && k <= max)) return bad('divider-unknown', { typed: piece, least: min, most: max });
    found.add(k);
  }
  return found.size <= MOST_DIVIDERS
    ? good([...found])
    : bad('too-many-dividers', { dividers: found.size, most: MOST_DIVIDERS });
};
