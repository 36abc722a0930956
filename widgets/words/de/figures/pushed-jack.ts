/** Wörter des gebauten Stellelements, von der Seite gedrückt. */
import type * as En from '../../en/figures/pushed-jack.ts';
import type { Same } from '../../same.ts';

export type JointWords = En.JointWords;

const NAMES = {
  ring: 'das Grundteil auf seinem Ring',
  A: 'Gewinde A',
  C: 'Gewinde C',
  guide: 'die Führung',
  key: 'die Passfeder',
};
const GIVES = {
  'thread A': 'Gewinde A',
  'thread C': 'Gewinde C',
  base: 'das Grundteil',
  ball: 'die Kugel',
  shank: 'der Schaft',
};
const TOUCHES = {
  everywhere: 'liegt überall an',
  'in places': 'liegt stellenweise an',
  'both flanks': 'steht schräg und liegt an beiden Flanken an',
  'pulled flank': 'hängt an der Zugflanke',
  nowhere: 'liegt nirgends an',
};

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Das gebaute Stellelement, von der Seite gedrückt',
  elevation: (factor) =>
    `Das Stellelement als Körper an der letzten Stelle, seine Schräge und der Weg seiner Spitze ${factor}-mal zu groß gezeichnet`,
  plan: (factor) => `Der Weg der Spitze von oben, ${factor}-mal zu groß gezeichnet`,
  drawn: {
    lean: (factor) => `Schräge und Weg ${factor}-mal`,
    path: (factor) => `Weg von oben, etwa ${factor}-mal`,
  },
  bar: (length) => length,
  panel: 'Höhe minus der nach der Soll-Nettosteigung',
  legend: { pushed: 'gedrückt', quiet: 'ohne den Druck' },
  working: 'Die Umdrehungen werden durchgerechnet …',
  progress: 'Anteil der gerechneten Umdrehungen',
  caption: (v) =>
    `Unter ${v.load} bewegt ein Druck von ${v.push} in ${v.height} Höhe die Spitze um ${v.moves} zur Seite. Über ${v.turns} bleibt die Spitze in einem Kreis von ${v.round} und verlässt die Sollhöhe um bis zu ${v.off}; ${v.joints}.`,
  workingCaption: (turns) => `${turns} werden durchgerechnet; der Weg folgt.`,
  joint: ({ joint, touches }) => `${NAMES[joint]} ${TOUCHES[touches]}`,
  jointName: (joint) => NAMES[joint],
  touches: (touches) => TOUCHES[touches],
  readings: {
    moves: 'zur Seite durch den Druck',
    round: 'Breite des Wegs',
    high: 'Höhe daneben, höchstens',
    torque: 'Drehmoment der Hand, im Mittel',
    lost: 'Verdrehung des Hubteils',
    gauge: 'eine Messuhr neben der Achse, durch die Schräge daneben',
    stiffness: (softest) => `Steifigkeit unter dieser Last; am meisten gibt nach: ${GIVES[softest]}`,
    frequency: 'die Last schwingt darauf',
  },
  joints: {
    head: ['Verbindung', 'längs der Achse', 'quer dazu', 'liegt an'],
  },
  head: [
    'Umdrehungen',
    'seitlich, in Richtung des Drucks',
    'seitlich, quer dazu',
    'Höhe daneben',
    'Neigung',
    'Drehmoment',
  ],
  noneYet: { head: ['Umdrehungen'], rows: [['noch keine'], ['noch keine']] },
};
