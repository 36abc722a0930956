/** Was das Skript einer Seite sagt: Knöpfe, Namen, Hinweise und Urteile. */
import { spokenNumber } from '../../engine/index.ts';
import type * as En from '../en/client.ts';
import type { Same } from '../same.ts';

export const LENGTHS_IN = 'Längen in';
export const UNIT_FACES: Same<typeof En.UNIT_FACES> = { metric: 'mm, µm', inch: 'Zoll, thou', both: 'beides' };
export const OWN_NUMBERS = 'Zahlen des Kapitels';
export const withoutFields: typeof En.withoutFields = (names, more) =>
  `Der Link nennt ${names.join(', ')}${more > 0 ? ` und ${more} weitere` : ''}, wofür diese Seite kein Feld hat: Sieh die Zahlen unten durch und gib ein, was fehlt.`;
export const linkWithoutUnits: typeof En.linkWithoutUnits = (stated, more) =>
  `Der Link nennt ${stated.join(', ')}${more > 0 ? ` und ${more} weitere` : ''} ohne Einheit, und diese Seite behält ihre eigene Zahl: Gib ein, was gemeint ist, mit seiner Einheit, N/mm oder N/µm.`;
export const leftNumbers: typeof En.leftNumbers = (back, away) =>
  [
    back ? 'Was du auf dieser Seite eingestellt hast, ist wieder da.' : '',
    away.length > 0 ? `Dein Entwurf oder deine Ablesungen geben jetzt anderes für: ${away.join('; ')}.` : '',
  ]
    .join(' ')
    .trim();
export const FORMULA = 'Formel';

export const DONE = '✓ erledigt';
export const tasksOf: typeof En.tasksOf = (done, all) => `${done} von ${all}`;
export const I_HAVE_DONE_IT = 'Dieses Kapitel ist erledigt';
export const IN_PLACE: typeof En.IN_PLACE = (chapter, section) => `${chapter}, ${section}`;
export const continueAt: typeof En.continueAt = (place) => `Weiter: ${place}`;

export const SMALL_WORDS: typeof En.SMALL_WORDS = new Set(
  [
    'aber als am an auf aus bei das dass dem den der des die du ein eine einem einen einer',
    'es für habe haben hat ich im in ist kann man mein meine mit nicht oder sich sie sind so',
    'und von was wenn wer wie wir wo zu zum zur über',
  ].flatMap((words) => words.split(' ')),
);
export const ONE_OF_MANY: typeof En.ONE_OF_MANY = (word) => word;
export const SEARCH = 'Suche';
export const SEARCH_MISSING = 'Das Verzeichnis der Suche kam nicht an: Lade die Seite neu.';
export const foundCount: typeof En.foundCount = (count) => (count === 1 ? 'Eine Stelle' : `${count} Stellen`);
export const NOTHING_FOUND: typeof En.NOTHING_FOUND = (typed) => `Zu „${typed.trim()}“ ist nichts zu finden.`;
export const TO_GLOSSARY = 'Alle Begriffe und Zeichen';
export const FOUND_IN: typeof En.FOUND_IN = (kind, page) => (kind === 'term' ? 'ein Begriff' : page);

export const SYMBOL_CARD = 'Was das Zeichen bedeutet';
export const symbolValue: typeof En.symbolValue = (unit, value, where) =>
  `Einheit: ${unit}. ${where === '' ? 'Hier' : where}: ${value}.`;
export const metFirst: typeof En.metFirst = (place) => `Zuerst in ${place}`;
export const SYMBOLS_BY_KEYS = 'Pfeiltasten gehen zu den anderen Zeichen.';

export const PRINTING = 'Drucken';
export const ON_PAPER =
  'Drucke zum Lesen, nur mit den Antworten, die du geöffnet hast; als Arbeitsblatt, mit Fragen und Platz zum Rechnen; oder mit allen Antworten.';
