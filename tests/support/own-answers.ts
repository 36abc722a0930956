/**
 * The answers of the exercises once more, each by arithmetic of its own, from the texts that were drawn: in millimetres, newtons, radians and turns.
 * Formulas are those of the engine's sources where there is only one, written another way where there are two.
 */
import { INCH, screw, value } from './own-arithmetic.ts';

export type Texts = (name: string) => string;

const SCALES: Readonly<Record<string, number>> = { 'N/µm': 1e3, µm: 1e-3, '°': Math.PI / 180, '%': 0.01, min: 1 / 60 };
/** A quantity in millimetres, newtons, radians, hours. */
export const base = (text: string): number => {
  const [, power = '0'] = /e(-?\d+)/.exec(text) ?? [];
  const [, unit = ''] = /\s?(N\/µm|µm|°|%|min)$/.exec(text) ?? [];
  return value(text.replace(/e.*$/, '')) * 10 ** Number(power) * (SCALES[unit] ?? 1);
};

type Numbers = (name: string) => number;
type Own = (q: Numbers, p: Texts) => number;

const { PI, sqrt, sin, cos, tan, atan, hypot, log10, exp, min, abs } = Math;
const DEG30 = PI / 6;
const L = (p: Texts, name: string) => screw(p(name)).L * screw(p(name)).h;
const net = (p: Texts) => L(p, 'C') - L(p, 'A');
const amountNet = (p: Texts) => abs(net(p));
const size = (p: Texts, name = 'thread') => screw(p(name)).d;
const pitch = (p: Texts, name = 'thread') => screw(p(name)).P;
/** The pitch diameter stands three eighths of the sharp height below the crest, on each side. */
const flanks = (p: Texts, name = 'thread') => size(p, name) - 2 * 0.375 * (sqrt(3) / 2) * pitch(p, name);
const core = (p: Texts, name = 'thread') => size(p, name) - 1.226_869_322 * pitch(p, name);
const wall = (p: Texts) => (core(p, 'A') - size(p, 'C')) / 2;
const thin: Own = (q, p) => wall(p) - q('e_o');
const helix = (p: Texts, name = 'thread') => atan(screw(p(name)).L / PI / flanks(p, name));
const rho: Own = (q) => atan((2 * q('mu')) / sqrt(3));
const motion: Own = (q, p) => q('n') * net(p);
const tips: Own = (q) => (q('F') * (q('d_2') + q('l_e') * tan(DEG30))) / 2 / q('y');
/** One thousandth of a turn at a time would be the same: angles as shares of a turn. */
const turn = (angle: number) => angle / 2 / PI;
/** Kept of what was there, by the count of tenfold times. */
const kept: Own = (q) => 1 - q('q_r') * log10((q('t') + q('t_0')) / q('t_0'));
const floats: Own = (q) => q('c') / (q('l_e') + q('d') / tan(DEG30));
const push: Own = (q) =>
  (q('F') * (9 * q('d_2') ** 2 + q('l_e') ** 2)) / (36 * q('y') * (q('d_2') + q('l_e') / sqrt(3)));
/** Shares of three feet by areas: each that of the triangle across from it. */
const area = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number) =>
  ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
const FEET = [
  [0, 0],
  [240, 0],
  [120, 180],
] as const;
const shareOf = (foot: number, x: number, y: number) => {
  const [a, b] = [FEET[(foot + 1) % 3] ?? FEET[0], FEET[(foot + 2) % 3] ?? FEET[0]];
  return area(x, y, a[0], a[1], b[0], b[1]) / area(0, 0, 240, 0, 120, 180);
};
const onFoot =
  (foot: number): Own =>
  (q) =>
    q('W') * shareOf(foot, q('x_g'), q('y_g'));
