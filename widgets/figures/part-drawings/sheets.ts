/** The sheet of a part: its views, sizes and notes, at the largest scale of the standard that fits the paper. */
import { WORDS } from '#words/figures/part-drawings.ts';
import { type BlindHole, blindHoleOf } from '../../assembly/adjuster/blind-hole.ts';
import { heightOf, type Part, reach, type Size, type ThreadEnd } from '../../assembly/adjuster/part.ts';
import { LETTER, LETTERS, type Mark, SCALES, type Spot, scaleWords, text } from '../../assembly/files/paper.ts';
import { at, bad, diameters, fitOfThread, good, nearestDrills, type Result, spokenNumber } from '../../engine/index.ts';
import { designationOfSide } from '../../input/designation-sides.ts';
import type { UnitView } from '../../input/format.ts';
import type { TitleBlock } from '../../input/title-block.ts';
import { leader, level, upright } from './dimensions.ts';
import { endOf, frontOf, halfWidth, widestHalf } from './part-view.ts';
import { frameOf, NAME_CELL, PAPERS, type Room, roomOn } from './sheet-of-paper.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'part-larger-than-paper': { readonly part: string; readonly paper: string; readonly length: number };
  }
}

export interface PaperSheet {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
  readonly scale: string;
  /** Sizes that are dimensioned as stated, and those in brackets. */
  readonly stated: number;
  readonly assumed: number;
  /** Rows of its list of parts. */
  readonly listed: number;
  /** Blind threads that leave the tap less run-out, or their hole less wall, than is usual. */
  readonly doubtful: readonly (BlindHole & { readonly thread: string })[];
}

export interface Asked {
  readonly paper: keyof typeof PAPERS;
  readonly block: TitleBlock;
  readonly view: UnitView;
  /** The adjuster, as its reader calls it; none where left out or empty. */
  readonly of?: string;
}

/** Letters that the cell of the name has room for. */
const MOST_NAME = Math.floor(NAME_CELL / LETTER) - 1;

/** A part under the name of its adjuster, of which as much stays as the cell has room for. */
export const nameOn = ({ of = '' }: Pick<Asked, 'of'>, part: string): string => {
  const left = MOST_NAME - part.length - 2;
  const letters = [...of];
  if (letters.length === 0 || left < 4) return part;
  return `${
    letters.length > left
      ? `${letters
          .slice(0, left - 1)
          .join('')
          .trimEnd()}…`
      : of
  }, ${part}`;
};

/** A number of a drawing: its unit stands in the title block. */
export const plainSize = (x: number, view: UnitView): string =>
  spokenNumber(view === 'inch' ? (x / 25.4).toFixed(4) : String(Number(x.toFixed(3))));

const COLUMN = 9;
export const FIRST = 12;
const NOTES = 62;
const GAP = 20;

export const scaleFor = (
  fits: (scale: number) => boolean,
  part: string,
  paper: string,
  length: number,
): Result<number> => {
  const scale = SCALES.find(fits);
  return scale === undefined ? bad('part-larger-than-paper', { part, paper, length }) : good(scale);
};

/** Designation with its class, or with the everyday one in brackets. */
const threadWords = ({ thread, gender }: ThreadEnd): string => {
  const words = designationOfSide(thread, gender);
  if (thread.toleranceClass !== undefined || thread.measured !== undefined) return words;
  const fit = fitOfThread(thread);
  if (!fit.ok) return words;
  const [nut, screw] = fit.value.classes.split('/');
  const usual = gender === 'internal' ? nut : (screw ?? nut);
  return usual === undefined ? words : WORDS.usual(words, usual);
};

/** A drill is set to no finer depth; never deeper than there is a floor for. */
const tenth = (x: number): number => Math.floor(10 * x + 1e-6) / 10;