export const PRINT_THIS = 'Nur dieses Blatt drucken';
export const PRINT_TO_READ = 'Zum Lesen drucken';
export const PRINT_WORKSHEET = 'Als Arbeitsblatt drucken';
export const PRINT_WITH_ANSWERS = 'Mit allen Antworten drucken';
export const WORKSHEET_HEAD = 'Name: ______________________________   Datum: ______________';

export const PROJECTOR = 'Ansicht für den Raum';
export const SHOW_LARGE = 'Groß zeigen';
export const NEXT_STEP = 'Nächster Schritt';
export const SHOW_NEXT_STEP = 'Nächsten Schritt zeigen';
export const SHOW_READINGS = 'Ablesungen zeigen';
export const HIDE_READINGS = 'Ablesungen verbergen';
export const NEXT_ONE = 'Weiter';
export const ONE_BEFORE = 'Zurück';
export const CLOSE = 'Schließen';
export const CLOSE_PROJECTOR = 'Ansicht für den Raum schließen';
export const placeOf: typeof En.placeOf = (n, count) => `${n} von ${count}`;

export const SCRIPT_MISSING =
  'Das Skript dieses Bildes wurde nicht geladen. Das Bild behält die Zahlen des Kapitels: Lade die Seite neu, dann folgt es deinen.';
export const NOT_YET_YOURS =
  'Dieses Bild hatte deine Zahlen noch nicht übernommen und fehlt darum. Warte eine Sekunde und drucke noch einmal.';
export const pictureKept: typeof En.pictureKept = (reason) =>
  `${reason} Das Bild behält die letzten Zahlen, die sich zeichnen lassen.`;
export const SAVE_AS_CSV = 'Als CSV speichern';

export const stepTold: typeof En.stepTold = (label, says) => `${label}: ${says}`;
export const SMALLER_THREAD = 'nächstkleineres Normgewinde';
export const LARGER_THREAD = 'nächstgrößeres Normgewinde';
export const STEP_LESS = 'ein Schritt weniger';
export const STEP_MORE = 'ein Schritt mehr';
export const goodValueKept: typeof En.goodValueKept = (reason) => `${reason} Der letzte gute Wert gilt weiter.`;
export const threadKept: typeof En.threadKept = (reason, thread) =>
  `${reason} Die Bilder behalten ${spokenNumber(thread)}.`;
export const EMPTY_FIELD = 'Feld leeren';
export const goesOn: typeof En.goesOn = (characters) => `… und so weiter, zusammen ${characters} Zeichen`;

export const ASK_BEHIND = 'Hinter dieses Ergebnis fragen: ein anderes wünschen, woher es kommt, wie sicher es ist';

export const SET_PREDICTION = 'Meine Vorhersage festhalten';
const bareNumber = (unit: string): string => (unit === '1' ? '' : ` (eine Zahl ohne Einheit zählt als ${unit})`);
export const yourPrediction: typeof En.yourPrediction = (unit) => `Deine Vorhersage${bareNumber(unit)}`;
export const beyondAny: typeof En.beyondAny = (typed, says, tooLarge) =>
  `Gelesen: ${typed}. Das liegt hier außerhalb des Bereichs (${says}): Gib eine ${tooLarge ? 'kleinere' : 'größere'} Zahl ein.`;
export const predictedRight: typeof En.predictedRight = (right) => `Ja: ${right}.`;
export const predictedWrong: typeof En.predictedWrong = (yours, right) => `Du hast ${yours} gesagt; es sind ${right}.`;
export const predictedStill: typeof En.predictedStill = (right) =>
  `Du hast gesagt, es bewegt sich nicht; es bewegt sich um ${right}.`;
export const predictedOtherWay: typeof En.predictedOtherWay = (yours, right) =>
  `Richtiger Betrag, falsche Richtung: Du hast ${yours} gesagt, es sind ${right}.`;
export const predictedSlip: typeof En.predictedSlip = (yours, right, slip) =>
  `Du hast ${yours} gesagt; es sind ${right}. ${slip}`;
