/**
 * Frame and title block of a sheet: a margin of 20 mm to file it by and 10 mm else (ISO 5457), a title block 180 mm wide at the lower right (ISO 7200), a line of 100 mm to check the
 * size of a print by. Sizes of ISO 216 and of ASME Y14.1 (A: letter). From memory.
 */
import { WORDS } from '#words/figures/part-drawings.ts';
import { LETTERS, type Mark, type Spot, scaleWords, text, thin, wide } from '../../assembly/files/paper.ts';
import type { TitleBlock } from '../../input/title-block.ts';

export const PAPERS = {
  'A4 upright': [210, 297],
  'A3 across': [420, 297],
  'A2 across': [594, 420],
  'Letter upright': [215.9, 279.4],
} as const;

const FILED = 20;
const MARGIN = 10;
const ROW = 9;
const ROWS = 4;
const BLOCK = 180;
/** Width of the cell that names what is drawn. */
export const NAME_CELL = 110;

export interface Room {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** What is left over the title block. */
export const roomOn = ([width, height]: readonly [number, number], listRows: number): Room => ({
  left: FILED + 2,
  right: width - MARGIN - 2,
  bottom: MARGIN + (ROWS + listRows) * ROW + 12,
  top: height - MARGIN - 4,
});

const PROJECTION = (x: number, y: number): Mark[] => [
  {
    kind: 'line',
    points: [
      [x, y - 2],
      [x + 8, y - 3.5],
      [x + 8, y + 3.5],
      [x, y + 2],
    ],
    wide: true,
    closed: true,
  },
  { kind: 'arc', centre: [x + 14, y], r: 3.5, from: 0, to: 360, wide: true },
  { kind: 'arc', centre: [x + 14, y], r: 2, from: 0, to: 360, wide: true },
  thin([x - 2, y], [x + 10, y]),
  thin([x + 9.5, y], [x + 18.5, y]),
  thin([x + 14, y - 4.5], [x + 14, y + 4.5]),
];

export interface Titled {
  readonly name: string;
  readonly material: string;
  readonly scale: number;
  readonly units: 'mm' | 'in';
  readonly paper: keyof typeof PAPERS;
  readonly sheet: string;
}

/** A row of the parts list. */
export type ListRow = readonly [item: string, count: string, name: string, material: string];
const LIST_COLUMNS = [0, 14, 30, 140];

export const frameOf = (paper: keyof typeof PAPERS, block: TitleBlock, t: Titled, list: readonly ListRow[]): Mark[] => {
  const [width, height] = PAPERS[paper];
  const right = width - MARGIN;
  const left = right - BLOCK;
  const y = (row: number) => MARGIN + row * ROW;
  const cell = (name: string, value: string, x: number, row: number): Mark[] => [
    text(name, [left + x + 1.5, y(row) + ROW - LETTERS - 0.6]),
    ...(value === '' ? [] : [text(value, [left + x + 1.5, y(row) + 0.9])]),
  ];
  const bar = (x: number, from: number, to: number): Mark => thin([left + x, y(from)], [left + x, y(to)]);
  const { words } = { words: WORDS.block };
  const line = (row: number): Mark => thin([left, y(row)], [right, y(row)]);
  const corner: Spot[] = [
    [FILED, MARGIN],
    [right, MARGIN],
    [right, height - MARGIN],
    [FILED, height - MARGIN],
  ];
  const listed = [...(list.length > 0 ? [WORDS.list] : []), ...list];
  return [
    { kind: 'line', points: corner, wide: true, closed: true },
    wide([left, MARGIN], [left, y(ROWS + listed.length)], [right, y(ROWS + listed.length)]),
    ...Array.from({ length: ROWS + listed.length - 1 }, (_, i) => line(i + 1)),
    ...cell(words.name, t.name, 0, 3),
    ...cell(words.number, block.number, NAME_CELL, 3),
    bar(NAME_CELL, 3, 4),
    ...cell(words.material, t.material, 0, 2),
    ...cell(words.tolerance, block.tolerance, 60, 2),
    ...cell(words.revision, block.revision, 140, 2),
    bar(60, 2, 3),
    bar(140, 2, 3),
    ...cell(words.date, block.date, 0, 1),
    ...cell(words.drawn, block.drawn, 60, 1),
    ...cell(words.scale, scaleWords(t.scale), 140, 1),
    bar(60, 1, 2),
    bar(140, 1, 2),
    ...cell(words.units, t.units, 0, 0),
    ...cell(words.paper, t.paper, 30, 0),
    ...cell(words.sheet, t.sheet, 75, 0),
    ...cell(words.projection, '', 115, 0),
    ...PROJECTION(left + 156, y(0) + ROW / 2),
    bar(30, 0, 1),
    bar(75, 0, 1),
    bar(115, 0, 1),
    ...listed.flatMap((row, i) => {
      const at = y(ROWS + listed.length - 1 - i) + 3;
      return row.map((words, k) => text(words, [left + (LIST_COLUMNS[k] ?? 0) + 1.5, at]));
    }),
    // Nobody trusts a print that was fitted to its page.
    thin([FILED + 4, height - MARGIN - 4], [FILED + 104, height - MARGIN - 4]),
    thin([FILED + 4, height - MARGIN - 5.5], [FILED + 4, height - MARGIN - 2.5]),
    thin([FILED + 104, height - MARGIN - 5.5], [FILED + 104, height - MARGIN - 2.5]),
    text(WORDS.check, [FILED + 107, height - MARGIN - 5.2]),
  ];
};
