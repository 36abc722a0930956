/** Warum dieser Browser keine Entwürfe behält und ein Formular keine Blätter stellt. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const CLIENT = {
  'shelf-of-newer-notebook': () =>
    'Dieser Browser behält Entwürfe, die dieses Heft nicht lesen kann: aus einem neueren Heft, oder zu viele. Sie bleiben, wie sie sind, darum lässt sich hier keiner behalten: Die Adresse der Seite trägt ihre Zahlen.',
  'shelf-unreadable': () =>
    'Was dieser Browser von deinen Entwürfen behielt, lässt sich nicht mehr lesen; öffne eine Datei davon, wenn du eine hast, denn Behalten überschreibt es.',
  'shelf-without-room': () =>
    'Die Entwürfe bräuchten mehr Platz, als eine Datei davon haben darf; entferne zuerst einen.',
  'shelf-full': ({ most }) => `Es gibt ${most} Entwürfe, mehr werden nicht behalten; entferne zuerst einen.`,
  'shelf-not-lasting': () =>
    'Dieser Browser wollte die Entwürfe nicht behalten (sein Speicher ist voll oder abgeschaltet). Sie gelten, bis die Seite geschlossen wird: Speichere sie in eine Datei.',
  'papers-count-odd': ({ chapter, text, most }) =>
    `${chapter}: gelesen ${quoted(text)}; gib eine ganze Zahl von 0 bis ${most}.`,
  'papers-variants-odd': ({ text, most }) => `Gelesen: ${quoted(text)}; jede Aufgabe hat 1 bis ${most} Fassungen.`,
  'papers-none-asked': () => 'Keine Aufgabe ist verlangt; schreibe eine Zahl neben mindestens ein Kapitel.',
} satisfies Partial<RefusalWords>;
