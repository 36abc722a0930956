/**
 * Sheets of what is printed or bought besides the three parts: springs with the table of their data, the arm and the post of the lock, a knob. Each is drawn from the solid of its files,
 * on its flat side and from the right; a coil is drawn as it is bought, by its table (as ISO 2162-2 asks, from memory).
 */
import { WORDS } from '#words/figures/part-drawings.ts';
import { type Adjuster, springForce, standing } from '../../assembly/adjuster/adjuster.ts';
import { springAt, stretchAt } from '../../assembly/adjuster/spring-place.ts';
import { chain, LETTERS, type Mark, type Spot, scaleWords, text, wide } from '../../assembly/files/paper.ts';
import { type Print, type PrintName, printsOf } from '../../assembly/print/own-prints.ts';
import type { Plate } from '../../assembly/print/plate.ts';
import { coiledLength } from '../../assembly/spring/coil-seen.ts';
import { springFace } from '../../assembly/spring/spring-face.ts';
import { type SeenLine, seenPlate } from '../../assembly/spring/spring-seen.ts';
import { type CoilForm, freeLength, good, type Result } from '../../engine/index.ts';
import { numeral, show } from '../../input/format.ts';
import { level, upright } from './dimensions.ts';
import { frameOf, PAPERS, roomOn } from './sheet-of-paper.ts';
import { type Asked, nameOn, type PaperSheet, partSheet, plainSize, scaleFor } from './sheets.ts';

export type OtherSheet = PrintName;
export interface NamedSheet {
  readonly name: OtherSheet;
  readonly sheet: (number: string, asked: Asked) => Result<PaperSheet>;
}

/** Of all that the adjuster has besides its parts. */
export const otherSheets = (a: Adjuster): readonly NamedSheet[] => {
  const form = a.springs?.drawn?.form;
  const coil: NamedSheet[] =
    form?.shape === 'coil' ? [{ name: 'spring', sheet: (number, asked) => coilSheet(a, form, number, asked) }] : [];
  return [
    ...coil,
    ...printsOf(a).flatMap((print): NamedSheet[] =>
      print.ok ? [{ name: print.value.name, sheet: (number, asked) => printSheet(a, print.value, number, asked) }] : [],
    ),
  ];
};

const printSheet = (a: Adjuster, print: Print, number: string, asked: Asked): Result<PaperSheet> => {
  const { shape, name } = print;
  if ('part' in shape) return partSheet(shape.part, number, asked, WORDS.other[name]);
  return drawnSheet(
    {
      name: WORDS.other[name],
      material: WORDS.material('plastic'),
      face: [shape.plate.outline, ...shape.plate.holes].map((ring) => [...ring, ring[0] as Spot]),
      // Its notches would be a grey edge.
      side: name === 'knob' ? sideBox(shape.plate) : seenPlate(shape.plate, Math.PI / 2),
      lengths: name === 'spring' ? lengthsOf(a) : [],
      centres: centresOf(name, shape.plate),
      rows: name === 'spring' ? springRows(a, asked) : plateRows(a, name, shape.plate, asked),
      printed: true,
    },
    number,
    asked,
  );
};

/** Of the openings of arm and plate; of the whole outline else. */
const centresOf = (name: PrintName, { outline, holes }: Plate): readonly number[] =>
  name === 'arm' || name === 'foot' ? holes.map(middleOf) : [middleOf(outline)];

