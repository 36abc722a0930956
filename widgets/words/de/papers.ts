/** Was von Aufgaben und Antworten gesagt wird, auf Blättern, Lösungen und in Dateien mit Aufgaben. */
import type * as En from '../en/papers.ts';
import type { Same } from '../same.ts';

export const tenTimes: typeof En.tenTimes = (why) => `Das ist zehnmal zu viel: ${why}.`;
export const tenth: typeof En.tenth = (why) => `Das ist ein Zehntel davon: ${why}.`;
export const thousandTimes: typeof En.thousandTimes = (why) => `Das ist tausendmal zu viel: ${why}.`;
export const thousandth: typeof En.thousandth = (why) => `Das ist ein Tausendstel davon: ${why}.`;
export const INCHES_FOR_MILLIMETRES =
  'Das ist 25,4-mal zu viel: Du hast Millimeter für Zoll genommen, oder Zoll für Millimeter.';
export const MILLIMETRES_FOR_INCHES =
  'Das ist 25,4-mal zu wenig: Du hast Millimeter für Zoll genommen, oder Zoll für Millimeter.';
export const POINT_MOVED = 'ein Komma ist verrutscht';
export const TENTHS_OF_THOU = 'ein thou hat zehn Zehntel, und ein Komma verrutscht leicht';
export const LOOK_AT_PREFIX = 'achte auf den Vorsatz der Einheit';
export const LOOK_AT_UNIT = 'achte auf die Einheit, denn ein thou ist ein Tausendstel Zoll';

const UNIT_NAMES: Readonly<Record<string, string>> = {
  '°': 'Grad',
  '%': 'Prozent',
  turns: 'Umdrehungen',
  tenths: 'Zehntel-Thou',
  millionths: 'Millionstel Zoll',
  in: 'Zoll',
};
export const ask: typeof En.ask = (unit, digits) =>
  `Antworte ${unit === '1' ? 'mit einer bloßen Zahl' : `in ${UNIT_NAMES[unit] ?? unit}`}, auf ${digits} ${digits === 1 ? 'geltende Ziffer' : 'geltende Ziffern'}.`;
export const backwardsTitle: typeof En.backwardsTitle = (title) => `${title}, rückwärts`;
export const showThat: typeof En.showThat = (answer) =>
  `Zeige, dass die Antwort ${answer} ist: Schreibe jeden Schritt mit seinem Grund.`;
export const fromTo: typeof En.fromTo = (low, high) => `${low} bis ${high}`;

export const rightAnswer: typeof En.rightAnswer = (answer, accepted) =>
  `Richtig: ${answer.replace(/\.$/, '')}.${accepted === '' ? '' : ` Angenommen: ${accepted}.`}`;
export const OTHER_WAY = 'Der richtige Betrag, aber die andere Richtung: Achte auf das Vorzeichen.';
export const slipMade: typeof En.slipMade = (says) => `Noch nicht. ${says}`;
export const NOT_NOUGHT = 'Noch nicht: Es ist nicht null.';
const size = (large: boolean): string => (large ? 'groß' : 'klein');
export const notFarOff: typeof En.notFarOff = (large) =>
  `Noch nicht, aber nahe: ein wenig zu ${size(large)}. Hast du unterwegs gerundet?`;
export const tooFarOff: typeof En.tooFarOff = (large, otherWay) =>
  `Noch nicht: zu ${size(large)}${otherWay ? ' im Betrag, und die andere Richtung' : ''}.`;

export const STEP_WORDS: Same<typeof En.STEP_WORDS> = [
  'fläche',
  'flächen',
  'zwölftel',
  'skalenteil',
  'skalenteile',
  'schritt',
  'schritte',
  'flat',
  'flats',
];
export const leadsFromStep: typeof En.leadsFromStep = (says, step, of) =>
  `Hast du zu früh aufgehört? Das ist Zeile ${step} von ${of}: ${says}.`;
