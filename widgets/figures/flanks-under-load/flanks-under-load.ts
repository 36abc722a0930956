/**
 * Flanks under a load: both threads in axial section to scale, a lens on each flank of one ridge, and the force on the carried
 * part, dragged through nought. Drawn in line, so that the turned part is the screw of both threads. Each view stands still
 * with the lower of its two parts.
 */

import { WORDS } from '#words/figures/flanks-under-load.ts';
import { flankText } from '#words/force.ts';
import { type PairPlay, pairPlay, type ThreadPlay } from '../../assembly/pair-play.ts';
import {
  at,
  type Flank,
  type FlankName,
  good,
  type Millimetres,
  mm,
  type Result,
  radialFloat,
} from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { frameBox } from '../kit/plot-box.ts';
import { mountPull } from '../kit/pull.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import type { Point } from '../kit/svg.ts';
import { hatchings, polygon, polyline, px } from '../kit/svg.ts';
import { threadEdge } from '../kit/thread-outline.ts';
import { changes, type Stand, standAt } from './stand.ts';

type Name = 'A' | 'C';

interface State {
  readonly play: PairPlay;
  readonly stand: Stand;
  readonly Q_pt: number;
  readonly Q_pc: number;
  /** How the parts stand between one change and the next, over the reach of the track. */
  readonly steps: readonly Step[];
  /** Radial float of each screw, side to side. */
  readonly float: Readonly<Record<Name, Millimetres>>;
}

interface Step {
  readonly from: number;
  readonly to: number;
  readonly stand: Stand;
}

/** The force, and the height of the carried part against it. */
const REACH = 20;
const clampQ = (Q: number): number => Math.max(-REACH, Math.min(REACH, Q));

const stepsOf = (play: PairPlay, Q_pt: number): Result<Step[]> => {
  const edges = [-REACH, ...changes(Q_pt).map((c) => clampQ(c.at)), REACH];
  const steps: Step[] = [];
  for (const [i, to] of edges.slice(1).entries()) {
    const from = at(edges, i);
    if (!(to > from)) continue;
    const stand = standAt(play, Q_pt, (from + to) / 2);
    if (!stand.ok) return stand;
    steps.push({ from, to, stand: stand.value });
  }
  return good(steps);
};

const flankOf = (s: State, name: Name): Flank => (name === 'A' ? s.stand.flankA : s.stand.flankC);
const offOf = (s: State, name: Name): number => (name === 'A' ? s.stand.offA : s.stand.offC);
/** Which flank of a thread touches, in words. */
const touching = (name: Name, flank: Flank): string =>
  flank === 0 ? WORDS.neither : WORDS.touches(flankText(name, flank > 0 ? 'pressed' : 'pulled'));
const seat = (s: State, name: Name): string => touching(name, flankOf(s, name));

/** The flank of the upper part that a lens shows: over the ridge of the turned part it is of the part in which that ridge is the screw. */
type Side = 'upper' | 'lower';
const nameOf = (name: Name, side: Side): FlankName => ((name === 'C') === (side === 'upper') ? 'pressed' : 'pulled');

// One thread: section at the left, lenses at the right.
const WIDTH = 416;
const HEIGHT = 244;
const SECTION = 176;
/** Pitches of the coarser thread that the section is high. */
const PITCHES = 3;
const LENS = { x: 196, width: 104, height: 104, upper: 14, lower: 128 } as const;
/** Largest gap a lens has room for, in its own pixels. */
const GAP = 44;

interface Frame {
  /** Pixels a millimetre, in the sections and in the lenses. */
  readonly scale: number;
  readonly lens: number;
}

const frameOf = ({ A, C }: PairPlay): Frame => {
  const scale = (HEIGHT - 16) / (PITCHES * Math.max(A.thread.P, C.thread.P));
  const widest = Math.max(A.j, C.j, 1e-4);
  // A round magnification, the largest for which the wider play has room.
  const room = GAP / widest / scale;
  const ten = 10 ** Math.floor(Math.log10(room));
  const times = ([5, 2, 1].find((k) => k * ten <= room) ?? 1) * ten;
  return { scale, lens: scale * times };
};

const TAN30 = Math.tan(Math.PI / 6);