const sideBox = ({ outline, height }: Plate): readonly SeenLine[] => {
  const ys = outline.map(([, y]) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  return [
    [
      [-height / 2, low],
      [height / 2, low],
      [height / 2, high],
      [-height / 2, high],
      [-height / 2, low],
    ],
  ];
};

/** A length of the face that is dimensioned beside the whole. */
interface Length {
  readonly from: number;
  readonly to: number;
}

interface Sheeted {
  readonly name: string;
  readonly material: string;
  readonly face: readonly SeenLine[];
  readonly side: readonly SeenLine[];
  readonly lengths: readonly Length[];
  /** Where its centre lines stand. */
  readonly centres: readonly number[];
  /** Lines of the table beside it. */
  readonly rows: readonly string[];
  readonly printed: boolean;
}

/** From hold to hold, of a spring that nothing pulls. */
const lengthsOf = (a: Adjuster): readonly Length[] => {
  const spring = springAt(a, standing(a, 0));
  if (!spring || spring.drawn.form.shape === 'strap') return [];
  return [{ from: 0, to: freeLength(spring.drawn.form) + 2 * spring.drawn.reach }];
};

const formRows = (a: Adjuster, { view }: Asked): readonly string[] => {
  const drawn = a.springs?.drawn;
  if (!drawn) return [];
  const { form } = drawn;
  const size = (x: number) => plainSize(x, view);
  const of = WORDS.data;
  switch (form.shape) {
    case 'meander':
      return [of.meander(form.m), of.leg(size(form.L)), of.connector(size(form.p)), of.strip(size(form.t))];
    case 'strap':
      return [of.strap, of.span(size(form.l)), of.strip(size(form.t))];
    case 'coil':
      return [
        of.wire(size(form.t)),
        of.mean(size(form.D)),
        of.outside(size(form.D + form.t)),
        of.turns(numeral(form.turns)),
      ];
    default:
      return [
        of.ring(form.cells, form.shape),
        of.radius(size(form.R)),
        ...(form.h > 0 ? [of.straight(size(2 * form.h))] : []),
        of.strip(size(form.t)),
      ];
  }
};

const springRows = (a: Adjuster, asked: Asked): readonly string[] => {
  const { springs } = a;
  if (!springs?.drawn) return [];
  const { view } = asked;
  const force = (x: number) => show(x, { shown: 'force', digits: 3 }, view);
  const size = (x: number) => plainSize(x, view);
  const one = (n: number) => (springForce(a, n) ?? 0) / springs.count;
  const { length } = springs.drawn;
  const of = WORDS.data;
  const ends = [a.anticlockwise.n, a.clockwise.n].map((n) => ({ n, f: one(n) })).sort((p, q) => p.f - q.f);
  return [
    WORDS.data.title,
    ...formRows(a, asked),
    ...(length > 0 && springs.force !== undefined
      ? [of.free(size(length - stretchAt(a, 0))), of.mark(size(length), force(one(0)))]
      : []),
    ...(springs.force === undefined ? [] : [of.between(force(ends[0]?.f ?? 0), force(ends[1]?.f ?? 0))]),
    ...(springs.rate === undefined
      ? []
      : [of.rate(show(springs.rate / springs.count, { shown: 'N/mm', digits: 3 }, view))]),
    of.modulus(show(springs.drawn.modulus, { shown: 'MPa', digits: 4 }, view)),
    of.count(springs.count),
  ];
};

const plateRows = (a: Adjuster, name: PrintName, plate: Plate, { view }: Asked): readonly string[] => {
  const spans = plate.holes.map((ring) =>
    [0, 1].map((k) => {
      const along = ring.map((p) => p[k] as number);
      return Math.max(...along) - Math.min(...along);
    }),
  );
  const size = (x: number) => plainSize(x, view);
  const [first, second] = spans as [number[] | undefined, number[] | undefined];
  if (name === 'knob' && a.divisions !== undefined)
    return [WORDS.data.hexagon(size(first?.[1] ?? 0)), WORDS.data.marks(a.divisions)];
  return [
    ...(first ? [WORDS.data.opening(size(first[0] ?? 0), size(first[1] ?? 0))] : []),
    ...(second
      ? [
          name === 'foot'
            ? WORDS.data.hole(size(second[1] ?? 0))
            : WORDS.data.slot(size(second[0] ?? 0), size(second[1] ?? 0)),
          WORDS.data.apart(size(-middleOf(plate.holes[1] ?? []))),
        ]
      : []),
  ];
};

const middleOf = (ring: readonly Spot[]): number => {
  const xs = ring.map(([x]) => x);
  return (Math.max(...xs) + Math.min(...xs)) / 2;
};

/** A coil from the side, its table beside it. */
const coilSheet = (a: Adjuster, form: CoilForm, number: string, asked: Asked): Result<PaperSheet> => {
  const between = (a.springs?.drawn?.length ?? 0) - stretchAt(a, 0);
  const { open } = springFace(form, between, 0);
  const low = (between - coiledLength(form, 0)) / 2;
  return drawnSheet(
    {
      name: WORDS.other.spring,
      material: WORDS.data.steel,
      face: open,
      side: [],
      lengths: [{ from: low, to: low + coiledLength(form, 0) }],
      centres: [0],
      rows: springRows(a, asked),
      printed: false,
    },
    number,
    asked,
  );
};

const spanOf = (lines: readonly SeenLine[], k: 0 | 1): readonly [number, number] => {
  const along = lines.flat().map((p) => p[k]);
  return along.length === 0 ? [0, 0] : [Math.min(...along), Math.max(...along)];
};

const BESIDE = 34;
const TABLE = 74;
const GAP = 24;
const ROW = 1.6 * LETTERS;

const drawnSheet = (d: Sheeted, number: string, asked: Asked): Result<PaperSheet> => {
  const { paper, view, block } = asked;
  const [width, height] = PAPERS[paper];
  const room = roomOn(PAPERS[paper], 0);
  const [left, right] = spanOf(d.face, 0);
  const [low, high] = spanOf(d.face, 1);
  const [near, far] = spanOf(d.side, 0);
  const thick = far - near;
  const gap = thick > 0 ? GAP : 0;
  const scale = scaleFor(
    (s) =>
      BESIDE + (right - left + thick) * s + gap + TABLE <= room.right - room.left &&
      (high - low) * s + 46 <= room.top - room.bottom,
    d.name,
    paper,
    high - low,
  );
  if (!scale.ok) return scale;
  const s = scale.value;
  const free = room.right - room.left - (BESIDE + (right - left + thick) * s + gap + TABLE);
  const x = room.left + free / 2 + BESIDE - left * s;
  const y = room.bottom + 26 + (room.top - room.bottom - 46 - (high - low) * s) / 2 - low * s;
  const place = ([u, v]: Spot): Spot => [x + u * s, y + v * s];
  const asideBy = x + right * s + gap - near * s;
  const beside = ([u, v]: Spot): Spot => [asideBy + u * s, y + v * s];
  const size = (v: number) => plainSize(v, view);
  const columns = [...d.lengths, { from: low, to: high }].filter(
    ({ from, to }, i, all) => all.findIndex((o) => Math.abs(o.to - o.from - (to - from)) < 1e-6) === i,
  );
  // Down to the lower edge of the views at most: sizes stand under them.
  const tableTop = Math.max(y + high * s, y + low * s + d.rows.length * ROW);
  const tableAt = x + (right + thick) * s + gap + 12;
  const marks: Mark[] = [
    ...d.face.map((line) => wide(...line.map(place))),
    ...d.side.map((line) => wide(...line.map(beside))),
    ...d.centres.flatMap((c) => chain(place([c, low - 4 / s]), place([c, high + 4 / s]))),
    ...(d.centres.length > 1 ? chain(place([left - 4 / s, 0]), place([right + 4 / s, 0])) : []),
    ...columns.flatMap(({ from, to }, i) =>
      upright(size(to - from), x + left * s - 12 - i * 9, y + from * s, y + to * s, x + left * s),
    ),
    ...level(size(right - left), y + low * s - 10, x + left * s, x + right * s, y + low * s),
    ...(thick > 0 ? level(size(thick), y + low * s - 10, asideBy + near * s, asideBy + far * s, y + low * s) : []),
    ...d.rows.map((words, i) => text(words, [tableAt, tableTop - LETTERS - i * ROW])),
    ...(d.printed ? WORDS.printNotes : []).map((words, i) => text(words, [room.left + 2, room.bottom - 6 - i * 5])),
    ...frameOf(
      paper,
      block,
      {
        name: nameOn(asked, d.name),
        material: d.material,
        scale: s,
        units: view === 'inch' ? 'in' : 'mm',
        paper,
        sheet: number,
      },
      [],
    ),
  ];
  return good({
    marks,
    width,
    height,
    scale: scaleWords(s),
    stated: columns.length + 1 + (thick > 0 ? 1 : 0),
    assumed: 0,
    listed: 0,
    doubtful: [],
  });
};