export const leadsFromGiven: typeof En.leadsFromGiven = (says) =>
  `Hast du es gelassen, wie es gegeben war? Das ist: ${says}.`;
export const leadsByFactor: typeof En.leadsByFactor = (what) => `Hast du ${what}?`;
export const NAMED_FACTORS: Same<typeof En.NAMED_FACTORS> = [
  [
    2,
    'etwas verdoppelt oder halbiert, etwa einen Durchmesser für einen Radius genommen oder eine Teilung zweimal gezählt',
  ],
  [6, 'Umdrehungen für Flächen genommen, oder Flächen für Umdrehungen'],
  [12, 'Umdrehungen für Zwölftel genommen, oder Zwölftel für Umdrehungen'],
  [4, 'Umdrehungen für die Seiten eines Vierkants genommen, oder umgekehrt'],
  [Math.PI, 'π ausgelassen oder zweimal eingesetzt'],
  [2 * Math.PI, 'Umdrehungen für Radiant genommen, oder Radiant für Umdrehungen'],
  [180 / Math.PI, 'Grad für Radiant genommen, oder Radiant für Grad'],
  [360, 'Grad für Umdrehungen genommen, oder Umdrehungen für Grad'],
];
export const leadsToStep: typeof En.leadsToStep = (says, only) =>
  only
    ? `Was gehört in diese Rechnung (${says}), und in welcher Einheit?`
    : `Was hast du hier gefunden: ${says}? Prüfe das zuerst.`;

export const curveAsked: typeof En.curveAsked = (up, across) => `Achsen für eine Kurve: ${up} über ${across}`;
export const CURVE_RIGHT = 'Ja: Deine Punkte liegen auf der gerechneten Kurve, so genau eine Hand zeichnet.';
export const curveOff: typeof En.curveOff = (at, yours, right) =>
  `Am weitesten liegen die beiden bei ${at} auseinander: Du hast ${yours} gezeichnet, es sind ${right}.`;
export const curveTrend: typeof En.curveTrend = (rises) =>
  rises > 0
    ? 'Die gerechnete Kurve steigt von einem Ende zum anderen. Was wird dort mehr?'
    : rises < 0
      ? 'Die gerechnete Kurve fällt von einem Ende zum anderen. Was wird dort verbraucht?'
      : 'Die gerechnete Kurve endet, wo sie anfing. Was kommt dort zurück?';
export const CURVE_BENDS =
  'Deine ist gerade, die gerechnete krümmt sich. Bringt wirklich jeder Schritt so viel wie der vorige?';
export const CURVE_STRAIGHT =
  'Deine krümmt sich, die gerechnete ist gerade. Was könnte einen Schritt vom nächsten unterscheiden?';
export const CURVE_STARTS = 'Wo fängt sie an? Denke nur an den ersten Punkt.';
export const curveAmount: typeof En.curveAmount = (at) =>
  `Die Form ist nahe. Rechne den einen Punkt bei ${at} aus: Welche Zahlen der Frage gehören hinein?`;

export const onDial: typeof En.onDial = (division, rounds, face) =>
  `Eine Messuhr: Der lange Zeiger zeigt auf ${division}, der kleine ist an ${rounds} vorbei. Auf dem Zifferblatt: ${face}.`;
export const RULED: Same<typeof En.RULED> = { metric: 'Millimeter', inch: 'Zoll' };
export const besideRule: typeof En.besideRule = (ridges, at, unit) =>
  `Eine Schraube an einem Maßstab, geteilt in ${unit}: Eine Gewindespitze ist bei 0 markiert, die Spitze ${ridges} Gänge weiter bei ${at}.`;
export const alongRule: typeof En.alongRule = (length, unit) =>
  `Ein Balken an einem Maßstab, geteilt in ${unit}: Er endet bei ${length}.`;

