/**
 * The glossary: every symbol the notebook uses, said once.
 *
 * A relation names the symbols it takes and gives; words, base unit, bounds and typeset form come from here.
 * Bounds are the box in which the relations are tested: wide enough for anything made with taps and dies,
 * narrow enough that a slip of the keyboard (a tpi of 1e9) is caught. `shown` says how a length reads best:
 * `size` for things measured with a caliper (mm or inch), `motion` for things read on an indicator (µm, thou,
 * tenths). Signs: z and every motion is positive up, away from the base; h is +1 for a right-hand thread and
 * −1 for a left-hand one; n is positive clockwise seen from above.
 */
import type { BaseUnit } from './quantity.ts';

export interface SymbolFact {
  readonly says: string;
  readonly unit: BaseUnit;
  readonly min: number;
  readonly max: number;
  readonly tex: string;
  readonly shown?: 'size' | 'motion' | 'degrees' | 'percent' | 'sense';
  /** Only whole numbers make sense. */
  readonly whole?: true;
}

const size = (says: string, tex: string, min: number, max: number) =>
  ({ says, unit: 'mm', min, max, tex, shown: 'size' }) as const;
const motion = (says: string, tex: string, max = 1e4) =>
  ({ says, unit: 'mm', min: -max, max, tex, shown: 'motion' }) as const;
const sense = (says: string, tex: string) =>
  ({ says, unit: '1', min: -1, max: 1, tex, shown: 'sense', whole: true }) as const;
const ratio = (says: string, tex: string, min: number, max: number) => ({ says, unit: '1', min, max, tex }) as const;

const force = (says: string, tex: string, min = 0, max = 1e5) => ({ says, unit: 'N', min, max, tex }) as const;
const torque = (says: string, tex: string, min = -1e7, max = 1e7) => ({ says, unit: 'N·mm', min, max, tex }) as const;
const stress = (says: string, tex: string, min: number, max: number) => ({ says, unit: 'MPa', min, max, tex }) as const;
const rate = (says: string, tex: string, min = 1e-3) => ({ says, unit: 'N/mm', min, max: 1e9, tex }) as const;
const duration = (says: string, tex: string, min: number) => ({ says, unit: 'h', min, max: 1e6, tex }) as const;
const angle = (says: string, tex: string, minDegrees: number, maxDegrees: number) =>
  ({
    says,
    unit: 'rad',
    min: (minDegrees * Math.PI) / 180,
    max: (maxDegrees * Math.PI) / 180,
    tex,
    shown: 'degrees',
  }) as const;

