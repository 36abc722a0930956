/**
 * Five ways to one wanted motion within one height, drawn side by side to one scale, each with what it moves for the finest
 * angle of the hand, how far it goes, what turns it, what gives, the room it takes and the reader’s own price.
 */

import { WORDS } from '#words/figures/other-ways.ts';
import { at } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, numeral, show, type UnitView } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure } from '../kit/figure.ts';
import { type Amount, amount, type Row, readoutHtml } from '../kit/readout.ts';
import { hatching, px } from '../kit/svg.ts';
import { cutOff, drawingOf, type Frame, frameOf } from './drawing.ts';
import { QUANTITIES, type WaysState, type WholeWay, waysState } from './state.ts';

const motion = (v: number, view: UnitView) => show(v, { shown: 'motion', digits: 3 }, view);
const size = (v: number, view: UnitView) => show(v, { shown: 'size', digits: 3 }, view);
const torque = (v: number, view: UnitView) => show(v, { shown: 'N·mm', digits: 3 }, view);

/**
 * So much over the wish still counts as a step that was wanted: the finest angle of a hand, from which it follows, is known no better. A
 * convention of this notebook.
 */
const HAND_BAND = 0.05;

const priceText = ({ price }: WholeWay): string =>
  price === undefined ? WORDS.noPrice : Number.isInteger(price) ? numeral(price) : fixed(price, 2);

const torqueText = (way: WholeWay, view: UnitView): string =>
  way.torque.ok ? torque(way.torque.value, view) : WORDS.cantBeTurned;

/** N/mm up to a million; the softest part is what to mend first. */
const stiffnessText = (way: WholeWay): string =>
  way.chain.ok ? `${numeral(way.chain.value.stiffness / 1000, 3)}\u00a0N/µm` : WORDS.noFigure;

const giveText = (way: WholeWay, view: UnitView): string =>
  way.give.ok && way.chain.ok ? WORDS.gives(motion(way.give.value, view), way.chain.value.softest) : WORDS.noFigure;

/** What it fails of the wanted motion, in the reader’s units; empty where it does all. */
const failings = (way: WholeWay, { wanted }: WaysState, view: UnitView): string[] => {
  const slack = 1 + 1e-9;
  return [
    ...(way.resolution > wanted.resolution * (1 + HAND_BAND) * slack
      ? [WORDS.tooCoarse(motion(wanted.resolution, view))]
      : []),
    ...(way.stroke * slack < wanted.stroke ? [WORDS.tooShort(motion(wanted.stroke, view))] : []),
    ...(way.height > wanted.height * slack ? [WORDS.tooHigh(size(wanted.height, view))] : []),
    ...(way.torque.ok ? [] : [reasonOf(way.torque)]),
    ...(way.chain.ok ? [] : [reasonOf(way.chain)]),
  ];
};

const doesAll = (way: WholeWay, { wanted }: WaysState): string =>
  way.resolution > wanted.resolution * (1 + 1e-9)
    ? WORDS.doesAllWithin(show(HAND_BAND, { shown: 'percent' }, 'metric'))
    : WORDS.doesAll;

/** How it comes by its motion. */
const made = (way: WholeWay, { shop, threads: { B, D, A, C } }: WaysState, view: UnitView): string => {
  const steps = numeral(shop.driveLead / way.perTurn, 3);
  switch (way.name) {
    case 'plain screw':
      return way.perTurn > B.L * (1 + 1e-9)
        ? WORDS.coarserScrew(size(way.perTurn, view), B.designation)
        : WORDS.finestScrew(B.designation);
    case 'wedge':
      return WORDS.wedge(steps, D.designation);
    case 'lever':
      return WORDS.lever(steps, D.designation);
    case 'squeezed balls':
      return WORDS.balls(numeral(way.perTurn / shop.driveLead, 3), D.designation);
    case 'differential screw':
      return WORDS.pair(A.designation, C.designation);
  }
};

/** The numbers of a way that can be asked backwards. */
const amountsOf = (way: WholeWay): Amount[] => {
  const of = (key: 'resolution' | 'stroke' | 'height', shown: 'motion' | 'size', digits: number): Amount => ({
    ...amount(
      `${way.name}-${key}`.replace(/ /g, '-'),
      `${WORDS.facts[key]}, ${WORDS.way(way.name)}`,
      way[key],
      shown,
      digits,
    ),
    short: WORDS.facts[key],
  });
  return [of('resolution', 'motion', 3), of('stroke', 'motion', 3), of('height', 'size', 3)];
};

const facts = (way: WholeWay, view: UnitView): Row[] => [
  ...amountsOf(way),
  [WORDS.facts.effort, torqueText(way, view)],
  [WORDS.facts.stiffness, stiffnessText(way)],
  [WORDS.facts.play, motion(way.play, view)],
  [WORDS.facts.length, way.length > 0 ? size(way.length, view) : WORDS.ownWidth],
  [WORDS.facts.price, priceText(way)],
];

const stood = (way: WholeWay, s: WaysState, frame: Frame): string =>
  `<div class="stood" style="--w: ${px(at(frame.widths, s.ways.indexOf(way)))}">${drawingOf(way, s, frame)}` +
  `<p class="line">${WORDS.way(way.name)}${cutOff(way, s, frame) ? ` <span class="cut-off">${WORDS.cutOff}</span>` : ''}</p></div>`;