export const predictedOff: typeof En.predictedOff = (yours, right, by) =>
  `Du hast ${yours} gesagt; es sind ${right}, ${by}.`;
export const THE_OTHER_WAY = 'in die andere Richtung';
export const NOT_FAR_OFF = 'nicht weit weg';
export const overAMillionTimes: typeof En.overAMillionTimes = (less) =>
  `mehr als eine Million Mal ${less ? 'weniger' : 'mehr'}`;
export const timesAs: typeof En.timesAs = (times, less) => `${times} mal ${less ? 'weniger' : 'mehr'}`;
export const scaleOf: typeof En.scaleOf = (yours, right) =>
  `Deine Vorhersage ${yours} und die Antwort ${right} auf einer Skala der Verhältnisse`;
export const yoursOnScale: typeof En.yoursOnScale = (yours, onScale) =>
  `du: ${yours}${onScale ? '' : ', außerhalb der Skala'}`;
export const engineOnScale: typeof En.engineOnScale = (right) => `gerechnet: ${right}`;

export const WAY_ASKED = 'In welche Richtung geht es?';
export const FLANK_ASKED = 'Welche Flanke liegt an?';
export const DIAL_ASKED = 'Wo steht der lange Zeiger, in Skalenteilen? Minus ist gegen den Uhrzeigersinn.';
export const drawnWay: typeof En.drawnWay = (way, yours) => `${yours ? 'du' : 'gerechnet'}: ${way}`;
export const drawnFlank: typeof En.drawnFlank = (flank, yours) => `${yours ? 'du' : 'gerechnet'}: ${flank}`;
export const CURVE_SET =
  'Setze die sieben Punkte: Tippe dorthin, wo jeder stehen soll, oder ziehe ihn. Mit Tasten: gehe von Punkt zu Punkt und benutze die Pfeile.';
export const curvePoint: typeof En.curvePoint = (at) => `Der Punkt bei ${at}`;
export const CURVE_KEY = 'Gestrichelt, mit Punkten: deine. Volle Linie: gerechnet.';
export const NOTHING_DRAWN = 'Setze zuerst die Punkte. Die Antwort lässt sich auch so öffnen.';
export const BAR_ASKED: typeof En.BAR_ASKED = (known) => `Wie hoch ist dein Balken, in Prozent des Balkens „${known}“?`;
export const barYours = 'du';
export const barAnswer = 'gerechnet';
export const NOTHING_CHOSEN = 'Wähle zuerst eine Antwort. Die Antwort lässt sich auch so öffnen.';

export const CHECK = 'Prüfen';
export const ANOTHER_EXERCISE = 'Eine andere Aufgabe';
export const PUT_ON_FIGURE = 'Diese Zahlen im Bild zeigen';
export const notOnFigure: typeof En.notOnFigure = (without) => `Das Bild hat kein Feld für ${without.join('; ')}.`;

export const FILL_IN: typeof En.FILL_IN = (says, unit) =>
  `Ergänze: ${says}${unit === '' || unit === '1' ? '' : `, in ${unit}`}`;
export const SHOW_STEP = 'Diesen Schritt zeigen';
export const blankFilled: typeof En.blankFilled = (result) => `Richtig: ${result}.`;
export const blankLeads: typeof En.blankLeads = (says, otherWay) =>
  otherWay
    ? 'Der richtige Betrag, aber die andere Richtung: Achte auf das Vorzeichen.'
    : `Noch nicht. Was steht in der Formel (${says})? Setze die Ergebnisse der Zeilen darüber ein, mit ihren Einheiten.`;

export const dueSays: typeof En.dueSays = (count) =>
  count === 0
    ? 'Heute ist nichts fällig.'
    : count === 1
      ? 'Heute ist eine Aufgabe fällig.'
      : `Heute sind ${count} Aufgaben fällig.`;
