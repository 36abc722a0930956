/** Schritte einer Umdrehung; Auswahlen und Listen, wie Lesende sie sehen. Links und Kapitel behalten die englischen Namen. */
import type * as En from '../en/choices.ts';
import type { Same } from '../same.ts';

export const STEP_NAMES: Same<typeof En.STEP_NAMES> = {
  knob: 'Skalenteil',
  'twelve points': 'Zwölftel',
  other: 'Fläche',
};

export const CHOICE_WORDS = {
  arrangement: {
    says: 'Anordnung',
    options: {
      'in line': 'hintereinander',
      nested: 'ineinander',
      'one spindle, two nuts': 'eine Spindel, zwei Muttern',
      'thread adapter': 'Gewindeadapter',
    },
  },
  lock: { says: 'Verdrehsicherung des Hubteils', options: { holds: 'hält', gives: 'gibt nach' } },
  lens: { says: 'Lupe', options: { away: 'weg', 'on each thread': 'auf jedem Gewinde' } },
  pull: {
    says: 'die Last längs der Achse',
    options: { 'presses down': 'drückt nach unten', 'pulls up': 'zieht nach oben' },
  },
  assembly: {
    says: 'zusammengebaut',
    options: {
      'both at mid-range': 'beide in der Mitte',
      'both screwed home': 'beide in der Endlage',
      'A at mid-range, C home': 'A in der Mitte, C in der Endlage',
    },
  },
  divider: {
    says: 'geteilt durch',
    options: { hexagon: 'Sechskant', square: 'Vierkant', 'twelve points': 'Zwölfkant', knob: 'Drehknopf' },
  },
  hands: {
    says: 'Gangrichtungen',
    options: { 'same hand': 'gleich', 'opposite hands': 'entgegengesetzt', either: 'gleich oder entgegengesetzt' },
  },
  fitted: {
    says: 'angeordnet',
    options: { 'either way': 'beliebig', 'in line': 'hintereinander', nested: 'ineinander' },
  },
  drawer: {
    says: 'Gewinde aus',
    options: {
      anywhere: 'allem',
      'at least one you own': 'mindestens eines, das du hast',
      'both you own': 'beide, die du hast',
    },
  },
  against: {
    says: 'Karte über',
    options: { gain: 'Verstärkung', stroke: 'Hub', size: 'Größe', 'the two leads': 'die beiden Steigungen' },
  },
  order: {
    says: 'zuerst in der Liste',
    options: {
      'nearest motion': 'nächste Bewegung',
      'smallest gain': 'kleinste Verstärkung',
      'smallest size': 'kleinste Größe',
      'longest stroke': 'längster Hub',
    },
  },
  best: {
    says: 'zuerst in der Liste',
    options: {
      'finest step': 'feinster Schritt',
      'longest stroke': 'längster Hub',
      lowest: 'niedrigste Höhe',
      cheapest: 'billigste Teile',
      'least drift': 'kleinste Drift',
    },
  },
  counted: {
    says: 'der gewünschte Schritt gilt für',
    options: { 'a step': 'einen Schritt', 'a flat': 'eine Fläche', 'a turn': 'eine Umdrehung' },
  },
  pieces: {
    says: 'Stücke',
    options: { tightest: 'engste', middling: 'mittlere', loosest: 'weiteste', 'as measured': 'wie gemessen' },
  },
  law: {
    says: 'Stücke verteilt',
    options: { uniform: 'gleichmäßig', normal: 'normal', 'normal, gauged': 'normal, gelehrt' },
  },
  guided: {
    says: 'das Hubteil läuft',
    options: { 'in a guide': 'in einer Führung', 'without a guide': 'ohne Führung' },
  },
  keeper: {
    says: 'das Hubteil hindert am Drehen',
    options: { 'a key': 'eine Passfeder', springs: 'Federn' },
  },
  longer_A: {
    says: 'der längere Teil von Gewinde A',
    options: { 'its screw': 'die Schraube', 'its nut': 'die Mutter' },
  },
  longer_C: {
    says: 'der längere Teil von Gewinde C',
    options: { 'its screw': 'die Schraube', 'its nut': 'die Mutter' },
  },
  turning: {
    says: 'die Hand dreht',
    options: { clockwise: 'im Uhrzeigersinn', 'there and back': 'hin und zurück' },
  },
  asked: {
    says: 'was stimmen muss',
    options: { 'the height': 'die Höhe', 'the place sideways': 'der Ort zur Seite' },
  },
  errors: {
    says: 'Steigungsfehler der beiden Gewinde',
    options: { independent: 'unabhängig', 'the same error': 'derselbe Fehler' },
  },
  periodic: {
    says: 'periodische Fehler der beiden Gewinde',
    options: { 'not measured': 'nicht gemessen', measured: 'gemessen' },
  },
  rubs: {
    says: 'Reibung außer in den Gewinden',
    options: { nothing: 'keine', 'the tip': 'an der Spitze', 'a collar': 'an einem Bund' },
  },
  kept: {
    says: 'was bleibt',
    options: { 'foot 1': 'Fuß 1', 'foot 2': 'Fuß 2', 'foot 3': 'Fuß 3', 'mean height': 'mittlere Höhe' },
  },
  grooves: {
    says: 'Rillen',
    options: {
      'to the middle': 'zur Mitte',
      'all one way': 'alle in einer Richtung',
      'round the middle': 'um die Mitte',
    },
  },
  spring: {
    says: 'Feder zwischen',
    options: {
      'base and carried': 'Grundteil und Hubteil',
      'base and turned': 'Grundteil und Stellteil',
      'turned and carried': 'Stellteil und Hubteil',
      'no parts': 'keinen Teilen',
    },
  },
  action: { says: 'die Feder', options: { pulls: 'zieht', pushes: 'drückt' } },
  attitude: {
    says: 'Lage des Aufbaus',
    options: { upright: 'aufrecht', 'on its side': 'auf der Seite', 'upside down': 'kopfüber' },
  },
  retention: {
    says: 'Kraftverlust',
    options: { stated: 'angegeben', 'fitted to two readings': 'an zwei Ablesungen angepasst' },
  },
  plastic: {
    says: 'gedruckt in',
    options: {
      'as measured': 'wie gemessen',
      PLA: 'PLA',
      PETG: 'PETG',
      ABS: 'ABS',
      ASA: 'ASA',
      PC: 'PC',
      'nylon, dry': 'Polyamid, trocken',
    },
  },
  ranked: {
    says: 'ordnen nach',
    options: { 'least strain': 'kleinste Dehnung', 'least scatter': 'kleinste Streuung', smallest: 'kleinste Größe' },
  },
  shape: {
    says: 'Form',
    options: {
      'the first that does it': 'die erste, die es kann',
      meander: 'Mäander',
      ring: 'Ring',
      oval: 'Oval',
      strap: 'Band',
      'coil, bought': 'Schraubenfeder, gekauft',
    },
  },
  rests: {
    says: 'die Kugel liegt',
    options: {
      'on a flat': 'auf einer Planfläche',
      'in a vee': 'in einem Prisma',
      'on two rollers': 'auf zwei Rollen',
      'in a cone': 'in einem Kegel',
    },
  },
  seat: {
    says: 'die Spitze, eine gehärtete Kugel, steht auf',
    options: {
      'hardened ball steel': 'gehärtetem Wälzlagerstahl',
      'mild steel': 'Baustahl',
      'aluminium 6061-T6': 'Aluminium 6061-T6',
      'aluminium 1100-O, soft': 'Aluminium 1100-O, weich',
      'brass, half hard': 'Messing, halbhart',
    },
  },
  socket: {
    says: 'Innensechskant einer Schraube',
    options: { M3: 'M3', M4: 'M4', M5: 'M5', M6: 'M6', M8: 'M8', M10: 'M10', M12: 'M12' },
  },
  paper: {
    says: 'Papier',
    options: {
      'A4 upright': 'A4 hoch',
      'A3 across': 'A3 quer',
      'A2 across': 'A2 quer',
      'Letter upright': 'Letter hoch',
    },
  },
  sheet: {
    says: 'Blatt',
    options: {
      assembly: 'Zusammenbau',
      base: 'Grundteil',
      'turned part': 'Stellteil',
      'carried part': 'Hubteil',
      spring: 'Feder',
      arm: 'Arm am Stift',
      post: 'Stift',
      foot: 'Fußplatte',
      knob: 'Drehknopf',
    },
  },
  path: {
    says: 'die Teile im Kraftfluss sind aus',
    options: {
      steel: 'Stahl',
      aluminium: 'Aluminium',
      brass: 'Messing',
      granite: 'Granit',
      'printed PLA': 'gedrucktem PLA',
    },
  },
  allowance: {
    says: 'angegebene Steigungsfehler addieren sich',
    options: { 'at worst': 'im schlimmsten Fall', 'root-sum-square': 'quadratisch' },
  },
} as const;