/** Hertz: from the radius of the contact, a² over R. */
const contact = (F: number, R: number, E: number) => ((0.75 * F * R) / E) ** (1 / 3);
const approach = (F: number, R: number, E: number) => contact(F, R, E) ** 2 / R;
const wanted: Own = (q) => (q('s_h') * 2 * PI) / q('theta_h');
const liesAt: Own = (q) => q('q_x') * q('x_s') + q('r_y') * q('y_s');
const fall: Own = (q) => {
  const side = q('s_t') / sqrt(3);
  return side / sqrt((q('r_t') + q('R_t') - side) * (q('r_t') + q('R_t') + side));
};
const stroke: Own = (q, p) => {
  const left = (name: string, length: number) => (length - size(p, name)) / screw(p(name)).L;
  return min(left('A', q('l_A')), left('C', q('l_C'))) * amountNet(p);
};
const strokeAlike: Own = (q, p) => {
  const left = (name: string) => (q('l_s') - size(p, name)) / screw(p(name)).L;
  return min(left('A'), left('C')) * amountNet(p);
};
/** The last step of each: a number that is typed, chosen, laid out as stacks, or asked by its sign. */
export const ANSWERS: Readonly<Record<string, Own>> = {
  'screw-turns-for': (q, p) => q('w') / screw(p('thread')).L,
  'screw-drawer': (q, p) => -L(p, 'thread') * turn(q('theta')),
  'slope-of-screw': (_, p) => helix(p),
  'starts-drawer': (q, p) => -L(p, 'thread') * q('n'),
  'turned-read-dial': (q, p) => q('w') / screw(p('A')).L,
  'too-fast': (_, p) => screw(p('A')).L / amountNet(p),
  'nested-way': motion,
  'turns-drawer': (q, p) => q('w') / net(p),
  // The whole error of the lead lies in the net lead.
  'drawing-error': (q, p) => (q('L_r') - INCH / 18) / (INCH / 18 - screw(p('A')).L),
  'straight-pull': (q, p) => q('sigma_a') * PI * (core(p, 'C') / 2) ** 2,
  'play-read-dial': (q) => q('w') * sqrt(3),
  'across-c': (q) => q('Q_pc'),
  // Mean pressure on the circle of contact, and half of it more.
  'peak-pressure': (q) => (1.5 * q('F')) / (PI * contact(q('F'), q('R'), q('E_s')) ** 2),
  'seat-drawer': (q) => approach(q('F'), q('R'), q('E_s')),
  'grown-drawer': (q) => q('l') * q('Delta_T') * q('alpha_T'),
  'lead-three': (q) => (q('z_3') - q('z_1')) / 2,
  'gauge-chosen': (q) => q('z_c') * q('q_g'),
  'dial-net-lead': (q) => q('z_2') / q('n_2'),
  'accuracy-drawer': (q, p) => (screw(p('A')).L * q('eps_A') + screw(p('C')).L * q('eps_C')) / amountNet(p),
  'turned-way': (q, p) => -L(p, 'A') * q('n'),
  'turned-drawer': (q, p) => -L(p, 'A') * q('n'),
  'lock-off-way': (q, p) => -L(p, 'A') * q('n'),
  'lock-off-chosen': (q, p) => -L(p, 'A') * q('n'),
  'lock-off-drawer': (q, p) => L(p, 'C') - q('f') * L(p, 'C') - L(p, 'A'),
  'nested-chosen': motion,
  'rod-in-sleeve': (q, p) => L(p, 'C') * q('n'),
  'core-drawer': (q, p) => q('sigma_a') * PI * ((core(p, 'A') / 2) ** 2 - (q('d_o') / 2) ** 2),
  'short-chosen': (q, p) => min(q('X_A') / screw(p('A')).L, q('X_C') / screw(p('C')).L) * amountNet(p),
  'gain-number': (_, p) => screw(p('C')).L / amountNet(p),
  'short-read': (q, p) => (q('l_s') - size(p)) / screw(p('thread')).L,
  'rounded-chosen': motion,
  'rounding-gain': (q, p) => (L(p, 'C') * q('eps_C')) / net(p),
  'exact-drawer': (q, p) => amountNet(p) / q('k'),
  'across-a': (q) => q('Q_pt') + q('Q_pc'),
  'forces-drawer': (q) => q('Q_pt') + q('Q_pc'),
  'fine-screw-chosen': (q, p) => screw(p('thread')).L * turn(q('theta')),
  'wedge-for-step': (q, p) => atan(wanted(q, p) / screw(p('thread')).L),
  'plain-drawer': (q, p) => screw(p('thread')).L * turn(q('theta')),
  'lever-chosen': (q) => q('z_l') / (q('a_l') / q('b_l')),
  'pair-drawer': (q, p) => amountNet(p) / q('k'),
  'opposite-amount': motion,
  'knob-marks': (q, p) => amountNet(p) / q('v'),
  'share-left': (q, p) => (size(p) - q('d_t')) / (1.5 * (sqrt(3) / 2) * pitch(p)),
  'upper-g': (_, p) => -(15 + 11 * pitch(p)) / 1000,
  'read-height': (_, p) => pitch(p) / 2 / tan(DEG30),
  'tap-drawer': (q, p) => size(p) - q('q_t') * 1.5 * (sqrt(3) / 2) * pitch(p),
  'wall-drawer': (_, p) => wall(p),
  'thin-side-chosen': thin,
  'lines-in-wall': (q, p) => thin(q, p) / q('w_l'),
  'root-chosen': (_, p) => core(p),
  'stroke-chosen': stroke,
  'engaged-read': (q) => min(q('b_s'), q('l_s') - q('u')),
  'eaten-by-stroke': (q, p) => (q('w') / amountNet(p)) * screw(p('C')).L,
  'stroke-drawer': strokeAlike,
  'adapter-turned': motion,
  'adapter-drawer': (q, p) => amountNet(p) / q('k'),
  'adapter-way': motion,
  'coarse-chosen': (q, p) => -L(p, 'C') * q('n'),
  'play-plated': (q) => (q('c') - 4 * q('t_z')) * tan(DEG30),
  'coat-limit': (q) => (q('D_2') - q('d_2')) / 2 / 2,
  'fit-drawer': (q) => (q('D_2') - q('d_2')) / sqrt(3),
  'flats-lost': (q, p) => ((q('c_A') + q('c_C')) / sqrt(3) / amountNet(p)) * 6,
  'lost-drawer': (q, p) => (q('j_A') + q('j_C')) / amountNet(p),
  'play-from-turns': motion,
  'wire-for-thread': (_, p) => pitch(p) / sqrt(3),
  // Best wires stand out of the pitch line by as much as the sharp triangle is high.
  'over-wires-chosen': (_, p) => flanks(p) + (sqrt(3) / 2) * pitch(p),
  'play-from-wires': (q) => (q('D_2') - q('M_w') + 3 * q('w_w') - (sqrt(3) / 2) * q('P')) / sqrt(3),
  'lift-chosen': push,
  'float-drawer': (q, p) => floats(q, p) * q('y'),
  'chain-flank': (q) => q('F_o') + q('W_c') + q('W_t') + q('f_c'),
  'chain-force': (q) => q('F_o') + q('W_c') + q('W_t') + q('f_c'),
  'spring-over-stroke': (q) => q('F_0') + q('u_s') * q('k_s'),
  'spring-drawer': (q) => q('F_0') + q('u_s') * q('k_s'),
  'least-force': (q) => q('F_g') + q('Q_s') * q('mu_g') - (q('F_lo') + q('W_c')),
  'left-after': (q, p) => q('F_0') * kept(q, p),
  'start-force': (q, p) => q('F_p') / kept(q, p) - q('u_s') * q('k_s'),
  'days-drawer': (q, p) => q('F_0') * kept(q, p),
  'flank-after-days': (q, p) => q('F_o') + q('W_c') + q('F_0') * kept(q, p),
  // A beam held at one end: F l³ over 3 E I.
  'coupon-chosen': (q) => (q('F_k') * q('l_m') ** 3) / (3 * ((q('b_f') * q('t_f') ** 3) / 12) * q('u_f')),
  'rate-scatter': (q) => ((q('t_f') + q('t_e')) ** 3 - q('t_f') ** 3) / q('t_f') ** 3,
  'ring-drawer': (q) => (q('E_f') * q('b_f') * (q('t_f') / q('R_f')) ** 3) / (3 * PI - 24 / PI),
  'outside-off': (q) => q('w_p') - q('w_d'),
  'arm-needed': (q) => sqrt((1.5 * q('t_a') * q('y_a')) / q('eps_m')),
  'hub-drawer': (q) => {
    const [d, D] = [q('d_k'), q('D_k')];
    const pressure = (q('E_f') * q('I_k')) / d / ((D * D + d * d) / (D * D - d * d) + q('nu_f'));
    return q('mu_f') * pressure * (PI * d * q('b_k')) * (d / 2);
  },
  'load-line-chosen': (q) => (q('Q_y') / q('F')) * q('y_b'),
  'ball-floor-read': (q) => q('t_k') + q('p_o') - q('D_b'),
  // A quarter of the ring's inertia over its outer radius and area.
  'ring-drawer-of-foot': (q) => (q('F') / q('y_b') / q('R_o') / 4) * (q('R_o') ** 2 + q('R_i') ** 2),
  'friction-of-thread': (q, p) => {
    const slope = (2 * q('M_r')) / q('F') / flanks(p);
    const lead = screw(p('thread')).L / PI / flanks(p);
    return ((slope - lead) / (1 + slope * lead)) * cos(DEG30);
  },
  'lifts-or-tips': (q, p) => push(q, p),
  'circle-of-tip': (q) => q('e_o') + q('y') * q('alpha_o'),
  'guide-tilts': (q) => (q('y') / q('l_e')) * q('c'),
  'springs-in-chain': (q) => (q('k_1') * q('k_2')) / (q('k_1') + q('k_2')),
  'shank-drawer': (q, p) => (q('E_l') / q('l')) * PI * (core(p) / 2) ** 2,
  'errors-chosen': (q, p) => (L(p, 'C') * q('eps_C') - L(p, 'A') * q('eps_A')) / net(p),
  'off-which-way': (q, p) => Math.round((screw(p('C')).L * q('eps_C') - screw(p('A')).L * q('eps_A')) * 1e9) * q('n'),
  'off-after-turns': (q, p) => q('eps') * motion(q, p),
  'still-at': (_, p) => turn(amountNet(p)),
  'slowest-chosen': (q, p) => amountNet(p) - 2 * PI * (q('a_A') + q('a_C')),
  'rate-way': (q, p) =>
    net(p) +
    2 * PI * q('a_A') * cos(2 * PI * (q('n') + q('phi_A'))) +
    2 * PI * q('a_C') * cos(2 * PI * (q('n') + q('phi_C'))),
  'lean-of-wave': (q, p) => atan((2 * q('a_s')) / flanks(p)),
  'effort-chosen': (q, p) => {
    // Up the larger lead, down the smaller one, by tangents of sums.
    const up = Math.sign(net(p));
    const one = (name: string, sign: number) => {
      const [slope, rub] = [sign * tan(helix(p, name)), (2 * q('mu')) / sqrt(3)];
      return ((q('F') * flanks(p, name)) / 2) * ((slope + rub) / (1 - slope * rub));
    };
    return one('A', -up) + one('C', up);
  },
  'lowering-number': (q, p) => {
    const [slope, rub] = [tan(helix(p)), (2 * q('mu')) / sqrt(3)];
    return ((q('F') * flanks(p)) / 2) * ((rub - slope) / (1 + slope * rub));
  },
  'efficiency-drawer': (q, p) => tan(helix(p)) / tan(helix(p) + rho(q, p)),
  'load-way': motion,
  'share-chosen': (q, p) => turn((q('F') * amountNet(p)) / q('M')),
  'ring-mean': (q) => ((q('d_bo') ** 3 - q('d_bi') ** 3) / (q('d_bo') ** 2 - q('d_bi') ** 2)) * (2 / 3),
  'friction-angle-chosen': (q, p) => rho(q, p),
  'tip-drawer': (q) => (q('mu_b') * q('F') * q('d_b')) / 2,
  'rim-read': (q) => q('M') / q('r_h'),
  'jump-chosen': (q, p) => ((q('M_s') - q('M_k')) / PI / q('kappa_d')) * amountNet(p),
  'push-of-hand': (q) => (q('F') / q('M')) * q('M_h'),
  'divider-drawer': (q, p) => amountNet(p) / q('k'),
  'hand-read-dial': (q) => (q('w') / q('theta_h')) * 2 * PI,
  'slipped-chosen': (q, p) => L(p, 'C') - q('f') * L(p, 'C') - L(p, 'A'),
  'key-friction': (q) => (q('mu_g') / q('r_k')) * q('M_L'),
  'slip-way': (q, p) => q('n') * (L(p, 'C') * (1 - q('f')) - L(p, 'A')),
  'lock-drawer': (q) => q('N_f') * q('r_k') ** 2 * (q('k_x') + q('F_s') / q('l_f')),
  'approach-chosen': (q) => approach(q('F'), q('R'), q('E_s')),
  // The peak pressure of a contact of this radius is three halves of the mean.
  'yield-number': (q) => {
    const a = (PI * q('R') * 1.6 * q('Y')) / 2 / q('E_s');
    return (1.6 * q('Y') * 2 * PI * a * a) / 3;
  },
  'warming-chosen': (q) => q('alpha_T') * q('l') * q('Delta_Tw') * (1 - exp(-q('t') / q('tau_w'))),
  'creep-number': (q) => q('c_d') * log10((q('t') + q('t_0')) / q('t_0')),
  'play-left': (q) => q('c') * tan(DEG30) - q('delta_L'),
  'wave-in-nut': (q) => min(q('a_s'), q('a_n')),
  'lever-arm': (q, p) => (q('b_l') / wanted(q, p)) * screw(p('thread')).L,
  'wedge-push-chosen': (q) => {
    // Three faces rub: slope, base and guide.
    const [s, c, m] = [sin(q('phi_w')), cos(q('phi_w')), q('mu')];
    // A normal force N on the slope lifts by (c − m·s)·N the load and the rub of the guide, on which it presses by (s + m·c)·N.
    const across = s + m * c;
    const normal = q('F') / (c - m * s - m * across);
    return across * normal + m * (c - m * s) * normal;
  },
  'wedge-drawer': (q, p) => (screw(p('thread')).L * sin(q('phi_w'))) / cos(q('phi_w')),
  'slope-read-dial': (q, p) => atan(q('w') / screw(p('thread')).L),
  'felt-chosen': (q) => q('k_1') / q('m_r') / q('m_r'),
  // A bar on two supports, a load at b of its length a: 3 E I a over b² (a − b)².
  'bar-bends': (q) => (3 * q('E_l') * (q('t_b') ** 4 / 12) * q('a_l')) / (q('b_l') * (q('a_l') - q('b_l'))) ** 2,
  'balls-push-chosen': (q, p) => q('F') * fall(q, p),
  'height-of-balls': (q) => sqrt((q('r_t') + q('R_t')) ** 2 - (q('s_t') / sqrt(3)) ** 2),
  'pivot-drawer': (q) => 2 * q('E_s') * contact(q('F'), q('R'), q('E_s')),
  'correct-way': (q, p) => -liesAt(q, p),
  'height-chosen': (q, p) => q('p_z') + liesAt(q, p),
  'lift-of-place': (q) => q('w') * shareOf(0, q('x_s'), q('y_s')),
  'tilt-of-plate': (q) => atan(hypot(q('q_x'), q('r_y'))),
  'feet-drawer': (q, p) => amountNet(p) / q('k'),
  'foot-load': onFoot(0),
  'foot-lifts': onFoot(2),
  'vee-load-chosen': (q, p) => onFoot(1)(q, p) / 2 / sin(q('beta_v')),
  'sink-number': (q) => q('delta') / sin(q('beta_v')),
  'vee-drawer': (q) => approach(q('F') / 2 / sin(q('beta_v')), q('R'), q('E_s')) / sin(q('beta_v')),
  'doubt-chosen': (q) => (2 * q('e_g')) / (q('n_2') - q('n_1')),
  'cosine-number': (q) => (2 * q('w') * sin(q('theta_i') / 2) ** 2) / cos(q('theta_i')),
  'beside-chosen': (q) => (q('a_o') * sin(q('theta_c'))) / cos(q('theta_c')),
  'lead-from-dial': (q) => q('z_2') / q('n_2'),
  // What tables of readings are judged by.
  'lost-table': (_, p) => net(p),
  'lead-table': (_, p) => net(p),
  'wave-table': (_, p) => net(p),
  'warm-table': (_, p) => net(p),
  'readings-table': (_, p) => net(p),
};

