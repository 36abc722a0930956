/** Ablehnungen der Zeichnungen für die Werkstatt. */
import { listed, quoted, say } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/drawings.ts';
import { chosen } from '../choices.ts';
import { partKind } from '../kinds.ts';
import { inGerman } from '../lists.ts';

/** Ein Feld, wie es vor dem Gleichheitszeichen steht. */
const field = (name: string): string => inGerman('title', `${name} =`).slice(0, -2);

export const DRAWINGS: typeof En.DRAWINGS = {
  'part-larger-than-paper': ({ part, paper, length }) =>
    `Dieses Teil (${partKind(part)}), ${say(length)} mm, passt in keinem Maßstab der Norm auf ${chosen('paper', paper)}: Nimm größeres Papier.`,
  'no-such-sheet': ({ sheet }) =>
    `Dieses Stellelement hat kein Blatt „${chosen('sheet', sheet)}“: Wähle ein anderes Blatt.`,
  'title-row-unread': ({ row, fields }) =>
    `Gelesen: ${quoted(inGerman('title', row))} im Schriftfeld; schreibe eine Zeile wie Nummer = RS-01, mit einem von ${listed(fields.map(field))}.`,
  'title-field-twice': ({ field: name }) => `Das Schriftfeld nennt ${field(name)} zweimal: Lass eines weg.`,
  'title-too-long': ({ field: name, most }) =>
    `Was für ${field(name)} steht, ist länger als seine Zelle: Nimm höchstens ${most} Buchstaben.`,
};
