/** The wall of a sleeve: basic sizes by hand, limits by the published values, and the refusal. */

import { describe, expect, it } from 'vitest';
import {
  largestNutRoot,
  leastRoot,
  mm,
  nestedWall,
  nestingRefusal,
  nutLimits,
  printedLines,
  rootDiameter,
  screwLimits,
  thinSide,
  wallOfSleeve,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const wall = (A: string, C: string) =>
  wallOfSleeve(valueIn(screwLimits(valueIn(readThread(A)))).limits, valueIn(nutLimits(valueIn(readThread(C)))).limits);

/** Basic sizes, worked by hand with d3 = d − 1.226869 P. */
const NOMINAL = [
  ['M12x1.5', 'M8x1.25', '1.08'],
  ['M12x1.75', 'M10x1.5', '−0.07'],
  ['M16x1.5', 'M10x1.5', '2.08'],
] as const;

describe('nominal wall', () => {
  for (const [A, C, expected] of NOMINAL)
    it(`${C} inside ${A} leaves ${expected} mm`, () => {
      const [outer, inner] = [valueIn(readThread(A)), valueIn(readThread(C))];
      const { d_3 } = valueIn(rootDiameter.of({ d: outer.d, P: outer.P }));
      const { t_w } = valueIn(nestedWall.of({ d_3A: d_3, d_C: inner.d }));
      expect(t_w.toFixed(2).replace('-', '−')).toBe(expected);
    });
});

describe('wall from limits of size', () => {
  it('of the Stop, M12×1.5-6g over M8×1.25-6H, lies between 0.79 and 1.06 mm, short of the nominal 1.08', () => {
    // d2 of M12×1.5-6g: 10.994 to 10.854; D2 of M8×1.25-6H: 7.188 to 7.348 (ISO 965-2, from memory). Then by hand:
    // least: (10.854 − 0.616025·1.5 − (7.348 + 0.793857·1.25))/2; most: (12 − 0.032 − 1.226869·1.5 − 8)/2.
    const stop = valueIn(wall('M12x1.5', 'M8x1.25'));
    expect(stop.least).toBeCloseTo((10.854 - 0.616025 * 1.5 - (7.348 + 0.793857 * 1.25)) / 2, 3);
    expect(stop.most).toBeCloseTo((12 - 0.032 - 1.226869 * 1.5 - 8) / 2, 3);
    expect([stop.least, stop.nominal, stop.most].map((x) => x.toFixed(2))).toEqual(['0.79', '1.08', '1.06']);
  });

  it('takes the classes that are written: a looser class thins the wall, a finer one thickens it', () => {
    const usual = valueIn(wall('M12x1.5', 'M8x1.25')).least;
    expect(valueIn(wall('M12x1.5-8g', 'M8x1.25-8H')).least).toBeLessThan(usual);
    expect(valueIn(wall('M12x1.5-4h', 'M8x1.25-4H')).least).toBeGreaterThan(usual);
  });

  it('may be gone in the worst case where basic sizes still leave some', () => {
    const thin = valueIn(wall('M12x1.25', 'M10x1.25'));
    expect(thin.nominal).toBeGreaterThan(0);
    expect(thin.least).toBeLessThan(0);
  });

  it('is never thinner than its own least nor thicker than its most, for inch pairs too', () => {
    for (const [A, C] of [
      ['1/2-20', '5/16-24'],
      ['5/8-18 UNF', '3/8-24'],
      ['M20x1.5', '3/8-16'],
    ] as const) {
      const w = valueIn(wall(A, C));
      expect(w.least, `${C} in ${A}`).toBeLessThan(w.most);
      expect(w.inner.least).toBeLessThan(w.inner.most);
      expect(w.outer.least).toBeLessThan(w.outer.most);
    }
  });
});

describe('roots that no class limits', () => {
  it('are 0.616025 P under the pitch diameter of a screw and 0.793857 P over that of a nut', () => {
    expect(valueIn(leastRoot.of({ d_2: mm(10), P: mm(1) })).d_3).toBeCloseTo(10 - 0.616025, 6);
    expect(valueIn(largestNutRoot.of({ D_2: mm(10), P: mm(1) })).D_r).toBeCloseTo(10 + 0.793857, 6);
  });
  it('leave a core where the pitch diameter is more than 0.616025 P', () => {
    expect(leastRoot.of({ d_2: mm(1.233), P: mm(2) }).ok).toBe(true);
    expect(reasonIn(leastRoot.of({ d_2: mm(1.232), P: mm(2) }))).toBe(
      'A pitch of 2 mm leaves nothing under a pitch diameter of 1.232 mm: take a finer pitch.',
    );
  });
  it('agree with the least root of the limits', () => {
    const { limits } = valueIn(screwLimits(valueIn(readThread('M12x1.5-6g'))));
    expect(valueIn(leastRoot.of({ d_2: limits.pitch.min, P: mm(1.5) })).d_3).toBeCloseTo(limits.root.least, 3);
  });
  it('a nut root at the limit leaves a flat of P/24, three times sharper than the basic P/8', () => {
    // Flat of the groove at diameter D: P/2 − (D − D2) tan 30°, on a groove P/2 wide at the pitch diameter.
    const flat = (D: number) => 0.5 - (D - 10) * Math.tan(Math.PI / 6);
    expect(flat(valueIn(largestNutRoot.of({ D_2: mm(10), P: mm(1) })).D_r)).toBeCloseTo(1 / 24, 12);
    expect(flat(10 + (3 / 4) * (Math.sqrt(3) / 2))).toBeCloseTo(1 / 8, 12);
  });
});

describe('what does not nest', () => {
  it('M10 in a sleeve of M12×1.75 is refused with the size that would do', () => {
    const reason =
      'M10×1.5 does not go inside M12×1.75: the wall between the threads would be −0.07 mm; nested, thread A needs to be larger than 12.2 mm at this pitch, or choose in line.';
    expect(nestingRefusal(valueIn(readThread('M12x1.75')), valueIn(readThread('M10x1.5')))).toMatchObject({
      code: 'sleeve-without-wall',
      values: { inside: 'M10×1.5', outside: 'M12×1.75', wall: expect.closeTo(-0.0735, 4) },
    });
    expect(reasonIn(wall('M12x1.75', 'M10x1.5'))).toBe(reason);
  });
});

describe('thin side and printed lines', () => {
  it('an offset of the axes comes off one side whole', () => {
    const { t_s } = valueIn(thinSide.of({ t_w: mm(1.08), e_o: mm(0.1) }));
    expect(t_s).toBeCloseTo(0.98, 12);
    expect(valueIn(printedLines.of({ t_s, w_l: mm(0.4) })).m_l).toBeCloseTo(2.45, 12);
  });
});

describe('class in a designation', () => {
  const of = (text: string) => valueIn(readThread(text));
  it('is taken where it is written, the everyday one where not', () => {
    expect(valueIn(screwLimits(of('M10x1.5')))).toMatchObject({ stated: false, limits: { cls: '6g' } });
    expect(valueIn(screwLimits(of('M10x1.5-4h')))).toMatchObject({ stated: true, limits: { cls: '4h' } });
    expect(valueIn(nutLimits(of('3/8-16 UNC')))).toMatchObject({ stated: false, limits: { cls: '2B' } });
    expect(valueIn(nutLimits(of('3/8-16 UNC-3B')))).toMatchObject({ stated: true, limits: { cls: '3B' } });
    expect(valueIn(screwLimits(of('M10x1.5-6H/6g')))).toMatchObject({ limits: { cls: '6g' } });
    expect(valueIn(nutLimits(of('M10x1.5-6H/6g')))).toMatchObject({ limits: { cls: '6H' } });
  });
  it('of the other side is passed over', () => {
    expect(valueIn(nutLimits(of('M8x1.25-6g')))).toMatchObject({
      stated: false,
      limits: { cls: '6H', side: 'internal' },
    });
    expect(valueIn(screwLimits(of('3/8-16 UNC-2B')))).toMatchObject({
      stated: false,
      limits: { cls: '2A', side: 'external' },
    });
  });
  it('that does not exist for the size gives the standard’s own reason', () => {
    expect(reasonIn(screwLimits(of('8-36 UNF-1A')))).toContain('exists only for UNC and UNF threads of 1/4 in');
    expect(reasonIn(screwLimits(of('0.5 mm x 0.12 mm')))).toContain('ISO 965-1 gives tolerances over 0.99 mm');
  });
});
