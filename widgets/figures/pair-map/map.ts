/**
 * The map: every pair as a grain of a halftone, those that pass as dots on it, lines of equal motion across. Motion per turn runs to the
 * right by ratio; or both leads are the axes, and lines of equal motion lie aslant.
 */

import { WORDS } from '#words/figures/pair-map.ts';
import { at, type Catalogue, everyPair, measurePairs } from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { frameBox } from '../kit/plot-box.ts';
import { px } from '../kit/svg.ts';
import type { Asked } from './ask.ts';

export const WIDTH = 700;
export const HEIGHT = 444;
const BOX = { left: 72, right: 16, top: 58, bottom: 62 };
const ACROSS = WIDTH - BOX.left - BOX.right;
const UP = HEIGHT - BOX.top - BOX.bottom;
const GRAIN = 5;
/** A name on the narrowest page, and room beside it. */
const NAME_ACROSS = 108;
/** As many names up as that page has lines for. */
const NAMES_UP = 9;

export type Against = OptionOf<'against'>;

type Columns = ReturnType<typeof measurePairs>;

interface Axis {
  readonly low: number;
  readonly high: number;
  readonly log: boolean;
}

const share = (value: number, { low, high, log }: Axis): number =>
  log ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);

export interface Frame {
  readonly against: Against;
  readonly x: Axis;
  readonly y: Axis;
}

const decades = (values: Float64Array, within: readonly [number, number]): Axis => {
  let [low, high] = [Number.POSITIVE_INFINITY, 0];
  for (const v of values) {
    if (v < low) low = v;
    if (v > high) high = v;
  }
  const bound = (v: number) => Math.min(within[1], Math.max(within[0], v));
  return { low: bound(low * 0.85), high: bound(high * 1.15), log: true };
};

const frameOf = (against: Against, c: Columns): Frame => {
  if (against === 'the two leads') {
    const most = Math.min(10, Math.max(...c.longer) * 1.06);
    return { against, x: { low: 0, high: most, log: false }, y: { low: 0, high: most, log: false } };
  }
  const y =
    against === 'gain'
      ? decades(c.gain, [0.4, 1e5])
      : against === 'stroke'
        ? decades(c.stroke, [1e-4, 1e3])
        : { low: 0, high: Math.max(...c.size) * 1.06, log: false };
  return { against, x: decades(c.motion, [1e-5, 100]), y };
};

/** Place of a pair on the sheet; kept inside the frame. */
export const placeOf = (
  f: Frame,
  pair: { motion: number; gain: number; stroke: number; size: number; shorter: number; longer: number },
): readonly [number, number] => {
  const [x, y] =
    f.against === 'the two leads'
      ? [share(pair.longer, f.x), share(pair.shorter, f.y)]
      : [share(pair.motion, f.x), share(pair[f.against], f.y)];
  const kept = (s: number) => Math.min(1, Math.max(0, s));
  return [BOX.left + ACROSS * kept(x), BOX.top + UP * (1 - kept(y))];
};

/** The motion at a place across the sheet, for a handle that is dragged. */
export const motionAt = (f: Frame, x: number): number =>
  f.x.low * (f.x.high / f.x.low) ** Math.min(1, Math.max(0, (x - BOX.left) / ACROSS));

const pairAt = (c: Columns, k: number) => ({
  motion: at(c.motion, k),
  gain: at(c.gain, k),
  stroke: at(c.stroke, k),
  size: at(c.size, k),
  shorter: at(c.shorter, k),
  longer: at(c.longer, k),
});

/** Dots of one size each: three sizes by how many pairs share a grain. A dot is a line of no length with a round end. */
const halftone = (f: Frame, c: Columns): string => {
  const columns = Math.ceil(WIDTH / GRAIN);
  const counts = new Map<number, number>();
  for (let k = 0; k < c.motion.length; k++) {
    const [x, y] = placeOf(f, pairAt(c, k));
    const cell = Math.floor(y / GRAIN) * columns + Math.floor(x / GRAIN);
    counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }
  const paths = ['', '', ''];
  for (const [cell, count] of counts) {
    const weight = count < 3 ? 0 : count < 12 ? 1 : 2;
    paths[weight] += `M${(cell % columns) * GRAIN + 2} ${Math.floor(cell / columns) * GRAIN + 2}h0`;
  }
  return paths.map((d, weight) => `<path class="grain g${weight}" d="${d}"/>`).join('');
};

// Twenty thousand pairs are drawn again only when the drawer, the usable length or the axes change.
let kept: ({ catalogue: Catalogue; usable: number; against: Against } & Ground) | undefined;

export interface Ground {
  readonly frame: Frame;
  /** Every pair, as grains. */
  readonly svg: string;
}