export const FAULTS: Same<typeof En.FAULTS> = {
  sound: 'nichts: Es bewegt sich, wie seine Steigungen sagen',
  lead: 'die Nettosteigung stimmt nicht',
  wave: 'eine Welle, die jede Umdrehung wiederkommt',
  lost: 'toter Gang bei der Umkehr',
  drift: 'es wandert mit der Zeit, wie bei einem Ständer, der nachgibt',
  misread: 'eine Ablesung wurde falsch notiert',
};
export type Fault = keyof typeof FAULTS;
export const TABLE_SHOWS: Same<typeof En.TABLE_SHOWS> = {
  sound:
    'Wäre nichts falsch, so wäre jede Ablesung Umdrehungen mal Nettosteigung. Ist es bei jeder Umdrehung so, hinauf und zurück?',
  lead: 'Eine falsche Steigung läuft gleichmäßig davon, mit jeder Umdrehung mehr, und kommt über dieselben Ablesungen zurück. Tut das diese Tabelle?',
  wave: 'Eine Welle liegt in der Umdrehung daneben und eine ganze Umdrehung später wieder richtig. Vergleiche Ablesungen, die eine ganze Umdrehung auseinanderliegen.',
  lost: 'Toter Gang zeigt sich nur, wo die Drehung umgekehrt wurde, und ist auf dem ganzen Rückweg gleich. Ist er hier?',
  drift: 'Drift wächst mit jeder Ablesung, hinauf wie zurück; die letzte ist dann nicht wie die erste. Ist es hier so?',
  misread:
    'Eine falsch notierte Ablesung steht allein: Ihre Nachbarn und die eine Umdrehung weiter stimmen. Gibt es eine?',
};
export const TABLE_DECIDES: typeof En.TABLE_DECIDES = {
  sound: (v) =>
    `Bei 2 Umdrehungen steht ${v.reads}, die Nettosteigung ergibt ${v.should}. Zurück bei 0 steht ${v.back}.`,
  lead: (v) =>
    `Bei 2 Umdrehungen liegt es um ${v.off} daneben, bei 1 Umdrehung um halb so viel, ${v.half}. Zurück bei 0 steht ${v.back}.`,
  wave: (v) =>
    `Bei ${v.turns} Umdrehungen liegt es um ${v.off} daneben, eine Umdrehung später um ${v.later}. Bei einer ganzen Umdrehung sind es nur ${v.whole}.`,
  lost: (v) =>
    `Hinauf bis 2 Umdrehungen liegt es höchstens um ${v.up} daneben. Auf dem Rückweg sind es an jeder Stelle ${v.least} bis ${v.most}.`,
  drift: (v) =>
    `Die letzte Ablesung steht an der Stelle der ersten und liegt um ${v.last} daneben. Bei 2 Umdrehungen waren es schon ${v.top}.`,
  misread: (v) =>
    `Bei ${v.turns} Umdrehungen, auf dem Hinweg, liegt es um ${v.off} daneben. Jede andere Ablesung liegt höchstens um ${v.others} daneben.`,
};
export const TABLE_NAME = '2 Umdrehungen hinauf gedreht, dann zurück';
export const TURNS = 'Umdrehungen';
export const READING = 'Ablesung, µm';

export const stackGives: typeof En.stackGives = (gives) =>
  `Dieser Aufbau ergibt ${gives}. Welche seiner Steigungen wird von welcher abgezogen?`;

export const ASK_OFFERED: Same<typeof En.ASK_OFFERED> = {
  choice: 'Wähle eine Antwort.',
  way: 'Wähle eine.',
  flank: 'Wähle eine.',
  'wrong-line': 'Eine Zeile ist falsch; die Zeilen danach rechnen mit ihr weiter. Welche ist es?',
  order: 'Bringe die Zeilen in die richtige Reihenfolge, die erste zuerst.',
  stack: 'Wähle etwas aus der Schublade.',
  table: 'Was zeigt die Tabelle? Wähle eines.',
};
export const lettered: typeof En.lettered = (letter, text) => `${letter}) ${text}`;
export const WAYS: Same<typeof En.WAYS> = ['nach oben', 'nach unten', 'gar nicht'];
export const FLANKS: Same<typeof En.FLANKS> = ['die Druckflanke', 'die Zugflanke', 'keine muss anliegen'];
export const signDecides: typeof En.signDecides = (sign, means) =>
  `Das letzte Ergebnis ist ${sign > 0 ? 'positiv' : sign < 0 ? 'negativ' : 'null'}: ${means}.`;
