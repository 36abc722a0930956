/**
 * The reader’s adjuster as a solid: turned by the same n as every other figure, looked at from all round, cut open by a plane that
 * swings about the axis, and pulled apart. A line scribed up all three parts at home tells who has turned. Without WebGL, and on paper,
 * a line drawing of the same view stands there.
 */
import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/solid.ts';
import { partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { stepSaid } from '../kit/build-steps.ts';
import { defineFigure } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { mountPull } from '../kit/pull.ts';
import { amount, following, type Row, signedAmount } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { stepsOf } from '../kit/solid/assembling.ts';
import { PAINTER } from '../kit/solid/drawing.ts';
import { isOnHead } from '../kit/solid/head.ts';
import { stillHtml, stillOf } from '../kit/solid/still.ts';
import { PICTURE } from '../kit/solid/view.ts';
import { drawnOver, updateLabels } from './labels.ts';
import { type Live, liveOn } from './live.ts';
import { BEGIN, type Posed, posed } from './pose.ts';
import { type State, stateOf } from './state.ts';

type Way = 'round' | 'above' | 'cut' | 'apart';
const SLIDERS: readonly Slider<Way>[] = [
  { name: 'round', label: WORDS.sliders.round, min: -180, max: 180, step: 5 },
  { name: 'above', label: WORDS.sliders.above, min: -60, max: 80, step: 5 },
  { name: 'cut', label: WORDS.sliders.cut, min: 0, max: 180, step: 5 },
  { name: 'apart', label: WORDS.sliders.apart, min: 0, max: 1, step: 0.05 },
];

const textOf = (name: Way, value: number): string =>
  name === 'apart'
    ? value === 0
      ? WORDS.together
      : WORDS.share(numeral(100 * value, 3))
    : name === 'cut' && value === 0
      ? WORDS.whole
      : WORDS.degrees(numeral(value, 3));

const motion = (length: number, view: UnitView) => show(length, { shown: 'motion', digits: 4 }, view);
/** Turns without the noughts that a count of them does not need. */
const count = (x: number) => numeral(Number(x.toFixed(3)));
const way = (x: number) => (x > 0 ? 'up' : x < 0 ? 'down' : 'nowhere');

/** What stands in the column beside the parts. */
const wordsAt = (s: State, view: UnitView) => {
  const { turned, carried } = s.standing.motion;
  const moves = { base: 0, turned, carried };
  return partsOf(s.adjuster).map(({ role }) => {
    const x = moves[role];
    return { role, name: WORDS.parts[role], motion: WORDS.motion(motion(Math.abs(x), view), way(x)) };
  });
};

const stillAt = (s: State, pose: Posed): string =>
  stillHtml(stillOf(s.adjuster, { at: pose.at }, pose.aim, pose.turns, { guided: pose.locked, sprung: pose.sprung }));

const draw = (s: State, view: UnitView): string => {
  const pose = posed(s, BEGIN);
  const { overlay, labels } = drawnOver(s, pose, wordsAt(s, view), view);
  return (
    `<div class="solid-whole"><div class="solid-view" data-solid role="img" aria-label="${escapeText(WORDS.drawing(s.adjuster.name))}">` +
    `<svg class="solid-still" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-still>${stillAt(s, pose)}</g></svg>` +
    `<svg class="solid-overlay" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-overlay>${overlay}</g></svg>` +
    `${labels}</div>` +
    `<div class="solid-side">${knobSvg(s.standing.n, s.adjuster.divider, s.adjuster.steps, WORDS.knob)}` +
    `<div class="solid-sliders">${SLIDERS.map((x) => sliderHtml(x, BEGIN[x.name], textOf(x.name, BEGIN[x.name]))).join('')}</div><div class="solid-steps" data-stepper></div></div></div>`
  );
};

/** Puts the adjuster together, a step a press. Only a script can, so it is put there by one. */
const STEPPER =
  `<button type="button" class="plain" data-begin data-key="begin">${WORDS.steps.begin}</button><div data-steps hidden>` +
  `<p role="status" data-step-says></p><p class="solid-step-keys"><button type="button" data-build="-1" data-key="step-back">${WORDS.steps.back}</button>` +
  `<button type="button" data-build="1" data-key="step-on">${WORDS.steps.on}</button><button type="button" class="plain" data-whole data-key="whole">${WORDS.steps.whole}</button></p></div>`;

const stepHtml = (s: State, step: number, view: UnitView): string => {
  const steps = stepsOf(s.adjuster);
  if (step === 0) return escapeText(WORDS.steps.first(steps.length));
  const one = steps[step - 1];
  if (!one) return '';
  const { name, text, count, caution } = stepSaid(one, s.adjuster, view);
  return (
    `<b>${escapeText(WORDS.steps.of(step, steps.length))} ${escapeText(name)}</b> ${escapeText(text)} ${escapeText(WORDS.steps.count(count))}` +
    (caution === undefined ? '' : ` <strong class="card-caution">${escapeText(caution)}</strong>`)
  );
};

const followSteps = (stage: HTMLElement, s: State, step: number | undefined, view: UnitView): void => {
  const stepper = stage.querySelector('[data-stepper]');
  if (stepper?.childElementCount === 0) stepper.innerHTML = STEPPER;
  const [begin, panel, says] = ['[data-begin]', '[data-steps]', '[data-step-says]'].map((q) =>
    stage.querySelector<HTMLElement>(q),
  );
  if (!begin || !panel || !says) return;
  begin.hidden = step !== undefined;
  panel.hidden = step === undefined;
  const text = step === undefined ? '' : stepHtml(s, step, view);
  if (says.dataset.said !== text) {
    says.dataset.said = text;
    says.innerHTML = text;
  }
};

const lives = new WeakMap<HTMLElement, Live>();

const fillStill = (stage: HTMLElement, s: State, pose: Posed): void => {
  const still = stage.querySelector('[data-still]');
  if (still) still.innerHTML = stillAt(s, pose);
};

const follow = (stage: HTMLElement, s: State, view: UnitView): void => {
  const live = lives.get(stage);
  const pose = posed(s, live?.pose ?? BEGIN);
  const label = (at: Posed) => updateLabels(stage, s, at, wordsAt(s, view), view);
  if (live) {
    live.show(s, pose, label);
    for (const slider of SLIDERS)
      updateSlider(stage, slider, live.pose[slider.name], textOf(slider.name, live.pose[slider.name]));
  }
  if (!live?.drawn()) {
    fillStill(stage, s, pose);
    label(pose);
  }
  // The line drawing shows no cut.
  const cut = stage.querySelector<HTMLElement>('.slider[data-sym="cut"]');
  if (cut && live) cut.hidden = !live.comes();
  if (live) followSteps(stage, s, live.pose.step, view);
  updateKnob(stage, s.standing.n);
};

const torque = (M: number, view: UnitView): string => show(Math.abs(M), { shown: 'N·mm', digits: 2 }, view);

const caption = (s: State, view: UnitView): string => {
  const { standing: now, adjuster } = s;
  const stopped = now.stopped && { asked: numeral(s.asked), why: ADJUSTER.stop(now.stopped) };
  return WORDS.caption({
    stopped,
    turns: count(Math.abs(now.n)),
    clockwise: now.n > 0,
    turned: motion(Math.abs(now.motion.turned), view),
    turnedWay: way(now.motion.turned),
    carried: adjuster.carried && motion(Math.abs(now.motion.carried), view),
    carriedWay: way(now.motion.carried),
    locked: s.locked,
    carries: (['A', 'C'] as const).flatMap((thread) => {
      const flank = s.carrying.flank[thread];
      return flank ? [{ thread, flank }] : [];
    }),
    push: s.push === 0 ? undefined : show(s.push, { shown: 'force', digits: 3 }, view),
    aside: (['A', 'C'] as const).flatMap((thread) => {
      const aside = s.aside[thread];
      return aside ? [{ thread, aside }] : [];
    }),
    handed:
      s.handed === undefined
        ? undefined
        : {
            by: adjuster.lock.kind,
            torque: torque(s.handed, view),
            springs:
              s.springsHold === undefined
                ? undefined
                : { most: torque(s.springsHold, view), enough: Math.abs(s.handed) <= s.springsHold },
          },
  });
};

const rows = ({ standing: now, adjuster, play, handed }: State): readonly Row[] => [
  following(signedAmount('turned', WORDS.rows.turned, now.motion.turned, 'motion', 4), 'turned-motion'),
  ...(adjuster.carried
    ? [
        following(
          signedAmount('carried', WORDS.rows.carried, now.motion.carried, 'motion', 4),
          'net-motion',
          'net-lead',
        ),
      ]
    : []),
  following(amount('height', WORDS.rows.height, now.height, 'size', 6), 'turned-motion', 'net-motion'),
  // A plain screw stands where play has not been met yet.
  ...(['A', 'C'] as const).flatMap((thread) => {
    const own = play[thread];
    return own === undefined || !adjuster.carried
      ? []
      : [
          following(
            amount(`play-${thread}`, WORDS.rows.play(thread), own, 'motion', 3),
            'axial-play',
            'pitch-clearance',
          ),
        ];
  }),
  ...(handed === undefined ? [] : [amount('handed', WORDS.rows.handed, Math.abs(handed), 'N·mm', 2)]),
];

export const solidFigure = defineFigure({
  name: 'solid',
  title: WORDS.title,
  threads: [],
  quantities: ['n', 'F', 'Q_y', 'mu'],
  choices: ['lock', 'lens', 'pull'],
  texts: ['adjuster'],
  chief: ['n', 'lock', 'lens'],
  groups: { parts: ['adjuster'], load: ['F', 'pull', 'Q_y', 'mu'] },
  // Friction counts where a lock takes a torque, and a lock where something is carried.
  idle: (numbers) => {
    const s = stateOf(numbers);
    if (!s.ok) return [];
    return [
      ...(s.value.adjuster.carried ? [] : (['lock'] as const)),
      ...(s.value.handed === undefined ? (['mu'] as const) : []),
      ...(numbers.values.F === 0 ? (['pull'] as const) : []),
    ];
  },
  state: stateOf,
  draw,
  rows,
  caption,
  table: ({ adjuster, locked }, view) => ({
    head: WORDS.head(adjuster.carried !== undefined),
    rows: Array.from({ length: 9 }, (_, i) => {
      const now = standing(adjuster, adjuster.anticlockwise.n + (adjuster.turns * i) / 8, { share: locked ? 0 : 1 });
      return [
        numeral(now.n, 3),
        withSign(motion(now.motion.turned, view)),
        ...(adjuster.carried ? [withSign(motion(now.motion.carried, view))] : []),
        show(now.height, { shown: 'size', digits: 6 }, view),
      ];
    }),
  }),
  renderKey: (_, { texts, choices }) => [texts, choices.lens],
  mount: (stage, context) => {
    const read = () => {
      const state = stateOf(context.numbers());
      return state.ok ? state.value : undefined;
    };
    const again = () => {
      const s = read();
      if (s) follow(stage, s, context.view());
    };
    const turnTo = (n: number) => {
      const s = read();
      // The hand feels the stop: nothing is written beyond it.
      if (s) context.set('n', standing(s.adjuster, n).n);
    };
    const live = liveOn(stage, again);
    lives.set(stage, live);
    mountKnob(stage, {
      read: () => read()?.standing.n ?? 0,
      write: turnTo,
      steps: () => read()?.adjuster.steps ?? 1,
    });
    mountSliders<Way>(stage, {
      sliders: () => SLIDERS,
      read: (name) => live.pose[name],
      write: (name, value) => {
        live.pose = { ...live.pose, [name]: value };
        again();
      },
    });
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('button') : null;
      const s = read();
      if (!button || !s || !button.closest('.solid-steps')) return;
      const { step } = live.pose;
      const by = Number(button.dataset.build ?? 0);
      const to = Math.max(0, Math.min(stepsOf(s.adjuster).length, (step ?? 0) + by));
      live.pose = { ...live.pose, step: 'whole' in button.dataset ? undefined : to };
      again();
      // What was pressed is gone; the hand stays where it was.
      const next = 'whole' in button.dataset ? '[data-begin]' : 'begin' in button.dataset ? '[data-build="1"]' : '';
      if (next) stage.querySelector<HTMLElement>(next)?.focus({ preventScroll: true });
    });
    mountPull(stage, (event) => {
      const place = stage.querySelector<HTMLElement>('[data-solid]');
      const s = read();
      if (!place || !s || !(event.target instanceof Node && place.contains(event.target))) return undefined;
      const unit = PICTURE.width / place.getBoundingClientRect().width;
      const was = { pose: live.pose, n: s.standing.n };
      // While it is put together nothing is turned but by its steps.
      const pose = posed(s, live.pose);
      const turned = live.pose.step === undefined && isOnHead(event, place, s.adjuster, pose);
      return {
        tap: () => {},
        move: ({ clientX, clientY }) => {
          const dx = (clientX - event.clientX) * unit;
          // A point on the near side goes left when the head is turned clockwise.
          if (turned) return turnTo(was.n - dx / (2 * Math.PI * pose.headRadius * pose.aim.scale));
          live.pose = {
            ...live.pose,
            round: was.pose.round - dx * 0.5,
            above: Math.max(-60, Math.min(80, was.pose.above + (clientY - event.clientY) * unit * 0.4)),
          };
          again();
        },
        undo: () => {
          live.pose = was.pose;
          turnTo(was.n);
          again();
        },
      };
    });
    again();
  },
  update: follow,
  worker: PAINTER,
});
