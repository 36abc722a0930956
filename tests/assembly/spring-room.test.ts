/** Where drawn springs stand in an adjuster, how they look from the front, and whether they have their room. */
import { describe, expect, it } from 'vitest';
import { standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { springAt, springEnds } from '../../widgets/assembly/adjuster/spring-place.ts';
import { springRoom } from '../../widgets/assembly/adjuster/spring-room.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { springPlate } from '../../widgets/assembly/spring/spring-plate.ts';
import { seenPlate } from '../../widgets/assembly/spring/spring-seen.ts';
import { springsOf } from '../../widgets/figures/kit/adjuster-extras.ts';
import { roomSays } from '../../widgets/figures/kit/spring-room-says.ts';
import { valueIn } from '../support/results.ts';

const MEANDER =
  'meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa';
const riser = (springs: string) =>
  valueIn(
    readAdjuster(
      `base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm | springs = ${springs}`,
    ),
  );
const roomOf = (springs: string) => {
  const room = springRoom(riser(springs));
  if (!room) throw new Error('no room');
  return room;
};

describe('the room of drawn springs', () => {
  it('is there where they pass the corners of the hexagon, worked by hand', () => {
    const room = roomOf(`2 at 17 mm, 12 N, ${MEANDER}`);
    // From 17 mm, 5 mm of the printed height inwards; the hexagon of 17 mm has its corners at 17/√3.
    expect(room.fits && room.clear).toBeCloseTo(17 - 5 - 17 / Math.sqrt(3), 6);
  });
  it('goes by how far they are stretched at either end of the stroke', () => {
    const a = riser(`2 at 17 mm, 12 N, ${MEANDER}`);
    const room = springRoom(a);
    if (!room?.fits || !a.springs?.rate) throw new Error('does not fit');
    // The ends go apart by the stroke; in the middle it is force over rate.
    expect(room.most - room.least).toBeCloseTo(a.stroke, 9);
    expect((room.most + room.least) / 2).toBeCloseTo(12 / a.springs.rate, 9);
  });
  it.each([
    ['14 mm', `2 at 14 mm, 12 N, ${MEANDER}`, 'part', /turned part reaches 9\.81\smm from the axis/],
    [
      'folds longer than the length',
      `2 at 17 mm, 12 N, ${MEANDER.replace('length 40', 'length 30')}`,
      'folds',
      /30\.0\smm is left/,
    ],
    [
      'a length no two holds have',
      `2 at 17 mm, 12 N, ${MEANDER.replace('length 40', 'length 90')}`,
      'gap',
      /drawn for 90\.0\smm/,
    ],
    ['no stretch left', `2 at 17 mm, 0.5 N, ${MEANDER}`, 'slack', /pull no more 1\.67 turns clockwise/],
    [
      'a strip too strained',
      `2 at 17 mm, 40 N, ${MEANDER.replace('length 40', 'length 46')}`,
      'strain',
      /strained by 0\.73\s%/,
    ],
    ['five side by side', `5 at 17 mm, 12 N, ${MEANDER}`, 'each other', /each is 22\.7\smm wide/],
  ])('is not there, and one sentence says why: %s', (_, springs, why, says) => {
    const room = roomOf(springs);
    expect(room.fits ? 'fits' : room.why).toBe(why);
    expect(roomSays(room, 'metric')).toMatch(says);
  });
  it('ends under what stands on the tip', () => {
    const flat = valueIn(
      readAdjuster(
        `base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | tip = flat | springs = 2 at 17 mm, 12 N, ${MEANDER.replace('length 40', 'length 60')}`,
      ),
    );
    const room = springRoom(flat);
    expect(room && !room.fits && room.why).toBe('above');
  });
  it('is not asked of springs that have a rate alone, or no force', () => {
    expect(springRoom(riser('2 at 17 mm, 12 N, 0.6 N/mm'))).toBeUndefined();
    expect(springRoom(riser(`2 at 17 mm, ${MEANDER}`))).toBeUndefined();
  });
});

describe('where drawn springs stand', () => {
  it('is so far apart as they are drawn, and moves with the two parts', () => {
    const a = riser(`2 at 17 mm, 12 N, ${MEANDER}`);
    const gap = (n: number) => {
      const ends = springEnds(a, standing(a, n));
      return (ends?.head ?? 0) - (ends?.foot ?? 0);
    };
    expect(gap(0)).toBeCloseTo(40, 9);
    expect(gap(1) - gap(0)).toBeCloseTo(a.Delta, 9);
    const spring = springAt(a, standing(a, 1));
    if (!spring) throw new Error('no spring');
    const { form, stretch, reach } = spring.drawn;
    // Folds, straight ends and stretch fill what is between the holds.
    if (form.shape !== 'meander') throw new Error(form.shape);
    expect(form.m * form.p + 2 * form.stub + 2 * reach + stretch).toBeCloseTo(gap(1), 9);
  });
  it('is drawn within the room that the picture has for them', () => {
    for (const drawing of [
      MEANDER,
      'row of 3 rings, radius 5.2 mm, strip 1.35 mm, high 8 mm, length 44 mm, modulus 2077 MPa',
      'coil of 5.25 turns, wire 0.8 mm, diameter 6.4 mm, length 40 mm, modulus 81370 MPa',
      'strap, span 27 mm, strip 1.35 mm, high 8 mm, modulus 2077 MPa',
    ]) {
      const a = riser(`2 at 17 mm, 12 N, ${drawing}`);
      const places = springsOf(a, standing(a, 0)).flat();
      expect(places.length).toBeGreaterThan(20);
      expect(places.flat().every(Number.isFinite)).toBe(true);
    }
  });
});

describe('a plate seen from the side', () => {
  const block = {
    outline: [
      [-3, 0],
      [3, 0],
      [3, 10],
      [-3, 10],
    ] as const,
    holes: [],
    height: 4,
  };
  const spans = (lines: ReturnType<typeof seenPlate>) => {
    const xs = lines.flat().map(([x]) => x);
    return Math.max(...xs) - Math.min(...xs);
  };
  it('is as wide as it turns to the reader', () => {
    expect(spans(seenPlate(block, 0))).toBeCloseTo(6, 9);
    expect(spans(seenPlate(block, Math.PI / 2))).toBeCloseTo(4, 9);
    expect(spans(seenPlate(block, Math.PI / 6))).toBeCloseTo(6 * Math.cos(Math.PI / 6) + 4 * Math.sin(Math.PI / 6), 9);
  });
  it('shows no edge that it hides itself: of a block aslant three uprights of four', () => {
    const uprights = seenPlate(block, Math.PI / 6).filter(
      ([a, b]) => a && b && Math.abs(a[0] - b[0]) < 1e-6 && Math.abs(b[1] - a[1]) > 9.9,
    );
    expect(uprights).toHaveLength(3);
  });
  it('shows a meander edge on as a bar, with the ends of its near connectors alone', () => {
    const plate = springPlate({
      form: { shape: 'meander', m: 8, L: 20, p: 4.2, stub: 2.1, t: 1.2 },
      high: 10,
      stretch: 0,
      reach: 0,
    });
    const lines = seenPlate(plate, Math.PI / 2);
    expect(spans(lines)).toBeCloseTo(10, 9);
    // Two to each of four near connectors, and those of the wedges.
    const across = lines.filter(([a, b]) => a && b && Math.abs(b[0] - a[0]) > 9.9);
    expect(across.length).toBeGreaterThanOrEqual(8);
    expect(across.length).toBeLessThan(24);
  });
});
