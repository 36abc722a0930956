/** Was auf Blättern, Lösungen und Rastern für eine Klasse steht, und darum herum auf der Seite. */
import { spokenNumber } from '../../engine/index.ts';
import type * as En from '../en/classroom.ts';
import type { Same } from '../same.ts';

export const pageOf: typeof En.pageOf = (page, pages) => `Seite ${page} von ${pages}`;
export const DATE = 'Datum';
export const MARKS = 'Punkte';
export const outOf: typeof En.outOf = (marks) => `von ${marks}`;
export const marksFor: typeof En.marksFor = (marks) => (marks === 1 ? '1 Punkt' : `${marks} Punkte`);
export const NAME = 'Name';

export const HOW_WORKED = 'Wie jede Aufgabe gerechnet wird';
export const workedFor: typeof En.workedFor = (classCode, bank) => `Klasse ${classCode} · Aufgabensammlung ${bank}`;
export const KNOWN_SLIPS = 'Was eine falsche Antwort verrät';
export const HINT_WAS = 'Hinweis';

export const GRID = 'Antworten aller Lernenden';
export const STUDENT = 'Lernende';
export const QUESTION = 'Frage';
export const gridColumn: typeof En.gridColumn = (number) => `${number}`;

export const LOOK = 'Auf den Blättern';
export const ROOM_NAMES: Same<typeof En.ROOM_NAMES> = {
  none: 'kein Platz zum Rechnen',
  some: 'Platz für einige Zeilen',
  much: 'Platz für eine Zeichnung',
};
export const LARGE_PRINT = 'große Schrift für alle';
export const PRINT_GRID = 'Antwortraster drucken';
export const PRINT_METHOD = 'Rechenwege drucken';
export const KEY_ON_ONE = 'Lösungen klein, in zwei Spalten: eine Seite je Lernendem';
export const setWithOther: typeof En.setWithOther = (was, now) =>
  `Diese Blätter wurden mit der Aufgabensammlung ${was} gestellt; diese Seite hat ${now}, und die Zahlen wären andere. Stelle die Blätter neu, oder bringe zuerst deine eigenen Aufgaben zurück, wie sie damals waren, von Hand oder durch ihre Datei.`;
export const GRID_AS_CSV = 'Antwortraster als CSV';
export const PRINT_EMPTY_GRID = 'Das leere Raster drucken';
export const EMPTY_GRID_AS_CSV = 'Leeres Raster zum Ausfüllen, als CSV';

export const labFor: typeof En.labFor = (student) => `Labor: eine Differenzialschraube messen. ${student}`;
export const PAIR_IS = 'Paar';
export const labPair: typeof En.labPair = (A, C, net, flat) =>
  `Dein Paar: Gewinde A ${spokenNumber(A)}, Gewinde C ${spokenNumber(C)}. Nach Entwurf bewegt eine Umdrehung das Hubteil um ${net}, eine Fläche um ${flat}.`;
export const LAB_PROTOCOL: Same<typeof En.LAB_PROTOCOL> = {
  title: 'So wird gemessen',
  steps: [
    'Spanne das Grundteil ein. Lege auf das Hubteil das Gewicht, das es im Gebrauch trägt.',
    'Stelle die Messuhr rechtwinklig über die Achse des Hubteils, ein wenig eingedrückt.',
    'Drehe eine halbe Umdrehung zurück und vor bis Fläche 0. Damit ist aller toter Gang aufgenommen. Stelle die Messuhr auf null.',
    'Drehe Fläche für Fläche hinauf und lies an jeder der dreizehn Stellen ab. Drehst du zu weit, beginne diesen Weg neu.',
    'Gehe eine Viertelumdrehung über die letzte Stelle hinaus und zu ihr zurück. Lies nun hinunter ab, Fläche für Fläche.',
    'Gehe eine Viertelumdrehung über Fläche 0 hinaus und wieder vor. Nimm beide Wege noch einmal.',
    'Halte zwischen den Ablesungen die Hand von der Schraube, damit sie nicht warm wird.',
  ],
};
export const LAB_CAUTION =
  'Halte die Finger unter dem Hubteil und seinem Gewicht weg. Unterbaue das Gewicht, bevor du etwas änderst. Die Regeln deines Betriebs gehen vor.';
