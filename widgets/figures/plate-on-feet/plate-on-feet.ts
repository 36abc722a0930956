/**
 * The plate of the plan beside it, seen from the side on three adjusters that are turned by the same numbers: how it leans, which foot is low, and
 * how it comes level round by round.
 */
import { WORDS as PLAN } from '#words/figures/levelling-plate.ts';
import { WORDS } from '#words/figures/plate-on-feet.ts';
import { standing } from '../../assembly/adjuster/adjuster.ts';
import { at } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { writeRounds } from '../../input/levelling-table.ts';
import { defineFigure } from '../kit/figure.ts';
import { orderText } from '../kit/levelling/order.ts';
import { endOf, MOST_ROUNDS, QUANTITIES, TEXTS, turned } from '../kit/levelling/rounds.ts';
import { mountPull } from '../kit/pull.ts';
import { signedAmount } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { bodiesOf, plateBody } from '../kit/solid/bodies.ts';
import { type Canvas, canvasOn } from '../kit/solid/canvas.ts';
import { PAINTER } from '../kit/solid/drawing.ts';
import type { Stand, View } from '../kit/solid/shot.ts';
import { hull, stillHtml, stillOf } from '../kit/solid/still.ts';
import { type Aim, directionsOf, dot, type Look, onPicture, type Vector } from '../kit/solid/view.ts';
import { polygon, px } from '../kit/svg.ts';
import { aimOf, groundOf, lowest, PICTURE, plateBox, type StandingFoot, type State, stateOf } from './state.ts';

type Way = 'round' | 'above';
const SLIDERS: readonly Slider<Way>[] = [
  { name: 'round', label: WORDS.sliders.round, min: -180, max: 180, step: 5 },
  { name: 'above', label: WORDS.sliders.above, min: 0, max: 60, step: 5 },
];
const BEGIN: Look = { round: 5, above: 5 };
const degrees = (x: number): string => WORDS.degrees(numeral(x, 3));

const motion = (z: number, view: UnitView): string => withSign(show(z, { shown: 'motion', digits: 3 }, view));

/** Heights of its parts, and turns of its head; what its threads do not reach is not drawn. */
const placesOf = ({ adjuster }: State, foot: StandingFoot) => {
  const [home, now] = [standing(adjuster, 0), standing(adjuster, foot.turns)];
  return {
    at: {
      base: 0,
      turned: adjuster.carried ? now.at.turned : home.at.turned + foot.lift,
      carried: home.at.carried + foot.lift,
    },
    turns: { base: 0, turned: now.n, carried: 0 },
  };
};

/** Corners of the plate, those of its underside first. */
const cornersOf = (s: State): readonly Vector[] => {
  const { x, y, thick } = plateBox(s);
  const ground = groundOf(s.adjuster) + s.middle;
  const corner = (i: number, j: number, up: number): Vector => [
    x[i] as number,
    y[j] as number,
    ground + s.tilt[0] * (x[i] as number) + s.tilt[1] * (y[j] as number) + up,
  ];
  const round = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  return [0, thick].flatMap((up) => round.map(([i, j]) => corner(i, j, up)));
};

const feetHtml = (s: State, aim: Aim): string => {
  const { near } = directionsOf(aim);
  const [x0, y0] = onPicture(aim, [0, 0, 0]);
  const feet = [...s.feet].sort((p, q) => dot([p.x, p.y, 0], near) - dot([q.x, q.y, 0], near));
  const corners = cornersOf(s).map((c) => onPicture(aim, c));
  return (
    feet
      .map((foot) => {
        const [x, y] = onPicture(aim, [foot.x, foot.y, 0]);
        const { at, turns } = placesOf(s, foot);
        const pieces = stillHtml(stillOf(s.adjuster, { at }, aim, turns, { guided: true, sprung: false }));
        return `<g transform="translate(${px(x - x0)} ${px(y - y0)})">${pieces}</g>`;
      })
      .join('') +
    `<path class="part base solid" d="${polygon(hull(corners))}"/><path class="part base solid" d="${polygon(corners.slice(4))}"/>`
  );
};

