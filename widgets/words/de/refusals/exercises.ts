/** Warum eine Aufgabe nichts zu fragen hat, eine Liste keine Klasse ist und ein Link keine Blätter stellt. */
import { listed, quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const EXERCISES = {
  'step-without-result': ({ step, why }, behind) => `Schritt ${step} hat kein Ergebnis: ${behind(why)}`,
  'no-answering-step': () => 'Es gibt keinen Schritt, der sie beantwortet.',
  'answer-nought': () => 'Die Antwort ist null.',
  'answer-of-odd-size': ({ amount, unit, least, most }) =>
    `Die Antwort ist ${amount} ${unit}; frage in einer Einheit, in der sie von ${least} bis ${most} ist.`,
  'slip-gives-answer': ({ says }) =>
    `Der Fehler „${says}“ gibt die richtige Antwort, darum kann ihn niemand davon unterscheiden.`,
  'too-few-to-choose': () => 'Es gibt weniger als drei verschiedene Antworten; gib einen bekannten Fehler dazu.',
  'formula-cut-off': ({ formula }) => `„${formula}“ bricht ab; am Ende fehlt etwas.`,
  'formula-bracket-open': ({ formula }) => `„${formula}“ hat eine Klammer, die nicht geschlossen wird.`,
  'formula-name-unknown': ({ name }) => `„${name}“ ist keine Zahl dieser Aufgabe und kein Ergebnis ihrer Schritte.`,
  'formula-unread': ({ formula, from }) => `„${formula}“ lässt sich ab „${from}“ nicht lesen.`,
  'formula-without-value': ({ formula }) => `„${formula}“ hat mit diesen Zahlen keinen Wert.`,

  'roster-empty': () =>
    'Die Liste ist leer; füge einen Namen oder ein Kürzel je Zeile ein, dann bekommt jeder ein eigenes Blatt.',
  'roster-too-long': ({ names, most }) =>
    `Die Liste hat ${names} Namen; höchstens ${most} Blätter werden auf einmal gestellt: Füge sie in Teilen ein.`,
  'roster-line-too-long': ({ line, text, most }) =>
    `Zeile ${line} der Liste, ${quoted(text)}, ist länger als ${most} Zeichen: Kürze sie oder schreibe jeden Namen in seine eigene Zeile.`,
  'class-code-empty': () => 'Das Kennwort der Klasse ist leer; gib eines ein, etwa 7B-Herbst.',
  'class-code-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; das Kennwort einer Klasse hat höchstens ${most} Zeichen: Kürze es.`,

  'link-of-other-bank': ({ asked, held }) =>
    `Dieser Link verlangt die Aufgabensammlung ${quoted(asked)}; dieses Heft hat ${held}. Seine Blätter hätten andere Zahlen: Öffne den Link mit dem Heft, mit dem er gemacht wurde, oder stelle hier neue Blätter.`,
  'link-chapter-unknown': ({ chapter }) =>
    `Dieser Link verlangt Aufgaben aus ${quoted(chapter)}, das kein Kapitel mit Aufgaben ist: Wähle die Kapitel unten.`,
  'link-asks-too-many': ({ count, most }) =>
    `Dieser Link verlangt ${count} Aufgaben eines Kapitels; höchstens ${most} werden gestellt: Wähle unten.`,
  'link-form-unknown': ({ form, forms }) =>
    `Der Link verlangt Aufgaben ${quoted(form)}; die Formen hier sind ${listed(forms)}: Wähle unten eine.`,
  'not-found-backwards': ({ name }) =>
    `${name} lässt sich nicht aus der Antwort finden; frage nach einer Größe, welche die Schritte nehmen.`,
  'ideas-unread': ({ text, columns }) =>
    `Gelesen: ${quoted(text)}; eine Datei mit Vorstellungen beginnt mit der Zeile ${columns.join(',')}: Nimm eine, die auf der Seite der Vorstellungen gespeichert wurde.`,
  'ideas-line-unread': ({ line, text }) =>
    `Zeile ${line}, ${quoted(text)}, ist keine Antwort auf die Fragen nach Vorstellungen: Speichere die Datei auf jener Seite neu.`,

  'lab-pairs-empty': () => 'Kein Paar ist gegeben; schreibe eines je Zeile, etwa M10×1,5 + 3/8-16.',
  'lab-pairs-many': ({ pairs, most }) => `Es sind ${pairs} Paare; höchstens ${most} werden genommen: Kürze die Liste.`,
  'lab-pair-unread': ({ line, text }) =>
    `Zeile ${line} der Paare, ${quoted(text)}, ist kein Paar; schreibe zwei Gewinde mit einem Plus dazwischen, etwa M10×1,5 + 3/8-16.`,
  'lab-pair-side': ({ line, why }, behind) => `Zeile ${line} der Paare: ${behind(why)}`,
  'lab-pair-idle': ({ line, text }) =>
    `Zeile ${line} der Paare, ${quoted(text)}, bewegt nichts: Die beiden Steigungen sind gleich. Wähle zwei verschiedene.`,
  'lab-units-mixed': ({ line, unit, before }) =>
    `Zeile ${line} der Ablesungen ist in ${unit}, eine frühere in ${before}: Schreibe alle in einer Einheit.`,
  'grid-empty': () =>
    'Das Raster ist leer; füge das ausgefüllte Raster mit seinem Kopf aus der Tabellenkalkulation ein.',
  'grid-too-long': ({ characters, most }) =>
    `Das Raster hat ${characters} Zeichen; höchstens ${most} werden gelesen: Füge es in Teilen ein.`,
  'grid-without-names': ({ text }) =>
    `Die erste Zeile, ${quoted(text)}, nennt keine Aufgabe; beginne mit dem Kopf des leeren Rasters.`,
  'grid-keys-unknown': ({ keys }) =>
    `Das Raster nennt ${listed(keys.slice(0, 3).map(quoted))}, die diese Blätter nicht haben: Stelle dieselben Blätter über ihren Link neu und füge es dann ein.`,
  'own-marks-odd': ({ text, most }) => `Gelesen: ${quoted(text)}; Punkte sind eine ganze Zahl von 0 bis ${most}.`,
  'own-place-unknown': ({ place, places }) =>
    `${place} ist keine Stelle dieser Aufgabe; es gibt ${listed(places.map((one) => `{${one}}`))}.`,
  'own-place-missing': ({ place }) =>
    `Die Frage nennt ${place} nicht mehr, das für jeden gezogen wird: Setze es dorthin, wo es hingehört.`,
  'own-size-unread': ({ name, why }, behind) => `Eine Größe für {${name}}: ${behind(why)}`,
  'own-sizes-twice': ({ name, size }) =>
    `Die Größen für {${name}} enthalten ${quoted(size)} zweimal; nimm eine heraus.`,
  'own-items-few': ({ sound, tried, why }, behind) =>
    `Mit diesen Größen sind nur ${sound} von ${tried} Aufgaben brauchbar; wähle andere.${why ? ` Eine der übrigen: ${behind(why)}` : ''}`,
  'own-draws-few': ({ draws, least }) =>
    `Aus diesen Größen ${draws === 1 ? 'wird nur eine Aufgabe' : `werden nur ${draws} Aufgaben`}, und eine Klasse braucht mindestens ${least}: gib mehr Größen an, durch Semikolon getrennt.`,
  'own-file-unread': () => 'Das ist keine Datei mit geänderten Aufgaben; öffne eine, die hier gespeichert wurde.',
  'own-question-empty': () => 'Die Frage ist leer; schreibe sie, mit ihren Stellen in geschweiften Klammern.',
  'plan-lessons-odd': ({ text, most }) => `Gelesen: ${quoted(text)}; es gibt 1 bis ${most} Stunden.`,
  'plan-minutes-odd': ({ text, least, most }) =>
    `Gelesen: ${quoted(text)}; eine Stunde hat ${least} bis ${most} Minuten.`,
  'plan-without-chapters': () => 'Kein Kapitel ist gewählt; kreuze die an, die der Kurs nimmt.',
  'project-none': ({ taps }) =>
    `Kein Paar mit diesen Gewindebohrern (${taps}) kommt nahe; verlange eine größere Bewegung oder nimm beide Arten.`,
} satisfies Partial<RefusalWords>;