export const LAB_TABLE = 'Ablesungen';
export const FLAT_COLUMN = 'Fläche';
export const EXPECTED = 'Nach Entwurf';
export const UP_RUN: typeof En.UP_RUN = (run) => `Hinauf ${run}`;
export const DOWN_RUN: typeof En.DOWN_RUN = (run) => `Hinunter ${run}`;
export const LAB_PLOT = 'Diagramm: hinauf als ▲, hinunter als ▽. Die Linie ist, was der Entwurf ergibt.';
export const FLAT_STEP = 'Flächen';
export const expectedLine: typeof En.expectedLine = (motion, flats) =>
  `Kariertes Papier mit einer Geraden von null bis ${motion} bei ${flats} Flächen.`;
export const CHECKS: Same<typeof En.CHECKS> = {
  title: 'Fünf Prüfungen, bevor du unterschreibst',
  list: [
    'Jede Ablesung eines Wegs wurde von derselben Seite angefahren.',
    'Das Spiel war vor der ersten gezählten Ablesung aufgenommen.',
    'Zurück bei Fläche 0 zeigt die Messuhr wieder null, bis auf den toten Gang.',
    'Die Hand war zwischen den Ablesungen von der Schraube, und der Ständer hatte Zeit zum Abkühlen.',
    'Der Messbolzen steht rechtwinklig zur Fläche und über der Achse.',
  ],
};
export const RESULTS: Same<typeof En.RESULTS> = {
  title: 'Ergebnisse',
  list: [
    'Gemessene Bewegung einer Umdrehung:',
    'Toter Gang zwischen hinauf und hinunter:',
    'Größter Abstand von der Linie:',
  ],
};
export const SIGN_OFF: Same<typeof En.SIGN_OFF> = {
  title: 'Unterschrieben',
  list: ['Gemessen von:', 'Messuhr, und wann geprüft:', 'Geprüft von:', 'Angenommen, oder was zu tun ist:'],
};
export const rigFor: typeof En.rigFor = (student) => `Aufbau: ${student}`;
export const RIG_HEAD: typeof En.RIG_HEAD = (unit) =>
  `Ein gerechnetes Stellelement mit einem versteckten Fehler, seine Basis ist eingespannt. Das Werkstück, ein Gewicht von 20 N, steht auf seiner Spitze. Eine Messuhr über der Spitze zeigt, in ${unit}, bei jeder Fläche:`;
export const RIG_WAYS =
  'Jeder Weg beginnt eine Zehntelumdrehung oder mehr vor seiner ersten Fläche, damit der tote Gang vor der ersten Ablesung aufgenommen ist.';
export const RIG_QUARTERS =
  'Eine zweite Messuhr berührt die Spitze von der Seite. Sie wurde auf null gestellt, bevor das Werkstück aufgesetzt war. Dann wurde das Werkstück abgenommen und die Umdrehung über der Spitze noch einmal abgelesen, hinauf und hinunter.';
export const LAB_FACTS: Same<typeof En.LAB_FACTS> = [
  'Gemessene Bewegung einer Umdrehung:',
  'Toter Gang:',
  'Was an diesem Aufbau falsch ist, und woran du es siehst:',
];
export const LAB_KEY = 'Was die Aufbauten verstecken';
export const HIDES = 'Versteckt';
export const RIG_GIVEN = 'Dem Aufbau gegeben';
export const FOUND_BY_FIT = 'Durch Anpassung gefunden';
export const QUARTERS_NAME: typeof En.QUARTERS_NAME = (unit) => `Eine Umdrehung in Vierteln, in ${unit}`;
export const QUARTER_HEADS: Same<typeof En.QUARTER_HEADS> = [
  'Umdrehungen',
  'Von der Seite, mit Werkstück',
  'Über der Spitze, ohne Werkstück, hinauf',
  'Über der Spitze, ohne Werkstück, hinunter',
];
export const rigChecks: typeof En.rigChecks = (v) => [
  `Ein Endmaß von ${v.is} unter der Messuhr zeigt ${v.reads}.`,
  `Eine Hand hielt das Stellelement zehn Minuten lang, ohne dass gedreht wurde. Die Ablesung wanderte um ${v.drift}.`,
  `Am Hubteil läuft ein Bleistiftstrich hinunter. Nachdem der Kopf mit dem Werkstück hin und zurück gedreht wurde, steht er um ${v.line} daneben.`,
];
export const LAB_PAIRS = 'Paare in der Klasse, eines je Zeile: Gewinde A + Gewinde C. Jeder bekommt eines davon.';
export const SET_LAB = 'Labor stellen';
export const labSet: typeof En.labSet = (students) =>
  `Das Labor ist für ${students === 1 ? 'eine Person' : `${students} Lernende`} gestellt. Die ersten Blätter stehen unten.`;
