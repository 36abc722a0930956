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
  G_A: ratio('gain of thread A', 'G_A', 0, 1e9),
  G_C: ratio('gain of thread C', 'G_C', 0, 1e9),
  // Resolution
  k: { ...ratio('steps in a turn', 'k', 1, 10000), whole: true },
  s: motion('motion per step', 's', 120),
  m: ratio('steps to turn', 'm', -1e9, 1e9),
  w: motion('motion wanted', 'w', 1e3),
  v: motion('motion per division', 'v', 60),
  // Travel
  X_A: size('usable length of thread A', 'X_A', 0, 500),
  X_C: size('usable length of thread C', 'X_C', 0, 500),
  n_max: { says: 'turns available', unit: 'turn', min: 0, max: 1e4, tex: 'n_{\\max}' },
  S: motion('stroke of the carried part', 'S', 1e4),
} as const satisfies Record<string, SymbolFact>;

export type SymbolName = keyof typeof SYMBOLS;

export const symbolFact = (name: SymbolName): SymbolFact => SYMBOLS[name];
export const isSymbol = (name: string): name is SymbolName => Object.hasOwn(SYMBOLS, name);
