/**
 * Standard hardware as rows of a drawer, sizes in mm. No prices: those are the reader's.
 *
 * Sources. Hexagon nuts ISO 4032: greatest height and nominal width across flats (ISO 4032:2001, read in two suppliers' tables that agree). Long nuts: 3 d
 * high, widths of DIN 6334 (read in a table of an open library of fasteners). Socket screws ISO 4762: greatest head
 * diameter (read in a supplier's table); head as high as the thread is wide, thread 2 d + 12 long, from memory. Inch nuts ASME B18.2.2, inch
 * socket screws ASME B18.3: from memory. Widths of inch coupling nuts ASME B18.2.2 (read in a supplier's table of it); those in trade are also cut from wider bar. Lengths are a choice from what is common in trade.
 */

/** Width across flats and greatest height of a nut. */
export const ISO_4032: Readonly<Record<string, readonly [width: number, height: number]>> = {
  M4: [7, 3.2],
  M5: [8, 4.7],
  M6: [10, 5.2],
  M8: [13, 6.8],
  M10: [16, 8.4],
  M12: [18, 10.8],
};

/** Width across flats and height of a long nut. */
export const DIN_6334: Readonly<Record<string, readonly [width: number, height: number]>> = {
  M6: [10, 18],
  M8: [13, 24],
  M10: [17, 30],
  M12: [19, 36],
};

/** Diameter of the head. */
export const ISO_4762: Readonly<Record<string, number>> = { M4: 7, M5: 8.5, M6: 10, M8: 13, M10: 16, M12: 18 };

const METRIC_LENGTHS = [20, 30, 40];

const metric = (): string[] => {
  const diameter = (size: string) => Number(size.slice(1));
  return [
    ...Object.entries(ISO_4032).map(([size, [width, height]]) => `nut ${size}, ${height} mm, hexagon ${width} mm`),
    ...Object.entries(DIN_6334).map(
      ([size, [width, height]]) => `coupling nut ${size}, ${height} mm, hexagon ${width} mm`,
    ),
    ...Object.entries(ISO_4762).flatMap(([size, head]) =>
      METRIC_LENGTHS.filter((length) => length >= 2 * diameter(size)).map(
        (length) =>
          `socket screw ${size}, thread ${Math.min(length, 2 * diameter(size) + 12)} mm, head ${diameter(size)} mm, width ${head} mm`,
      ),
    ),
  ];
};

/** Diameter in inches, threads UNC and UNF, nut across flats and height, long nut across flats and height, thread of a long socket screw. */
const INCH = [
  ['1/4', 0.25, [20, 28], [0.4375, 0.21875], [0.4375, 0.875], 1],
  ['5/16', 0.3125, [18, 24], [0.5, 0.265625], [0.5, 0.875], 1.12],
  ['3/8', 0.375, [16, 24], [0.5625, 0.328125], [0.5625, 1.125], 1.25],
  ['1/2', 0.5, [13, 20], [0.75, 0.4375], [0.6875, 1.25], 1.5],
] as const;
const INCH_LENGTHS = [1, 1.5];

const inch = (): string[] => {
  const mm = (inches: number): string => `${Number((25.4 * inches).toFixed(4))} mm`;
  return INCH.flatMap(([size, d, [coarse, fine], nut, long, most]) =>
    [`${size}-${coarse} UNC`, `${size}-${fine} UNF`].flatMap((thread) => [
      `nut ${thread}, ${mm(nut[1])}, hexagon ${mm(nut[0])}`,
      `coupling nut ${thread}, ${mm(long[1])}, hexagon ${mm(long[0])}`,
      ...INCH_LENGTHS.map(
        (length) => `socket screw ${thread}, thread ${mm(Math.min(length, most))}, head ${mm(d)}, width ${mm(1.5 * d)}`,
      ),
    ]),
  );
};

/** Across the flats of a bought nut, or across the head of a socket screw, for a thread of this diameter, all mm; undefined where the tables above have none. */
export const boughtWidth = (kind: string, d: number): number | undefined => {
  const metric = kind === 'nut' ? ISO_4032 : kind === 'coupling nut' ? DIN_6334 : undefined;
  const size = `M${d}`;
  const inches = INCH.find(([, of]) => Math.abs(25.4 * of - d) < 1e-6);
  if (kind === 'socket screw') return ISO_4762[size] ?? (inches && 1.5 * d);
  if (!metric) return undefined;
  return metric[size]?.[0] ?? (inches && 25.4 * inches[kind === 'nut' ? 3 : 4][0]);
};

/**
 * Thread adapters by their threads, screw below: reducers between neighbours of the coarse series and between inch and metric of nearly one size. That such are in trade is common practice, no
 * source; tripods have 3/8-16 over 1/4-20 (ISO 1222, from memory). The lengths are ours: a screw 1.5 times its diameter, a blind bore as deep by its own, a floor under it.
 */
const ADAPTERS = [
  ['M6x1', 'M5x0.8'],
  ['M8x1.25', 'M6x1'],
  ['M10x1.5', 'M8x1.25'],
  ['M12x1.75', 'M10x1.5'],
  ['3/8-16 UNC', '1/4-20 UNC'],
  ['1/4-20 UNC', 'M6x1'],
  ['5/16-18 UNC', 'M8x1.25'],
  ['3/8-16 UNC', 'M10x1.5'],
  ['1/2-13 UNC', 'M12x1.75'],
] as const;

const diameterOf = (thread: string): number => {
  const [, metric, top, bottom] = /^(?:M(\d+)|(\d+)\/(\d+))/.exec(thread) ?? [];
  return metric === undefined ? (25.4 * Number(top)) / Number(bottom) : Number(metric);
};

const adapters = (): string[] =>
  ADAPTERS.map(([screw, nut]) => {
    const [d, D] = [diameterOf(screw), diameterOf(nut)];
    const wide = Math.ceil(1.6 * Math.max(d, D));
    return `adapter ${screw} external ${Math.round(1.5 * d)} mm, ${nut} internal ${Math.round(1.5 * D)} mm blind, body ${Math.round(1.8 * D)} mm, hexagon ${wide} mm`;
  });

/** Screws of one thread length differ in their shank only, which no stack here uses: each once. */
export const STANDARD_PARTS: Readonly<Record<'metric' | 'inch' | 'adapters', readonly string[]>> = {
  metric: [...new Set(metric())],
  inch: [...new Set(inch())],
  adapters: adapters(),
};
