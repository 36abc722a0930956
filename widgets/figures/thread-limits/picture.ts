/**
 * Two profiles at their limits, to scale: screw below, nut above, one ridge and one groove, both centred so that the gap is
 * alike on either flank; under it a lens on one flank at the pitch line, where the four flanks cross at the four limits of
 * pitch diameter. Metal that is always there is pale, metal that depends on the piece is a strong band.
 */

import { WORDS } from '#words/figures/thread-limits.ts';
import { at, largestNutRoot } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { type Profile, profileEdge } from '../kit/limit-profile.ts';
import { spaced } from '../kit/plot-box.ts';
import type { Point } from '../kit/svg.ts';
import { polygon, polyline, px } from '../kit/svg.ts';
import type { State } from './state.ts';

const WIDTH = 440;
const HEIGHT = 318;
const LENS = { width: 440, height: 224, x: 108, y: 112, r: 104 };

interface Four {
  readonly screwMost: Profile;
  readonly screwLeast: Profile;
  readonly nutMost: Profile;
  readonly nutLeast: Profile;
}

/** Most metal and least metal of each. The open sides are drawn as a sound tool leaves them. */
const profiles = ({ screw, nut }: State): Four => {
  const { P } = screw.thread;
  const deep = largestNutRoot.of({ D_2: nut.pitch.max, P: nut.thread.P });
  const deepest = deep.ok ? deep.value.D_r : nut.major.min;
  return {
    screwMost: { P, major: screw.major.max, pitch: screw.pitch.max, minor: screw.root.design, root: 'round' },
    screwLeast: { P, major: screw.major.min, pitch: screw.pitch.min, minor: screw.root.least, root: 'round' },
    nutMost: { P, major: nut.major.min, pitch: nut.pitch.min, minor: nut.minor.min, root: 'flat' },
    nutLeast: { P, major: deepest, pitch: nut.pitch.max, minor: nut.minor.max, root: 'flat' },
  };
};

/** Draws the four profiles with a place for every point; `low` and `high` are radii beyond the picture. */
const paint = (f: Four, z0: number, z1: number, low: number, high: number, place: (p: Point) => Point): string => {
  const edge = (p: Profile) => profileEdge(p, z0, z1).map(([r, z]): Point => [z, r]);
  const [sm, sl, nm, nl] = [edge(f.screwMost), edge(f.screwLeast), edge(f.nutMost), edge(f.nutLeast)];
  const body = (points: readonly Point[], far: number) =>
    polygon([[z0, far] as const, ...points, [z1, far] as const].map(place));
  const band = (a: readonly Point[], b: readonly Point[]) => polygon([...a, ...[...b].reverse()].map(place));
  const line = (points: readonly Point[]) => polyline(points.map(place));
  return (
    `<path class="metal nut" d="${body(nl, high)}"/><path class="metal screw" d="${body(sl, low)}"/>` +
    `<path class="zone nut" d="${band(nm, nl)}"/><path class="zone screw" d="${band(sm, sl)}"/>` +
    `<path class="limit nut least" d="${line(nl)}"/><path class="limit nut" d="${line(nm)}"/><path class="limit screw least" d="${line(sl)}"/><path class="limit screw" d="${line(sm)}"/>`
  );
};

export const picture = (s: State): { readonly whole: string; readonly lens: string; readonly magnified: number } => {
  const f = profiles(s);
  const { P } = s.screw.thread;
  const scale = WIDTH / (1.5 * P);
  const middle = s.screw.pitch.max / 2;
  const whole = (p: Point): Point => [(p[0] + 0.7 * P) * scale, HEIGHT / 2 - (p[1] - middle) * scale];
  const reach = P;
  const { lens, magnified } = lensOf(s, f, scale);
  const [cx, cy] = whole([P / 4, middle]);
  return {
    magnified,
    lens,
    whole:
      `<svg class="limits-whole" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing(escapeText(s.screw.thread.designation))}">` +
      `${paint(f, -0.71 * P, 0.81 * P, middle - reach, middle + reach, whole)}` +
      `<path class="pitch-line" d="M0 ${px(cy)}H${WIDTH}"/><text class="figure-note" x="6" y="${px(cy - 5)}">${WORDS.pitchLine}</text>` +
      `<text class="name nut" x="${WIDTH - 8}" y="20" text-anchor="end">${WORDS.nut(s.nut.cls)}</text><text class="name screw" x="8" y="${HEIGHT - 10}">${WORDS.screw(s.screw.cls)}</text>` +
      `<circle class="lens-rim" cx="${px(cx)}" cy="${px(cy)}" r="${px(Math.max(6, LENS.r / magnified))}"/></svg>`,
  };
};

