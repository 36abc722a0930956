/** Wie Zahlen und Aufzählungen gesprochen werden. */
import type { Spoken } from '../../engine/index.ts';

export const SPOKEN_WORDS: Spoken = {
  point: ',',
  and: ' und ',
  under: (size) => `unter ${size}`,
  moreThan: (size) => `mehr als ${size}`,
  lessThan: (size) => `weniger als ${size}`,
  vast: 'größer als jede wirkliche Zahl',
  aboveNought: 'knapp über 0',
  belowNought: 'knapp unter 0',
  quote: (text) => `„${text}“`,
  characters: (count) => `${count} Zeichen`,
};