const card = (way: WholeWay, s: WaysState, view: UnitView): string => {
  const fails = failings(way, s, view);
  return (
    `<section class="way-card" data-way="${way.name}"><p class="way-name">${WORDS.way(way.name)}</p>` +
    `<p class="made">${escapeText(made(way, s, view))}</p>` +
    readoutHtml(facts(way, view), view) +
    (fails.length === 0
      ? `<p class="does">✓ ${doesAll(way, s)}</p>`
      : fails.map((f) => `<p class="fails">✗ ${escapeText(f)}</p>`).join('')) +
    `</section>`
  );
};

const key = (role: string, words: string): string =>
  `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><rect class="part ${role}"${role === 'base' ? ' fill="url(#other-ways-base)"' : ''} x="1" y="1" width="24" height="12"/></svg>${words}</li>`;

const draw = (s: WaysState, view: UnitView): string => {
  const frame = frameOf(s);
  const together = frame.widths.reduce((a, b) => a + b, 0);
  const row = Math.max(...frame.widths, together / 2);
  const roof = WORDS.roof(size(s.wanted.height, view), s.wanted.height > frame.high);
  return (
    `<svg class="hatches" width="0" height="0" aria-hidden="true"><defs>${hatching('other-ways-base', 45, 5, 'ground base')}</defs></svg>` +
    `<ul class="legend">${key('turned', WORDS.turned)}${key('carried', WORDS.carried)}${key('base', WORDS.fixed)}` +
    `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><path class="tip" d="M7 12l6 -9l6 9z"/></svg>${WORDS.tip}</li>` +
    `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><path class="roof" d="M0 7H26"/></svg>${roof}</li>` +
    `<li><svg class="swatch" viewBox="0 0 26 14" aria-hidden="true"><path class="measure" d="M3 3v8m0 -4h20m0 -4v8"/></svg>${size(10, view)}</li></ul>` +
    `<div class="line-up" style="${columnsOf(frame)}; --all: ${px(together)}; --row: ${px(row)}">${s.ways.map((way) => stood(way, s, frame)).join('')}</div>`
  );
};

/** Columns as the drawings need them, for the drawings and for the numbers under them. */
const columnsOf = ({ widths }: Frame): string => `--columns: ${widths.map((w) => `minmax(0, ${px(w)}fr)`).join(' ')}`;

const readings = (s: WaysState, view: UnitView): string =>
  `<div class="five-ways" style="${columnsOf(frameOf(s))}">${s.ways.map((way) => card(way, s, view)).join('')}</div>`;

const least = (ways: readonly WholeWay[], of: (way: WholeWay) => number | undefined): WholeWay | undefined =>
  ways.reduce<WholeWay | undefined>((best, way) => {
    const value = of(way);
    const sofar = best === undefined ? undefined : of(best);
    return value !== undefined && (sofar === undefined || value < sofar) ? way : best;
  }, undefined);

const turnedBy = (way: WholeWay) => (way.torque.ok ? way.torque.value : undefined);
const givesBy = (way: WholeWay) => (way.give.ok ? way.give.value : undefined);

const caption = (s: WaysState, view: UnitView): string => {
  const able = s.ways.filter((way) => failings(way, s, view).length === 0);
  const unpriced = s.ways.filter((way) => way.price === undefined).map((way) => WORDS.way(way.name));
  const [light, stiff, low, cheap] = [
    least(able, turnedBy),
    least(able, givesBy),
    least(able, (w) => w.height),
    least(able, (w) => w.price),
  ];
  return WORDS.caption({
    wanted: {
      motion: show(s.wanted.resolution, { shown: 'motion' }, view),
      hand: show(s.wanted.hand, { shown: 'degrees' }, view),
      stroke: show(s.wanted.stroke, { shown: 'motion' }, view),
      height: show(s.wanted.height, { shown: 'size' }, view),
    },
    able: able.map((way) => WORDS.way(way.name)),
    unpriced,
    noPrices: unpriced.length === s.ways.length,
    lightest: light && { name: WORDS.way(light.name), amount: torqueText(light, view) },
    stiffest: stiff && WORDS.way(stiff.name),
    lowest: low && { name: WORDS.way(low.name), amount: size(low.height, view) },
    cheapest: cheap && { name: WORDS.way(cheap.name), amount: priceText(cheap) },
  });
};

export const otherWays = defineFigure({
  name: 'other-ways',
  title: WORDS.title,
  threads: ['thread', 'B', 'A', 'C'],
  quantities: QUANTITIES,
  texts: ['prices'],
  chief: ['s_h', 'S_w', 'F'],
  groups: {
    threads: ['A', 'C', 'B', 'thread'],
    wishes: ['H_w', 'theta_h'],
    friction: ['mu'],
    pieces: ['c'],
    sizes: ['t_b', 'b_l', 'R_t'],
    prices: ['prices'],
  },
  state: waysState,
  draw,
  caption,
  printed: (s) => s.ways.flatMap(amountsOf),
  readings,
  numbersName: WORDS.numbers,
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.ways.map((way) => [
      WORDS.way(way.name),
      motion(way.perTurn, view),
      motion(way.resolution, view),
      motion(way.stroke, view),
      torqueText(way, view),
      stiffnessText(way),
      giveText(way, view),
      motion(way.play, view),
      size(way.height, view),
      way.length > 0 ? size(way.length, view) : WORDS.ownWidth,
      priceText(way),
      failings(way, s, view).join('; ') || doesAll(way, s),
    ]),
  }),
});
