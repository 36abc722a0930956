/**
 * Plastics that springs are printed of: what can be said before anything is measured.
 *
 * Modulus: printed bars lying flat, filled, from makers’ data sheets, second-hand; the span is that of the sheets that were read. Once: strain that a strip stands once, layers
 * along it (makers’ guides for moulded parts and practitioners, second-hand). Loss: share of the force at one minute lost in each tenfold time. That of PC, ABS, ASA and nylon is a
 * bracket round one moulded data sheet each; those of PLA and PETG are assumptions, placed by a published ranking of printed bars. Warm: glass
 * transition, °C. A spring that stays stretched should not be strained by more than about 0.5 % (engineering judgement, no source).
 */
export interface Plastic {
  readonly name: string;
  /** MPa: least, usual and greatest of the sheets that were read. */
  readonly E: readonly [least: number, usual: number, greatest: number];
  readonly once: number;
  /** Per tenfold time. */
  readonly loss: readonly [least: number, most: number];
  readonly lossIs: 'one moulded sheet' | 'assumption';
  /** °C */
  readonly glass: number;
}

export const PLASTICS: readonly Plastic[] = [
  { name: 'PLA', E: [2300, 2880, 3640], once: 0.02, loss: [0.08, 0.15], lossIs: 'assumption', glass: 55 },
  { name: 'PETG', E: [1500, 2117, 2200], once: 0.03, loss: [0.05, 0.1], lossIs: 'assumption', glass: 70 },
  { name: 'ABS', E: [2100, 2247, 2351], once: 0.017, loss: [0.06, 0.11], lossIs: 'one moulded sheet', glass: 101 },
  { name: 'ASA', E: [2175, 2379, 2500], once: 0.019, loss: [0.06, 0.11], lossIs: 'one moulded sheet', glass: 98 },
  { name: 'PC', E: [2400, 2435, 2497], once: 0.04, loss: [0.03, 0.06], lossIs: 'one moulded sheet', glass: 113 },
  { name: 'nylon, dry', E: [1800, 2703, 3000], once: 0.03, loss: [0.08, 0.13], lossIs: 'one moulded sheet', glass: 55 },
];

/** Share of its once-only strain that a part stands again and again: 60 % (makers’ guides for moulded parts). */
export const REPEATED = 0.6;
