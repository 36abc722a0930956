/** The still pictures of exercises, drawn by the kit of the figures: what is read off them is not told in the question. */
import { alongRule, besideRule, onDial } from '#words/papers.ts';
import { mm } from '../engine/index.ts';
import { dialScale, dialSvg } from '../figures/kit/dial.ts';
import { polyline, px } from '../figures/kit/svg.ts';
import { threadEdge } from '../figures/kit/thread-outline.ts';

/** A picture off which one number of the question is read. */
export interface Picture {
  readonly shows: 'dial' | 'rule' | 'bar';
  /** The pool that it shows: a motion on a dial, a thread beside a rule, a length as a bar on one. */
  readonly of: string;
}

export const pictureOf = ({ shows, of }: Picture, scope: Readonly<Record<string, number>>): string =>
  shows === 'dial'
    ? dialOf(scope[of] ?? 0)
    : shows === 'bar'
      ? barOf(scope[of] ?? 0)
      : ruleOf(suffixed(scope, 'd', of), suffixed(scope, 'P', of));

const suffixed = (scope: Readonly<Record<string, number>>, name: string, of: string): number =>
  scope[of === 'thread' ? name : `${name}_${of}`] ?? 0;

/** One division is a micrometre where that shows, else a hundredth: a hand that went round twenty times is not read. */
const dialOf = (motion: number): string => {
  const scale = dialScale(motion > 1 ? 1 : 0.01, 'metric');
  const divisions = motion / scale.division;
  const label = onDial(px(((divisions % 100) + 100) % 100), String(Math.floor(divisions / 100)), scale.face);
  return dialSvg(motion, scale, label);
};

/** The scale of a rule up to `end` millimetres: halves, whole ones, and fives with their number. */
const ticksOf = (end: number, x: (z: number) => number, rule: number): string =>
  Array.from({ length: end * 2 + 1 }, (_, i) => {
    const long = i % 10 === 0 ? 16 : i % 2 === 0 ? 11 : 6;
    const number =
      i % 10 === 0 ? `<text x="${px(x(i / 2))}" y="${px(rule + 32)}" text-anchor="middle">${i / 2}</text>` : '';
    return `<path class="tick" d="M${px(x(i / 2))} ${px(rule)}v${long}"/>${number}`;
  }).join('');

/** A bar that lies along a rule from its zero. */
const barOf = (length: number): string => {
  const end = 5 * Math.ceil((length + 1) / 5);
  const x = (z: number) => 20 + (z * 360) / end;
  return (
    `<svg class="rule" viewBox="0 0 400 92" role="img" aria-label="${alongRule(px(length))}"><path class="body" d="M${x(0)} 16H${px(x(length))}V48H${x(0)}Z"/>` +
    `<path class="edge" d="M${x(0)} 16H${px(x(length))}V48H${x(0)}ZM${x(0)} 50H${px(x(end))}"/>${ticksOf(end, x, 50)}</svg>`
  );
};

const RIDGES = 10;

/** A screw lying along a rule in millimetres; the crest at its zero is marked, and the tenth crest after it. */
const ruleOf = (d: number, P: number): string => {
  const length = RIDGES * P;
  const end = Math.ceil(length) + 1;
  const unit = 360 / (end + 1);
  const x = (z: number) => 20 + z * unit;
  const high = Math.min(d / 2, 3) * unit;
  // The edge is drawn towards the rule, so its crests stand at the marks; a thick screw is cut off behind.
  const edge = threadEdge({ d: mm(d), P: mm(P) }, 0, 0, end).map(([r, z]): [number, number] => [
    x(z),
    20 + high + (r - d / 2) * unit,
  ]);
  const rule = 34 + high;
  const ticks = ticksOf(end, x, rule);
  const mark = (at: number) => `<path class="mark" d="M${px(x(at))} ${px(rule - 2)}l-4 -9h8z"/>`;
  return (
    `<svg class="rule" viewBox="0 0 400 ${px(rule + 42)}" role="img" aria-label="${besideRule(RIDGES, px(length))}">` +
    `<path class="body" d="${polyline([[x(0), 8], ...edge, [x(end), 8]])}Z"/><path class="edge" d="${polyline([
      [x(0), rule],
      [x(end), rule],
    ])}"/>${ticks}${mark(0)}${mark(length)}</svg>`
  );
};
