/** Die Sprache dieser Wörter. */
import type * as En from '../en/language.ts';
import type { Same } from '../same.ts';

export const LANGUAGE = 'de';
export const WRITTEN_IN = 'en-GB';
export const CHAPTERS = 'de';
export const SEPARATOR = ';';
export const DECIMAL_MARK = ',';
export const UNIT_WORDS: Same<typeof En.UNIT_WORDS> = {
  tenths: 'Zehntel-Thou',
  millionths: 'Millionstel',
  turns: 'Umdrehungen',
  turn: 'Umdrehung',
  d: 'd',
};
export const READINGS = 'Messwerte';
export const SENSE: Same<typeof En.SENSE> = { right: 'rechts', left: 'links' };
