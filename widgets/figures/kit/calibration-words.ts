/** What a calibration found, each finding in one sentence, as the figure and the certificate say it. */

import { FINDINGS, SIGNING_PARTS } from '#words/figures/kit.ts';
import type { Calibrated } from '../../assembly/calibration-of.ts';
import { at, type Bad } from '../../engine/index.ts';
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
  FINDINGS.lead(motionText(lead, view, digitsFor(lead, leadInterval.half)), motionText(leadInterval.half, view, 2));

export const verdictText = (
  { signed, nominal, calibration: { lead }, matters }: Calibrated,
  view: UnitView,
): string => {
  const { U, difference, tolerance, parts, verdict } = signed;
  return FINDINGS.verdict[verdict]({
    lead: motionText(lead, view, digitsFor(lead, U)),
    U: motionText(U, view, 2),
    off: motionText(Math.abs(difference), view, 3),
    below: difference < 0,
    nominal: motionText(nominal, view),
    stated: motionText(tolerance, view, 3),
    matters: motionText(matters, view),
    largest: SIGNING_PARTS[at(parts, 0).name],
  });
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
    value: FINDINGS.untold,
    says: reasonOf(why),
  });
  const told = (name: string, value: string, says: string): Finding => ({ name, determined: true, value, says });
  return [
    hysteresis.determined
      ? told(
          FINDINGS.hysteresis.name,
          FINDINGS.hysteresis.value(m(hysteresis.gap), m(hysteresis.interval.half, 2)),
          FINDINGS.hysteresis.says({
            gap: m(hysteresis.gap),
            uncertainty: m(hysteresis.interval.half, 2),
            lost: hysteresis.lostMotion >= 0 ? numeral(hysteresis.lostTurns, 2) : undefined,
            slopesAgree: hysteresis.slopesAgree,
          }),
        )
      : untold(FINDINGS.hysteresis.name, hysteresis.why),
    periodic.determined
      ? told(
          FINDINGS.periodic.name,
          FINDINGS.periodic.value(m(periodic.amplitude), m(2 * periodic.amplitude), periodic.significant),
          FINDINGS.periodic.says({
            amplitude: m(periodic.amplitude),
            crest: numeral(periodic.crest, 2),
            significant: periodic.significant,
          }),
        )
      : untold(FINDINGS.periodic.name, periodic.why),
    repeatability.determined
      ? told(
          FINDINGS.repeatability.name,
          FINDINGS.repeatability.value(m(repeatability.deviation), m(repeatability.widest)),
          FINDINGS.repeatability.says(m(repeatability.deviation), m(repeatability.widest)),
        )
      : untold(FINDINGS.repeatability.name, repeatability.why),
    told(FINDINGS.leftOver.name, m(c.scatter), FINDINGS.leftOver.says(m(c.scatter), c.freedom)),
  ];
};

/** The findings beside the lead that are larger than the difference that matters, each with its amount. */
export const largeBeside = (
  { calibration: { hysteresis, periodic }, matters }: Calibrated,
  view: UnitView,
): string[] => [
  ...(hysteresis.determined && Math.abs(hysteresis.gap) > matters
    ? [`${FINDINGS.hysteresis.name} ${motionText(Math.abs(hysteresis.gap), view, 3)}`]
    : []),
  ...(periodic.determined && periodic.significant && periodic.amplitude > matters
    ? [`${FINDINGS.periodic.name} ±${motionText(periodic.amplitude, view, 3)}`]
    : []),
];

export const allowanceText = ({ leadError }: Calibrated): string => percent(leadError);
