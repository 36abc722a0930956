/** Sheets for the shop: what stands on them, that it stands free, and that both forms of file hold it. */
import { describe, expect, it } from 'vitest';
import { type Adjuster, partsOf, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { partsListOf } from '../../widgets/assembly/adjuster/parts-list.ts';
import { postOf } from '../../widgets/assembly/adjuster/post.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { hatch, LETTERS, type Mark, paperDxf, paperSvg } from '../../widgets/assembly/files/paper.ts';
import { springsOf } from '../../widgets/figures/kit/adjuster-extras.ts';
import { assemblySheet } from '../../widgets/figures/part-drawings/assembly-sheet.ts';
import { partDrawings } from '../../widgets/figures/part-drawings/part-drawings.ts';
import { otherSheets } from '../../widgets/figures/part-drawings/print-sheet.ts';
import { PAPERS } from '../../widgets/figures/part-drawings/sheet-of-paper.ts';
import { type PaperSheet, partSheet } from '../../widgets/figures/part-drawings/sheets.ts';
import { readTitleBlock } from '../../widgets/input/title-block.ts';
import { adjustersIn } from '../../widgets/site/adjusters.ts';
import { FOLDER } from '../support/chapters.ts';
import { canReadDxf, readDxf } from '../support/dxf-reader.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const block = valueIn(readTitleBlock('number = RS-01 | revision = A <b> | tolerance = ISO 2768-mK'));
type Paper = keyof typeof PAPERS;
const BOOK = [...adjustersIn(FOLDER).adjusters.entries()].map(
  ([name, text]) => [name, valueIn(readAdjuster(String(text)))] as const,
);

const sheetsOf = (
  name: string,
  paper: Paper,
  view: 'metric' | 'inch' = 'metric',
): readonly (readonly [string, PaperSheet])[] => {
  const a = BOOK.find(([n]) => n === name)?.[1];
  if (!a) throw new Error(name);
  const asked = { paper, block, view };
  return [
    ['assembly', valueIn(assemblySheet(a, '1 of 4', asked))],
    ...partsOf(a).map((p) => [p.role, valueIn(partSheet(p, '2 of 4', asked))] as const),
  ];
};
const wordsOn = (sheet: PaperSheet) => sheet.marks.flatMap((m) => (m.kind === 'text' ? [m.text] : []));

/** Letters as boxes, half a millimetre a point wide; those that run up the sheet turned. */
const boxes = (sheet: PaperSheet) =>
  sheet.marks.flatMap((m) => {
    if (m.kind !== 'text') return [];
    const long = 0.5 * LETTERS * m.text.length;
    const back = m.anchor === 'start' ? 0 : m.anchor === 'middle' ? long / 2 : long;
    const [x, y] = m.at;
    return [
      m.turned
        ? { words: m.text, left: x - 0.7 * LETTERS, right: x, low: y - back, high: y - back + long }
        : { words: m.text, left: x - back, right: x - back + long, low: y, high: y + 0.7 * LETTERS },
    ];
  });

/** All letters within the frame, and none on others. */
const standFree = (sheet: PaperSheet, of: string): void => {
  const all = boxes(sheet);
  for (const [i, a] of all.entries()) {
    const at = `${of}: ${a.words}`;
    expect(a.left, at).toBeGreaterThan(19);
    expect(a.right, at).toBeLessThan(sheet.width - 9);
    expect(a.low, at).toBeGreaterThan(9);
    expect(a.high, at).toBeLessThan(sheet.height - 9);
    for (const b of all.slice(i + 1))
      expect(
        Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.2 &&
          Math.min(a.high, b.high) - Math.max(a.low, b.low) > 0.2,
        `${at} on ${b.words}`,
      ).toBe(false);
  }
};

describe.each(BOOK.map(([name]) => name))('the sheets of the %s', (name) => {
  it.each(Object.keys(PAPERS) as Paper[])(
    'on %s stand within their frame, with no letters on letters, in millimetres and inches',
    (paper) => {
      for (const view of ['metric', 'inch'] as const)
        for (const [what, sheet] of sheetsOf(name, paper, view)) {
          standFree(sheet, `${what} ${view}`);
          const places = sheet.marks.flatMap((m) => (m.kind === 'line' ? m.points : []));
          expect(Math.min(...places.map(([x]) => x))).toBeGreaterThanOrEqual(20 - 1e-9);
          expect(Math.max(...places.map(([x]) => x))).toBeLessThanOrEqual(sheet.width - 10 + 1e-9);
        }
    },
  );
});

describe('the sheets of what is printed or bought besides', () => {
  const RISER =
    'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | lock = key at 22 mm, clearance 0.1 mm | divider = knob 50 | springs = 2 at 17 mm, 12 N, ';
  const sheetsFor = (drawing: string, paper: Paper, view: 'metric' | 'inch' = 'metric') =>
    otherSheets(valueIn(readAdjuster(RISER + drawing))).map(
      ({ name, sheet }) => [name, valueIn(sheet('5 of 8', { paper, block, view }))] as const,
    );
  const MEANDER =
    'meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa';
  it.each([
    MEANDER,
    'row of 3 rings, radius 5.2 mm, strip 0.9 mm, high 10 mm, length 44 mm, modulus 2077 MPa',
    'row of 2 ovals, radius 4 mm, straights 9 mm, strip 1.35 mm, high 10 mm, length 44 mm, modulus 2077 MPa',
    'strap, span 27 mm, strip 1.35 mm, high 8 mm, modulus 2077 MPa',
    'coil of 5.25 turns, wire 0.8 mm, diameter 6.4 mm, length 40 mm, modulus 81370 MPa',
  ])('stand within their frame, with no letters on letters: %s', (drawing) => {
    for (const paper of ['A4 upright', 'Letter upright', 'A3 across'] as const)
      for (const view of ['metric', 'inch'] as const)
        for (const [what, sheet] of sheetsFor(drawing, paper, view)) {
          standFree(sheet, `${what} ${paper} ${view}`);
        }
  });
  it('are those of spring, arm, post with its plate, and knob, each with what it is made by', () => {
    const sheets = sheetsFor(MEANDER, 'A4 upright');
    expect(sheets.map(([name]) => name)).toEqual(['spring', 'arm', 'foot', 'post', 'knob']);
    const [spring, arm, plate, post, knob] = sheets.map(([, sheet]) => wordsOn(sheet));
    for (const words of [
      'meander, 8 half waves',
      'leg 20',
      'connector 4.2',
      'strip 2.7 thick',
      '2 needed',
      '10',
      '22.7',
    ])
      expect(spring).toContain(words);
    expect(arm?.some((w) => w.startsWith('slot 7.1 × 6.1'))).toBe(true);
    expect(arm).toContain('22 from centre to centre');
    expect(plate).toContain('22 from centre to centre');
    expect(post).toContain('⌀6');
    expect(knob).toContain('50 marks in the rim');
  });
  it('draw a coil by the table of its data', () => {
    const [coil] = sheetsFor(
      'coil of 5.25 turns, wire 0.8 mm, diameter 6.4 mm, length 40 mm, modulus 81370 MPa',
      'A4 upright',
    );
    const words = wordsOn(coil?.[1] as PaperSheet);
    for (const said of ['wire ⌀0.8', 'mean diameter 6.4', 'outside diameter 7.2', '5.25 turns that work'])
      expect(words).toContain(said);
    // Its coils closed: one more than works, each a wire.
    expect(words).toContain('5');
  });
});

describe('a sheet of a part', () => {
  const turned = sheetsOf('riser', 'A4 upright')[2]?.[1] as PaperSheet;
  it('tells the shop where a blind thread leaves its tap too little run-out, and no part else', () => {
    // Body 18 less thread 15 and the cone of a drill of 8.376 in nine tenths of it.
    expect(wordsOn(turned)).toContain('run-out 0.1 (usual: 6)');
    expect(turned.doubtful).toHaveLength(1);
    for (const [, sheet] of sheetsOf('riser', 'A4 upright').filter(([role]) => role !== 'turned'))
      expect(sheet.doubtful).toEqual([]);
  });
  it('has what was stated as a size, its threads by class, depth and drill, and its title block', () => {
    const words = wordsOn(turned);
    for (const said of [
      '15',
      '18',
      'AF 17',
      '3/8-16 UNC (2A)',
      'M10×1.5 (6H) × 15',
      'tap drill ⌀8.4',
      'RS-01',
      'ISO 2768-mK',
      'steel',
      '2 : 1',
    ])
      expect(words).toContain(said);
    // A bore that no row states is told with its length.
    const sleeve = wordsOn(sheetsOf('stop', 'A4 upright')[2]?.[1] as PaperSheet);
    expect(sleeve.some((w) => /^\(⌀8\.\d+ × 15\.2\)$/.test(w))).toBe(true);
    // Its height in all follows from the rest.
    expect(words).toContain('(33)');
  });
  it('dimensions each length as long as it says, by its scale', () => {
    // A dimension line ends in two heads that point away from each other.
    const heads = turned.marks.flatMap((m) =>
      m.kind === 'head' && Math.abs(Math.cos(m.towards)) < 1e-9 ? [m.tip] : [],
    );
    const lengths = new Set(
      heads.flatMap(([x, y]) =>
        heads
          .filter(([x1, y1]) => Math.abs(x - x1) < 1e-9 && y1 > y)
          .map(([, y1]) => Number(((y1 - y) / 2).toFixed(6))),
      ),
    );
    for (const said of [15, 18, 33, 17]) expect([...lengths]).toContain(said);
  });
  it('a part too large for its paper is told so', () => {
    const base = BOOK.find(([n]) => n === 'foot')?.[1].base;
    const step = base?.outer[0];
    if (!base || !step) throw new Error('no base');
    const mast = { ...base, outer: [{ ...step, to: 40_000 }] };
    expect(reasonIn(partSheet(mast, '1', { paper: 'A4 upright', block, view: 'metric' }))).toContain('larger paper');
  });
});

describe('the sheet of the assembly', () => {
  const KEYED =
    'base = tapped block M10x1.5-6H, 20 mm | turned = spindle M10x1.5-6g 20 mm, 3/8-16 UNC-2A 25 mm | carried = nut 3/8-16 UNC-2B | lock = key at 18 mm | springs = 2 between base and carried, 8 N, 0.5 N/mm, at 25 mm | tip = flat';
  const sheetFor = (text: string) => {
    const a = valueIn(readAdjuster(text));
    return { a, sheet: valueIn(assemblySheet(a, '1 of 4', { paper: 'A4 upright', block, view: 'metric' })) };
  };
  const balloonsOn = (sheet: PaperSheet) => sheet.marks.filter((m) => m.kind === 'arc' && m.r === 4.5).length;
  const lines = (sheet: PaperSheet) => sheet.marks.flatMap((m) => (m.kind === 'line' ? [m.points] : []));

  it('draws, numbers and lists ball, springs and lock, as often as the list of parts has them', () => {
    for (const [name, text] of [
      ['riser', 'ball ⌀8.334'],
      ['foot', 'ball ⌀6.35'],
    ] as const) {
      const sheet = sheetsOf(name, 'A4 upright')[0]?.[1] as PaperSheet;
      const a = BOOK.find(([n]) => n === name)?.[1];
      expect(wordsOn(sheet)).toContain(text);
      expect(balloonsOn(sheet)).toBe(partsListOf(a as Adjuster).parts.length);
    }
    const { a, sheet } = sheetFor(KEYED);
    expect(partsListOf(a).parts.map((p) => p.count)).toEqual([1, 1, 1, 2, 1, 1]);
    expect(balloonsOn(sheet)).toBe(6);
    expect(sheet.listed).toBe(6);
    expect(wordsOn(sheet).join(' ')).toMatch(
      /spring, base to carried part; all: 8\.00.N, 0\.500.N\/mm.*key, 18 from the axis/,
    );
  });

  it('has springs and post where the figure has them, to its scale', () => {
    const { a, sheet } = sheetFor(KEYED);
    const now = standing(a, 0);
    const [seen] = springsOf(a, now);
    const s = Number(sheet.scale.split(' : ')[0]) / Number(sheet.scale.split(' : ')[1]);
    const drawn = lines(sheet).filter((points) => points.length === seen?.length);
    expect(drawn.length).toBe(2);
    const spans = (points: readonly (readonly [number, number])[], k: 0 | 1) =>
      Math.max(...points.map((p) => p[k])) - Math.min(...points.map((p) => p[k]));
    for (const k of [0, 1] as const) expect(spans(drawn[0] as never, k)).toBeCloseTo(s * spans(seen as never, k), 6);
    const post = postOf(a);
    expect(lines(sheet).some((p) => p.length === 4 && Math.abs(spans(p, 0) - 2 * s * (post?.half ?? 0)) < 1e-6)).toBe(
      true,
    );
  });

  it('draws no lock that is not stated, and says so', () => {
    const words = wordsOn(sheetFor(KEYED.replace(/lock = key at 18 mm \| springs[^|]*\| /, '')).sheet);
    expect(words.join(' ')).toContain('No lock is stated');
    expect(words.some((w) => w.startsWith('key') || w.startsWith('post'))).toBe(false);
  });
});

describe('the files of a sheet', () => {
  const sheet = sheetsOf('foot', 'A3 across')[0]?.[1] as PaperSheet;
  it('SVG has millimetres one to one, black and white, and no markup of the reader', () => {
    const svg = paperSvg(sheet.marks, sheet.width, sheet.height, 'a "b" <c>');
    expect(svg).toContain('width="420mm" height="297mm" viewBox="0 0 420 297"');
    expect(new Set(svg.match(/#[0-9a-f]{3,6}/g))).toEqual(new Set(['#fff', '#000']));
    expect(svg).not.toMatch(/<c>|<b>|NaN|Infinity|undefined/);
  });
  it('DXF is pairs of code and value, of what R12 has, with a line of 100 mm', () => {
    const rows = paperDxf(sheet.marks).trimEnd().split('\r\n');
    const pairs = rows.flatMap((code, i) => (i % 2 === 0 ? [[Number(code), rows[i + 1] ?? ''] as const] : []));
    expect(pairs.every(([code]) => Number.isInteger(code))).toBe(true);
    const kinds = new Set(pairs.filter(([code]) => code === 0).map(([, value]) => value));
    expect(
      [...kinds].every((k) => ['SECTION', 'ENDSEC', 'EOF', 'LINE', 'ARC', 'CIRCLE', 'SOLID', 'TEXT'].includes(k)),
    ).toBe(true);
    expect(pairs.filter(([code]) => code === 1).every(([, value]) => /^[\x20-\x7e]*$/.test(value))).toBe(true);
    const check = sheet.marks.find(
      (m) =>
        m.kind === 'line' &&
        m.points.length === 2 &&
        Math.abs((m.points[1]?.[0] ?? 0) - (m.points[0]?.[0] ?? 0) - 100) < 1e-9,
    );
    expect(check).toBeDefined();
  });
  it.skipIf(!canReadDxf)(
    'DXF is read without a fault by an open reader of it (ezdxf), in millimetres of the paper',
    () => {
      const read = readDxf(paperDxf(sheet.marks));
      expect(read.faults).toBe(0);
      expect(read.kinds.LINE).toBeGreaterThan(50);
      // The frame: 20 mm to file it by, 10 mm else.
      expect([read.left, read.right, read.bottom, read.top]).toEqual([20, sheet.width - 10, 10, sheet.height - 10]);
    },
  );
});

describe('hatching', () => {
  it('covers an area by lines a gap apart, and leaves holes free', () => {
    const square = (r: number) =>
      [
        [-r, -r],
        [r, -r],
        [r, r],
        [-r, r],
      ] as const;
    for (const other of [false, true]) {
      const lines = hatch([square(50), square(20)], 2.5, other);
      const length = (m: Mark) =>
        m.kind === 'line'
          ? Math.hypot(
              (m.points[1]?.[0] ?? 0) - (m.points[0]?.[0] ?? 0),
              (m.points[1]?.[1] ?? 0) - (m.points[0]?.[1] ?? 0),
            )
          : 0;
      expect(lines.reduce((sum, m) => sum + length(m), 0) * 2.5).toBeCloseTo(100 ** 2 - 40 ** 2, -2);
      for (const m of lines)
        if (m.kind === 'line') {
          const [a, b] = m.points as unknown as [readonly [number, number], readonly [number, number]];
          const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          expect(Math.max(Math.abs(x), Math.abs(y))).toBeGreaterThan(19.9);
        }
    }
  });
});

describe('the title block', () => {
  it('is read a field a row, and says what it can’t take', () => {
    expect(block.revision).toBe('A <b>');
    expect(reasonIn(readTitleBlock('colour = red'))).toContain('number');
    expect(reasonIn(readTitleBlock('number = 1 | number = 2'))).toContain('twice');
    expect(reasonIn(readTitleBlock(`drawn = ${'x'.repeat(80)}`))).toContain('longer');
  });
});

describe('the name in the title block', () => {
  it('is that of the adjuster and of the part, and stays within its cell', () => {
    const nut = valueIn(
      readAdjuster('base = coupling nut M10, 30 mm | turned = screw M10, thread 25 mm, head 8 mm'),
    ).base;
    const nameFor = (of: string) =>
      wordsOn(valueIn(partSheet(nut, '2 of 4', { paper: 'A4 upright', block, view: 'metric', of }))).find((w) =>
        w.includes('coupling nut'),
      ) ?? '';
    expect(nameFor('Left foot')).toMatch(/^Left foot, .*coupling nut/);
    expect(nameFor('')).not.toContain(', coupling nut,');
    const long = nameFor('W'.repeat(40));
    expect(long).toContain('coupling nut');
    // Letters of ISO 3098 take 0.56 of their height at most here; the cell is 110 mm wide.
    expect(long.length * 0.56 * LETTERS).toBeLessThanOrEqual(110);
  });
});

describe('the choice of a sheet', () => {
  it('does not offer sheets that the adjuster has no part for, and offers all that it has', () => {
    const absentOf = (adjuster: string) =>
      partDrawings.absent({
        threads: {},
        values: {},
        choices: { paper: 'A4 upright', sheet: 'assembly' },
        texts: { adjuster, title: '' },
      } as never).sheet;
    const foot = 'base = coupling nut M10, 30 mm | turned = adapter M10 external 20 mm, 3/8-16 UNC internal 20 mm';
    const whole = `${foot} | carried = socket screw 3/8-16 UNC, thread 25 mm, head 9.5 mm | lock = key at 22 mm, clearance 0.1 mm`;
    expect(absentOf(whole)).toEqual(['spring', 'knob']);
    const free = whole.replace(/lock = .*$/, 'lock = none');
    expect(absentOf(free)).toEqual(['spring', 'arm', 'post', 'foot', 'knob']);
    expect(absentOf('rubbish')).toEqual([]);
  });
});
