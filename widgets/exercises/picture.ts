/** The still pictures of exercises, drawn by the kit of the figures: what is read off them is not told in the question. */
import { alongRule, besideRule, onDial, RULED } from '#words/papers.ts';
import { mm } from '../engine/index.ts';
import { dialScale, dialSvg } from '../figures/kit/dial.ts';
import { polyline, px } from '../figures/kit/svg.ts';
import { threadEdge } from '../figures/kit/thread-outline.ts';
import { numeral } from '../input/format.ts';

/** A picture off which one number of the question is read. */
export interface Picture {
  readonly shows: 'dial' | 'rule' | 'bar';
  /** The pool that it shows: a motion on a dial, a thread beside a rule, a length as a bar on one. */
  readonly of: string;
}

/** What the pictures are ruled in: millimetres, or inches for those who work in them. */
export type Ruled = 'metric' | 'inch';

export const pictureOf = (
  { shows, of }: Picture,
  scope: Readonly<Record<string, number>>,
  ruled: Ruled = 'metric',
): string =>
  shows === 'dial'
    ? dialOf(scope[of] ?? 0, ruled)
    : shows === 'bar'
      ? barOf(scope[of] ?? 0, ruled)
      : ruleOf(suffixed(scope, 'd', of), suffixed(scope, 'P', of), ruled);

const suffixed = (scope: Readonly<Record<string, number>>, name: string, of: string): number =>
  scope[of === 'thread' ? name : `${name}_${of}`] ?? 0;

/** One division is a micrometre where that shows, else a hundredth; or a tenth of a thou, else a thou: a hand that went round twenty times is not read. */
const faceFor = (motion: number, ruled: Ruled) => dialScale(motion > 1 ? 1 : 0.01, ruled);

const dialOf = (motion: number, ruled: Ruled): string => {
  const scale = faceFor(motion, ruled);
  const divisions = Number((motion / scale.division).toFixed(6));
  const label = onDial(px(((divisions % 100) + 100) % 100), String(Math.floor(divisions / 100)), scale.face);
  return dialSvg(motion, scale, label, true);
};

/** The finest mark in mm, how many of them go to a longer mark and to a number, and how many to a unit. */
interface Marks {
  readonly fine: number;
  readonly long: number;
  readonly number: number;
  readonly perUnit: number;
}
/** Decimal rules, divided in tenths and in fiftieths or hundredths: common practice, no source. */
const marksFor = (length: number, ruled: Ruled): Marks =>
  ruled === 'metric'
    ? { fine: 0.5, long: 2, number: 10, perUnit: 2 }
    : length <= 0.5 * INCH
      ? { fine: 0.01 * INCH, long: 10, number: 10, perUnit: 100 }
      : { fine: 0.02 * INCH, long: 5, number: length <= INCH ? 5 : 25, perUnit: 50 };
const INCH = 25.4;

/** The size as it can be set on such a picture: a metric size seldom falls on a mark of an inch rule. In mm. */
export const asRuled = ({ shows }: Picture, size: number, ruled: Ruled): number => {
  if (ruled === 'metric' || shows === 'rule') return size;
  const fine = shows === 'dial' ? faceFor(size, ruled).division : marksFor(size, ruled).fine;
  return Math.round(size / fine) * fine;
};

/** Of a rule under its edge: its marks up to `end` millimetres, their numbers, and what the numbers count. */
const ticksOf = (end: number, x: (z: number) => number, rule: number, marks: Marks, ruled: Ruled): string => {
  const ticks = Array.from({ length: Math.round(end / marks.fine) + 1 }, (_, i) => {
    const at = px(x(i * marks.fine));
    const long = i % marks.number === 0 ? 16 : i % marks.long === 0 ? 11 : 6;
    const number =
      i % marks.number === 0
        ? `<text x="${at}" y="${px(rule + 32)}" text-anchor="middle">${numeral(i / marks.perUnit)}</text>`
        : '';
    return `<path class="tick" d="M${at} ${px(rule)}v${long}"/>${number}`;
  });
  return `${ticks.join('')}<text x="200" y="${px(rule + UNDER - 6)}" text-anchor="middle">${RULED[ruled]}</text>`;
};
/** What the scale takes under its edge. */
const UNDER = 58;

const readAs = (length: number, ruled: Ruled): string =>
  ruled === 'metric' ? px(length) : numeral(Number((length / INCH).toFixed(3)));

/** A bar that lies along a rule from its zero. */
const barOf = (length: number, ruled: Ruled): string => {
  const marks = marksFor(length, ruled);
  const between = marks.number * marks.fine;
  const end = between * Math.ceil((length + 1) / between);
  const x = (z: number) => 20 + (z * 360) / end;
  return (
    `<svg class="rule" viewBox="0 0 400 ${50 + UNDER}" role="img" aria-label="${alongRule(readAs(length, ruled), RULED[ruled])}"><path class="body" d="M${x(0)} 16H${px(x(length))}V48H${x(0)}Z"/>` +
    `<path class="edge" d="M${x(0)} 16H${px(x(length))}V48H${x(0)}ZM${x(0)} 50H${px(x(end))}"/>${ticksOf(end, x, 50, marks, ruled)}</svg>`
  );
};

const RIDGES = 10;

/** A screw lying along a rule; the crest at its zero is marked, and the tenth crest after it. */
const ruleOf = (d: number, P: number, ruled: Ruled): string => {
  const length = RIDGES * P;
  const marks = marksFor(length, ruled);
  const unitMarks = ruled === 'metric' ? marks.long : 1;
  const end = unitMarks * marks.fine * (Math.ceil(length / unitMarks / marks.fine - 1e-9) + 1);
  const unit = 360 / (end + 1);
  const x = (z: number) => 20 + z * unit;
  const high = Math.min(d / 2, 3) * unit;
  // The edge is drawn towards the rule, so its crests stand at the marks; a thick screw is cut off behind.
  const edge = threadEdge({ d: mm(d), P: mm(P) }, 0, 0, end).map(([r, z]): [number, number] => [
    x(z),
    20 + high + (r - d / 2) * unit,
  ]);
  const rule = 34 + high;
  const ticks = ticksOf(end, x, rule, marks, ruled);
  const mark = (at: number) => `<path class="mark" d="M${px(x(at))} ${px(rule - 2)}l-4 -9h8z"/>`;
  return (
    `<svg class="rule" viewBox="0 0 400 ${px(rule + UNDER)}" role="img" aria-label="${besideRule(RIDGES, readAs(length, ruled), RULED[ruled])}">` +
    `<path class="body" d="${polyline([[x(0), 8], ...edge, [x(end), 8]])}Z"/><path class="edge" d="${polyline([
      [x(0), rule],
      [x(end), rule],
    ])}"/>${ticks}${mark(0)}${mark(length)}</svg>`
  );
};
