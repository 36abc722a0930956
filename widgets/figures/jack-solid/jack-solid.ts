/**
 * The jack of the figure beside it as a solid, turned through the run that is solved there: over it the path that its tip takes, drawn too large, with the
 * push and without, and where on it the tip is now. Without WebGL, and on paper, the line drawing stands there with the same path.
 */

import { WORDS } from '#words/figures/jack-solid.ts';
import { widestStep } from '../../assembly/adjuster/part.ts';
import { idleOfJack, JACK_CHOICES, JACK_QUANTITIES, whenRun } from '../../assembly/jack-of.ts';
import { at } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { legendItem } from '../kit/plots/frame.ts';
import { mountPull } from '../kit/pull.ts';
import { amount, signedAmount } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { bodiesOf } from '../kit/solid/bodies.ts';
import { type Canvas, canvasOn } from '../kit/solid/canvas.ts';
import { PAINTER } from '../kit/solid/drawing.ts';
import { isOnHead } from '../kit/solid/head.ts';
import type { View } from '../kit/solid/shot.ts';
import { stillHtml, stillOf } from '../kit/solid/still.ts';
import { type Aim, PICTURE } from '../kit/solid/view.ts';
import { overlayHtml, updateOverlay } from './overlay.ts';
import { aimOf, CHOICES, QUANTITIES, type State, stateOf } from './state.ts';

type Way = 'round' | 'above' | 'cut';
type Pose = Readonly<Record<Way, number>>;
const SLIDERS: readonly Slider<Way>[] = [
  { name: 'round', label: WORDS.sliders.round, min: -180, max: 180, step: 5 },
  { name: 'above', label: WORDS.sliders.above, min: 0, max: 80, step: 5 },
  { name: 'cut', label: WORDS.sliders.cut, min: 0, max: 180, step: 5 },
];
const BEGIN: Pose = { round: 15, above: 20, cut: 90 };
const degrees = (x: number): string => WORDS.degrees(numeral(x, 3));

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);
/** Without the noughts that a count does not need. */
const turns = (n: number): string => WORDS.turns(numeral(Number(n.toFixed(3))));
/** No gauge reads less than a nanometre, mm. */
const LEAST = 1e-6;

const turnsOf = ({ standing: now }: State) => ({ base: 0, turned: now.n, carried: 0 });

/** The post of the lock is left out: the push comes from there. */
const drawnStill = (s: State, aim: Aim): string =>
  stillHtml(stillOf(s.adjuster, s.standing, aim, turnsOf(s), { guided: false, sprung: false }));

const DASH = '7 4';
const DOTS = '2 4';

const legend = `<ul class="legend">${legendItem('jack-solid-path', undefined, WORDS.legend.pushed)}${legendItem('jack-solid-quiet', DOTS, WORDS.legend.quiet)}${legendItem('jack-solid-nominal', DASH, WORDS.legend.nominal)}</ul>`;

const draw = (s: State, view: UnitView): string => {
  const aim = aimOf(s, BEGIN);
  const box = `viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"`;
  return (
    `<div class="jack-solid-view"><div class="solid-view" data-solid role="img" aria-label="${WORDS.drawing}">` +
    `<svg class="solid-still" ${box}><g data-still>${drawnStill(s, aim)}</g></svg>` +
    `<svg class="solid-overlay" ${box}>${overlayHtml(s, aim, view)}</svg></div>` +
    `<div class="jack-solid-side">${knobSvg(s.n, s.adjuster.divider, s.adjuster.steps, WORDS.knob, { from: 0, to: s.over })}` +
    `<div><p class="line" role="status" data-work>${s.path ? '' : WORDS.working('0')}</p>${legend}</div>` +
    `<div class="jack-solid-sliders">${SLIDERS.map((x) => sliderHtml(x, BEGIN[x.name], degrees(BEGIN[x.name]))).join('')}</div></div></div>`
  );
};

interface Live {
  pose: Pose;
  readonly canvas: Canvas;
}
const lives = new WeakMap<HTMLElement, Live>();

const NOT_LIT = { side: 0, from: 0, to: 0 } as const;
/** Half planes that a part is made of where the machine is slow. */
const COARSE = 24;

const viewOf = (s: State, aim: Aim, cut: number): View => ({
  aim,
  cut,
  marked: true,
  lit: () => ({ A: NOT_LIT, C: NOT_LIT }),
  shown: () => true,
  place: (body) => ({ lift: s.standing.at[body.with], turns: turnsOf(s)[body.with] }),
});

/** The line drawing and the solid show no guide: it would stand where the push comes from. */
const bodies = (s: State, around: number | undefined) =>
  bodiesOf(s.adjuster, around).filter(({ name }) => name !== 'post' && name !== 'arm');

/** What the parts are made of, by which they are made anew. */
const madeOf = ({ adjuster: a }: State): string =>
  JSON.stringify([a.base, a.turned, a.carried, a.tip, a.A.thread, a.C?.thread]);

