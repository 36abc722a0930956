/** Wörter der Schritte, in denen ein Stellelement zusammengebaut und geprüft wird. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/build-steps.ts';
import type { Same } from '../../same.ts';

const PARTS = {
  'base and carried': 'Grundteil und Hubteil',
  'base and turned': 'Grundteil und Stellteil',
  'turned and carried': 'Stellteil und Hubteil',
};

const JOINED = { A: PARTS['base and turned'], C: PARTS['turned and carried'] } as const;

export const WORDS: Same<typeof En.WORDS> = {
  none: '–',
  range: (from, to) => `${from} bis ${to}`,
  turns: (turns, whole, rest, step, steps) =>
    rest === '0'
      ? `${whole} ${whole === 1 ? 'Umdrehung' : 'Umdrehungen'} (${steps} × ${step})`
      : whole === 0
        ? `${turns} Umdrehungen (${rest} × ${step})`
        : `${turns} Umdrehungen (${whole} ganze und ${rest} × ${step}; zusammen ${steps} × ${step})`,
  gauge: {
    name: (joint, thread) => `Gewinde ${joint} lehren, ${spokenNumber(thread)}.`,
    text: ({ classes, measured, coat }) =>
      `${measured ? 'Die Flankendurchmesser wurden gemessen: Schraube und Mutter laufen von Hand zusammen.' : `Toleranzklasse ${classes}: Die Gutlehre läuft von Hand auf, die Ausschusslehre nicht.`} Miss den Flankendurchmesser der Schraube über drei Drähte${coat > 0 ? ', hier mit der Schicht' : ''}.`,
    free: 'Dieses Gewinde hat keine Grenzmaße: Miss es über Drähte und notiere es.',
    count: (screw, nut) => `Schraube ${screw}; Mutter ${nut}`,
  },
  ball: {
    name: 'Die Kugel einpressen.',
    press:
      'Gerade, in einer Dornpresse, hinter einem Schutzschild. Lies die Kraft ab, wenn die Presse sie zeigt: Mehr trägt der Sitz nicht. Dann miss, wie weit die Kugel heraussteht.',
    loose: 'Sie ist in diesem Innensechskant lose: Klebe sie ein oder nimm eine Hülse.',
    set: 'Setze sie gerade ein, hinter einem Schutzschild. Dann miss, wie weit sie heraussteht.',
    count: (ball, over, stands) => `Kugel ${ball}, Übermaß ${over}; sie soll ${stands} herausstehen`,
    stands: (ball, stands) => `Kugel ${ball}, sie soll ${stands} herausstehen`,
    caution: 'Eine gehärtete Kugel kann zerspringen: Schutzbrille, nie ein Hammer.',
  },
  home: {
    name: (joint) => `Gewinde ${joint} bis in die Endlage schrauben.`,
    text: (ground) =>
      ground
        ? 'Bis sein Ende auf dem Boden steht. Leicht: nicht verkeilen.'
        : 'Bis es anschlägt. Leicht: nicht verkeilen.',
    none: 'Es hat keinen Anschlag: Schraube es ein, bis die Länge daneben im Eingriff ist, und miss sie.',
    count: (engaged, gap, joint) =>
      `${engaged} im Eingriff${gap === undefined ? '' : `; ${gap} noch frei zwischen ${JOINED[joint]}`}`,
  },
  back: {
    name: (joint) => `Gewinde ${joint} zurückdrehen.`,
    text: 'Zähle die Umdrehungen und prüfe dann den Spalt zwischen den Stirnflächen der beiden Teile mit dem Messschieber.',
    unseen:
      'Zähle die Umdrehungen: Es gibt keine zwei Flächen der Teile, zwischen denen ein Messschieber stehen könnte.',
    count: (turns, gap, joint) => (gap === undefined ? turns : `${turns}; Spalt ${gap} zwischen ${JOINED[joint]}`),
  },
  lock: {
    name: 'Die Verdrehsicherung anbringen.',
    text: {
      key: 'Die Passfeder geht ohne Kraft in ihre Nut. Trifft sie nicht, drehe das Hubteil zur nächsten Stelle weiter.',
      post: 'Der Stift geht ohne Kraft in seine Nut. Trifft er nicht, drehe das Hubteil zur nächsten Stelle weiter.',
      springs: 'Klemme sie an, wo das Hubteil steht. Drehe das Hubteil dabei nicht.',
      assumed:
        'Welche Verdrehsicherung es hat, ist nicht angegeben. Füge sie ohne Kraft ein. Trifft sie nicht, drehe das Hubteil zur nächsten Stelle weiter.',
      none: 'Es gibt keine: Halte das Hubteil von Hand, während du drehst.',
    },
    count: (radius, clearance) => `trägt bei ${radius}; Spalt ${clearance}`,
  },
  stretch: {
    name: (count, between) =>
      `${count === 1 ? 'Die Feder' : `Die ${count} Federn`} zwischen ${PARTS[between]} spannen.`,
    text: 'Alle gleich. Miss die Zugkraft mit einer Federwaage, wenn du kannst.',
    count: (stretch, force) => `${stretch} länger als frei; zusammen ${force}`,
    unstated: 'Kraft und Federrate sind nicht angegeben',
    caution: 'Schutzbrille: Eine Feder, die losgeht, fliegt.',
  },
  height: {
    name: 'Die Höhe messen.',
    text: 'Von der Unterseite des Grundteils bis oben auf die Spitze, mit dem Messschieber.',
  },
  turn: {
    name: (clockwise) => `${clockwise ? 'Im' : 'Gegen den'} Uhrzeigersinn drehen und ablesen.`,
    text: (stop) =>
      `Gut, wenn die Ablesung in den Grenzen liegt. Weiter drehen endet so: ${stop}. Dann zurück zum Strich und wieder auf null stellen.`,
    count: (turns, go) => `${turns}: gut ${go}`,
  },
  reverse: {
    name: 'Umkehren und ablesen.',
    text: 'Komm von beiden Seiten zum Strich und vergleiche. Ausschuss heißt hier: Eine Flanke liegt nicht an. Suche, was reibt, und spanne die Federn weiter.',
    count: (go, lock, play, windsUnknown) =>
      `gut: höchstens ${go}${lock === undefined ? '' : `, davon ${lock} für die Verdrehsicherung`}${windsUnknown ? ', und dazu die Verdrehung der Sicherung selbst, die nicht bekannt ist: Nenne in ihrer Zeile Stift und Werkstoff oder ihre Steifigkeit' : ''}${play === undefined ? '' : `; das Spiel beider Gewinde allein ist ${play} oder mehr`}`,
  },
  plain: {
    clean: {
      name: 'Beide Gewinde reinigen.',
      text: 'Pinsel und Lösemittel, keine Druckluft; den ersten Gang entgraten. Schrauben laufen auf ganzer Länge von Hand. Dann das Fett, das du benutzen wirst.',
    },
    stone: {
      name: 'Das Grundteil abziehen.',
      text: 'Reibe seine Unterseite auf einem Ölstein eben, oder drehe sie bis auf einen Ring am Rand hohl: Auf der Prüfplatte darf es nicht wackeln. Der Kopf einer gekauften Schraube ist oft ballig: Drehe ihn hohl.',
    },
    mark: {
      name: 'Anreißen.',
      text: 'Reiße einen Strich über Grundteil, Stellteil und Hubteil. Von hier an muss nichts mehr gezählt werden.',
    },
    zero: {
      name: 'Die Messuhr einstellen.',
      text: 'Auf der Achse, rechtwinklig zur Spitze. Drehe einen Schritt hinter den Strich zurück und komm in Richtung des nächsten Schritts wieder zu ihm, zweimal. Dann stelle auf null.',
    },
  },
};
