/**
 * Axial section of a differential screw, to scale: base and carried part cut, the turned part turned by the reader. Beside
 * it the turned part from above, a dial on the carried part and the motion of every part.
 */

import { WORDS } from '#words/figures/section.ts';
import { type Adjuster, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../assembly/adjuster/from-numbers.ts';
import { type Pair, pairOf } from '../../assembly/pair-of.ts';
import { bad, good, plain, type Result, relativeMotion, slippedLead, turnedMotion, turns } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, namesAt, partsHtml, pictureOf, updateParts } from '../kit/adjuster-picture.ts';
import { dialReading, dialScale, dialSvg, updateDial } from '../kit/dial.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { type Row, signedAmount } from '../kit/readout.ts';
import { hatchings, px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'turns-beyond-drawing': { readonly read: string; readonly most: number };
  }
}

const WIDTH = 440;
const HEIGHT = 470;
const AXIS = 125;
const FLATS = 6;
const MARGIN = 12;
/** Turns each way that the drawing shows; parts without stated lengths are assumed long enough for them. */
const DRAWN_TURNS = 4;

interface Motions {
  readonly turned: number;
  readonly relative: number;
  readonly carried: number;
  readonly perTurn: number;
}

interface State extends Motions, Pair {
  readonly n: number;
  readonly locked: boolean;
  readonly arrangement: string;
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  readonly frame: Frame;
}

const motionsAt = ({ leads, Delta }: Pair, locked: boolean, n: number): Result<Motions> => {
  const t = turnedMotion.of({ ...leads, n: turns(n) });
  const r = relativeMotion.of({ ...leads, n: turns(locked ? n : 0) });
  const d = locked ? good({ Delta }) : slippedLead.of({ ...leads, f: plain(1) });
  if (!t.ok) return t;
  if (!r.ok) return r;
  if (!d.ok) return d;
  return good({ turned: t.value.z_t, relative: r.value.z_r, carried: n * d.value.Delta, perTurn: d.value.Delta });
};

const stateOf = (numbers: NumbersOf<'A' | 'C', 'n', 'arrangement' | 'lock', never>): Result<State> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { n } = numbers.values;
  const { arrangement, lock } = numbers.choices;
  const locked = lock === 'holds';
  const motions = motionsAt(pair.value, locked, n);
  if (!motions.ok) return motions;
  if (!(Math.abs(n) <= DRAWN_TURNS)) return bad('turns-beyond-drawing', { read: numeral(n), most: DRAWN_TURNS });
  const made = adjusterOf({ threads: { A: pair.value.A, C: pair.value.C }, choices: { arrangement } });
  if (!made.ok) return made;
  const adjuster = made.value;
  let stood: Standing | undefined;
  return good({
    ...pair.value,
    ...motions.value,
    n,
    locked,
    arrangement,
    adjuster,
    // Only for a picture; its numbers are asked a thousand times without one.
    get standing() {
      stood ??= standing(adjuster, n, { share: locked ? 0 : 1 });
      return stood;
    },
    get frame() {
      return frameOf(adjuster);
    },
  });
};

const frames = new WeakMap<Adjuster, Frame>();
const frameOf = (adjuster: Adjuster): Frame => {
  const known = frames.get(adjuster);
  if (known) return known;
  const frame = frameIn(extentsOf(adjuster, DRAWN_TURNS), HEIGHT - 2 * MARGIN, AXIS, AXIS - 5);
  const placed = { ...frame, y: frame.y + MARGIN };
  frames.set(adjuster, placed);
  return placed;
};

const paint = (s: State) => pictureOf(s.adjuster, s.standing, s.frame, s.locked);

const draw = (s: State, view: UnitView): string => {
  const scale = dialScale(s.perTurn, view);
  return (
    `<div class="section-view"><svg class="section" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing(s.arrangement, s.A.designation, s.C.designation)}">` +
    `${hatchings('section')}${partsHtml(paint(s), 'section', { base: 'L_A', turned: 'n' })}` +
    `<path class="axis" d="M${AXIS} 4V${HEIGHT - 4}"/>${names(s)}${tracks(s)}</svg></div>` +
    `<div class="section-side">${knobSvg(s.n, 'hexagon', FLATS, WORDS.knob)}${dialSvg(s.carried, scale, WORDS.dial)}</div>`
  );
};

/** Where the name of each part stands: right of it, at its own height. */
const places = (s: State) =>
  namesAt(s.adjuster, s.standing).map(
    ([key, [x, z]]) => [key, s.frame.x + x * s.frame.scale + 9, s.frame.y - z * s.frame.scale + 4] as const,
  );

