/** Was um ein Kapitel und auf seinen Kästen steht: Kopf, Wege, Überschriften, Fuß. */
import type * as En from '../en/page.ts';
import type { Same } from '../same.ts';

export const NOTEBOOK = 'Differenzialschrauben, durchgerechnet';
export const NOT_TRANSLATED =
  'Diese Seite ist noch nicht übersetzt. Ihr Text ist englisch; Felder, Bilder und Meldungen sind deutsch.';
export const TO_TEXT = 'Zum Text';
export const ALL_CHAPTERS = 'Alle Kapitel';
export const chapterNumber: typeof En.chapterNumber = (n) => `Kapitel ${n}`;
export const chapterOf: typeof En.chapterOf = (n, count, title) => `Kapitel ${n} von ${count}: ${title}`;
export const WAY = 'Abschnitte und Kapitel';
export const SECTIONS = 'In diesem Kapitel';
export const chapterOfAll: typeof En.chapterOfAll = (n, count) => `Kapitel ${n} von ${count}`;
export const NEIGHBOURS = 'Benachbarte Kapitel';
export const BACK_TO = 'Zurück zu';
export const ON_TO = 'Weiter zu';
export const foot: typeof En.foot = (licence) =>
  `Text und Bilder der Kapitel: ${licence}. Code: MIT. Jedes Ergebnis dieser Seite rechnet das Rechenwerk des Hefts; es wird beim Bauen geprüft. Ein feines Stellelement ist kein Hebezeug; die Regeln deines Betriebs, örtliche Vorschriften und zugelassene Fachleute gehen vor.`;

export const RESOURCE_TYPES: Same<typeof En.RESOURCE_TYPES> = [
  'durchgerechnetes Beispiel',
  'bewegliches Bild',
  'Aufgabe',
];
export const EDUCATIONAL_LEVEL = 'Berufsausbildung';

export const BOXES: typeof En.BOXES = {
  goal: 'Was du danach kannst',
  misconception: 'Ein häufiger Irrtum',
  caution: 'Vorsicht',
  summary: 'Kurz gesagt',
  note: '',
  doors: '',
};
export const TABLE = 'Tabelle';
export const HOW_TO_READ = 'Wie man es liest';
export const DERIVATION = 'Herleitung';
export const whyLines: typeof En.whyLines = (steps) => `Warum? ${steps} ${steps === 1 ? 'Schritt' : 'Schritte'}`;
export const CALCULATION: Same<typeof En.CALCULATION> = ['Was', 'Formel', 'Zahlen', 'Ergebnis'];
export const GIVEN_ABOVE = 'Zahlen wie oben';
export const EXAMPLE_NUMBER = 'Beispiel';
export const FIGURE_NUMBER = 'Bild';
export const cited: typeof En.cited = (kind, number) => (number === '' ? kind : `${kind}\u00a0${number}`);
export const equationNumber: typeof En.equationNumber = (number) => `Gleichung\u00a0(${number})`;
export const workedIn: typeof En.workedIn = (example) => `die Formel aus ${example}`;

export const predictionNumber: typeof En.predictionNumber = (n) => `Vorhersage ${n}`;
export const PREDICT_FIRST = 'Sage zuerst voraus';
export const COVERED_UNTIL_PREDICTED =
  'Was es sagt, ist verdeckt, bis du voraussagst, die Antwort öffnest oder eine Zahl änderst.';
export const SHOW_ANSWER = 'Antwort';

export const EXERCISE = 'Aufgabe';
export const EXERCISE_KINDS: Same<typeof En.EXERCISE_KINDS> = {
  number: 'finde eine Zahl',
  picture: 'lies ein Bild ab',
  choice: 'wähle eine Antwort',
  way: 'welche Richtung',
  flank: 'welche Flanke',
  'wrong-line': 'finde die falsche Zeile',
  order: 'bringe in Reihenfolge',
  stack: 'wähle aus einer Schublade',
  table: 'beurteile eine Tabelle',
};
export const HINT = 'Hinweis';
export const WORKED_ANSWER = 'Lösung';
export const answerLine: typeof En.answerLine = (answer, accepted) =>
  `Antwort: ${answer}<span data-between>; angenommen von ${accepted}</span>.`;

export const PAPERS = 'Arbeitsblätter';
export const PAPERS_WITHOUT_SCRIPT =
  'Arbeitsblätter stellt ein Skript in deinem Browser, das nicht gelaufen ist. Die Aufgaben der Kapitel lassen sich mit ihren Seiten drucken.';
export const CLASSWORK_WITHOUT_SCRIPT = 'Das macht ein Skript in deinem Browser, das nicht gelaufen ist.';
export const MIXED_REVIEW = 'Gemischte Wiederholung';

export const ONE_FILE_WITHOUT_SCRIPT =
  'Diese einzelne Datei braucht ein Skript, um eine Seite zu wählen. Der Ordner mit den Seiten geht auch ohne.';

export const NO_PAGE: Same<typeof En.NO_PAGE> = {
  title: 'Diese Seite gibt es nicht',
  says: 'Es ist kein Netz da, und die Kopie des Hefts in diesem Browser hat keine Seite an dieser Adresse.',
  pages: 'Die Seiten, die sie hat',
  unknown: 'Das Heft hat keine Seite „{page}“; seine Seiten stehen hier.',
};

export const takesMinutes: typeof En.takesMinutes = (minutes) => `${minutes}\u00a0min`;
export const needsChapters: typeof En.needsChapters = (numbers) => `nach ${numbers.join(', ')}`;
export const SYMBOL = 'Zeichen';
export const SYMBOL_NAME = 'Name';
export const UNIT = 'Einheit';
export const FIRST_MET = 'Zuerst in';
export const symbolUnit: typeof En.symbolUnit = (unit) =>
  unit === '1' ? 'eine Zahl' : /^turns?$/.test(unit) ? 'Umdrehung' : unit;
export const metIn: typeof En.metIn = (chapter, section) =>
  `Kapitel ${chapter}${section === undefined ? '' : `, ${section}`}`;
export const symbolFound: typeof En.symbolFound = (name, met) => `Geschrieben ${name}, zuerst in ${met}.`;
export const alsoLookedFor: typeof En.alsoLookedFor = (words) => `Auch gesucht als: ${words}.`;

export const threadLabel: typeof En.threadLabel = (name) =>
  name === 'A' ? 'Gewinde A, Grundteil zu Stellteil' : name === 'C' ? 'Gewinde C, Stellteil zu Hubteil' : 'Gewinde';
export const relationCited: typeof En.relationCited = (_name, says) => says.replace(/[:,.;].*$/, '');

export const ASK_CHECK = 'Prüfen';
export const ASK_YES = 'Ja';
export const ASK_NO = 'Nein';