const noteOf = (part: Part, end: ThreadEnd, view: UnitView): readonly string[] => {
  const words = threadWords(end);
  if (end.gender === 'external') return [words];
  const { thread, from, to } = end;
  const hole = nearestDrills(diameters(thread).d1);
  const drill =
    view === 'inch'
      ? (hole.inch?.name ?? hole.metric?.name)
      : (hole.metric?.name.replace(' mm', '') ?? hole.inch?.name);
  const through = from < 1e-9 && to > heightOf(part) - 1e-9;
  const beyond = part.bores.find(
    (b) => b.point !== undefined && (Math.abs(b.to - from) < 1e-9 || Math.abs(b.from - to) < 1e-9),
  );
  return [
    through ? WORDS.through(words) : WORDS.depth(words, plainSize(to - from, view)),
    ...(drill === undefined ? [] : [WORDS.drill(drill)]),
    ...doubtsOf(part, end, view),
    ...(beyond ? [WORDS.drilled(plainSize(tenth(to - from + beyond.to - beyond.from), view))] : []),
  ];
};

const short = ({ runOut, usual }: BlindHole): boolean => runOut < usual - 1e-9;
const thin = ({ wall, leastWall }: BlindHole): boolean => wall < leastWall - 1e-9;

/** A shop must see before it drills that the tap has no room, or the hole no wall. */
const doubtsOf = (part: Part, end: ThreadEnd, view: UnitView): readonly string[] => {
  const hole = blindHoleOf(part, end);
  if (!hole) return [];
  return [
    ...(short(hole) ? [WORDS.runOut(plainSize(tenth(hole.runOut), view), plainSize(hole.usual, view))] : []),
    ...(thin(hole) ? [WORDS.wall(plainSize(hole.wall, view), plainSize(hole.leastWall, view))] : []),
  ];
};

const doubtfulOf = (part: Part): PaperSheet['doubtful'] =>
  [part.below, part.above].flatMap((end) => {
    const hole = end && blindHoleOf(part, end);
    return hole && (short(hole) || thin(hole)) ? [{ ...hole, thread: end.thread.designation }] : [];
  });

const sizeWords = (size: Size, view: UnitView): string => {
  const number = plainSize(size.value, view);
  const words =
    size.name === 'hexagon'
      ? WORDS.flats(number)
      : size.name === 'width'
        ? WORDS.square(number)
        : size.name === 'diameter'
          ? WORDS.round(number)
          : number;
  return size.stated ? words : WORDS.assumed(words);
};

/** Diameter and length of a round stretch, of which nothing is stated. */
const roundWords = ({ value, over }: Size & { readonly over: NonNullable<Size['over']> }, view: UnitView): string =>
  WORDS.assumed(WORDS.depth(WORDS.round(plainSize(value, view)), plainSize(over.to - over.from, view)));

const LINE = 1.5 * LETTERS;

/** Heights of notes, highest first, so that none stands on the next: pushed down from the top, and up again where they have gone past the lowest place. */
const apart = (notes: readonly { readonly at: number; readonly lines: number }[], top: number): number[] => {
  let ceiling = top + LINE;
  return notes.map(({ at: wanted, lines }) => {
    const height = Math.min(wanted, ceiling);
    ceiling = height - (lines + 0.5) * LINE;
    return height;
  });
};

const along = (part: Part): readonly (Size & { readonly from: number; readonly to: number })[] => {
  const sized = part.sizes.flatMap((s) =>
    s.from === undefined || s.to === undefined ? [] : [{ ...s, from: s.from, to: s.to }],
  );
  const high = heightOf(part);
  const whole = sized.some((s) => s.from < 1e-9 && s.to > high - 1e-9);
  // Height in all follows from the others: in brackets.
  return [
    ...sized,
    ...(whole ? [] : [{ name: 'height' as const, value: high, stated: false, from: 0, to: high }]),
  ].sort((a, b) => a.to - a.from - (b.to - b.from));
};

const notesAt = (room: Room): Mark[] =>
  WORDS.notes.map((words, i) => text(words, [room.left + 2, room.bottom - 6 - i * 5]));

