/** Files of parts: closed and oriented nets, and forms that other programs read. Programs that are not on the machine are told as skipped. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { unzipSync } from 'fflate';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { partsOf, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { type Mesh, meshOf, meshVolume } from '../../widgets/assembly/adjuster/solid.ts';
import { crestsOf } from '../../widgets/assembly/adjuster/surface.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { fileName } from '../../widgets/assembly/files/file-name.ts';
import { dxfOf, type Outline, svgOf } from '../../widgets/assembly/files/outline-files.ts';
import { paperDxf, paperSvg, text } from '../../widgets/assembly/files/paper.ts';
import { stlOf } from '../../widgets/assembly/files/stl.ts';
import { modelXml, threeMfOf } from '../../widgets/assembly/files/three-mf.ts';
import { clipPlate } from '../../widgets/assembly/print/clip-plate.ts';
import { ladderOf, stripCoupon } from '../../widgets/assembly/print/coupons.ts';
import { printsOf } from '../../widgets/assembly/print/own-prints.ts';
import { type Plate, plateMesh, plateOutlines } from '../../widgets/assembly/print/plate.ts';
import { capPart, postPart } from '../../widgets/assembly/print/turned-prints.ts';
import { springPlate } from '../../widgets/assembly/spring/spring-plate.ts';
import { acrossOf, type MeanderForm, type OvalForm, type StrapForm } from '../../widgets/engine/index.ts';
import { outlinesOf } from '../../widgets/figures/part-files/outlines.ts';
import { calledOf } from '../../widgets/figures/printed-spring/printed-spring.ts';
import { canReadDxf, readDxf } from '../support/dxf-reader.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const SPRING: MeanderForm = { shape: 'meander', m: 4, L: 12, p: 3, stub: 1.5, t: 1.2 };
const HEIGHT = 5;
const adjuster = valueIn(
  readAdjuster(
    'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm',
  ),
);
const PRINTER = { holes: 0.2, outsides: 0.1, line: 0.45 };
const CLIP = {
  flats: 12.9,
  clearance: -0.1,
  arm: { length: 15, thickness: 2 },
  lip: { reach: 0.5, lean: Math.PI / 6 },
  height: 6,
  radius: 18,
  strip: { thickness: 1.2, height: 8 },
};
const OVAL: OvalForm = { shape: 'ring', cells: 3, R: 6, h: 0, t: 1 };
const STRAP: StrapForm = { shape: 'strap', l: 27, t: 1.35 };
const free = { high: HEIGHT, stretch: 0, reach: 0 };
const cap = valueIn(capPart({ flats: 12.9, clearance: -0.1, outside: 24, depth: 6 }, PRINTER));
const post = valueIn(postPart({ hole: 6, clearance: 0.2, length: 30, screw: 3 }, PRINTER));
const noThread = { crests: { below: 0, above: 0 } };
/** What an adjuster has to print besides its parts: a spring, an arm and a post for its lock, and a knob. */
const KEYED = valueIn(
  readAdjuster(
    'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | lock = key at 22 mm, clearance 0.1 mm | springs = 2 at 17 mm, 12 N, meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa | divider = knob 50',
  ),
);
const OWN = printsOf(KEYED).map(valueIn);
const PLATES: readonly (readonly [string, Plate])[] = [
  ['ladder', ladderOf(13, 0.05).plate],
  ['test strip', stripCoupon(60, 2, 10)],
  ['clip', valueIn(clipPlate(CLIP, PRINTER))],
  ['meander', springPlate({ ...free, form: SPRING })],
  [
    'meander of many waves, stretched',
    springPlate({ ...free, form: { ...SPRING, m: 12, p: 2.4, stub: 1.2 }, stretch: 4 }),
  ],
  ['meander with long ends', springPlate({ ...free, form: SPRING, reach: 6.5 })],
  ['rings', springPlate({ ...free, form: OVAL })],
  ['one ring, stretched', springPlate({ ...free, form: { ...OVAL, cells: 1 }, stretch: 1.5, reach: 3 })],
  ['ovals', springPlate({ ...free, form: { ...OVAL, shape: 'oval', h: 4 } })],
  ['ovals with a short straight', springPlate({ ...free, form: { ...OVAL, shape: 'oval', h: 0.3 } })],
  ['strap', springPlate({ ...free, form: STRAP })],
  ['strap, stretched', springPlate({ ...free, form: STRAP, stretch: 2 })],
  ...OWN.flatMap(({ name, shape }) => ('plate' in shape ? [[`own ${name}`, shape.plate] as const] : [])),
];
const MESHES: readonly (readonly [string, Mesh])[] = [
  ...PLATES.map(([name, plate]) => [name, plateMesh(plate)] as const),
  ['cap', meshOf(cap, noThread)],
  ['post', meshOf(post, noThread)],
  ...partsOf(adjuster).map((part) => [part.role, meshOf(part, { crests: crestsOf(adjuster)[part.role] })] as const),
];

