/**
 * What an adjuster says of the numbers that pages ask for: threads, lengths, usable lengths, divider, tip, as texts that fields take. A page that
 * holds a design described by its parts gets them from here and nowhere else.
 */
import type { SymbolName } from '../../engine/index.ts';
import { CHOICES } from '../../input/choices.ts';
import { writeQuantity } from '../numbers.ts';
import { type Adjuster, type Fitted, springForce } from './adjuster.ts';
import type { Arrangement } from './from-numbers.ts';
import { lockStiffnessOf } from './lock-stiffness.ts';
import type { ThreadEnd } from './part.ts';
import { designationWithCoat, jointPlay } from './play.ts';

/** The arrangement by its ends, where it is one that pages name. */
export const arrangementOf = ({ A, C, turned }: Adjuster): Arrangement | undefined => {
  if (!C) return undefined;
  const [below, above] = [A.joint.upper, C.joint.lower];
  const inside = (x: ThreadEnd, y: ThreadEnd) => Math.min(x.to, y.to) - Math.max(x.from, y.from) > 1e-9;
  if (below.gender === 'external' && above.gender === 'internal')
    return inside(below, above) || turned.kind === 'sleeve' ? 'nested' : 'thread adapter';
  if (below.gender === 'external' && above.gender === 'external')
    return C.joint.home === 'to' ? 'one spindle, two nuts' : 'in line';
  return undefined;
};

const assemblyOf = ({ assembled: { A, C } }: Adjuster): string | undefined => {
  const [mid, home, mixed] = CHOICES.assembly.options;
  if (A === 'middle' && C === 'middle') return mid;
  if (A === 'home' && C === 'home') return home;
  return A === 'middle' && C === 'home' ? mixed : undefined;
};

/** Forces and stiffnesses are known to no more than this many digits. */
const WORKED = 5;

export const numbersOfAdjuster = (a: Adjuster): Readonly<Record<string, string>> => {
  const numbers: Record<string, string> = { A: designationWithCoat(a.A) };
  const put = (name: SymbolName, value: number | undefined) => {
    if (value !== undefined) numbers[name] = writeQuantity(name, value, 'metric');
  };
  /** A result that no maker typed, to as many digits as anybody can use in a field. */
  const putWorked = (name: SymbolName, value: number | undefined) => {
    if (value !== undefined) put(name, Number(value.toPrecision(WORKED)));
  };
  const lengths = (ends: readonly ThreadEnd[], letter: 'A' | 'C') => {
    for (const end of ends) put(`${end.gender === 'external' ? 'l' : 'b'}_${letter}`, end.to - end.from);
  };
  /** Middling pieces stand for measured ones where both ends were measured within limits, and wherever one play is asked for. */
  const play = (fitted: Fitted, letter: 'A' | 'C'): boolean => {
    const found = jointPlay(fitted);
    if (!found.ok) return false;
    const { screw, nut, clearance, least, most, measured } = found.value;
    put(`d_2min_${letter}`, screw.min);
    put(`d_2max_${letter}`, screw.max);
    put(`D_2min_${letter}`, nut.min);
    put(`D_2max_${letter}`, nut.max);
    if (least.ok && most.ok) put(`j_${letter}`, (least.value + most.value) / 2);
    if (measured) put(`c_m${letter}`, (clearance.least + clearance.most) / 2);
    return measured;
  };
  lengths([a.A.joint.lower, a.A.joint.upper], 'A');
  put('X_A', a.A.usable);
  let measured = play(a.A, 'A');
  if (a.C) {
    numbers.C = designationWithCoat(a.C);
    lengths([a.C.joint.lower, a.C.joint.upper], 'C');
    put('X_C', a.C.usable);
    measured = play(a.C, 'C') && measured;
  }
  if (a.C && measured) numbers.pieces = 'as measured';
  put('q_e', a.keptDiameters);
  const arrangement = arrangementOf(a);
  if (arrangement !== undefined) numbers.arrangement = arrangement;
  const assembly = assemblyOf(a);
  if (assembly !== undefined) numbers.assembly = assembly;
  numbers.divider = a.divider;
  put('k_d', a.divisions);
  put('s_w', a.wantedStep);
  // All there is between the stops, where no other stroke is asked for.
  put('n_w', a.turns);
  if (a.tip.kind === 'ball') put('R', a.tip.diameter / 2);
  if (a.springs) {
    numbers.spring = a.springs.between;
    putWorked('k_s', a.springs.rate);
    put('q_r', a.springs.loss);
    // Pages count the stroke from its one end; the maker sets the force where the adjuster is put together.
    putWorked('F_0', springForce(a, a.anticlockwise.n));
  }
  if (a.lock.kind === 'key' || a.lock.kind === 'post') {
    numbers.keeper = 'a key';
    put('g_k', a.lock.clearance);
    put('r_k', a.lock.radius);
  } else if (a.lock.kind === 'springs') {
    numbers.keeper = 'springs';
    // Springs have no slot to be loose in.
    put('g_k', 0);
    if (a.springs) {
      put('r_k', a.springs.radius);
    }
  }
  putWorked('kappa', lockStiffnessOf(a));
  return numbers;
};

/** For pages on springs round the axis: how many, and how far out; there a key’s distance is not meant. */
export const springPlaceNumbers = ({ springs }: Adjuster): Readonly<Record<string, string>> => ({
  ...(springs && { N_f: writeQuantity('N_f', springs.count, 'metric') }),
  ...(springs?.radius !== undefined && { r_k: writeQuantity('r_k', springs.radius, 'metric') }),
});

/** For pages on the parts that hold: the hexagon that clip and cap go on, and where and how thick the springs are that hang in it. */
export const holdingNumbers = ({ base, turned, springs }: Adjuster): Readonly<Record<string, string>> => {
  const numbers: Record<string, string> = {};
  const put = (name: SymbolName, value: number | undefined) => {
    if (value !== undefined) numbers[name] = writeQuantity(name, value, 'metric');
  };
  const held = [base, turned].flatMap(({ outer }) => outer.filter(({ shape }) => shape === 'hexagon'))[0];
  put('w_n', held && 2 * held.r);
  // A key has its distance from the axis under the same name elsewhere.
  put('r_k', springs?.radius);
  const drawn = springs?.drawn;
  // A coil has no strip to hang in a slot.
  if (drawn && drawn.form.shape !== 'coil') {
    put('t_f', drawn.form.t);
    put('b_f', drawn.high);
    put('E_f', drawn.modulus);
  }
  return numbers;
};