export const PRINT_LAB = 'Laborblätter drucken';
export const PRINT_RIGS = 'Aufbauten drucken';
export const PRINT_LAB_KEY = 'Drucken, was sie verstecken';
export const RIGS_AS_CSV = 'Ablesungen aller Aufbauten als CSV';
export const OPEN_RIG = 'Die Ablesungen des ersten Aufbaus im Kapitel über Kalibrierung (ein neuer Tab)';
export const TYPED_READINGS =
  'Ablesungen, wie vom Blatt abgeschrieben, eine je Zeile: Fläche; Ablesung; auf oder ab, zum Beispiel 1; 14,6; auf. Von einer ganzen Klasse mit dem Namen davor: Ada; 1; 14,6; auf';
export const READINGS_IN = 'Ablesungen ohne Einheit sind in';
export const RIG_COLUMNS: Same<typeof En.RIG_COLUMNS> = ['Name', 'Fläche', 'Ablesung', 'Einheit', 'Richtung'];
export const readingsJudged: typeof En.readingsJudged = (v) =>
  [
    `Eine Umdrehung bewegt um ${v.lead} ± ${v.half}. Nach Entwurf sind es ${v.design}${v.verdict === 'too rough' ? '. Ein ± von mehr als einem Zehntel davon sagt nichts' : v.verdict === 'agrees' ? '; beides stimmt überein' : '; beides stimmt nicht überein'}.`,
    ...(v.stray === undefined
      ? []
      : [
          `Eine Ablesung liegt weit ab von den anderen: Fläche ${v.stray.flat}${v.stray.way ? `, ${v.stray.way === 'up' ? 'auf' : 'ab'}` : ''}. Sieh sie noch einmal an.`,
        ]),
    ...(v.swapped ? ['Die Ablesungen ab liegen vor denen auf, was kein Gewinde tut: Sind beide vertauscht?'] : []),
    ...(v.lost === undefined ? [] : [`Toter Gang zwischen hinauf und hinunter: ${v.lost}.`]),
    ...(v.wave === undefined ? [] : [`Einmal je Umdrehung weicht die Bewegung um ± ${v.wave} ab.`]),
  ].join(' ');
export const OPEN_READINGS = 'Diese Ablesungen im Kapitel über Kalibrierung (ein neuer Tab)';
export const TYPED_PAIR =
  'Wessen sie sind: ein Name der Liste, oder ein Paar. Nicht gefragt, wo jede Zeile einen Namen hat';
export const AS_ON_SHEET = 'der Einheit des Blatts';
export const LAB_VERDICTS: Same<typeof En.LAB_VERDICTS> = {
  agrees: 'stimmt überein',
  differs: 'stimmt nicht überein',
  'too rough': 'sagt nichts',
};
export const classJudged: typeof En.classJudged = (students, refused, unknown, missing) =>
  [
    `Die Ablesungen von ${students === 1 ? 'einer Person' : `${students} Lernenden`} sind beurteilt.`,
    ...(refused === 0 ? [] : [`Die von ${refused} weiteren konnten es nicht werden; die Tabelle sagt, warum.`]),
    ...(unknown.length === 0 ? [] : [`Nicht auf der Liste oben: ${unknown.join(', ')}.`]),
    ...(missing.length === 0 ? [] : [`Auf der Liste, ohne Ablesungen: ${missing.join(', ')}.`]),
  ].join(' ');