type Lines = (q: Numbers, p: Texts) => readonly number[];

/** What each worked line must give. */
export const LINES: Readonly<Record<string, Lines>> = {
  'angle-wrong-line': (q, p) => [screw(p('thread')).L, turn(q('theta')), -L(p, 'thread') * turn(q('theta'))],
  'warm-wrong-line': (q) => {
    const warm = q('Delta_Tw') * (1 - exp(-q('t') / q('tau_w')));
    return [warm, warm * q('l') * q('alpha_T')];
  },
  'promised-wrong-line': (q, p) => {
    // Micrometres first, the share of them after.
    const off = screw(p('A')).L * q('eps_A') + screw(p('C')).L * q('eps_C');
    return [net(p), off / amountNet(p), off * Math.sign(net(p))];
  },
  'parts-wrong-line': (q, p) => [L(p, 'A'), L(p, 'C'), -L(p, 'A') * q('n'), L(p, 'C') * q('n')],
  'half-slip-wrong-line': (q, p) => {
    const slipped = L(p, 'C') - q('f') * L(p, 'C') - L(p, 'A');
    return [L(p, 'A'), L(p, 'C'), slipped, slipped * q('n')];
  },
  'sleeve-wrong-line': (_, p) => [core(p, 'A'), wall(p)],
  'reach-wrong-line': (q, p) => [net(p), screw(p('C')).L / amountNet(p), (q('w') / amountNet(p)) * screw(p('C')).L],
  'fraction-wrong-line': (q, p) => [net(p), amountNet(p) / q('k')],
  'forces-wrong-line': (q) => [q('Q_pc'), q('Q_pt') + q('Q_pc')],
  'lever-wrong-line': (q, p) => {
    const lead = screw(p('thread')).L;
    return [wanted(q, p), lead, wanted(q, p) / lead, (q('b_l') / wanted(q, p)) * lead];
  },
  'eaten-wrong-line': (q, p) => [net(p), screw(p('A')).L / amountNet(p), (q('w') / amountNet(p)) * screw(p('A')).L],
  'class-wrong-line': (q) => {
    const mean = sqrt(q('d_lo') * q('d_hi'));
    const tolerance = 0.09 * q('P') ** 0.4 * mean ** 0.1;
    return [mean, tolerance, 1.32 * tolerance];
  },
  'wall-wrong-line': (q, p) => [core(p, 'A'), wall(p), thin(q, p)],
  'stroke-wrong-line': (q, p) => {
    const turns = min(q('X_A') / screw(p('A')).L, q('X_C') / screw(p('C')).L);
    return [turns, net(p), turns * amountNet(p)];
  },
  'adapter-wrong-line': (q, p) => [net(p), amountNet(p) / q('k'), (q('w') * q('k')) / amountNet(p)],
  'play-wrong-line': (q) => {
    const c = q('D_2') - q('d_2');
    return [c, c * tan(DEG30) - q('delta_L')];
  },
  'coat-wrong-line': (q) => [q('c') / 2 / 2, (q('c') - 4 * q('t_z')) * tan(DEG30)],
  'lost-wrong-line': (q, p) => {
    const turns = (q('j_A') + q('j_C')) / amountNet(p);
    return [net(p), turns, turns * q('k')];
  },
  'float-wrong-line': (q, p) => [floats(q, p), floats(q, p) * q('y')],
  'chain-wrong-line': (q) => {
    const spring = q('F_0') + q('u_s') * q('k_s');
    return [spring, q('F_o') + q('W_c') + q('W_t') + spring];
  },
  'loss-wrong-line': (q, p) => {
    const spring = q('F_0') + q('u_s') * q('k_s');
    return [spring, spring * kept(q, p)];
  },
  'meander-wrong-line': (q) => {
    // Half a leg bends at its middle, a connector all along: what one newton gives, leg by leg.
    const [E, b, t, m, leg, link] = [q('E_f'), q('b_f'), q('t_f'), q('m_f'), q('L_f'), q('p_f')];
    const give = (m * (leg ** 3 / 12 + (link * leg ** 2) / 4)) / ((E * b * t ** 3) / 12);
    return [1 / give, ((q('u_f') / give) * (leg / 2) * (t / 2)) / ((E * b * t ** 3) / 12)];
  },
  'snap-wrong-line': (q) => {
    const strain = (1.5 * q('t_a') * q('y_a')) / q('l_a') ** 2;
    const arm = (strain * q('E_f') * q('b_a') * q('t_a') ** 2) / 6 / q('l_a');
    return [strain, arm, q('m_a') * arm * tan(q('alpha_a') + atan(q('mu_f')))];
  },
  'ball-wrong-line': (q) => {
    const high = sqrt((q('D_b') / 2 - q('s_f') / 2) * (q('D_b') / 2 + q('s_f') / 2));
    const out = q('D_b') / 2 + high - q('x_b');
    return [high, out, q('t_k') - q('D_b') + out];
  },
  'push-wrong-line': (q, p) => {
    const with_ = (name: string) => (name === 'd_2' ? flanks(p) : q(name));
    return [flanks(p), push(with_, p), tips(with_, p)];
  },
  'rss-wrong-line': (q, p) => {
    const share = hypot(screw(p('C')).L * q('eps_C'), screw(p('A')).L * q('eps_A')) / amountNet(p);
    return [net(p), share, motion(q, p), share * motion(q, p)];
  },
  'phase-wrong-line': (q, p) => {
    // Two arrows, an angle apart: the law of cosines.
    const [a, c, angle] = [q('a_A'), q('a_C'), 2 * PI * q('phi_C')];
    const both = sqrt(a * a + c * c + 2 * a * c * cos(angle));
    return [net(p), both, 2 * PI * both, amountNet(p) - 2 * PI * both];
  },
  'effort-wrong-line': (q, p) => {
    const [slope, rub] = [tan(helix(p)), (2 * q('mu')) / sqrt(3)];
    return [flanks(p), helix(p), rho(q, p), ((q('F') * flanks(p)) / 2) * ((slope + rub) / (1 - slope * rub))];
  },
  'collar-wrong-line': (q) => {
    const mean = ((q('d_bo') ** 3 - q('d_bi') ** 3) / (q('d_bo') ** 2 - q('d_bi') ** 2)) * (2 / 3);
    return [mean, (q('mu_b') * q('F') * mean) / 2];
  },
  'hand-wrong-line': (q, p) => {
    const step = amountNet(p) * turn(q('theta'));
    return [net(p), step, q('w') / step];
  },
  'wind-wrong-line': (q, p) => {
    const stiff = q('k_g') * q('r_k') * q('r_k');
    return [stiff, q('M_L') / stiff, L(p, 'C') * turn(q('M_L') / stiff)];
  },
  'vee-wrong-line': (q) => {
    const each = q('F') / sin(q('beta_v')) / 2;
    const near = approach(each, q('R'), q('E_s'));
    return [each, near, near / sin(q('beta_v'))];
  },
  'lever-pair-wrong-line': (q) => [(q('z_l') / q('a_l')) * q('b_l'), (q('F') / q('a_l')) * q('b_l')],
  'felt-wrong-line': (q) => {
    const felt = q('k_1') / q('m_r') ** 2;
    return [felt, (felt * q('k_2')) / (felt + q('k_2'))];
  },
  'turn-wrong-line': (q, p) => [-liesAt(q, p), net(p), -liesAt(q, p) / net(p)],
  'loads-wrong-line': (q, p) => {
    const load = onFoot(0)(q, p);
    const each = load / sin(q('beta_v')) / 2;
    const near = approach(each, q('R'), q('E_s'));
    return [load, each, near, near / sin(q('beta_v'))];
  },
  'lead-wrong-line': (q, p) => {
    const lead = (q('z_2') - q('z_1')) / (q('n_2') - q('n_1'));
    return [lead, net(p), (lead - net(p)) / net(p)];
  },
};

/** What an item comes to, in the unit asked. */
export const ownAnswer = (id: string, factor: number, p: Texts): number | undefined => {
  const own = ANSWERS[id]?.((name) => base(p(name)), p);
  return own === undefined ? undefined : own / factor;
};
