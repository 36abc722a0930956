/**
 * One adjuster from its parts, as the reader describes it: the section to scale, its stops, what is engaged, its height, mass and price.
 * What was not stated is drawn with an assumed size, and said.
 */

import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/adjuster.ts';
import {
  type Adjuster,
  type Fitted,
  partsOf,
  type Standing,
  springForce,
  standing,
} from '../../assembly/adjuster/adjuster.ts';
import { heightOf, massOf } from '../../assembly/adjuster/part.ts';
import { jointPlay, turnsLostIn } from '../../assembly/adjuster/play.ts';
import { postOf } from '../../assembly/adjuster/post.ts';
import { springRadius, stretchAt } from '../../assembly/adjuster/spring-place.ts';
import { springRoom } from '../../assembly/adjuster/spring-room.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { springFace } from '../../assembly/spring/spring-face.ts';
import type { SeenLine } from '../../assembly/spring/spring-seen.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { stepName } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { extentsOf, reachesOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, namesAt, partsHtml, pictureOf, updateParts } from '../kit/adjuster-picture.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import { roomSays } from '../kit/spring-room-says.ts';
import { hatchings, type Point, polygon, polyline, px } from '../kit/svg.ts';

const WIDTH = 400;
const HEIGHT = 470;
const AXIS = 150;
const MARGIN = 14;

interface State {
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  readonly frame: Frame;
  readonly asked: number;
}

const stateOf = ({ values, texts }: NumbersOf<never, 'n', never, 'adjuster'>): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const adjuster = read.value;
  const frame = frameIn(extentsOf(adjuster), HEIGHT - 2 * MARGIN, AXIS, AXIS - 10);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({
        adjuster,
        standing: standing(adjuster, values.n),
        frame: { ...frame, y: frame.y + MARGIN },
        asked: values.n,
      })
    : bad('lengths-of-no-one-scale', {});
};

const size = (length: number, view: UnitView, digits = 4) => show(length, { shown: 'size', digits }, view);
const motion = (length: number, view: UnitView) => show(length, { shown: 'motion', digits: 4 }, view);
const grams = (mass: number): string => `${numeral(mass, 3)}\u00a0g`;
const money = (price: number | undefined): string => (price === undefined ? WORDS.list.none : fixed(price, 2));

const draw = (s: State): string => {
  const { adjuster, frame } = s;
  return (
    `<div class="adjuster-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing(adjuster.name))}">${hatchings('adjuster')}` +
    `${partsHtml(pictureOf(adjuster, s.standing, frame), 'adjuster')}<path class="axis" d="M${AXIS} 4V${HEIGHT - 4}"/><g data-names>${names(s)}</g></svg></div>` +
    `<div class="adjuster-side">${knobSvg(s.standing.n, adjuster.divider, adjuster.steps, WORDS.knob, { from: adjuster.anticlockwise.n, to: adjuster.clockwise.n })}${faceOf(s)}</div>`
  );
};

const FACE = 150;

/** A drawn spring on its own plane, at the scale of the section where that leaves it small enough: the section sees most of them edge on. */
const faceOf = ({ adjuster, frame }: State): string => {
  const drawn = adjuster.springs?.drawn;
  if (!drawn) return '';
  const { closed, open } = springFace(drawn.form, drawn.length - stretchAt(adjuster, 0), stretchAt(adjuster, 0));
  const places = [...closed, ...open].flat();
  const [xs, zs] = [places.map(([x]) => x), places.map(([, z]) => z)];
  const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...zs) - Math.min(...zs)];
  const scale = Math.min(frame.scale, FACE / wide, FACE / high);
  const place = (line: SeenLine): Point[] =>
    line.map(([x, z]): Point => [FACE / 2 + x * scale, 4 + (Math.max(...zs) - z) * scale]);
  return (
    `<svg class="spring-face" viewBox="0 0 ${FACE} ${px(high * scale + 24)}" role="img" aria-label="${WORDS.springFace}">` +
    `<path d="${closed.map((line) => polygon(place(line))).join('')}${open.map((line) => polyline(place(line))).join('')}" fill-rule="evenodd" class="${closed.length > 0 ? 'filled' : ''}"/>` +
    `<text class="part-name" x="${FACE / 2}" y="${px(high * scale + 20)}" text-anchor="middle">${WORDS.springFace}</text></svg>`
  );
};