/** A name takes so much of the picture on the narrowest page. */
const NAME = 160;

/** Under each foot its name, with the height of the plate over it; where two would stand side by side too close, the second a line lower. */
const namesHtml = (s: State, aim: Aim, view: UnitView): string => {
  const shown = view === 'both' ? 'metric' : view;
  const low = lowest(s);
  const feet = s.feet.map((foot) => ({ foot, place: onPicture(aim, [foot.x, foot.y, low]) }));
  const lowestFoot = Math.max(...feet.map(({ place }) => place[1]));
  let [end, line] = [Number.NEGATIVE_INFINITY, 0];
  return feet
    .sort((p, q) => p.place[0] - q.place[0])
    .map(({ foot, place: [x] }) => {
      line = x - end < NAME ? line + 1 : 0;
      end = x;
      return `<text class="clear" x="${px(x)}" y="${px(lowestFoot)}" dy="${px(1.4 + 1.25 * line)}em" text-anchor="middle">${escapeText(WORDS.foot(foot.name, motion(foot.height, shown)))}</text>`;
    })
    .join('');
};

const magnified = (s: State): string => WORDS.magnified(numeral(s.times), numeral(s.closer));

const draw = (s: State, view: UnitView): string => {
  const aim = aimOf(s, BEGIN);
  return (
    `<div class="plate-on-feet-view"><div class="solid-view" data-solid role="img" aria-label="${WORDS.drawing}">` +
    `<svg class="solid-still" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-still>${feetHtml(s, aim)}</g></svg>` +
    `<svg class="solid-overlay" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-overlay>${namesHtml(s, aim, view)}</g></svg></div>` +
    `<div class="plate-on-feet-side"><p class="line" data-part="magnified">${magnified(s)}</p>${SLIDERS.map((x) => sliderHtml(x, BEGIN[x.name], degrees(BEGIN[x.name]))).join('')}` +
    `<p class="acts"><button type="button" data-act="turn" data-key="act-turn">${PLAN.turnThem}</button><button type="button" class="plain" data-act="back" data-key="act-back">${PLAN.roundBack}</button></p></div></div>`
  );
};

interface Live {
  look: Look;
  readonly canvas: Canvas;
}
const lives = new WeakMap<HTMLElement, Live>();

const NOT_LIT = { A: { side: 0, from: 0, to: 0 }, C: { side: 0, from: 0, to: 0 } } as const;

const viewOf = (s: State, aim: Aim): View => {
  const places = s.feet.map((foot) => placesOf(s, foot));
  return {
    aim,
    cut: 0,
    marked: true,
    lit: () => NOT_LIT,
    shown: () => true,
    place: (body): Stand => {
      if (body.name === 'plate') return { lift: groundOf(s.adjuster) + s.middle, turns: 0, tilt: s.tilt };
      const i = body.copy ?? 0;
      const [foot, { at: heights, turns }] = [at(s.feet, i), at(places, i)];
      const { x, y } = foot;
      return body.name === 'post'
        ? { lift: 0, turns: 0, x, y }
        : { lift: heights[body.with], turns: turns[body.with], x, y };
    },
  };
};

/** Three of them are seen from farther off than one: half the planes round the axis will do. Springs are left to the solid of one. */
const AROUND = 24;
const bodies = (s: State) => {
  const one = bodiesOf(s.adjuster, AROUND).filter((body) => body.name !== 'spring');
  const { x, y, thick } = plateBox(s);
  return [...s.feet.flatMap((_, copy) => one.map((body) => ({ ...body, copy }))), plateBody(x, y, thick)];
};