const onMachine = (program: string): boolean => spawnSync(program, ['--version']).error === undefined;
const inFolder = <T>(work: (folder: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'files-'));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

it('writes the normal of a sliver in STL as nought, not as no number', () => {
  const mesh = { positions: new Float64Array([0, 0, 0, 1, 0, 0, 2, 0, 0]), triangles: new Uint32Array([0, 1, 2]) };
  const view = new DataView(stlOf(mesh).buffer);
  const floats = Array.from({ length: 12 }, (_, i) => view.getFloat32(84 + 4 * i, true));
  expect(floats).toEqual([0, 0, 0, 0, 0, 0, 1, 0, 0, 2, 0, 0]);
});

/** Shoelace. */
const area = (points: Outline['points']): number =>
  points.reduce((sum, [x, y], i) => {
    const [x1, y1] = points[(i + 1) % points.length] as readonly [number, number];
    return sum + (x * y1 - x1 * y) / 2;
  }, 0);

describe.each(MESHES)('the net of %s', (_, mesh) => {
  it('has every edge in two triangles, in opposite directions, no sliver of two corners, and holds a volume', () => {
    const edges = new Map<string, number>();
    const { triangles } = mesh;
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
      expect(new Set([a, b, c]).size).toBe(3);
      for (const [from, to] of [
        [a, b],
        [b, c],
        [c, a],
      ] as const)
        edges.set(`${from} ${to}`, (edges.get(`${from} ${to}`) ?? 0) + 1);
    }
    for (const [edge, count] of edges) {
      expect(count).toBe(1);
      expect(edges.get(edge.split(' ').reverse().join(' '))).toBe(1);
    }
    expect(Math.max(...triangles)).toBeLessThan(mesh.positions.length / 3);
    expect(meshVolume(mesh)).toBeGreaterThan(0);
  });

  it('is 84 bytes and 50 a triangle as STL, and its normals point outwards', () => {
    const bytes = stlOf(mesh);
    expect(bytes.length).toBe(84 + (50 * mesh.triangles.length) / 3);
    expect(new TextDecoder().decode(bytes.slice(0, 5))).not.toBe('solid');
    const view = new DataView(bytes.buffer);
    expect(view.getUint32(80, true)).toBe(mesh.triangles.length / 3);
    // Gauss: the flux of the place vector is three times the volume.
    let flux = 0;
    for (let at = 84; at < bytes.length; at += 50) {
      const f = Array.from({ length: 12 }, (_, i) => view.getFloat32(at + 4 * i, true));
      const [n, a, b, c] = [0, 3, 6, 9].map((i) => f.slice(i, i + 3)) as [number[], number[], number[], number[]];
      const [u, v] = [b, c].map((p) => p.map((x, i) => x - (a[i] as number))) as [number[], number[]];
      const cross = (i: number, j: number) => (u[i] as number) * (v[j] as number) - (u[j] as number) * (v[i] as number);
      const size = Math.hypot(cross(1, 2), cross(2, 0), cross(0, 1)) / 2;
      flux += size * n.reduce((sum, x, i) => sum + x * (a[i] as number), 0);
    }
    expect(flux / 3 / meshVolume(mesh)).toBeCloseTo(1, 4);
  });

  it('is 3MF of three parts, with millimetres, indices within its corners, and an item for its object', () => {
    const files = unzipSync(threeMfOf([{ name: 'a <b> & "c"', mesh }]));
    expect(Object.keys(files).sort()).toEqual(['3D/3dmodel.model', '[Content_Types].xml', '_rels/.rels']);
    const text = new TextDecoder().decode(files['3D/3dmodel.model']);
    expect(text).toContain('unit="millimeter"');
    expect(text).not.toContain('<b>');
    expect(text).not.toMatch(/NaN|Infinity|undefined|="-0"/);
    const { document } = parseHTML(`<html><body>${text.slice(text.indexOf('<model'))}</body></html>`);
    expect(document.querySelectorAll('vertex').length).toBe(mesh.positions.length / 3);
    expect(document.querySelectorAll('triangle').length).toBe(mesh.triangles.length / 3);
    expect(document.querySelector('item')?.getAttribute('objectid')).toBe(
      document.querySelector('object')?.getAttribute('id'),
    );
  });

  it.skipIf(!onMachine('xmllint'))('is valid by the schema of the core specification (xmllint)', () => {
    inFolder((folder) => {
      const file = join(folder, 'model.xml');
      writeFileSync(file, modelXml([{ name: 'part', mesh }]));
      const schema = resolve(import.meta.dirname, '../reference/3mf/core.xsd');
      const { status, stderr } = spawnSync('xmllint', ['--nonet', '--noout', '--schema', schema, file], {
        encoding: 'utf8',
      });
      expect(status, stderr.slice(0, 800)).toBe(0);
    });
  });

  it.skipIf(!onMachine('admesh'))('is closed by a mesh checker of the distribution (admesh)', () => {
    inFolder((folder) => {
      const file = join(folder, 'part.stl');
      writeFileSync(file, stlOf(mesh));
      const { stdout } = spawnSync('admesh', [file], { encoding: 'utf8' });
      const count = (name: string) => Number(new RegExp(`${name}\\s*:\\s*(\\d+)`).exec(stdout)?.[1]);
      expect(count('Number of parts'), stdout).toBe(1);
      expect(count('Backwards edges')).toBe(0);
      expect(count('Facets reversed')).toBe(0);
      expect(count('Facets added')).toBe(0);
      const volume = Number(/Volume\s*:\s*([\d.]+)/.exec(stdout)?.[1]);
      expect(volume / meshVolume(mesh)).toBeCloseTo(1, 3);
    });
  });
});

