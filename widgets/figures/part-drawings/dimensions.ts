/** Dimensions by ISO 129-1 (from memory): lines with arrowheads between extension lines, letters over the line and read from below or from the right; in brackets what is not stated. */
import { LETTER, LETTERS, type Mark, type Spot, text, thin } from '../../assembly/files/paper.ts';

const GAP = 1;
const PAST = 2;
const OVER = 0.8;
/** Where heads have no room between the extension lines they stand outside. */
const TIGHT = 9;

const heads = (a: Spot, b: Spot): Mark[] => {
  const angle = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const out = length < TIGHT;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const tail = (p: Spot, way: number): Mark => thin(p, [p[0] + 5 * way * ux, p[1] + 5 * way * uy]);
  return [
    thin(a, b),
    { kind: 'head', tip: a, towards: out ? angle : angle + Math.PI },
    { kind: 'head', tip: b, towards: out ? angle + Math.PI : angle },
    ...(out ? [tail(a, -1), tail(b, 1)] : []),
  ];
};

/** Between two heights, on a line at x; extension lines come from `from`. */
export const upright = (words: string, x: number, low: number, high: number, from: number): Mark[] => {
  const ext = (y: number): Mark => thin([from + Math.sign(x - from) * GAP, y], [x + Math.sign(x - from) * PAST, y]);
  const room = words.length * LETTER;
  // A short one has its letters above its upper end.
  const middle = room + 2 < high - low ? (low + high) / 2 : high + 6 + room / 2;
  return [ext(low), ext(high), ...heads([x, low], [x, high]), text(words, [x - OVER, middle], 'middle', true)];
};

/** Between two places across, on a line at y. */
export const level = (words: string, y: number, left: number, right: number, from: number): Mark[] => {
  const ext = (x: number): Mark => thin([x, from + Math.sign(y - from) * GAP], [x, y + Math.sign(y - from) * PAST]);
  const room = words.length * LETTER;
  const fits = room + 2 < right - left;
  return [
    ext(left),
    ext(right),
    ...heads([left, y], [right, y]),
    text(words, [fits ? (left + right) / 2 : right + 6, y + OVER], fits ? 'middle' : 'start'),
  ];
};

/** A note on a leader that ends in a head at what it says something of. */
export const leader = (lines: readonly string[], tip: Spot, shelf: Spot): Mark[] => [
  thin(tip, shelf, [shelf[0] + 3, shelf[1]]),
  { kind: 'head', tip, towards: Math.atan2(tip[1] - shelf[1], tip[0] - shelf[0]) },
  ...lines.map((line, i) => text(line, [shelf[0] + 4, shelf[1] - LETTERS / 2 + 0.3 - i * 1.5 * LETTERS])),
];
