/** Ablehnungen der Pässe der Stücke. */
import { quoted, say } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/passports.ts';
import { inGerman } from '../lists.ts';

const FIELDS: Readonly<Record<string, string>> = {
  lead: 'Steigung',
  wave: 'Welle',
  wear: 'Verschleiß',
  hysteresis: 'Umkehrspanne',
  place: 'Stelle',
};

export const PASSPORTS: typeof En.PASSPORTS = {
  'passport-row-unread': ({ row, text }) =>
    `Zeile ${row} der Pässe: gelesen ${quoted(inGerman('passport', text))}; schreibe eine wie 1, 2026-11-03: Steigung 88,7 µm, neues Fett.`,
  'passport-day': ({ row, text }) =>
    `Zeile ${row} der Pässe: gelesen ${quoted(text)} als Tag; schreibe ihn als Jahr, Monat und Tag, wie 2026-11-03, oder als Tag, Monat und Jahr mit Punkten, wie 3.11.2026.`,
  'passport-value': ({ row, field, why }, reasonOf) =>
    `Zeile ${row} der Pässe, ${FIELDS[field] ?? field}: ${reasonOf(why)}`,
  'passport-lead': ({ row }) =>
    `Zeile ${row} der Pässe: Eine gemessene Steigung ist über 0 und unter 120 mm; gib eine darin.`,
  'passport-too-long': ({ rows, most }) => `Es gibt ${rows} Zeilen Pässe; behalte die letzten ${most}.`,
  'passport-lead-far': ({ foot, lead, nominal }) =>
    `Der Pass von Fuß ${foot} nennt ${say(1000 * lead)} µm je Umdrehung, und seine Gewinde geben ${say(1000 * nominal)} µm: Eines der beiden gehört zu einem anderen Stück.`,
};