describe.each(PLATES)('the plate of %s', (_, plate) => {
  it('fills its outline less its holes, which lie inside it and do not cross', () => {
    const rings = plateOutlines(plate, 'x').map(({ points }) => points);
    const [outer, ...holes] = rings.map((points) => Math.abs(area(points))) as [number, ...number[]];
    const filled = outer - holes.reduce((sum, a) => sum + a, 0);
    expect(meshVolume(plateMesh(plate))).toBeCloseTo(filled * plate.height, 6);
    // No two sides of the outline or of a hole cross: a crossed outline has no inside to fill.
    const sides = rings.flatMap((ring) => ring.map((p, i) => [p, ring[(i + 1) % ring.length]] as const));
    type P = readonly [number, number];
    const turn = (a: P, b: P, c: P) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    const crossing = sides.filter(([a, b], i) =>
      sides.some(
        ([c, d], j) =>
          j > i &&
          turn(a, b as P, c) * turn(a, b as P, d as P) < -1e-9 &&
          turn(c, d as P, a) * turn(c, d as P, b as P) < -1e-9,
      ),
    );
    expect(crossing).toEqual([]);
  });
});

describe('printed parts with the offsets of a printer', () => {
  const at = (printer: typeof PRINTER) => valueIn(clipPlate(CLIP, printer)).outline;
  it('a clip is drawn wider inside by the offset of holes and thinner in its arms by that of outsides', () => {
    const none = { ...PRINTER, holes: 0, outsides: 0 };
    // Beside the flats, the inside of the upper arm is the lowest point above the axis that is not on a lip or the back.
    const inside = (printer: typeof PRINTER) =>
      Math.min(
        ...at(printer)
          .filter(([x, y]) => y > 0 && x > 3.6 && x < 3.8)
          .map(([, y]) => y),
      );
    expect(inside(none)).toBeCloseTo((12.9 - 0.1) / 2, 9);
    expect(inside(PRINTER) - inside(none)).toBeCloseTo(0.1, 9);
  });
  it('a cap and a post come out as asked once the printer has done its worst', () => {
    expect(2 * (cap.bores[0]?.r ?? 0) - PRINTER.holes).toBeCloseTo(12.8, 12);
    expect(2 * (cap.outer[0]?.r ?? 0) + PRINTER.outsides).toBeCloseTo(24, 12);
    expect(2 * (post.outer[1]?.r ?? 0) + PRINTER.outsides).toBeCloseTo(5.8, 12);
  });
  it('refuses what would not come out, and says what would', () => {
    expect(reasonIn(clipPlate({ ...CLIP, arm: { length: 9, thickness: 2 } }, PRINTER))).toContain('or longer');
    expect(reasonIn(clipPlate({ ...CLIP, radius: 10 }, PRINTER))).toContain('out or more');
    expect(reasonIn(clipPlate({ ...CLIP, arm: { length: 15, thickness: 0.3 } }, PRINTER))).toContain('thinner than');
    expect(reasonIn(capPart({ flats: 12.9, clearance: 0, outside: 15, depth: 6 }, PRINTER))).toContain('thinner than');
    expect(reasonIn(postPart({ hole: 3, clearance: 0.2, length: 9, screw: 2.5 }, PRINTER))).toContain('thinner than');
  });
  it('a ladder holds rungs a step apart, and walls between them that print', () => {
    const { rungs, plate, across } = ladderOf(13, 0.05);
    expect(rungs.map((r) => r.width)[7]).toBeCloseTo(13.35, 12);
    for (const [i, { at, width }] of rungs.entries()) {
      const next = rungs[i + 1];
      if (next) expect(next.at[0] - at[0] - (width + next.width) / Math.sqrt(3)).toBeGreaterThan(1.5);
      expect((across - width) / 2).toBeGreaterThan(1.5);
    }
    expect(Number.isInteger(across)).toBe(true);
    expect(plate.holes.length).toBe(rungs.length);
  });
});

