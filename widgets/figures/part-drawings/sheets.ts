/** One sheet: a part with its views, sizes and thread notes, or the assembly with its balloons and list of parts, at the largest scale of the standard that fits the paper. */
import { WORDS } from '#words/figures/part-drawings.ts';
import { type Adjuster, type Fitted, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { engagedAt } from '../../assembly/adjuster/joint.ts';
import {
  heightOf,
  type Part,
  type Role,
  reach,
  type Size,
  type Step,
  type ThreadEnd,
} from '../../assembly/adjuster/part.ts';
import { chain, LETTERS, type Mark, type Spot, text, thin } from '../../assembly/files/paper.ts';
import { at, bad, diameters, fitOfThread, good, nearestDrills, type Result } from '../../engine/index.ts';
import { designationOfSide } from '../../input/designation-sides.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import type { TitleBlock } from '../../input/title-block.ts';
import { leader, level, upright } from './dimensions.ts';
import { endOf, frontOf, halfWidth, throughOf, widestHalf } from './part-view.ts';
import { frameOf, type ListRow, PAPERS, type Room, roomOn, SCALES, scaleWords } from './sheet-of-paper.ts';

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
}

export interface Asked {
  readonly paper: keyof typeof PAPERS;
  readonly block: TitleBlock;
  readonly view: UnitView;
}

/** A number of a drawing: its unit stands in the title block. */
const plainSize = (x: number, view: UnitView): string =>
  view === 'inch' ? (x / 25.4).toFixed(4) : String(Number(x.toFixed(3)));

const COLUMN = 9;
const FIRST = 12;
const NOTES = 62;
const GAP = 20;

const scaleFor = (fits: (scale: number) => boolean, part: string, paper: string, length: number): Result<number> => {
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
  return [
    through ? WORDS.through(words) : WORDS.depth(words, plainSize(to - from, view)),
    ...(drill === undefined ? [] : [WORDS.drill(drill)]),
  ];
};

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

export const partSheet = (part: Part, number: string, asked: Asked): Result<PaperSheet> => {
  const { paper, view, block } = asked;
  const [width, height] = PAPERS[paper];
  const room = roomOn(PAPERS[paper], 0);
  const [high, half] = [heightOf(part), widestHalf(part)];
  const sizes = along(part);
  const dims = FIRST + COLUMN * sizes.length;
  const across = part.sizes.filter((s) => s.from === undefined);
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
  const ends = [part.above, part.below].flatMap((e) => (e ? [e] : []));
  const shelves = ends.map((e) => z((e.from + e.to) / 2));
  // Two notes stand two lines apart or more.
  if (shelves.length === 2 && (shelves[0] as number) - (shelves[1] as number) < 5 * LETTERS)
    shelves.splice(0, 2, (shelves[0] as number) + 1.5 * LETTERS, (shelves[1] as number) - 1.5 * LETTERS);
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
    ...ends.flatMap((e, i) => {
      const r = e.gender === 'external' ? e.thread.d / 2 : diameters(e.thread).d1 / 2;
      return leader(noteOf(part, e, view), [x + r * s, z((e.from + e.to) / 2)], [x + half * s + 10, at(shelves, i)]);
    }),
    ...notesAt(room),
    ...frameOf(
      paper,
      block,
      {
        name: WORDS.part(part.role, part.kind),
        material: part.material,
        scale: s,
        units: view === 'inch' ? 'in' : 'mm',
        paper,
        sheet: number,
      },
      [],
    ),
  ];
  const all = [...sizes, ...across];
  return good({
    marks,
    width,
    height,
    scale: scaleWords(s),
    stated: all.filter((d) => d.stated).length + ends.length,
    assumed: all.filter((d) => !d.stated).length,
    listed: 0,
  });
};

/** In a joint the screw stands before its nut: the nut is drawn at the crests of the screw where that is, and as tapped beyond it. */
const asEngaged = (
  part: Part,
  joints: readonly { readonly end: ThreadEnd; readonly from: number; readonly to: number }[],
): Part => ({
  ...part,
  bores: part.bores.flatMap((bore): Step[] => {
    const joint = joints.find(({ end }) => end.thread === bore.thread && Math.abs(end.from - bore.from) < 1e-9);
    if (!bore.thread || !joint || !(joint.to > joint.from)) return [bore];
    const { thread: _, ...plain } = bore;
    return [
      ...(joint.from > bore.from + 1e-9 ? [{ ...bore, to: joint.from }] : []),
      { ...plain, from: joint.from, to: joint.to },
      ...(joint.to < bore.to - 1e-9 ? [{ ...bore, from: joint.to }] : []),
    ];
  }),
});

/** What of a ball is seen over the part that it is set in, below the top of it. */
const overRim = (
  { diameter, stands }: { readonly diameter: number; readonly stands: number },
  top: Spot,
  scale: number,
): Mark => {
  const r = diameter / 2;
  const rim = (180 / Math.PI) * Math.asin(Math.max(-1, Math.min(1, (r - stands) / r)));
  return { kind: 'arc', centre: [top[0], top[1] - r * scale], r: r * scale, from: rim, to: 180 - rim, wide: true };
};