/** Section paths of one thread: the screw left, the nut right, as their flanks stand. */
const sectionPaths = (name: Name, { thread, c }: ThreadPlay, off: number, frame: Frame) => {
  const { scale } = frame;
  const pitchRadius = thread.d / 2 - (3 / 16) * Math.sqrt(3) * thread.P;
  const place = ([x, z]: readonly [number, number]): Point => [
    SECTION / 2 + (x - pitchRadius) * scale,
    HEIGHT / 2 - z * scale,
  ];
  const reach = (HEIGHT / 2 - 4) / scale;
  // The lower part stands still: base under A, turned part under C.
  const screwAt = name === 'A' ? off : 0;
  const nutAt = name === 'C' ? off : 0;
  const edge = (shift: number, crest: number) =>
    threadEdge({ d: mm(thread.d + shift), P: thread.P }, crest, -reach, reach);
  const screw = edge(-c / 2, screwAt);
  const nut = edge(c / 2, nutAt);
  const left = pitchRadius - SECTION / scale;
  const right = pitchRadius + SECTION / scale;
  return {
    screw: polygon([...screw.map(place), place([left, reach]), place([left, -reach])]),
    nut: polygon([...nut.map(place), place([right, reach]), place([right, -reach])]),
    flanks: { upper: place([pitchRadius, thread.P / 4]), lower: place([pitchRadius, -thread.P / 4]) },
  };
};

/** One lens: the screw’s flank and the nut’s, which lean by 30°, and the gap between them along the axis. */
const lensPaths = (name: Name, side: Side, j: number, off: number, frame: Frame) => {
  const { x, width, height } = LENS;
  const top = LENS[side];
  const way = side === 'upper' ? -1 : 1;
  // Seen by the nut the screw of A is moved by off; of C the nut is.
  const screwAt = (name === 'A' ? off : 0) * frame.lens;
  const nutAt = (name === 'C' ? off : 0) * frame.lens;
  const middle = top + height / 2;
  // A flank goes from the root at the left to the crest at the right, towards the middle of the ridge.
  const lean = (width / 2) * TAN30;
  const half = (j / 2) * frame.lens;
  const line = (y: number): [Point, Point] => [
    [x, y + way * lean],
    [x + width, y - way * lean],
  ];
  const screwLine = line(middle - screwAt - (way * half) / 2);
  const nutLine = line(middle - nutAt + (way * half) / 2);
  const far = (y: number) => top + (y > 0 ? height + 120 : -120);
  const fill = (l: [Point, Point], sense: number) => polygon([...l, [x + width, far(sense)], [x, far(sense)]]);
  return {
    screw: fill(screwLine, -way),
    nut: fill(nutLine, way),
    contact: contactMarks(screwLine, nutLine),
  };
};

/** Where the flanks touch: the line itself and strokes across it, so that it does not rest on colour. */
const contactMarks = (screw: [Point, Point], nut: [Point, Point]): string => {
  if (Math.abs(screw[0][1] - nut[0][1]) > 0.01) return '';
  const [[x0, y0], [x1, y1]] = screw;
  const strokes = Array.from({ length: 5 }, (_, i): Point => {
    const t = (i + 0.5) / 5;
    return [x0 + (x1 - x0) * t, y0 + (y1 - y0) * t];
  });
  return polyline(screw) + strokes.map(([x, y]) => `M${px(x)} ${px(y - 7)}v14`).join('');
};

const panelPaths = (s: State, name: Name, frame: Frame) => {
  const thread = s.play[name];
  const off = offOf(s, name);
  return {
    section: sectionPaths(name, thread, off, frame),
    upper: lensPaths(name, 'upper', thread.j, off, frame),
    lower: lensPaths(name, 'lower', thread.j, off, frame),
  };
};

/** Every path that moves with the force, with its key in the picture. */
const allPaths = (s: State): (readonly [key: string, d: string])[] => {
  const frame = frameOf(s.play);
  return (['A', 'C'] as const).flatMap((name) => {
    const { section, ...lenses } = panelPaths(s, name, frame);
    return [
      [`${name}-screw`, section.screw] as const,
      [`${name}-nut`, section.nut] as const,
      ...(['upper', 'lower'] as const).flatMap((side) =>
        (['screw', 'nut', 'contact'] as const).map((kind) => [`${name}-${side}-${kind}`, lenses[side][kind]] as const),
      ),
    ];
  });
};

/** What each lens says: the gap along the axis, or that the flanks touch. */
const gaps = (s: State, name: Name, view: UnitView): Record<Side, readonly [string, string]> => {
  const { j } = s.play[name];
  // Gap over the ridge of the turned part: closed when the screw stands high in its nut.
  const screwHigh = name === 'A' ? offOf(s, name) : -offOf(s, name);
  const say = (gap: number): readonly [string, string] =>
    gap > 1e-9 ? [WORDS.lens.open, show(gap, { shown: 'motion', digits: 3 }, view)] : [WORDS.lens.closed, ''];
  return { upper: say(j / 2 - screwHigh), lower: say(j / 2 + screwHigh) };
};