/** `called`: what it is, where it is none of the three parts. */
export const partSheet = (part: Part, number: string, asked: Asked, called?: string): Result<PaperSheet> => {
  const { paper, view, block } = asked;
  const [width, height] = PAPERS[paper];
  const room = roomOn(PAPERS[paper], 0);
  const [high, half] = [heightOf(part), widestHalf(part)];
  const sizes = along(part);
  const dims = FIRST + COLUMN * sizes.length;
  const across = part.sizes.filter((s) => s.from === undefined && s.over === undefined);
  const wideEnd = Math.max(...part.outer.map(reach));
  const scale = scaleFor(
    (s) =>
      dims + 2 * half * s + NOTES <= room.right - room.left &&
      (high + 2 * wideEnd) * s + GAP + 42 <= room.top - room.bottom,
    part.kind,
    paper,
    high,
  );
  if (!scale.ok) return scale;
  const s = scale.value;
  const used = dims + 2 * half * s + NOTES;
  const x = room.left + (room.right - room.left - used) / 2 + dims + half * s;
  const free = room.top - room.bottom - 24 - ((high + 2 * wideEnd) * s + GAP);
  const end: Spot = [x, room.bottom + 18 + free / 2 + wideEnd * s];
  const y = end[1] + wideEnd * s + GAP;
  const z = (v: number) => y + v * s;
  const edge = (v: number) => {
    const near = part.outer.filter((o) => o.from <= v + 1e-9 && o.to >= v - 1e-9).map(halfWidth);
    return x - Math.max(...near) * s;
  };
  const { socket } = part;
  const ends = [part.above, part.below].flatMap((e) => (e ? [e] : []));
  const rounds = part.sizes.flatMap((size) => (size.over ? [{ ...size, over: size.over }] : []));
  const notes = [
    ...ends.map((e) => ({
      lines: noteOf(part, e, view),
      r: e.gender === 'external' ? e.thread.d / 2 : diameters(e.thread).d1 / 2,
      at: (e.from + e.to) / 2,
    })),
    ...rounds.map((size) => ({
      lines: [roundWords(size, view)],
      r: size.value / 2,
      at: (size.over.from + size.over.to) / 2,
    })),
    ...(socket
      ? [
          {
            lines: [WORDS.socket(plainSize(socket.flats, view), plainSize(socket.depth, view))],
            r: socket.flats / Math.sqrt(3),
            at: high - socket.depth / 2,
          },
        ]
      : []),
  ].sort((a, b) => b.at - a.at);
  const shelves = apart(
    notes.map((n) => ({ at: z(n.at), lines: n.lines.length })),
    y + high * s,
  );
  const marks: Mark[] = [
    ...frontOf(part, { x, y, scale: s }),
    ...endOf(part, end, s),
    ...sizes.flatMap((size, i) =>
      upright(
        sizeWords(size, view),
        x - half * s - FIRST - i * COLUMN,
        z(size.from),
        z(size.to),
        Math.min(edge(size.from), edge(size.to)),
      ),
    ),
    ...across.flatMap((size) =>
      size.name === 'hexagon'
        ? upright(
            sizeWords(size, view),
            end[0] + wideEnd * s + 12,
            end[1] - (size.value / 2) * s,
            end[1] + (size.value / 2) * s,
            end[0] + (wideEnd / 2) * s,
          )
        : level(
            sizeWords(size, view),
            end[1] - wideEnd * s - 9,
            end[0] - (size.value / 2) * s,
            end[0] + (size.value / 2) * s,
            end[1] - (size.name === 'width' ? size.value / 2 : 0) * s,
          ),
    ),
    ...notes.flatMap((note, i) =>
      leader(note.lines, [x + note.r * s, z(note.at)], [x + half * s + 10, at(shelves, i)]),
    ),
    ...notesAt(room),
    ...frameOf(
      paper,
      block,
      {
        name: nameOn(asked, called ?? WORDS.part(part.role, part.kind)),
        material: WORDS.material(part.material),
        scale: s,
        units: view === 'inch' ? 'in' : 'mm',
        paper,
        sheet: number,
      },
      [],
    ),
  ];
  const all = [...sizes, ...across, ...rounds];
  return good({
    marks,
    width,
    height,
    scale: scaleWords(s),
    stated: all.filter((d) => d.stated).length + ends.length,
    assumed: all.filter((d) => !d.stated).length,
    listed: 0,
    doubtful: doubtfulOf(part),
  });
};
