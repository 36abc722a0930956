/** Warum die Zahlen einer Seite, eines Entwurfs oder eines Schritts nicht zu nehmen sind. */
import { listed, quoted, type SymbolName, spokenNumber, symbolFact } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const named = (symbol: SymbolName): string => `${symbol} (${symbolFact(symbol).says})`;

export const ASSEMBLY = {
  'option-unknown': ({ text, says, options }) => `Gelesen: ${quoted(text)} (${says}); wähle ${options.join(', ')}.`,
  'outside-field': ({ text, label, least, most }) =>
    `Gelesen: ${quoted(text)}; dieses Feld (${label}) geht hier von ${least} bis ${most}.`,
  'seat-unknown': ({ text, seats }) =>
    `Gelesen: ${quoted(text)}, das nicht in der Tabelle steht: Nimm ${seats.join(', ')}.`,
  'nothing-to-calibrate': () =>
    'Diese beiden Gewinde haben ein und dieselbe Steigung, darum bewegt eine Umdrehung nichts; nimm zwei mit verschiedenen.',
  'least-load-above-most': ({ least, most }) =>
    `Die kleinste Last, ${least}, ist über der größten, ${most}: Gib die kleinere zuerst, und einen Zug vom Grundteil weg mit Minus.`,

  'result-fixed': ({ says }) =>
    `Keine der Zahlen hier führt zu diesem Ergebnis (${says}), darum kann keine nachgeben: Gib ein anderes Ergebnis ein.`,
  'wish-with-spread': ({ text }) =>
    `Gelesen: ${quoted(text)}; ein Wunsch ist eine einzige Zahl: Lass das ± hier weg und schreibe es oben hinter die Zahl, die es hat.`,
  'wish-of-several': ({ text }) =>
    `Gelesen: ${quoted(text)}, das ist mehr als ein Wunsch; schreibe hier eine Zahl und die anderen oben in ihre eigenen Felder.`,
  'wish-open': ({ text }) =>
    `Gelesen: ${quoted(text)}; was unbekannt ist, wird unter den Zahlen oben gesucht: Schreibe hier, was das Ergebnis werden soll, etwa 0,2 mm.`,
  'ask-no-unknown': () =>
    'Nichts ist gefragt; schreibe den Namen der gesuchten Zahl allein, etwa n, neben die bekannten.',
  'ask-two-unknowns': ({ names }) =>
    `Gelesen: ${names.length} Unbekannte, ${listed(names)}; eine lässt sich aus den anderen finden: Lass nur eine davon aus.`,
  'ask-name-unknown': ({ name }) =>
    `Gelesen: ${quoted(name)}; eine Zahl heißt nach ihrem Zeichen, und ein Gewinde heißt A, C oder thread: npm run ask listet die Zeichen auf.`,
  'ask-name-twice': ({ name }) => `${name} ist zweimal gegeben; lass eines weg.`,
  'ask-known-asked': ({ name }) => `${name} ist bekannt und gefragt; lass eines weg.`,
  'knowns-contradict': ({ symbol, read, gives, relation }) =>
    `Das Bekannte widerspricht sich: ${named(symbol)} ist als ${read} gelesen, und das andere gibt ${gives} nach ${relation}: Lass eines weg oder schreibe ${gives}.`,
  'wish-out-of-reach': ({ unknown, met, least, most, nearest, gives }) =>
    `Kein ${named(unknown)} gibt das: ${met} geht von ${least} bis ${most}; am nächsten ist ${unknown} = ${nearest}, das gibt ${gives}.`,
  'wish-without-law': ({ unknown, met }) =>
    `Kein Wert von ${named(unknown)} gibt ${named(met)} einen Wert neben dem anderen Bekannten: Sieh die anderen durch.`,
  'relation-unknown': ({ relation }) => `Eine Beziehung namens ${relation} gibt es nicht.`,
  'step-waits': () => 'Diese Zeile wartet auf die Zeile darüber.',
  'output-not-given': ({ relation, output }) => `${relation} gibt ${output} nicht.`,

  'design-file-too-long': ({ length, of, most }) =>
    `Die Datei hat ${length} ${of === 'bytes' ? 'Byte' : 'Zeichen'}; eine Datei mit Entwürfen hat höchstens ${most}. Wähle die Datei, die hier gespeichert wurde.`,
  'design-file-not-json': ({ text }) =>
    `Gelesen: ${quoted(text)}, das kein JSON oder abgeschnitten ist; wähle eine Datei, die hier gespeichert wurde und ganz ist.`,
  'design-file-of-other-kind': ({ format }) =>
    `Das ist JSON anderer Art; eine Datei mit Entwürfen sagt "format": "${format}". Wähle eine, die hier gespeichert wurde.`,
  'design-file-version': ({ version, newest }) =>
    `Die Datei nennt ${version === undefined ? 'keine Fassung' : `die Fassung ${version}`}; dieses Heft liest Fassungen bis ${newest}. Öffne sie im neueren Heft und speichere sie dort, oder erneuere dieses.`,
  'design-file-without-list': () =>
    'Die Datei enthält keine Liste von Entwürfen; wähle eine, die hier gespeichert wurde.',
  'design-file-too-many': ({ designs, most }) =>
    `Die Datei enthält ${designs} Entwürfe; höchstens ${most} werden behalten. Nimm einige heraus.`,
  'design-without-numbers': () => 'Er hat keine Zahlen.',
  'design-without-name': () => 'Er hat keinen Namen.',
  'design-number-not-text': ({ name }) => `${quoted(name)}: Eine Zahl wird als Text mit ihrer Einheit behalten.`,
  'design-number-unknown': ({ name }) => `${quoted(name)} ist keine Zahl dieses Hefts.`,
  'bench-one-thread': () => 'Die Prüfbank nimmt ein Stellelement mit zwei Gewinden; beschreibe auch ein Hubteil.',
  'bench-no-play': ({ thread }) =>
    `Die Stücke von Gewinde ${thread} gehen nicht zusammen; gib Toleranzklassen oder Durchmesser an, die Spiel lassen.`,
  'bench-places': ({ count, most }) => `${count} Stellen abzulesen; 2 bis ${most} lassen sich ablesen.`,
  'design-number-unread': ({ name, why }, behind) => `${spokenNumber(name)}: ${behind(why)}`,
} satisfies Partial<RefusalWords>;
