/** One adjuster: its travel, stops, engagement, height, outlines and solids, against figures worked by hand and against brute force. */
import { describe, expect, it } from 'vitest';
import { type Adjuster, assemble, partsOf, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../widgets/assembly/adjuster/from-numbers.ts';
import { KINDS } from '../../widgets/assembly/adjuster/kinds.ts';
import { heightOf, type Part, type Role, ringsOf, volumeOf } from '../../widgets/assembly/adjuster/part.ts';
import { type Mesh, meshOf, meshVolume } from '../../widgets/assembly/adjuster/solid.ts';
import { crestsOf, sectionOf, skinAt } from '../../widgets/assembly/adjuster/surface.ts';
import { readAdjuster, readPart, tidyAdjuster, withName } from '../../widgets/assembly/adjuster/text.ts';
import { netLead, plain } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { howMany } from '../support/deep.ts';
import { seeded } from '../support/seeded.ts';

const RISER = [
  'adjuster riser',
  'base    = coupling nut 3/8-16 UNC, 28.575 mm',
  'turned  = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm',
  'carried = socket screw M10x1.5, thread 20 mm, head 10 mm',
  'tip     = ball 8.334 mm in 8 mm hexagon, stands 4 mm',
].join('\n');
const FOOT =
  'base = tapped block M10x1.5, 20 mm | turned = stud M10x1.5 20 mm, 3/8-16 UNC 20 mm, body 6 mm | carried = cap 3/8-16 UNC, thread 20 mm, height 40 mm | tip = flat';
const STOP =
  'base = tapped block M12x1.5, 16 mm | turned = sleeve M12x1.5 20 mm, M8x1.25 12 mm, head 7 mm | carried = spindle M8x1.25, thread 24 mm, head 3 mm | tip = flat';
const SPINDLE =
  'base = tapped block M12x1.5, 16 mm | turned = spindle M12x1.5 20 mm, M8x1.25 20 mm, neck 13 mm | carried = nut M8x1.25, 12 mm';
const INVERTED =
  'base = screw M10x1.5, thread 20 mm | turned = adapter M10x1.5 internal 15 mm, M8x1.25 external 15 mm, body 20 mm | carried = nut M8x1.25, 12 mm';
const DOUBLE =
  'base = screw M10x1.5, thread 20 mm | turned = double nut M10x1.5 15 mm, M8x1.25 15 mm | carried = socket screw M8x1.25, thread 20 mm';
const PLAIN = 'base = tapped block M10x1.5, 20 mm | turned = screw M10x1.5 20 mm, head 6 mm | tip = flat';

const read = (text: string): Adjuster => {
  const result = readAdjuster(text);
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};

/**
 * Worked by hand: usable length is what a joint may open before only its kept engagement (one diameter here) is left, turns are that over the
 * lead, the stroke is the fewer turns times the net lead. 3/8-16 UNC: d 9.525 mm, lead 1.5875 mm.
 */
describe('seven adjusters', () => {
  const table: readonly (readonly [string, string, number, number, number | undefined, number])[] = [
    // name, text, net lead, usable A, usable C, stroke
    ['in line', FOOT, 0.0875, 20 - 10, 20 - 9.525, (10.475 / 1.5875) * 0.0875],
    ['nested', STOP, -0.25, 20 - 12, 24 - 8, (8 / 1.5) * 0.25],
    ['one spindle, two nuts', SPINDLE, -0.25, 20 - 12, 20 - 8, (8 / 1.5) * 0.25],
    ['thread adapter', RISER, -0.0875, 15 - 9.525, 15 - 10, (5 / 1.5) * 0.0875],
    // The screw of the base is at the bottom of the thread with 15 of its 20 mm in.
    ['thread adapter, inverted', INVERTED, -0.25, 15 - 10, 15 - 8, (5 / 1.5) * 0.25],
    ['two screws in one nut', DOUBLE, -0.25, 15 - 10, 20 - 8, (5 / 1.5) * 0.25],
    ['plain screw', PLAIN, -1.5, 20 - 10, undefined, 10],
  ];
  it.each(table)('%s', (_, text, Delta, usableA, usableC, stroke) => {
    const a = read(text);
    expect(a.Delta).toBeCloseTo(Delta, 12);
    expect(a.A.usable).toBeCloseTo(usableA, 9);
    if (usableC === undefined) expect(a.C).toBeUndefined();
    else expect(a.C?.usable).toBeCloseTo(usableC, 9);
    expect(a.best.stroke).toBeCloseTo(stroke, 9);
  });

  it('names what stops the thread adapter each way, and where it stands', () => {
    const a = read(RISER);
    // Clockwise lowers: thread C opens and runs out after 1.667 turns, a little before A is home (1.724).
    expect(a.clockwise).toMatchObject({ at: 'C', bound: { kind: 'least engagement' } });
    expect(a.clockwise.n).toBeCloseTo(2.5 / 1.5, 9);
    expect(a.anticlockwise).toMatchObject({ at: 'C', bound: { kind: 'contact', lower: 'body', upper: 'thread' } });
    expect(a.anticlockwise.n).toBeCloseTo(-2.5 / 1.5, 9);
    expect(a.A.mark).toBeCloseTo(2.7375 / 1.5875, 9);
    // 28.575 + 2.7375 + 18 + (20 − 15 + 2.5) + 10 + 4 at the middle, 87.5 µm less a turn.
    expect(standing(a, 0).height).toBeCloseTo(66.8125 + 4, 9);
    expect(standing(a, 1).height).toBeCloseTo(66.8125 + 4 - 0.0875, 9);
    expect(standing(a, 0).engaged).toMatchObject({ A: 12.2625, C: 12.5 });
  });

  it('stands on the ground where the nut of its base is short, and thread A decides', () => {
    const a = read(RISER.replace('28.575 mm', '10 mm'));
    expect(a.A.usable).toBeCloseTo(0.475, 9);
    expect(a.clockwise).toMatchObject({ at: 'A', bound: { kind: 'contact', lower: 'ground', upper: 'thread' } });
    expect(a.best.limiting).toBe('A');
  });

  it('lets two screws of one bore meet before their threads end', () => {
    // M8 passes through what is tapped M10. The lower screw ends 17.5 mm up in the nut, the upper one 20 mm; hands that close bring them together.
    const a = read(
      'base = screw M10x1.5, thread 22 mm | turned = double nut M10x1.5 25 mm, M8x1.25 LH 10 mm | carried = socket screw M8x1.25 LH, thread 40 mm | assembled = A 3 turns out, C 20 turns out',
    );
    expect(a.clockwise).toMatchObject({ at: 'base and carried', bound: { lower: 'thread', upper: 'thread' } });
    expect(a.clockwise.n).toBeCloseTo(2.5 / (1.5 + 1.25), 9);
  });

  it('gives a plain screw’s lead where the lock lets all of the turning through', () => {
    const a = read(FOOT);
    expect(standing(a, 1, { share: 1 }).motion.carried).toBeCloseTo(-1.5, 12);
    expect(standing(a, 1, { share: 0 }).motion.carried).toBeCloseTo(0.0875, 12);
  });
});

describe('two threads and an arrangement', () => {
  const thread = (text: string) => {
    const t = readThread(text);
    if (!t.ok) throw new Error(reasonOf(t));
    return t.value;
  };
  const ARRANGEMENTS = ['in line', 'nested', 'one spindle, two nuts', 'thread adapter'] as const;

  it.each(ARRANGEMENTS)(
    '%s: moves by the net lead of the relation and has room for four turns each way',
    (arrangement) => {
      const threads = { A: thread('M12x1.5'), C: thread('M8x1.25') };
      const a = adjusterOf({ threads, choices: { arrangement } });
      if (!a.ok) throw new Error(reasonOf(a));
      const net = netLead.of({ h_C: plain(threads.C.h), L_C: threads.C.L, h_A: plain(threads.A.h), L_A: threads.A.L });
      expect(net.ok && net.value.Delta).toBeCloseTo(a.value.Delta, 15);
      expect(a.value.anticlockwise.n).toBeLessThanOrEqual(-4);
      expect(a.value.clockwise.n).toBeGreaterThanOrEqual(4);
      expect(a.value.base.sizes.every((s) => !s.stated)).toBe(true);
    },
  );

  it('uses lengths that are stated, as usable length is screw less what is kept', () => {
    const a = adjusterOf({
      threads: { A: thread('M10x1.5'), C: thread('3/8-16 UNC') },
      values: { l_A: 20, b_A: 16, l_C: 18, b_C: 14, q_e: 1.2 },
      choices: { arrangement: 'in line', assembly: 'both screwed home' },
    });
    if (!a.ok) throw new Error(reasonOf(a));
    expect(a.value.A.usable).toBeCloseTo(20 - 12, 9);
    expect(a.value.C?.usable).toBeCloseTo(18 - 1.2 * 9.525, 9);
    expect(standing(a.value, 0).out).toMatchObject({ A: 0, C: 0 });
  });
});

/** Random adjusters of every kind, from a fixed seed. */
const THREADS = [
  'M4x0.7',
  'M6x1',
  'M8x1.25',
  'M10x1.5',
  'M12x1.5',
  '8-36 UNF',
  '1/4-20 UNC',
  '3/8-16 UNC',
  '1/2-20 UNF',
];
const randomText = (next: () => number): string => {
  const pick = <T>(xs: readonly T[]): T => xs[Math.floor(next() * xs.length)] as T;
  const hand = () => (next() < 0.25 ? ' LH' : '');
  const [A, C] = [pick(THREADS) + hand(), pick(THREADS) + hand()];
  const mm = (from: number, to: number) => `${(from + next() * (to - from)).toFixed(3)} mm`;
  const rows = pick([
    () => [
      `tapped block ${A}, ${mm(8, 25)}`,
      `stud ${A} ${mm(10, 30)}, ${C} ${mm(10, 30)}`,
      `cap ${C}, thread ${mm(8, 25)}`,
    ],
    () => [
      `tapped block ${A}, ${mm(8, 25)}, on the ground`,
      `sleeve ${A} ${mm(12, 30)}, ${C} ${mm(6, 14)}`,
      `spindle ${C}, thread ${mm(12, 40)}`,
    ],
    () => [
      `tapped block ${A}, ${mm(8, 25)}`,
      `spindle ${A} ${mm(10, 30)}, ${C} ${mm(10, 30)}`,
      `nut ${C}, ${mm(6, 14)}`,
    ],
    () => [
      `coupling nut ${A}, ${mm(15, 40)}`,
      `adapter ${A} external ${mm(10, 25)}, ${C} internal ${mm(8, 20)} blind, body ${mm(16, 30)}`,
      `socket screw ${C}, thread ${mm(10, 30)}`,
    ],
    () => [
      `screw ${A}, thread ${mm(10, 30)}`,
      `double nut ${A} ${mm(8, 20)}, ${C} ${mm(8, 20)}, ${mm(30, 50)}`,
      `socket screw ${C}, thread ${mm(10, 40)}`,
    ],
    () => [
      `screw ${A}, thread ${mm(10, 30)}`,
      `adapter ${A} internal ${mm(8, 20)}, ${C} external ${mm(10, 25)}, body ${mm(16, 30)}`,
      `nut ${C}, ${mm(6, 14)}`,
    ],
  ])();
  const home = pick(['both at mid-range', 'both screwed home', 'A at mid-range, C home']);
  return `base = ${rows[0]} | turned = ${rows[1]} | carried = ${rows[2]} | keep = ${pick(['0.5', '0.8', '1'])} diameters | assembled = ${home}`;
};

/** Whether rings of two parts overlap when the upper stands `t` above the lower. */
const clasher = (lower: Part, upper: Part): ((t: number) => boolean) => {
  const [below, above] = [ringsOf(lower), ringsOf(upper)];
  const pairs = above.flatMap((u) =>
    below.filter((l) => Math.min(l.outer, u.outer) - Math.max(l.inner, u.inner) > 1e-6).map((l) => [l, u] as const),
  );
  const ground = lower.grounded && lower.role === 'base';
  return (t) =>
    (ground && above.some((u) => u.from + t < -1e-6)) ||
    pairs.some(([l, u]) => Math.min(l.to, u.to + t) - Math.max(l.from, u.from + t) > 1e-6);
};

describe('random adjusters', () => {
  const COUNT = howMany(300, 10_000);
  const sound: Adjuster[] = [];
  const next = seeded(20261126).uniform;
  for (let i = 0; i < COUNT; i++) {
    const result = readAdjuster(randomText(next));
    if (result.ok) sound.push(result.value);
  }

  it('are sound often enough to tell something, and else refused in a sentence', () => {
    expect(sound.length).toBeGreaterThan(COUNT / 4);
    const again = seeded(7).uniform;
    for (let i = 0; i < 100; i++) {
      const result = readAdjuster(randomText(again));
      if (!result.ok) expect(reasonOf(result)).toMatch(/^[A-Z#\d].{20,}\.$/s);
    }
  });

  it('go as far as a walk in small steps goes', () => {
    const STEP = 0.02;
    for (const a of sound) {
      const carried = a.carried as Part;
      const clash = [clasher(a.base, a.turned), clasher(a.turned, carried), clasher(a.base, carried)] as const;
      const may = (n: number): boolean => {
        const u = a.A.start + a.A.rate * n;
        const v = (a.C as NonNullable<typeof a.C>).start + (a.C as NonNullable<typeof a.C>).rate * n;
        const overlap = (x: { from: number; to: number }, y: { from: number; to: number }, t: number) =>
          Math.min(x.to, y.to + t) - Math.max(x.from, y.from + t);
        const [jA, jC] = [a.A.joint, (a.C as NonNullable<typeof a.C>).joint];
        return (
          overlap(jA.lower, jA.upper, u) >= jA.kept - 1e-6 &&
          overlap(jC.lower, jC.upper, v) >= jC.kept - 1e-6 &&
          !clash[0](u) &&
          !clash[1](v) &&
          !clash[2](u + v)
        );
      };
      for (const [sign, stop] of [
        [1, a.clockwise],
        [-1, a.anticlockwise],
      ] as const) {
        let n = 0;
        while (may(n + sign * STEP) && Math.abs(n) < 200) n += sign * STEP;
        expect(Math.abs(n), JSON.stringify(stop)).toBeLessThanOrEqual(Math.abs(stop.n) + 1e-4);
        expect(Math.abs(n), JSON.stringify(stop)).toBeGreaterThan(Math.abs(stop.n) - STEP - 1e-4);
      }
    }
  });

  it('turn the other way round with both hands changed', () => {
    for (const a of sound) {
      const flip = (p: Part): Part => {
        const end = (e: Part['below']) => e && { ...e, thread: { ...e.thread, h: -e.thread.h as 1 | -1 } };
        return { ...p, below: end(p.below), above: end(p.above) };
      };
      const mirrored = assemble({ ...a, base: flip(a.base), turned: flip(a.turned), carried: flip(a.carried as Part) });
      if (!mirrored.ok) throw new Error(reasonOf(mirrored));
      expect(mirrored.value.Delta).toBeCloseTo(-a.Delta, 12);
      expect(mirrored.value.clockwise.n).toBeCloseTo(-a.anticlockwise.n, 9);
      expect(mirrored.value.stroke).toBeCloseTo(a.stroke, 9);
    }
  });

  it('never give more than the marks in the middle would', () => {
    for (const a of sound) expect(a.turns).toBeLessThanOrEqual(a.best.turns + 1e-9);
  });
});

const edgesOpen = ({ triangles }: Mesh): number => {
  const edges = new Map<string, number>();
  for (let t = 0; t < triangles.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const key = `${triangles[t + k]},${triangles[t + ((k + 1) % 3)]}`;
      edges.set(key, (edges.get(key) ?? 0) + 1);
    }
  return [...edges].filter(([key, count]) => count !== 1 || edges.get(key.split(',').reverse().join(',')) !== 1).length;
};

describe('solids', () => {
  const texts = [FOOT, STOP, SPINDLE, RISER, INVERTED, DOUBLE, PLAIN, RISER.replaceAll('M10x1.5', 'M10xPh3P1.5 LH')];
  it.each(texts)('are closed, and as large as the closed formulas say: %s', (text) => {
    const a = read(text);
    for (const part of partsOf(a)) {
      const options = { crests: crestsOf(a)[part.role] };
      const [coarse, fine] = [meshOf(part, options, 24), meshOf(part, options, 96)];
      expect(edgesOpen(coarse), part.kind).toBe(0);
      expect(edgesOpen(fine), part.kind).toBe(0);
      // A polygon inside a circle is small by (2π/k)²/6; the rest of the difference falls as fast.
      const exact = volumeOf(part);
      expect(Math.abs(meshVolume(fine) / exact - 1), part.kind).toBeLessThan(2e-3);
      expect(Math.abs(meshVolume(fine) - exact), part.kind).toBeLessThan(Math.abs(meshVolume(coarse) - exact) / 4);
    }
  });

  it('of a block, a cap and a bored cylinder are those of the handbook', () => {
    // Without threads: a square prism 10 wide and 20 high, less a bore 4 wide: 2000 − 80π.
    const part: Part = {
      role: 'base',
      kind: 'block',
      outer: [{ name: 'block', from: 0, to: 20, r: 5, shape: 'square' }],
      bores: [{ name: 'bore', from: 0, to: 20, r: 2, shape: 'round' }],
      below: undefined,
      above: undefined,
      sizes: [],
      grounded: false,
      material: 'steel',
      coat: 0,
      price: undefined,
      count: 1,
    };
    expect(volumeOf(part)).toBeCloseTo(2000 - 80 * Math.PI, 9);
    expect(meshVolume(meshOf(part, { crests: { below: 0, above: 0 } }, 240))).toBeCloseTo(2000 - 80 * Math.PI, 0);
  });

  it('have the section that the drawing shows', () => {
    // Area of the section by the shoelace rule, against the same area from the ends of the skin’s line.
    const a = read(RISER);
    for (const part of partsOf(a)) {
      const options = { crests: crestsOf(a)[part.role] };
      const area = (points: readonly (readonly [number, number])[]) =>
        Math.abs(
          points.reduce((sum, [x, z], i) => {
            const [x2, z2] = points[(i + 1) % points.length] as readonly [number, number];
            return sum + x * z2 - x2 * z;
          }, 0) / 2,
        );
      const drawn = sectionOf(part, 0, options).reduce((sum, o) => sum + area(o), 0);
      const halves = [0, Math.PI].reduce((sum, theta) => sum + area(skinAt(part, theta, options).points), 0);
      // A screw is not cut, so its section leaves out its socket, which the solid has.
      const socket = part.socket ? part.socket.flats * part.socket.depth : 0;
      expect(drawn - socket, part.kind).toBeCloseTo(halves, 9);
    }
  });

  it('fit into each other at every turn: ridges stand in grooves', () => {
    const a = read(RISER);
    const crests = crestsOf(a);
    for (const n of [-1.3, 0, 0.4, 1.6]) {
      const s = standing(a, n);
      const wrap = (z: number, P: number) => Math.abs(z / P - Math.round(z / P));
      const { thread: A } = a.A;
      const { thread: C } = a.C as NonNullable<typeof a.C>;
      // Where the ridge of the turned part stands in space at θ = 0, after n turns clockwise, against that of its mate.
      expect(wrap(crests.turned.below + s.at.turned + A.h * A.L * n - crests.base.above, A.P)).toBeCloseTo(0, 9);
      const turned = crests.turned.above + s.at.turned + C.h * C.L * n;
      expect(wrap(turned - (crests.carried.below + s.at.carried), C.P)).toBeCloseTo(0, 9);
    }
  });
});

describe('what cannot be put together is told with the part to change', () => {
  const refused = (text: string) => {
    const result = readAdjuster(text);
    return result.ok ? { ok: true } : { code: result.code, field: result.field };
  };
  it.each([
    ['base = tapped block M10x1.5', { code: 'adjuster-part-missing', field: 'turned' }],
    ['base = gear M10 | turned = stud M10, M6', { code: 'part-kind-unread', field: 'base' }],
    ['base = tapped block M10 | turned = stud M8, M6 | carried = cap M6', { code: 'ends-do-not-meet' }],
    ['base = screw M10 | turned = stud M10, M6 | carried = cap M6', { code: 'ends-do-not-meet' }],
    ['base = tapped block M10, 8 mm | turned = stud M10, M6 | carried = cap M6', { code: 'joint-too-short' }],
    [
      'base = tapped block M12 | turned = sleeve M12, M10 | carried = spindle M10',
      { code: 'threads-break-through', field: 'turned' },
    ],
    [
      'base = coupling nut M10 | turned = adapter M10 external 12 mm, M6 internal 40 mm blind, body 10 mm | carried = socket screw M6',
      { code: 'thread-longer-than-part', field: 'turned' },
    ],
    [
      'base = tapped block M12 | turned = spindle M12, M8 20 mm, neck 1 mm | carried = nut M8, 25 mm',
      { code: 'joint-without-room' },
    ],
    [
      'base = tapped block M10, 20 mm, 5 gallons | turned = stud M10, M6',
      { code: 'part-length-unread', field: 'base' },
    ],
    [
      'base = tapped block M10 | turned = stud M10, M6 | carried = cap M6 | colour = red',
      { code: 'adjuster-row-unread' },
    ],
    ['base = tapped block M10 | base = nut M10 | turned = stud M10, M6', { code: 'adjuster-row-twice', field: 'base' }],
    [
      'base = tapped block M10 | turned = stud M10, M6 | carried = cap M6 | tip = spike',
      { code: 'row-phrase-unread', field: 'tip' },
    ],
    [
      'base = tapped block M10 | turned = stud M10, M6 | carried = cap M6 | assembled = A somewhere out',
      { code: 'row-phrase-unread', field: 'assembled' },
    ],
    [
      'base = tapped block M10 | turned = stud M10, M6 | carried = cap M6 | assembled = A 90 turns out',
      { code: 'assembled-outside' },
    ],
  ])('%s', (text, expected) => {
    expect(refused(text)).toMatchObject(expected);
  });

  it('takes a nut of no stated height for 0.8 diameters', () => {
    // ISO 4032, M10: 8.04 to 8.40 mm high (from memory).
    const nut = readPart('base', 'nut M10x1.5');
    expect(nut.ok && heightOf(nut.value)).toBeCloseTo(8, 9);
  });

  it.each([
    ['turned = stud M10x1.5, 30 mm, M8x1.25, 25 mm', 'turned = stud M10x1.5 30 mm, M8x1.25 25 mm'],
    ['Turned: stud M10x1.5, 30 mm, M8x1.25, 25 mm', 'turned = stud M10x1.5 30 mm, M8x1.25 25 mm'],
  ])('reads %s like %s', (one, other) => {
    const whole = (row: string) =>
      read(`base = tapped block M10x1.5, 20 mm | ${row} | carried = cap M8x1.25, thread 16 mm`);
    expect(whole(one).stroke).toBe(whole(other).stroke);
  });

  it('neither takes a bare number for a count, nor leaves a thread that joins nothing', () => {
    const base = 'base = tapped block M10x1.5';
    expect(refused(`${base}, 20 | turned = screw M10x1.5`)).toMatchObject({ field: 'base' });
    expect(refused(`${base} | turned = stud M10x1.5, M8x1.25`)).toMatchObject({ code: 'upper-thread-joins-nothing' });
    const two = read(`${base}, count 2 | turned = screw M10x1.5, 40 mm`);
    expect(two.base.count).toBe(2);
    expect(two.A.usable).toBeCloseTo(30, 9);
  });

  it('keeps a description in one tidy form that reads the same', () => {
    const tidy = tidyAdjuster(RISER);
    expect(tidyAdjuster(tidy.replaceAll('\n', ' | '))).toBe(tidy);
    expect(read(tidy).stroke).toBe(read(RISER).stroke);
    expect(heightOf(read(tidy).base)).toBe(28.575);
  });
});

describe('what is drawn and not stated', () => {
  // Every kind of part with nothing but its threads.
  const ADJUSTERS = Object.keys(KINDS.base).flatMap((base) =>
    Object.entries(KINDS.turned).flatMap(([turned, { threads }]) =>
      (threads === 1 ? ['none'] : Object.keys(KINDS.carried)).map((carried) => {
        const two = turned === 'adapter' ? 'M10x1.5 external, M12x1.75 internal' : 'M12x1.75, M10x1.25';
        return `base = ${base} M10x1.5 | turned = ${turned} ${threads === 1 ? 'M10x1.5' : two} | carried = ${carried} M10x1.25`;
      }),
    ),
  );
  const parts = new Map(
    ADJUSTERS.flatMap((text) =>
      text.split(' | ').flatMap((row) => {
        const [role = '', rest = ''] = row.split(' = ');
        const read = rest.startsWith('none') ? undefined : readPart(role as Role, rest);
        return read?.ok ? [[`${role} ${read.value.kind}`, read.value] as const] : [];
      }),
    ),
  );

  it('has a size of its own for each step and bore of every kind of part, threads but for their lengths', () => {
    expect(parts.size).toBeGreaterThan(15);
    for (const [name, part] of parts) {
      const across = part.sizes.filter((s) => s.from === undefined || s.over !== undefined).map((s) => s.value);
      for (const step of [...part.outer, ...part.bores])
        if (!step.thread)
          expect(
            across.some((w) => Math.abs(w - 2 * step.r) < 1e-9),
            `${name}: ${step.name} ${2 * step.r}`,
          ).toBe(true);
      expect(
        part.sizes.every((s) => !s.stated),
        name,
      ).toBe(true);
      // Where lengths are told, they reach from end to end.
      const ends = part.sizes.flatMap((s) => [s.from ?? s.over?.from ?? 0, s.to ?? s.over?.to ?? 0]);
      expect(Math.min(...ends), name).toBeCloseTo(0, 9);
      expect(Math.max(...ends), name).toBeCloseTo(heightOf(part), 9);
    }
  });

  it('counts the height of a tip, unless its row states it', () => {
    const tip = (row: string) => {
      const a = readAdjuster(`${RISER.replace(/\ntip.*/, '')}${row}`);
      return a.ok ? a.value.tip.assumed : 'refused';
    };
    expect(tip('')).toBe(true);
    expect(tip('\ntip = ball 8.334 mm in 8 mm hexagon')).toBe(true);
    expect(tip('\ntip = round, stands 2 mm')).toBeUndefined();
    expect(tip('\ntip = flat')).toBeUndefined();
  });
});

describe('the name of an adjuster', () => {
  const named = (text: string) => {
    const read = readAdjuster(text);
    return read.ok ? read.value.name : reasonOf(read);
  };

  it('is that of the design it is kept as, unless it has one', () => {
    expect(named(withName(FOOT, 'Left foot'))).toBe('Left foot');
    expect(named(withName(RISER, 'Left foot'))).toBe('riser');
    expect(withName('none', 'Left foot')).toBe('none');
  });

  it('stays one row, however it is typed, and leaves the parts as they are', () => {
    for (const name of ['a | tip = flat', 'base = <b>', '../../x', 'ä'.repeat(60), `${'x'.repeat(39)} 😀`]) {
      const text = withName(FOOT, name);
      const read = readAdjuster(text);
      expect(read.ok && partsOf(read.value).length, name).toBe(3);
      expect(named(text), name).not.toBe('');
      expect(withName(text, 'other')).toBe(text);
    }
  });
});
