/**
 * A sheet of paper in marks: lines of two widths, letters, arrowheads, as SVG and as DXF R12, in millimetres of the paper, y up from its lower left corner.
 *
 * Line widths 0.5 and 0.25 mm and letters of 3.5 mm are of the series of ISO 128-2 and ISO 3098 (from memory). R12 has no line widths here, so each kind has a layer of its own;
 * a chain line is drawn stroke by stroke, since a linetype would need a table. Codes of DXF as in outline-files.ts; 72 and 11, 21 set letters to the middle or the right of a
 * point, 50 turns them; %%c is a diameter (from memory).
 */
import { LANGUAGE } from '#words/language.ts';
import { xmlText } from '../../input/escape.ts';

export type Spot = readonly [x: number, y: number];

export type Mark =
  | { readonly kind: 'line'; readonly points: readonly Spot[]; readonly wide: boolean; readonly closed?: boolean }
  | {
      readonly kind: 'arc';
      readonly centre: Spot;
      readonly r: number;
      /** Degrees, anticlockwise; a whole circle from 0 to 360. */
      readonly from: number;
      readonly to: number;
      readonly wide: boolean;
    }
  | { readonly kind: 'head'; readonly tip: Spot; readonly towards: number }
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly at: Spot;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly turned?: boolean;
    };

/** Enlargements, full size and reductions of ISO 5455, largest first; from memory. */
export const SCALES = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50];
export const scaleWords = (scale: number): string => (scale >= 1 ? `${scale} : 1` : `1 : ${Math.round(1 / scale)}`);

export const LETTERS = 3.5;
/** What a letter takes on a line, on the safe side. */
export const LETTER = 0.56 * LETTERS;
const WIDTHS = { wide: 0.5, thin: 0.25 };
const HEAD = { long: 3, half: 0.5 };
const STEPS = 48;

export const thin = (...points: Spot[]): Mark => ({ kind: 'line', points, wide: false });
export const wide = (...points: Spot[]): Mark => ({ kind: 'line', points, wide: true });
export const text = (words: string, at: Spot, anchor: 'start' | 'middle' | 'end' = 'start', turned = false): Mark => ({
  kind: 'text',
  text: words,
  at,
  anchor,
  turned,
});

/** A chain line between two places: long stroke, gap, dot, gap. */
export const chain = (a: Spot, b: Spot): Mark[] => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const marks: Mark[] = [];
  const at = (t: number): Spot => [a[0] + ux * Math.min(t, length), a[1] + uy * Math.min(t, length)];
  for (let t = 0; t < length; t += 11) {
    marks.push(thin(at(t), at(t + 7)));
    if (t + 8.5 < length) marks.push(thin(at(t + 8.5), at(t + 9.5)));
  }
  return marks;
};

/** A dashed line, for an edge that is hidden. */
export const dashed = (a: Spot, b: Spot): Mark[] => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const at = (t: number): Spot => {
    const share = Math.min(1, t / (length || 1));
    return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  };
  return Array.from({ length: Math.ceil(length / 4) }, (_, i) => thin(at(4 * i), at(4 * i + 2.8)));
};

const headPoints = ({ tip, towards }: Extract<Mark, { kind: 'head' }>): readonly [Spot, Spot, Spot] => {
  const [c, s] = [Math.cos(towards), Math.sin(towards)];
  const at = (side: number): Spot => [
    tip[0] - HEAD.long * c - side * HEAD.half * s,
    tip[1] - HEAD.long * s + side * HEAD.half * c,
  ];
  return [tip, at(1), at(-1)];
};

/** Thin lines at 45°, or leaning the other way, inside a closed outline with holes. */
export const hatch = (rings: readonly (readonly Spot[])[], gap: number, other = false): Mark[] => {
  const turn = ([x, y]: Spot): Spot => (other ? [x + y, y - x] : [x - y, x + y]);
  const back = ([u, v]: Spot): Spot => (other ? [(u - v) / 2, (u + v) / 2] : [(u + v) / 2, (v - u) / 2]);
  // In turned axes the lines run along v; lengths there are √2 times those of the paper.
  const sides = rings.flatMap((ring) =>
    ring.map((p, i) => [turn(p), turn(ring[(i + 1) % ring.length] as Spot)] as const),
  );
  const us = sides.flatMap(([a, b]) => [a[0], b[0]]);
  const step = gap * Math.SQRT2;
  const marks: Mark[] = [];
  for (let u = Math.ceil(Math.min(...us) / step) * step + 1e-4; u < Math.max(...us); u += step) {
    const cuts = sides
      .filter(([a, b]) => a[0] < u !== b[0] < u)
      .map(([a, b]) => a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0]))
      .sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2)
      marks.push(thin(back([u, cuts[i] as number]), back([u, cuts[i + 1] as number])));
  }
  return marks;
};

