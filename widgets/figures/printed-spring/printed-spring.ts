/** A printed spring designed backwards and drawn to scale, free and stretched, with the other shapes that would do. */
import { WORDS } from '#words/figures/printed-spring.ts';
import { springRoom } from '../../assembly/adjuster/spring-room.ts';
import { readAdjuster, withSprings } from '../../assembly/adjuster/text.ts';
import { plateMesh, plateOutlines } from '../../assembly/print/plate.ts';
import { springFace } from '../../assembly/spring/spring-face.ts';
import {
  asMade,
  rowOfSpring,
  SPRING_QUANTITIES,
  type Spring,
  type SpringNumbers,
  type Springs,
  springsOf,
} from '../../assembly/spring/spring-of.ts';
import { beyondHold, type FlatForm, reachOf, springPlate } from '../../assembly/spring/spring-plate.ts';
import type { SeenLine } from '../../assembly/spring/spring-seen.ts';
import {
  acrossOf,
  bad,
  type CoilDesign,
  drawnOutside,
  good,
  mm,
  REPEATED,
  type Result,
  type SpringForm,
} from '../../engine/index.ts';
import { type OptionOf, optionText } from '../../input/choices.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { NO_PARTS } from '../../input/texts.ts';
import { reasonOf } from '../../words/reason.ts';
import { factsHtml } from '../kit/facts.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { onSave, saveButtons, savePart } from '../kit/save-part.ts';
import { roomSays } from '../kit/spring-room-says.ts';
import { type Point, polygon, polyline, px } from '../kit/svg.ts';

const WIDTH = 470;
const HEIGHT = 330;
const TOP = 26;
const BOTTOM = 46;
const LISTED = 8;
const TABLED = 40;

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'no-spring-of-shape': { readonly shape: string; readonly others: readonly string[] };
  }
}

interface State extends Springs {
  readonly values: Given['values'];
  /** The one that is drawn, written and made. */
  readonly chosen: Chosen;
  /** What a reader may put among the parts: the best of each shape. */
  readonly offered: readonly Chosen[];
  readonly parts: string;
}

type Chosen =
  | { readonly shape: Exclude<Shape, 'coil, bought' | typeof ANY>; readonly spring: Spring }
  | { readonly shape: 'coil, bought'; readonly coil: CoilDesign };

type Shape = OptionOf<'shape'>;
const ANY = 'the first that does it';

const QUANTITIES = [...SPRING_QUANTITIES, 'o_u'] as const;
type Given = SpringNumbers & NumbersOf<never, (typeof QUANTITIES)[number], 'shape', 'adjuster'>;

const formOf = (chosen: Chosen): SpringForm => ('coil' in chosen ? chosen.coil : chosen.spring.design);

