/**
 * The outline of a 60° thread of any stated diameters in an axial section: ridges P apart, P/2 wide at the pitch diameter, flanks at
 * 30°, crest flat at the major diameter. The root is flat, or round and tangent to the flanks (ISO 68-1, design profile). One ridge
 * stands at z = 0. x is the distance from the axis, z along it, mm. A nut has the same outline: its groove is the ridge.
 */
import type { Outline } from './thread-outline.ts';

export interface Profile {
  readonly P: number;
  /** Diameters. */
  readonly major: number;
  readonly pitch: number;
  readonly minor: number;
  readonly root: 'flat' | 'round';
}

const TAN30 = 1 / Math.sqrt(3);
const ARC = 16;

/** The outline between z0 and z1, z0 < z1. */
export const profileEdge = (profile: Profile, z0: number, z1: number): Outline => {
  const { P } = profile;
  const points: (readonly [number, number])[] = [];
  for (let k = Math.floor(z0 / P) - 1; k <= Math.ceil(z1 / P) + 1; k++)
    for (const [x, z] of onePitch(profile)) points.push([x, z + k * P]);
  const inside = points.filter(([, z]) => z > z0 && z < z1);
  return [[at(points, z0), z0], ...inside, [at(points, z1), z1]];
};

/** Ridge at z = 0 and the groove after it. */
const onePitch = ({ P, major, pitch, minor, root }: Profile): (readonly [number, number])[] => {
  const half = (r: number) => P / 4 - (r - pitch / 2) * TAN30;
  const peak = Math.min(major / 2, pitch / 2 + P / 4 / TAN30);
  const apex = pitch / 2 - P / 4 / TAN30;
  const low = Math.max(minor / 2, apex);
  const crest = Math.max(0, half(peak));
  const ridge = [
    [peak, -crest],
    [peak, crest],
  ] as const;
  const floor = Math.max(0, P / 2 - half(low));
  if (root === 'flat') return [...ridge, [low, P / 2 - floor], [low, P / 2 + floor]];
  const R = low - apex;
  const arc = Array.from({ length: ARC + 1 }, (_, i) => {
    const phi = (Math.PI / 3) * ((2 * i) / ARC - 1);
    return [apex + 2 * R - R * Math.cos(phi), P / 2 + R * Math.sin(phi)] as const;
  });
  return [...ridge, ...arc];
};

const at = (points: readonly (readonly [number, number])[], z: number): number => {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (a && b && a[1] <= z && z <= b[1]) {
      const span = b[1] - a[1];
      return span > 0 ? a[0] + ((b[0] - a[0]) * (z - a[1])) / span : b[0];
    }
  }
  return points[0]?.[0] ?? 0;
};
