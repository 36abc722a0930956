/** A ball on the rim of a hexagon socket and pressed into it, cut to scale, at the narrowest and widest that the standard lets a socket be; and all balls that come near. */
import { WORDS } from '#words/figures/ball-in-socket.ts';
import {
  BALLS,
  bad,
  ballFloor,
  ballInterference,
  ballSeat,
  ballStands,
  good,
  mm,
  type Result,
  SOCKETS,
  type Socket,
} from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import { hatching, type Point, polygon, px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'socket-unknown': { readonly name: string; readonly known: readonly string[] };
  }
}

const QUANTITIES = ['D_b', 's_f', 'x_b', 't_k', 'I_m'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], 'socket', never>;

const WIDTH = 380;
const HEIGHT = 280;

type Verdict = 'loose' | 'perhaps' | 'presses' | 'rests';

/** A ball in any socket of a size: interference and top over the rim, narrowest and widest. */
interface InAny {
  readonly diameter: number;
  readonly inch: string | undefined;
  readonly interference: readonly [least: number, most: number];
  readonly top: readonly [least: number, most: number] | undefined;
  readonly verdict: Verdict;
}

interface State {
  readonly socket: Socket;
  readonly values: Given['values'];
  readonly balls: readonly InAny[];
  readonly chosen: InAny;
  /** In the socket as measured; undefined where it is loose there. */
  readonly measured:
    | { readonly interference: number; readonly rests: number; readonly stands: number; readonly room: number }
    | undefined;
}

const inAny = (diameter: number, inch: string | undefined, { flats }: Socket, most: number): Result<InAny> => {
  const over = flats.map((s) => ballInterference.of({ D_b: mm(diameter), s_f: mm(s) }));
  const tops = flats.map((s) => {
    const h = ballSeat.of({ D_b: mm(diameter), s_f: mm(s) });
    return h.ok ? ballStands.of({ D_b: mm(diameter), h_b: h.value.h_b, x_b: mm(0) }) : h;
  });
  const [narrow, wide] = over;
  if (!narrow?.ok) return narrow ?? bad('socket-unknown', { name: '', known: [] });
  if (!wide?.ok) return wide ?? bad('socket-unknown', { name: '', known: [] });
  const [high, low] = tops;
  const interference = [wide.value.I_b, narrow.value.I_b] as const;
  return good({
    diameter,
    inch,
    interference,
    top: high?.ok && low?.ok ? ([low.value.p_o, high.value.p_o] as const) : undefined,
    verdict:
      interference[1] <= 0 ? 'loose' : interference[0] <= 0 ? 'perhaps' : interference[1] <= most ? 'presses' : 'rests',
  });
};

