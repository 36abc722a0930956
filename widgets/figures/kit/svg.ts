/** Small pieces of SVG text. Drawings are strings so that the build and the browser make the same picture. */

/** In picture units, x to the right and y down. */
export type Point = readonly [x: number, y: number];

/** A coordinate short enough for a path and fine enough for a screen. */
export const px = (x: number): string => String(Math.round(x * 100) / 100);

export const polyline = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');

export const polygon = (points: readonly Point[]): string => (points.length === 0 ? '' : `${polyline(points)}Z`);

/** What slopes a hatching may have, in degrees from the vertical of a tile. */
type Slant = 45 | -45;

/** Closed hatching of cut metal or of a band in a plot, at 45°; its gap is kept on the screen whatever the scale of the drawing. */
export const hatching = (id: string, slant: Slant, gap = 4.5, ground = ''): string =>
  `<pattern id="${id}" class="hatching" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" patternTransform="rotate(${slant})" style="--slant:${slant}deg">` +
  `${ground === '' ? '' : `<rect class="${ground}" width="${gap}" height="${gap}"/>`}<path class="hatch" d="M${gap / 2} 0V${gap}"/></pattern>`;

/** Hatching for cut parts: neighbours lean to opposite sides, and each stands on the colour of its part. */
export const hatchings = (prefix: string): string =>
  `<defs>${hatching(`${prefix}-base`, 45, 5, 'ground base')}${hatching(`${prefix}-turned`, -45, 4.5, 'ground turned')}${hatching(`${prefix}-carried`, 45, 4, 'ground carried')}</defs>`;

/**
 * An arrowhead, three times as long as it is wide, for the ends of lines: `marker-end="url(#id)"`, or at both ends. In a group that keeps its size by itself the head must not do so again: it is `still`.
 * Of a thick line the head goes a little past the end, which it covers: it is `strong`.
 */
export const arrowheads = (id: string, kind: 'thin' | 'still' | 'strong' = 'thin'): string =>
  `<defs><marker id="${id}" class="head" markerUnits="userSpaceOnUse" markerWidth="1" markerHeight="1" overflow="visible" orient="auto-start-reverse"><path class="arrowhead${kind === 'still' ? ' still' : ''}" d="${kind === 'strong' ? 'M4 0L-11 -2.75V2.75Z' : 'M0 0L-10.5 -1.9V1.9Z'}"/></marker></defs>`;

/** A shorter dimension has its heads outside, pointing at its ends. */
const ROOM_FOR_HEADS = 36;

/** A dimension line between two places, with the arrowheads of this id. */
export const dimensionLine = (from: Point, to: Point, head: string, name = ''): string => {
  const classes = `arrow${name === '' ? '' : ` ${name}`}`;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const line = `d="M${px(from[0])} ${px(from[1])}L${px(to[0])} ${px(to[1])}"`;
  if (length > ROOM_FOR_HEADS)
    return `<path class="${classes}" marker-start="url(#${head})" marker-end="url(#${head})" ${line}/>`;
  const [ux, uy] = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : [0, 1];
  const outside = ([x, y]: Point, way: number) =>
    `<path class="${classes}" marker-end="url(#${head})" d="M${px(x + 22 * way * ux)} ${px(y + 22 * way * uy)}L${px(x)} ${px(y)}"/>`;
  return `<path class="${classes}" ${line}/>${outside(from, -1)}${outside(to, 1)}`;
};

/** The outermost drawings of a picture, told how wide they are, which the style sheet keeps letters and lines to size by. */
export const withSizes = (html: string): string => {
  let depth = 0;
  return html.replace(/<svg\b[^>]*>|<\/svg>/g, (tag) => {
    if (tag.startsWith('</')) {
      depth -= 1;
      return tag;
    }
    depth += 1;
    const [, wide, high] = / viewBox="\S+ \S+ (\S+) (\S+)"/.exec(tag) ?? [];
    if (depth > 1 || wide === undefined || tag.includes(' style="')) return tag;
    return tag.replace('<svg', `<svg style="--wide:${wide};aspect-ratio:${wide}/${high}"`);
  });
};
