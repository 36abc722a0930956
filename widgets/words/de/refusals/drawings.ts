/** Ablehnungen der Zeichnungen für die Werkstatt. */
import { listed, quoted, say } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/drawings.ts';
import { chosen } from '../choices.ts';

export const DRAWINGS: typeof En.DRAWINGS = {
  'part-larger-than-paper': ({ part, paper, length }) =>
    `Dieses Teil (${part}), ${say(length)} mm, passt in keinem Maßstab der Norm auf ${paper}: Nimm größeres Papier.`,
  'no-such-sheet': ({ sheet }) =>
    `Dieses Stellelement hat kein Blatt „${chosen('sheet', sheet)}“: Wähle ein anderes Blatt.`,
  'title-row-unread': ({ row, fields }) =>
    `Gelesen: ${quoted(row)} im Schriftfeld; schreibe eine Zeile wie number = RS-01, mit einem von ${listed(fields)}.`,
  'title-field-twice': ({ field }) => `Das Schriftfeld nennt ${field} zweimal: Lass eines weg.`,
  'title-too-long': ({ field, most }) =>
    `Was für ${field} steht, ist länger als seine Zelle: Nimm höchstens ${most} Buchstaben.`,
};
