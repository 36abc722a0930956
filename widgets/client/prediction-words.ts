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
  timesAs,
  yoursOnScale,
} from '#words/client.ts';
import type { SymbolFact } from '../engine/index.ts';
import { formatOf, numeral, show, type UnitView } from '../input/format.ts';
import type { Slip } from '../page/model.ts';

/** Within this share of the answer a prediction counts as right: the point is the idea, not the last digit. */
const NEAR = 0.02;

/**
 * A prediction is an estimate, so a slip is met from further off, where it is the nearest of all that could be meant: 3 mm is the leads added, though
 * they come to 3.09.
 */
const NEAR_SLIP = 0.15;

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
    scale: answer === 0 ? undefined : scaleSvg(made, answer, yours, right),
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
  return predictedOff(yours, right, timesText(Math.max(size, 1 / size), size > 1));
};

const timesText = (times: number, less: boolean): string => {
  if (times < 1.5) return NOT_FAR_OFF;
  if (times > MOST) return overAMillionTimes(less);
  return timesAs(numeral(Number(times.toPrecision(2))), less);
};

/** Prediction and answer on one scale by ratio, so that a slip of a thousand still fits the paper. */
const scaleSvg = (made: number, answer: number, yours: string, right: string): string => {
  const there = Math.log10(Math.abs(answer));
  const reach = Math.log10(MOST);
  const typed = made === 0 ? there - 3 : Math.log10(Math.abs(made));
  const here = Math.min(there + reach, Math.max(there - reach, typed));
  const [low, high] = [Math.floor(Math.min(here, there) - 0.15), Math.ceil(Math.max(here, there) + 0.15)];
  const x = (log: number) => 20 + (360 * (log - low)) / (high - low);
  const anchor = (at: number) => (at < 90 ? 'start' : at > 310 ? 'end' : 'middle');
  const [a, b] = [x(made === 0 ? low : here), x(there)];
  const said = yoursOnScale(yours, here === typed);
  const ticks = Array.from(
    { length: high - low + 1 },
    (_, i) => `<path class="tick" d="M${20 + (360 * i) / (high - low)} 34v8"/>`,
  ).join('');
  return (
    `<svg viewBox="0 0 400 78" role="img" aria-label="${scaleOf(yours, right)}"><path class="axis" d="M20 38H380"/>${ticks}` +
    `<g class="yours"><path d="M${a} 38l-6 -10h12z"/><text x="${a}" y="18" text-anchor="${anchor(a)}">${said}</text></g>` +
    `<g class="answer"><circle cx="${b}" cy="38" r="5"/><text x="${b}" y="66" text-anchor="${anchor(b)}">${engineOnScale(right)}</text></g></svg>`
  );
};