export const SYMBOLS = {
  // One thread
  tpi: ratio('threads per inch', '\\mathrm{tpi}', 1, 500),
  P: size('pitch', 'P', 0.05, 26),
  N: { ...ratio('number of starts', 'N', 1, 12), whole: true },
  L: size('lead', 'L', 0.05, 60),
  h: sense('hand', 'h'),
  d: size('major diameter', 'd', 0.3, 400),
  d_2: size('pitch diameter', 'd_2', 0.1, 400),
  d_1: size('basic minor diameter', 'd_1', 0.05, 400),
  d_3: size('minor diameter at a rounded root', 'd_3', 0.01, 400),
  H: size('height of the sharp thread triangle', 'H', 0.04, 23),
  lambda: { says: 'lead angle', unit: 'rad', min: 0, max: Math.PI / 2, tex: '\\lambda', shown: 'degrees' },
  C_2: size('length once round at the pitch diameter', 'C_2', 0.1, 1300),
  theta: { says: 'angle turned', unit: 'rad', min: -4e3, max: 4e3, tex: '\\theta', shown: 'degrees' },
  n: { says: 'turns, clockwise seen from above', unit: 'turn', min: -600, max: 600, tex: 'n' },
  z: motion('motion along the axis', 'z', 4e4),
  // Two threads in series: A joins base and turned part, C joins turned part and carried part
  P_A: size('pitch of thread A', 'P_A', 0.05, 26),
  N_A: { ...ratio('starts of thread A', 'N_A', 1, 12), whole: true },
  L_A: size('lead of thread A', 'L_A', 0.05, 60),
  h_A: sense('hand of thread A', 'h_A'),
  P_C: size('pitch of thread C', 'P_C', 0.05, 26),
  N_C: { ...ratio('starts of thread C', 'N_C', 1, 12), whole: true },
  L_C: size('lead of thread C', 'L_C', 0.05, 60),
  h_C: sense('hand of thread C', 'h_C'),
  z_t: motion('motion of the turned part', 'z_{\\mathrm{t}}', 4e4),
  z_r: motion('motion of the carried part relative to the turned part', 'z_{\\mathrm{r}}', 4e4),
  z_c: motion('motion of the carried part', 'z_{\\mathrm{c}}', 8e4),
  Delta: motion('net lead, the motion of the carried part per turn', '\\Delta', 120),
  f: ratio('share of the rotation that the carried part takes', 'f', 0, 1),
  psi: { says: 'wind-up of the lock', unit: 'rad', min: -4e3, max: 4e3, tex: '\\psi', shown: 'degrees' },
  G: ratio('gain of a thread in a pair', 'G', 0, 1e9),
  G_A: ratio('gain of thread A', 'G_A', 0, 1e9),
  G_C: ratio('gain of thread C', 'G_C', 0, 1e9),
  // Resolution
  k: { ...ratio('steps in a turn', 'k', 1, 10000), whole: true },
  s: motion('motion per step', 's', 120),
  m: ratio('steps to turn', 'm', -1e9, 1e9),
  w: motion('motion wanted', 'w', 1e3),
  v: motion('motion per division', 'v', 60),
  // Travel
  X: size('length of thread', 'X', 0, 1e6),
  X_A: size('usable length of thread A', 'X_A', 0, 500),
  X_C: size('usable length of thread C', 'X_C', 0, 500),
  n_max: { says: 'turns available', unit: 'turn', min: 0, max: 1e4, tex: 'n_{\\max}' },
  S: motion('stroke of the carried part', 'S', 1e4),
  // Tolerances and wires
  d_lo: size('lower end of the diameter step', 'd_{\\mathrm{lo}}', 0.9, 200),
  d_hi: size('upper end of the diameter step', 'd_{\\mathrm{hi}}', 1, 400),
  d_s: size('diameter that stands for the step', 'd_{\\mathrm{s}}', 0.9, 300),
  T_d2: motion('tolerance on the pitch diameter of the screw, grade 6', 'T_{d_2}', 5),
  T_D2: motion('tolerance on the pitch diameter of the nut, grade 6', 'T_{D_2}', 5),
  es_g: motion('upper deviation of position g', 'es_{\\mathrm{g}}', 5),
  L_e: size('length of engagement', 'L_{\\mathrm{e}}', 0.1, 400),
  T_2A: motion('tolerance on the pitch diameter of the screw, class 2A', 'T_{\\mathrm{2A}}', 5),
  A_2A: motion('allowance of class 2A', 'A_{\\mathrm{2A}}', 5),
  w_b: size('best wire', 'w_{\\mathrm{b}}', 0.02, 16),
  w_w: size('wire diameter', 'w_{\\mathrm{w}}', 0.02, 30),
  M_w: size('measurement over three wires', 'M_{\\mathrm{w}}', 0.1, 500),
  c_w: motion('share of the measurement due to the slope of the wires', 'c_{\\mathrm{w}}', 5),
  // Force, torque, contact, heat, and other ways to the same motion
  F: force('load along the axis', 'F'),
  F_0: force('preload at the start', 'F_0'),
  F_s: force('force of the spring', 'F_{\\mathrm{s}}', -1e5),
  F_t: force('preload left after a time', 'F_t'),
  F_x: force('outside load that pulls apart', 'F_x'),
  F_b: force('force in the spring or bolt under load', 'F_{\\mathrm{b}}'),
  F_m: force('force left between the seated faces', 'F_{\\mathrm{m}}', -1e5),
  F_sep: force('outside load at which the faces part', 'F_{\\mathrm{sep}}', 0, 1e9),
  F_h: force('force of the hand at the rim', 'F_{\\mathrm{h}}', -1e5),
  F_n: force('force across one contact', 'F_{\\mathrm{n}}'),
  F_y: force('load at first yield', 'F_{\\mathrm{y}}', 0, 1e15),
  u_s: motion('stretch or squeeze added to the spring', 'u_{\\mathrm{s}}'),
  k_s: rate('rate of the spring', 'k_{\\mathrm{s}}'),
  k_b: rate('stiffness of the spring or bolt', 'k_{\\mathrm{b}}'),
  k_m: rate('stiffness of the parts pressed together', 'k_{\\mathrm{m}}'),
  k_c: rate('stiffness of the contact', 'k_{\\mathrm{c}}', 0),
  k_l: rate('stiffness of the shank along its length', 'k_{\\mathrm{l}}'),
  k_1: rate('stiffness of the first part in the chain', 'k_1'),
  k_2: rate('stiffness of the second part in the chain', 'k_2'),
  k_12: rate('stiffness of two parts in a chain', 'k_{12}'),
  q_r: ratio('share of the preload lost per tenfold time', 'q_{\\mathrm{r}}', 0, 1),
  t: duration('time', 't', 0),
  t_0: duration('starting time of the log law', 't_0', 1e-6),
  tau_w: duration('warming time, to 63 % of the way', '\\tau_{\\mathrm{w}}', 1e-4),
  g_k: size('gap of the key in its slot', 'g_{\\mathrm{k}}', 0, 10),
  r_k: size('radius at which the key bears', 'r_{\\mathrm{k}}', 0.1, 500),
  z_k: motion('motion of the tip that the key gap allows', 'z_{\\mathrm{k}}', 1e3),
  kappa: torque('stiffness of the lock against turning, torque per radian', '\\kappa', 1e-3, 1e9),
  kappa_d: torque('twisting stiffness of hand, key and shank, torque per radian', '\\kappa_{\\mathrm{d}}', 1, 1e9),
  M_L: torque('torque handed to the carried part, anticlockwise seen from above', 'M_{\\mathrm{L}}'),
  mu: ratio('coefficient of friction', '\\mu', 0, 1),
  mu_b: ratio('coefficient of friction under the collar or tip', '\\mu_{\\mathrm{b}}', 0, 1),
  beta_f: angle('half angle of the flanks, 30° for a 60° thread, 0° for a square one', '\\beta', 0, 60),
  rho: angle('friction angle', '\\rho', 0, 64),
  M_up: torque('torque of one thread that climbs against the load', 'M_{\\uparrow}'),
  M_down: torque('torque of one thread that yields to the load', 'M_{\\downarrow}'),
  M_A: torque('torque at thread A', 'M_A'),
  M_C: torque('torque at thread C', 'M_C'),
  M: torque('torque at the turned part', 'M'),
  M_free: torque('torque without friction', 'M_{\\mathrm{free}}'),
  M_b: torque('torque under the collar or tip', 'M_{\\mathrm{b}}'),
  M_s: torque('torque that starts it', 'M_{\\mathrm{s}}', 0),
  M_k: torque('torque that keeps it turning', 'M_{\\mathrm{k}}', 0),
  eta: ratio('efficiency', '\\eta', 0, 1),
  d_b: size('mean diameter of the collar or tip contact', 'd_{\\mathrm{b}}', 0, 500),
  r_h: size('radius at which the hand pushes', 'r_{\\mathrm{h}}', 1, 2000),
  K_n: ratio('nut factor', 'K', 0.01, 1),
  tau_c: stress('greatest shear stress in the core', '\\tau', 0, 1e9),
  theta_j: angle('angle of one jump', '\\theta_{\\mathrm{j}}', 0, 1e6),
  s_j: motion('motion of the carried part in one jump', 's_{\\mathrm{j}}', 1e6),
  E_1: stress('Young’s modulus of the first part', 'E_1', 1, 1e6),
  E_2: stress('Young’s modulus of the second part', 'E_2', 1, 1e6),
  E_l: stress('Young’s modulus of the shank', 'E', 1, 1e6),
  E_s: stress('contact modulus', 'E^{*}', 0.5, 1e6),
  nu_1: ratio('Poisson’s ratio of the first part', '\\nu_1', 0, 0.5),
  nu_2: ratio('Poisson’s ratio of the second part', '\\nu_2', 0, 0.5),
  R: size('radius of the ball', 'R', 0.05, 500),
  R_c: size('radius of the rollers', 'R_{\\mathrm{c}}', 0.05, 500),
  e_r: size('distance between the centres of the rollers', 'e_{\\mathrm{r}}', 0.1, 1000),
  a_c: size('radius of the contact', 'a', 0, 500),
  delta: motion('approach of the two bodies', '\\delta'),
  delta_v: motion('sink of the ball', '\\delta_{\\mathrm{v}}'),
  p_0: stress('peak pressure in the contact', 'p_0', 0, 1e9),
  Y: stress('yield strength of the softer part', 'Y', 0.1, 5000),
  beta_v: angle('half angle of the vee', '\\beta_{\\mathrm{v}}', 0, 90),
  D_b: size('diameter of the ball', 'D_{\\mathrm{b}}', 0.3, 100),
  s_f: size('width across the flats of the socket', 's_{\\mathrm{f}}', 0.3, 100),
  I_b: motion('interference on the diameter', 'I', 1e3),
  l: size('length in the path', 'l', 0.01, 1e4),
  alpha_T: { says: 'coefficient of thermal expansion', unit: '1/K', min: -1e-4, max: 1e-3, tex: '\\alpha' },
  Delta_T: { says: 'change of temperature', unit: 'K', min: -300, max: 300, tex: '\\Delta T' },
  Delta_Tw: {
    says: 'change of temperature in the end',
    unit: 'K',
    min: -300,
    max: 300,
    tex: '\\Delta T_{\\infty}',
  },
  Delta_l: motion('growth in length', '\\Delta l', 1e4),
  c_d: motion('creep per tenfold time', 'c_{10}', 10),
  z_d: motion('creep', 'z_{\\mathrm{d}}', 1e3),
  phi_w: angle('angle of the wedge', '\\varphi', 0, 60),
  x_w: motion('travel of the wedge', 'x_{\\mathrm{w}}', 1e3),
  b_l: size('short arm of the lever', 'b', 0.1, 1e4),
  a_l: size('long arm of the lever', 'a', 0.1, 1e4),
  z_l: motion('motion put in at the long arm', 'z_{\\mathrm{l}}', 1e3),
  r_t: size('radius of the ball on top', 'r', 0.05, 500),
  R_t: size('radius of the three balls beneath', 'R', 0.05, 500),
  s_t: size('distance between the centres of the balls beneath', 's', 0.1, 1000),
  h_t: size('height of the top centre over the centres beneath', 'h', 0, 1000),
  m_t: ratio('fall of the top ball per millimetre of spread', 'm', 0, 1e9),
  // Play and flanks, lead error
  D_2: size('pitch diameter of the internal thread', 'D_2', 0.1, 400),
  c: size('pitch-diameter clearance', 'c', -2, 5),
  c_A: size('pitch-diameter clearance of thread A', 'c_A', -2, 5),
  c_C: size('pitch-diameter clearance of thread C', 'c_C', -2, 5),
  j: { ...motion('axial play', 'j', 3), min: 0 },
  j_A: { ...motion('axial play of thread A', 'j_A', 3), min: 0 },
  j_C: { ...motion('axial play of thread C', 'j_C', 3), min: 0 },
  r_f: { ...motion('radial float', 'r_{\\mathrm{f}}', 5), min: 0 },
  l_e: size('engaged length of thread', '\\ell', 0.1, 500),
  tau: { says: 'tilt to either side of square', unit: 'rad', min: 0, max: 0.5, tex: '\\tau', shown: 'degrees' },
  y: size('height of the tip above the middle of the engagement', 'y', 0, 1000),
  y_t: { ...motion('tip float to either side', 'y_{\\mathrm{t}}', 500), min: 0 },
  n_j: { says: 'turns lost on reversal', unit: 'turn', min: 0, max: 1e6, tex: 'n_j' },
  m_j: ratio('steps lost on reversal', 'm_j', 0, 1e10),
  eps_A: { ...ratio('relative lead error of thread A', '\\varepsilon_A', -0.05, 0.05), shown: 'percent' },
  eps_C: { ...ratio('relative lead error of thread C', '\\varepsilon_C', -0.05, 0.05), shown: 'percent' },
  eps: { ...ratio('relative error of the net lead', '\\varepsilon', -1e9, 1e9), shown: 'percent' },
  eps_w: { ...ratio('worst relative error of the net lead', '\\varepsilon_{\\mathrm{w}}', 0, 1e9), shown: 'percent' },
  eps_r: {
    ...ratio('root-sum-square relative error of the net lead', '\\varepsilon_{\\mathrm{r}}', 0, 1e9),
    shown: 'percent',
  },
  a_A: { ...motion('amplitude of the periodic error of thread A', 'a_A', 0.5), min: 0 },
  a_C: { ...motion('amplitude of the periodic error of thread C', 'a_C', 0.5), min: 0 },
  v_p: { ...motion('steepest motion per turn of the periodic errors', 'v_{\\mathrm{p}}', 7), min: 0 },
  v_min: motion('slowest motion per turn', 'v_{\\min}', 130),
  delta_L: motion('lead deviation over the engagement', '\\delta_L', 1),
  d_e: { ...motion('pitch-diameter equivalent', 'd_{\\mathrm{e}}', 60), min: 0 },
  // Levelling and calibration
  x_s: { ...size('place along x', 'x', 0, 1e4), min: -1e4 },
  y_s: { ...size('place along y', 'y', 0, 1e4), min: -1e4 },
  p_z: motion('height of the plane at the origin', 'p', 1e3),
  q_x: ratio('rise of the plane along x, per length', 'q', -1, 1),
  r_y: ratio('rise of the plane along y, per length', 'r', -1, 1),
  t_p: ratio('tilt of the plane, its steepest rise per length', 't', 0, 2),
  theta_p: angle('angle of the plane to the level', '\\vartheta', 0, 60),
  theta_i: angle('angle between the gauge and the motion', '\\theta_{\\mathrm{i}}', -75, 75),
  theta_c: angle('change of tilt over the motion', '\\theta_{\\mathrm{c}}', -30, 30),
  a_o: { ...size('distance of the gauge beside the axis', 'a_{\\mathrm{o}}', 0, 1e3), min: -1e3 },
  e_c: motion('cosine error of the reading', 'e_{\\mathrm{c}}', 4e3),
  e_a: motion('Abbe error of the reading', 'e_{\\mathrm{a}}', 1e3),
} as const satisfies Record<string, SymbolFact>;

export type SymbolName = keyof typeof SYMBOLS;

export const symbolFact = (name: SymbolName): SymbolFact => SYMBOLS[name];
export const isSymbol = (name: string): name is SymbolName => Object.hasOwn(SYMBOLS, name);
