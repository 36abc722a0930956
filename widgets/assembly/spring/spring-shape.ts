/**
 * The centre line of a printed spring, free or stretched, as points (across, along) in mm from its lower end: what drawings and files are made from.
 *
 * Stretched, the connectors of a meander keep their length and its legs lean; a ring is drawn longer by the stretch and narrower by 0.918 of it.
 */
import type { SpringDesign } from '../../engine/index.ts';

export type Place = readonly [across: number, along: number];

export interface CentreLine {
  readonly points: readonly Place[];
  readonly closed: boolean;
}

const ARC = 12;

export const centreLines = (d: SpringDesign, stretch: number): readonly CentreLine[] => {
  if (d.shape === 'meander') {
    const { m, L, p, stub } = d;
    const lean = stretch / m;
    const points: Place[] = [
      [0, 0],
      [0, stub],
    ];
    let along = stub + lean / 2;
    let side = 1;
    points.push([(side * L) / 2, along]);
    for (let i = 0; i < m; i++) {
      along += p;
      points.push([(side * L) / 2, along]);
      if (i === m - 1) break;
      side = -side;
      along += lean;
      points.push([(side * L) / 2, along]);
    }
    along += lean / 2;
    points.push([0, along], [0, along + stub]);
    return [{ points, closed: false }];
  }
  const { cells, R, h, t } = d;
  const [up, out] = [R + stretch / cells / 2, h + R - (0.918 * stretch) / cells / 2];
  return Array.from({ length: cells }, (_, cell) => {
    const middle = (cell + 0.5) * (2 * R + t + stretch / cells);
    const quarter = (from: number, x: number): Place[] =>
      Array.from({ length: ARC + 1 }, (_, i): Place => {
        const angle = from + ((Math.PI / 2) * i) / ARC;
        return [x + (out - h) * Math.cos(angle), middle + up * Math.sin(angle)];
      });
    const points = [
      ...quarter(-Math.PI / 2, h),
      ...quarter(0, h),
      ...quarter(Math.PI / 2, -h),
      ...quarter(Math.PI, -h),
    ];
    return { points, closed: true };
  });
};
