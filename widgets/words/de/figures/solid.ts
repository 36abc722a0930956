/** Wörter des Bildes, das ein Stellelement als Körper zeigt. */
import type * as En from '../../en/figures/solid.ts';
import type { Same } from '../../same.ts';

type Caption = Parameters<typeof En.WORDS.caption>[0];
type Way = Caption['turnedWay'];

const ASIDE = {
  'all round': ['trägt', 'tragen', 'ringsum'],
  lifted: ['hebt sich', 'heben sich', 'rechts ab'],
  tipped: ['kippt', 'kippen', ', und rechts hält die andere Flanke dagegen'],
} as const;
const pushed = (push: string, list: Caption['aside']): string => {
  const [first, second] = list;
  if (!first) return '';
  const says = (who: string, aside: typeof first.aside, both: boolean): string =>
    `${who} ${ASIDE[aside][both ? 1 : 0]} ${ASIDE[aside][2]}`.replace(' ,', ',');
  const said =
    second?.aside === first.aside
      ? says('beide Gewinde', first.aside, true)
      : list.map(({ thread, aside }) => says(`Gewinde ${thread}`, aside, false)).join('; ');
  return `Von rechts mit ${push} gedrückt, ohne Führung: ${said}.`;
};

const PARTS = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' };
const moved = (part: string, by: string, way: Way): string =>
  way === 'nowhere'
    ? `das ${part} steht, wo es stand`
    : `das ${part} ist um ${by} ${way === 'up' ? 'nach oben' : 'nach unten'} gegangen`;

const FACES = { pressed: 'zum Grundteil zeigt', pulled: 'vom Grundteil weg zeigt' };
const FLANKS = { pressed: 'Druckflanke', pulled: 'Zugflanke' };
const carries = (list: Caption['carries'], plain: boolean): string => {
  const [first, second] = list;
  if (!first) return '';
  if (second && first.flank === second.flank)
    return `Beide Gewinde tragen auf der ${FLANKS[first.flank]}, der Seite des Gangs, die ${FACES[first.flank]}.`;
  return list
    .map(
      ({ thread, flank }) =>
        `${plain ? 'Das Gewinde' : `Gewinde ${thread}`} trägt auf seiner ${FLANKS[flank]}, der Seite des Gangs, die ${FACES[flank]}.`,
    )
    .join(' ');
};

const LOCKS = {
  none: 'die Verdrehsicherung',
  assumed: 'der Stift',
  post: 'der Stift',
  key: 'die Passfeder',
  springs: 'die Federn',
};
const LABELS = { none: 'Sicherung', assumed: 'Stift', post: 'Stift', key: 'Passfeder', springs: 'Federn' };

const held = (
  by: keyof typeof LOCKS,
  springs: { readonly most: string; readonly enough: boolean } | undefined,
): string => {
  if (!springs) return `${LOCKS[by]} ${by === 'springs' ? 'müssen' : 'hält'} es${by === 'springs' ? ' halten' : ''}`;
  return springs.enough
    ? `die Federn müssen es halten, und ihr ganzer Zug an ihrem Radius ist ${springs.most}`
    : `diese Federn können es nicht halten, denn ihr ganzer Zug an ihrem Radius ist nur ${springs.most}. Nimm einen Stift oder eine Passfeder`;
};

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Das Stellelement als Körper',
  drawing: (name) =>
    `${name === '' ? 'Das Stellelement' : `Das Stellelement ${name}`} von der Seite und ein wenig von oben; drehe es mit dem Drehknopf`,
  parts: PARTS,
  motion: (by, way) => (way === 'nowhere' ? '' : `${way === 'up' ? '▲' : '▼'} ${by}`),
  knob: 'Stellteil, von oben',
  sliders: { round: 'herumsehen', above: 'von oben sehen', cut: 'aufschneiden', apart: 'auseinanderziehen' },
  steps: {
    begin: 'Zusammenbauen',
    first: (count) => `Die Teile, noch nicht verbunden. ${count} Schritte bauen sie zusammen.`,
    of: (step, count) => `${step} von ${count}:`,
    count: (count) => (count === '–' ? '' : `Zählen: ${count}.`),
    back: 'Schritt zurück',
    on: 'Nächster Schritt',
    whole: 'Ganz zeigen',
  },
  lens: {
    name: (thread, times) => `Gewinde ${thread}, × ${times}`,
    gap: (gap) => `Spalt ${gap}`,
    both: (gap) => `frei, ${gap}`,
    lifted: (gap) => `abgehoben, ${gap}`,
    tipped: (gap) => `gekippt, ${gap}`,
  },
  torque: { by: (lock) => `${LABELS[lock]} ${lock === 'springs' ? 'halten' : 'hält'}` },
  degrees: (count) => `${count}°`,
  whole: 'ganz',
  together: 'zusammen',
  share: (count) => `${count} %`,
  caption: (v) =>
    [
      v.stopped && `Bis ${v.stopped.asked} Umdrehungen geht es nicht: ${v.stopped.why}.`,
      v.turns === '0'
        ? 'Bei 0 Umdrehungen läuft der angerissene Strich gerade über alle Teile.'
        : `${v.turns === '1' ? 'Eine Umdrehung' : `${v.turns} Umdrehungen`} ${v.clockwise ? 'im' : 'gegen den'} Uhrzeigersinn.`,
      v.turns !== '0' &&
        `${moved(PARTS.turned, v.turned, v.turnedWay).replace('das', 'Das')}${v.carried === undefined ? '' : `, und ${moved(PARTS.carried, v.carried, v.carriedWay)}`}.`,
      !v.locked &&
        v.carried !== undefined &&
        'Die Verdrehsicherung ist ab, darum geht das Hubteil mit dem Stellteil herum.',
      carries(v.carries, v.carried === undefined),
      v.push !== undefined && pushed(v.push, v.aside),
      v.handed &&
        `Beim Weiterdrehen drückt Gewinde C das Hubteil mit ${v.handed.torque} herum: ${held(v.handed.by, v.handed.springs)}.`,
    ]
      .filter(Boolean)
      .join(' '),
  rows: {
    turned: 'Weg des Stellteils',
    carried: 'Weg des Hubteils',
    height: 'Spitze über dem Grundteil',
    play: (thread) => `Axialspiel von Gewinde ${thread}`,
    handed: 'Drehmoment auf die Verdrehsicherung',
  },
  head: (carries) => [
    'Umdrehungen, im Uhrzeigersinn',
    'Stellteil',
    ...(carries ? ['Hubteil'] : []),
    'Spitze über dem Grundteil',
  ],
};