const NICE = [1, 2, 4, 5, 10, 20, 40, 50, 100, 200];

const lensOf = (s: State, f: Four, scale: number): { lens: string; magnified: number } => {
  const { screw, nut } = s;
  const levels = [
    { key: 'nut', name: WORDS.levels.nutLargest, r: nut.pitch.max / 2 },
    { key: 'nut', name: WORDS.levels.nutSmallest, r: nut.pitch.min / 2 },
    { key: 'screw', name: WORDS.levels.screwLargest, r: screw.pitch.max / 2 },
    { key: 'screw', name: WORDS.levels.screwSmallest, r: screw.pitch.min / 2 },
  ] as const;
  const [top, bottom] = [Math.max(...levels.map((l) => l.r)), Math.min(...levels.map((l) => l.r))];
  const centre = (top + bottom) / 2;
  const wanted = (1.5 * LENS.r) / Math.max(top - bottom, 1e-6) / scale;
  const magnified = NICE.findLast((m) => m <= wanted) ?? 1;
  const k = scale * magnified;
  const { P } = screw.thread;
  const place = (p: Point): Point => [LENS.x + (p[0] - P / 4) * k, LENS.y - (p[1] - centre) * k];
  const y = (r: number) => LENS.y - (r - centre) * k;
  // Names keep a line's height between them, in order of size, wherever the limits stand.
  const order = [...levels].sort((a, b) => b.r - a.r);
  const spread = spaced(
    order.map((l) => y(l.r)),
    22,
    12,
    LENS.height - 12,
  );
  const leaders = order
    .map((l, i) => {
      const [from, to] = [y(l.r), at(spread, i)];
      return `<path class="leader ${l.key}" d="M${LENS.x} ${px(from)}H280L288 ${px(to)}H292"/><text class="name ${l.key}" x="296" y="${px(to + 4)}">${l.name}</text>`;
    })
    .join('');
  const span = (key: 'least' | 'most', x: number, low: number, high: number) =>
    `<g class="clear-${key}"><path class="span" d="M${x} ${px(y(low))}V${px(y(high))}"/><path d="M${x - 5} ${px(y(low))}h10M${x - 5} ${px(y(high))}h10"/><text x="${x}" y="${px(Math.min(y(low), y(high)) - 5)}" text-anchor="middle">${WORDS.spans[key]}</text></g>`;
  const lens =
    `<svg class="limits-lens" viewBox="0 0 ${LENS.width} ${LENS.height}" role="img" aria-label="${WORDS.lens(magnified)}">` +
    `<defs><clipPath id="limits-clip"><circle cx="${LENS.x}" cy="${LENS.y}" r="${LENS.r}"/></clipPath></defs>` +
    `<g clip-path="url(#limits-clip)">${paint(f, P / 4 - (1.1 * LENS.r) / k, P / 4 + (1.1 * LENS.r) / k, centre - P, centre + P, place)}</g>` +
    `${leaders}${span('least', 232, screw.pitch.max / 2, nut.pitch.min / 2)}${span('most', 266, screw.pitch.min / 2, nut.pitch.max / 2)}` +
    `<circle class="lens-rim" cx="${LENS.x}" cy="${LENS.y}" r="${LENS.r}"/></svg>`;
  return { lens, magnified };
};