export const ground = (asked: Asked, against: Against): Ground => {
  const { catalogue, wish } = asked;
  if (kept?.catalogue !== catalogue || kept.usable !== wish.usable || kept.against !== against) {
    const columns = measurePairs(catalogue, everyPair(catalogue), wish.usable);
    const frame = frameOf(against, columns);
    kept = { catalogue, usable: wish.usable, against, frame, svg: halftone(frame, columns) };
  }
  return kept;
};

/** Those that pass, one dot a place; too many to tell apart are thinned by place, never by rank. */
export const hitDots = (asked: Asked, frame: Frame): string => {
  if (asked.answer.kind !== 'found') return '';
  const c = measurePairs(asked.catalogue, asked.answer.hits, asked.wish.usable);
  const seen = new Set<string>();
  let dots = '';
  for (let k = 0; k < c.motion.length; k++) {
    const [x, y] = placeOf(frame, pairAt(c, k));
    const place = `${Math.round(x / 3) * 3} ${Math.round(y / 3) * 3}`;
    if (seen.has(place)) continue;
    seen.add(place);
    dots += `M${place}h0`;
  }
  return `<path class="hit-rim" d="${dots}"/><path class="hit" d="${dots}"/>`;
};

const ticksOf = (axis: Axis): number[] => {
  if (!axis.log) {
    const step = axis.high > 20 ? 10 : 1;
    return Array.from({ length: Math.floor(axis.high / step) + 1 }, (_, i) => i * step);
  }
  const ticks: number[] = [];
  for (let e = Math.floor(Math.log10(axis.low)); e <= Math.ceil(Math.log10(axis.high)); e++)
    for (const m of [1, 2, 5]) ticks.push(m * 10 ** e);
  return ticks.filter((t) => t >= axis.low && t <= axis.high);
};

/** Round numbers for axes in mm, in the unit they are labelled with. */
const inView = (axis: Axis, view: UnitView): { axis: Axis; factor: number } => {
  const factor = view === 'inch' ? 1 / 25.4 : 1;
  return { axis: { ...axis, low: axis.low * factor, high: axis.high * factor }, factor };
};

const lengthTicks = (axis: Axis, view: UnitView): number[] => {
  const { axis: scaled, factor } = inView(axis, view);
  if (scaled.log) return ticksOf(scaled).map((t) => t / factor);
  const step = view === 'inch' ? (axis.high > 20 ? 0.5 : 0.05) : axis.high > 20 ? 10 : 0.5;
  return Array.from({ length: Math.floor(scaled.high / step) + 1 }, (_, i) => (i * step) / factor);
};

/** Axis names stay short: thou, or inches from a tenth of an inch, where the unit view is inch. */
const motionLabel = (value: number, view: UnitView): string => {
  if (view !== 'inch') return show(value, { shown: 'motion' }, 'metric');
  return value < 2.54 * 0.999 ? `${numeral(value / 0.0254)} thou` : `${numeral(value / 25.4)} in`;
};
const isDecade = (value: number, view: UnitView): boolean => {
  const power = Math.log10(view === 'inch' ? value / 25.4 : value);
  return Math.abs(power - Math.round(power)) < 1e-6;
};
const sizeLabel = (value: number, view: UnitView): string => numeral(view === 'inch' ? value / 25.4 : value);

/** Axes, names and lines of equal motion. */
export const scaffold = (f: Frame, view: UnitView): string => {
  const [left, right, top, bottom] = [BOX.left, WIDTH - BOX.right, BOX.top, HEIGHT - BOX.bottom];
  const unit = view === 'inch' ? 'in' : 'mm';
  const parts: string[] = [];
  const [xs, ys]: [number[], number[]] = [[], []];
  const frame = () => frameBox({ left, right, top, floor: bottom }, xs, ys);
  const text = (x: number, y: number, words: string, anchor: string, extra = '') =>
    `<text class="map-label" x="${px(x)}" y="${px(y)}" text-anchor="${anchor}"${extra}>${escapeText(words)}</text>`;
  if (f.against === 'the two leads') {
    for (const t of lengthTicks(f.x, view)) {
      const x = left + ACROSS * share(t, f.x);
      xs.push(x);
      parts.push(text(x, bottom + 25, sizeLabel(t, view), 'middle'));
      const y = bottom - UP * share(t, f.y);
      ys.push(y);
      parts.push(text(left - 8, y + 4, sizeLabel(t, view), 'end'));
    }
    for (const motion of view === 'inch' ? [0.254, 0.508, 1.27, 2.54] : [0.1, 0.5, 1, 2, 3]) {
      if (!(motion < f.x.high)) continue;
      const x = left + ACROSS * share(motion, f.x);
      const y = bottom - UP * share(f.x.high - motion, f.y);
      parts.push(
        `<path class="equal" d="M${px(x)} ${bottom}L${right} ${px(y)}"/>`,
        text(right - 4, y + (motion < 0.3 ? -6 : 13), motionLabel(motion, view), 'end', ' data-equal'),
      );
    }
    parts.push(
      text(right, HEIGHT - 8, WORDS.longerLead(unit), 'end'),
      text(8, 0, WORDS.shorterLead(unit), 'start', ' dy="1em"'),
    );
    return frame() + parts.join('');
  }
  const named: number[] = [];
  // Powers of ten take their names first; the others where there is room.
  for (const t of lengthTicks(f.x, view).sort((a, b) => Number(isDecade(b, view)) - Number(isDecade(a, view)))) {
    const x = left + ACROSS * share(t, f.x);
    xs.push(x);
    if (isDecade(t, view)) parts.push(`<path class="equal" d="M${px(x)} ${top}V${bottom}"/>`);
    if (named.some((other) => Math.abs(other - x) < NAME_ACROSS)) continue;
    named.push(x);
    parts.push(text(x, bottom + 25, motionLabel(t, view), 'middle'));
  }
  const yTicks = f.against === 'gain' ? ticksOf(f.y) : lengthTicks(f.y, view);
  const gains = f.against === 'gain' ? 'metric' : view;
  for (const t of yTicks) {
    const y = bottom - UP * share(t, f.y);
    ys.push(y);
    if (f.y.log && yTicks.length > NAMES_UP && !isDecade(t, gains)) continue;
    parts.push(text(left - 8, y + 4, f.against === 'gain' ? numeral(t) : sizeLabel(t, view), 'end'));
  }
  parts.push(
    text(8, 0, WORDS.upAxis[f.against](unit), 'start', ' dy="1em"'),
    text(right, HEIGHT - 8, WORDS.motionPerTurn, 'end'),
  );
  return frame() + parts.join('');
};