const panel = (s: State, name: Name, frame: Frame, view: UnitView): string => {
  const p = panelPaths(s, name, frame);
  const thread = s.play[name];
  const { flanks } = sectionPaths(name, thread, 0, frame);
  const kinds = name === 'A' ? (['turned', 'base'] as const) : (['turned', 'carried'] as const);
  const id = `flanks-${name}`;
  const part = (key: string, kind: string, d: string) =>
    `<path class="part ${kind}${kind === 'turned' ? ' solid' : ''}" data-path="${key}" d="${d}"${kind === 'turned' ? '' : ` fill="url(#${id}-${kind})"`}/>`;
  const lens = (side: Side) => {
    const [words, amount] = gaps(s, name, view)[side];
    const y = LENS[side];
    const [fx, fy] = flanks[side];
    return (
      `<path class="leader" d="M${px(fx + 7)} ${px(fy)}L${LENS.x} ${y + LENS.height / 2}"/><circle class="spot" cx="${px(fx)}" cy="${px(fy)}" r="7"/>` +
      `<svg aria-hidden="true" x="${LENS.x}" y="${y}" width="${LENS.width}" height="${LENS.height}" viewBox="${LENS.x} ${y} ${LENS.width} ${LENS.height}" overflow="hidden"><rect class="ground" x="${LENS.x}" y="${y}" width="${LENS.width}" height="${LENS.height}"/>${part(`${name}-${side}-nut`, kinds[1], p[side].nut)}${part(`${name}-${side}-screw`, kinds[0], p[side].screw)}<path class="contact" data-path="${name}-${side}-contact" d="${p[side].contact}"/></svg>` +
      `<rect class="lens" x="${LENS.x}" y="${y}" width="${LENS.width}" height="${LENS.height}"/>` +
      WORDS.lens.name[nameOf(name, side)](name)
        .map(
          (line, i) =>
            `<text data-flank="${name}-${side}" x="${LENS.x + LENS.width + 8}" y="${y + 28 + 19 * i}">${line}</text>`,
        )
        .join('') +
      `<text class="gap" data-gap="${name}-${side}" x="${LENS.x + LENS.width + 8}" y="${y + 68}">${words}</text><text class="gap" data-amount="${name}-${side}" x="${LENS.x + LENS.width + 8}" y="${y + 87}">${split(amount)}</text>`
    );
  };
  return (
    `<div class="flank-panel"><p class="panel-name">${WORDS.panel(name, thread.thread.designation)}</p>` +
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.panelLabel(name)}">${hatchings(id)}` +
    `<clipPath id="${id}-clip"><rect x="1" y="6" width="${SECTION}" height="${HEIGHT - 12}"/></clipPath><g clip-path="url(#${id}-clip)">${part(`${name}-nut`, kinds[1], p.section.nut)}${part(`${name}-screw`, kinds[0], p.section.screw)}</g>` +
    `${lens('upper')}${lens('lower')}</svg></div>`
  );
};

const magnified = ({ lens, scale }: Frame): Row => [
  WORDS.readout.magnify,
  WORDS.readout.times(numeral(Number((lens / scale).toPrecision(6)))),
];

/** Two units at once stand under each other. */
const split = (amount: string): string => amount.replace(/ \(.*\)$/, '');

const TRACK = { width: 400, height: 162, left: 20, right: 380, line: 124, top: 36, bottom: 108 } as const;
/** The names of the changes stand over the frame. */
const FRAME = { left: TRACK.left, right: TRACK.right, top: 24, floor: TRACK.line };
const FORCES = [-20, -10, 0, 10, 20];
const trackX = (Q: number): number => TRACK.left + ((clampQ(Q) + REACH) / (2 * REACH)) * (TRACK.right - TRACK.left);
const trackY = (z: number, all: number): number =>
  (TRACK.top + TRACK.bottom) / 2 - (all > 0 ? z / all : 0) * (TRACK.bottom - TRACK.top);

