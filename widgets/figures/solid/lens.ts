/**
 * A lens on each thread: one ridge and its neighbours in section, screw left and nut right, with the play that their pieces have, at one scale with
 * the ridges. It stands still with the lower part of its joint; the upper one rests on the flank that carries. In picture units.
 */
import { WORDS } from '#words/figures/solid.ts';
import type { Fitted } from '../../assembly/adjuster/adjuster.ts';
import { type Aside, middleOf } from '../../assembly/adjuster/carrying.ts';
import type { Role } from '../../assembly/adjuster/part.ts';
import { ridgeEdge } from '../../assembly/adjuster/surface.ts';
import { diameters, type FlankName, mm } from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { onPicture, PICTURE } from '../kit/solid/view.ts';
import { type Point, polygon, polyline, px } from '../kit/svg.ts';
import type { Posed } from './pose.ts';
import type { State } from './state.ts';

export type Joint = 'A' | 'C';

/** Across the lens, and where its middle stands. */
export const LENS = { width: 104, x: PICTURE.width - 72 } as const;
/** Pitches that are seen: play shows where a hundredth of them is more than a line is wide. */
const PITCHES = 1.25;

const TAN30 = Math.tan(Math.PI / 6);

/** Upper part against the lower one, from the middle of the play, mm. */
const offOf = (flank: FlankName | undefined, play: number): number =>
  flank === undefined ? 0 : flank === 'pressed' ? -play / 2 : play / 2;

interface LensPaths {
  readonly screw: string;
  readonly nut: string;
  /** Flanks that touch: a line along each, and strokes across it. */
  readonly contact: string;
  /** Lens units a mm. */
  readonly scale: number;
}

/** About a middle at (0, 0), cut off by the lens. */
const lensPaths = ({ thread, joint }: Fitted, play: number, flank: FlankName | undefined): LensPaths => {
  const scale = LENS.width / (PITCHES * thread.P);
  // Flanks that lean by 30° stand off by half the clearance of the diameter, which is the play over the tangent.
  const clearance = play / TAN30;
  const upperIsScrew = joint.upper.gender === 'external';
  const off = offOf(flank, play);
  const [screwAt, nutAt] = upperIsScrew ? [off, 0] : [0, off];
  const { d2, d1 } = diameters(thread);
  const place = ([r, z]: readonly [number, number]): Point => [(r - d2 / 2) * scale, -z * scale];
  const reach = PITCHES * thread.P;
  const edge = (wider: number, crest: number) =>
    ridgeEdge({ d: mm(thread.d + wider), P: thread.P }, crest, -reach, reach).map(place);
  const far = LENS.width;
  const closed = (points: readonly Point[], x: number) => polygon([...points, [x, -far], [x, far]]);
  // A screw that rests on the flank under its ridge touches below it, a nut on one that looks down touches above.
  const side = flank === undefined ? 0 : (flank === 'pressed' ? -1 : 1) * (upperIsScrew ? 1 : -1);
  const [inner, outer] = [d1 / 2 + clearance / 4, thread.d / 2 - clearance / 4];
  const flankLine = (k: number): readonly [Point, Point] => {
    const at = (r: number): Point => place([r, screwAt + k * thread.P + side * (thread.P / 16 + (outer - r) * TAN30)]);
    return [at(inner), at(outer)];
  };
  const marks = ([a, b]: readonly [Point, Point]): string =>
    polyline([a, b]) +
    [0.2, 0.5, 0.8].map((t) => `M${px(a[0] + (b[0] - a[0]) * t)} ${px(a[1] + (b[1] - a[1]) * t - 6)}v12`).join('');
  return {
    screw: closed(edge(-clearance / 2, screwAt), -far),
    nut: closed(edge(clearance / 2, nutAt), far),
    contact: side === 0 || !(outer > inner) ? '' : [-1, 0, 1].map((k) => marks(flankLine(k))).join(''),
    scale,
  };
};

/** Which parts are screw and nut of a joint. */
const rolesOf = (name: Joint, { joint }: Fitted): readonly [screw: Role, nut: Role] => {
  const [lower, upper] = name === 'A' ? (['base', 'turned'] as const) : (['turned', 'carried'] as const);
  return joint.upper.gender === 'external' ? [upper, lower] : [lower, upper];
};

