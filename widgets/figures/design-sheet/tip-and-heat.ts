/** The ball on its seat, warmth, and what the path of the load is made of. */

import { WORDS } from '#words/figures/design-sheet.ts';
import { LINES } from '#words/figures/design-sheet-lines.ts';
import type { Adjuster } from '../../assembly/adjuster/adjuster.ts';
import { warmPath } from '../../assembly/adjuster/warm-growth.ts';
import { tipOf } from '../../assembly/tip.ts';
import {
  ballOnFlat,
  firstYield,
  good,
  kelvins,
  megapascals,
  mm,
  newtons,
  perKelvin,
  type Result,
  thermalGrowth,
  thermalMaterial,
} from '../../engine/index.ts';
import { numeral, show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import type { Entry } from './budget.ts';
import { AT, type Judge } from './judge.ts';
import { type Line, line, MOTION, words } from './lines.ts';
import { preloadOfSheet, type SheetNumbers } from './sheet-numbers.ts';

/** Loads at the tip, towards the base: weight counts as the adjuster stands, and a tip that is lifted off carries nothing. */
const tipLoads = (numbers: SheetNumbers): Result<{ readonly least: number; readonly most: number }> => {
  const preload = preloadOfSheet(numbers, 0);
  if (!preload.ok) return preload;
  const { F_lo, F_hi, W_c } = numbers.values;
  const weight = W_c * preload.value.given.attitude;
  return good({ least: Math.max(0, F_lo + weight), most: Math.max(0, F_hi + weight) });
};

export const contactOf = (numbers: SheetNumbers, check: Judge['check']): { lines: Line[]; terms: Entry[] } => {
  const { R } = numbers.values;
  const unknown = (why: string) => ({
    lines: [words(LINES.tip.contact, why)],
    terms: [{ name: LINES.tip.sinkTerm, why, at: AT.tip }],
  });
  const tip = tipOf(numbers);
  if (!tip.ok) return unknown(reasonOf(tip));
  const { seat, E_s, Y } = tip.value;
  const loads = tipLoads(numbers);
  if (!loads.ok) return unknown(reasonOf(loads));
  const { least, most } = loads.value;
  const soft = firstYield.of({ R: mm(R), Y: megapascals(Y), E_s: megapascals(E_s) });
  if (!soft.ok) return unknown(reasonOf(soft));
  const { F_y } = soft.value;
  const force = (x: number) => show(x, { shown: 'force', digits: 3 }, 'metric');
  check(most <= F_y, () => LINES.tip.yieldCheck({ seat: seat.name, yields: force(F_y), carries: force(most) }));
  const yields = line(LINES.tip.yields, F_y, { shown: 'force', digits: 3 });
  if (most > F_y) {
    const why = LINES.tip.pastYield;
    return { lines: [words(LINES.tip.tip, why), yields], terms: [{ name: LINES.tip.sinkTerm, why, at: AT.tip }] };
  }
  const at = (F: number) => ballOnFlat.of({ F: newtons(F), R: mm(R), E_s: megapascals(E_s) });
  const [low, high] = [at(least), at(most)];
  if (!low.ok) return unknown(reasonOf(low));
  if (!high.ok) return unknown(reasonOf(high));
  return {
    lines: [
      line(LINES.tip.sinks, high.value.delta, MOTION),
      line(LINES.tip.pressure, high.value.p_0, { shown: 'MPa', digits: 3 }),
      yields,
    ],
    terms: [{ name: LINES.tip.sinkTerm, size: high.value.delta - low.value.delta }],
  };
};

interface Warmth {
  readonly made: readonly { readonly name: string; readonly creeps: boolean }[];
  /** mm, by the warming of the sheet. */
  readonly size: number;
}

/** Of the length and the material that the fields state. */
const ofFields = ({ values, choices }: SheetNumbers): Result<Warmth> => {
  const material = thermalMaterial(choices.path);
  if (!material.ok) return material;
  const { l, Delta_T } = values;
  const growth = thermalGrowth.of({
    alpha_T: perKelvin(material.value.alpha),
    l: mm(l),
    Delta_T: kelvins(Delta_T),
  });
  return growth.ok ? good({ made: [material.value], size: Math.abs(growth.value.Delta_l) }) : growth;
};

/** Of parts that are stated, each with its own length and material. */
const ofParts = ({ values }: SheetNumbers, stated: Adjuster): Result<Warmth> => {
  const path = warmPath(stated);
  if (!path.ok) return path;
  const { made, growth } = path.value;
  return good({ made, size: Math.abs(growth * values.Delta_T) });
};

export const heatOf = (
  numbers: SheetNumbers,
  stated: Adjuster | undefined,
  s: number,
  stepName: string,
  check: Judge['check'],
): { lines: Line[]; terms: Entry[] } => {
  const name = LINES.tip.warmth;
  const unknown = (why: string) => ({
    lines: [words(LINES.tip.growthUnknown, why)],
    terms: [{ name, why, at: AT.warmth }],
  });
  const warmth = stated ? ofParts(numbers, stated) : ofFields(numbers);
  if (!warmth.ok) return unknown(reasonOf(warmth));
  const { made, size } = warmth.value;
  const creeping = made.find((m) => m.creeps);
  check(!creeping, () =>
    creeping ? LINES.tip.creeps(creeping.name) : LINES.tip.noCreep([...new Set(made.map((m) => m.name))]),
  );
  return {
    lines: [line(LINES.tip.grows, size, MOTION), words(LINES.tip.thatIs, WORDS.steps(numeral(size / s, 3), stepName))],
    terms: [{ name, size }],
  };
};
