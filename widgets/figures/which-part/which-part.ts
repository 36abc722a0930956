/**
 * Which part to improve: the assemblies that the stated errors allow, each solved, as a row of bars, with the statistical and the worst case beside;
 * and under it what each part takes off where it is made twice as good.
 */
import { WORDS } from '#words/figures/which-part.ts';
import { idleOfJack, JACK_CHOICES, JACK_QUANTITIES, jackOf, whenDrawn, whichPartOf } from '../../assembly/jack-of.ts';
import { at, good, type Result, type WhichPart } from '../../engine/index.ts';
import { show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { frameBox } from '../kit/plot-box.ts';
import { px } from '../kit/svg.ts';
import { roundTicks } from '../kit/ticks.ts';

const QUANTITIES = [...JACK_QUANTITIES, 'n_o', 'n_a', 'n_s'] as const;
const CHOICES = [...JACK_CHOICES, 'asked'] as const;
type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], (typeof CHOICES)[number], never>;

type State =
  | { readonly at: 'work'; readonly key: string; readonly count: number }
  | { readonly at: 'end'; readonly key: string; readonly count: number; readonly which: WhichPart };

/** More are no clearer, and each is solved once a part; what is printed without a page has no time for more than a few. */
const MOST = typeof window === 'undefined' ? 16 : 500;

const stateOf = (numbers: Given): Result<State> => {
  const jack = jackOf(numbers);
  if (!jack.ok) return jack;
  const { n_o, n_a, n_s } = numbers.values;
  const count = Math.min(MOST, n_a);
  const asked = numbers.choices.asked === 'the height' ? 'height' : 'place';
  const found = whichPartOf(jack.value, n_o, { asked, count, seed: n_s });
  return found.ok ? good({ ...found.value, count }) : found;
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);

const WIDE = 640;
const HIGH = 236;
const FLOOR = HIGH - 36;
const BARS = 16;
const INSIDE = { left: 64, right: WIDE - 4, top: 4, floor: FLOOR };
/** Room for the names over the bars. */
const BARS_TOP = 116;

/** Counts of assemblies between nought and the worst case or the largest of them. */
const bars = ({ errors, worst, statistical }: WhichPart) => {
  const most = Math.max(worst, statistical, at(errors, errors.length - 1), 1e-9) * 1.02;
  const counts = new Array<number>(BARS).fill(0);
  for (const e of errors) {
    const i = Math.min(BARS - 1, Math.floor((e / most) * BARS));
    counts[i] = at(counts, i) + 1;
  }
  return { most, counts };
};

const histogram = (which: WhichPart, view: UnitView): string => {
  const { most, counts } = bars(which);
  const top = Math.max(...counts);
  const x = (z: number) => INSIDE.left + ((INSIDE.right - INSIDE.left) * z) / most;
  const y = (count: number) => FLOOR - ((FLOOR - BARS_TOP) * count) / top;
  const each = (INSIDE.right - INSIDE.left) / BARS;
  const ticks = roundTicks(0, top, 3).filter((count) => Number.isInteger(count) && count <= top);
  // The largest stands highest: its name runs to the left, over the lines of the others.
  const marks = (['sampled', 'statistical', 'worst'] as const)
    .toSorted((a, b) => which[b] - which[a])
    .map((name, i) => {
      const place = x(which[name]);
      const right = place < WIDE / 2;
      return `<path class="which-mark ${name}" d="M${px(place)} ${FLOOR}V${INSIDE.top + 6 + 34 * i}"/><text x="${px(place + (right ? 5 : -5))}" y="${INSIDE.top + 22 + 34 * i}" text-anchor="${right ? 'start' : 'end'}">${WORDS.marks[name]} ${motion(which[name], view)}</text>`;
    })
    .join('');
  return (
    `<svg class="which-bars" viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label="${WORDS.histogram(String(which.errors.length))}">` +
    counts
      .map((c, i) => {
        return `<rect class="which-bar" x="${px(INSIDE.left + each * i + 1)}" y="${px(y(c))}" width="${px(each - 2)}" height="${px(FLOOR - y(c))}"/>`;
      })
      .join('') +
    frameBox(INSIDE, [], ticks.map(y)) +
    ticks
      .map((count) => `<text x="${INSIDE.left - 8}" y="${px(y(count))}" dy="0.35em" text-anchor="end">${count}</text>`)
      .join('') +
    `<text x="${INSIDE.left}" y="${HIGH - 9}">0</text><text x="${INSIDE.right}" y="${HIGH - 9}" text-anchor="end">${motion(most, view)}</text>${marks}</svg>`
  );
};

