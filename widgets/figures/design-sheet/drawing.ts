/**
 * The drawing on the sheet: the adjuster in the middle of its travel, cut, with the lengths that the design states and no
 * others: what was assumed is drawn, and never dimensioned. Dimension lines end in arrowheads between extension lines; a thread is
 * noted on a leader by its designation, its class where one is written, and the length of its nut, as ISO 6410-1 notes a tapped hole. Under it
 * stands a title block; what the design does not say is left for the hand.
 */

import { WORDS } from '#words/figures/design-sheet.ts';
import { partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import type { Part, Size, ThreadEnd } from '../../assembly/adjuster/part.ts';
import { SCALES, scaleWords } from '../../assembly/files/paper.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { at, bad, good, type Result, spokenNumber } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { spaced } from '../kit/plot-box.ts';
import { sheetPart } from '../kit/sheet.ts';
import { arrowheads, dimensionLine, hatchings, px } from '../kit/svg.ts';

const WIDTH = 440;
const HEIGHT = 420;
/** Two names along one line need this, however low the adjuster is. */
const LOWEST = 190;
const MARGIN = 16;
const LEFT = 116;
const RIGHT = 258;
/** Dimension lines stand in columns left of the parts, the nearest first. */
const COLUMN = 25;
/** The picture has room for so many; more of them make it wider. */
const COLUMNS = 4;
/** Half the length of the longest text along its line, so that it stays in the picture where the line is short. */
const HALF_TEXT = 84;
/** Half the length of a letter on the narrowest paper. */
const HALF_LETTER = 4.5;
/** Air at both ends of a text. */
const CLEAR = 2;
/** Two lines of letters on the narrowest paper. */
const NOTE = 58;
/** Width of the drawing on paper, mm; the style sheet prints it so. */
const ON_PAPER = 66;

/** Reductions of ISO 5455 beyond those of a sheet of its own: this drawing is small. */
const SMALLER = [1 / 100, 1 / 200, 1 / 500, 1 / 1000];

/** A stated length along the axis, where it stands now. */
interface Dimension {
  /** What is measured: the extension lines show it, so it is told to who points there and not written. */
  readonly name: string;
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

/** A length as a drawing writes it: its unit, the same for all, stands in the title block. */
const lengthAlone = (value: number, view: UnitView): string =>
  show(value, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view).replace(/\s.*$/, '');

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
          name,
          text: lengthAlone(size.value, view),
          symbol,
          z0: size.from + at[part.role],
          z1: size.to + at[part.role],
          edge: end ? end.thread.d / 2 : Math.max(...part.outer.map((s) => s.r)),
        },
      ];
    }),
  );

/**
 * A column for each interval, the nearest that is free there: lengths that do not overlap share one, and no two names or lines lie on
 * each other.
 */
export const columnsFor = (spans: readonly (readonly [from: number, to: number])[]): number[] => {
  const columns: (readonly [number, number])[][] = [];
  return spans.map((span) => {
    const free = columns.findIndex((taken) => taken.every(([from, to]) => span[1] <= from || span[0] >= to));
    if (free < 0) return columns.push([span]) - 1;
    columns[free]?.push(span);
    return free;
  });
};

/**
 * Where the middle of a text stands along its dimension line: as near to the middle of the line as no line crosses it (ISO 129-1), `half` being
 * half its length; in the middle where every place is crossed.
 */
export const freeOf = (
  crossing: readonly number[],
  [from, to]: readonly [from: number, to: number],
  half: number,
): number => {
  const middle = (from + to) / 2;
  const places = [middle, from - half, to + half, ...crossing.flatMap((y) => [y - half, y + half])];
  return (
    places
      .filter((place) => place + half >= from && place - half <= to)
      .filter((place) => crossing.every((y) => Math.abs(y - place) >= half))
      .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0] ?? middle
  );
};

