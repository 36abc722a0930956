/** What the threads of an adjuster carry, and which of screw, nut and core goes first. */
import { describe, expect, it } from 'vitest';
import { pressFitOf } from '../../widgets/assembly/adjuster/press-fit.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { threadLoads } from '../../widgets/assembly/adjuster/thread-loads.ts';
import { megapascals } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const STRESS = { tensile: megapascals(100), shear: megapascals(60) };
const loads = (text: string) => valueIn(threadLoads(valueIn(readAdjuster(text)), STRESS));
const RISER =
  'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm';

describe('the threads of an adjuster', () => {
  it('carry less over half the engagement, and their cores as much as before', () => {
    const [whole, half] = [loads(RISER), loads(`${RISER} | keep = 0.5 diameters`)];
    for (const [i, w] of whole.entries()) {
      expect((half[i]?.screw ?? 0) / w.screw).toBeCloseTo(0.5, 9);
      expect((half[i]?.nut ?? 0) / w.nut).toBeCloseTo(0.5, 9);
      expect(half[i]?.core).toBeCloseTo(w.core, 9);
    }
  });

  it('strip in the screw before the nut in the same metal, at the limits of their class below basic size', () => {
    for (const l of loads(RISER)) {
      expect(l.screw).toBeLessThan(l.nut);
      expect(l.first).toBe(l.core < l.screw ? 'core' : 'screw');
    }
    // M10×1.5 at basic size, one diameter: 60 π 8.376 × 10/1.5 × (0.75 × 1.5); at its limits a tenth or two less.
    const basic = 60 * Math.PI * 8.376 * 10 * 0.75;
    const M10 = loads(RISER)[1]?.screw ?? 0;
    expect(M10 / basic).toBeGreaterThan(0.75);
    expect(M10 / basic).toBeLessThan(1);
  });

  it('are weakest in the wall round the nut where that is thin', () => {
    const thin = loads(RISER.replace('body 18 mm', 'body 18 mm, hexagon 11 mm'))[1];
    // A ring of 11 mm outside, M10 inside: 100 π/4 (121 − 100).
    expect(thin?.body).toBeCloseTo((100 * Math.PI * 21) / 4, 6);
    expect(thin?.first).toBe('body');
  });

  it('leave out of the core what a sleeve is bored', () => {
    const sleeve =
      'base = tapped block M12x1.5, 16 mm | turned = sleeve M12x1.5 20 mm, M8x1.25 12 mm, head 7 mm | carried = spindle M8x1.25, thread 24 mm, head 3 mm';
    const [A] = loads(sleeve);
    const solid = (100 * Math.PI * 10.1597 ** 2) / 4;
    expect(A?.core).toBeLessThan(solid - (100 * Math.PI * 8 ** 2) / 4 + 1);
    expect(A?.first).toBe('core');
  });
});

describe('a pressed ball', () => {
  const fitFor = (tip: string) => pressFitOf(valueIn(readAdjuster(`${RISER} | tip = ${tip}`)));
  it('carries the force that pressed it in, where that was read', () => {
    expect(fitFor('ball 8.334 mm in 8 mm hexagon, stands 4 mm, pressed with 2000 N')).toEqual({
      kind: 'holds',
      force: 2000,
    });
  });
  it('is not judged without it, nor where the ball is loose, as every ball of the size of the key is', () => {
    expect(fitFor('ball 8.5 mm in 8.1 mm hexagon')).toMatchObject({ kind: 'not read' });
    // ISO 4762: the socket for a key of 8 mm is 8.025 to 8.175 wide (a supplier's table).
    expect(fitFor('ball 8 mm in 8.025 mm hexagon')).toMatchObject({ kind: 'loose' });
    expect(fitFor('ball 6.35 mm')).toBeUndefined();
    expect(fitFor('round')).toBeUndefined();
  });
  it('is refused a force that is none', () => {
    for (const force of ['hard', '0 N', '-2000 N', '2 mm'])
      expect(reasonIn(readAdjuster(`${RISER} | tip = ball 8.334 mm in 8 mm hexagon, pressed with ${force}`))).toContain(
        'pressed with',
      );
  });
});
