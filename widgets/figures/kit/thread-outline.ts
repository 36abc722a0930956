/**
 * The outline of a 60° thread in an axial section, from the basic profile (assembly/adjuster/surface.ts has it), and the lines of its
 * crests seen from the front. x is the distance from the axis, z along it, mm.
 */
import { ridgeEdge } from '../../assembly/adjuster/surface.ts';
import type { Thread } from '../../engine/index.ts';

export type Outline = readonly (readonly [x: number, z: number])[];

/** The edge between z0 and z1 (z0 < z1) of a thread whose ridge has the middle of a crest at `crest`. */
export const threadEdge: (thread: Pick<Thread, 'd' | 'P'>, crest: number, z0: number, z1: number) => Outline =
  ridgeEdge;

/** Where the ridge lies at the side opposite to `crest`: half a turn round the helix. */
export const opposite = (thread: Pick<Thread, 'L' | 'h'>, crest: number): number => crest + (thread.h * thread.L) / 2;

/** Lines of the crests as seen from the front, from the left edge to the right edge, clipped to z0…z1. */
export const crestLines = (
  thread: Pick<Thread, 'd' | 'P' | 'L' | 'h'>,
  crest: number,
  z0: number,
  z1: number,
): Outline[] => {
  const r = thread.d / 2;
  const rise = (thread.h * thread.L) / 2;
  const lines: Outline[] = [];
  const reach = Math.abs(rise) + thread.P;
  for (let k = Math.floor((z0 - reach - crest) / thread.P); k <= Math.ceil((z1 + reach - crest) / thread.P); k++) {
    const right = crest + k * thread.P;
    // Front half of the helix: x = r cos α, z falls by rise from right (α = 0) to left (α = −π).
    const points: [number, number][] = [];
    for (let i = 0; i <= 8; i++) {
      const alpha = (Math.PI * i) / 8;
      const z = right - (rise * i) / 8;
      if (z >= z0 && z <= z1) points.push([r * Math.cos(alpha), z]);
    }
    if (points.length > 1) lines.push(points);
  }
  return lines;
};
