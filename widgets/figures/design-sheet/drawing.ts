/**
 * The drawing on the sheet: the assembly in the middle of its travel, cut, with the lengths that the design states and no
 * others. Height in all is not among them, since head, cap and lock have no stated size.
 */

import { WORDS } from '#words/figures/design-sheet.ts';
import type { Stretch } from '../../assembly/assembly-layout.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { bad, good, type Result, standAt, type Thread } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { partsOf, pathOf, stretchesOf } from '../kit/fit-shapes.ts';
import { hatchings, px } from '../kit/svg.ts';

const WIDTH = 360;
const HEIGHT = 406;
const MARGIN = 12;
/** Columns of the dimension lines, left of the parts. */
const COLUMNS = { b_A: 78, l_A: 58, b_C: 38, l_C: 18 } as const;
const LEFT = 88;
const RIGHT = 240;
/** Half the length of a name along its line, so that it stays in the picture where the line is short. */
const HALF_NAME = 48;

/** In the middle between its stops, whatever it was put together as. */
const inTheMiddle = (fit: FitState): FitState => {
  const { clockwise, anticlockwise } = fit.travel;
  return { ...fit, standing: standAt(fit.A, fit.C, fit.travel, (clockwise.n + anticlockwise.n) / 2) };
};

/** `ball` is the radius of the ball at the tip, mm. */
export const drawing = (fit: FitState, ball: number, view: UnitView): Result<string> => {
  const s = inTheMiddle(fit);
  // Every outline has the same ends at every scale.
  const points = Object.values(partsOf(s, 1, ball)).flatMap((outlines) => outlines.flat());
  const [top, bottom] = [Math.max(...points.map(([, z]) => z)), Math.min(...points.map(([, z]) => z))];
  const half = Math.max(...points.map(([x]) => Math.abs(x)));
  const scale = Math.min((HEIGHT - 2 * MARGIN) / (top - bottom), (RIGHT - LEFT) / (2 * half));
  if (!(scale > 0 && Number.isFinite(scale))) return bad('lengths-of-no-one-scale', {});
  const frame = { scale, x: (LEFT + RIGHT) / 2, y: (HEIGHT + (top + bottom) * scale) / 2 };
  const parts = partsOf(s, scale, ball);
  const at = stretchesOf(s);
  const y = (z: number) => frame.y - z * scale;
  const part = (key: keyof typeof parts, cut: boolean) =>
    `<path class="part ${key}${cut ? '' : ' solid'}" d="${pathOf(parts[key], frame)}"${cut ? ` fill="url(#sheet-${key})"` : ''}/>`;
  const dimension = (key: keyof typeof COLUMNS, length: number, { z0, z1 }: Stretch, edge: number) => {
    const x = COLUMNS[key];
    const middle = Math.min(HEIGHT - HALF_NAME, Math.max(HALF_NAME, y((z0 + z1) / 2)));
    const from = px(frame.x - edge * scale - 3);
    const text = `${WORDS.drawing.lengths[key]} ${show(length, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view)}`;
    return (
      `<g class="dimension" data-sym="${key}"><path class="extension" d="M${from} ${px(y(z0))}H${x - 4}M${from} ${px(y(z1))}H${x - 4}"/>` +
      `<path class="between" d="M${x} ${px(y(z0))}V${px(y(z1))}"/><path d="${tick(x, y(z0))}${tick(x, y(z1))}"/>` +
      `<text x="${x - 4}" y="${px(middle)}" text-anchor="middle" transform="rotate(-90 ${x - 4} ${px(middle)})">${escapeText(text)}</text></g>`
    );
  };
  const leader = ({ z0, z1 }: Stretch, thread: Thread) =>
    `<g class="dimension"><path d="M${px(frame.x + (thread.d / 2) * scale)} ${px(y((z0 + z1) / 2))}H${RIGHT + 6}"/><text x="${RIGHT + 9}" y="${px(y((z0 + z1) / 2) + 4)}">${escapeText(thread.designation)}</text></g>`;
  const nested = s.arrangement === 'nested';
  const [dA, dC] = [s.A.thread.d / 2, s.C.thread.d / 2];
  return good(
    `<svg class="sheet-drawing" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing.label(s.arrangement)}">${hatchings('sheet')}` +
      `${part('base', true)}${nested ? part('turned', true) : ''}${part('carried', !nested)}${nested ? '' : part('turned', false)}` +
      dimension('b_A', s.A.nut, at.nutA, dA) +
      dimension('l_A', s.A.screw, at.screwA, dA) +
      dimension('b_C', s.C.nut, at.nutC, dC) +
      dimension('l_C', s.C.screw, at.screwC, dC) +
      `${leader(at.nutA, s.A.thread)}${leader(at.nutC, s.C.thread)}</svg>` +
      `<p class="sheet-plain">${WORDS.drawing.plain(s.arrangement !== 'one spindle, two nuts')}</p>`,
  );
};

/** The slanting stroke at the end of a dimension line. */
const tick = (x: number, y: number): string => `M${x - 3} ${px(y + 3)}l6 -6`;