describe('the outline of a meander', () => {
  const plate = springPlate({ ...free, form: SPRING });
  const { outline } = plate;
  it('has the area of its solid, and of its strip, corners and wedges worked by hand', () => {
    expect(area(outline) * HEIGHT).toBeCloseTo(meshVolume(plateMesh(plate)), 6);
    // Strip 63 long; each of ten corners counts the centre lines whole, and gains a fillet of r²(1 − π/4), r = t/2; two wedges.
    const wedge = 1.5 * 1.2 * ((1.2 + 4.8) / 2) + 1.2 * 4.8;
    const r = 0.6;
    // Two corners to each connector and one at each end, where the half legs turn to the stubs.
    const corners = 2 * 4 + 2;
    expect(area(outline)).toBeCloseTo(63 * 1.2 + corners * r ** 2 * (1 - Math.PI / 4) + 2 * wedge, 1);
  });
  it('is as wide as the design says, and thick everywhere as drawn', () => {
    const xs = outline.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(acrossOf(SPRING), 9);
  });
});

describe('what an adjuster has to print besides its parts', () => {
  const plateOf = (name: string): Plate => {
    const found = OWN.find((p) => p.name === name)?.shape;
    if (!found || !('plate' in found)) throw new Error(name);
    return found.plate;
  };
  const span = (points: readonly (readonly [number, number])[], k: 0 | 1) =>
    Math.max(...points.map((p) => p[k])) - Math.min(...points.map((p) => p[k]));
  it('is its spring, the arm, the post of its lock and the plate that holds it, and its knob', () => {
    expect(OWN.map(({ name, count }) => [name, count])).toEqual([
      ['spring', 2],
      ['arm', 1],
      ['foot', 1],
      ['post', 1],
      ['knob', 1],
    ]);
  });
  it('is a spring as long between its holds as it is when nothing pulls it', () => {
    // 40 mm at the mark, less 6 N over the rate of one; two wedges of 2½ strips stand beyond.
    const rate = (KEYED.springs?.rate ?? 0) / 2;
    expect(span(plateOf('spring').outline, 1)).toBeCloseTo(40 - 6 / rate + 2 * 2.5 * 2.7, 6);
  });
  it('is an arm whose slot lets the post through with its clearance, as far out as the key', () => {
    const [, slot] = plateOf('arm').holes;
    if (!slot) throw new Error('no slot');
    // No diameter is stated, and there is room for 0.6 of the larger thread, M10.
    expect(span(slot, 1)).toBeCloseTo(0.6 * 10 + 0.1, 1);
    const xs = slot.map(([x]) => x);
    expect((Math.max(...xs) + Math.min(...xs)) / 2).toBeCloseTo(-22, 9);
  });
  it('is a knob with a notch for each of its marks, that of nought the deepest, over the hexagon', () => {
    const { outline, holes } = plateOf('knob');
    const rim = Math.max(...outline.map(([x, y]) => Math.hypot(x, y)));
    const bottoms = outline.filter((p, i) => {
      const r = (q: readonly [number, number] | undefined) => (q ? Math.hypot(q[0], q[1]) : 0);
      return r(p) < rim - 1e-6 && r(outline.at(i - 1)) > r(p) && r(outline[(i + 1) % outline.length]) > r(p);
    });
    expect(bottoms).toHaveLength(50);
    const depths = bottoms.map(([x, y]) => rim - Math.hypot(x, y));
    expect(Math.max(...depths)).toBe(depths[0]);
    expect(span(holes[0] ?? [], 1)).toBeCloseTo(17.2, 9);
  });
  it('is said not to come out where the marks would be finer than a printed line', () => {
    const fine = { ...KEYED, divisions: 1000 };
    expect(reasonIn(printsOf(fine).at(-1) as never)).toContain('fewer marks');
  });
});

