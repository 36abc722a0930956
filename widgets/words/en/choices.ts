/**
 * Steps of a turn; and what a reader sees of choices and lists. In English these stand under the names by which links and chapters call them
 * (`input/choices.ts`, `input/texts.ts`), so there is nothing here; another language has all of them.
 */
export const STEP_NAMES = { knob: 'division', 'twelve points': 'point', other: 'flat' } as const;

interface ChoiceWords {
  readonly says: string;
  readonly options: Readonly<Record<string, string>>;
}
export const CHOICE_WORDS: Readonly<Record<string, ChoiceWords>> = {};
/** Of a field that takes a list: what it is of. */
export const TEXT_WORDS: Readonly<Record<string, string>> = {};
