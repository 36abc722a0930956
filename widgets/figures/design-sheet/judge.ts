/**
 * What of a design is judged, how it fared, and what is not judged. A check that nothing was found against is not a check
 * of everything, so whatever has no limit, no number or no place on the sheet is named beside the checks.
 */
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

/** Never “all”: the number of what was not judged stands beside. */
export const verdictOf = ({ checks, unjudged }: Judged): string =>
  `${checks.filter((c) => c.passed).length} of ${checks.length} judged passed; ${unjudged.length} not judged.`;

/** Chapters and headings that teach what is left open here. */
export const AT = {
  wall: 'does-it-fit.html#the-wall-that-is-really-there',
  classes: 'does-it-fit.html#what-a-class-allows',
  drill: 'does-it-fit.html#before-the-tap',
  play: 'play-and-flanks.html#from-the-class-to-the-play',
  float: 'play-and-flanks.html#measured-parts',
  spring: 'preload-and-lock.html#how-strong%2C-at-the-least',
  years: 'preload-and-lock.html#days-and-years',
  key: 'preload-and-lock.html#the-lock%2C-loose',
  windUp: 'preload-and-lock.html#the-lock%2C-springy',
  lead: 'lead-error.html#two-errors%2C-one-net-lead',
  periodic: 'lead-error.html#the-drunken-thread',
  effort: 'effort-and-feel.html#where-the-torque-goes',
  collar: 'effort-and-feel.html#what-else-rubs',
  hand: 'effort-and-feel.html#what-the-hand-does',
  tip: 'contact-heat-creep.html#the-tip',
  warmth: 'contact-heat-creep.html#warmth',
  creep: 'contact-heat-creep.html#creep',
  path: 'contact-heat-creep.html#all-of-it-beside-one-flat',
  core: 'finding-a-pair.html#three-wishes%2C-worked',
  sheet: 'design-sheet.html#the-sheet',
} as const;

/** What no field of the sheet asks for. */
export const NOT_LOOKED_AT: readonly (readonly [name: string, why: string, at: string])[] = [
  ['gap of the key in its slot', 'gap and radius of the key are not asked for', AT.key],
  ['loss of the spring’s force over time', 'share lost and time are not asked for', AT.years],
  ['side load, and friction of the guide', 'they are not asked for', AT.spring],
  ['sideways float of the tip', 'height of the tip is not asked for', AT.float],
  ['jerks as it starts to move (stick-slip)', 'static friction and twist of the hand are not asked for', AT.hand],
  ['friction of a collar or the tip', 'only the threads are taken to rub', AT.collar],
  ['stiffness of threads, screws and base', 'cores and moduli in the path are not asked for', AT.path],
  ['ball in a vee, a cone or on rollers', 'the seat is taken as a flat', AT.tip],
  ['axes of the two threads out of line', 'neither offset nor angle is asked for', AT.wall],
  ['plating', 'classes hold before coating, and no coat is asked for', AT.classes],
  ['tap drills', 'share of full thread is not asked for', AT.drill],
  ['strength of cores and threads', 'stress allowed is not asked for', AT.core],
];