export const TEXT_WORDS = {
  taps: 'Gewindebohrer und Schneideisen, die du hast',
  series: 'Reihen, aus denen du kaufen würdest',
  dividers: 'andere Teilungen zur Hand',
  feet: 'Füße: x, y von jedem',
  readings: 'Ablesungen: x, y und was die Messuhr dort zeigt',
  rounds: 'nächste Runden: neue Ablesungen an denselben Stellen, eine Zeile je Runde',
  stands: 'wo jeder Fuß steht: Umdrehungen von der Mitte seines Hubs, im Uhrzeigersinn plus',
  runs: 'Ablesungen: Umdrehungen, Messuhr, auf oder ab',
  dated: 'Datum, wie 2026-03-31',
  warmth: 'Temperatur von Teil und Ständer, wie 20,5 °C',
  piece: 'Stück, mit seinem Zeichen',
  gauge: 'Messuhr, mit ihrem Zeichen und ihrem eigenen Schein',
  method: 'Verfahren',
  parts: 'Teile, jedes mit Anzahl × Preis',
  prices: 'deine Preise: Art: Anzahl × Preis',
  adjuster: 'Stellelement, ein Teil je Zeile',
  settled: 'Ablesungen nach einer Einstellung: Zeit; Messuhr; Temperatur',
  passport: 'Pässe der Stücke, ein Tag je Zeile',
  ticked: 'erledigte Schritte, nach ihren Namen',
  title: 'Schriftfeld, ein Feld je Zeile',
  hardware: 'Teile in der Schublade, eines je Zeile',
} as const;

/** Eine Wahl, die ein Bild in seinen Worten nennt; was keine ist, bleibt stehen. */
export const chosen = (choice: keyof typeof CHOICE_WORDS, option: string): string =>
  (CHOICE_WORDS[choice].options as Readonly<Record<string, string>>)[option] ?? option;