describe('drawings at true size', () => {
  const outlines: readonly Outline[] = [
    {
      layer: 'base',
      points: [
        [0, 0],
        [30, 0],
        [30, 20],
        [0, 20],
      ],
      closed: true,
    },
    {
      layer: '../<x>',
      points: [
        [1, 1],
        [2, 3],
      ],
      closed: false,
    },
  ];
  it('SVG: millimetres one to one, with a line of ten', () => {
    const svg = svgOf(outlines, 'A & <b>', '10 mm');
    const [, w, h, vw, vh] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
    expect([vw, vh]).toEqual([w, h]);
    expect(svg).not.toContain('<b>');
    const line = /<path d="M([\d.]+) [\d.]+L([\d.]+) [\d.]+"\/>/.exec(svg);
    expect(Number(line?.[2]) - Number(line?.[1])).toBeCloseTo(10, 9);
  });

  it('DXF R12: pairs of code and value, polylines closed by their flag, a line of ten, and an end', () => {
    const rows = dxfOf(outlines, '10 mm').trimEnd().split('\r\n');
    expect(rows.length % 2).toBe(0);
    const pairs = rows.flatMap((code, i) => (i % 2 === 0 ? [[Number(code), rows[i + 1]] as const] : []));
    expect(pairs.every(([code]) => Number.isInteger(code))).toBe(true);
    expect(pairs.at(-1)).toEqual([0, 'EOF']);
    expect(pairs.filter(([code, value]) => code === 0 && value === 'VERTEX').length).toBe(6);
    expect(pairs.filter(([code]) => code === 70).map(([, value]) => value)).toEqual(['1', '0']);
    expect(pairs.filter(([code]) => code === 8).every(([, value]) => /^[A-Z0-9 ._-]+$/.test(value ?? ''))).toBe(true);
    const end = (code: number) => Number(pairs.filter(([c]) => c === code).at(-1)?.[1]);
    const start = pairs.findIndex(([code, value]) => code === 0 && value === 'LINE');
    expect(end(11) - Number(pairs.slice(start).find(([code]) => code === 10)?.[1])).toBeCloseTo(10, 9);
  });
});

