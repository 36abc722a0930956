/** What the figure shows, from the reader's designation: limits of screw and nut, what is left between, and the rows of the table. */

import { WORDS } from '#words/figures/thread-limits.ts';
import { LIMITS_REMARKS } from '#words/thread.ts';
import {
  type Basis,
  clearanceOfPair,
  type ExternalLimits,
  good,
  type InternalLimits,
  mm,
  nearestDrills,
  nutLimits,
  type PairClearance,
  plain,
  type Result,
  screwLimits,
  shareOfThread,
  tapDrill,
} from '../../engine/index.ts';
import { show, type UnitView } from '../../input/format.ts';
import type { NumbersOf } from '../kit/figure.ts';

export interface State {
  readonly screw: ExternalLimits;
  readonly nut: InternalLimits;
  readonly clearance: PairClearance;
  readonly notes: readonly string[];
  readonly hole: Hole;
}

/** The hole before tapping the nut, for the share of thread asked. */
export interface Hole {
  readonly share: number;
  readonly size: number;
  /** Drills near it, each with the share of thread it leaves. */
  readonly drills: readonly { readonly name: string; readonly share: number }[];
  /** Where the hole lies by the limits of the nut’s minor diameter. */
  readonly lies: 'within' | 'below' | 'above';
}

export const stateOf = ({ threads: { thread }, values }: NumbersOf<'thread', 'q_t', never, never>): Result<State> => {
  const screw = screwLimits(thread);
  if (!screw.ok) return screw;
  const nut = nutLimits(thread);
  if (!nut.ok) return nut;
  const hole = holeFor(nut.value.limits, values.q_t);
  if (!hole.ok) return hole;
  const clearance = clearanceOfPair(screw.value.limits, nut.value.limits);
  if (!clearance.ok) return clearance;
  const everyday = [
    ...(screw.value.stated ? [] : [WORDS.screwAsClass(screw.value.limits.cls)]),
    ...(nut.value.stated ? [] : [WORDS.nutAsClass(nut.value.limits.cls)]),
  ];
  const { limits: s } = screw.value;
  const { limits: n } = nut.value;
  return good({
    screw: s,
    nut: n,
    clearance: clearance.value,
    hole: hole.value,
    notes: [
      ...(everyday.length > 0 ? [WORDS.everyday(everyday)] : []),
      ...[...new Set([...s.remarks, ...n.remarks])].map((remark) => LIMITS_REMARKS[remark]),
    ],
  });
};

const holeFor = ({ thread, minor }: InternalLimits, share: number): Result<Hole> => {
  const { d, P } = thread;
  const hole = tapDrill.of({ d, P, q_t: plain(share) });
  if (!hole.ok) return hole;
  const size = hole.value.d_t;
  const { metric, inch } = nearestDrills(size);
  const drills = [metric, inch].flatMap((drill) => {
    const left = drill && shareOfThread.of({ d, P, d_t: mm(drill.size) });
    return drill && left?.ok ? [{ name: drill.name, share: left.value.q_t }] : [];
  });
  return good({ share, size, drills, lies: size < minor.min ? 'below' : size > minor.max ? 'above' : 'within' });
};

/** Digits down to the micrometre, or to its like in inches. */
export const digitsOf = (mm: number): number => Math.max(1, Math.floor(Math.log10(Math.abs(mm) || 1)) + 4);
export const limit = (mm: number, view: UnitView): string => show(mm, { shown: 'size', digits: digitsOf(mm) }, view);

export const gap = (mm: number, view: UnitView): string => show(mm, { shown: 'motion' }, view);

export interface Row {
  readonly diameter: string;
  readonly least: string;
  readonly greatest: string;
  readonly tolerance: string;
  readonly basis: string;
  readonly byFormula: boolean;
}

export const rowsOf = ({ screw, nut }: State, view: UnitView): readonly Row[] => {
  const by = (basis: Basis, standard: string) => ({
    basis:
      basis === 'measured' ? WORDS.asMeasured : basis === 'table' ? WORDS.byTable(standard) : WORDS.byFormula(standard),
    byFormula: basis === 'formula',
  });
  const zone = (diameter: string, z: ExternalLimits['pitch'], standard: string): Row => ({
    diameter,
    least: limit(z.min, view),
    greatest: limit(z.max, view),
    tolerance: gap(z.tolerance, view),
    ...by(z.basis, standard),
  });
  return [
    zone(WORDS.diameters.screwMajor, screw.major, screw.standard),
    zone(WORDS.diameters.screwPitch, screw.pitch, screw.standard),
    {
      diameter: WORDS.diameters.screwMinor,
      least: WORDS.noLimit,
      greatest: limit(screw.minor.max, view),
      tolerance: '',
      ...by(screw.minor.basis, screw.standard),
    },
    {
      diameter: WORDS.diameters.nutMajor,
      least: limit(nut.major.min, view),
      greatest: WORDS.noLimit,
      tolerance: '',
      ...by(nut.major.basis, nut.standard),
    },
    zone(WORDS.diameters.nutPitch, nut.pitch, nut.standard),
    zone(WORDS.diameters.nutMinor, nut.minor, nut.standard),
  ];
};

export const cells = (row: Row): readonly [diameter: string, ...rest: string[]] => [
  row.diameter,
  row.least,
  row.greatest,
  row.tolerance,
  row.basis,
];