/** The wanted motion and its band for every divider at hand, with the handle that moves it on the one in use. */
export const wishMark = (asked: Asked, f: Frame, view: UnitView): string => {
  const { motion, band, hands, dividers, leastStroke } = asked.wish;
  const [top, bottom] = [BOX.top, HEIGHT - BOX.bottom];
  // The one in use comes last, so that it lies on top.
  const wanted = dividers.map((k) => motion * k).reverse();
  if (f.against === 'the two leads') {
    const to = (lead: number) => BOX.left + ACROSS * share(lead, f.x);
    const up = (lead: number) => bottom - UP * share(lead, f.y);
    const like = (m: number) => `M${px(to(m))} ${px(up(0))}L${px(to(f.x.high))} ${px(up(f.x.high - m))}`;
    const unlike = (m: number) => `M${px(to(m))} ${px(up(0))}L${px(to(m / 2))} ${px(up(m / 2))}`;
    return wanted
      .filter((m) => m < f.x.high)
      .map((m) => `<path class="wish" d="${hands === 'opposite' ? '' : like(m)}${hands === 'same' ? '' : unlike(m)}"/>`)
      .join('');
  }
  const x = (m: number) => BOX.left + ACROSS * Math.min(1, Math.max(0, share(m, f.x)));
  const bands = wanted.map((m) => {
    const [low, high] = [x(Math.max(f.x.low, m * (1 - band))), x(m * (1 + band))];
    return `<rect class="band" x="${px(low)}" y="${top}" width="${px(Math.max(1, high - low))}" height="${bottom - top}"/><path class="wish" d="M${px(x(m))} ${top}V${bottom}"/>`;
  });
  const mid = x(asked.aTurn);
  return (
    `${bands.join('')}${f.against === 'stroke' ? strokeMark(leastStroke, f, view) : ''}` +
    `<g class="wish-handle" data-wish><rect class="grip" x="${px(mid - 14)}" y="${top - 6}" width="28" height="${bottom - top + 6}"/><path class="wish-head" d="M${px(mid)} ${top + 3}l-9 -13h18z"/></g>` +
    `<text class="wish-name" x="${px(mid > WIDTH / 2 ? mid - 14 : mid + 14)}" y="${top - 4}" text-anchor="${mid > WIDTH / 2 ? 'end' : 'start'}">${WORDS.wanted(show(asked.aTurn, { shown: 'motion' }, view === 'both' ? 'metric' : view))}</text>`
  );
};

/** The least stroke wanted: pairs below this line have less. */
const strokeMark = (least: number, f: Frame, view: UnitView): string => {
  if (!(least > 0)) return '';
  const y = BOX.top + UP * (1 - Math.min(1, Math.max(0, share(least, f.y))));
  return (
    `<path class="wish" data-stroke d="M${BOX.left} ${px(y)}H${WIDTH - BOX.right}"/>` +
    `<text class="wish-name" x="${WIDTH - BOX.right - 4}" y="${px(y < BOX.top + 20 ? y + 16 : y - 5)}" text-anchor="end">${WORDS.leastStroke(show(least, { shown: 'motion' }, view === 'both' ? 'metric' : view))}</text>`
  );
};
