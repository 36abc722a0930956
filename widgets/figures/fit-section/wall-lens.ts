/**
 * A lens on the wall of a sleeve: thread A outside, thread C inside, as drawn in the books, and between them the wall nominal and
 * at its thinnest. x from the axis, z along it; one scale both ways.
 */

import { WORDS } from '#words/figures/fit-section.ts';
import type { FitState, Wall } from '../../assembly/fit-state.ts';
import { diameters } from '../../engine/index.ts';
import { type Profile, profileEdge } from '../kit/limit-profile.ts';
import { arrowheads, dimensionLine, type Point, polygon, px } from '../kit/svg.ts';

const SIDE = 190;
const R = 88;
/** Room for the two sizes beside the lens, on the narrowest page. */
const BESIDE = 100;

const basic = (s: FitState): { outer: Profile; inner: Profile } => {
  const [a, c] = [diameters(s.A.thread), diameters(s.C.thread)];
  return {
    outer: { P: s.A.thread.P, major: a.d, pitch: a.d2, minor: a.d3, root: 'round' },
    inner: { P: s.C.thread.P, major: c.d, pitch: c.d2, minor: c.d1, root: 'flat' },
  };
};

export const wallLens = (
  s: FitState,
  wall: Wall,
  labels: { readonly nominal: string; readonly least: string },
): string => {
  const { outer, inner } = basic(s);
  const middle = (outer.minor + inner.major) / 4;
  const reach = 1.08 * Math.max(outer.major / 2 - middle, middle - inner.minor / 2);
  const scale = R / reach;
  const place = ([x, z]: readonly [number, number]): Point => [SIDE / 2 + (x - middle) * scale, SIDE / 2 - z * scale];
  const high = 1.1 * reach;
  const sleeve = polygon(
    [...profileEdge(outer, -high, high), ...[...profileEdge(inner, -high, high)].reverse()].map(place),
  );
  const x = (diameter: number) => SIDE / 2 + (diameter / 2 - middle) * scale;
  const dimension = (key: string, y: number, from: number, to: number) =>
    `<g class="wall-${key}"><path class="edges" d="M${px(x(from))} ${y - 16}V${y + 20}M${px(x(to))} ${y - 16}V${y + 20}"/>${dimensionLine([x(from), y], [x(to), y], 'fit-head', 'span')}</g>`;
  // Hatching and edges leave no place for letters in the lens: each size stands beside it, on a leader from its dimension line.
  const leader = (key: string, y: number, from: number, to: number, text: string) =>
    `<g class="wall-${key}"><path class="edges" d="M${px((x(from) + x(to)) / 2)} ${y}H${SIDE + 6}"/><text x="${SIDE + 10}" y="${y}" dy="0.35em">${text}</text></g>`;
  const wide = SIDE + BESIDE;
  return (
    `<svg class="wall-lens" viewBox="0 0 ${wide} ${SIDE}" role="img" aria-label="${WORDS.lens.label}">` +
    `${arrowheads('fit-head')}<defs><clipPath id="fit-lens"><circle cx="${SIDE / 2}" cy="${SIDE / 2}" r="${R}"/></clipPath></defs><g clip-path="url(#fit-lens)">` +
    `<path class="part turned" d="${sleeve}" fill="url(#fit-turned)"/>` +
    `${dimension('nominal', 74, inner.major, outer.minor)}${dimension('least', 134, wall.inner.most, wall.outer.least)}</g>` +
    `<circle class="lens-rim" cx="${SIDE / 2}" cy="${SIDE / 2}" r="${R}"/>` +
    `${leader('nominal', 74, inner.major, outer.minor, labels.nominal)}${leader('least', 134, wall.inner.most, wall.outer.least, labels.least)}</svg>`
  );
};