export const reviewDue: typeof En.reviewDue = (count) => `${dueSays(count)} Zur gemischten Wiederholung.`;
export const NEW_NUMBERS = 'Neue Zahlen';
export const ANSWER_OFFERED = 'Die Antwort steht darunter, eingeklappt. Öffnest du sie, zählt diese Runde nicht.';
export const COPIED =
  'Die Antwort war offen, darum zählt diese Runde nicht. Nimm neue Zahlen und versuche es noch einmal.';
export const SHOW_REST = 'Den Rest zeigen';
export const yourAnswer: typeof En.yourAnswer = (unit) => `Deine Antwort${bareNumber(unit)}`;
export const YOUR_CHOICE = 'Deine Antwort';
export const YOUR_ORDER = 'Deine Reihenfolge: Verschiebe eine Zeile mit ihren Pfeilen';
export const earlier: typeof En.earlier = (line) => `Früher: ${line}`;
export const later: typeof En.later = (line) => `Später: ${line}`;
export const movedTo: typeof En.movedTo = (line, place, of) => `${line} Jetzt ${place} von ${of}.`;
export const fromChapter: typeof En.fromChapter = (title) => `Aus dem Kapitel „${title}“.`;
export const PROGRESS = 'Fortschritt';
export const EXPORT_PROGRESS = 'Fortschritt ausgeben';
export const ERASE_PROGRESS = 'Fortschritt löschen';
export const ERASE_ALL = 'Alles löschen?';
export const solvedOnce: typeof En.solvedOnce = (done, all, lasting) =>
  `${done} von ${all} mindestens einmal gelöst. ${lasting ? 'Das wird nur in deinem Browser behalten.' : 'Dieser Browser kann es nicht behalten. Es gilt, bis die Seite geschlossen wird: Speichere es in eine Datei.'}`;

export const MY_DESIGNS = 'Meine Entwürfe';
export const myDesign: typeof En.myDesign = (name) => `Mein Entwurf: ${name}`;
export const KEEP = 'Behalten';
export const KEEP_UNDER = 'Die Zahlen dieser Seite behalten unter dem Namen';
export const TAKEN_FROM = 'genommen aus dem Bild oder Beispiel';
export const SAVE_DESIGNS = 'Alle in eine Datei speichern';
export const OPEN_DESIGNS = 'Datei mit Entwürfen öffnen';
export const USE = 'Benutzen';
export const IN_USE = 'In Gebrauch';
export const REMOVE = 'Entfernen';
export const removeNamed: typeof En.removeNamed = (name) => `${name} entfernen`;
export const LINKED: string = 'Der Versteller dieser Seite kam mit einem Link, daher haben ihn andere Kapitel nicht.';
export const KEEP_LINKED: string = 'Als Entwurf behalten';
export const NONE_KEPT = 'Noch keiner.';
export const nowShown: typeof En.nowShown = (name) =>
  `Die Bilder und Beispiele, die seine Zahlen nehmen, zeigen jetzt „${name}“, hier und in den anderen Kapiteln.`;
export const removed: typeof En.removed = (name) => `„${name}“ ist entfernt.`;
export const NAME_EMPTY = 'Der Name ist leer; schreibe einen wie Fuß, hinten links.';
export const keptOf: typeof En.keptOf = (block, held) =>
  held.first.length === 0
    ? `${block} hat nichts, was ein Entwurf behält.`
    : `Behalten aus ${block}: ${held.first.join('; ')}${held.more === 0 ? '' : `; und ${held.more} weitere`}.`;
export const notKept: typeof En.notKept = (blocks) =>
  blocks.length === 0 ? '' : `Du hast auch ${blocks.join(', ')} geändert; das ist nicht behalten.`;
export const keptHere: typeof En.keptHere = (name) => `„${name}“ wird in diesem Browser behalten.`;
export const fileUnread: typeof En.fileUnread = (file) => `${file} war nicht zu lesen; wähle die Datei noch einmal.`;
export const designsRead: typeof En.designsRead = (count) =>
  `${count} ${count === 1 ? 'Entwurf wurde' : 'Entwürfe wurden'} gelesen.`;

