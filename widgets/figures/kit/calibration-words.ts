/** What a calibration found, each finding in one sentence, as the figure and the certificate say it. */

import type { Calibrated } from '../../assembly/calibration-of.ts';
import type { Bad } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';

export const motionText = (z: number, view: UnitView, digits = 4): string => show(z, { shown: 'motion', digits }, view);
export const signedMotion = (z: number, view: UnitView, digits = 3): string => withSign(motionText(z, view, digits));
/** A correction, to a hundredth of a micrometre: no indicator here shows more. */
export const correctionText = (z: number, view: UnitView): string => {
  // Halves away from nought on both sides, as on paper.
  const rounded = (Math.sign(z) * Math.round(Math.abs(z) * 1e5 * (1 + 1e-12))) / 1e5;
  return withSign(show(rounded, { shown: 'motion' }, view));
};
export const counted = (n: number): string => String(Math.round(n));
const percent = (share: number): string => show(share, { shown: 'percent', digits: 3 }, 'metric');

/** Digits of a result that its uncertainty supports: two of the uncertainty’s own. */
export const digitsFor = (value: number, half: number): number =>
  !(half > 0) || value === 0
    ? 6
    : Math.min(7, Math.max(2, Math.floor(Math.log10(Math.abs(value))) - Math.floor(Math.log10(half)) + 2));

export const leadText = ({ calibration: { lead, leadInterval } }: Calibrated, view: UnitView): string =>
  `${motionText(lead, view, digitsFor(lead, leadInterval.half))} ± ${motionText(leadInterval.half, view, 2)} a turn`;

export const verdictText = (c: Calibrated, view: UnitView): string => {
  const { agreement, nominal, calibration } = c;
  const { difference, agrees, tolerance } = agreement;
  return (
    `The measured net lead is ${leadText(c, view)}, ${motionText(Math.abs(difference), view, 3)} ${difference < 0 ? 'below' : 'above'} the nominal ${motionText(nominal, view)}: ` +
    `it ${agrees ? 'agrees' : 'does not agree'} within ${motionText(calibration.leadInterval.half, view, 2)} of uncertainty and ${motionText(tolerance, view, 3)} of stated lead error.`
  );
};

export interface Finding {
  readonly name: string;
  readonly determined: boolean;
  /** For a line of results. */
  readonly value: string;
  readonly says: string;
}

export const findingsOf = ({ calibration: c }: Calibrated, view: UnitView): readonly Finding[] => {
  const m = (z: number, digits = 3) => motionText(z, view, digits);
  const { hysteresis, periodic, repeatability } = c;
  const untold = (name: string, why: Bad): Finding => ({
    name,
    determined: false,
    value: 'can’t be told',
    says: reasonOf(why),
  });
  return [
    hysteresis.determined
      ? {
          name: 'hysteresis',
          determined: true,
          value: `${m(hysteresis.gap)} ± ${m(hysteresis.interval.half, 2)}`,
          says: `Between up and down stands a gap of ${m(hysteresis.gap)} ± ${m(hysteresis.interval.half, 2)}, which is ${
            hysteresis.lostMotion >= 0
              ? `${numeral(hysteresis.lostTurns, 2)} turns lost on reversal`
              : 'against the sense of lost motion, so look for drift'
          }.${hysteresis.slopesAgree ? '' : ' The two directions have different slopes, so one number does not describe the gap.'}`,
        }
      : untold('hysteresis', hysteresis.why),
    periodic.determined
      ? {
          name: 'once per turn',
          determined: true,
          value: `±${m(periodic.amplitude)}${periodic.significant ? '' : ', no more than scatter'}`,
          says: `Once per turn it wanders by ${m(periodic.amplitude)} to either side, furthest up at ${numeral(periodic.crest, 2)} of a turn${
            periodic.significant ? '' : ', which is no more than scatter alone would give'
          }.`,
        }
      : untold('once per turn', periodic.why),
    repeatability.determined
      ? {
          name: 'repeatability',
          determined: true,
          value: `${m(repeatability.deviation)}, widest ${m(repeatability.widest)}`,
          says: `A place read again from the same side repeats with a standard deviation of ${m(repeatability.deviation)}; the two readings furthest apart differ by ${m(repeatability.widest)}.`,
        }
      : untold('repeatability', repeatability.why),
    {
      name: 'left over',
      determined: true,
      value: m(c.scatter),
      says: `What none of this explains scatters by ${m(c.scatter)}, standard deviation, with ${c.freedom} degrees of freedom.`,
    },
  ];
};

export const allowanceText = ({ leadError }: Calibrated): string => percent(leadError);
