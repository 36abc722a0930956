/** The worked answer of an item as plain lines, for keys and for exports. */
import { type Item, slipShown } from './exercise.ts';
import { LETTERS } from './offered.ts';
import { stepLine } from './step-line.ts';

const linesOf = new WeakMap<Item, readonly string[]>();

export const stepLines = (item: Item): readonly string[] => {
  const known = linesOf.get(item) ?? linesIn(item);
  linesOf.set(item, known);
  return known;
};

const linesIn = (item: Item): readonly string[] => {
  const { exercise, offered, outcomes } = item;
  if (offered && exercise.kind === 'order')
    return [...offered.right].map((at) => offered.options[LETTERS.indexOf(at)]?.text ?? '');
  const slip = slipShown(item);
  const worked = exercise.steps.map((step, i) => stepLine(step, outcomes[i]));
  return slip === '' ? worked : [slip, ...worked];
};
