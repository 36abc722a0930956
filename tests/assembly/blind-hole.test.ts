/** A blind thread ends before the hole that was drilled for it, and a socket screw has its socket: in what the engine counts, in solids and on sheets alike. */
import { describe, expect, it } from 'vitest';
import { blindHoleOf } from '../../widgets/assembly/adjuster/blind-hole.ts';
import { heightOf, type Part, type ThreadEnd, volumeOf } from '../../widgets/assembly/adjuster/part.ts';
import { meshOf, meshVolume } from '../../widgets/assembly/adjuster/solid.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { diameters, SOCKETS } from '../../widgets/engine/index.ts';
import { frontOf } from '../../widgets/figures/part-drawings/part-view.ts';
import { valueIn } from '../support/results.ts';

const adjuster = (base: string, carried = 'cap M10x1.5, thread 12 mm') =>
  valueIn(
    readAdjuster(
      `base = ${base} | turned = stud M10x1.5 20 mm, M10x1.5 20 mm | carried = ${carried}`
        .replace('M10x1.5 20 mm |', '3/8-16 UNC 20 mm |')
        .replace('cap M10x1.5', 'cap 3/8-16 UNC'),
    ),
  );
const NO_CREST = { crests: { below: 0, above: 0 } };
const drill = (part: Part) => part.bores.find((b) => b.point !== undefined);

describe('a blind hole', () => {
  const { base, A } = adjuster('tapped block M10x1.5 15 mm blind, height 30 mm');
  it('has its thread as long as it is stated, then four pitches of plain hole as wide as the minor diameter', () => {
    const [thread, hole] = [base.bores.find((b) => b.thread), drill(base)];
    if (!thread || !hole || !base.above) throw new Error('no hole');
    expect(thread.to - thread.from).toBeCloseTo(15, 9);
    expect(hole.to).toBeCloseTo(thread.from, 9);
    expect(hole.to - hole.from).toBeCloseTo(4 * 1.5, 9);
    expect(2 * hole.r).toBeCloseTo(diameters(base.above.thread).d1, 9);
  });
  it('is home for the screw where its full thread ends', () => {
    // 20 mm of screw over 15 mm of thread: it stops there, five millimetres out of its shoulder.
    expect(A.joint.lower.to - A.joint.lower.from).toBeCloseTo(15, 9);
    expect(A.usable).toBeCloseTo(15 - 10, 9);
  });
  it('ends in the cone of a drill of 118°, in its solid, its volume and its section', () => {
    const hole = drill(base);
    if (!hole) throw new Error('no hole');
    const cone = (Math.PI * hole.r ** 2 * (hole.r / Math.tan((59 * Math.PI) / 180))) / 3;
    const flat: Part = { ...base, bores: base.bores.map(({ point: _, ...b }) => b) };
    expect(volumeOf(flat) - volumeOf(base)).toBeCloseTo(cone, 9);
    const mesh = (part: Part) => meshVolume(meshOf(part, NO_CREST, 240));
    expect((mesh(flat) - mesh(base)) / cone).toBeCloseTo(1, 2);
    const apex = hole.from - hole.r / Math.tan((59 * Math.PI) / 180);
    const marks = frontOf(base, { x: 0, y: 0, scale: 1 });
    expect(
      marks.some(
        (m) =>
          m.kind === 'line' && m.wide && m.points.some(([x, y]) => Math.abs(x) < 1e-9 && Math.abs(y - apex) < 1e-9),
      ),
    ).toBe(true);
  });
  it('keeps a floor where there is little room, and is flat where a cone would come through', () => {
    const little = drill(adjuster('tapped block M10x1.5 15 mm blind, height 20 mm').base);
    if (!little) throw new Error('no hole');
    expect(little.from - little.r / Math.tan((59 * Math.PI) / 180)).toBeCloseTo(0.1 * 5, 9);
    expect(drill(adjuster('tapped block M10x1.5 15 mm blind, height 16 mm').base)).toBeUndefined();
  });
  it('is judged by the run-out that it leaves a tap, and by the wall round its cone', () => {
    const roomy = blindHoleOf(base, base.above as ThreadEnd);
    expect(roomy?.runOut).toBeCloseTo(6, 9);
    expect(roomy?.usual).toBeCloseTo(4 * 1.5, 9);
    // Down to the apex: nine millimetres under the thread less run-out and cone.
    expect(roomy?.wall).toBeCloseTo(
      15 - 6 - diameters((base.above as ThreadEnd).thread).d1 / 2 / Math.tan((59 * Math.PI) / 180),
      9,
    );
    const shallow = adjuster('tapped block M10x1.5 15 mm blind, height 16 mm').base;
    const floor = blindHoleOf(shallow, shallow.above as ThreadEnd);
    expect(floor?.runOut).toBe(0);
    expect(floor?.wall).toBeCloseTo(1, 9);
    const through = adjuster('tapped block M10x1.5, 20 mm').base;
    expect(blindHoleOf(through, through.above as ThreadEnd)).toBeUndefined();
  });
  it('round its side has the wall that half the width leaves', () => {
    const slim = adjuster('tapped block M10x1.5 15 mm blind, height 30 mm, width 11 mm').base;
    const hole = blindHoleOf(slim, slim.above as ThreadEnd);
    expect(hole?.wall).toBeCloseTo(5.5 - diameters((slim.above as ThreadEnd).thread).d1 / 2, 9);
    expect(hole?.wall).toBeLessThan(hole?.leastWall ?? 0);
  });
  it('is none where the thread goes through', () => {
    expect(drill(adjuster('tapped block M10x1.5, 20 mm').base)).toBeUndefined();
  });
});

describe('a socket screw', () => {
  const screw = (text: string): Part => {
    const { carried } = valueIn(
      readAdjuster(
        `base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = ${text}`,
      ),
    );
    if (!carried) throw new Error('no screw');
    return carried;
  };
  it('has the socket of its size, as deep as the standard has it, in the solid of its files', () => {
    const part = screw('socket screw M10x1.5, thread 20 mm, head 10 mm');
    const size = SOCKETS.find((s) => s.screw === 'M10');
    expect(part.socket?.depth).toBe(size?.depth);
    expect(part.socket?.flats).toBeCloseTo(8.1, 9);
    const { socket: _, ...whole } = part;
    const taken = (Math.sqrt(3) / 2) * 8.1 ** 2 * 5;
    expect(volumeOf(whole) - volumeOf(part)).toBeCloseTo(taken, 9);
    expect(meshVolume(meshOf(whole, NO_CREST)) - meshVolume(meshOf(part, NO_CREST))).toBeCloseTo(taken, 6);
    expect(heightOf(part)).toBe(30);
  });
  it('has none in a head that is too low for it, and no other screw has one', () => {
    expect(screw('socket screw M10x1.5, thread 20 mm, head 4 mm').socket).toBeUndefined();
    expect(screw('screw M10x1.5, thread 20 mm, head 10 mm').socket).toBeUndefined();
  });
});