export const drawing = (fit: FitState, called: string, fromParts: boolean, view: UnitView): Result<string> => {
  const { adjuster } = fit;
  const { clockwise, anticlockwise } = adjuster;
  // In the middle between its stops, whatever it was put together as.
  const now = standing(adjuster, (clockwise.n + anticlockwise.n) / 2);
  const extents = extentsOf(adjuster);
  const middle = (LEFT + RIGHT) / 2;
  const room = (RIGHT - LEFT) / 2;
  // A lock that is not stated is left out; without it the drawing is as wide as its parts.
  const guided = adjuster.lock.kind === 'key' || adjuster.lock.kind === 'post';
  const half = guided ? Math.max(extents.half, extents.left) : extents.half;
  const fitted = frameIn({ ...extents, half, left: (half * middle) / room }, HEIGHT - 2 * MARGIN, middle, room);
  const size = (value: number) => show(value, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view);
  // An auxiliary dimension, in brackets (ISO 129-1): it follows from the others, and from what was assumed. Last, so that it stands outermost.
  const overall: Dimension[] = fromParts
    ? [
        {
          name: WORDS.drawing.sizes.height,
          text: WORDS.drawing.overall(size(now.height)),
          symbol: undefined,
          z0: 0,
          z1: now.height,
          edge: 0,
        },
      ]
    : [];
  // The shorter the nearer, so that fewer lines cross.
  const lengths = dimensionsOf(partsOf(adjuster), now.at, view).sort(
    (a, b) => Math.abs(a.z1 - a.z0) - Math.abs(b.z1 - b.z0),
  );
  const dimensions = [...lengths, ...overall];
  /** The drawing at a scale in picture units: no higher than its adjuster, and as many columns wider as its dimensions need. */
  const laidOut = (scale: number) => {
    const [top, bottom] = [extents.top * scale, extents.bottom * scale];
    const high = Math.max(LOWEST, top - bottom + 2 * MARGIN);
    const frame = { x: fitted.x, y: (high + top + bottom) / 2, scale };
    const y = (z: number) => frame.y - z * scale;
    const stated = dimensions.map((one) => {
      const half = Math.min(HALF_TEXT, HALF_LETTER * one.text.length);
      const middle = Math.min(high - half, Math.max(half, y((one.z0 + one.z1) / 2)));
      const line = [y(Math.max(one.z0, one.z1)), y(Math.min(one.z0, one.z1))] as const;
      return {
        ...one,
        half,
        line,
        span: [Math.min(line[0], middle - half), Math.max(line[1], middle + half)] as const,
      };
    });
    const columns = columnsFor(stated.map(({ span }) => span));
    const placed = stated.map((one, i) => {
      // What stands farther out has its extension lines across this column.
      const crossing = stated.filter((_, j) => at(columns, j) > at(columns, i)).flatMap(({ line }) => line);
      const place = freeOf(crossing, one.line, one.half + CLEAR);
      return { ...one, middle: Math.min(high - one.half, Math.max(one.half, place)) };
    });
    const wider = Math.max(0, Math.max(0, ...columns) + 1 - COLUMNS) * COLUMN;
    return { frame, high, y, placed, columns, wider };
  };
  // The next scale is half as large or less: the margins give way a little first.
  const most = Math.min(1.1 * fitted.scale, (HEIGHT - MARGIN) / (extents.top - extents.bottom));
  // At the largest scale of the standard: a wider picture is printed as wide as any, so its columns count in the scale.
  const largest = () => {
    for (const onPaper of [...SCALES, ...SMALLER])
      for (let wide = 0; wide <= dimensions.length * COLUMN; wide += COLUMN) {
        const scale = (onPaper * (WIDTH + wide)) / ON_PAPER;
        // Wider, it would be larger still.
        if (!(scale <= most)) break;
        const layout = laidOut(scale);
        if (layout.wider <= wide) return { ...layout, wider: wide, onPaper };
      }
    return undefined;
  };
  const found = largest();
  if (!found) return bad('lengths-of-no-one-scale', {});
  const { frame, high, y, placed, columns, wider, onPaper } = found;
  const { scale } = frame;
  // The outer columns are drawn first, so that their extension lines pass under the names of the inner ones.
  const dimension = ({ name, text, symbol, z0, z1, edge, middle }: (typeof placed)[number], i: number) => {
    const x = LEFT - 14 - COLUMN * (columns[i] ?? 0);
    const from = px(frame.x - edge * scale - 3);
    const [bottom, top] = [y(z0), y(z1)];
    return (
      `<g class="dimension"${symbol === undefined ? '' : ` data-sym="${symbol}"`}><title>${escapeText(name)}</title><path class="extension" d="M${from} ${px(bottom)}H${x - 4}M${from} ${px(top)}H${x - 4}"/>${dimensionLine([x, bottom], [x, top], 'sheet-head', 'between')}` +
      `<text class="clear" x="${x - 5}" y="${px(middle)}" text-anchor="middle" transform="rotate(-90 ${x - 5} ${px(middle)})">${escapeText(text)}</text></g>`
    );
  };
  const under = (side: FitState['A'], lower: 'base' | 'turned', upper: 'turned' | 'carried') =>
    now.at[side.joint.lower.gender === 'internal' ? lower : upper];
  const noteOf = (side: FitState['A'], at: number) => {
    const { lower, upper } = side.joint;
    const end: ThreadEnd = lower.gender === 'internal' ? lower : upper;
    return {
      thread: side.thread,
      height: y((end.from + end.to) / 2 + at),
      length: show(side.nut, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view),
    };
  };
  const notes = [noteOf(fit.C, under(fit.C, 'turned', 'carried')), noteOf(fit.A, under(fit.A, 'base', 'turned'))].sort(
    (a, b) => a.height - b.height,
  );
  const places = spaced(
    notes.map((n) => n.height),
    NOTE,
    NOTE / 2,
    high - NOTE,
  );
  const leader = ({ thread, height, length }: (typeof notes)[number], i: number) => {
    const place = places[i] ?? height;
    return (
      `<g class="dimension"><path class="arrow" marker-start="url(#sheet-head)" d="M${px(frame.x + (thread.d / 2) * scale)} ${px(height)}L${RIGHT + 4} ${px(place)}H${RIGHT + 12}"/>` +
      `<text class="clear" x="${RIGHT + 16}" y="${px(place)}" dy="0.35em">${escapeText(spokenNumber(thread.designation))}<tspan x="${RIGHT + 16}" dy="1.3em">${WORDS.drawing.depth(length)}</tspan></text></g>`
    );
  };
  return good(
    `<svg class="sheet-drawing" viewBox="${-wider} 0 ${WIDTH + wider} ${px(high)}" role="img" aria-label="${escapeText(WORDS.drawing.label(called))}">${hatchings('sheet')}${arrowheads('sheet-head')}` +
      partsHtml({ ...pictureOf(adjuster, now, frame), ...(guided ? {} : { guide: '' }) }, 'sheet') +
      `<path class="axis" d="M${px(frame.x)} ${px(y(extents.top) - 12)}V${px(y(extents.bottom) + 12)}"/>` +
      `${[...placed.keys()]
        .sort((a, b) => (columns[b] ?? 0) - (columns[a] ?? 0))
        .map((i) => dimension(at(placed, i), i))
        .join('')}${notes.map(leader).join('')}</svg>` +
      sheetPart(
        'title',
        WORDS.drawing.block.title,
        titleBlock(fit, onPaper, view) +
          `<p class="sheet-plain">${fromParts ? WORDS.drawing.ofParts(adjuster.lock.kind === 'assumed') : WORDS.drawing.plain(adjuster.tip.kind === 'ball')}</p>`,
      ),
  );
};