export const assemblySheet = (a: Adjuster, number: string, asked: Asked): Result<PaperSheet> => {
  const { paper, view, block } = asked;
  const [width, height] = PAPERS[paper];
  const parts = partsOf(a);
  const now = standing(a, 0);
  const list: ListRow[] = [
    ...parts.map(
      (p, i): ListRow => [
        String(i + 1),
        String(p.count),
        [
          WORDS.part(p.role, p.kind),
          ...[p.below, p.above].flatMap((e) => (e ? [designationOfSide(e.thread, e.gender)] : [])),
        ].join(', '),
        p.material,
      ],
    ),
    ...(a.tip.kind === 'ball'
      ? [
          [
            String(parts.length + 1),
            '1',
            `${WORDS.ball} ${WORDS.round(plainSize(a.tip.diameter, view))}`,
            '',
          ] as ListRow,
        ]
      : []),
  ];
  const room = roomOn(PAPERS[paper], list.length + 1);
  const half = Math.max(...parts.map(widestHalf), a.tip.kind === 'ball' ? a.tip.diameter / 2 : 0);
  const tops = parts.map((p) => now.at[p.role] + heightOf(p));
  const [low, top] = [Math.min(0, ...parts.map((p) => now.at[p.role])), Math.max(now.height, ...tops)];
  const side = 30;
  const scale = scaleFor(
    (s) => 2 * side + 2 * half * s + 20 <= room.right - room.left && (top - low) * s + 34 <= room.top - room.bottom,
    WORDS.assembly,
    paper,
    top - low,
  );
  if (!scale.ok) return scale;
  const s = scale.value;
  const x = (room.left + room.right) / 2;
  const y = room.bottom + 18 + (room.top - room.bottom - 30 - (top - low) * s) / 2 - low * s;
  const engaged = (name: 'A' | 'C', { joint }: Fitted) => {
    const [lower, upper]: readonly [Role, Role] = name === 'A' ? ['base', 'turned'] : ['turned', 'carried'];
    const v = now.at[upper] - now.at[lower];
    const from = Math.max(joint.lower.from, joint.upper.from + v);
    const long = engagedAt(joint, v);
    return joint.lower.gender === 'internal'
      ? { role: lower, end: joint.lower, from, to: from + long }
      : { role: upper, end: joint.upper, from: from - v, to: from - v + long };
  };
  const nuts = [engaged('A', a.A), ...(a.C ? [engaged('C', a.C)] : [])];
  const inside = (z: number, except: Part): boolean =>
    parts.some((p) => p !== except && z > now.at[p.role] + 1e-9 && z < now.at[p.role] + heightOf(p) - 1e-9);
  const drawn = parts.flatMap((part, i) => {
    const up = now.at[part.role];
    return throughOf(
      asEngaged(
        part,
        nuts.filter((n) => n.role === part.role),
      ),
      { x, y: y + up * s, scale: s },
      i % 2 === 1,
      2.5 - 0.4 * i,
      (z) => inside(z + up, part),
    );
  });
  const ball = a.tip.kind === 'ball' ? [overRim(a.tip, [x, y + now.height * s], s)] : [];
  // Each points into what only it fills: the widest step of the part.
  const spots = parts.map((part): Spot => {
    const step = part.outer.reduce((best, o) => (halfWidth(o) > halfWidth(best) + 1e-9 ? o : best));
    return [x + 0.92 * halfWidth(step) * s, y + (now.at[part.role] + (step.from + step.to) / 2) * s];
  });
  if (a.tip.kind === 'ball') spots.push([x + 0.25 * a.tip.diameter * s, y + (now.height - 0.25 * a.tip.diameter) * s]);
  const order = spots.map((spot, i) => ({ spot, i })).sort((p, q) => p.spot[1] - q.spot[1]);
  let least = Number.NEGATIVE_INFINITY;
  const balloons = order.flatMap(({ spot, i }): Mark[] => {
    const height = Math.max(spot[1], least + 11);
    least = height;
    const centre: Spot = [x + half * s + 24, height];
    return [
      thin(spot, [centre[0] - 4.5, centre[1]]),
      { kind: 'arc', centre: spot, r: 0.5, from: 0, to: 360, wide: true },
      { kind: 'arc', centre, r: 4.5, from: 0, to: 360, wide: false },
      text(String(i + 1), [centre[0], centre[1] - LETTERS / 2 + 0.4], 'middle'),
    ];
  });
  const marks: Mark[] = [
    ...drawn,
    ...ball,
    ...chain([x, y + low * s - 4], [x, y + top * s + 4]),
    ...balloons,
    ...upright(WORDS.assumed(plainSize(now.height, view)), x - half * s - FIRST - 4, y, y + now.height * s, x - 2),
    text(WORDS.stroke(show(a.stroke, { shown: 'motion', digits: 3 }, view), numeral(a.turns, 3)), [
      room.left + 2,
      room.bottom - 6,
    ]),
    ...frameOf(
      paper,
      block,
      {
        name: a.name === '' ? `${WORDS.adjuster}, ${WORDS.assembly}` : `${a.name}, ${WORDS.assembly}`,
        material: '',
        scale: s,
        units: view === 'inch' ? 'in' : 'mm',
        paper,
        sheet: number,
      },
      list,
    ),
  ];
  return good({ marks, width, height, scale: scaleWords(s), stated: 0, assumed: 0, listed: list.length });
};
