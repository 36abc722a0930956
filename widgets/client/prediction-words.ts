/** What is said of a prediction, and the scale on which it stands beside the answer. */
import {
  engineOnScale,
  NOT_FAR_OFF,
  overAMillionTimes,
  predictedOff,
  predictedOtherWay,
  predictedRight,
  predictedSlip,
  predictedStill,
  predictedWrong,
  scaleOf,
  THE_OTHER_WAY,
  timesAs,
  yoursOnScale,
} from '#words/client.ts';
import { type SymbolFact, UNITS } from '../engine/index.ts';
import { formatOf, numeral, show, type UnitView, withSign } from '../input/format.ts';
import type { Slip } from '../page/model.ts';

/** Within this share of the answer a prediction counts as right: the point is the idea, not the last digit. */
const NEAR = 0.02;

/**
 * A prediction is an estimate, so a slip is met from further off, where it is the nearest of all that could be meant: 3 mm is the leads added, though
 * they come to 3.09.
 */
const NEAR_SLIP = 0.15;

/** Within this ratio a prediction is not far off. */
const CLOSE = 1.5;

/** Beyond this ratio nobody learns from a number, and a scale would be all ticks. */
const MOST = 1e6;

export interface Judged {
  readonly verdict: string;
  /** The scale as SVG; none where the answer is nought, which has no place on it. */
  readonly scale: string | undefined;
}

export const judgePrediction = (
  typed: number,
  model: { readonly answer: number; readonly digits: number; readonly slips: readonly Slip[] },
  fact: SymbolFact,
  view: UnitView,
): Judged => {
  const { answer } = model;
  const right = show(answer, formatOf(fact, model.digits), view);
  const yours = show(typed, formatOf(fact), view);
  // What is written as nought is judged as nought, in whatever unit.
  const made = /[1-9]/.test(yours.split('\u00a0')[0] ?? '') ? typed : 0;
  return {
    verdict: verdictOf(made, answer, { yours, right }, model.slips, fact),
    scale: answer === 0 ? undefined : scaleSvg(made, answer, yours, right, tenIn(fact, view)),
  };
};

const verdictOf = (
  made: number,
  answer: number,
  { yours, right }: { readonly yours: string; readonly right: string },
  slips: readonly Slip[],
  fact: SymbolFact,
): string => {
  if (answer === 0) return made === 0 ? predictedRight(right) : predictedWrong(yours, right);
  if (made === 0) return fact.shown === 'motion' ? predictedStill(right) : predictedWrong(yours, right);
  const ratio = made / answer;
  if (Math.abs(ratio - 1) < NEAR) return predictedRight(right);
  // An estimate with the wrong sign is about the way, whatever its last digit.
  if (Math.abs(ratio + 1) < NEAR_SLIP) return predictedOtherWay(yours, right);
  const off = (value: number) => Math.abs(Math.log(Math.abs(made / value)));
  const slip = slips
    .filter((s) => s.value !== 0 && off(s.value) < NEAR_SLIP && off(s.value) < off(answer))
    .sort((a, b) => off(a.value) - off(b.value))[0];
  if (slip) return predictedSlip(yours, right, slip.says);
  const size = Math.abs(ratio);
  const times = Math.max(size, 1 / size);
  return predictedOff(yours, right, ratio < 0 && times < CLOSE ? THE_OTHER_WAY : timesText(times, size > 1));
};

const timesText = (times: number, less: boolean): string => {
  if (times < CLOSE) return NOT_FAR_OFF;
  if (times > MOST) return overAMillionTimes(less);
  return timesAs(numeral(Number(times.toPrecision(2))), less);
};

/** Where a scale lies in its picture: its ends, and its nought where it has two sides. */
const [LEFT, RIGHT, MIDDLE] = [20, 380, 200];
/** Half of the gap about nought, which no ratio reaches. */
const NOUGHT = 18;

/**
 * Prediction and answer on one scale by ratio, so that a slip of a thousand still fits the paper. Where one is plus and the other minus, or one is
 * nought, the scale has both sides, nought between. Ticks stand at powers of ten and are written at, with their sign.
 */
const scaleSvg = (made: number, answer: number, yours: string, right: string, ten: Ten): string => {
  const there = ten.logOf(answer);
  const reach = Math.log10(MOST);
  const typed = made === 0 ? there : ten.logOf(made);
  const here = Math.min(there + reach, Math.max(there - reach, typed));
  const [low, high] = [Math.floor(Math.min(here, there) - 0.15), Math.ceil(Math.max(here, there) + 0.15)];
  const both = made === 0 || made < 0 !== answer < 0;
  const share = (log: number) => (log - low) / (high - low);
  const x = (log: number, sign: number): number =>
    both
      ? MIDDLE + sign * (NOUGHT + (RIGHT - MIDDLE - NOUGHT) * share(log))
      : sign > 0
        ? LEFT + (RIGHT - LEFT) * share(log)
        : RIGHT - (RIGHT - LEFT) * share(log);
  const anchor = (at: number) => (at < 90 ? 'start' : at > 310 ? 'end' : 'middle');
  const [a, b] = [made === 0 ? MIDDLE : x(here, Math.sign(made)), x(there, Math.sign(answer))];
  const said = yoursOnScale(yours, here === typed);
  // A third of the decades at the most has a tick; with two sides only the outermost of them is written at.
  const step = Math.ceil((high - low) / 3);
  const tick = (at: number, words: string) =>
    `<path class="tick" d="M${at} 34v8"/>${words === '' ? '' : `<text class="at" x="${at}" y="56" text-anchor="${anchor(at)}">${words}</text>`}`;
  const logs = [low, low + step, low + 2 * step, low + 3 * step].filter((log) => log <= high);
  const ticks = (both ? [-1, 1] : [Math.sign(answer)]).flatMap((sign) =>
    logs.map((log, i) => tick(x(log, sign), both && i < logs.length - 1 ? '' : ten.write(sign, log))),
  );
  return (
    `<svg viewBox="0 0 400 96" role="img" aria-label="${scaleOf(yours, right)}"><path class="axis" d="M${LEFT} 38H${RIGHT}"/>${ticks.join('')}${both ? tick(MIDDLE, '0') : ''}` +
    `<g class="yours"><path d="M${a} 38l-6 -10h12z"/><text x="${a}" y="18" text-anchor="${anchor(a)}">${said}</text></g>` +
    `<g class="answer"><circle cx="${b}" cy="38" r="5"/><text x="${b}" y="84" text-anchor="${anchor(b)}">${engineOnScale(right)}</text></g></svg>`
  );
};

/** Powers of ten in the unit that is read. */
interface Ten {
  readonly logOf: (x: number) => number;
  readonly write: (sign: number, log: number) => string;
}
const tenIn = (fact: SymbolFact, view: UnitView): Ten => {
  // Where both units are written, one is enough at a tick.
  const one: UnitView = view === 'both' ? 'metric' : view;
  const unit =
    fact.unit === 'mm' && one === 'inch' ? UNITS.in.factor : fact.shown === 'degrees' ? UNITS['°'].factor : 1;
  return {
    logOf: (x) => Math.log10(Math.abs(x) / unit),
    write: (sign, log) => {
      const text = show(sign * 10 ** log * unit, formatOf(fact, 1), one);
      return fact.min < 0 ? withSign(text) : text;
    },
  };
};