const numeral = (x: number): string => String(Number(x.toFixed(3)) + 0);

const arcPoints = ({ centre, r, from, to }: Extract<Mark, { kind: 'arc' }>): readonly Spot[] =>
  Array.from({ length: STEPS + 1 }, (_, i): Spot => {
    const a = ((from + ((to - from) * i) / STEPS) * Math.PI) / 180;
    return [centre[0] + r * Math.cos(a), centre[1] + r * Math.sin(a)];
  });

export const paperSvg = (marks: readonly Mark[], width: number, height: number, title: string): string => {
  const at = ([x, y]: Spot): string => `${numeral(x)} ${numeral(height - y)}`;
  const paths = { wide: '', thin: '', heads: '' };
  let letters = '';
  for (const mark of marks) {
    if (mark.kind === 'head') paths.heads += `M${headPoints(mark).map(at).join('L')}Z`;
    else if (mark.kind === 'text') {
      const [x, y] = [numeral(mark.at[0]), numeral(height - mark.at[1])];
      letters += `<text x="${x}" y="${y}" text-anchor="${mark.anchor}"${mark.turned ? ` transform="rotate(-90 ${x} ${y})"` : ''} style="font-size:${LETTERS}px">${xmlText(mark.text)}</text>`;
    } else {
      const points = mark.kind === 'arc' ? arcPoints(mark) : mark.points;
      paths[mark.wide ? 'wide' : 'thin'] +=
        `M${points.map(at).join('L')}${mark.kind === 'line' && mark.closed ? 'Z' : ''}`;
    }
  }
  const stroked = (d: string, w: number) =>
    `<path d="${d}" style="fill:none;stroke:#000;stroke-width:${w}px;stroke-linecap:round;stroke-linejoin:round"/>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" lang="${LANGUAGE}" class="paper" role="img" aria-label="${xmlText(title)}" width="${numeral(width)}mm" height="${numeral(height)}mm" viewBox="0 0 ${numeral(width)} ${numeral(height)}" style="font-family:sans-serif">` +
    `<rect width="${numeral(width)}" height="${numeral(height)}" style="fill:#fff;stroke:none"/>${stroked(paths.thin, WIDTHS.thin)}${stroked(paths.wide, WIDTHS.wide)}<path d="${paths.heads}" style="fill:#000;stroke:none"/><g style="fill:#000">${letters}</g></svg>`
  );
};

/** Letters that R12 has, and its own spelling of some signs. */
const plainText = (words: string): string =>
  words
    .replaceAll('⌀', '%%c')
    .replaceAll('°', '%%d')
    .replaceAll('±', '%%p')
    .replaceAll('×', 'x')
    .replaceAll('□', 'SQ ')
    .replaceAll('−', '-')
    .normalize('NFKD')
    .replace(/[^\x20-\x7e]/g, '');

const ALIGNED = { start: 0, middle: 1, end: 2 } as const;

export const paperDxf = (marks: readonly Mark[]): string => {
  const rows: (string | number)[] = [0, 'SECTION', 2, 'ENTITIES'];
  const place = (code: number, [x, y]: Spot) => [code, numeral(x), code + 10, numeral(y)];
  for (const mark of marks) {
    if (mark.kind === 'head') {
      const [a, b, c] = headPoints(mark);
      rows.push(0, 'SOLID', 8, 'HEADS', ...place(10, a), ...place(11, b), ...place(12, c), ...place(13, c));
    } else if (mark.kind === 'text')
      rows.push(
        ...[0, 'TEXT', 8, 'LETTERS', ...place(10, mark.at), 40, LETTERS, 1, plainText(mark.text)],
        ...(mark.turned ? [50, 90] : []),
        ...(mark.anchor === 'start' ? [] : [72, ALIGNED[mark.anchor], ...place(11, mark.at)]),
      );
    else if (mark.kind === 'arc') {
      const layer = mark.wide ? 'WIDE' : 'THIN';
      const whole = mark.to - mark.from >= 360;
      rows.push(0, whole ? 'CIRCLE' : 'ARC', 8, layer, ...place(10, mark.centre), 40, numeral(mark.r));
      if (!whole) rows.push(50, numeral(mark.from), 51, numeral(mark.to));
    } else {
      const points = mark.closed ? [...mark.points, mark.points[0] as Spot] : mark.points;
      for (const [i, b] of points.entries()) {
        const a = points[i - 1];
        if (a) rows.push(0, 'LINE', 8, mark.wide ? 'WIDE' : 'THIN', ...place(10, a), ...place(11, b));
      }
    }
  }
  rows.push(0, 'ENDSEC', 0, 'EOF');
  return `${rows.join('\r\n')}\r\n`;
};
