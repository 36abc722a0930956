/**
 * The drawing on the sheet: the adjuster in the middle of its travel, cut, with the lengths that the design states and no
 * others: what was assumed is drawn, and never dimensioned.
 */

import { WORDS } from '#words/figures/design-sheet.ts';
import { partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import type { Part, Size, ThreadEnd } from '../../assembly/adjuster/part.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { extentsOf, frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { hatchings, px } from '../kit/svg.ts';

const WIDTH = 360;
const HEIGHT = 406;
const MARGIN = 12;
const LEFT = 96;
const RIGHT = 240;
/** Dimension lines stand in columns left of the parts, the nearest first. */
const COLUMN = 20;
const MOST_COLUMNS = 4;
/** Half the length of a name along its line, so that it stays in the picture where the line is short. */
const HALF_NAME = 48;

/** A stated length along the axis, where it stands now. */
interface Dimension {
  readonly text: string;
  readonly symbol: string | undefined;
  readonly z0: number;
  readonly z1: number;
  /** Where its extension lines begin, from the axis. */
  readonly edge: number;
}

/** The thread that a size is the length of. */
const endOf = (part: Part, size: Size): ThreadEnd | undefined =>
  size.name === 'thread A'
    ? part.role === 'base'
      ? part.above
      : part.below
    : size.name === 'thread C'
      ? part.role === 'turned'
        ? part.above
        : part.below
      : undefined;

const dimensionsOf = (
  parts: readonly Part[],
  at: Readonly<Record<Part['role'], number>>,
  view: UnitView,
): Dimension[] =>
  parts.flatMap((part) =>
    part.sizes.flatMap((size): Dimension[] => {
      if (!size.stated || size.from === undefined || size.to === undefined) return [];
      const end = endOf(part, size);
      const symbol = end && `${end.gender === 'external' ? 'l' : 'b'}_${size.name.at(-1)}`;
      const name = symbol === undefined ? WORDS.drawing.sizes[size.name] : WORDS.drawing.lengths[symbol as 'l_A'];
      return [
        {
          text: `${name} ${show(size.value, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view)}`,
          symbol,
          z0: size.from + at[part.role],
          z1: size.to + at[part.role],
          edge: end ? end.thread.d / 2 : Math.max(...part.outer.map((s) => s.r)),
        },
      ];
    }),
  );

export const drawing = (fit: FitState, called: string, fromParts: boolean, view: UnitView): Result<string> => {
  const { adjuster } = fit;
  const { clockwise, anticlockwise } = adjuster;
  // In the middle between its stops, whatever it was put together as.
  const now = standing(adjuster, (clockwise.n + anticlockwise.n) / 2);
  const extents = extentsOf(adjuster);
  const middle = (LEFT + RIGHT) / 2;
  const room = (RIGHT - LEFT) / 2;
  // Without the guide, which the sheet leaves out, the drawing is as wide as its parts.
  const fitted = frameIn({ ...extents, left: (extents.half * middle) / room }, HEIGHT - 2 * MARGIN, middle, room);
  const frame = { ...fitted, y: fitted.y + MARGIN };
  if (!(frame.scale > 0 && Number.isFinite(frame.scale))) return bad('lengths-of-no-one-scale', {});
  const { scale } = frame;
  const y = (z: number) => frame.y - z * scale;
  const dimension = ({ text, symbol, z0, z1, edge }: Dimension, i: number) => {
    const x = LEFT - 12 - COLUMN * (i % MOST_COLUMNS);
    const middle = Math.min(HEIGHT - HALF_NAME, Math.max(HALF_NAME, y((z0 + z1) / 2)));
    const from = px(frame.x - edge * scale - 3);
    return (
      `<g class="dimension"${symbol === undefined ? '' : ` data-sym="${symbol}"`}><path class="extension" d="M${from} ${px(y(z0))}H${x - 4}M${from} ${px(y(z1))}H${x - 4}"/>` +
      `<path class="between" d="M${x} ${px(y(z0))}V${px(y(z1))}"/><path d="${tick(x, y(z0))}${tick(x, y(z1))}"/>` +
      `<text x="${x - 4}" y="${px(middle)}" text-anchor="middle" transform="rotate(-90 ${x - 4} ${px(middle)})">${escapeText(text)}</text></g>`
    );
  };
  const leader = (side: FitState['A'], at: number) => {
    const nut = side.joint.lower.gender === 'internal' ? [side.joint.lower, at] : [side.joint.upper, at];
    const [end, base] = nut as [ThreadEnd, number];
    const z = (end.from + end.to) / 2 + base;
    return `<g class="dimension"><path d="M${px(frame.x + (side.thread.d / 2) * scale)} ${px(y(z))}H${RIGHT + 6}"/><text x="${RIGHT + 9}" y="${px(y(z) + 4)}">${escapeText(side.thread.designation)}</text></g>`;
  };
  const under = (side: FitState['A'], lower: 'base' | 'turned', upper: 'turned' | 'carried') =>
    now.at[side.joint.lower.gender === 'internal' ? lower : upper];
  return good(
    `<svg class="sheet-drawing" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing.label(called))}">${hatchings('sheet')}` +
      partsHtml({ ...pictureOf(adjuster, now, frame), guide: '' }, 'sheet') +
      dimensionsOf(partsOf(adjuster), now.at, view).map(dimension).join('') +
      `${leader(fit.A, under(fit.A, 'base', 'turned'))}${leader(fit.C, under(fit.C, 'turned', 'carried'))}</svg>` +
      `<p class="sheet-plain">${fromParts ? WORDS.drawing.ofParts : WORDS.drawing.plain(adjuster.tip.kind === 'ball')}</p>`,
  );
};

/** The slanting stroke at the end of a dimension line. */
const tick = (x: number, y: number): string => `M${x - 3} ${px(y + 3)}l6 -6`;
