/** Ablehnungen eines in Worten beschriebenen Stellelements: Jede nennt das Teil, das zu ändern ist. */
import { listed, quoted, say, spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/adjuster.ts';
import { WORDS } from '../adjuster.ts';
import { partKind } from '../kinds.ts';
import { inGerman } from '../lists.ts';

const PART = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' } as const;
const OF_PART = { base: 'des Grundteils', turned: 'des Stellteils', carried: 'des Hubteils' } as const;
const typed = (text: string): string => inGerman('adjuster', text);
const words = (all: readonly string[]): string => listed(all.map(typed));
const mm = (x: number): string => `${say(x)} mm`;

export const ADJUSTER: typeof En.ADJUSTER = {
  'adjuster-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(typed(text))}; die Beschreibung eines Stellelements hat höchstens ${most} Zeichen: Lass etwas weg.`,
  'adjuster-row-unread': ({ row, keys }) =>
    `Gelesen: ${quoted(typed(row))}; eine Zeile beginnt mit ${words(keys)} und einem Gleichheitszeichen: Schreibe eines davon.`,
  'adjuster-row-twice': ({ key }) => `Die Zeile ${typed(key)} gibt es zweimal: Lass eine weg.`,
  'adjuster-part-missing': ({ role }) =>
    `Das ${PART[role]} fehlt: Schreibe eine Zeile wie ${role === 'base' ? 'Grundteil = Gewindeblock M10x1,5, 20 mm' : 'Stellteil = Gewindebolzen M10x1,5, 3/8-16 UNC'}.`,
  'part-kind-unread': ({ role, text, kinds }) =>
    `Gelesen: ${quoted(typed(text))} als ${PART[role]}; die Zeile beginnt mit der Art des Teils: ${words(kinds)}.`,
  'part-phrase-unread': ({ role, phrase }) =>
    `${quoted(typed(phrase))} in der Zeile ${OF_PART[role]} ist nicht bekannt; nenne ein Maß mit seiner Einheit (Körper, Kopf, Hals, Sechskant, Breite, Höhe oder Gewinde), etwa Sechskant 17 mm, oder Anzahl 2 für zwei davon.`,
  'part-thread-unread': ({ role, because }, behind) => `${PART[role]}: ${behind(because)}`,
  'part-length-unread': ({ role, phrase }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${OF_PART[role]} als Länge; schreibe ihre Einheit, mm, in oder thou, hinter die Zahl.`,
  'part-word-unread': ({ role, phrase, materials }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${OF_PART[role]}; ein Wort ist dort ein Werkstoff (${words(materials)}), Grundloch, durchgehend oder auf dem Boden: Schreibe eines davon oder lass es weg.`,
  'part-length-outside': ({ role, phrase, most }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${OF_PART[role]}; eine Länge ist über 0 mm und höchstens ${mm(most)}: Gib eine darin an.`,
  'part-coat-outside': ({ role, phrase, most }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${OF_PART[role]}; eine Schicht ist auf jeder Fläche von 0 bis ${say(1000 * most)} µm dick: Schreibe sie wie Schicht 5 µm.`,
  'part-count-outside': ({ role, phrase }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${OF_PART[role]}; von einem Teil gibt es mindestens eines: Schreibe Anzahl 1 oder lass es weg.`,
  'limits-of-other-side': ({ part, written, gender }) =>
    gender === 'external'
      ? `${written} gehört zu einer Mutter, und dieses Gewinde (${partKind(part)}) ist eine Schraube: Schreibe eine Toleranzklasse wie 6g oder 2A, oder d2 wie gemessen, und ${written} beim Gegenstück.`
      : `${written} gehört zu einer Schraube, und dieses Gewinde (${partKind(part)}) ist eine Mutter: Schreibe eine Toleranzklasse wie 6H oder 2B, oder D2 wie gemessen, und ${written} beim Gegenstück.`,
  'row-phrase-unread': ({ key, phrase, like }) =>
    `Gelesen: ${quoted(typed(phrase))} in der Zeile ${typed(key)}; schreibe es wie ${typed(like)}.`,
  'springs-drawing-lacks': ({ lacks }) =>
    `In der Zeichnung der Federn fehlt ${words(lacks)}: Ergänze es in der Zeile Federn, oder gib stattdessen eine Rate in N/mm an.`,
  'springs-size-of-none': ({ shape, size, takes }) =>
    `Gelesen: ${quoted(typed(size))} in der Zeile Federn; eine Feder wie ${quoted(typed(shape))} hat ${words(takes)}: Lass ${typed(size)} weg oder nenne eine andere Form.`,
  'springs-rate-and-drawing': ({ phrase }) =>
    `Gelesen: ${quoted(typed(phrase))} neben einer Zeichnung der Federn, aus der ihre Rate folgt: Lass eines von beiden weg.`,
  'springs-in-two-rows': ({ phrase }) =>
    `Gelesen ${quoted(typed(phrase))} in der Zeile Verdrehsicherung neben einer Zeile Federn: Schreibe Verdrehsicherung = Federn und den Rest in die Zeile Federn.`,
  'divisions-outside': ({ text }) =>
    `Gelesen: ${quoted(typed(text))} Skalenteile; ein Drehknopf hat 2 bis 10000: Gib eine Zahl darin an.`,
  'thread-longer-than-part': ({ part, thread, length, room }) =>
    `${spokenNumber(thread)} in diesem Teil (${partKind(part)}) ist ${mm(length)} lang, und Platz ist für ${mm(room)}: Mache das Teil länger oder das Gewinde kürzer.`,
  'threads-break-through': ({ part, inside, outside, wall }) =>
    `${spokenNumber(inside)} geht nicht in ${spokenNumber(outside)} hinein: Die Wand zwischen den Gewinden (${partKind(part)}) wäre ${spokenNumber(wall.toFixed(2)).replace('-', '−')} mm; nimm außen ein größeres oder innen ein kleineres Gewinde, oder setze sie übereinander.`,
  'threads-meet-inside': ({ part, lower, upper, over }) =>
    `In diesem Teil (${partKind(part)}) würden sich ${spokenNumber(lower)} und ${spokenNumber(upper)} um ${mm(over)} überdecken: Mache das Teil höher oder die Gewinde kürzer.`,
  'hexagon-too-narrow': ({ part, width, least }) =>
    `Dieses Teil (${partKind(part)}) ist ${mm(width)} breit, und was darin gebohrt ist, braucht ${mm(least)}: Mache es breiter.`,
  'part-wants-threads': ({ part, role, wanted, got }) =>
    `Als ${PART[role]} hat ${part} ${wanted === 1 ? 'ein Gewinde' : 'zwei Gewinde'}, und ${got === 0 ? 'keines wurde' : got === 1 ? 'eines wurde' : `${got} wurden`} gelesen: Schreibe ${wanted === 1 ? 'eines, etwa M10x1,5' : 'beide, das untere zuerst'}.`,
  'part-in-wrong-place': ({ part, role, instead }) =>
    `Dieses Teil (${partKind(part)}) kann nicht das ${PART[role]} sein: Nimm ${words(instead)}.`,
  'part-wants-genders': ({ part }) =>
    `Dieses Teil (${partKind(part)}) hat an einem Ende eine Schraube und am anderen eine Mutter: Schreibe außen hinter das eine Gewinde und innen hinter das andere.`,
  'ends-do-not-meet': ({ joint, lower, upper, because, lowerThread, upperThread }) =>
    because === 'gender'
      ? `Gewinde ${joint} kann ${lower} und ${upper} nicht verbinden: Eines der beiden Enden muss eine Schraube sein und das andere eine Mutter.`
      : `Gewinde ${joint} kann ${lower} und ${upper} nicht verbinden: Eines hat ${spokenNumber(lowerThread)}, das andere ${spokenNumber(upperThread)}. Gib beiden dasselbe Gewinde.`,
  'assembled-outside': ({ joint, out, most }) =>
    `Gewinde ${joint} ist ${mm(out)} aus der Endlage zusammengebaut; 0 mm bis ${mm(most)} sind möglich: Beginne darin.`,
  'upper-thread-joins-nothing': ({ part, thread }) =>
    `Das obere Gewinde (${partKind(part)}), ${spokenNumber(thread)}, verbindet nichts: Gib eine Zeile für das Hubteil dazu oder nimm eine Schraube, die ein Gewinde hat.`,
  'no-turns-left': ({ clockwise, anticlockwise }) =>
    `So zusammengebaut lässt es sich nicht drehen: im Uhrzeigersinn ${WORDS.stop(clockwise)}, und dagegen ${WORDS.stop(anticlockwise)}; beginne weiter außen, in der Zeile zusammengebaut.`,
  'part-size-unused': ({ part, size, takes }) =>
    `Dieses Teil (${partKind(part)}) hat kein eigenes Maß „${typed(size)}“: Gib ${words(takes)} an oder lass es weg.`,
  'assembled-inside-another': ({ lower, upper, ground }) =>
    ground
      ? `So zusammengebaut stünde ein Teil (${partKind(upper)}) im Boden: Mache das Grundteil oder das Stellteil höher oder seine Schraube kürzer.`
      : `So zusammengebaut stünde ein Teil (${partKind(upper)}) in einem anderen (${partKind(lower)}): Mache das Stellteil länger oder beginne weiter außen.`,
  'joint-too-short': ({ joint, kept, length, gender }) => {
    const side = gender === 'external' ? 'Schraube' : 'Mutter';
    return `Gewinde ${joint} muss ${mm(kept)} im Eingriff behalten, aber seine ${side} ist ${mm(length)} lang und lässt keinen Hub: Mache die ${side} länger oder behalte weniger.`;
  },
  'joint-without-room': ({ joint, part, ground }) =>
    ground
      ? `Gewinde ${joint} hat keinen Hub übrig: Ein Teil (${partKind(part)}) berührt den Boden, bevor sein Gewinde hält. Mache das Grundteil höher oder diese Schraube kürzer.`
      : `Gewinde ${joint} hat keinen Hub übrig: Ein Teil (${partKind(part)}) stößt an seinen Nachbarn, bevor sein Gewinde hält. Mache dieses Gewinde länger oder die Bohrung tiefer.`,
};
