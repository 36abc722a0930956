/**
 * What of a design is judged, how it fared, and what is not judged. A check that nothing was found against is not a check
 * of everything, so whatever has no limit, no number or no place on the sheet is named beside the checks.
 */

import { WORDS } from '#words/figures/design-sheet.ts';
import type { LINES } from '#words/figures/design-sheet-lines.ts';
import type { UnitView } from '../../input/format.ts';

export interface Check {
  readonly passed: boolean;
  readonly says: (view: UnitView) => string;
}

export interface Unjudged {
  readonly name: string;
  readonly why: (view: UnitView) => string;
  /** Where the notebook teaches it: page and heading. */
  readonly at: string;
}

export interface Judged {
  readonly checks: readonly Check[];
  readonly unjudged: readonly Unjudged[];
}

/** Collects what the parts of the sheet find. */
export interface Judge {
  readonly check: (passed: boolean, says: Check['says']) => void;
  readonly leave: (name: string, why: Unjudged['why'] | string, at: string) => void;
}

export const newJudge = (): Judge & { readonly found: Judged } => {
  const checks: Check[] = [];
  const unjudged: Unjudged[] = [];
  return {
    found: { checks, unjudged },
    check: (passed, says) => void checks.push({ passed, says }),
    leave: (name, why, at) => void unjudged.push({ name, why: typeof why === 'string' ? () => why : why, at }),
  };
};

export const verdictOf = ({ checks, unjudged }: Judged): string =>
  WORDS.verdict({
    passed: checks.filter((c) => c.passed).length,
    judged: checks.length,
    unjudged: unjudged.length,
  });

/** Chapters and headings that teach what is left open here. */
export const AT = {
  drawer: 'from-your-parts.html#from-your-drawer',
  wall: 'does-it-fit.html#the-wall-that-is-really-there',
  classes: 'what-a-class-allows.html#what-a-class-allows',
  drill: 'what-a-class-allows.html#before-the-tap',
  play: 'play-and-flanks.html#from-the-class-to-the-play',
  float: 'measured-parts.html#measured-parts',
  spring: 'spring-strength.html#how-strong-at-the-least',
  years: 'spring-strength.html#days-and-years',
  key: 'the-lock.html#the-lock-loose',
  windUp: 'the-lock.html#the-lock-springy',
  lead: 'lead-error.html#two-errors-one-net-lead',
  periodic: 'periodic-error.html#the-drunken-thread',
  effort: 'effort-and-feel.html#where-the-torque-goes',
  collar: 'how-much-friction.html#what-else-rubs',
  hand: 'the-hand.html#what-the-hand-does',
  tip: 'contact-heat-creep.html#the-tip',
  warmth: 'heat-and-creep.html#warmth',
  creep: 'heat-and-creep.html#creep',
  path: 'heat-and-creep.html#all-of-it-beside-one-flat',
  press: 'tip-and-base.html#a-ball-in-a-hexagon-socket',
  strength: 'design-sheet.html#beside-the-screw-you-would-otherwise-buy',
  sheet: 'design-sheet.html#the-sheet',
} as const;

/** What no field of the sheet asks for. */
export const NOT_LOOKED_AT: readonly (readonly [key: keyof typeof LINES.notLookedAt, at: string])[] = [
  ['sideLoad', AT.spring],
  ['float', AT.float],
  ['jerks', AT.hand],
  ['collar', AT.collar],
  ['stiffness', AT.path],
  ['otherSeats', AT.tip],
  ['axes', AT.wall],
  ['plating', AT.classes],
  ['drills', AT.drill],
];
