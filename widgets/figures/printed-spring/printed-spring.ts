/** A printed spring designed backwards and drawn to scale, free and stretched, with the other shapes that would do. */
import { WORDS } from '#words/figures/printed-spring.ts';
import { plateMesh, plateOutlines } from '../../assembly/print/plate.ts';
import { ringPlate } from '../../assembly/print/ring-plate.ts';
import {
  rowOfSpring,
  SPRING_QUANTITIES,
  type Spring,
  type SpringNumbers,
  type Springs,
  springsOf,
} from '../../assembly/spring/spring-of.ts';
import { centreLines } from '../../assembly/spring/spring-shape.ts';
import { meanderOutline, meanderSolid } from '../../assembly/spring/spring-solid.ts';
import { at, bad, drawnOutside, good, mm, REPEATED, type Result, type SpringDesign } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { factsHtml } from '../kit/facts.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { onSave, saveButtons, savePart } from '../kit/save-part.ts';
import { polygon, polyline, px } from '../kit/svg.ts';

const WIDTH = 470;
const HEIGHT = 330;
const TOP = 26;
const BOTTOM = 46;
const LISTED = 8;
const TABLED = 40;

interface State extends Springs {
  readonly values: Given['values'];
}

const QUANTITIES = [...SPRING_QUANTITIES, 'o_u'] as const;
type Given = SpringNumbers & NumbersOf<never, (typeof QUANTITIES)[number], never, never>;

