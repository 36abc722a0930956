/** Was von Ablesungen gesagt wird, die dieser Browser behält. */
import type * as En from '../en/readings.ts';

const withDesign = (design: string): string => (design === '' ? '' : `, beim Entwurf „${design}“`);

export const keptHere: typeof En.keptHere = (design, lasting) =>
  lasting
    ? `Die Ablesungen, die du auf dieser Seite eingegeben hast, bleiben in diesem Browser${withDesign(design)}.`
    : 'Dieser Browser hat keinen Platz für die Ablesungen oder behält nichts: Sie bleiben, bis die Seite geschlossen wird; ein Link trägt die kurzen.';
export const EMPTY_THEM = 'Leeren';
export const emptied = 'Die Ablesungen dieser Seite werden nicht mehr behalten.';
export const keptOthers: typeof En.keptOthers = (design) =>
  `Dieser Browser behält andere Ablesungen dieser Seite${withDesign(design)}: Bis du wählst, wird nichts behalten, was du hier eingibst.`;
export const PUT_BACK = 'Zurückholen';
export const TAKE_THESE = 'Stattdessen diese behalten';
export const notInLink =
  'Die Ablesungen dieses Links sind zu lang für ihn: Sie kommen nur in dem Browser zurück, in dem sie eingegeben wurden.';
export const typedBefore: typeof En.typedBefore = (design) =>
  `Auf dieser Seite wurden Ablesungen eingegeben, als kein Entwurf in Gebrauch war: Sie gehören noch nicht zu „${design}“.`;
export const tooLongToKeep: typeof En.tooLongToKeep = (most) =>
  `Die Ablesungen dieser Seite haben mehr als ${most} Zeichen; so viel behält dieser Browser nicht: Behalte ihre Datei.`;
