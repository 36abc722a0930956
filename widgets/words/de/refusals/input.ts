/** Warum eine Zahl, eine Größe oder eine Liste nicht zu lesen ist. */
import { listed, quoted, SERIES_NAMES } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { UNIT_WORDS } from '../language.ts';
import { inGerman } from '../lists.ts';

const SERIES = SERIES_NAMES.map((name) => inGerman('series', name));

const units = (takes: readonly string[]): string =>
  takes.map((unit) => (UNIT_WORDS as Readonly<Record<string, string>>)[unit] ?? unit).join(', ');

export const INPUT = {
  'list-too-long': ({ characters, most }) =>
    `Gelesen: ${characters} Zeichen; diese Liste hat höchstens ${most}: Lass einiges weg.`,
  'number-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; eine Zahl hat höchstens ${most} Zeichen: Gib sie neu ein, etwa 1,5.`,
  'number-empty': () => 'Nichts eingegeben; eine Zahl ist nötig, etwa 1,5.',
  'not-a-number': ({ text }) => `Gelesen: ${quoted(text)}, das keine Zahl ist: Schreibe eine wie 1,5, 1.5 oder 3/8.`,
  'fraction-over-nought': ({ text }) => `Gelesen: ${quoted(text)}, ein Bruch über null: Schreibe einen wie 3/8.`,
  'number-too-large': ({ text }) => `Gelesen: ${quoted(text)}, eine zu große Zahl zum Rechnen: Gib eine kleinere ein.`,
  'quantity-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; eine Größe hat höchstens ${most} Zeichen: Gib sie neu ein, etwa 1,5 mm.`,
  'quantity-too-large': ({ text }) => `Gelesen: ${quoted(text)}, zu groß zum Rechnen: Gib eine kleinere Zahl ein.`,
  'unit-unknown': ({ unit, takes }) =>
    `Gelesen: ${quoted(unit)} als Einheit, die hier nicht vorkommt: Nimm ${units(takes)}.`,
  'unit-of-other-kind': ({ text, unit, takes }) =>
    `Gelesen: ${quoted(text)}, in ${units([unit])}; hier passt ${units(takes)}.`,
  'time-without-unit': ({ text }) =>
    `Gelesen: ${quoted(text)} ohne Einheit der Zeit, und das Gesetz braucht eine: Schreibe ${quoted(`${text} h`)}, min, s oder d.`,

  'thread-list-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; eine Liste hat höchstens ${most} Zeichen: Nenne die Gewinde, die du hier benutzen würdest.`,
  'too-many-threads': ({ threads, most }) =>
    `Gelesen: ${threads} Gewinde; eine Liste enthält höchstens ${most}: Lass einige weg.`,
  'no-thread-in-list': ({ first, others }, behind) =>
    `${behind(first)}${others > 0 ? ` Auch keines der anderen ${others} ist ein Gewinde.` : ''}`,
  'series-list-too-long': ({ text }) => `Gelesen: ${quoted(text)}; nenne Reihen, etwa ${SERIES[0]}, UNF.`,
  'series-empty': () => `Nichts eingegeben; nenne Reihen (${SERIES.join(', ')}) oder „keine“.`,
  'series-unknown': ({ typed }) =>
    `Gelesen: ${quoted(inGerman('series', typed))} als Gewindereihe, die es hier nicht gibt: Nenne ${listed(SERIES)}, oder metrisch, Zoll, alle, keine.`,

  'divider-list-too-long': ({ text }) =>
    `Gelesen: ${quoted(text)}; nenne wenige Teilungen, etwa Sechskant, Zwölfkant, 50.`,
  'divider-unknown': ({ typed, least, most }) =>
    `Gelesen: ${quoted(inGerman('dividers', typed))} als Teilung einer Umdrehung; nenne Sechskant, Vierkant, Zwölfkant oder die Schritte je Umdrehung von ${least} bis ${most}, wie 50, oder keine.`,
  'too-many-dividers': ({ dividers, most }) =>
    `Gelesen: ${dividers} Teilungen; eine Liste enthält höchstens ${most}: Lass einige weg.`,

  'part-list-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; ${most} Zeichen sind hier die Grenze: Lass einige Teile weg.`,
  'too-many-parts': ({ parts, most }) =>
    `Gelesen: ${parts} Teile; höchstens ${most} werden aufgeführt: Fasse zusammen, was zusammen gekauft wird.`,
  'part-name-missing': ({ row }) =>
    `Gelesen: ${quoted(row)}; ein Teil hat einen Namen von höchstens 60 Zeichen, dann einen Doppelpunkt, Anzahl × Preis.`,
  'part-unread': ({ name, why }, behind) => `${quoted(inGerman('parts', name))}: ${behind(why)}`,
  'part-count-odd': ({ name, count }) =>
    `${quoted(inGerman('parts', name))}: gelesen ${quoted(count)} als Anzahl; vor × steht eine ganze Zahl von 1 bis 1000.`,
  'part-price-odd': ({ name, price }) =>
    `${quoted(inGerman('parts', name))}: gelesen ein Preis von ${quoted(price)}; er ist von 0 bis 1 000 000.`,

  'note-too-long': ({ characters, most }) =>
    `Gelesen: ${characters} Zeichen; ${most} passen höchstens auf das Blatt: Sage es kürzer.`,
  'not-a-day': ({ text }) =>
    `Gelesen: ${quoted(text)}, das kein Tag ist; schreibe Jahr, Monat und Tag, wie 2026-03-31, oder Tag, Monat und Jahr mit Punkten, wie 31.3.2026.`,
  'not-a-temperature': ({ text }) =>
    `Gelesen: ${quoted(text)}; gib die Temperatur des Teils von −20 °C bis 60 °C, wie 20,5 °C oder 69 °F.`,

  'spread-nought': ({ text }) =>
    `Gelesen: ± ${quoted(text)}, das nicht über null ist; lass das ± weg, wo eine Zahl genau ist.`,
  'spread-without-value': ({ text }) => `Gelesen: ${quoted(text)}; schreibe den Wert vor sein ±, wie 1,5 mm ± 2 µm.`,
  'spread-tail-unread': ({ text }) =>
    `Gelesen: ${quoted(text)} hinter einem ±; schreibe dort k = 2, oder 10 Messwerte, oder nichts.`,
  'spread-few-readings': ({ text }) => `Gelesen: ${quoted(text)}; ein ± aus Messwerten braucht mindestens zwei davon.`,
  'spread-past-range': ({ text, most }) =>
    `Gelesen: ${quoted(text)}, dessen ± über das hinausgeht, was diese Zahl sein kann; ± ${most} ist hier das meiste.`,
  'spread-past-value': ({ text, says, most }) =>
    `Gelesen: ${quoted(text)}, dessen ± größer ist als die Zahl, sodass selbst ihre Richtung offen ist; hier (${says.split(',')[0] ?? says}) ist ± ${most} das meiste.`,
  'spread-of-count': ({ text, says }) =>
    `Gelesen: ${quoted(text)}; diese Größe (${says}) wird gezählt und nicht gemessen: Lass ihr ± weg.`,
  'class-without-limits': ({ text }) =>
    `Gelesen: ${quoted(text)}; nur eine Toleranzklasse hat Grenzmaße: Schreibe sie hinter das Gewinde, wie M10×1,5-6g oder M10×1,5-6H/6g.`,
} satisfies Partial<RefusalWords>;
