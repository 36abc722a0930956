/**
 * Quantities that have one value for as long as a choice says so. Whichever of them is given a value, the others take
 * it over; when the choice is made, the first one leads.
 */
import type { SymbolName } from '../engine/index.ts';
import type { ChoiceName } from '../input/choices.ts';
import type { TextName } from '../input/texts.ts';

interface Link {
  readonly choice: ChoiceName;
  readonly option: string;
  readonly names: readonly [SymbolName, ...SymbolName[]];
}

const LINKS: readonly Link[] = [{ choice: 'errors', option: 'the same error', names: ['eps_A', 'eps_C'] }];

/** What a chapter states of how its own readings were taken. It is not so of other readings, so it goes with them. */
export const STATED_OF: Readonly<Record<string, readonly TextName[]>> = {
  runs: ['piece', 'dated', 'warmth', 'gauge', 'method'],
};

/** What follows this input under a link, and which input it follows. */
export const followersOf = (
  name: string,
  choice: (name: ChoiceName) => unknown,
): readonly { readonly leader: SymbolName; readonly follower: SymbolName }[] =>
  LINKS.filter((link) => choice(link.choice) === link.option).flatMap((link) => {
    const leader = name === link.choice ? link.names[0] : link.names.find((n) => n === name);
    return leader === undefined ? [] : link.names.filter((n) => n !== leader).map((follower) => ({ leader, follower }));
  });
