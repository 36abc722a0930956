/**
 * How much higher the tip stands a kelvin of warming, all parts alike. The load goes from the ground through the base to the middle of thread A, through the turned part to the middle of
 * thread C, and through the carried part to the tip; where thread C lies below thread A the turned part leads it down, and its growth takes some of the others’ away.
 */
import { good, kelvins, mm, perKelvin, type Result, thermalGrowth, thermalMaterial } from '../../engine/index.ts';
import { type Adjuster, type Fitted, standing } from './adjuster.ts';
import { engagedAt } from './joint.ts';
import type { MaterialName } from './part.ts';

/** Names of the table of materials that carry heat; of bronze it has none. */
const IN_TABLE: Readonly<Partial<Record<MaterialName, string>>> = {
  steel: 'steel',
  brass: 'brass',
  aluminium: 'aluminium',
  plastic: 'printed PLA',
};

/** Middle of an engaged thread, in the frame of its lower part. */
const middleOf = ({ joint }: Fitted, t: number): number =>
  Math.max(joint.lower.from, joint.upper.from + t) + engagedAt(joint, t) / 2;

export interface WarmPath {
  /** mm a kelvin. */
  readonly growth: number;
  /** What the parts that carry are made of, from the base up, by the names of the table. */
  readonly made: readonly { readonly name: string; readonly creeps: boolean }[];
}

/** Refused where the growth of a material is not known. */
export const warmPath = (a: Adjuster): Result<WarmPath> => {
  const now = standing(a, 0);
  const top = now.height;
  const A = middleOf(a.A, now.at.turned);
  const C = a.C ? now.at.turned + middleOf(a.C, now.at.carried - now.at.turned) : top;
  const spans: readonly (readonly [MaterialName, number])[] = [
    [a.base.material, A],
    [a.turned.material, C - A],
    ...(a.carried ? [[a.carried.material, top - C] as const] : []),
  ];
  let growth = 0;
  const made: { name: string; creeps: boolean }[] = [];
  for (const [name, span] of spans) {
    const material = thermalMaterial(IN_TABLE[name] ?? name);
    if (!material.ok) return material;
    const grown = thermalGrowth.of({
      alpha_T: perKelvin(material.value.alpha),
      l: mm(Math.abs(span)),
      Delta_T: kelvins(1),
    });
    if (!grown.ok) return grown;
    made.push(material.value);
    growth += Math.sign(span) * grown.value.Delta_l;
  }
  return good({ growth, made });
};

/** mm a kelvin; undefined where the growth of a material is not known. */
export const growthPerKelvin = (a: Adjuster): number | undefined => {
  const path = warmPath(a);
  return path.ok ? path.value.growth : undefined;
};