export const fromDesign: typeof En.fromDesign = (name, { filled, all, own, typed }) =>
  `Aus deinem Entwurf „${name}“${all === 0 ? '' : all === 1 ? (filled === 0 ? ': hier nichts' : ': die eine Zahl hier') : `: ${filled === 0 ? 'keine' : filled} dieser ${all} Zahlen`}.${own === 0 ? '' : ` Die Zahlen des Kapitels: ${own}.`}${typed === 0 ? '' : ` Hier geändert: ${typed}.`}`;
export const restsOnChapter: typeof En.restsOnChapter = (names) =>
  `Das ist noch kein Urteil über deinen Entwurf. Es beruht auf Zahlen des Kapitels: ${names.join('; ')}. Gib deine ein.`;
export const ownOnPaper: typeof En.ownOnPaper = (names, all) =>
  all ? 'Alle Zahlen dieses Blatts sind die des Kapitels.' : `Zahlen des Kapitels sind hier: ${names.join('; ')}.`;
export const putAway: typeof En.putAway = (name) =>
  `Dein Entwurf „${name}“ ist weggelegt, auch auf den anderen Seiten.`;
export const USE_AGAIN: string = 'Wieder benutzen';
export const FIELDS_FROM: Same<typeof En.FIELDS_FROM> = {
  design: 'Aus deinem Entwurf',
  worked: 'Aus deinem Entwurf gerechnet',
  chapter: 'Nicht daraus, also die Zahl des Kapitels',
  refused: 'Darin, aber außerhalb des Bereichs dieses Feldes, also die Zahl des Kapitels',
  reader: 'Hier geändert',
};

export const FIRST_SHEET = 'Erstes Blatt und seine Lösung';
export const LINK_TO_SET = 'Link zu diesem Satz, ohne die Liste';
export const PRINT_SHEETS = 'Blätter drucken';
export const PRINT_KEY = 'Lösungen drucken';
export const PAPER = 'Papier';
export const PRINTERS_SIZE = 'wie der Drucker es hat';
export const papersSet: typeof En.papersSet = (papers, exercises) =>
  `${papers === 1 ? 'Ein Blatt ist' : `${papers} Blätter sind`} gestellt, je ${exercises} ${exercises === 1 ? 'Aufgabe' : 'Aufgaben'}. Das erste steht unten mit seiner Lösung; drucke für den Rest.`;
export const papersSoFar: typeof En.papersSoFar = (count, all) =>
  `${count} von ${all} Blättern bisher; drucken lassen sie sich, wenn alle gestellt sind.`;
export const fileHolds: typeof En.fileHolds = (items) =>
  `Die Datei enthält ${items} ${items === 1 ? 'Aufgabe' : 'Aufgaben'}.`;
export const howMany: typeof En.howMany = (most) => `Wie viele Aufgaben aus jedem Kapitel (0 bis ${most})`;
export const ASKED_AS = 'Gefragt';
export const FORM_NAMES: Same<typeof En.FORM_NAMES> = {
  'as-written': 'wie in den Kapiteln',
  backwards: 'rückwärts, wo es geht',
  'show-that': 'zeige, dass',
  mixed: 'gemischt durch das Los',
};
export const CLASS_CODE = 'Kennwort der Klasse';
export const ROSTER =
  'Liste: ein Name oder Kürzel je Zeile; hinter einem Semikolon „Zoll“ oder „mm“ für jemanden, der darin arbeitet, und „groß“ für jemanden, der große Schrift braucht. Sie bleibt in diesem Tab.';
export const SET_PAPERS = 'Blätter stellen';
export const questionBank: typeof En.questionBank = (version) => `Aufgabensammlung ${version}.`;
export const BANK_AS_QTI = 'Aufgabensammlung als QTI 2.1';
export const AS_NEWER_QTI = 'als QTI 3.0';
export const AS_CSV = 'als CSV';
export const LINK_FILLED_IN =
  'Der Satz des Links ist eingetragen; füge die Liste der Lernenden ein, für die er gemacht wurde.';