const readings = (s: State, view: UnitView): string =>
  `${partsTable(s, view)}${roomOf(s, view)}<p class="figure-words">${escapeText(WORDS.assumed(assumedOf(s.adjuster, view)))}</p>`;

/** Whether drawn springs have their room. */
const roomOf = ({ adjuster }: State, view: UnitView): string => {
  const room = springRoom(adjuster);
  return room ? `<p class="figure-words">${escapeText(roomSays(room, view))}</p>` : '';
};

/** Beside the parts, and beside the springs where these stand there. */
const names = ({ adjuster, standing: now, frame }: State): string => {
  const beside = adjuster.springs ? reachesOf(adjuster).right : 0;
  return namesAt(adjuster, now)
    .map(
      ([role, [x, z]]) =>
        `<text class="part-name ${role}" x="${px(frame.x + Math.max(x, beside) * frame.scale + 8)}" y="${px(frame.y - z * frame.scale + 4)}">${WORDS.parts[role]}</text>`,
    )
    .join('');
};

const partsTable = ({ adjuster }: State, view: UnitView): string => {
  const cells = (tag: 'td' | 'th', row: readonly string[]) =>
    `<tr>${row.map((cell) => `<${tag}${tag === 'th' ? ' scope="col"' : ''}>${escapeText(cell)}</${tag}>`).join('')}</tr>`;
  const rows = partsOf(adjuster).map((part) =>
    cells('td', [
      WORDS.kind(part.role, part.kind),
      size(heightOf(part), view, 3),
      grams(massOf(part) * part.count),
      money(part.price === undefined ? undefined : part.price * part.count),
    ]),
  );
  return `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.title}"><table><thead>${cells('th', WORDS.list.head)}</thead><tbody>${rows.join('')}</tbody></table></div>`;
};

/** Sizes that were not stated, as the drawing has them. */
const assumedOf = (adjuster: Adjuster, view: UnitView): string[] => [
  ...partsOf(adjuster).flatMap((part) =>
    part.sizes
      .filter((s) => !s.stated)
      .map((s) =>
        WORDS.size(
          WORDS.parts[part.role],
          WORDS.sizes[s.name],
          s.over ? WORDS.over(size(s.value, view, 3), size(s.over.to - s.over.from, view, 3)) : size(s.value, view, 3),
        ),
      ),
  ),
  ...(adjuster.tip.assumed ? [WORDS.assumedTip(size(adjuster.tip.stands, view, 3))] : []),
  ...postSizes(adjuster, view),
  ...(adjuster.springs && adjuster.springs.radius === undefined
    ? [WORDS.assumedSprings(size(springRadius(adjuster), view, 3))]
    : []),
];

const postSizes = (adjuster: Adjuster, view: UnitView): string[] => {
  const post = postOf(adjuster);
  if (!post) return [];
  const thick = size(2 * post.half, view, 3);
  const { kind } = adjuster.lock;
  return kind === 'key' || kind === 'post'
    ? [WORDS.assumedThickness(kind, thick)]
    : [WORDS.assumedPost(thick, size(-post.x, view, 3))];
};

const readout = ({ adjuster, standing: now }: State, view: UnitView): Row[] => {
  const { A, C, Delta, steps } = adjuster;
  const force = springForce(adjuster, now.n);
  return [
    signedAmount('perTurn', WORDS.readout.perTurn, Delta, 'motion', 4),
    amount(
      'perStep',
      WORDS.readout.perStep(stepName(adjuster.divider), numeral(steps)),
      Math.abs(Delta) / steps,
      'motion',
      4,
    ),
    amount('stroke', WORDS.readout.stroke, adjuster.stroke, 'motion', 4),
    amount('height', WORDS.readout.height, now.height, 'size', 6),
    amount('engagedA', WORDS.readout.engagedA, now.engaged.A, 'size', 4),
    ...(C ? [amount('engagedC', WORDS.readout.engagedC, now.engaged.C, 'size', 4)] : []),
    ['left', WORDS.readout.left, WORDS.both(numeral(now.left.clockwise, 3), numeral(now.left.anticlockwise, 3))],
    ['markA', WORDS.readout.markA, WORDS.turns(numeral(A.mark, 3))],
    ...(C ? [['markC', WORDS.readout.markC, WORDS.turns(numeral(C.mark, 3))] as const] : []),
    ...playRows(adjuster, view),
    ...(force === undefined ? [] : [amount('springs', WORDS.readout.springs, force, 'force', 3)]),
    ['mass', WORDS.readout.mass, grams(adjuster.mass)],
    ['price', WORDS.readout.price, money(adjuster.price)],
  ];
};