const track = (s: State): string => {
  const all = s.play.A.j + s.play.C.j;
  const path = polyline(
    s.steps.flatMap(({ from, to, stand }): Point[] => [
      [trackX(from), trackY(stand.carried, all)],
      [trackX(to), trackY(stand.carried, all)],
    ]),
  );
  const numbers = FORCES.map(
    (Q) => `<text x="${px(trackX(Q))}" y="${TRACK.line + 30}" text-anchor="middle">${numeral(Q)}</text>`,
  ).join('');
  const marks = changes(s.Q_pt)
    .filter(({ at }) => Math.abs(at) < REACH)
    .map(
      ({ thread, at }, i, list) =>
        `<path class="change" d="M${px(trackX(at))} 6V${TRACK.line}"/><text class="change-name" x="${px(trackX(at) + (list.length > 1 && i === 0 ? -5 : 5))}" y="15" text-anchor="${list.length > 1 && i === 0 ? 'end' : 'start'}">${WORDS.track.changes(thread)}</text>`,
    )
    .join('');
  return (
    `<div class="push-track"><p class="panel-name">${WORDS.track.title}</p>` +
    `<svg viewBox="0 0 ${TRACK.width} ${TRACK.height}" data-push data-key="push" role="slider" tabindex="0" aria-label="${WORDS.track.label}" aria-orientation="horizontal" aria-valuemin="${-REACH}" aria-valuemax="${REACH}" aria-valuenow="${px(s.Q_pc)}" aria-valuetext="${pushText(s)}">` +
    `${frameBox(FRAME, FORCES.map(trackX), [])}${numbers}${marks}<path class="stairs" d="${path}"/>` +
    `<path class="cursor-line" data-push-line d="${cursor(s)}"/><circle class="mark carried" data-push-dot r="5" cx="${px(trackX(s.Q_pc))}" cy="${px(trackY(s.stand.carried, all))}"/>` +
    `<path class="thumb" data-push-thumb d="M0 -11l9 9v13h-18v-13z" transform="translate(${px(trackX(s.Q_pc))} ${TRACK.line})"/></svg></div>`
  );
};

const cursor = (s: State): string =>
  `M${px(trackX(s.Q_pc))} ${px(trackY(s.stand.carried, s.play.A.j + s.play.C.j))}V${TRACK.line - 11}`;

const force = (Q: number): string => show(Number(Q.toFixed(2)), { shown: 'force' }, 'metric');
const pushText = (s: State): string => WORDS.track.text({ force: force(s.Q_pc), A: seat(s, 'A'), C: seat(s, 'C') });

const readout = (s: State): Row[] => {
  const line = (name: Name): string =>
    WORDS.readout.forceAndFlank(withSign(force(name === 'A' ? s.stand.forceA : s.stand.forceC)), seat(s, name));
  return [
    ['turned', WORDS.readout.across.A, line('A')],
    ['relative', WORDS.readout.across.C, line('C')],
    signedAmount('carried', WORDS.readout.carried, s.stand.carried, 'motion', 4),
    amount('playA', WORDS.readout.play('A'), s.play.A.j, 'motion', 4),
    amount('playC', WORDS.readout.play('C'), s.play.C.j, 'motion', 4),
    magnified(frameOf(s.play)),
  ];
};

