/** Exercises of chapters that are not translated stand in the language in which the notebook is written; what says them says so. */
import { LANGUAGE } from '#words/language.ts';
import type { Exercise, Item } from './exercise.ts';

type Spoken = Pick<Exercise, 'lang'>;

/** As attributes of an element, in HTML. */
export const langOf = ({ lang }: Spoken): { readonly lang?: string } => (lang === undefined ? {} : { lang });
/** The language of its words, in which the chapter was written. */
export const languageOf = ({ lang = LANGUAGE }: Spoken): string => lang;
/** As text, behind the name of an element. */
export const langText = ({ lang }: Spoken): string => (lang === undefined ? '' : ` lang="${lang}"`);

/** Whether the chapter says this of a wrong answer, rather than the notebook. */
export const saidByChapter = ({ slips, hint, exercise }: Item, says: string): boolean =>
  says === hint ||
  slips.some((slip) => slip.rule !== undefined && slip.says === says) ||
  exercise.slips.some((rule) => rule.says === says);