/** Play of each thread between its tightest and its loosest pieces, and what reversal costs at most. */
const playRows = (adjuster: Adjuster, view: UnitView): Row[] => {
  const of = (joint: 'A' | 'C', fitted: Fitted): Row => {
    const play = jointPlay(fitted);
    if (!play.ok) return [`play${joint}`, WORDS.readout.play(joint, ''), reasonOf(play)];
    const { limits, coat, least, most } = play.value;
    const name = WORDS.readout.play(
      joint,
      WORDS.readout.limits(limits, coat > 0 ? show(coat, { shown: 'motion', digits: 2 }, view) : ''),
    );
    if (!most.ok) return [`play${joint}`, name, WORDS.readout.neverGoes];
    const to = motion(most.value, view);
    return [
      `play${joint}`,
      name,
      least.ok ? WORDS.readout.range(motion(least.value, view), to) : WORDS.readout.binds(to),
    ];
  };
  const lost = turnsLostIn(adjuster, 'most');
  return [
    of('A', adjuster.A),
    ...(adjuster.C ? [of('C', adjuster.C)] : []),
    ...(lost === undefined ? [] : [['lost', WORDS.readout.lost, WORDS.turns(numeral(lost, 3))] as const]),
  ];
};

const caption = (s: State, view: UnitView): string => {
  const { adjuster, standing: now } = s;
  const { clockwise, anticlockwise } = adjuster;
  return WORDS.caption({
    stopped: now.stopped && { asked: numeral(s.asked), why: ADJUSTER.stop(now.stopped) },
    perTurn: withSign(motion(adjuster.Delta, view)),
    clockwise: { turns: numeral(clockwise.n, 3), why: ADJUSTER.stop(clockwise) },
    anticlockwise: { turns: numeral(-anticlockwise.n, 3), why: ADJUSTER.stop(anticlockwise) },
    stroke: motion(adjuster.stroke, view),
    height: size(now.height, view, 6),
    turns: numeral(now.n, 3),
  });
};

export const adjusterFigure = defineFigure({
  name: 'adjuster',
  title: WORDS.title,
  threads: [],
  quantities: ['n'],
  texts: ['adjuster'],
  chief: ['n'],
  groups: { parts: ['adjuster'] },
  state: stateOf,
  draw,
  caption,
  rows: readout,
  readings,
  table: ({ adjuster }, view) => ({
    head: WORDS.head,
    rows: Array.from({ length: 9 }, (_, i) => {
      const now = standing(adjuster, adjuster.anticlockwise.n + (adjuster.turns * i) / 8);
      return [
        numeral(now.n, 3),
        size(now.engaged.A, view),
        adjuster.C ? size(now.engaged.C, view) : WORDS.plain,
        size(now.height, view, 6),
      ];
    }),
  }),
  renderKey: (_, { texts }) => texts,
  mount: (stage, context) => {
    const read = () => {
      const state = stateOf(context.numbers());
      return state.ok ? state.value : undefined;
    };
    mountKnob(stage, {
      read: () => read()?.standing.n ?? 0,
      // The hand feels the stop: nothing is written beyond it.
      write: (n) => {
        const state = read();
        if (state) context.set('n', standing(state.adjuster, n).n);
      },
      steps: () => read()?.adjuster.steps ?? 1,
    });
  },
  update: (stage, s) => {
    updateParts(stage, pictureOf(s.adjuster, s.standing, s.frame));
    const labels = stage.querySelector('[data-names]');
    if (labels) labels.innerHTML = names(s);
    updateKnob(stage, s.standing.n);
  },
});
