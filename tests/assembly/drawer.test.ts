/** A drawer of parts: what goes together, what meets a wish, and the standard sizes it comes with. */
import { describe, expect, it } from 'vitest';
import { standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { readAdjuster, readPart } from '../../widgets/assembly/adjuster/text.ts';
import { growthPerKelvin } from '../../widgets/assembly/adjuster/warm-growth.ts';
import { readDrawer } from '../../widgets/assembly/drawer/read-drawer.ts';
import { rowsOfStack, type Stack, searchDrawer } from '../../widgets/assembly/drawer/stacks.ts';
import { DIN_6334, ISO_4032, ISO_4762 } from '../../widgets/assembly/drawer/standard-parts.ts';
import { type Answer, answerWish, bestEdge, stepOf } from '../../widgets/assembly/drawer/wish.ts';
import { type Result, runToEnd } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

const ADAPTER = 'adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm, price 2.4';
const RISER = `coupling nut 3/8-16 UNC, 28.575 mm, price 1 | ${ADAPTER} | socket screw M10x1.5, thread 20 mm, head 10 mm, price 0.5`;
const MANY = `standard metric | standard inch | ${ADAPTER} | stud M8x1.25 22 mm, 5/16-18 UNC 22 mm, body 6 mm | adapter M12x1.75 external 20 mm, 1/2-13 UNC internal 20 mm blind, body 26 mm`;
const search = (text: string, kept = 1) => runToEnd(searchDrawer(text, kept));
const stacks = (text: string, kept = 1): readonly Stack[] => valueIn(search(text, kept)).stacks;
const NONE = { step: 1e3, stroke: 0, height: 1e4, price: undefined };

describe('the parts of a drawer', () => {
  it('make the adjuster that its rows describe', () => {
    const [only, turnedOver, ...others] = stacks(RISER);
    expect(others).toEqual([]);
    // The socket screw may as well stand on its head, with the adapter over it and the nut on top.
    expect(turnedOver?.carried?.part.kind).toBe('coupling nut');
    expect(turnedOver?.Delta).toBeCloseTo(0.0875, 12);
    // Worked by hand: 3.333 turns of 87.5 µm, 66.8125 mm high, and the 2.5 mm of a tip that nobody stated: a quarter of M10.
    expect(only?.Delta).toBeCloseTo(-0.0875, 12);
    expect(only?.stroke).toBeCloseTo((5 / 1.5) * 0.0875, 9);
    expect(only?.height).toBeCloseTo(66.8125 + 2.5, 9);
    expect(only?.price).toBeCloseTo(3.9, 12);
    expect(only?.limiting).toBe('C');
  });

  it('stand where their ends let them: an adapter upside down, a nut below or on top, a screw on its head', () => {
    const found = stacks(
      `${ADAPTER} | socket screw M10x1.5, thread 30 mm, head 10 mm | coupling nut 3/8-16 UNC, 28.575 mm`,
    );
    const shown = found.map((s) => [s.base.part.kind, s.turned.text.slice(0, 14), s.carried?.part.kind]);
    expect(shown).toContainEqual(['coupling nut', 'adapter 3/8-16', 'socket screw']);
    expect(shown).toContainEqual(['screw', 'adapter M10x1.', 'coupling nut']);
  });

  it('are not used more often than there are', () => {
    const text = (count: string) =>
      `nut M10x1.5, 12 mm${count} | stud M10x1.5 30 mm, M10x1.25 30 mm | nut M10x1.25, 12 mm`;
    expect(stacks(text(''), 0.8).length).toBeGreaterThan(0);
    const both =
      'nut M8x1.25, 10 mm, count 1 | double nut M8x1.25, M8x1 | screw M8x1.25, thread 30 mm, 1 off | screw M8x1, thread 30 mm';
    expect(stacks(both).every((s) => new Set([s.base.row, s.turned.row, s.carried?.row]).size === 3)).toBe(true);
    const twice = 'nut M8x1.25, 10 mm, count 1 | stud M8x1.25 30 mm, M8x1.25 LH 30 mm | nut M8x1.25 LH, 10 mm';
    expect(stacks(twice).length).toBeGreaterThan(0);
  });

  it('are offered upside down only where no word of the row speaks of one end', () => {
    const turnedOver = (word: string) =>
      stacks(
        `adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm${word}, body 18 mm | socket screw M10x1.5, thread 30 mm, head 10 mm | coupling nut 3/8-16 UNC, 28.575 mm`,
      ).filter((s) => s.base.part.kind === 'screw').length;
    expect(turnedOver('')).toBeGreaterThan(0);
    expect(turnedOver(', blind')).toBe(0);
  });

  it('type the rows that read as the same adjuster, whichever is chosen', () => {
    for (const s of stacks(MANY, 0.8)) {
      const again = valueIn(readAdjuster(rowsOfStack(s, 50, 0.8, 0.0015)));
      expect(again.Delta).toBeCloseTo(s.Delta, 12);
      expect(again.stroke).toBeCloseTo(s.stroke, 9);
      expect(again.steps).toBe(50);
      expect(again.wantedStep).toBeCloseTo(0.0015, 12);
      // With the tip that its rows get where none is stated.
      expect(standing(again, 0).height).toBeCloseTo(s.height, 9);
    }
  });

  it('that can’t be read are left out and told, the others are kept; nothing readable is a refusal', () => {
    const read = valueIn(search(`${RISER} | banana M10 | nut M9.3`));
    expect(read.drawer.wrong.map((w) => w.code)).toEqual(['drawer-row-unread', 'drawer-row-wrong']);
    expect(read.stacks.length).toBe(2);
    expect(reasonIn(search('banana'))).toContain('begins with the kind of part');
    expect(reasonIn(search(''))).toContain('empty');
    expect(reasonIn(search('nut M10 | nut M8'))).toContain('has two threads of different leads');
    expect(reasonIn(search('nut M10 | stud M12 30 mm, M8 30 mm'))).toContain('Nothing in the drawer goes together');
    // The row at fault is told, not only what is missing without it.
    expect(reasonIn(search('nut M10-6g, 12 mm | stud M10 30 mm, M8 30 mm | nut M8, 12 mm'))).toMatch(
      /6g is of a screw/,
    );
    expect(reasonIn(search('nut M10, 12 mm, count 0 | stud M10 30 mm, M8 30 mm | nut M8, 12 mm'))).toContain('Nothing');
    expect(reasonIn(search('<img src=x> | ../../etc'))).toContain('<img');
  });

  it('without a part of two threads say which one is lacking, of threads that are there', () => {
    const lacks = reasonIn(
      search('coupling nut 3/8-16 UNC, 28.575 mm | coupling nut 1/4-20 UNC, 20 mm | cap screw M10x1.5, thread 30 mm'),
    );
    expect(lacks).toContain('adapter 3/8-16 UNC external 20 mm, M10×1.5 internal 20 mm');
    // The row that it tells to write is one that the drawer takes.
    const [row = ''] = /adapter .* internal 20 mm/.exec(lacks) ?? [];
    expect(stacks(`coupling nut 3/8-16 UNC, 28.575 mm | cap screw M10x1.5, thread 30 mm | ${row}`).length).toBe(2);
  });

  it('know bolts, male and female ends, “to” between them and a bare metric length by the words of the trade', () => {
    const shop = stacks(
      'coupling nut 3/8-16 UNC, 28.575 mm | adaptor 3/8-16 UNC male 15 mm to M10x1.5 female 15 mm | hex bolt M10x1.5 30 mm',
    );
    const ours = stacks(
      'coupling nut 3/8-16 UNC, 28.575 mm | adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm | screw M10x1.5 30 mm',
    );
    expect(shop.map((s) => [s.Delta, s.stroke, s.height])).toEqual(ours.map((s) => [s.Delta, s.stroke, s.height]));
    expect(shop.length).toBeGreaterThan(0);
    const screw = (row: string) => valueIn(readPart('carried', row));
    // ISO 4762 and ISO 4017 order a screw by thread and length in mm, M12x20, a fine one as M12x1.5x20 (the form of the order, from memory).
    for (const row of ['socket cap screw M12 20', 'cap screw M12x20', 'socket head cap bolt M12 x 1.75 x 20'])
      expect(screw(row).below, row).toMatchObject({ to: 20, thread: { designation: 'M12×1.75', P: 1.75 } });
    // A pitch stays a pitch.
    expect(screw('screw M12x1.5').below?.thread.P).toBe(1.5);
  });

  it('tell what is wrong with a thread without the place that was tried', () => {
    expect(reasonIn(search('nut M9.3'))).not.toContain('Base');
  });

  it('know a cap screw as a socket screw, and a hexagon by its flats', () => {
    const flats = stacks(
      RISER.replace('hexagon 17 mm', '17 mm across flats').replace('socket screw', 'socket head cap screw'),
    );
    expect(flats.map((s) => rowsOfStack(s, 6, 1, 0.01))).not.toEqual([]);
    expect(flats.map(({ turned }) => turned.part)).toEqual(stacks(RISER).map(({ turned }) => turned.part));
    expect(flats[1]?.base.called).toBe('socket screw');
  });

  it('are refused where there are five thousand rows, or ways without end', () => {
    const rows = Array.from({ length: 5000 }, (_, i) => `nut M10, ${8 + i / 1000} mm`).join('\n');
    expect(reasonIn(search(rows))).toContain('5000 rows');
    // Each stud either way up.
    const alike = [
      ...Array.from({ length: 190 }, (_, i) => `nut M10, ${12 + i / 100} mm`),
      ...Array.from({ length: 190 }, (_, i) => `stud M10 ${30 + i / 100} mm, M8 30 mm`),
      ...Array.from({ length: 190 }, (_, i) => `nut M8, ${12 + i / 100} mm`),
    ].join('\n');
    expect(reasonIn(search(alike))).toContain(`${2 * 190 ** 3} ways`);
  });

  it('are worked in small steps, so that a page can draw between them', () => {
    let steps = 0;
    const run = searchDrawer(MANY, 0.8);
    for (let step = run.next(); !step.done; step = run.next()) {
      expect(step.value).toBeGreaterThanOrEqual(0);
      expect(step.value).toBeLessThanOrEqual(1);
      steps++;
    }
    expect(steps).toBeGreaterThan(60);
  });
});

/**
 * Every height that a stack reaches with a clip of six places, by brute force: thread A stands u out, thread C v out, and the carried part
 * keeps its angle to the base, so that turns of A and C together are a sixth of a turn times a whole number.
 */
const unreached = ({ leads, usable, Delta }: Stack): number => {
  const C = { L: leads.C as number, X: usable.C as number };
  const A = { L: leads.A, X: usable.A };
  const windows: [number, number][] = [];
  // Height is u + v, with u = L_A p, v = L_C q; like hands: p falls as q rises, p + q = k/6.
  for (let k = 0; k <= 6 * (A.X / A.L + C.X / C.L); k++) {
    const from = Math.max(0, k / 6 - A.X / A.L);
    const to = Math.min(C.X / C.L, k / 6);
    const at = (q: number) => A.L * (k / 6 - q) + C.L * q;
    if (to > from) windows.push([Math.min(at(from), at(to)), Math.max(at(from), at(to))]);
  }
  windows.sort((a, b) => a[0] - b[0]);
  // The middle of the way, where the windows are whole.
  const middle = (A.X + C.X) / 2;
  let gap = 0;
  for (let i = 0, top = 0; i < windows.length; i++) {
    const [low, high] = windows[i] as [number, number];
    if (top > 0 && Math.abs(low - middle) < 0.2 * middle) gap = Math.max(gap, low - top);
    top = Math.max(top, high);
  }
  expect(Math.abs(Delta)).toBeCloseTo(Math.abs(A.L - C.L), 12);
  return gap;
};

describe('coarse and fine as one design', () => {
  it('leaves the gap between two places of the clip that counting every height finds', () => {
    const text = [
      'nut M8x1.25, 10 mm | nut M10x1.5, 12 mm | nut 5/16-18 UNC, 10 mm | nut 3/8-16 UNC, 12 mm',
      'stud M8x1.25 20 mm, 5/16-18 UNC 20 mm | stud M8x1.25 14 mm, 5/16-18 UNC 22 mm | stud M10x1.5 13 mm, 3/8-16 UNC 30 mm',
    ].join('|');
    const found = stacks(text).filter((s) => s.carried);
    expect(found.length).toBeGreaterThanOrEqual(6);
    expect(found.some((s) => s.coarse.gap > 0.05) && found.some((s) => s.coarse.gap === 0)).toBe(true);
    for (const s of found) expect(s.coarse.gap, s.turned.text).toBeCloseTo(unreached(s), 6);
  });

  it('M8×1.25: a sixth of a turn is 208 µm, which a stroke of 157 does not bridge', () => {
    const [s] = stacks(
      'coupling nut M8x1.25, 24 mm | stud M8x1.25 20 mm, 5/16-18 UNC 9.316 mm | nut 5/16-18 UNC, 8.5 mm',
    );
    expect(s?.coarse.index).toBeCloseTo(1.25 / 6, 9);
    expect(s?.coarse.gap).toBeGreaterThan(0.04);
  });
});

describe('a wish', () => {
  const all = stacks(MANY, 0.8);
  const DIVIDERS = [6, 12, 50];
  it('is met by just those stacks that brute force finds', () => {
    const { uniform: next } = seeded(7);
    for (let i = 0; i < 40; i++) {
      const wish = { step: 0.002 + 0.05 * next(), stroke: 2 * next(), height: 40 + 80 * next(), price: undefined };
      const answer = answerWish(all, DIVIDERS, wish, 'finest step');
      const met = all.filter(
        (s) => DIVIDERS.some((k) => stepOf(s, k) <= wish.step) && s.stroke >= wish.stroke && s.height <= wish.height,
      );
      expect(answer.kind === 'found' ? answer.rows.length : 0).toBe(met.length);
      if (answer.kind === 'nothing') {
        expect(answer.nearest.length).toBe(3);
        // What is said to help does help, and a hair less does not.
        for (const way of answer.ways) {
          const given = { ...wish, [way.wish]: way.to };
          expect(answerWish(all, DIVIDERS, given, 'lowest').kind).toBe('found');
          const less = way.wish === 'stroke' ? way.to * 1.001 : way.to * 0.999;
          expect(answerWish(all, DIVIDERS, { ...wish, [way.wish]: less }, 'lowest').kind).toBe('nothing');
        }
      }
    }
  });

  it('takes the coarsest divider that is fine enough', () => {
    const answer = answerWish(all, DIVIDERS, { ...NONE, step: 0.03 }, 'longest stroke');
    if (answer.kind !== 'found') throw new Error('nothing');
    expect(answerWish(all, [50, 6, 12], { ...NONE, step: 0.03 }, 'longest stroke')).toEqual(answer);
    for (const { stack, divisions, step } of answer.rows) {
      expect(step).toBeLessThanOrEqual(0.03);
      for (const k of DIVIDERS) if (k < divisions) expect(stepOf(stack, k)).toBeGreaterThan(0.03);
    }
    const strokes = answer.rows.map((r) => r.stack.stroke);
    expect(strokes).toEqual([...strokes].sort((a, b) => b - a));
  });

  it('of so much a turn or a flat is met by the net lead alone, whatever the divider', () => {
    for (const [per, most] of [
      [1, 0.0875],
      [6, 0.02],
    ] as const) {
      const answer = answerWish(all, [per], { ...NONE, step: most }, 'finest step');
      const met = all.filter((s) => Math.abs(s.Delta) / per <= most * (1 + 1e-9));
      expect(answer.kind === 'found' ? answer.rows.length : 0).toBe(met.length);
      expect(met.length).toBeGreaterThan(0);
    }
  });

  it('that asks for more turns than any thread has is told so, in turns and in thread', () => {
    const answer = answerWish(all, [6], { ...NONE, step: 0.002, stroke: 2 }, 'finest step');
    if (answer.kind !== 'nothing' || !answer.turns) throw new Error('found');
    // 2 mm in 2 µm is a thousand steps, a sixth of that in turns.
    expect(answer.turns.steps).toBeCloseTo(1000, 9);
    expect(answer.turns.asked).toBeCloseTo(1000 / 6, 9);
    expect(answer.turns.needed).toBeCloseTo((1000 / 6) * answer.turns.lead, 9);
    expect(answer.turns.needed).toBeGreaterThan(answer.turns.usable);
  });

  it('has a best edge that nothing beats', () => {
    const edge = bestEdge(all, DIVIDERS);
    expect(edge.length).toBeGreaterThan(1);
    for (const e of edge)
      expect(all.some((s) => stepOf(s, 50) < e.step * (1 - 1e-6) && s.stroke > e.stack.stroke * (1 + 1e-6))).toBe(
        false,
      );
    for (const s of all)
      expect(edge.some((e) => e.step <= stepOf(s, 50) * (1 + 1e-9) && e.stack.stroke >= s.stroke * (1 - 1e-9))).toBe(
        true,
      );
  });
});

describe('standard hardware', () => {
  it('has the sizes of its standards', () => {
    // ISO 4032:2001, across flats and greatest height, as two suppliers' tables print them; ISO 4762 head, a supplier's table.
    const published: readonly (readonly [string, number, number, number])[] = [
      ['M4', 7, 3.2, 7],
      ['M5', 8, 4.7, 8.5],
      ['M6', 10, 5.2, 10],
      ['M8', 13, 6.8, 13],
      ['M10', 16, 8.4, 16],
      ['M12', 18, 10.8, 18],
    ];
    for (const [thread, width, height, head] of published) {
      expect(ISO_4032[thread]).toEqual([width, height]);
      expect(ISO_4762[thread]).toBe(head);
    }
    // Long nuts are three diameters high.
    for (const [thread, [, height]] of Object.entries(DIN_6334)) expect(height).toBe(3 * Number(thread.slice(1)));
  });

  it('reads without a fault', () => {
    const read: Result<unknown> = runToEnd(
      readDrawer('standard metric | standard inch, price 0.4 | standard adapters'),
    );
    expect(valueIn(read)).toMatchObject({ wrong: [] });
  });
});

describe('growth a kelvin', () => {
  const RISER = [
    'base = coupling nut 3/8-16 UNC, 28.575 mm',
    'turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm',
    'carried = socket screw M10x1.5, thread 20 mm, head 10 mm',
    'tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm',
  ];
  const growth = (change: (row: string) => string = (row) => row) =>
    growthPerKelvin(valueIn(readAdjuster(RISER.map(change).join('\n')))) ?? Number.NaN;
  it('is that of its height where all is steel, and of each length by its own metal', () => {
    // 70.8125 mm of steel at 11.5 µm a metre and kelvin.
    expect(growth()).toBeCloseTo(70.8125 * 11.5e-6, 9);
    // Thread A is engaged from 16.3125 to 28.575; its middle stands 22.44375 up, so that much is the nut, here of aluminium.
    const nut = growth((row) => (row.startsWith('base') ? `${row}, aluminium` : row));
    expect(nut - growth()).toBeCloseTo(22.44375 * (23.1 - 11.5) * 1e-6, 9);
  });
  it('takes some away where a sleeve leads the load down', () => {
    const nested = valueIn(
      readAdjuster(
        'base = tapped block M12x1.5, 30 mm\nturned = sleeve M12x1.5 external 24 mm, M8x1.25 internal 12 mm, aluminium\ncarried = spindle M8x1.25, thread 40 mm',
      ),
    );
    const steel = valueIn(
      readAdjuster(
        'base = tapped block M12x1.5, 30 mm\nturned = sleeve M12x1.5 external 24 mm, M8x1.25 internal 12 mm\ncarried = spindle M8x1.25, thread 40 mm',
      ),
    );
    expect(standing(steel, 0).height * 11.5e-6).toBeCloseTo(growthPerKelvin(steel) ?? Number.NaN, 9);
    expect(Number.isFinite(growthPerKelvin(nested) ?? Number.NaN)).toBe(true);
  });
  it('is not known of bronze, and such a stack is ranked last', () => {
    expect(growth((row) => (row.startsWith('base') ? `${row}, bronze` : row))).toBeNaN();
    const all = stacks(`${MANY} | coupling nut M8x1.25, 24 mm, bronze`);
    const { rows } = answerWish(
      all,
      [50],
      { step: 1, stroke: 0, height: 1e3, price: undefined },
      'least drift',
    ) as Extract<Answer, { kind: 'found' }>;
    const drifts = rows.map((r) =>
      r.stack.growth === undefined ? Number.POSITIVE_INFINITY : Math.abs(r.stack.growth),
    );
    expect(drifts).toEqual([...drifts].sort((a, b) => (a === b ? 0 : a - b)));
    expect(drifts.at(-1)).toBe(Number.POSITIVE_INFINITY);
    expect(drifts[0]).toBeGreaterThan(0);
  });
});

describe('a size that nobody states', () => {
  const width = (role: 'base' | 'carried', row: string, name: string) =>
    valueIn(readPart(role, row)).sizes.find((s) => s.name === name)?.value;

  it('is that of a bought part: heads by ISO 4762, nuts by ISO 4032, long ones by DIN 6334 and ASME B18.2.2', () => {
    expect(width('carried', 'socket screw M10x1.5, thread 20 mm', 'diameter')).toBe(16);
    expect(width('base', 'nut M10x1.5', 'hexagon')).toBe(16);
    expect(width('base', 'coupling nut M10x1.5', 'hexagon')).toBe(17);
    // 9/16 in.
    expect(width('base', 'coupling nut 3/8-16 UNC', 'hexagon')).toBeCloseTo(14.2875, 9);
    expect(width('base', 'coupling nut 3/8-16 UNC, hexagon 15.875 mm', 'hexagon')).toBe(15.875);
  });
});
