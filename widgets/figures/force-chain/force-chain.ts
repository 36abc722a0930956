/**
 * The force chain: a spring between any two of the three parts, and what it does to each thread over the stroke. The
 * picture stays with the assembly: laid on its side, only the arrow of the weight turns.
 */

import { WORDS } from '#words/figures/force-chain.ts';
import { flankText } from '#words/force.ts';
import { partMotion, type ThreadName } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { amount, following, type Row, signedAmount } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { axesOf, chartSvg, cursorPath } from './chart.ts';
import { lensPaths, lensSvg, sectionPaths, sectionSvg } from './picture.ts';
import {
  forcesAt,
  frictionText,
  leastText,
  MARKS,
  motionText,
  newtons,
  places,
  type State,
  seatAt,
  signedNewtons,
  springForceAt,
  springText,
  stateOf,
  turnsText,
  verdictText,
} from './state.ts';

/** Thread C stands above thread A, as in the section. */
const THREADS = ['C', 'A'] as const;

/** Along the stroke, whose end is so many turns from its start. */
const slider = (end: number): Slider => ({
  name: 'n',
  label: WORDS.slider,
  min: Math.min(0, end),
  max: end === 0 ? 1 : Math.max(0, end),
  step: 1 / 6,
});

const range = ([least, most]: readonly [number, number]): string =>
  Math.abs(most - least) < 1e-9 ? signedNewtons(least) : WORDS.range(signedNewtons(least), signedNewtons(most));

/** What the lens shows, in words. */
const hereText = (s: State, thread: ThreadName): string => {
  const seat = seatAt(s, thread, s.n);
  return WORDS.here(
    range(forcesAt(s, thread, s.n)),
    seat === 'neither for sure' ? undefined : { name: flankText(thread, seat), pressed: seat === 'pressed' },
  );
};

const placeText = (s: State, view: UnitView): string =>
  WORDS.place({
    turns: turnsText(s.n),
    carried: motionText(partMotion('carried', s.n, s.given), view),
    spring: s.spring ? newtons(springForceAt(s, s.n)) : undefined,
  });

const draw = (s: State, view: UnitView): string => {
  const axes = axesOf(s);
  const rows = THREADS.map(
    (thread) =>
      `<div class="chain-row">${lensSvg(thread, seatAt(s, thread, s.n))}<div class="chain-force"><p class="panel-name">${WORDS.panel(thread)}</p>${chartSvg(s, thread, axes)}</div>` +
      `<p class="chain-here" data-here="${thread}">${escapeText(hereText(s, thread))}</p></div>`,
  ).join('');
  return (
    `<div class="chain-side">${sectionSvg(s)}${sliderHtml(slider(s.given.to), s.n, placeText(s, view))}</div>` +
    `<div class="chain-rows">${rows}<p class="x-name">${WORDS.across}</p>` +
    `<ul class="legend"><li><svg viewBox="0 0 34 12" aria-hidden="true"><path class="most" d="M1 3H33"/><path class="least" d="M1 10H33"/></svg>${WORDS.legend.loads}</li>` +
    `<li><svg viewBox="0 0 34 10" aria-hidden="true"><path class="margin-line" d="M1 5H33"/></svg>${WORDS.legend.margin}</li>` +
    `<li><svg viewBox="0 0 34 10" aria-hidden="true"><path class="nought" d="M1 5H33"/></svg>${WORDS.legend.nought}</li></ul></div>`
  );
};

/** What stands at the place that is looked at, and what the spring would need at the start. */
const rows = (s: State): readonly Row[] => [
  following(
    signedAmount('carried', WORDS.rows.carried, partMotion('carried', s.n, s.given), 'motion', 3),
    'net-motion',
  ),
  ...(s.spring
    ? [following(amount('spring', WORDS.rows.spring, springForceAt(s, s.n), 'force', 3), 'spring-force')]
    : []),
  ...THREADS.flatMap((thread) => {
    const [least, most] = forcesAt(s, thread, s.n);
    return [
      signedAmount(`${thread}-least`, WORDS.rows.least(thread), least, 'force', 3),
      signedAmount(`${thread}-most`, WORDS.rows.most(thread), most, 'force', 3),
    ].map((one) => following(one, 'force-chain', 'spring-force', 'guide-friction'));
  }),
  ...(s.least
    ? [following(amount('needed', WORDS.rows.needed, s.least.force, 'force', 3), 'force-chain', 'spring-force')]
    : []),
];