export const CLASS_READINGS = 'Ablesungen der Klasse';
export const READINGS_SAY = 'Was die Ablesungen sagen';
export const CLASS_READINGS_CSV = 'Diese Ergebnisse als CSV';
export const CLASS_READINGS_HEADS: Same<typeof En.CLASS_READINGS_HEADS> = [
  'Name',
  'Paar',
  'Bewegung einer Umdrehung, µm',
  '±, µm',
  'Nach Entwurf, µm',
  'Urteil',
  'Toter Gang, µm',
  'Was die Ablesungen sagen',
];
export const JUDGE_READINGS = 'Diese Ablesungen beurteilen';
export const FIRST_LAB = 'Erstes Laborblatt, Aufbau und Lösung';

export const FILLED_GRID = 'Das ausgefüllte Raster: Namen abwärts, Aufgaben quer, wie im leeren Raster';
export const MARK_ANSWERS = 'Diese Antworten bewerten';
export const HALF_FOR_SLIP = 'halbe Punkte für einen bekannten Fehler';
export const SCORES_AS_CSV = 'Punkte als CSV';
export const SCORE = 'Punkte';
export const OUT_OF = 'von';
export const EXERCISE_HEAD = 'Aufgabe';
export const TITLE_HEAD = 'Titel';
export const RIGHT_HEAD = 'Richtig';
export const WRONG_HEAD = 'Falsch';
export const LEFT_HEAD = 'Ausgelassen';
export const MISSED_ITEMS = 'Nach Aufgabe';
export const MISSED_SLIPS = 'Nach Fehler';
export const TIMES_HEAD = 'Wie oft';
export const SLIP_HEAD = 'Was es verrät';
export const SCORES = 'Punkte';
export const UNREAD_HEAD = 'Nicht gelesen';
export const ANSWER_HEAD = 'Antwort';
export const VERDICT_HEAD = 'Urteil';
export const ANSWER_KINDS: Same<typeof En.ANSWER_KINDS> = {
  right: 'richtig',
  wrong: 'falsch',
  unread: 'nicht gelesen',
  left: 'ausgelassen',
};
export const ANSWERS_UNREAD = 'Antworten, die nicht zu lesen waren. Bessere sie im Raster aus und bewerte noch einmal';
export const BY_ANSWER = 'Nach Person, Antwort für Antwort';
export const marked: typeof En.marked = (students, unknown, missing, taken, unread) =>
  [
    `${students === 1 ? 'Eine Person ist' : `${students} Lernende sind`} bewertet.`,
    ...(unread === 0
      ? []
      : [
          unread === 1
            ? 'Eine Antwort war nicht zu lesen und bringt noch nichts.'
            : `${unread} Antworten waren nicht zu lesen und bringen noch nichts.`,
        ]),
    ...taken.map(({ name, student }) => `„${name}“ ist für „${student}“ genommen.`),
    ...(unknown.length === 0 ? [] : [`Nicht auf der Liste oben: ${unknown.join(', ')}.`]),
    ...(missing.length === 0 ? [] : [`Auf der Liste, ohne Zeile im Raster: ${missing.join(', ')}.`]),
  ].join(' ');

export const USED = 'wird benutzt';
export const MARKS_FIELD = 'Punkte';
export const CHANGE_EXERCISE = 'Worte und Größen ändern';
export const TITLE_FIELD = 'Titel';
export const QUESTION_FIELD = 'Frage; was in geschweiften Klammern steht, wird gezogen';
export const HINT_FIELD = 'Hinweis';
export const sizesField: typeof En.sizesField = (name) => `Größen für {${name}}, durch Semikolons getrennt`;
export const TAKE_CHANGE = 'Änderung übernehmen';
export const TAKE_BACK = 'Wie es war';
export const changedNow: typeof En.changedNow = (title) =>
  `„${title}“ ist geändert. Blätter, die von jetzt an gestellt werden, haben es.`;