export const flanksUnderLoad = defineFigure({
  name: 'flanks-under-load',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['Q_pt', 'Q_pc', 'c_mA', 'c_mC'],
  choices: ['pieces'],
  chief: ['Q_pc', 'Q_pt'],
  groups: { threads: ['A', 'C'], pieces: ['pieces', 'c_mA', 'c_mC'] },
  idle: ({ choices }) => (choices.pieces === 'as measured' ? [] : ['c_mA', 'c_mC']),
  state: (numbers): Result<State> => {
    const { Q_pt, Q_pc } = numbers.values;
    const play = pairPlay(numbers);
    if (!play.ok) return play;
    const { A, C } = play.value;
    const stand = standAt(play.value, Q_pt, Q_pc);
    if (!stand.ok) return stand;
    const steps = stepsOf(play.value, Q_pt);
    if (!steps.ok) return steps;
    const [floatA, floatC] = [radialFloat.of({ c: A.c }), radialFloat.of({ c: C.c })];
    if (!floatA.ok) return floatA;
    if (!floatC.ok) return floatC;
    const float = { A: floatA.value.r_f, C: floatC.value.r_f };
    return good({ play: play.value, stand: stand.value, Q_pt, Q_pc, steps: steps.value, float });
  },
  draw: (s, view) => {
    const frame = frameOf(s.play);
    return `<div class="flank-panels">${panel(s, 'C', frame, view)}${panel(s, 'A', frame, view)}</div>${track(s)}`;
  },
  rows: readout,
  caption: (s, view) => {
    const motion = (z: number) => show(z, { shown: 'motion', digits: 3 }, view);
    const { carried, forceA, forceC } = s.stand;
    return WORDS.caption({
      A: { force: withSign(force(forceA)), touching: seat(s, 'A') },
      C: { force: withSign(force(forceC)), touching: seat(s, 'C') },
      off: carried === 0 ? undefined : { motion: motion(Math.abs(carried)), above: carried > 0 },
      all: motion(s.play.A.j + s.play.C.j),
      changes: changes(s.Q_pt).every((c) => c.at === 0) ? undefined : { A: force(-s.Q_pt), C: force(0) },
    });
  },
  table: (s, view) => {
    const motion = (z: number) => show(z, { shown: 'motion', digits: 4 }, view);
    const side = (name: Name) => {
      const { thread, c, j, from } = s.play[name];
      return WORDS.table.thread({
        thread: name,
        designation: thread.designation,
        from,
        clearance: show(c, { shown: 'size', digits: 4 }, view),
        play: motion(j),
        float: motion(s.float[name]),
      });
    };
    const rows = s.steps.map(({ from, to, stand }) =>
      WORDS.table.step({
        from: force(from),
        to: force(to),
        A: touching('A', stand.flankA),
        C: touching('C', stand.flankC),
        carried: motion(stand.carried),
      }),
    );
    return { head: WORDS.table.head, rows: [side('A'), side('C'), ...rows] };
  },
  renderKey: (_, { threads, values: { Q_pc: __, ...rest }, choices }) => [threads, rest, choices],
  mount: (stage, context) => {
    const push = () => context.numbers().values.Q_pc;
    const to = (event: PointerEvent) => {
      const box = stage.querySelector('[data-push]')?.getBoundingClientRect();
      if (!box) return;
      const x = ((event.clientX - box.left) / box.width) * TRACK.width;
      const Q = ((x - TRACK.left) / (TRACK.right - TRACK.left)) * 2 * REACH - REACH;
      // Tenths of a newton: as fine as a finger on the track.
      context.set('Q_pc', Math.round(clampQ(Q) * 10) / 10);
    };
    mountPull(stage, (event) => {
      const control = event.target instanceof Element ? event.target.closest<SVGElement>('[data-push]') : null;
      if (!control) return undefined;
      const was = push();
      return {
        control,
        move: to,
        undo: () => {
          if (push() !== was) context.set('Q_pc', was);
        },
      };
    });
    stage.addEventListener('keydown', (event) => {
      if (!(event.target instanceof Element && event.target.closest('[data-push]'))) return;
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const now = push();
      const step = event.shiftKey ? 5 : 1;
      const moves: Record<string, number> = {
        ArrowUp: now + step,
        ArrowRight: now + step,
        ArrowDown: now - step,
        ArrowLeft: now - step,
        PageUp: now + 5,
        PageDown: now - 5,
        Home: -REACH,
        End: REACH,
      };
      const next = moves[event.key];
      if (next === undefined) return;
      event.preventDefault();
      context.set('Q_pc', clampQ(next));
    });
  },
  update: (stage, s, view) => {
    for (const [key, d] of allPaths(s)) stage.querySelector(`[data-path="${key}"]`)?.setAttribute('d', d);
    const text = (selector: string, words: string) => {
      const place = stage.querySelector(selector);
      if (place && place.textContent !== words) place.textContent = words;
    };
    for (const name of ['A', 'C'] as const)
      for (const [side, [words, amount]] of Object.entries(gaps(s, name, view))) {
        text(`[data-gap="${name}-${side}"]`, words);
        text(`[data-amount="${name}-${side}"]`, split(amount));
      }
    const all = s.play.A.j + s.play.C.j;
    stage.querySelector('[data-push-line]')?.setAttribute('d', cursor(s));
    const dot = stage.querySelector('[data-push-dot]');
    dot?.setAttribute('cx', px(trackX(s.Q_pc)));
    dot?.setAttribute('cy', px(trackY(s.stand.carried, all)));
    stage
      .querySelector('[data-push-thumb]')
      ?.setAttribute('transform', `translate(${px(trackX(s.Q_pc))} ${TRACK.line})`);
    const slider = stage.querySelector('[data-push]');
    slider?.setAttribute('aria-valuenow', px(s.Q_pc));
    slider?.setAttribute('aria-valuetext', pushText(s));
  },
});