export const ORDER_DECIDES = 'Jede Zeile braucht, was die Zeile davor hinterlässt.';
export const othersGive: typeof En.othersGive = (give) => `Die anderen ergeben ${give.join(', ')}.`;
export const wayAsked: typeof En.wayAsked = (found) =>
  `Welches Vorzeichen hat das Ergebnis (${found})? Plus ist nach oben, Minus nach unten. Rechne es zuerst mit Vorzeichen aus.`;
export const flankAsked: typeof En.flankAsked = (found) =>
  `Welches Vorzeichen hat das Ergebnis (${found})? Plus drückt das obere Teil zum Grundteil. Rechne es zuerst mit Vorzeichen aus.`;
export const LINE_HOLDS: typeof En.LINE_HOLDS = (before) =>
  before
    ? 'Diese Zeile stimmt. Nimmt die nächste das Richtige von ihr?'
    : 'Diese Zeile führt nur weiter, was darüber steht. Ist richtig, was sie von oben nimmt?';
export const orderLeads: typeof En.orderLeads = (first, then) =>
  `„${first.replace(/\.$/, '')}“ steht vor „${then.replace(/\.$/, '')}“. Könntest du das zweite nach dem ersten noch gut tun?`;
export const chooseOne: typeof En.chooseOne = (letters) => `Wähle eines von ${letters}.`;
export const eachOnce: typeof En.eachOnce = (letters) => `Schreibe jedes von ${letters} einmal, der Reihe nach.`;

export const namesTwice: typeof En.namesTwice = (count, first) =>
  `${count === 1 ? 'Ein Name steht' : `${count} Namen stehen`} mehr als einmal in der Liste; die späteren sind nummeriert, ${first} und so weiter, damit nicht zwei dasselbe Blatt bekommen.`;
export const behindComma: typeof En.behindComma = (line) =>
  `${line} hat ein Komma, also ist alles der Name. Setze ein Semikolon vor mm, Zoll oder groß.`;
export const unitNotTaken: typeof En.unitNotTaken = (line, unit) =>
  `${line}: ${unit} sagt nichts darüber, wie jemand gefragt wird, also ist alles der Name. Hinter einem Semikolon stehen mm, Zoll oder groß.`;
export const paperOf: typeof En.paperOf = (student) => `Aufgaben: ${student}`;
export const keyOf: typeof En.keyOf = (student) => `Lösung: ${student}`;
export const paperFoot: typeof En.paperFoot = (classCode, student, bank) =>
  `Klasse ${classCode} · ${student} · Aufgabensammlung ${bank}`;
export const ANSWER = 'Antwort:';
export const acceptedAs: typeof En.acceptedAs = (accepted) => `angenommen ${accepted}`;

export const HOW_TO_TYPE =
  'Gib nur die Zahl ein, ohne Einheit, mit einem Punkt vor den Dezimalstellen und, wo sie negativ ist, mit einem Bindestrich (-) als Minus.';
export const COLUMNS: Same<typeof En.COLUMNS> = [
  'Aufgabe',
  'Titel',
  'Frage',
  'Einheit',
  'Antwort',
  'kleinste angenommene',
  'größte angenommene',
  'Ziffern',
  'Hinweis',
  'Schritte',
  'bekannte Fehler',
];
export const BANK_TITLE = 'Differenzialschrauben, Aufgabensammlung';
export const TEST_TITLE = 'Differenzialschrauben';
export const LICENCE_SAYS = 'CC BY 4.0, https://creativecommons.org/licenses/by/4.0/';
