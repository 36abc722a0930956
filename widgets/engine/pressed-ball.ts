/**
 * A ball pressed into a hexagon socket to make a tip: interference over the range of the socket.
 *
 * Equation: diametral interference I = ball diameter − width across flats. The ball touches the six flats at
 * six small places; each takes I/2. Taken as a hard ball denting a flat, a dent of depth I/2 is a circle of radius
 * √(R² − (R − I/2)²); where that reaches the edge of a flat (half width s/2√3) the dents run together.
 * Source: geometry; the 6 mm socket with a 6.35 mm ball is common practice, no source. The force to press it
 * is not computed: it is far past first yield. Units: mm.
 */
import { mm } from './quantity.ts';
import { outOfBounds, relation } from './relation.ts';
import { bad, good, type Result } from './result.ts';
import { say } from './say.ts';

export const ballInterference = relation({
  name: 'ball-interference',
  says: 'Interference of a ball pressed into a hexagon socket, across two flats; below nought it is loose.',
  takes: ['D_b', 's_f'],
  gives: { I_b: 'D_b - s_f' },
  source: 'Definition: ball diameter less the width across flats.',
  compute: ({ D_b, s_f }) => ({ I_b: mm(D_b - s_f) }),
});

/** Limits across flats of hexagon sockets, mm, from memory of ISO 4762; measure the socket at hand. */
export const SOCKET_LIMITS: readonly { readonly key: number; readonly least: number; readonly most: number }[] = [
  { key: 2.5, least: 2.52, most: 2.58 },
  { key: 3, least: 3.02, most: 3.08 },
  { key: 4, least: 4.02, most: 4.095 },
  { key: 5, least: 5.02, most: 5.14 },
  { key: 6, least: 6.02, most: 6.14 },
  { key: 8, least: 8.025, most: 8.175 },
  { key: 10, least: 10.025, most: 10.175 },
];

export interface PressedBall {
  readonly kind: 'holds' | 'may be loose' | 'loose' | 'will not enter';
  /** Interference on the diameter, mm: the widest socket gives the least. */
  readonly least: number;
  readonly most: number;
  /** Depth of each of the six dents at the most interference, mm, and radius of its rim. */
  readonly dent: number;
  readonly rim: number;
  readonly says: string;
}

/** Interference range of a ball of diameter `ball` in a socket from `least` to `most` across flats, mm. */
export const pressedBall = (
  ball: number,
  socket: { readonly least: number; readonly most: number },
): Result<PressedBall> => {
  const refusal = outOfBounds('D_b', ball) ?? outOfBounds('s_f', socket.least) ?? outOfBounds('s_f', socket.most);
  if (refusal) return refusal;
  if (!(socket.least <= socket.most))
    return bad(
      `Width across flats: read from ${say(socket.least)} mm to ${say(socket.most)} mm; give the least first.`,
    );
  const least = ball - socket.most;
  const most = ball - socket.least;
  const dent = Math.max(0, most / 2);
  const rim = Math.sqrt(Math.max(0, ball * dent - dent * dent));
  const runTogether = rim >= socket.least / (2 * Math.sqrt(3));
  const kind = most <= 0 ? 'loose' : runTogether ? 'will not enter' : least <= 0 ? 'may be loose' : 'holds';
  const range = `from ${say(least)} mm to ${say(most)} mm on the diameter`;
  return good({
    kind,
    least,
    most,
    dent,
    rim,
    says: {
      loose: `The ball drops in, ${range}: take a larger ball.`,
      'may be loose': `The interference runs ${range}, so a wide socket does not hold the ball: take a larger ball or measure the socket.`,
      'will not enter': `The interference runs ${range}, and the six dents would run into one another: take a smaller ball.`,
      holds: `The ball presses in with ${range}.`,
    }[kind],
  });
};
