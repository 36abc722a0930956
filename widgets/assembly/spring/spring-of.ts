/** The printed springs that a reader’s numbers ask for, each with its force over the stroke and after a time, its scatter and what it is worth as a lock. */
import {
  bad,
  type CoilDesign,
  designCoil,
  designSpring,
  good,
  hours,
  mm,
  newtons,
  PLASTICS,
  type Plastic,
  plain,
  type Result,
  retainedForce,
  type SpringDesign,
  type SpringForm,
  thicknessScatter,
} from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import { type DrawnSpring, drawnLock } from '../adjuster/drawn-springs.ts';
import { writeDrawnSprings } from '../adjuster/spring-row.ts';
import { FIRST_READING } from './year.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'plastic-unknown': { readonly name: string; readonly known: readonly string[] };
  }
}

export const SPRING_QUANTITIES = [
  'F_k',
  'u_f',
  'S_w',
  'l_f',
  'w_f',
  'b_f',
  'w_l',
  'E_f',
  'eps_m',
  't_e',
  'q_r',
  't',
  'N_f',
  'r_k',
] as const;

export interface SpringNumbers {
  readonly values: Readonly<Record<(typeof SPRING_QUANTITIES)[number], number>>;
  readonly choices: { readonly plastic: OptionOf<'plastic'>; readonly ranked: OptionOf<'ranked'> };
}

export interface Spring {
  readonly design: SpringDesign;
  /** Change of its rate, and so of its force at the mark, where it prints thinner and thicker by the error stated. */
  readonly scatter: { readonly thinner: number; readonly thicker: number };
  /** N·mm a radian of all springs together, and N/mm across of one. */
  readonly lock: { readonly across: number; readonly kappa: number } | undefined;
}

export interface Springs {
  readonly springs: readonly Spring[];
  /** A bought one of the same rate in the same room, where there is one. */
  readonly coil: CoilDesign | undefined;
  /** Undefined where its numbers are the reader’s own. */
  readonly plastic: Plastic | undefined;
  readonly E: number;
  readonly loss: number;
  readonly force: { readonly mark: number; readonly least: number; readonly most: number; readonly later: number };
}

export const springsOf = ({ values: v, choices }: SpringNumbers): Result<Springs> => {
  const plastic = PLASTICS.find((p) => p.name === choices.plastic);
  if (!plastic && choices.plastic !== 'as measured')
    return bad('plastic-unknown', { name: choices.plastic, known: PLASTICS.map((p) => p.name) });
  const E = plastic?.E[1] ?? v.E_f;
  const loss = plastic ? (plastic.loss[0] + plastic.loss[1]) / 2 : v.q_r;
  const wish = {
    force: v.F_k,
    stretch: v.u_f,
    beyond: v.S_w / 2,
    length: v.l_f,
    width: v.w_f,
    height: v.b_f,
    E,
    line: v.w_l,
    strain: v.eps_m,
  };
  const designs = designSpring(wish);
  if (!designs.ok) return designs;
  const later = retainedForce.of({ F_0: newtons(v.F_k), q_r: plain(loss), t: hours(v.t), t_0: hours(FIRST_READING) });
  if (!later.ok) return later;
  const springs: Spring[] = [];
  for (const design of designs.value) {
    const scatter = (t_e: number) => thicknessScatter.of({ t_e: mm(t_e), t_f: mm(design.t) });
    const [thinner, thicker] = [scatter(-Math.abs(v.t_e)), scatter(Math.abs(v.t_e))];
    if (!thinner.ok || !thicker.ok) continue;
    springs.push({
      design,
      scatter: { thinner: thinner.value.q_k, thicker: thicker.value.q_k },
      lock: lockOf(design, E, v),
    });
  }
  const first = springs[0];
  if (!first) return bad('strip-without-thickness', {});
  const { k } = first.design;
  return good({
    springs: ranked(springs, choices.ranked),
    coil: designCoil(wish),
    plastic,
    E,
    loss,
    force: {
      mark: v.F_k,
      least: v.F_k - (k * v.S_w) / 2,
      most: v.F_k + (k * v.S_w) / 2,
      later: later.value.F_t,
    },
  });
};

const ranked = (springs: readonly Spring[], by: OptionOf<'ranked'>): readonly Spring[] => {
  const rank = (s: Spring): number =>
    by === 'least strain'
      ? s.design.strain
      : by === 'least scatter'
        ? s.scatter.thicker
        : s.design.width * s.design.free;
  return [...springs].sort((a, b) => rank(a) - rank(b) || a.design.strain - b.design.strain);
};

const lockOf = (d: SpringDesign, E: number, v: SpringNumbers['values']): Spring['lock'] => {
  const lock = drawnLock(drawnSpring(d, E, v), { count: v.N_f, radius: v.r_k, pull: v.F_k });
  return lock.ok ? lock.value : undefined;
};

const drawnSpring = (form: SpringForm, modulus: number, v: SpringNumbers['values']): DrawnSpring => ({
  form,
  high: form.shape === 'coil' ? 0 : v.b_f,
  length: form.shape === 'strap' ? 0 : v.l_f,
  modulus,
});

/** A hundredth of a millimetre, finer than any printer, so that what is shown, written and read back are the same digits. */
const hundredth = (x: number): number => Number(x.toFixed(2));

/** The form as it is written and made, its sizes to a hundredth. */
export const asMade = (f: SpringForm): SpringForm => {
  const t = hundredth(f.t);
  switch (f.shape) {
    case 'meander': {
      const p = hundredth(f.p);
      return { shape: f.shape, m: f.m, L: hundredth(f.L), p, stub: p / 2, t };
    }
    case 'strap':
      return { shape: f.shape, l: hundredth(f.l), t };
    case 'coil':
      return { shape: f.shape, turns: hundredth(f.turns), D: hundredth(f.D), t };
    default:
      return { shape: f.shape, cells: f.cells, R: hundredth(f.R), h: hundredth(2 * f.h) / 2, t };
  }
};

/** The row that puts springs of this form, as often as stated, among the parts of an adjuster. */
export const rowOfSpring = (form: SpringForm, { E, loss, coil }: Springs, v: SpringNumbers['values']): string =>
  writeDrawnSprings(drawnSpring(asMade(form), form.shape === 'coil' ? (coil?.G ?? E) : E, v), {
    count: v.N_f,
    radius: v.r_k,
    force: v.N_f * v.F_k,
    // Steel wire loses nothing that an adjuster would notice.
    loss: form.shape === 'coil' ? undefined : loss,
  });
