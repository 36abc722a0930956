/**
 * The hole before tapping, for a stated share of thread.
 *
 * What counts as full thread is a convention. The shop formula takes a double depth of 3/4 H a side, 2 · 3/4 H = 3√3/4 P =
 * 1.299 P, as full:   hole = d − share · 1.299 P   (Machinery's Handbook, tapping drill formula, from memory; inch form
 * D − 0.01299 · per cent / tpi, metric form d − P · per cent / 76.98). On that scale the basic minor diameter d − 1.0825 P is
 * 83.3 %. Others call 1.0825 P full; the same hole then has a share 1.2 times as large. For cutting taps; a forming tap needs a
 * larger hole, for which its maker gives the size. Lengths mm, the share a ratio from 0 to 1.
 */
import { type Millimetres, mm, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';
import { symbolFact } from '../kernel/symbols.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'thread-leaves-no-hole': { readonly share: number; readonly pitch: number; readonly d: number };
    'hole-not-below-thread': { readonly hole: number; readonly d: number };
    'hole-below-any-root': { readonly hole: number; readonly d: number; readonly pitch: number };
  }
}

const FULL = (3 * Math.sqrt(3)) / 4;

export const tapDrill = relation({
  name: 'tap-drill',
  says: 'Hole before tapping for a share of thread, full thread being three quarters of the sharp triangle on each side.',
  takes: ['d', 'q_t', 'P'],
  gives: { d_t: 'd - q_t*3*sqrt(3)/4*P' },
  source: 'Shop formula, D − 0.01299 × per cent / tpi (Machinery’s Handbook, from memory).',
  refuses: ({ d, q_t, P }) =>
    d > q_t * FULL * P ? undefined : bad('thread-leaves-no-hole', { share: q_t, pitch: P, d }),
  compute: ({ d, q_t, P }) => ({ d_t: mm(d - q_t * FULL * P) }),
});

export const shareOfThread = relation({
  name: 'share-of-thread',
  says: 'Share of thread that a drilled hole leaves, full thread being three quarters of the sharp triangle on each side.',
  takes: ['d', 'd_t', 'P'],
  gives: { q_t: '(d - d_t)/(3*sqrt(3)/4*P)' },
  source: 'The shop formula turned round; see tap-drill.',
  refuses: ({ d, d_t, P }) => {
    if (!(d_t < d)) return bad('hole-not-below-thread', { hole: d_t, d });
    // At 4/3 of full thread the ridges would be sharp; no tap goes there.
    return d - d_t <= symbolFact('q_t').max * FULL * P
      ? undefined
      : bad('hole-below-any-root', { hole: d_t, d, pitch: P });
  },
  compute: ({ d, d_t, P }) => ({ q_t: plain((d - d_t) / (FULL * P)) }),
});

/** A drill off the shelf. */
export interface Drill {
  readonly name: string;
  readonly size: Millimetres;
}

/** Number drills 1 to 60 and letter drills A to Z in thousandths of an inch (ASME B94.11M, from memory). */
const NUMBERS = [
  228, 221, 213, 209, 205.5, 204, 201, 199, 196, 193.5, 191, 189, 185, 182, 180, 177, 173, 169.5, 166, 161, 159, 157,
  154, 152, 149.5, 147, 144, 140.5, 136, 128.5, 120, 116, 113, 111, 110, 106.5, 104, 101.5, 99.5, 98, 96, 93.5, 89, 86,
  82, 81, 78.5, 76, 73, 70, 67, 63.5, 59.5, 55, 52, 46.5, 43, 42, 41, 40,
];
const LETTERS = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368, 377, 386,
  397, 404, 413,
];

const thou = (x: number): Millimetres => mm((x * 25.4) / 1000);

const inchDrills = (): readonly Drill[] => [
  ...NUMBERS.map((x, i) => ({ name: `#${i + 1}`, size: thou(x) })),
  ...LETTERS.map((x, i) => ({ name: `letter ${String.fromCharCode(65 + i)}`, size: thou(x) })),
  ...Array.from({ length: 64 }, (_, i) => ({ name: fraction(i + 1), size: mm(((i + 1) * 25.4) / 64) })),
];

const fraction = (sixtyFourths: number): string => {
  let [top, bottom] = [sixtyFourths, 64];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return bottom === 1 ? `${top} in` : `${top}/${bottom} in`;
};

/**
 * The nearest drills to a hole: in tenths of a millimetre (halves of a tenth up to 3 mm), and among number, letter and fractional
 * inch sizes up to 1 in. Undefined where no such drill is within 2 % of the hole.
 */
export const nearestDrills = (hole: Millimetres): { readonly metric?: Drill; readonly inch?: Drill } => {
  const step = hole <= 3 ? 0.05 : 0.1;
  const size = mm(Number((Math.round(hole / step) * step).toFixed(2)));
  const near = (drill: Drill) => Math.abs(drill.size - hole) <= 0.02 * hole;
  const metric: Drill = { name: `${size} mm`, size };
  const inch = inchDrills().reduce<Drill | undefined>(
    (best, drill) => (best === undefined || Math.abs(drill.size - hole) < Math.abs(best.size - hole) ? drill : best),
    undefined,
  );
  return { ...(size > 0 && near(metric) && { metric }), ...(inch !== undefined && near(inch) && { inch }) };
};
