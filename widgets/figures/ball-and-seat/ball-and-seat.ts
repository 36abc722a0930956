/** A ball in its seat: where it touches, how hard, how far it sinks, and whether anything yields. Drawn to one scale. */

import { seatText } from '#words/contact.ts';
import { WORDS } from '#words/figures/ball-and-seat.ts';
import { type Tip, tipOf } from '../../assembly/tip.ts';
import { at, good, type Result, type Seat, type SeatContact, seatContact } from '../../engine/index.ts';
import { CHOICES, type OptionOf, optionText } from '../../input/choices.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { type Amount, amount, isAmount, type Row, readoutHtml } from '../kit/readout.ts';
import { arrowheads, hatching, type Point, polygon, px } from '../kit/svg.ts';

const WIDTH = 320;
const HEIGHT = 300;
const BALL = 78;
const CENTRE: Point = [WIDTH / 2, 128];

const QUANTITIES = ['F', 'R', 'beta_v', 'R_c', 'e_r'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], 'rests' | 'seat', never>;
type Rests = OptionOf<'rests'>;

interface State {
  readonly F: number;
  readonly R: number;
  readonly rests: Rests;
  readonly seat: Seat;
  readonly tip: Tip;
  readonly contact: SeatContact;
  /** The same ball in every seat, for the table. */
  readonly everywhere: readonly (readonly [rests: Rests, contact: Result<SeatContact>])[];
}

const seatNamed = (rests: Rests, { beta_v, R_c, e_r }: Given['values']): Seat => {
  switch (rests) {
    case 'in a vee':
      return { kind: 'vee', halfAngle: beta_v };
    case 'on two rollers':
      return { kind: 'rollers', radius: R_c, spacing: e_r };
    case 'in a cone':
      return { kind: 'cone', halfAngle: beta_v };
    case 'on a flat':
      return { kind: 'flat' };
  }
};

const stateOf = (numbers: Given): Result<State> => {
  const { values } = numbers;
  const { F, R } = values;
  const { rests } = numbers.choices;
  const tip = tipOf(numbers);
  if (!tip.ok) return tip;
  const seat = seatNamed(rests, values);
  const contactIn = (where: Seat) => seatContact(where, { F, R, E_s: tip.value.E_s, Y: tip.value.Y });
  const contact = contactIn(seat);
  if (!contact.ok) return contact;
  const everywhere = CHOICES.rests.options.map((other) => [other, contactIn(seatNamed(other, values))] as const);
  return good({ F, R, rests, seat, tip: tip.value, contact: contact.value, everywhere });
};

/** Directions from the centre of the ball to its contacts, as angles from straight down. */
const contactAngles = (s: State): readonly number[] => {
  switch (s.seat.kind) {
    case 'flat':
      return [0];
    case 'vee':
    case 'cone':
      return [Math.PI / 2 - s.seat.halfAngle, -(Math.PI / 2 - s.seat.halfAngle)];
    case 'rollers': {
      const a = rollerAngle(s.seat, s.R);
      return [a, -a];
    }
  }
};

const rollerAngle = ({ spacing, radius }: Extract<Seat, { kind: 'rollers' }>, R: number): number =>
  Math.asin(Math.min(1, spacing / (2 * (R + radius))));

const seatShape = (s: State): string => {
  const [x, y] = CENTRE;
  const floor = HEIGHT - 12;
  if (s.seat.kind === 'flat')
    return `<path class="part base" fill="url(#seat-base)" d="${polygon([
      [24, y + BALL],
      [WIDTH - 24, y + BALL],
      [WIDTH - 24, floor],
      [24, floor],
    ])}"/>`;
  if (s.seat.kind === 'rollers') {
    const k = BALL / s.R;
    const r = s.seat.radius * k;
    const a = rollerAngle(s.seat, s.R);
    const dx = (BALL + r) * Math.sin(a);
    const dy = (BALL + r) * Math.cos(a);
    return `<clipPath id="seat-clip"><rect width="${WIDTH}" height="${HEIGHT}"/></clipPath><g clip-path="url(#seat-clip)">${[-1, 1].map((side) => `<circle class="part base" fill="url(#seat-base)" cx="${px(x + side * dx)}" cy="${px(y + dy)}" r="${px(r)}"/>`).join('')}</g>`;
  }
  // Walls through the contacts, square to the line from the centre.
  const half = s.seat.halfAngle;
  const apex = y + BALL / Math.sin(half);
  const reach = Math.min((apex - (y - 20)) * Math.tan(half), WIDTH / 2 - 16);
  const rim = apex - reach / Math.tan(half);
  const bottom = Math.min(apex, floor - 8);
  const wide = (apex - bottom) * Math.tan(half);
  // Of a cone the far wall is seen behind the cut, of a vee nothing but its end.
  const behind =
    s.seat.kind === 'cone'
      ? `<path class="bore-wall base" d="${polygon([
          [x - reach, rim],
          [x - wide, bottom],
          [x + wide, bottom],
          [x + reach, rim],
        ])}"/><path class="behind" d="M${px(x - reach)} ${px(rim)}H${px(x + reach)}"/>`
      : '';
  return `${behind}<path class="part base" fill="url(#seat-base)" d="${polygon([
    [x - reach, rim],
    [x - wide, bottom],
    [x + wide, bottom],
    [x + reach, rim],
    [x + reach + 14, rim],
    [x + reach + 14, floor],
    [x - reach - 14, floor],
    [x - reach - 14, rim],
  ])}"/>`;
};

