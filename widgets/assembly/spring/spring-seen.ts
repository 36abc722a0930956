/**
 * What is seen of a flat spring from the side, as lines without those that it hides itself: for sections, drawings and their files.
 *
 * The spring is its plate, as thick as it was printed. It stands upright at an angle round the axis and is seen along y, from −y; a line is (x, z), x from the middle of the plate.
 * Edges where two sides meet sharply are drawn, and the highest and lowest places of round ones.
 */
import type { Place, Plate } from '../print/plate.ts';

/** Sharper than this, two sides meet in an edge: 25°. */
const SHARP = (25 * Math.PI) / 180;
const NEAR = 1e-6;
/** Edges of a face that is seen aslant are cut in so many pieces, since each may be hidden in part. */
const PIECES = 10;

export type SeenLine = readonly (readonly [x: number, z: number])[];

/** Where x of the plate points, from above: 0 is to the right. The plate’s own thickness points a quarter turn on. */
export const seenPlate = (plate: Plate, angle: number): readonly SeenLine[] => {
  const rings = [plate.outline, ...plate.holes];
  const half = plate.height / 2;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const on = (u: number, w: number): number => u * c - w * s;
  const sides = rings.flatMap((ring) => ring.map((p, i) => [p, ring[(i + 1) % ring.length] as Place] as const));
  const rises = [...new Set(rings.flat().map(([, z]) => z))].sort((a, b) => a - b);
  const known = new Map<number, readonly number[]>();
  /** Stretches of material across the plate at a height. */
  const across = (z: number): readonly number[] => {
    const key = Math.round(z * 1e7);
    const before = known.get(key);
    if (before) return before;
    const cuts = sides
      .filter(([a, b]) => a[1] < z !== b[1] < z)
      .map(([a, b]) => a[0] + ((b[0] - a[0]) * (z - a[1])) / (b[1] - a[1]))
      .sort((a, b) => a - b);
    known.set(key, cuts);
    return cuts;
  };
  // From a place of the plate towards the reader, who stands at −y.
  const [du, dw] = [-s, -c];
  const hidden = (u: number, w: number, z: number): boolean => {
    const cuts = across(z);
    // How far along this ray it is still between the two faces.
    const far = Math.abs(dw) < NEAR ? 1e6 : Math.max((half - w) / dw, (-half - w) / dw);
    const [from, to] = [u + du * NEAR * 100, u + du * far].sort((a, b) => a - b) as [number, number];
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const [low, high] = [cuts[i] as number, cuts[i + 1] as number];
      if (
        Math.abs(du) < NEAR
          ? low < u - NEAR && high > u + NEAR && far > 1e-4
          : Math.min(high, to) - Math.max(low, from) > 1e-4
      )
        return true;
    }
    return false;
  };
  const free = (u: number, w: number, z: number): boolean => !hidden(u, w, z + 1e-5) || !hidden(u, w, z - 1e-5);
  const lines: SeenLine[] = [];
  for (const [a, b] of sides)
    for (const w of [-half, half]) {
      const upright = Math.abs(b[1] - a[1]) > NEAR;
      // Straight away from the reader it is a point.
      if (!upright && Math.abs(on(b[0] - a[0], 0)) < NEAR) continue;
      const stops = upright
        ? rises
            .filter((z) => z > Math.min(a[1], b[1]) && z < Math.max(a[1], b[1]))
            .map((z) => (z - a[1]) / (b[1] - a[1]))
        : Array.from({ length: PIECES - 1 }, (_, i) => (i + 1) / PIECES);
      let run: [number, number] | undefined;
      const at = (t: number): readonly [number, number] => [on(a[0] + (b[0] - a[0]) * t, w), a[1] + (b[1] - a[1]) * t];
      const cuts = [0, ...stops.sort((p, q) => p - q), 1];
      for (let i = 0; i + 1 < cuts.length; i++) {
        const [from, to] = [cuts[i] as number, cuts[i + 1] as number];
        const t = (from + to) / 2;
        if (free(a[0] + (b[0] - a[0]) * t, w, a[1] + (b[1] - a[1]) * t)) run = run ? [run[0], to] : [from, to];
        else if (run) {
          lines.push([at(run[0]), at(run[1])]);
          run = undefined;
        }
      }
      if (run) lines.push([at(run[0]), at(run[1])]);
    }
  for (const ring of rings)
    for (const [i, p] of ring.entries()) {
      const [a, b] = [ring.at(i - 1) as Place, ring[(i + 1) % ring.length] as Place];
      const [before, after] = [Math.atan2(p[1] - a[1], p[0] - a[0]), Math.atan2(b[1] - p[1], b[0] - p[0])];
      const turn = Math.abs(Math.atan2(Math.sin(after - before), Math.cos(after - before)));
      const crest = (p[1] - a[1]) * (b[1] - p[1]) < 0;
      if (!(turn > SHARP || crest)) continue;
      const places = Array.from({ length: 3 }, (_, k) => -half + (plate.height * (k + 0.5)) / 3);
      if (places.some((w) => free(p[0], w, p[1])))
        lines.push([
          [on(p[0], -half), p[1]],
          [on(p[0], half), p[1]],
        ]);
    }
  return lines.filter((line) => {
    const [p, q] = [line[0], line.at(-1)];
    return p && q && Math.hypot(p[0] - q[0], p[1] - q[1]) > NEAR;
  });
};
