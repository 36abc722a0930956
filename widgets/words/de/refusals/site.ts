/** Was einem Autor eines Kapitels von einer Zeile gesagt wird, die nicht zu lesen ist. */
import { listed } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const SITE = {
  'adjuster-unknown': ({ name, known }) =>
    `In chapters/adjusters.md gibt es kein Stellelement „${name}“; es hat ${listed(known)}.`,
  'adjuster-has-not': ({ name, number, has }) =>
    `Das Stellelement „${name}“ sagt nichts über „${number}“; es hat ${listed(has)}.`,
  'list-with-odd-entries': ({ note }) => note,
  'line-of-no-kind': ({ line }) =>
    `„${line}“ ist keine Zahl (name = Wert) und kein Schritt (Beziehung = erwarteter Wert).`,
  'option-not-of-choice': ({ option, choice, options, near }) =>
    `„${option}“ ist keine Möglichkeit von ${choice}; ${near === undefined ? `es ist eine von: ${options.join(', ')}.` : `meinst du ${near}?`}`,
  'bounds-misspelt': ({ name, start, rest }) =>
    `Hinter „${start}“ steht „${rest}“, weder eine Einheit noch Grenzen; schreibe es wie ${name} = ${start} from KLEINSTES to GRÖSSTES.`,
  'input-unknown': ({ name, near }) =>
    `„${name}“ ist kein Zeichen des Rechenwerks (widgets/engine/kernel/symbols.ts), keine Auswahl, keine Liste und kein Gewinde${near === undefined ? '; prüfe die Schreibung.' : `; meinst du ${near}?`}`,
  'start-out-of-bounds': ({ name, start }) => `${name} beginnt bei ${start}, außerhalb seiner eigenen Grenzen.`,
  'nothing-expected': ({ step }) =>
    `„${step}“ sagt nicht, was du erwartest; schreibe es ans Ende, etwa „= 87.50 µm“ (npm run ask druckt es).`,
  'expected-without-unit': ({ text, unit }) => `„${text}“ hat keine Einheit; schreibe zum Beispiel „${text} ${unit}“.`,
  'not-a-relation': ({ name, near }) =>
    `„${name}“ ist keine Beziehung des Rechenwerks; ${near === undefined ? 'npm run ask listet sie auf.' : `meinst du ${near}?`}`,
  'relation-gives-nothing': ({ relation }) => `${relation} gibt nichts.`,
  'name-not-a-symbol': ({ name, near }) =>
    `„${name}“ ist kein Zeichen des Rechenwerks (widgets/engine/kernel/symbols.ts)${near === undefined ? '.' : `; meinst du ${near}?`}`,
  'kept-under-other-unit': ({ relation, gives, name, says }) =>
    `${relation} gibt ${gives}; es lässt sich nicht als ${name} (${says}) behalten.`,
  'input-not-taken': ({ relation, name, takes }) => `${relation} nimmt „${name}“ nicht; es nimmt ${takes.join(', ')}.`,
  'binding-unread': ({ relation, name, why }, behind) => `${relation}, ${name}: ${behind(why)}`,
  'slip-without-words': () =>
    'Ein bekannter Fehler sagt, was falsch war: Schreibe „# Du hast die Steigungen addiert …“ an sein Ende.',
  'slip-without-value': ({ why }, behind) => `Dieser Fehler hat keinen Wert: ${why ? behind(why) : ''}`,
  'slip-right-by-chance': () =>
    'Dieser Fehler gibt die richtige Antwort auf 2 % genau, darum kann ihn niemand davon unterscheiden.',
} satisfies Partial<RefusalWords>;