/** First-angle projection (ISO 5456-2): the small end of the cone faces away from its view from the end. */
const FIRST_ANGLE =
  '<path class="arrow strong" d="M4 5L24 2V22L4 19Z"/><circle class="arrow strong" cx="42" cy="12" r="10"/><circle class="arrow strong" cx="42" cy="12" r="6.5"/><path class="axis" d="M0 12H56M42 0V24"/>';

const titleBlock = (fit: FitState, onPaper: number, view: UnitView): string => {
  const words = WORDS.drawing.block;
  const cell = (name: string, value: string, wide = false) =>
    `<div${wide ? ' class="wide"' : ''}><dt>${name}</dt><dd>${value}</dd></div>`;
  return (
    `<dl class="title-block">${cell(words.name, escapeText(fit.adjuster.name === '' ? words.assembly : fit.adjuster.name), true)}` +
    `${cell(words.number, '')}${cell(words.date, '')}${cell(words.material, '')}${cell(words.tolerance, '')}` +
    `${cell(words.scale, scaleWords(onPaper))}${cell(words.units, words.unitsAre(view))}` +
    `${cell(words.projection, `<svg class="projection" viewBox="0 0 58 24" role="img" aria-label="${words.firstAngle}">${FIRST_ANGLE}</svg>`)}</dl>`
  );
};
