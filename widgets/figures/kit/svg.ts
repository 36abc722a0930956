/** Small pieces of SVG text. Drawings are strings so that the build and the browser make the same picture. */

/** In picture units, x to the right and y down. */
export type Point = readonly [x: number, y: number];

/** A coordinate short enough for a path and fine enough for a screen. */
export const px = (x: number): string => String(Math.round(x * 100) / 100);

export const polyline = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');

export const polygon = (points: readonly Point[]): string => (points.length === 0 ? '' : `${polyline(points)}Z`);

/** Hatching for cut parts, one direction and spacing a part, so that parts differ without colour. */
export const hatchings = (prefix: string): string =>
  `<defs>${hatching(`${prefix}-base`, 45, 7)}${hatching(`${prefix}-turned`, -45, 5)}${hatching(`${prefix}-carried`, -60, 9)}</defs>`;

const hatching = (id: string, angle: number, gap: number): string =>
  `<pattern id="${id}" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" patternTransform="rotate(${angle})"><path class="hatch" d="M0 0V${gap}"/></pattern>`;