const stateOf = (numbers: Given): Result<State> => {
  const found = springsOf(numbers);
  if (!found.ok) return found;
  const { springs, coil } = found.value;
  const offered: Chosen[] = [];
  for (const spring of springs) {
    const { shape } = spring.design;
    if (!offered.some((o) => o.shape === shape)) offered.push({ shape, spring });
  }
  if (coil) offered.push({ shape: 'coil, bought', coil });
  const wanted = numbers.choices.shape;
  const chosen = wanted === ANY ? offered[0] : offered.find((o) => o.shape === wanted);
  if (!chosen)
    return bad('no-spring-of-shape', {
      shape: optionText('shape', wanted),
      others: offered.map((o) => optionText('shape', o.shape)),
    });
  return good({ ...found.value, values: numbers.values, chosen, offered, parts: numbers.texts.adjuster });
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const force = (x: number, view: UnitView): string => show(x, { shown: 'force', digits: 3 }, view);
const rate = (x: number, view: UnitView): string => show(x, { shown: 'N/mm', digits: 3 }, view);
const percent = (x: number): string => `${numeral(100 * x, 2)}\u00a0%`;

const shapeText = ({ design: d }: Spring, view: UnitView): string => {
  switch (d.shape) {
    case 'meander':
      return WORDS.meander(d.m, size(d.L, view), size(d.p, view), size(d.t, view), d.lines);
    case 'strap':
      return WORDS.strap(size(d.l, view), size(d.t, view), d.lines);
    default:
      return WORDS.ovals(d.cells, d.shape, size(2 * d.R, view), size(2 * (d.h + d.R), view), size(d.t, view), d.lines);
  }
};
const chosenText = (chosen: Chosen, view: UnitView): string =>
  'coil' in chosen
    ? WORDS.coil(numeral(chosen.coil.turns, 3), size(chosen.coil.t, view), size(chosen.coil.D, view))
    : shapeText(chosen.spring, view);

/** Free on the left, stretched to the mark on the right, at one scale. */
const picture = (s: State, view: UnitView): string => {
  const form = asMade(formOf(s.chosen));
  const { u_f, l_f } = s.values;
  const width = acrossOf(form);
  const beyond = form.shape === 'coil' ? 0 : form.shape === 'strap' ? 2 * form.t : beyondHold(form);
  const longest = springFace(form, l_f - u_f, u_f).between;
  const scale = Math.min((HEIGHT - TOP - BOTTOM) / (longest + 2 * beyond), 130 / width);
  const floor = HEIGHT - BOTTOM - beyond * scale;
  const drawn = (stretch: number, x: number, name: string): string => {
    const { closed, open, between } = springFace(form, l_f - u_f, stretch);
    const place = (line: SeenLine): Point[] => line.map(([u, v]): Point => [x + u * scale, floor - v * scale]);
    const paths =
      (closed.length > 0
        ? `<path class="strip ${name}" fill-rule="evenodd" d="${closed.map((ring) => polygon(place(ring))).join('')}"/>`
        : '') +
      (open.length > 0
        ? `<path class="strip wire ${name}" d="${open.map((line) => polyline(place(line))).join('')}"/>`
        : '');
    const top = floor - between * scale;
    const side = x + (width * scale) / 2 + 16;
    return (
      `${paths}<path class="measure" d="M${px(side - 6)} ${px(top)}h12M${px(side)} ${px(top)}V${px(floor)}M${px(side - 6)} ${px(floor)}h12"/>` +
      `<text class="spring-label" x="${px(side + 9)}" y="${px((top + floor) / 2)}">${size(between, view)}</text>` +
      `<text class="spring-label" x="${px(x)}" y="${HEIGHT - BOTTOM + 18}" text-anchor="middle">${name === 'free' ? WORDS.free : WORDS.stretched(force(s.force.mark, view))}</text>`
    );
  };
  const [left, right] = [90, 320];
  const wide = (width * scale) / 2;
  return (
    `<svg class="spring-picture" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing)}">` +
    `${drawn(0, left, 'free')}${drawn(u_f, right, 'stretched')}` +
    `<path class="measure" d="M${px(left - wide)} ${TOP - 12}v12M${px(left - wide)} ${TOP - 6}H${px(left + wide)}M${px(left + wide)} ${TOP - 12}v12"/>` +
    `<text class="spring-label" x="${px(left + wide + 8)}" y="${TOP - 2}">${size(width, view)}</text>` +
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

/** Whether it has its room among the parts that are stated, in one sentence. */
const roomText = (s: State, view: UnitView): string => {
  if (s.parts === NO_PARTS) return WORDS.noParts;
  const read = readAdjuster(withSprings(s.parts, rowOf(s.chosen, s)));
  if (!read.ok) return reasonOf(read);
  const room = springRoom(read.value);
  return room ? roomSays(room, view) : WORDS.noParts;
};

const rowOf = (chosen: Chosen, s: State): string => rowOfSpring(formOf(chosen), s, s.values);

const draw = (s: State, view: UnitView): string =>
  `<div class="printed-spring-view"><div class="spring-top">${picture(s, view)}${facts(s, view)}</div>` +
  `<p class="spring-room">${escapeText(roomText(s, view))}</p><p class="acts">${filesHtml(s)}</p></div>`;

/** Buttons, or why there is nothing to print. */
const filesHtml = (s: State): string => {
  if ('coil' in s.chosen) return escapeText(WORDS.files.bought);
  const drawn = drawnFor(s);
  return drawn.ok ? `${WORDS.files.say} ${saveButtons('spring', WORDS.files.save)}` : escapeText(reasonOf(drawn));
};

/** What the reader writes among the parts to have this spring in every chapter; where parts are stated here, a button puts the best of each shape among them. */
const partsRow = (s: State): string => {
  const buttons = s.offered.map(
    ({ shape }) =>
      `<button type="button" class="plain" data-take="${shape}" data-key="take-${shape}">${escapeText(optionText('shape', shape))}</button>`,
  );
  return (
    `<p>${WORDS.row} <code>${escapeText(rowOf(s.chosen, s))}</code></p>` +
    (s.parts === NO_PARTS ? '' : `<p class="acts">${WORDS.take} ${buttons.join(' ')}</p>`)
  );
};

const readings = (s: State, view: UnitView): string => {
  const rows = s.springs.slice(0, LISTED);
  const heading = WORDS.list(s.springs.length, rows.length);
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${heading}"><table><caption>${heading}</caption><thead><tr>${WORDS.listHead.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead>` +
    `<tbody>${rows.map((spring) => listRow(spring, s, view)).join('')}</tbody></table></div>${partsRow(s)}`
  );
};

/** The spring as it is drawn for the printer: its strip thinner by what outsides print wider, its centre lines where they were. */
const drawnFor = (s: State): Result<FlatForm> => {
  const form = asMade(formOf(s.chosen));
  const strip = drawnOutside.of({ w_n: mm(form.t), c_n: mm(0), o_u: mm(s.values.o_u) });
  if (!strip.ok) return strip;
  const wall = strip.value.w_d;
  if (form.shape === 'coil' || !(wall >= s.values.w_l)) return bad('wall-below-line', { wall, line: s.values.w_l });
  return good({ ...form, t: wall });
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
  if (!drawn.ok || 'coil' in s.chosen) return;
  const { b_f, l_f, u_f } = s.values;
  const form = drawn.value;
  // Its ends reach from hold to hold, whatever its folds take.
  const plate = springPlate({ form, high: b_f, stretch: 0, reach: Math.max(0, reachOf(form, l_f - u_f)) });
  const { name, check } = WORDS.files;
  savePart(
    kind,
    {
      name,
      called: calledOf(s.force.mark, s.chosen.spring.design.k),
      mesh: () => plateMesh(plate),
      outlines: () => plateOutlines(plate, 'outline'),
    },
    check,
  );
};

export const printedSpring = defineFigure({
  name: 'printed-spring',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['plastic', 'ranked', 'shape'],
  texts: ['adjuster'],
  chief: ['F_k', 'shape', 'plastic'],
  groups: {
    spring: ['S_w', 'u_f', 'N_f', 'r_k'],
    room: ['l_f', 'w_f', 'b_f'],
    lengths: ['w_l', 't_e'],
    law: ['E_f', 'eps_m', 'q_r', 't'],
    printer: ['o_u'],
    order: ['ranked'],
    parts: ['adjuster'],
  },
  state: stateOf,
  draw,
  rows: (s, view) => {
    const later = amount(
      'later',
      WORDS.facts.later(show(s.values.t, { shown: 'h', digits: 3 }, view)),
      s.force.later,
      'force',
      3,
    );
    if ('coil' in s.chosen) {
      const { k, width, shear } = s.chosen.coil;
      return [
        amount('rate', WORDS.first.rate, k, 'N/mm', 3),
        amount('width', WORDS.first.width, width, 'size', 3),
        amount('shear', WORDS.first.shear, shear, 'MPa', 3),
      ];
    }
    const { design } = s.chosen.spring;
    return [
      amount('rate', WORDS.first.rate, design.k, 'N/mm', 3),
      amount('strain', WORDS.first.strain, design.strain, 'percent', 3),
      amount('width', WORDS.first.width, design.width, 'size', 3),
      later,
    ];
  },
  readings,
  numbersName: WORDS.numbers,
  mount: (stage, context) => {
    onSave(stage, (kind) => {
      const state = stateOf(context.numbers());
      if (state.ok) save(kind, state.value);
    });
    const figure = stage.closest('figure') ?? stage;
    figure.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('[data-take]') : null;
      const state = button ? stateOf(context.numbers()) : undefined;
      if (!state?.ok) return;
      const taken = state.value.offered.find(({ shape }) => shape === button?.getAttribute('data-take'));
      if (taken) context.type('adjuster', withSprings(state.value.parts, rowOf(taken, state.value)));
    });
  },
  caption: (s, view) => {
    const time = show(s.values.t, { shown: 'h', digits: 3 }, view);
    if ('coil' in s.chosen) {
      const { coil } = s.chosen;
      return WORDS.coilCaption({
        shape: chosenText(s.chosen, view),
        rate: rate(coil.k, view),
        shear: show(coil.shear, { shown: 'MPa', digits: 3 }, view),
        count: s.springs.length,
      });
    }
    const first = s.chosen.spring;
    return WORDS.caption({
      count: s.springs.length,
      shape: shapeText(first, view),
      rate: rate(first.design.k, view),
      strain: percent(first.design.strain),
      limit: percent(s.values.eps_m),
      thicker: percent(first.scatter.thicker),
      later: force(s.force.later, view),
      time,
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