/** Less than half a nanometre is nothing that anybody measures. */
const LEAST = 5e-7;
const gain = (z: number, view: UnitView): string => (z < LEAST ? WORDS.nothing : motion(z, view));

const ranking = (which: WhichPart, view: UnitView): string => {
  const most = Math.max(...which.ranks.map((r) => r.gains), 1e-12);
  return which.ranks
    .map(
      (r) =>
        `<div class="which-row line"><span>${WORDS.part(r.part)}</span><svg viewBox="0 0 200 12" preserveAspectRatio="none" aria-hidden="true"><rect class="which-gain" x="0" y="1" width="${px(Math.max(0, (200 * r.gains) / most))}" height="10"/></svg><b>${gain(r.gains, view)}</b></div>`,
    )
    .join('');
};

const differ = ({ sampled, statistical }: WhichPart): boolean =>
  Math.abs(sampled - statistical) > 0.1 * Math.max(sampled, statistical);

export const whichPartFigure = defineFigure({
  name: 'which-part',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: CHOICES,
  setElsewhere: ['A', 'C', 'n_o', ...JACK_QUANTITIES, ...JACK_CHOICES],
  chief: ['asked'],
  groups: { batch: ['n_a', 'n_s'] },
  idle: idleOfJack,
  state: stateOf,
  draw: (s, view) =>
    s.at === 'work'
      ? `<p class="line" role="status">${WORDS.working}</p><svg viewBox="0 0 400 20" aria-hidden="true" data-working><rect class="which-share" x="0" y="4" width="0" height="12"/><rect class="which-whole" x="0" y="4" width="400" height="12"/></svg>`
      : `<div class="which-part-view"><p class="panel-name">${WORDS.histogram(String(s.which.errors.length))}</p>${histogram(s.which, view)}<p class="panel-name">${WORDS.ranking}</p>${ranking(s.which, view)}</div>`,
  caption: (s, view) => {
    if (s.at === 'work') return WORDS.workingCaption(String(s.count));
    const best = s.which.ranks.find((r) => r.gains > LEAST);
    return WORDS.caption({
      asked: s.which.asked,
      count: String(s.which.errors.length),
      sampled: motion(s.which.sampled, view),
      statistical: motion(s.which.statistical, view),
      worst: motion(s.which.worst, view),
      best: best && WORDS.part(best.part),
      gains: motion(best?.gains ?? 0, view),
      differ: differ(s.which),
    });
  },
  table: (s, view) => {
    if (s.at === 'work') return WORDS.noneYet;
    const { which } = s;
    return {
      head: WORDS.head,
      rows: [
        ...which.ranks.map((r) => [WORDS.part(r.part), motion(r.alone, view), gain(r.gains, view)]),
        [WORDS.sums.sampled, motion(which.sampled, view), ''],
        [WORDS.sums.statistical, motion(which.statistical, view), ''],
        [WORDS.sums.worst, motion(which.worst, view), ''],
        [WORDS.sums.failed, String(which.failed), ''],
      ],
    };
  },
  renderKey: (s) => [s.at, s.key],
  mount: (stage, context) =>
    whenDrawn(stage, {
      redraw: context.redraw,
      progress: (share) => stage.querySelector('.which-share')?.setAttribute('width', px(400 * share)),
    }),
});