/** What the sentence says of each thread, with its mark, and why. */
const readings = (s: State, view: UnitView): string => {
  const verdicts = THREADS.map(
    (thread) =>
      `<p class="chain-verdict ${s.verdict[thread].kind.replace(/ /g, '-')}" data-verdict="${thread}"><b class="verdict-mark" aria-hidden="true">${MARKS[s.verdict[thread].kind]}</b> ${escapeText(verdictText(s, thread, view))}</p>`,
  );
  const notes = [leastText(s), frictionText(s)].filter((t) => t !== '');
  return `${verdicts.join('')}<ul class="chain-notes">${notes.map((t) => `<li>${escapeText(t)}</li>`).join('')}</ul>`;
};

export const forceChainFigure = defineFigure({
  name: 'force-chain',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['F_0', 'k_s', 'W_c', 'W_t', 'F_lo', 'F_hi', 'Q_s', 'mu_g', 'M_L', 'r_k', 'F_g', 'n_w', 'n'],
  choices: ['spring', 'action', 'attitude'],
  chief: ['n', 'spring'],
  groups: {
    threads: ['A', 'C'],
    spring: ['action', 'F_0', 'k_s'],
    load: ['attitude', 'W_c', 'W_t', 'F_lo', 'F_hi'],
    guide: ['Q_s', 'mu_g', 'M_L', 'r_k'],
    margin: ['n_w', 'F_g'],
  },
  idle: ({ choices, values }) => [
    ...(choices.spring === 'no parts' ? (['action', 'F_0', 'k_s'] as const) : []),
    ...(values.M_L === 0 ? (['r_k'] as const) : []),
  ],
  decidedBy: ['F_0', 'k_s', 'n_w', 'W_c', 'F_lo', 'F_hi', 'F_g'],
  state: stateOf,
  draw,
  rows,
  readings,
  caption: (s, view) => WORDS.caption(verdictText(s, 'A', view), verdictText(s, 'C', view), springText(s, view)),
  table: (s, view) => ({
    head: WORDS.head,
    rows: places(s, 7).map((n) => [
      numeral(Number(n.toPrecision(4))),
      motionText(partMotion('carried', n, s.given), view),
      newtons(springForceAt(s, n)),
      ...forcesAt(s, 'A', n).map(signedNewtons),
      ...forcesAt(s, 'C', n).map(signedNewtons),
    ]),
  }),
  renderKey: (_, { threads, values: { n: __, ...rest }, choices }) => [threads, rest, choices],
  mount: (stage, context) =>
    mountSliders(stage, {
      sliders: () => [slider(context.numbers().values.n_w)],
      read: () => context.numbers().values.n,
      write: (_, n) => context.set('n', n),
    }),
  update: (stage, s, view) => {
    for (const [name, d] of Object.entries(sectionPaths(s)))
      stage.querySelector(`[data-path="${name}"]`)?.setAttribute('d', d);
    const axes = axesOf(s);
    for (const cursor of stage.querySelectorAll('[data-cursor]')) cursor.setAttribute('d', cursorPath(axes, s.n));
    for (const thread of THREADS) {
      const { nut, touch } = lensPaths(thread, seatAt(s, thread, s.n));
      stage.querySelector(`[data-nut="${thread}"]`)?.setAttribute('d', nut);
      stage.querySelector(`[data-touch="${thread}"]`)?.setAttribute('d', touch);
      const here = stage.querySelector(`[data-here="${thread}"]`);
      const words = hereText(s, thread);
      if (here && here.textContent !== words) here.textContent = words;
    }
    updateSlider(stage, slider(s.given.to), s.n, placeText(s, view));
  },
});