const size = (v: number, view: UnitView) => show(v, { shown: 'motion', digits: 4 }, view);
const pressure = (p: number) => `${numeral(p, 3)} MPa`;
const force = (v: number) => show(v, { shown: 'force', digits: 3 }, 'metric');

const rows = (s: State): Row[] => {
  const c = s.contact;
  const elastic = c.state === 'elastic';
  const only = (row: Amount): Row => (elastic ? row : [row.key, row.name, WORDS.notElastic]);
  return [
    c.places === 0
      ? [WORDS.rows.forceOnRing, `${numeral(c.across, 3)} N/mm`]
      : amount('across', c.places === 1 ? WORDS.rows.forceOnOne : WORDS.rows.forceOnEach, c.across, 'force', 3),
    only(
      amount(
        'halfWidth',
        c.places === 0 ? WORDS.rows.halfWidthOfRing : WORDS.rows.halfWidthOfPatch,
        c.halfWidth,
        'motion',
        3,
      ),
    ),
    only(amount('peak', WORDS.rows.peak, c.p0, 'MPa', 3)),
    only(amount('sink', c.estimate ? WORDS.rows.sinksEstimate : WORDS.rows.sinks, c.sink, 'motion', 3)),
    only(amount('stiffness', WORDS.rows.stiffness, c.stiffness, 'N/µm', 3)),
    amount('yields', WORDS.rows.yields, c.yieldLoad, 'force', 3),
  ];
};

/** The circle on which a ball touches a cone, seen a little from above: its front on the ball, its back behind it. */
const ring = ([cx, cy]: Point): string => {
  const [x] = CENTRE;
  const r = cx - x;
  const arc = (sweep: 0 | 1) => `M${px(x - r)} ${px(cy)}A${px(r)} ${px(r / 5)} 0 0 ${sweep} ${px(x + r)} ${px(cy)}`;
  return `<path class="seat-ring" d="${arc(0)}"/><path class="seat-ring far" d="${arc(1)}"/>`;
};

const draw = (s: State, view: UnitView): string => {
  const [x, y] = CENTRE;
  const angles = contactAngles(s);
  const on = (a: number, r: number): Point => [x + r * Math.sin(a), y + r * Math.cos(a)];
  const pushes = angles
    .map((a) => {
      const [[cx, cy], [ex, ey]] = [on(a, BALL), on(a, BALL - 34)];
      return `<path class="arrow strong" d="M${px(cx)} ${px(cy)}L${px(ex)} ${px(ey)}" marker-end="url(#seat-head)"/><circle class="seat-dot" cx="${px(cx)}" cy="${px(cy)}" r="5"/>`;
    })
    .join('');
  return (
    `<svg class="seat-view" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.label(s.rests)}"><defs>${hatching('seat-base', 45, 5, 'ground base')}</defs>${arrowheads('seat-head', 'strong')}` +
    `${seatShape(s)}<circle class="part carried solid" cx="${x}" cy="${y}" r="${BALL}"/>${s.seat.kind === 'cone' ? ring(on(at(angles, 0), BALL)) : ''}<path class="axis" d="M${x} ${y - BALL - 6}V${HEIGHT - 2}"/>` +
    `<path class="arrow strong" d="M${x} 6V${y - BALL - 3}" marker-end="url(#seat-head)"/><text class="value" x="${x + 14}" y="24">${force(s.F)}</text>${pushes}</svg>` +
    `<div class="seat-side">${readoutHtml(rows(s), view)}<p class="line">${escapeText(seatText(s.contact))}</p></div>`
  );
};

export const ballAndSeat = defineFigure({
  name: 'ball-and-seat',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['rests', 'seat'],
  chief: ['F', 'R', 'rests'],
  groups: { seat: ['seat', 'beta_v', 'R_c', 'e_r'] },
  idle: ({ choices: { rests } }) => [
    ...(rests === 'in a vee' || rests === 'in a cone' ? [] : (['beta_v'] as const)),
    ...(rests === 'on two rollers' ? [] : (['R_c', 'e_r'] as const)),
  ],
  state: stateOf,
  draw,
  printed: (s) => rows(s).filter(isAmount),
  caption: ({ R, F, rests, tip, contact }, view) =>
    WORDS.caption({
      radius: show(R, { shown: 'size' }, view),
      force: force(F),
      rests,
      seat: tip.seat.name,
      yields: force(contact.yieldLoad),
      elastic:
        contact.state === 'elastic'
          ? { sink: size(contact.sink, view), estimate: contact.estimate, peak: pressure(contact.p0) }
          : undefined,
    }),
  table: ({ everywhere }, view) => ({
    head: WORDS.head,
    rows: everywhere.map(([rests, found]) => {
      if (!found.ok) return [optionText('rests', rests), reasonOf(found), '', ''];
      const contact = found.value;
      const elastic = contact.state === 'elastic';
      return [
        optionText('rests', rests),
        elastic ? size(contact.sink, view) : WORDS.notElastic,
        elastic ? pressure(contact.p0) : WORDS.notElastic,
        force(contact.yieldLoad),
      ];
    }),
  }),
});