const stateOf = ({ values, choices }: Given): Result<State> => {
  const socket = SOCKETS.find((s) => s.screw === choices.socket);
  if (!socket) return bad('socket-unknown', { name: choices.socket, known: SOCKETS.map((s) => s.screw) });
  const { D_b, s_f, x_b, t_k, I_m } = values;
  const balls: InAny[] = [];
  for (const ball of BALLS) {
    if (ball.diameter < socket.key - 0.2 || ball.diameter > 1.45 * socket.key) continue;
    const any = inAny(ball.diameter, ball.inch, socket, I_m);
    if (!any.ok) return any;
    balls.push(any.value);
  }
  const chosen = inAny(D_b, BALLS.find((b) => b.diameter === D_b)?.inch, socket, I_m);
  if (!chosen.ok) return chosen;
  const seat = ballSeat.of({ D_b: mm(D_b), s_f: mm(s_f) });
  let measured: State['measured'];
  if (seat.ok) {
    const over = ballInterference.of({ D_b: mm(D_b), s_f: mm(s_f) });
    const rests = ballStands.of({ D_b: mm(D_b), ...seat.value, x_b: mm(0) });
    const stands = ballStands.of({ D_b: mm(D_b), ...seat.value, x_b: mm(x_b) });
    if (!over.ok) return over;
    if (!rests.ok) return rests;
    if (!stands.ok) return stands;
    const room = ballFloor.of({ t_k: mm(t_k), D_b: mm(D_b), p_o: stands.value.p_o });
    if (!room.ok) return room;
    measured = {
      interference: over.value.I_b,
      rests: rests.value.p_o,
      stands: stands.value.p_o,
      room: room.value.g_b,
    };
  }
  return good({ socket, values, balls, chosen: chosen.value, measured });
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const signed = (x: number, view: UnitView): string => withSign(show(x, { shown: 'motion', digits: 3 }, view));
const ballName = ({ diameter, inch }: InAny, view: UnitView): string =>
  inch === undefined ? size(diameter, view) : WORDS.inch(size(diameter, view), inch);

const draw = (s: State, view: UnitView): string => {
  const { values, socket, measured } = s;
  const { D_b, s_f, t_k } = values;
  // A ball may be wider than the head.
  const head = Math.max(1.35 * socket.key, 0.55 * D_b);
  const deep = Math.max(t_k, socket.depth) + 0.35 * socket.key;
  const up = measured ? measured.rests : D_b;
  const scale = Math.min((WIDTH - 150) / (2 * head), (HEIGHT - 40) / (deep + up));
  const [x0, rim] = [(WIDTH - 90) / 2, 24 + up * scale];
  const at = (x: number, z: number): Point => [x0 + x * scale, rim - z * scale];
  const metal = polygon([
    at(-head, 0),
    at(-s_f / 2, 0),
    at(-s_f / 2, -t_k),
    at(s_f / 2, -t_k),
    at(s_f / 2, 0),
    at(head, 0),
    at(head, -deep),
    at(-head, -deep),
  ]);
  const ball = (top: number, name: string): string => {
    const [cx, cy] = at(0, top - D_b / 2);
    return `<circle class="${name}" cx="${px(cx)}" cy="${px(cy)}" r="${px((D_b / 2) * scale)}"/>`;
  };
  const level = (z: number, words: string, name: string): string => {
    const [, y] = at(0, z);
    const right = WIDTH - 96;
    return `<path class="socket-level" d="M${px(x0)} ${px(y)}H${right}"/><text class="${name}" x="${right + 5}" y="${px(y + 4)}">${escapeText(words)}</text>`;
  };
  // Dropped in, it stands on the bottom.
  const drawn = measured ? measured.stands : D_b - t_k;
  const marks = measured
    ? [level(drawn, size(drawn, view), 'value'), level(0, WORDS.rim, 'socket-name')].join('')
    : level(0, WORDS.rim, 'socket-name');
  return (
    `<svg class="ball-in-socket-view" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}"><defs>${hatching('socket-base', 45, 5, 'ground base')}</defs>` +
    `<path class="bore-wall base" d="${polygon([at(-s_f / 2, 0), at(s_f / 2, 0), at(s_f / 2, -t_k), at(-s_f / 2, -t_k)])}"/><path class="part base" fill="url(#socket-base)" d="${metal}"/>` +
    `${ball(drawn, 'part carried solid')}${measured && values.x_b > 0 ? ball(measured.rests, 'socket-rests') : ''}${marks}<path class="axis" d="M${px(x0)} 8V${px(at(0, -deep)[1] + 8)}"/></svg>`
  );
};

const facts = (s: State, view: UnitView): Row[] => {
  const { measured: m, chosen, socket } = s;
  return [
    [WORDS.facts.flats(socket.key), WORDS.fromTo(size(socket.flats[0], view), size(socket.flats[1], view))],
    [WORDS.facts.any, WORDS.fromTo(signed(chosen.interference[0], view), signed(chosen.interference[1], view))],
    ...(chosen.top
      ? [[WORDS.facts.top, WORDS.fromTo(size(chosen.top[0], view), size(chosen.top[1], view))] as const]
      : []),
    ...(m
      ? [
          signedAmount('measured', WORDS.facts.measured, m.interference, 'motion', 3),
          amount('stands', WORDS.facts.stands, m.stands, 'size', 4),
          m.room > 0
            ? amount('room', WORDS.facts.room, m.room, 'size', 4)
            : ([WORDS.facts.room, WORDS.bottoms] as const),
        ]
      : []),
  ];
};

export const ballInSocket = defineFigure({
  name: 'ball-in-socket',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['socket'],
  chief: ['socket', 'D_b', 'x_b'],
  groups: { socket: ['s_f', 't_k', 'I_m'] },
  state: stateOf,
  draw,
  rows: facts,
  numbersName: WORDS.numbers,
  caption: (s, view) => {
    const { chosen, socket, measured } = s;
    return WORDS.caption({
      ball: ballName(chosen, view),
      key: socket.key,
      least: signed(chosen.interference[0], view),
      most: signed(chosen.interference[1], view),
      verdict: chosen.verdict,
      stands: measured && size(measured.stands, view),
      bottoms: measured !== undefined && measured.room <= 0,
    });
  },
  table: (s, view) => ({
    head: WORDS.head(s.socket.key),
    rows: s.balls.map((b) => [
      ballName(b, view),
      signed(b.interference[0], view),
      signed(b.interference[1], view),
      b.top ? WORDS.fromTo(size(b.top[0], view), size(b.top[1], view)) : WORDS.none,
      WORDS.verdicts[b.verdict],
    ]),
  }),
});
