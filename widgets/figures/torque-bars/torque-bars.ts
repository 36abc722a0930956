/**
 * Torque both ways as bars: what friction takes in each thread, what each slope asks or gives back, what a collar
 * takes; the same for a plain screw of thread C. What adds lies in the upper lane, what is given back runs home in
 * the lower one, and the upright mark is what the hand feels.
 */

import { WORDS } from '#words/figures/torque-bars.ts';
import { type EffortState, effortState, senseText, torqueText } from '../../assembly/effort-of.ts';
import type { ThreadEffort } from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

const WIDTH = 640;
const HEIGHT = 42;
const EDGE = 4;

type Kind = 'a-rub' | 'a-slope' | 'c-rub' | 'c-slope' | 'key' | 'collar';

interface Piece {
  readonly kind: Kind;
  readonly torque: number;
}

interface Case {
  readonly what: string;
  readonly way: string;
  readonly torque: number;
  readonly pieces: readonly Piece[];
}

const KINDS: readonly Kind[] = ['a-rub', 'a-slope', 'c-rub', 'c-slope', 'key', 'collar'];

/**
 * Friction is hatched, each thread its own way. It is asked for here and not in a style sheet: on a page the ids of a figure carry
 * the name of its set of numbers, which no style sheet knows.
 */
const HATCHED: Readonly<Partial<Record<Kind, string>>> = { 'a-rub': 'torque-hatch-a', 'c-rub': 'torque-hatch-c' };

/** A piece of a bar or of the key; `place` is its rectangle. */
const pieceHtml = (kind: Kind, place: string): string =>
  `<rect class="piece ${kind}"${HATCHED[kind] === undefined ? '' : ` fill="url(#${HATCHED[kind]})"`} ${place}/>`;

const piecesOf = (a: ThreadEffort | undefined, c: ThreadEffort, key: number, collar: number): Piece[] =>
  [
    ...(a
      ? [
          { kind: 'a-rub', torque: a.friction },
          { kind: 'a-slope', torque: a.lead },
        ]
      : []),
    { kind: 'c-rub', torque: c.friction },
    { kind: 'c-slope', torque: c.lead },
    { kind: 'key', torque: key },
    { kind: 'collar', torque: collar },
  ].filter((p): p is Piece => p.torque !== 0);

const casesOf = ({ A, C, pair, plain }: EffortState): Case[] => {
  const names = WORDS.pair(A.designation, C.designation);
  const { against, along } = pair;
  return [
    {
      what: names,
      way: WORDS.turning(WORDS.raised, senseText(against.sense)),
      torque: against.torque,
      pieces: piecesOf(against.A, against.C, against.key, against.collar),
    },
    {
      what: names,
      way: WORDS.turning(WORDS.lowered, senseText(along.sense)),
      torque: along.torque,
      pieces: piecesOf(along.A, along.C, along.key, along.collar),
    },
    {
      what: WORDS.alone(C.designation),
      way: WORDS.raised,
      torque: plain.against,
      pieces: piecesOf(undefined, plain.up, 0, plain.rubbing),
    },
    {
      what: WORDS.alone(C.designation),
      way: WORDS.lowered,
      torque: plain.along,
      pieces: piecesOf(undefined, plain.down, 0, plain.rubbing),
    },
  ];
};

const sum = (pieces: readonly Piece[]): number => pieces.reduce((total, p) => total + p.torque, 0);
const adding = (c: Case) => c.pieces.filter((p) => p.torque > 0);
const givingBack = (c: Case) => c.pieces.filter((p) => p.torque < 0);

/** From torque to a place on the bars, the same for all of them. */
const scaleOf = (cases: readonly Case[]): ((torque: number) => number) => {
  const most = Math.max(...cases.map((c) => sum(adding(c))), 1e-9);
  const least = Math.min(0, ...cases.map((c) => c.torque));
  return (torque) => EDGE + ((WIDTH - 2 * EDGE) * (torque - least)) / (most - least);
};

/** What a prediction asks for stands covered, each in its own place beside what it is of. */
const TOLD = ' data-told';

const bar = (c: Case, x: (torque: number) => number, free: number | undefined, told: string): string => {
  const rect = (kind: Kind, from: number, to: number, lane: 'up' | 'back'): string => {
    const [a, b] = [x(from), x(to)];
    const left = Math.min(a, b);
    return pieceHtml(
      kind,
      `x="${px(left)}" y="${lane === 'up' ? 4 : 25}" width="${px(Math.max(0.8, Math.abs(b - a)))}" height="${lane === 'up' ? 18 : 12}"`,
    );
  };
  const laid = (pieces: readonly Piece[], from: number, lane: 'up' | 'back'): string =>
    pieces
      .map((p, i) => {
        const start = from + sum(pieces.slice(0, i));
        return rect(p.kind, start, start + p.torque, lane);
      })
      .join('');
  const up = laid(adding(c), 0, 'up');
  const back = laid(givingBack(c), sum(adding(c)), 'back');
  const mark = free === undefined ? '' : `<path class="free-mark" d="M${px(x(free))} 25l-5 12h10z" data-sym="M_free"/>`;
  return (
    `<svg class="torque-bar" viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true"><path class="zero" d="M${px(x(0))} 0V${HEIGHT}"/>` +
    `<g${told}>${up}${back}${mark}<path class="total" d="M${px(x(c.torque))} 0V${HEIGHT}"/></g></svg>`
  );
};

