import { tenfoldTimes } from '../force/log-law.ts';
import { kelvins, mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'no-such-material': { readonly read: string; readonly known: readonly string[] };
  }
}

export const thermalGrowth = relation({
  name: 'thermal-growth',
  says: 'Growth of a length when it warms.',
  takes: ['alpha_T', 'l', 'Delta_T'],
  gives: { Delta_l: 'alpha_T*l*Delta_T' },
  source: 'Definition of the coefficient of linear expansion.',
  compute: ({ alpha_T, l, Delta_T }) => ({ Delta_l: mm(alpha_T * l * Delta_T) }),
});

export const warming = relation({
  name: 'warming',
  says: 'Change of temperature of a part that a warm hand or a new room brings to its end value.',
  takes: ['Delta_Tw', 't', 'tau_w'],
  gives: { Delta_T: 'Delta_Tw*(1 - exp(-t/tau_w))' },
  source: 'Newton’s law of cooling, one body and one resistance; 63 % of the way after one warming time.',
  // 1 − exp loses its digits in the first moments.
  compute: ({ Delta_Tw, t, tau_w }) => ({ Delta_T: kelvins(-Delta_Tw * Math.expm1(-t / tau_w)) }),
});

export const logCreep = relation({
  name: 'log-creep',
  says: 'Creep of a loaded part by the log law: as much in each tenfold time as in the one before.',
  takes: ['c_d', 't', 't_0'],
  gives: { z_d: 'c_d*log(1 + t/t_0)/log(10)' },
  source: 'Logarithmic creep, the usual law well below softening; the creep per tenfold time is the reader’s own.',
  compute: ({ c_d, t, t_0 }) => ({ z_d: mm(c_d * tenfoldTimes(t, t_0)) }),
});

/** Where a value comes from: read in a named source, in tables of no name, or recalled. */
export type ThermalStanding = 'source' | 'general tables' | 'from memory';

export interface ThermalMaterial {
  readonly name: string;
  /** Coefficient of linear expansion, 1/K. */
  readonly alpha: number;
  /** Values others give, 1/K. */
  readonly range: readonly [least: number, most: number];
  readonly standing: ThermalStanding;
  readonly source: string;
  /** True where it creeps at room temperature in the load path. */
  readonly creeps: boolean;
}

const SWYT = 'Swyt, J. Res. NIST 99 (1994) 31';

export const THERMAL_MATERIALS: readonly ThermalMaterial[] = [
  { name: 'steel', alpha: 11.5e-6, range: [11.5e-6, 12e-6], standing: 'source', source: SWYT, creeps: false },
  { name: 'aluminium', alpha: 23.1e-6, range: [23.1e-6, 24e-6], standing: 'source', source: SWYT, creeps: false },
  { name: 'silicon', alpha: 2.6e-6, range: [2.6e-6, 2.6e-6], standing: 'source', source: SWYT, creeps: false },
  {
    name: 'brass',
    alpha: 19e-6,
    range: [19e-6, 19e-6],
    standing: 'general tables',
    source: 'General tables',
    creeps: false,
  },
  {
    name: 'granite',
    alpha: 7.9e-6,
    range: [4e-6, 8.3e-6],
    standing: 'general tables',
    source: 'General tables; suppliers quote from 4 to 8.3',
    creeps: false,
  },
  {
    name: 'printed PLA',
    alpha: 68e-6,
    range: [60e-6, 90e-6],
    standing: 'from memory',
    source: 'No measured value was read; measure your own',
    creeps: true,
  },
];

export const thermalMaterial = (name: string): Result<ThermalMaterial> => {
  const found = THERMAL_MATERIALS.find((m) => m.name === name);
  return found ? good(found) : bad('no-such-material', { read: name, known: THERMAL_MATERIALS.map((m) => m.name) });
};
