/** A ball in a hexagon socket: interference over the limits, and the dents against a ball cut by six planes. */
import { describe, expect, it } from 'vitest';
import { ballInterference, mm, pressedBall, SOCKET_LIMITS } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const socket = (key: number) => {
  const found = SOCKET_LIMITS.find((s) => s.key === key);
  if (!found) throw new Error(`no socket ${key}`);
  return found;
};

describe('pressedBall', () => {
  it('holds a 6.35 mm ball in a 6 mm socket, common practice, with 0.21 to 0.33 mm on the diameter', () => {
    const ball = valueIn(pressedBall(6.35, socket(6)));
    expect(ball.kind).toBe('holds');
    expect(ball.least).toBeCloseTo(0.21, 12);
    expect(ball.most).toBeCloseTo(0.33, 12);
    expect(ball.says).toBe('The ball presses in with from 0.21 mm to 0.33 mm on the diameter.');
    expect(valueIn(ballInterference.of({ D_b: mm(6.35), s_f: mm(6) })).I_b).toBeCloseTo(0.35, 12);
  });

  it('cuts circles of the stated rim from a ball by the planes of the flats', () => {
    const { rim, most, dent } = valueIn(pressedBall(6.35, socket(6)));
    expect(dent).toBeCloseTo(most / 2, 12);
    const plane = 6.02 / 2;
    expect(rim).toBeCloseTo(Math.sqrt(3.175 ** 2 - plane ** 2), 12);
  });

  it('lets a ball drop in, doubts a wide socket and refuses one whose dents run together', () => {
    expect(valueIn(pressedBall(6, socket(6)))).toMatchObject({ kind: 'loose', dent: 0, rim: 0 });
    expect(valueIn(pressedBall(6.1, socket(6))).kind).toBe('may be loose');
    expect(valueIn(pressedBall(6.1, socket(6))).says).toContain('a wide socket does not hold the ball');
    // The planes' circles touch where the ball just reaches the corners, 2/√3 across flats.
    const corners = (2 / Math.sqrt(3)) * 6.02;
    expect(valueIn(pressedBall(corners + 1e-6, { least: 6.02, most: 6.02 })).kind).toBe('will not enter');
    expect(valueIn(pressedBall(corners - 1e-6, { least: 6.02, most: 6.02 })).kind).toBe('holds');
  });

  it('refuses limits the wrong way about and a ball without size', () => {
    expect(reasonIn(pressedBall(6.35, { least: 6.2, most: 6.1 }))).toBe(
      'Width across flats: read from 6.2 mm to 6.1 mm; give the least first.',
    );
    expect(reasonIn(pressedBall(0, socket(6)))).toContain('Diameter of the ball');
    for (const limits of [
      { least: 0, most: 6.14 },
      { least: 6.02, most: 101 },
    ])
      expect(pressedBall(6.35, limits)).toMatchObject({ ok: false, field: 's_f' });
  });

  it('calls a ball as large as the socket loose, and one as large as the widest socket doubtful', () => {
    expect(valueIn(pressedBall(6, { least: 6, most: 6 })).kind).toBe('loose');
    const doubtful = valueIn(pressedBall(6.5, { least: 6.25, most: 6.5 }));
    expect(doubtful).toMatchObject({ kind: 'may be loose', least: 0, most: 0.25, dent: 0.125 });
    expect(valueIn(pressedBall(5.9, socket(6)))).toMatchObject({ kind: 'loose', dent: 0, rim: 0 });
  });
});
