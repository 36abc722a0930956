import { describe, expect, it } from 'vitest';
import type { Adjuster } from '../../widgets/assembly/adjuster/adjuster.ts';
import { lockStiffnessOf } from '../../widgets/assembly/adjuster/lock-stiffness.ts';
import { reach } from '../../widgets/assembly/adjuster/part.ts';
import { ARM_WALL, postOf } from '../../widgets/assembly/adjuster/post.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { printsOf } from '../../widgets/assembly/print/own-prints.ts';
import { partFiles } from '../../widgets/figures/part-files/part-files.ts';
import { still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const withLock = (row: string): string =>
  `base = coupling nut M10x1.5, 30 mm | turned = adapter M10x1.5 external 20 mm, 3/8-16 UNC internal 20 mm, body 24 mm, hexagon 17 mm | carried = socket screw 3/8-16 UNC, thread 25 mm, head 6 mm | tip = ball 12 mm, stands 6 mm | lock = ${row}`;
const of = (row: string): Adjuster => valueIn(readAdjuster(withLock(row)));

/** Sideways at the end under 1 N, by summing the curvature M/(E I) of a rod from its held end in small pieces: no formula of a beam. */
const bentBySlices = (long: number, EI: number): number => {
  const pieces = 4000;
  const step = long / pieces;
  let [slope, aside] = [0, 0];
  for (let i = 0; i < pieces; i++) {
    const turn = ((long - (i + 0.5) * step) / EI) * step;
    aside += (slope + turn / 2) * step;
    slope += turn;
  }
  return aside;
};

describe('the stiffness of a lock of post and arm', () => {
  it('is that of two rods held at one end, by slices, times the square of the radius', () => {
    const a = of('key at 20 mm, clearance 0.1 mm, post 8 mm, modulus 2077 MPa');
    const { free, arm } = postOf(a) ?? { free: 0, arm: undefined };
    const post = bentBySlices(free, (2077 * Math.PI * 8 ** 4) / 64);
    const rim = Math.max(...(a.carried?.outer ?? []).map(reach));
    const high = (arm?.high ?? 0) - (arm?.low ?? 0);
    const wide = 8 + 2 * ARM_WALL;
    const bar = bentBySlices(20 - rim, (2077 * high * wide ** 3) / 12);
    const kappa = lockStiffnessOf(a) ?? 0;
    expect(kappa / (20 ** 2 / (post + bar))).toBeCloseTo(1, 4);
    // A printed rod is a soft lock: not near the tens of thousands that a chapter assumes.
    expect(kappa).toBeLessThan(2000);
  });

  it('grows with the fourth power of the post, and a steel post is as much stiffer as its modulus', () => {
    const at = (row: string) => lockStiffnessOf(of(`key at 20 mm, ${row}`)) ?? Number.NaN;
    const [printed, steel] = [at('post 3 mm, modulus 2100 MPa'), at('steel post 3 mm, modulus 2100 MPa')];
    expect(steel / printed).toBeGreaterThan(50);
    expect(steel / printed).toBeLessThan(100);
    expect(at('post 6 mm, modulus 2100 MPa') / printed).toBeGreaterThan(14);
    expect(at('post 6 mm, modulus 2100 MPa') / printed).toBeLessThan(16.01);
  });

  it('is not known without a material, and is as measured where that is stated', () => {
    expect(lockStiffnessOf(of('key at 20 mm, clearance 0.1 mm'))).toBeUndefined();
    expect(lockStiffnessOf(of('key at 20 mm, steel post 8 mm'))).toBeUndefined();
    expect(lockStiffnessOf(of('key at 20 mm, post 8 mm, modulus 2000 MPa, stiffness 4321 N·mm'))).toBe(4321);
  });

  it('is read in any order of its phrases, and a phrase twice or unread is named', () => {
    expect(of('post at 22 mm, modulus 2 GPa, steel post 5 mm, clearance 0.2 mm').lock).toEqual({
      kind: 'post',
      radius: 22,
      clearance: 0.2,
      thick: 5,
      steel: true,
      modulus: 2000,
    });
    for (const row of ['key at 20 mm, post 8 mm, post 9 mm', 'key at 20 mm, post 60 mm', 'key at 20 mm, rod 8 mm'])
      expect(reasonIn(readAdjuster(withLock(row)))).toContain('steel post 8 mm');
  });
});

describe('what holds the post', () => {
  const a = of('key at 20 mm, clearance 0.1 mm');
  const prints = printsOf(a).map(valueIn);
  const plate = (name: string) => {
    const shape = prints.find((p) => p.name === name)?.shape;
    return shape && 'plate' in shape ? shape.plate : undefined;
  };
  it('is a plate with the hexagon of the base and the hole of the post, where the arm has its slot', () => {
    const [hexagon, hole] = plate('foot')?.holes ?? [];
    const [, slot] = plate('arm')?.holes ?? [];
    const middle = (ring: readonly (readonly [number, number])[] | undefined) =>
      (Math.max(...(ring ?? []).map(([x]) => x)) + Math.min(...(ring ?? []).map(([x]) => x))) / 2;
    // Coupling nut M10: 17 mm across flats (DIN 6334, from memory); 0.2 mm to slide on.
    expect(Math.max(...(hexagon ?? []).map(([, y]) => y)) * 2).toBeCloseTo(17.2, 6);
    expect(middle(hole)).toBeCloseTo(-20, 6);
    expect(middle(slot)).toBeCloseTo(-20, 6);
    const half = postOf(a)?.half ?? 0;
    expect(2 * half).toBeGreaterThanOrEqual(5);
    expect(Math.max(...(hole ?? []).map(([, y]) => y))).toBeCloseTo(half + 0.05, 3);
  });
});

describe('a post of steel', () => {
  const made = (lock: string) => {
    const a = of(lock);
    const print = printsOf(a)
      .map(valueIn)
      .find(({ name }) => name === 'post');
    const html = valueIn(
      still(partFiles).draw(
        { threads: {}, values: {}, choices: {}, texts: { adjuster: withLock(lock) } } as never,
        'metric',
      ),
    );
    return { print, kinds: [...html.matchAll(/data-save="(\w+)" data-of="post"/g)].map(([, kind]) => kind) };
  };
  it('is a rod to cut, with drawings and no file for a printer; a printed one has both', () => {
    const steel = made('key at 20 mm, clearance 0.1 mm, steel post 6 mm');
    expect(steel.print).toMatchObject({ steel: true, shape: { part: { material: 'steel' } } });
    expect(steel.kinds).toEqual(['dxf', 'svg']);
    const printed = made('key at 20 mm, clearance 0.1 mm, post 6 mm');
    expect(printed.print?.steel).toBeUndefined();
    expect(printed.print?.shape).toMatchObject({ part: { material: 'plastic' } });
    expect(printed.kinds).toEqual(['3mf', 'stl', 'dxf', 'svg']);
  });
});
