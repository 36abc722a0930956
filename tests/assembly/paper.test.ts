/** What sheets are drawn with: chain and dashed lines, arrowheads, arcs and letters, each as long, as wide and where it should be, in both forms of file. */
import { describe, expect, it } from 'vitest';
import {
  chain,
  dashed,
  type Mark,
  paperDxf,
  paperSvg,
  type Spot,
  text,
  thin,
  wide,
} from '../../widgets/assembly/files/paper.ts';

/** Ends of the strokes as lengths along a line from its beginning. */
const along = (marks: readonly Mark[], from: Spot, [ux, uy]: Spot): (readonly [number, number])[] =>
  marks.map((m) => {
    if (m.kind !== 'line' || m.wide) throw new Error('no thin line');
    const [a, b] = m.points.map(([x, y]) => {
      const t = (x - from[0]) * ux + (y - from[1]) * uy;
      // On the line itself.
      expect(Math.hypot(x - from[0] - t * ux, y - from[1] - t * uy)).toBeLessThan(1e-9);
      return Number(t.toFixed(6));
    });
    return [a ?? Number.NaN, b ?? Number.NaN];
  });

/** 3, 4, 5: leans in both directions, and lengths are exact. */
const FROM: Spot = [10, 50];
const WAY: Spot = [0.6, -0.8];
const to = (length: number): Spot => [FROM[0] + WAY[0] * length, FROM[1] + WAY[1] * length];

describe('a line of strokes', () => {
  it('that is a chain has a long stroke, a gap, a dot and a gap, from its beginning to its end and not beyond', () => {
    expect(along(chain(FROM, to(20)), FROM, WAY)).toEqual([
      [0, 7],
      [8.5, 9.5],
      [11, 18],
      [19.5, 20],
    ]);
    // No dot without length at the very end.
    expect(along(chain([0, 0], [8.5, 0]), [0, 0], [1, 0])).toEqual([[0, 7]]);
  });

  it('that is dashed has strokes of 2.8 mm, one every 4 mm, the last cut off by its end', () => {
    expect(along(dashed(FROM, to(10)), FROM, WAY)).toEqual([
      [0, 2.8],
      [4, 6.8],
      [8, 10],
    ]);
  });
});

/** Corners of the first path of this colour, y up again. */
const corners = (d: string, height: number): Spot[] =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number((height - Number(y)).toFixed(3))]);
/** Codes and values of each entity of a DXF. */
const entities = (dxf: string): Readonly<Record<number, string>>[] => {
  const rows = dxf.trimEnd().split('\r\n');
  const all: Record<number, string>[] = [];
  for (let i = 0; i < rows.length; i += 2) {
    if (rows[i] === '0') all.push({});
    const last = all.at(-1);
    if (last) last[Number(rows[i])] = rows[i + 1] ?? '';
  }
  return all;
};

describe('an arrowhead', () => {
  // 3 long and 1 across (ISO 129-1 leaves the length free; common practice, no source).
  it.each([
    [
      'right',
      0,
      [
        [20, 30],
        [17, 30.5],
        [17, 29.5],
      ],
    ],
    [
      'up',
      Math.PI / 2,
      [
        [20, 30],
        [19.5, 27],
        [20.5, 27],
      ],
    ],
    [
      'back along 3, 4, 5',
      Math.atan2(-4, -3),
      [
        [20, 30],
        [22.2, 32.1],
        [21.4, 32.7],
      ],
    ],
  ] as const)('that points %s has its tip there, and its corners behind it on both sides', (_, towards, wanted) => {
    const head: Mark = { kind: 'head', tip: [20, 30], towards };
    const svg = paperSvg([head], 100, 80, 'x');
    const [, d = ''] = /<path d="([^"]*)" style="fill:#000/.exec(svg) ?? [];
    expect(corners(d, 80)).toEqual(wanted);
    const solid = entities(paperDxf([head])).find((e) => e[0] === 'SOLID');
    const [a, b, c] = wanted.map(([x, y]) => [String(x), String(y)]);
    expect([
      [solid?.[10], solid?.[20]],
      [solid?.[11], solid?.[21]],
      [solid?.[12], solid?.[22]],
    ]).toEqual([a, b, c]);
  });
});

describe('marks in a file', () => {
  const square = (closed: boolean): Mark => ({
    kind: 'line',
    points: [
      [0, 0],
      [10, 0],
      [10, 10],
    ],
    wide: true,
    closed,
  });

  it('are wide or thin, and closed where they are', () => {
    for (const closed of [true, false]) {
      const [, thinPath, widePath] =
        /<path d="([^"]*)" style="fill:none[^>]*stroke-width:0\.25px[^>]*><path d="([^"]*)" style="fill:none[^>]*stroke-width:0\.5px/.exec(
          paperSvg([square(closed), thin([1, 1], [2, 2])], 20, 20, 'x'),
        ) ?? [];
      expect(widePath).toBe(`M0 20L10 20L10 10${closed ? 'Z' : ''}`);
      // A line of two places is never closed: nothing would be drawn twice.
      expect(thinPath).toBe('M1 19L2 18');
      const lines = entities(paperDxf([square(closed)])).filter((e) => e[0] === 'LINE');
      expect(lines.map((e) => [e[8], e[10], e[20], e[11], e[21]])).toEqual([
        ['WIDE', '0', '0', '10', '0'],
        ['WIDE', '10', '0', '10', '10'],
        ...(closed ? [['WIDE', '10', '10', '0', '0']] : []),
      ]);
    }
    expect(
      entities(paperDxf([thin([0, 0], [1, 0]), wide([0, 0], [1, 0])])).flatMap((e) => (e[0] === 'LINE' ? [e[8]] : [])),
    ).toEqual(['THIN', 'WIDE']);
  });

  it('that are arcs are told from circles, with centre, radius and angles', () => {
    const arc = (from: number, end: number): Mark => ({
      kind: 'arc',
      centre: [5, 6],
      r: 4,
      from,
      to: end,
      wide: false,
    });
    const kind = (m: Mark) => entities(paperDxf([m])).find((e) => e[0] === 'ARC' || e[0] === 'CIRCLE');
    expect(kind(arc(0, 360))).toEqual({ 0: 'CIRCLE', 8: 'THIN', 10: '5', 20: '6', 40: '4' });
    expect(kind(arc(30, 120))).toEqual({ 0: 'ARC', 8: 'THIN', 10: '5', 20: '6', 40: '4', 50: '30', 51: '120' });
  });

  it('that are letters stand at their beginning, middle or end, and run up the sheet where they are turned', () => {
    const letters = (anchor: 'start' | 'middle' | 'end', turned: boolean) =>
      entities(paperDxf([text('⌀8 × 1°', [3, 4], anchor, turned)])).find((e) => e[0] === 'TEXT');
    const plain = { 0: 'TEXT', 8: 'LETTERS', 10: '3', 20: '4', 40: '3.5', 1: '%%c8 x 1%%d' };
    expect(letters('start', false)).toEqual(plain);
    expect(letters('start', true)).toEqual({ ...plain, 50: '90' });
    expect(letters('middle', false)).toEqual({ ...plain, 72: '1', 11: '3', 21: '4' });
    expect(letters('end', true)).toEqual({ ...plain, 50: '90', 72: '2', 11: '3', 21: '4' });
    expect(paperSvg([text('a', [3, 4], 'end', true)], 20, 20, 'x')).toContain(
      'text-anchor="end" transform="rotate(-90 3 16)"',
    );
  });
});