export const SAVE_OWN = 'Diese Änderungen in eine Datei speichern';
export const OPEN_OWN = 'Eine solche Datei öffnen';
const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const ownCounts = ({ hidden, edits, marks }: Parameters<typeof En.ownSays>[0]): string =>
  `${counted(hidden, 'Aufgabe ist', 'Aufgaben sind')} ausgelassen, ${counted(edits, 'ist', 'sind')} geändert, ${counted(marks, 'hat', 'haben')} eigene Punkte`;
export const ownSays: typeof En.ownSays = (own) =>
  own.hidden + own.edits + own.marks === 0
    ? 'Alle Aufgaben sind, wie die Kapitel sie haben.'
    : `${ownCounts(own)}. Das gilt für Blätter, die von jetzt an gestellt werden. Es bleibt in diesem Tab; sichere es in eine Datei, um es beim nächsten Mal zu haben.`;
export const ownRead: typeof En.ownRead = (own) =>
  [
    `Die Datei ist gelesen: ${ownCounts(own)}.`,
    ...(own.unfit?.length
      ? [
          `Nicht verwendet, weil dieses Heft keine solche Aufgabe hat oder die Änderung nicht mehr zu ihr passt: ${own.unfit.join(', ')}.`,
        ]
      : []),
  ].join(' ');

export const PLAN = 'Plan des Kurses';
export const LESSONS = 'Stunden';
export const MINUTES_A_LESSON = 'Minuten je Stunde';
export const CHAPTERS_OF_PLAN = 'Kapitel';
export const TAKE_NEEDS = 'Dazunehmen, was diese Kapitel brauchen';
export const REACH = 'Ich will bis zum Kapitel';
export const PLAN_WAY = 'Den Weg dorthin planen';
export const wayTakes: typeof En.wayTakes = (title, chapters, minutes) =>
  chapters === 1
    ? `„${title}“ braucht kein anderes Kapitel. Es dauert ${minutes} Minuten.`
    : `„${title}“ braucht ${chapters === 2 ? 'ein Kapitel' : `${chapters - 1} Kapitel`} davor. Das sind ${minutes} Minuten, es selbst mitgezählt.`;
export const SET_PLAN = 'Plan machen';
export const PRINT_PLAN = 'Plan drucken';
export const PLAN_AS_CSV = 'Plan als CSV';
export const LESSON_HEAD = 'Stunde';
export const CHAPTERS_TAKEN = 'Kapitel';
export const MINUTES_HEAD = 'Minuten';
export const OUTCOMES_HEAD = 'Was die Lernenden dann können';
export const PRACTISED_BY = 'Aufgaben';
const FROM = { whole: '', begun: ', begonnen', 'carried on': ', fortgesetzt', ended: ', beendet' } as const;
export const partOf: typeof En.partOf = (number, title, from) => `${number} ${title}${FROM[from]}`;
export const planSays: typeof En.planSays = (plan) =>
  [
    plan.over === 0
      ? `Die Kapitel brauchen ${plan.enough === 1 ? 'eine Stunde' : `${plan.enough} Stunden`}.`
      : `${plan.over} Minuten finden keinen Platz; ${plan.enough} Stunden würden alles fassen.`,
    ...(plan.left.length === 0
      ? []
      : [
          `Ausgelassen, als Hausaufgabe oder für später: ${plan.left
            .map(({ chapter, minutes, begun }) => `${chapter} (${begun ? `die letzten ${minutes}` : minutes} Minuten)`)
            .join('; ')}.`,
        ]),
    ...plan.unmet.map(
      ({ chapter, needs }) => `„${chapter}“ braucht auch ${needs.map((one) => `„${one}“`).join(' und ')}.`,
    ),
  ].join(' ');