const follow = (stage: HTMLElement, s: State, view: UnitView): void => {
  const live = lives.get(stage);
  const look = live?.look ?? BEGIN;
  const aim = aimOf(s, look);
  const fill = (part: string, html: string) => {
    const place = stage.querySelector(part);
    if (place && place.innerHTML !== html) place.innerHTML = html;
  };
  const over = () => fill('[data-overlay]', namesHtml(s, aim, view));
  if (live) {
    live.canvas.show({
      of: JSON.stringify([s.adjuster.name, s.adjuster.A.thread, s.adjuster.C?.thread, plateBox(s)]),
      bodies: () => bodies(s),
      view: () => ({ view: viewOf(s, aim), moves: false, over }),
    });
    for (const slider of SLIDERS) updateSlider(stage, slider, look[slider.name], degrees(look[slider.name]));
  }
  if (!live?.canvas.drawn()) {
    fill('[data-still]', feetHtml(s, aim));
    over();
  }
  fill('[data-part=magnified]', magnified(s));
  const able = {
    turn: s.plate.now.order.kind !== 'too far' && endOf(s.plate) !== 'level' && s.plate.rounds.length < MOST_ROUNDS + 1,
    back: s.plate.rounds.length > 1,
  };
  for (const act of ['turn', 'back'] as const)
    stage.querySelector(`[data-act=${act}]`)?.setAttribute('aria-disabled', String(!able[act]));
};

export const plateOnFeet = defineFigure({
  name: 'plate-on-feet',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['kept'],
  texts: TEXTS,
  setElsewhere: ['A', 'C', ...QUANTITIES, ...TEXTS],
  chief: ['kept'],
  state: stateOf,
  draw,
  caption: (s, view) => {
    const { now, rounds, k } = s.plate;
    const end = endOf(s.plate);
    return WORDS.caption({
      round: rounds.length,
      feet: s.feet.map(({ name, height }, i) => ({
        name,
        height: show(Math.abs(height), { shown: 'motion', digits: 3 }, view),
        way: height === 0 ? 'level' : height > 0 ? 'high' : 'low',
        order: orderText(now, i, k),
      })),
      done: end === undefined ? undefined : PLAN.done[end],
    });
  },
  rows: (s) =>
    s.feet.flatMap(({ name, height, turns }) => [
      signedAmount(`height-${name}`, WORDS.rows.height(name), height, 'motion', 3),
      signedAmount(`turns-${name}`, WORDS.rows.turns(name), turns, 'turns', 4),
    ]),
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.feet.map(({ name, height, turns }, i) => [
      name,
      motion(height, view),
      withSign(numeral(turns, 4)),
      orderText(s.plate.now, i, s.plate.k),
    ]),
  }),
  renderKey: (_, { texts, threads }) => [texts.adjuster, texts.feet, threads],
  mount: (stage, context) => {
    const read = () => {
      const s = stateOf(context.numbers());
      return s.ok ? s.value : undefined;
    };
    const again = () => {
      const s = read();
      if (s) follow(stage, s, context.view());
    };
    const live: Live = { look: BEGIN, canvas: canvasOn(stage, PICTURE, again) };
    lives.set(stage, live);
    const look = (next: Look) => {
      live.look = next;
      again();
    };
    mountSliders<Way>(stage, {
      sliders: () => SLIDERS,
      read: (name) => live.look[name],
      write: (name, value) => look({ ...live.look, [name]: value }),
    });
    mountPull(stage, (event) => {
      const place = stage.querySelector<HTMLElement>('[data-solid]');
      if (!place || !(event.target instanceof Node && place.contains(event.target))) return undefined;
      const unit = PICTURE.width / place.getBoundingClientRect().width;
      const was = live.look;
      return {
        tap: () => {},
        move: ({ clientX, clientY }) =>
          look({
            round: was.round - (clientX - event.clientX) * unit * 0.5,
            above: Math.max(0, Math.min(60, was.above + (clientY - event.clientY) * unit * 0.4)),
          }),
        undo: () => look(was),
      };
    });
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('[data-act]') : null;
      const s = read();
      if (!button || !s || button.getAttribute('aria-disabled') === 'true') return;
      const numbers = context.numbers();
      const rows = numbers.texts.rounds.split('\n').filter((row) => row !== '');
      if (button.getAttribute('data-act') === 'back') {
        context.type('rounds', rows.slice(0, -1).join('\n'));
        return;
      }
      const next = turned(s.plate, numbers.values.eps);
      if (next.ok) context.type('rounds', [...rows, writeRounds([next.value.map((point) => point.z)])].join('\n'));
    });
    again();
  },
  update: follow,
  worker: PAINTER,
});