const follow = (stage: HTMLElement, s: State, view: UnitView): void => {
  const live = lives.get(stage);
  const pose = live?.pose ?? BEGIN;
  const aim = aimOf(s, pose);
  const over = () => updateOverlay(stage, s, aim, view);
  if (live) {
    live.canvas.show({
      of: madeOf(s),
      bodies: (net) => bodies(s, net === 'coarse' ? COARSE : undefined),
      view: () => ({ view: viewOf(s, aim, pose.cut), moves: false, over }),
    });
    for (const slider of SLIDERS) updateSlider(stage, slider, pose[slider.name], degrees(pose[slider.name]));
  }
  const still = stage.querySelector('[data-still]');
  if (still && !live?.canvas.drawn()) {
    still.innerHTML = drawnStill(s, aim);
    over();
  }
  const work = stage.querySelector('[data-work]');
  if (work && s.path) work.textContent = '';
  else if (work?.textContent === '') work.textContent = WORDS.working('0');
  updateKnob(stage, s.n);
};

const HERE: readonly string[] = ['Q_y', 'alpha_o'];

export const jackSolid = defineFigure({
  name: 'jack-solid',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: CHOICES,
  setElsewhere: ['A', 'C', 'n_o', ...JACK_QUANTITIES.filter((q) => !HERE.includes(q)), ...JACK_CHOICES, 'turning'],
  chief: ['n', 'Q_y', 'alpha_o'],
  idle: idleOfJack,
  state: stateOf,
  draw,
  rows: ({ path }) =>
    path
      ? [
          amount('moves', WORDS.rows.moves, path.moves, 'motion', 3),
          amount('round', WORDS.rows.round, path.round, 'motion', 3),
          signedAmount('along', WORDS.rows.along, path.now.x, 'motion', 3),
          signedAmount('across', WORDS.rows.across, path.now.y, 'motion', 3),
          signedAmount('off', WORDS.rows.off, path.now.off, 'motion', 3),
        ]
      : [],
  caption: (s, view) => {
    const { path } = s;
    if (!path) return WORDS.workingCaption(turns(s.over));
    return WORDS.caption({
      push: s.push === 0 ? undefined : show(s.push, { shown: 'force', digits: 3 }, view),
      moves: motion(path.moves, view),
      over: turns(s.over),
      round: motion(path.round, view),
      n: turns(s.n),
      aside: motion(Math.hypot(path.now.x, path.now.y), view),
      off: motion(Math.abs(path.now.off), view),
      way: Math.abs(path.now.off) < LEAST ? 'level' : path.now.off < 0 ? 'low' : 'high',
      back: s.back,
      across: numeral(path.across),
      along: numeral(path.along),
      beyond: s.asked === s.n ? undefined : turns(s.asked),
      stopped: s.standing.stopped === undefined ? undefined : turns(s.standing.n),
    });
  },
  table: (s, view) => {
    const { path } = s;
    if (!path) return WORDS.noneYet;
    const every = Math.max(1, Math.round(path.pushed.length / 24));
    return {
      head: WORDS.head,
      rows: path.pushed.flatMap((p, i) =>
        i % every === 0
          ? [
              [
                numeral(Number(at(path.turns, i).toFixed(4))),
                ...[p.x, p.y, p.off].map((z) => withSign(motion(z, view))),
              ],
            ]
          : [],
      ),
    };
  },
  renderKey: (s) => [madeOf(s), s.over],
  mount: (stage, context) => {
    const read = () => {
      const s = stateOf(context.numbers());
      return s.ok ? s.value : undefined;
    };
    const again = () => {
      const s = read();
      if (s) follow(stage, s, context.view());
    };
    const live: Live = { pose: BEGIN, canvas: canvasOn(stage, PICTURE, again) };
    lives.set(stage, live);
    const hold = (pose: Pose) => {
      live.pose = pose;
      again();
    };
    /** From the start of the run to its end. */
    const turnTo = (n: number) => {
      const s = read();
      if (s) context.set('n', Math.max(0, Math.min(s.over, n)));
    };
    whenRun(stage, {
      redraw: context.redraw,
      progress: (share) => {
        const work = stage.querySelector('[data-work]');
        if (work) work.textContent = WORDS.working(numeral(Math.round(100 * share)));
      },
    });
    mountKnob(stage, { read: () => read()?.n ?? 0, write: turnTo, steps: () => read()?.adjuster.steps ?? 1 });
    mountSliders<Way>(stage, {
      sliders: () => SLIDERS,
      read: (name) => live.pose[name],
      write: (name, value) => hold({ ...live.pose, [name]: value }),
    });
    mountPull(stage, (event) => {
      const place = stage.querySelector('[data-solid]');
      const s = read();
      if (!place || !s || !(event.target instanceof Node && place.contains(event.target))) return undefined;
      const unit = PICTURE.width / place.getBoundingClientRect().width;
      const was = { pose: live.pose, n: s.n };
      const aim = aimOf(s, live.pose);
      const turned = isOnHead(event, place, s.adjuster, { aim, at: s.standing.at });
      const radius = widestStep(s.adjuster.turned).r * aim.scale;
      return {
        tap: () => {},
        move: ({ clientX, clientY }) => {
          const dx = (clientX - event.clientX) * unit;
          // A point on the near side goes left when the head is turned clockwise.
          if (turned) return turnTo(was.n - dx / (2 * Math.PI * radius));
          hold({
            ...live.pose,
            round: was.pose.round - dx * 0.5,
            above: Math.max(0, Math.min(80, was.pose.above + (clientY - event.clientY) * unit * 0.4)),
          });
        },
        undo: () => {
          hold(was.pose);
          turnTo(was.n);
        },
      };
    });
    again();
  },
  update: follow,
  worker: PAINTER,
});