export interface Lens {
  readonly name: Joint;
  readonly fitted: Fitted;
  readonly play: number;
  /** That touches where the lens is, on the right of the axis. */
  readonly flank: FlankName | undefined;
  readonly aside: Aside | undefined;
}

/** On the side from which it is pushed a flank lifts, and past that the other one stops it. */
const flankAt = (flank: FlankName | undefined, aside: Aside | undefined): FlankName | undefined =>
  aside === 'lifted' ? undefined : aside !== 'tipped' ? flank : flank === 'pressed' ? 'pulled' : 'pressed';

/** None while the parts are apart, or where the reader has put them away. */
export const lensesOf = (s: State, pose: Posed): readonly Lens[] =>
  s.lens && pose.whole
    ? (['A', 'C'] as const).flatMap((name): Lens[] => {
        const [fitted, play] = [s.adjuster[name], s.play[name]];
        const aside = s.aside[name];
        return fitted && play !== undefined
          ? [{ name, fitted, play, flank: flankAt(s.carrying.flank[name], aside), aside }]
          : [];
      })
    : [];

/** Where on the picture the joint of a lens is: the middle of what is engaged, on the side of the lens. */
export const spotOf = (pose: Posed, { name, fitted }: Lens): Point => {
  const [a, b] = name === 'A' ? [0, pose.at.turned] : [pose.at.turned, pose.at.carried];
  const z = middleOf(fitted.joint, a, b);
  const [x, y] = onPicture(pose.aim, [0, 0, z]);
  return [x + (fitted.thread.d / 2) * pose.aim.scale, y];
};

const timesOf = (scale: number, pose: Posed): string => numeral(scale / pose.aim.scale, 2);

/** A line from the lens, its middle at a height of the picture, to what it magnifies. */
export const lensLeader = (pose: Posed, lens: Lens, y: number): string => {
  const [sx, sy] = spotOf(pose, lens);
  const angle = Math.atan2(y - sy, LENS.x - sx);
  const toward = (d: number, [x0, y0]: Point): string =>
    `${px(x0 + d * Math.cos(angle))} ${px(y0 + d * Math.sin(angle))}`;
  return `M${px(sx - 9)} ${px(sy)}a9 9 0 1 0 18 0a9 9 0 1 0-18 0M${toward(9, [sx, sy])}L${toward(-LENS.width / 2, [LENS.x, y])}`;
};

/** A turn changes nothing in a lens, so what was drawn is kept with its thread. */
const kept = new WeakMap<Fitted, { readonly of: string; readonly html: string }>();

/** The lens with its name, its factor and its gap, about a middle at (0, 0). */
export const lensHtml = (pose: Posed, lens: Lens, view: UnitView): string => {
  const of = [lens.name, lens.play, lens.flank, lens.aside, timesOf(1, pose), view].join();
  const before = kept.get(lens.fitted);
  if (before?.of === of) return before.html;
  const html = drawLens(pose, lens, view);
  kept.set(lens.fitted, { of, html });
  return html;
};

const drawLens = (pose: Posed, { name, fitted, play, flank, aside }: Lens, view: UnitView): string => {
  const { screw, nut, contact, scale } = lensPaths(fitted, play, flank);
  const [inner, outer] = rolesOf(name, fitted);
  const id = `solid-lens-${name}`;
  const r = LENS.width / 2;
  const gap = show(play, { shown: 'motion', digits: 2 }, view === 'both' ? 'metric' : view);
  return (
    `<clipPath id="${id}"><circle r="${r}"/></clipPath><g clip-path="url(#${id})"><circle class="solid-lens-ground" r="${r}"/>` +
    `<path class="part ${outer}" fill="url(#solid-lens-${outer})" d="${nut}"/><path class="part ${inner} solid" d="${screw}"/><path class="solid-contact" d="${contact}"/></g><circle class="solid-lens" r="${r}"/>` +
    `<text class="solid-lens-name" y="${r}" dy="1.15em" text-anchor="middle">${WORDS.lens.name(name, timesOf(scale, pose))}</text>` +
    `<text class="solid-lens-gap" y="${r}" dy="2.35em" text-anchor="middle">${aside === 'lifted' ? WORDS.lens.lifted(gap) : aside === 'tipped' ? WORDS.lens.tipped(gap) : flank === undefined ? WORDS.lens.both(gap) : WORDS.lens.gap(gap)}</text>`
  );
};