const names = (s: State): string =>
  places(s)
    .map(
      ([key, x, y]) =>
        `<text class="part-name ${key}" data-name="${key}" x="${px(x)}" y="${px(y)}">${WORDS.parts[key]}</text>`,
    )
    .join('');

/** Three tracks beside the section at its own scale: where the turned part has gone, how far C has screwed off, what is left. */
const TRACKS = [
  ['turned', 'z_t', 342],
  ['relative', 'z_r', 378],
  ['carried', 'z_c', 414],
] as const;

/** A name along its track, on the narrowest page. */
const LONGEST_NAME = 146;

/** As far as the drawn turns carry the fastest part, and no farther. */
const reachOf = (s: State): number => Math.min(190, DRAWN_TURNS * Math.max(s.A.L, s.C.L) * s.frame.scale + 12);

const tracks = (s: State): string => {
  const mid = HEIGHT / 2;
  const reach = reachOf(s);
  const columns = TRACKS.map(
    ([key, symbol, x]) =>
      `<g class="track ${key}" data-told data-sym="${symbol}"><path class="rail" d="M${x} ${px(mid - reach)}V${px(mid + reach)}"/><path class="zero" d="M${x - 9} ${mid}h18"/>` +
      `<path class="move" data-track="${key}" d="${arrow(x, mid, s[key] * s.frame.scale)}"/><text transform="translate(${x} ${px(Math.min(mid + reach + 10, HEIGHT - LONGEST_NAME))}) rotate(-90)" class="track-name" text-anchor="end" dy="0.35em">${WORDS.parts[key]}</text></g>`,
  );
  return columns.join('');
};

/** An arrow from the zero line to the motion; a bead where the motion is too small for an arrow. */
const arrow = (x: number, y: number, up: number): string => {
  const kept = Math.max(-190, Math.min(190, up));
  if (Math.abs(kept) < 7) return `M${x} ${y}v${px(-kept)}M${x - 4} ${px(y - kept)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`;
  const head = kept > 0 ? 7 : -7;
  return `M${x} ${y}V${px(y - kept + head)}M${x - 5} ${px(y - kept + head)}h10L${x} ${px(y - kept)}Z`;
};

const readout = (s: State): Row[] => {
  const motion = (key: keyof Motions, name: string) => signedAmount(key, name, s[key], 'motion', 4);
  return [
    ['base', WORDS.parts.base, WORDS.held],
    motion('turned', WORDS.parts.turned),
    motion('relative', WORDS.parts.relative),
    motion('carried', WORDS.parts.carried),
    motion('perTurn', WORDS.perTurn),
  ];
};

const signed = (z: number, view: UnitView): string => withSign(show(z, { shown: 'motion', digits: 4 }, view));

const caption = (s: State, view: UnitView): string => {
  const moved = (z: number) => ({
    amount: show(Math.abs(z), { shown: 'motion', digits: 4 }, view),
    way: Math.sign(z),
  });
  return WORDS.caption({
    turns: numeral(Math.abs(s.n)),
    n: s.n,
    turned: moved(s.turned),
    carried: moved(s.carried),
    perTurn: moved(s.perTurn),
    locked: s.locked,
    dial: dialReading(s.carried, dialScale(s.perTurn, view)),
  });
};

export const section = defineFigure({
  name: 'section',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n'],
  choices: ['arrangement', 'lock'],
  chief: ['n', 'lock'],
  groups: { threads: ['A', 'C'], arrangement: ['arrangement'] },
  state: stateOf,
  draw,
  caption,
  rows: readout,
  table: (s, view) => {
    const rows = Array.from({ length: 2 * DRAWN_TURNS + 1 }, (_, i) => i - DRAWN_TURNS);
    return {
      head: WORDS.head,
      rows: rows.map((n) => {
        const at = motionsAt(s, s.locked, n);
        return at.ok
          ? [numeral(n), signed(at.value.turned, view), signed(at.value.relative, view), signed(at.value.carried, view)]
          : [numeral(n), reasonOf(at), '', ''];
      }),
    };
  },
  renderKey: (_, { threads, choices }) => [threads, choices],
  mount: (stage, context) =>
    mountKnob(stage, {
      read: () => context.numbers().values.n,
      write: (n) => context.set('n', n),
      steps: () => FLATS,
    }),
  update: (stage, s, view) => {
    updateParts(stage, paint(s));
    for (const [key, , x] of TRACKS)
      stage.querySelector(`[data-track="${key}"]`)?.setAttribute('d', arrow(x, HEIGHT / 2, s[key] * s.frame.scale));
    for (const [key, , y] of places(s)) stage.querySelector(`[data-name="${key}"]`)?.setAttribute('y', px(y));
    updateKnob(stage, s.n);
    updateDial(stage, s.carried, dialScale(s.perTurn, view));
  },
});