export const WANTED_LEAD = 'Bewegung einer Umdrehung';
export const WHICH_TAPS = 'Vorhandene Gewindebohrer';
export const TAPS_NAMES: Same<typeof En.TAPS_NAMES> = {
  metric: 'nur metrische',
  inch: 'nur Zollgewinde',
  either: 'beide',
};
export const FIND_PAIRS = 'Paare suchen';
export const PAIRS_FOR_PROJECT = 'Paare für das Projekt';
export const PRINT_PROJECT = 'Projekt drucken';
export const NET_LEAD_HEAD = 'Paar';
export const PAIR_HEADS: Same<typeof En.PAIR_HEADS> = [
  'Nettosteigung',
  'Verstärkung',
  'Hub, ein Durchmesser von jedem verbraucht',
];
export const projectPairsSay: typeof En.projectPairsSay = (count, taps, sizes, off) =>
  [
    ...(off === undefined ? [] : [`Kein Paar ist nahe: Das nächste liegt ${off} % daneben.`]),
    `${count === 1 ? 'Ein Paar' : `${count} Paare`}, das nächste zuerst: ${taps}.`,
    `Gesucht wurde unter: ${sizes}.`,
  ].join(' ');
export const SIZES_SEARCHED: Same<typeof En.SIZES_SEARCHED> = {
  metric: 'gängigen metrischen Größen von M4 bis M16, Regel- und Feingewinde',
  inch: 'UNC und UNF von Nr. 8 bis 5/8',
  either: 'gängigen metrischen Größen von M4 bis M16, Regel- und Feingewinde; UNC und UNF von Nr. 8 bis 5/8',
};

export const SAFETY: Same<typeof En.SAFETY> = {
  title: 'Sicherheit in der Werkstatt',
  first:
    'Die Regeln dieses Betriebs, das Wort der Ausbilderin oder des Ausbilders und örtliche Vorschriften gehen diesem Blatt vor. Wenn du etwas nicht weißt, halte an und frage.',
  groups: [
    {
      title: 'Bevor du anfängst',
      rules: [
        'Schutzbrille auf. Haare zusammengebunden; keine Ringe, Uhr, Schal oder lose Ärmel nahe an etwas, das sich dreht.',
        'Keine Handschuhe an einer drehenden Spindel oder einem Bohrer.',
        'Du weißt, wo Not-Aus, Verbandkasten und Feuerlöscher sind.',
      ],
    },
    {
      title: 'Bohren, Drehen und Gewindeschneiden',
      rules: [
        'Das Werkstück ist gespannt. Du hältst es nie mit der Hand unter einem Bohrer.',
        'Der Bohrfutterschlüssel ist abgezogen, bevor die Maschine anläuft.',
        'Späne werden mit Bürste oder Haken entfernt, bei stehender Maschine. Nie mit der Hand, nie mit Druckluft.',
        'Ein Gewindebohrer oder Schneideisen wird zum Spanbrechen zurückgedreht und nicht mit Gewalt gedreht. Ein gebrochener Gewindebohrer ist scharf wie Glas.',
      ],
    },
    {
      title: 'Pressen, Federn und Lasten',
      rules: [
        'Eine gehärtete Kugel kann beim Einpressen zerspringen. Ein Schutzschild steht zwischen ihr und deinem Gesicht.',
        'Eine gespannte Feder wird langsam entspannt, vom Gesicht weg.',
        'Ein feines Stellelement ist kein Hebezeug. Schwere Werkstücke werden unterbaut; keine Hand geht darunter.',
      ],
    },
  ],
  here: 'In diesem Betrieb',
  blanks: ['Notrufnummer:', 'Erste Hilfe leistet:', 'Maschinen, die ich benutzen darf:', 'Weitere Regeln hier:'],
  signed: 'Unterschrieben',
  says: 'Ich habe dieses Blatt und die Regeln des Betriebs gelesen und nach dem gefragt, was ich nicht verstand.',
  signatures: ['Name und Datum:', 'Ausbilderin oder Ausbilder:'],
};
export const PRINT_SAFETY = 'Sicherheitsblatt drucken';

export const VARIANTS = 'Fassungen jeder Aufgabe, von denen ein Test für jeden eine zieht';
export const SCORED_BY_HAND = 'auch „zeige, dass“, was ein Mensch bewertet';