describe('a name that means harm, in a file', () => {
  const NAMES = [
    '<script>alert(1)</script>"\' onload=x',
    ']]><!--<?xml &amp;&#0;&x;',
    '\u0000\u0001\u001b[2J\ud800\uffff',
    'a\r\n0\r\nEOF\r\n  0\nLINE',
    '__proto__',
    '../../etc/passwd',
    '%%c%%<>nnn{\\P}',
  ];
  const square: Mesh = {
    positions: new Float64Array([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]),
    triangles: new Uint32Array([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
  } as unknown as Mesh;
  const outline = (layer: string): Outline => ({
    layer,
    points: [
      [0, 0],
      [10, 0],
      [0, 10],
    ],
    closed: true,
  });
  const FORMS = {
    '3MF': (name: string) => modelXml([{ name, mesh: square }]),
    'SVG of an outline': (name: string) => svgOf([outline(name)], name, name),
    'SVG of a sheet': (name: string) => paperSvg([text(name, [10, 10])], 210, 297, name),
    'DXF of an outline': (name: string) => dxfOf([outline(name)], name),
    'DXF of a sheet': (name: string) => paperDxf([text(name, [10, 10])]),
  };
  for (const [form, write] of Object.entries(FORMS))
    it(`${form}, changes nothing but the words`, () => {
      const isDxf = form.startsWith('DXF');
      /** The elements of XML with what they have, or the codes of DXF: all but the words. */
      const frame = (file: string): string[] =>
        isDxf
          ? file.split('\r\n').filter((_, i) => i % 2 === 0)
          : [...file.matchAll(/<[^>]*>/g)].map(([tag]) => tag.replace(/="[^"]*"/g, '=""'));
      const plain = frame(write('part'));
      for (const name of NAMES) {
        const file = write(name);
        expect(frame(file), name).toEqual(plain);
        // XML 1.0, production 2 (Char); R12 is text of seven bits.
        expect(file, name).toMatch(
          isDxf ? /^[\r\n\x20-\x7e]*$/ : /^[\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]*$/u,
        );
      }
    });
});

describe('the name of a file', () => {
  it('says the unit, and holds nothing that a folder or a page could take for its own', () => {
    expect(fileName(['Riser', 'carried'], 'stl')).toBe('riser-carried-mm.stl');
    expect(fileName(['../../etc/passwd', '<img src=x>'], '3mf')).toBe('etc-passwd-img-src-x-mm.3mf');
    // A spring of 12 N with 6 N/mm is not taken for one of 12 N/mm.
    expect(fileName(calledOf(12, 6), 'dxf')).toBe('printed-spring-12-n-6-n-per-mm-mm.dxf');
    expect(fileName(['…', '\u0000\n'], 'svg')).toBe('part-mm.svg');
    expect(fileName(['x'.repeat(500)], 'dxf').length).toBeLessThan(60);
  });
});

describe('sections for a drawing program', () => {
  const MORE =
    'lock = key at 18 mm, clearance 0.1 mm | springs = 2 between base and carried, 8 N, 0.5 N/mm, at 15 mm | tip = ball 8.5 mm';
  const riser = valueIn(
    readAdjuster(
      `base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | ${MORE}`,
    ),
  );
  it('of an adjuster put together have its parts, ball, springs and stated lock, each on its layer', () => {
    const outlines = outlinesOf(riser);
    expect(new Set(outlines.map((o) => o.layer))).toEqual(
      new Set(['base', 'turned', 'carried', 'tip', 'key', 'springs']),
    );
    const heights = outlines.filter((o) => o.layer === 'tip').flatMap((o) => o.points.map(([, z]) => z));
    expect(Math.max(...heights)).toBeCloseTo(standing(riser, 0).height, 9);
    expect(outlinesOf(adjuster).map((o) => o.layer)).not.toContain('springs');
    // One part stands in its own frame.
    const [first] = outlinesOf(riser, riser.turned);
    expect(Math.min(...(first?.points ?? []).map(([, z]) => z))).toBeCloseTo(0, 9);
  });
  it.skipIf(!canReadDxf)('are read without a fault by an open reader of DXF (ezdxf), at their true size', () => {
    const read = readDxf(dxfOf(outlinesOf(riser), '10 mm'));
    expect(read.faults).toBe(0);
    expect(read.layers).toEqual(['BASE', 'CARRIED', 'CHECK', 'KEY', 'SPRINGS', 'TIP', 'TURNED']);
    expect(read.top).toBeCloseTo(standing(riser, 0).height, 2);
    const clip = readDxf(dxfOf(plateOutlines(valueIn(clipPlate(CLIP, PRINTER)), 'clip'), '10 mm'));
    expect(clip.faults).toBe(0);
  });
});
