/** The drawing on the sheet: the assembly in the middle of its travel, cut, with the dimensions a maker asks for first. */
import { diameters, good, type Result, type Thread } from '../engine/index.ts';
import { type Arrangement, layOut } from '../shared/assembly-layout.ts';
import { pathsOf } from '../shared/assembly-paths.ts';
import { show, type UnitView } from '../shared/format.ts';
import { escapeText, hatchings, px } from '../shared/svg.ts';

const WIDTH = 360;
const HEIGHT = 406;

export const drawing = (A: Thread, C: Thread, arrangement: Arrangement, view: UnitView): Result<string> => {
  const layout = layOut(arrangement, A, C);
  if (!layout.ok) return layout;
  const l = layout.value;
  const lowest = Math.min(
    l.turned.a.z0,
    l.base.stretch.z0,
    arrangement === 'nested' ? l.bottom : Number.POSITIVE_INFINITY,
  );
  const highest = Math.max(l.carried.top, l.turned.head.z1) + 0.4 * C.d;
  const scale = Math.min((HEIGHT - 36) / (highest - lowest), 190 / (l.right - l.left));
  const frame = { scale, x: 110, y: 15 + highest * scale };
  const p = pathsOf(l, { turned: 0, carried: 0, ridgeC: 0 }, frame, 0, true);
  const y = (z: number) => frame.y - z * scale;
  const size = (value: number) => show(value, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view);
  const right = frame.x + l.right * scale + 8;
  const height = (z0: number, z1: number, x: number, name: string) =>
    `<g class="dimension"><path d="M${px(x)} ${px(y(z0))}V${px(y(z1))}M${px(x - 4)} ${px(y(z0))}h8M${px(x - 4)} ${px(y(z1))}h8"/><text x="${px(x + 4)}" y="${px(y(z0) + 14)}" text-anchor="end">${escapeText(name)} ${size(z1 - z0)}</text></g>`;
  const leader = (z: number, half: number, text: string) =>
    `<g class="dimension"><path d="M${px(frame.x + half * scale)} ${px(y(z))}H${px(right + 4)}"/><text x="${px(right + 8)}" y="${px(y(z) + 4)}">${escapeText(text)}</text></g>`;
  const midC = (l.turned.c.z0 + l.turned.c.z1) / 2;
  return good(
    `<svg class="sheet-drawing" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="Section of the assembly, ${arrangement}, to scale, in the middle of its travel">${hatchings('sheet')}` +
      `<path class="part guide" d="${p.guide}"/><path class="part base" d="${p.base}" fill="url(#sheet-base)"/>` +
      (arrangement === 'nested'
        ? `<path class="part turned" d="${p.turned}" fill="url(#sheet-turned)"/><path class="part carried solid" d="${p.carried}"/>`
        : `<path class="part carried" d="${p.carried}" fill="url(#sheet-carried)"/><path class="part turned solid" d="${p.turned}"/>`) +
      `<path class="crests" d="${p.turnedLines}${p.carriedLines}"/>` +
      leader((l.base.stretch.z0 + l.base.stretch.z1) / 2, diameters(A).d / 2, A.designation) +
      leader(midC, diameters(C).d / 2, C.designation) +
      height(lowest, Math.max(l.carried.top, l.turned.head.z1), WIDTH - 8, 'in all') +
      `</svg>`,
  );
};