const split = (c: Case, view: UnitView): string =>
  c.pieces
    .map((p, i) => {
      const size = torqueText(Math.abs(p.torque), view);
      return `${p.torque < 0 ? '− ' : i === 0 ? '' : '+ '}${size} ${WORDS.kinds[p.kind]}`;
    })
    .join(' ');

const swatch = (kind: Kind): string =>
  `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true">${pieceHtml(kind, 'x="1" y="1" width="24" height="12"')}</svg>${WORDS.kinds[kind]}</li>`;

const HATCH = ['a', 'c']
  .map(
    (thread) =>
      `<pattern id="torque-hatch-${thread}" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(${thread === 'a' ? 45 : -45})"><path class="hatch ${thread}" d="M1.5 0V6"/></pattern>`,
  )
  .join('');

const holds = ({ pair }: EffortState, view: UnitView): string =>
  pair.selfLocking
    ? WORDS.holds(torqueText(pair.along.torque, view))
    : pair.along.torque === 0
      ? WORDS.onTheEdge
      : WORDS.runsBack(torqueText(-pair.along.torque, view));

const efficiencyText = (share: number, view: UnitView): string => show(share, { shown: 'percent', digits: 3 }, view);

const draw = (s: EffortState, view: UnitView): string => {
  const cases = casesOf(s);
  const x = scaleOf(cases);
  const rows = cases.map((c, i) => {
    const told = i < 2 ? TOLD : '';
    return (
      `<div class="torque-case"><p class="line">${WORDS.caseTorque(c.what, c.way, `<b${i === 0 ? ' data-sym="M"' : ''}${told}>${torqueText(c.torque, view)}</b>`)}</p>` +
      `${bar(c, x, i === 0 ? s.pair.frictionless : undefined, told)}<p class="split"${told}>${split(c, view)}</p></div>`
    );
  });
  const kinds = KINDS.filter(
    (k) => (k !== 'collar' && k !== 'key') || cases.some((c) => c.pieces.some((p) => p.kind === k)),
  );
  return (
    `<svg class="hatches" width="0" height="0" aria-hidden="true"><defs>${HATCH}</defs></svg>` +
    `<ul class="legend">${kinds.map(swatch).join('')}` +
    `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><path class="total" d="M13 0V14"/></svg>${WORDS.handFeels}</li>` +
    `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><path class="free-mark" d="M13 1l-5 12h10z"/></svg>${WORDS.frictionless(torqueText(s.pair.frictionless, view))}</li></ul>` +
    `<div class="torque-view" role="img" aria-label="${WORDS.drawing}">${rows.join('')}</div>`
  );
};

const compared = ({ pair, plain, C }: EffortState): string => {
  const times = numeral(
    pair.against.torque > plain.against ? pair.against.torque / plain.against : plain.against / pair.against.torque,
    3,
  );
  return times === '1.00'
    ? WORDS.asMuch(C.designation)
    : pair.against.torque > plain.against
      ? WORDS.times(times, C.designation)
      : WORDS.lessThan(times, C.designation);
};

export const torqueBars = defineFigure({
  name: 'torque-bars',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['F', 'mu', 'd_b', 'mu_g', 'r_k'],
  choices: ['rubs'],
  chief: ['F', 'mu'],
  groups: { threads: ['A', 'C'], rubbing: ['rubs', 'd_b', 'mu_g', 'r_k'] },
  idle: ({ choices, values }) => [
    ...(choices.rubs === 'nothing' ? (['d_b'] as const) : []),
    ...(values.mu_g === 0 ? (['r_k'] as const) : []),
  ],
  state: (numbers) => effortState(numbers),
  draw,
  rows: (s) => [
    amount('raise', WORDS.rows.raise, s.pair.against.torque, 'N·mm', 4),
    amount('lower', WORDS.rows.lower, s.pair.along.torque, 'N·mm', 4),
    amount('efficiency', WORDS.rows.efficiency, s.pair.efficiency, 'percent', 3),
    amount('alone', WORDS.rows.alone, s.plain.against, 'N·mm', 4),
  ],
  caption: (s, view) =>
    WORDS.caption({
      load: show(s.load, { shown: 'force' }, view),
      friction: numeral(s.mu),
      torque: torqueText(s.pair.against.torque, view),
      compared: compared(s),
      efficiency: efficiencyText(s.pair.efficiency, view),
      plain: s.C.designation,
      plainEfficiency: efficiencyText(s.plain.efficiency, view),
      holds: holds(s, view),
    }),
  table: (s, view) => {
    const of = (c: Case, kind: Kind): string => {
      const piece = c.pieces.find((p) => p.kind === kind);
      return piece ? torqueText(piece.torque, view) : '';
    };
    return {
      head: [WORDS.caseHead, ...KINDS.map((kind) => WORDS.kinds[kind]), WORDS.torqueHead],
      rows: casesOf(s).map((c) => [
        WORDS.case(c.what, c.way),
        ...KINDS.map((k) => of(c, k)),
        torqueText(c.torque, view),
      ]),
    };
  },
});
