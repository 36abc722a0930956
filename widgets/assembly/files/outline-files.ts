/**
 * Outlines at their true size, for a laser, a mill or a print on paper: SVG and DXF R12, both with a line of ten millimetres to check the size by.
 *
 * DXF R12, of which a file may have its ENTITIES alone (documentation of an open writer of R12; codes from memory): 0 the kind, 8 the layer, 10 and 20 a point, 11 and
 * 21 a second one, 40 a height, 70 = 1 closed. It has no unit. y is up in DXF and down in SVG.
 */
import { LANGUAGE } from '#words/language.ts';
import { xmlText } from '../../input/escape.ts';

export type Place = readonly [x: number, y: number];
export interface Outline {
  readonly layer: string;
  readonly points: readonly Place[];
  readonly closed: boolean;
}

const CHECK = 10;
const MARGIN = 5;
const numeral = (x: number): string => String(Number(x.toFixed(4)) + 0);

interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}
const boxOf = (outlines: readonly Outline[]): Box => {
  const [xs, ys] = [0, 1].map((k) => outlines.flatMap(({ points }) => points.map((p) => p[k] as number))) as [
    number[],
    number[],
  ];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
};

/** The check line, below the drawing. */
const checkOf = ({ left, bottom }: Box): readonly [Place, Place] => [
  [left, bottom - MARGIN],
  [left + CHECK, bottom - MARGIN],
];

export const svgOf = (outlines: readonly Outline[], title: string, checkWords: string): string => {
  const box = boxOf(outlines);
  const [width, height] = [Math.max(box.right - box.left, 40) + 2 * MARGIN, box.top - box.bottom + 4 * MARGIN];
  const at = ([x, y]: Place): string => `${numeral(x - box.left + MARGIN)} ${numeral(box.top - y + MARGIN)}`;
  const paths = outlines.map(
    ({ layer, points, closed }) =>
      `<path class="${xmlText(layer)}" d="M${points.map(at).join('L')}${closed ? 'Z' : ''}"/>`,
  );
  const [from, to] = checkOf(box);
  const [x, y] = at(to).split(' ').map(Number) as [number, number];
  return (
    `<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg" lang="${LANGUAGE}" width="${numeral(width)}mm" height="${numeral(height)}mm" viewBox="0 0 ${numeral(width)} ${numeral(height)}"><title>${xmlText(title)}</title>` +
    `<g fill="none" stroke="#000" stroke-width="0.18">${paths.join('')}<path d="M${at(from)}L${at(to)}"/></g><text x="${numeral(x + 2)}" y="${numeral(y + 1)}" font-size="3.5" font-family="sans-serif">${xmlText(checkWords)}</text></svg>\n`
  );
};

/** Letters, digits and a few signs: what a layer or a text of R12 may hold. */
const plainText = (text: string): string => text.normalize('NFKD').replace(/[^A-Za-z0-9 ._-]/g, '');

export const dxfOf = (outlines: readonly Outline[], checkWords: string): string => {
  const [from, to] = checkOf(boxOf(outlines));
  const rows: (string | number)[] = [0, 'SECTION', 2, 'ENTITIES'];
  for (const { layer, points, closed } of outlines) {
    const name = plainText(layer).toUpperCase() || '0';
    rows.push(0, 'POLYLINE', 8, name, 66, 1, 70, closed ? 1 : 0);
    for (const [x, y] of points) rows.push(0, 'VERTEX', 8, name, 10, numeral(x), 20, numeral(y));
    rows.push(0, 'SEQEND', 8, name);
  }
  rows.push(0, 'LINE', 8, 'CHECK', 10, numeral(from[0]), 20, numeral(from[1]), 11, numeral(to[0]), 21, numeral(to[1]));
  rows.push(0, 'TEXT', 8, 'CHECK', 10, numeral(to[0] + 2), 20, numeral(to[1] - 1), 40, 3, 1, plainText(checkWords));
  rows.push(0, 'ENDSEC', 0, 'EOF');
  return `${rows.join('\r\n')}\r\n`;
};
