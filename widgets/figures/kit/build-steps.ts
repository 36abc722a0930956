/** The steps of putting an adjuster together, in words: what to do, how, its count, and the danger in it. */
import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/build-steps.ts';
import type { Adjuster } from '../../assembly/adjuster/adjuster.ts';
import type { BuildStep, Limits } from '../../assembly/adjuster/build-order.ts';
import { stepName } from '../../input/dividers.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';

const size = (x: number, view: UnitView, digits = 4): string => show(x, { shown: 'size', digits }, view);
const motion = (x: number, view: UnitView): string => show(x, { shown: 'motion', digits: 4 }, view);
const signed = (x: number, view: UnitView): string => withSign(motion(x, view));
const range = ({ min, max }: Limits, write: (x: number) => string): string => WORDS.range(write(min), write(max));
const diameters = (l: Limits, view: UnitView): string => range(l, (x) => show(x, { shown: 'size', digits: 5 }, view));

/** A gap that a caliper reads, mm. */
const SEEN = 0.005;

/** What a step says: its name, what to do, its count, and the danger in it. */
interface SaidStep {
  readonly name: string;
  readonly text: string;
  readonly count: string;
  readonly caution?: string;
}

const turnsText = (turns: number, steps: number, adjuster: Adjuster): string => {
  const whole = Math.floor(turns + 1e-9);
  const rest = (turns - whole) * adjuster.steps;
  return WORDS.turns(
    numeral(turns, 4),
    whole,
    numeral(Math.abs(rest) < 5e-4 ? 0 : rest, 3),
    stepName(adjuster.divider),
    numeral(Number(steps.toPrecision(4))),
  );
};

export const stepSaid = (step: BuildStep, adjuster: Adjuster, view: UnitView): SaidStep => {
  switch (step.do) {
    case 'gauge':
      return {
        name: WORDS.gauge.name(step.joint, step.thread),
        text: step.limits ? WORDS.gauge.text(step.limits) : WORDS.gauge.free,
        count: step.limits
          ? WORDS.gauge.count(diameters(step.limits.screw, view), diameters(step.limits.nut, view))
          : WORDS.none,
      };
    case 'ball':
      return {
        name: WORDS.ball.name,
        text: step.interference > 0 ? WORDS.ball.press : WORDS.ball.loose,
        count: WORDS.ball.count(size(step.diameter, view), signed(step.interference, view), size(step.stands, view)),
        ...(step.interference > 0 && { caution: WORDS.ball.caution }),
      };
    case 'ball-set':
      return {
        name: WORDS.ball.name,
        text: WORDS.ball.set,
        count: WORDS.ball.stands(size(step.diameter, view), size(step.stands, view)),
        caution: WORDS.ball.caution,
      };
    case 'home':
      return {
        name: WORDS.home.name(step.joint),
        text: step.at?.kind === 'contact' ? WORDS.home.text(step.at.lower === 'ground') : WORDS.home.none,
        count: WORDS.home.count(
          size(step.engaged, view),
          step.gap !== undefined && step.gap > SEEN ? size(step.gap, view) : undefined,
          step.joint,
        ),
      };
    case 'back':
      return {
        name: WORDS.back.name(step.joint),
        text: step.gap === undefined ? WORDS.back.unseen : WORDS.back.text,
        count: WORDS.back.count(
          turnsText(step.turns, step.steps, adjuster),
          step.gap === undefined ? undefined : size(step.gap, view),
          step.joint,
        ),
      };
    case 'lock':
      return {
        name: WORDS.lock.name,
        text: WORDS.lock.text[step.lock.kind],
        count:
          step.lock.kind === 'key' || step.lock.kind === 'post'
            ? WORDS.lock.count(size(step.lock.radius, view), motion(step.lock.clearance, view))
            : WORDS.none,
      };
    case 'stretch': {
      const { count, between, force } = step.springs;
      return {
        name: WORDS.stretch.name(count, between),
        text: WORDS.stretch.text,
        count:
          step.stretch === undefined || force === undefined
            ? WORDS.stretch.unstated
            : WORDS.stretch.count(size(step.stretch, view), show(force, { shown: 'force', digits: 3 }, view)),
        caution: WORDS.stretch.caution,
      };
    }
    case 'height':
      return { name: WORDS.height.name, text: WORDS.height.text, count: size(step.height, view) };
    case 'turn':
      return {
        name: WORDS.turn.name(step.turns > 0),
        text: WORDS.turn.text(ADJUSTER.stop(step.stop)),
        count: WORDS.turn.count(
          turnsText(Math.abs(step.turns), Math.abs(step.turns) * adjuster.steps, adjuster),
          range(step.go, (x) => signed(x, view)),
        ),
      };
    case 'reverse':
      return {
        name: WORDS.reverse.name,
        text: WORDS.reverse.text,
        count: WORDS.reverse.count(
          motion(step.go, view),
          step.lock > 0 ? motion(step.lock, view) : undefined,
          step.play === undefined ? undefined : motion(step.play, view),
          step.windsUnknown,
        ),
      };
    default:
      return { ...WORDS.plain[step.do], count: WORDS.none };
  }
};