const stateOf = (numbers: Given): Result<State> => {
  const found = springsOf(numbers);
  return found.ok ? good({ ...found.value, values: numbers.values }) : found;
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const force = (x: number, view: UnitView): string => show(x, { shown: 'force', digits: 3 }, view);
const rate = (x: number, view: UnitView): string => show(x, { shown: 'N/mm', digits: 3 }, view);
const percent = (x: number): string => `${numeral(100 * x, 2)} %`;

const shapeText = ({ design: d }: Spring, view: UnitView): string =>
  d.shape === 'meander'
    ? WORDS.meander(d.m, size(d.L, view), size(d.p, view), size(d.t, view), d.lines)
    : WORDS.ovals(d.cells, d.shape, size(2 * d.R, view), size(2 * (d.h + d.R), view), size(d.t, view), d.lines);

/** Free on the left, stretched to the mark on the right, at one scale. */
const picture = (s: State, view: UnitView): string => {
  const { design: d } = at(s.springs, 0);
  const { u_f, l_f } = s.values;
  const scale = Math.min((HEIGHT - TOP - BOTTOM) / (d.free + u_f + d.t), 130 / d.width);
  const drawn = (stretch: number, x: number, name: string): string => {
    const paths = centreLines(d, stretch).map(({ points, closed }) => {
      const line = points.map(([across, along]) => [x + across * scale, HEIGHT - BOTTOM - along * scale] as const);
      return `<path class="strip ${name}" stroke-width="${px(d.t * scale)}" d="${closed ? polygon(line) : polyline(line)}"/>`;
    });
    const top = HEIGHT - BOTTOM - (d.free + stretch) * scale;
    const side = x + (d.width * scale) / 2 + 16;
    return (
      `${paths.join('')}<path class="measure" d="M${px(side - 6)} ${px(top)}h12M${px(side)} ${px(top)}V${HEIGHT - BOTTOM}M${px(side - 6)} ${HEIGHT - BOTTOM}h12"/>` +
      `<text class="spring-label" x="${px(side + 9)}" y="${px((top + HEIGHT - BOTTOM) / 2)}">${size(d.free + stretch, view)}</text>` +
      `<text class="spring-label" x="${px(x)}" y="${HEIGHT - BOTTOM + 18}" text-anchor="middle">${name === 'free' ? WORDS.free : WORDS.stretched(force(s.force.mark, view))}</text>`
    );
  };
  const [left, right] = [90, 320];
  const wide = (d.width * scale) / 2;
  return (
    `<svg class="spring-picture" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing)}">` +
    `${drawn(0, left, 'free')}${drawn(u_f, right, 'stretched')}` +
    `<path class="measure" d="M${px(left - wide)} ${TOP - 12}v12M${px(left - wide)} ${TOP - 6}H${px(left + wide)}M${px(left + wide)} ${TOP - 12}v12"/>` +
    `<text class="spring-label" x="${px(left + wide + 8)}" y="${TOP - 2}">${size(d.width, view)}</text>` +
    `<text class="spring-label" x="${px(WIDTH / 2)}" y="${HEIGHT - 8}" text-anchor="middle">${escapeText(WORDS.room(size(s.values.w_f, view), size(l_f, view)))}</text></svg>`
  );
};

const listRow = (spring: Spring, s: State, view: UnitView): string => {
  const { design: d, scatter, lock } = spring;
  const cells = [
    WORDS.by(size(d.width, view), size(d.free, view)),
    rate(d.k, view),
    WORDS.strain(percent(d.strain), numeral((100 * d.strain) / s.values.eps_m, 2)),
    WORDS.both(withSign(percent(scatter.thinner)), withSign(percent(scatter.thicker))),
    lock ? WORDS.kappa(numeral(lock.kappa, 3)) : WORDS.none,
  ];
  return `<tr><th scope="row">${escapeText(shapeText(spring, view))}</th>${cells.map((c) => `<td>${escapeText(c)}</td>`).join('')}</tr>`;
};

const facts = (s: State, view: UnitView): string => {
  const { plastic, force: f } = s;
  const rows: readonly (readonly [string, string])[] = [
    [WORDS.facts.overStroke, WORDS.fromTo(force(f.least, view), force(f.most, view))],
    [
      WORDS.facts.later(show(s.values.t, { shown: 'h', digits: 3 }, view)),
      WORDS.left(force(f.later, view), percent(f.later / f.mark)),
    ],
    [WORDS.facts.modulus, show(s.E, { shown: 'MPa', digits: 4 }, view)],
    [WORDS.facts.loss, percent(s.loss)],
    ...(plastic
      ? [
          [WORDS.facts.spread, WORDS.fromTo(numeral(plastic.E[0]), `${numeral(plastic.E[2])}\u00a0MPa`)] as const,
          [
            WORDS.facts.lossSpread,
            WORDS.lossIs(percent(plastic.loss[0]), percent(plastic.loss[1]), plastic.lossIs),
          ] as const,
          [WORDS.facts.once, WORDS.once(percent(plastic.once), percent(plastic.once * REPEATED))] as const,
          [WORDS.facts.warm, WORDS.celsius(numeral(plastic.glass - 15))] as const,
        ]
      : []),
  ];
  return factsHtml(rows);
};

const draw = (s: State, view: UnitView): string =>
  `<div class="printed-spring-view"><div class="spring-top">${picture(s, view)}${facts(s, view)}</div>` +
  `<p class="acts">${filesHtml(s)}</p></div>`;

/** Buttons, or why there is nothing to print. */
const filesHtml = (s: State): string => {
  const drawn = drawnFor(s);
  return drawn.ok ? `${WORDS.files.say} ${saveButtons('spring', WORDS.files.save)}` : escapeText(reasonOf(drawn));
};

/** What the reader writes among the parts to have the first meander in every chapter. */
const partsRow = (s: State): string => {
  const meander = s.springs.find(({ design }) => design.shape === 'meander');
  const row = meander && rowOfSpring(meander, s, s.values);
  return row === undefined ? '' : `<p>${WORDS.row} <code>${escapeText(row)}</code></p>`;
};

const readings = (s: State, view: UnitView): string => {
  const rows = s.springs.slice(0, LISTED);
  const heading = WORDS.list(s.springs.length, rows.length);
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${heading}"><table><caption>${heading}</caption><thead><tr>${WORDS.listHead.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead>` +
    `<tbody>${rows.map((spring) => listRow(spring, s, view)).join('')}</tbody></table></div>${partsRow(s)}`
  );
};

