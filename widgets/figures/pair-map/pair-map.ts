/**
 * Finding a pair: the map of all pairs, and under it the list of those that pass, each with a maker's judgement and a link that opens it in the
 * figures of the second chapter.
 */

import { WORDS } from '#words/figures/pair-map.ts';
import { GRADE_WORDS, remarkText } from '#words/pair.ts';
import { at, fractionText, good, type PairRow, type Result, spokenNumber } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { grouped, numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { mountPull } from '../kit/pull.ts';
import { px } from '../kit/svg.ts';
import { type Asked, ask, CHOSEN, type Given, QUANTITIES, TEXTS, withMore } from './ask.ts';
import { nothingText } from './gives-way.ts';
import {
  type Against,
  type Frame,
  type Ground,
  ground,
  HEIGHT,
  hitDots,
  motionAt,
  placeOf,
  scaffold,
  WIDTH,
  wishMark,
} from './map.ts';
import { factsOf, motion, named, off, percent } from './words.ts';

const LISTED = 12;
const TABLED = 200;

interface State extends Asked {
  readonly against: Against;
  readonly ground: Ground;
}

const stateOf = (numbers: Given): Result<State> => {
  const read = ask(numbers, LISTED);
  if (!read.ok) return read;
  const { against } = numbers.choices;
  return good({ ...read.value, against, ground: ground(read.value, against) });
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);

const openIn = (p: PairRow, view: UnitView): string => {
  const query = new URLSearchParams({
    'foot.A': p.A.designation,
    'foot.C': p.C.designation,
    'foot.arrangement': p.arrangement,
    ...(view === 'metric' ? {} : { units: view }),
  });
  return `two-screws.html?${query}#see-it-move`;
};

const wallText = (p: PairRow, least: number, view: UnitView): string => {
  if (p.wall === undefined || !(p.wall.limit > 0)) return WORDS.noNest;
  const wall = size(p.wall.limit, view);
  return p.wall.limit < least ? WORDS.tooThin(wall) : wall;
};

const place = (p: PairRow, frame: Frame): readonly [number, number] =>
  placeOf(frame, {
    motion: Math.abs(p.Delta),
    gain: p.gain,
    stroke: p.stroke,
    size: p.size,
    shorter: Math.min(p.A.L, p.C.L),
    longer: Math.max(p.A.L, p.C.L),
  });

const remarks = ({ verdict }: PairRow): string =>
  verdict.remarks.length > 0 ? `: ${verdict.remarks.map(remarkText).join('; ')}` : '';

const listRow = (p: PairRow, rank: number, frame: Frame, { wish }: Asked, view: UnitView): string => {
  const [x, y] = place(p, frame);
  const cells: readonly string[] = [
    motion(Math.abs(p.Delta), view),
    `${fractionText(p.net).replace('−', '')} mm`,
    ...(wish.dividers.length > 1 ? [WORDS.atSteps(motion(p.step, view), p.k)] : []),
    off(p.off),
    numeral(p.gain, 3),
    motion(p.stroke, view),
    wallText(p, wish.leastWall, view),
  ];
  return (
    `<tr data-row="${rank}" data-at="${px(x)} ${px(y)}"><th scope="row"><a data-key="pair-${rank}" href="${escapeText(openIn(p, view))}" title="${WORDS.openIn}">${escapeText(spokenNumber(p.A.designation))} <span class="with">${WORDS.with}</span> ${escapeText(spokenNumber(p.C.designation))}</a></th>` +
    `${cells.map((c) => `<td>${escapeText(c)}</td>`).join('')}<td class="verdict-cell"><strong>${GRADE_WORDS[p.verdict.grade]}</strong>${escapeText(remarks(p))}</td></tr>`
  );
};

const list = (rows: readonly PairRow[], frame: Frame, asked: Asked, view: UnitView, caption: string): string =>
  `<div class="table-scroll pair-list" tabindex="0" role="group" aria-label="${escapeText(caption)}"><table><caption>${escapeText(caption)}</caption><thead><tr>${WORDS.listHead(
    asked.wish.dividers.length > 1,
  )
    .map((h) => `<th scope="col">${h}</th>`)
    .join(
      '',
    )}</tr></thead><tbody>${rows.map((p, i) => listRow(p, i, frame, asked, view)).join('')}</tbody></table></div>`;

/** The pairs to list: those that pass, or the nearest of each kind. */
const rowsOf = ({ answer }: Asked): readonly PairRow[] => {
  if (answer.kind === 'found') return answer.rows;
  const nearest = [answer.nearest, ...answer.ways.map((way) => way.row), answer.anyStroke];
  const seen = new Set<string>();
  return nearest.flatMap((p) => {
    if (p === undefined || seen.has(named(p))) return [];
    seen.add(named(p));
    return [p];
  });
};

const draw = (asked: State, view: UnitView): string => {
  const { against } = asked;
  const { frame, svg } = asked.ground;
  const rows = rowsOf(asked);
  const first = rows[0];
  const [x, y] = first ? place(first, frame) : [0, 0];
  const ring = first ? `<circle class="ring" data-ring r="9" cx="${px(x)}" cy="${px(y)}"/>` : '';
  const axes = against === 'the two leads' ? WORDS.leadAgainstLead : WORDS.againstMotion(against);
  return (
    `<svg class="map" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.mapOf(axes)}">` +
    `${scaffold(frame, view)}${svg}${wishMark(asked, frame, view)}${hitDots(asked, frame)}${ring}</svg>` +
    `<ul class="legend map-key"><li><svg viewBox="0 0 34 10" aria-hidden="true"><path class="grain g0" d="M6 5h0"/><path class="grain g1" d="M15 5h0"/><path class="grain g2" d="M26 5h0"/></svg>${WORDS.grains}</li><li><svg viewBox="0 0 14 10" aria-hidden="true"><path class="hit" d="M7 5h0"/></svg>${WORDS.passes}</li><li><svg viewBox="0 0 20 20" aria-hidden="true"><circle class="ring" cx="10" cy="10" r="8"/></svg>${WORDS.ring}</li></ul>`
  );
};

const readings = (asked: State, view: UnitView): string => {
  const { answer } = asked;
  const rows = rowsOf(asked);
  const heading =
    answer.kind === 'found'
      ? WORDS.pass(
          grouped(answer.hits.length),
          grouped(answer.pairs),
          answer.hits.length > rows.length ? rows.length : undefined,
        )
      : WORDS.nonePasses(rows.length > 1);
  // Somebody whose taps give no pair may have parts that do.
  const drawer =
    answer.kind === 'found'
      ? ''
      : `<p>${WORDS.fromParts} <a href="from-your-parts.html#from-your-drawer">${WORDS.toDrawer}</a></p>`;
  return list(rows, asked.ground.frame, asked, view, heading) + drawer;
};

const caption = (asked: State, view: UnitView): string => {
  const { answer, wish, aTurn } = asked;
  if (answer.kind === 'nothing') return nothingText(asked, view);
  const best = at(answer.rows, 0);
  return WORDS.found({
    hits: grouped(answer.hits.length),
    pairs: grouped(answer.pairs),
    band: numeral(100 * wish.band),
    aTurn: motion(aTurn, view),
    step: motion(wish.motion, view),
    dividers: wish.dividers,
    best: { ...factsOf(best, view), k: best.k, grade: GRADE_WORDS[best.verdict.grade] },
  });
};

export const pairMap = defineFigure({
  name: 'pair-map',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: CHOSEN,
  texts: TEXTS,
  chief: ['s_w', 'k', 'against'],
  groups: {
    kinds: ['hands', 'fitted', 't_l', 'd_least', 'd_most'],
    wishes: ['q_w', 'dividers', 'S_w', 'q_X', 'F', 'sigma_a'],
    drawer: ['drawer', 'taps', 'series'],
    order: ['order'],
  },
  idle: ({ choices, values }) => [
    ...(choices.fitted === 'in line' ? (['t_l'] as const) : []),
    ...(values.F === 0 ? (['sigma_a'] as const) : []),
  ],
  state: stateOf,
  draw,
  caption,
  readings,
  numbersName: WORDS.numbers,
  table: (asked, view) => {
    const { dividers } = asked.wish;
    const whole = dividers.every((k) => k === 1);
    const several = dividers.length > 1;
    return {
      head: WORDS.head(!whole, several),
      rows: rowsOf(withMore(asked, TABLED)).map((p) => [
        p.A.designation,
        p.C.designation,
        p.arrangement,
        motion(p.Delta, view),
        fractionText(p.net),
        ...(whole ? [] : [motion(p.step, view)]),
        ...(several ? [`${p.k}`] : []),
        off(p.off),
        numeral(p.gain, 4),
        motion(p.stroke, view),
        size(p.size, view),
        p.wall === undefined ? '' : size(p.wall.basic, view),
        p.wall === undefined ? '' : size(p.wall.limit, view),
        show(p.carries, { shown: 'force', digits: 3 }, view),
        motion(p.roundedFirst.Delta, view),
        percent(p.roundedFirst.error ?? 0),
        `${GRADE_WORDS[p.verdict.grade]}${remarks(p)}`,
      ]),
    };
  },
  mount: (stage, context) => {
    const point = (row: Element | null | undefined) => {
      const [x, y] = row?.getAttribute('data-at')?.split(' ') ?? [];
      if (x === undefined || y === undefined) return;
      const ring = stage.querySelector('[data-ring]');
      ring?.setAttribute('cx', x);
      ring?.setAttribute('cy', y);
    };
    const rowAt = (event: Event) => (event.target instanceof Element ? event.target.closest('[data-row]') : null);
    // The list stands in the foot of the figure.
    const figure = stage.closest('figure') ?? stage;
    figure.addEventListener('pointerover', (event) => point(rowAt(event)));
    figure.addEventListener('focusin', (event) => point(rowAt(event)));

    const wanted = () => context.numbers().values.s_w;
    const follow = (event: PointerEvent) => {
      const svg = stage.querySelector('.map');
      const numbers = context.numbers();
      const read = ask(numbers, 1);
      if (!svg || !read.ok) return;
      const box = svg.getBoundingClientRect();
      const { frame } = ground(read.value, numbers.choices.against);
      const aTurn = motionAt(frame, ((event.clientX - box.left) / box.width) * WIDTH);
      // Three digits: what a finger can point at.
      context.set('s_w', Number((aTurn / read.value.k).toPrecision(3)));
    };
    mountPull(stage, ({ target }) => {
      if (!(target instanceof Element && target.closest('[data-wish]'))) return undefined;
      const was = wanted();
      return {
        tap: () => {},
        move: follow,
        undo: () => {
          if (wanted() !== was) context.set('s_w', was);
        },
      };
    });
  },
});