/** The first spring as it is drawn for the printer: its strip thinner by what outsides print wider, its centre lines where they were. */
const drawnFor = (s: State): Result<SpringDesign> => {
  const { design } = at(s.springs, 0);
  const strip = drawnOutside.of({ w_n: mm(design.t), c_n: mm(0), o_u: mm(s.values.o_u) });
  if (!strip.ok) return strip;
  const wall = strip.value.w_d;
  if (!(wall >= s.values.w_l)) return bad('wall-below-line', { wall, line: s.values.w_l });
  return good({ ...design, t: wall });
};

const short = (x: number): string => `${Number(x.toPrecision(3))}`;

/** Words of the file of a spring by its force, N, and its rate, N/mm: a force alone would be read as the rate. */
export const calledOf = (force: number, rate: number): readonly string[] => [
  WORDS.files.name,
  WORDS.files.force(short(force)),
  WORDS.files.rate(short(rate)),
];

const save = (kind: string, s: State): void => {
  const drawn = drawnFor(s);
  if (!drawn.ok) return;
  const design = drawn.value;
  const height = s.values.b_f;
  const called = calledOf(s.force.mark, design.k);
  const { name, check } = WORDS.files;
  const outline = (points: readonly (readonly [number, number])[]) => [{ layer: 'outline', points, closed: true }];
  savePart(
    kind,
    design.shape === 'meander'
      ? { name, called, mesh: () => meanderSolid(design, height), outlines: () => outline(meanderOutline(design)) }
      : {
          name,
          called,
          mesh: () => plateMesh(ringPlate(design, height)),
          outlines: () => plateOutlines(ringPlate(design, height), 'outline'),
        },
    check,
  );
};

export const printedSpring = defineFigure({
  name: 'printed-spring',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['plastic', 'ranked'],
  chief: ['F_k', 'S_w', 'plastic'],
  groups: {
    spring: ['u_f', 'N_f', 'r_k'],
    sizes: ['l_f', 'w_f', 'b_f'],
    lengths: ['w_l', 't_e'],
    law: ['E_f', 'eps_m', 'q_r', 't'],
    printer: ['o_u'],
    order: ['ranked'],
  },
  state: stateOf,
  draw,
  rows: (s, view) => {
    const { design } = at(s.springs, 0);
    return [
      amount('rate', WORDS.first.rate, design.k, 'N/mm', 3),
      amount('strain', WORDS.first.strain, design.strain, 'percent', 3),
      amount('width', WORDS.first.width, design.width, 'size', 3),
      amount('later', WORDS.facts.later(show(s.values.t, { shown: 'h', digits: 3 }, view)), s.force.later, 'force', 3),
    ];
  },
  readings,
  numbersName: WORDS.numbers,
  mount: (stage, context) => {
    onSave(stage, (kind) => {
      const state = stateOf(context.numbers());
      if (state.ok) save(kind, state.value);
    });
  },
  caption: (s, view) => {
    const first = at(s.springs, 0);
    return WORDS.caption({
      count: s.springs.length,
      shape: shapeText(first, view),
      rate: rate(first.design.k, view),
      strain: percent(first.design.strain),
      limit: percent(s.values.eps_m),
      thicker: percent(first.scatter.thicker),
      later: force(s.force.later, view),
      time: show(s.values.t, { shown: 'h', digits: 3 }, view),
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.springs.slice(0, TABLED).map((spring) => {
      const { design: d, scatter, lock } = spring;
      return [
        shapeText(spring, view),
        size(d.width, view),
        size(d.free, view),
        rate(d.k, view),
        percent(d.strain),
        percent(scatter.thinner),
        percent(scatter.thicker),
        lock ? rate(lock.across, view) : WORDS.none,
        lock ? WORDS.kappa(numeral(lock.kappa, 3)) : WORDS.none,
      ];
    }),
  }),
});
