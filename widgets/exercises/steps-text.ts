/** The worked answer of an item as plain lines, for keys and for exports. */
import { UNITS } from '../engine/index.ts';
import { answerText, type Item, slipShown } from './exercise.ts';
import { LETTERS } from './offered.ts';
import { stepLine } from './step-line.ts';

const linesOf = new WeakMap<Item, readonly string[]>();

/** Each step with its reason. */
export const stepLines = (item: Item): readonly string[] => {
  const known = linesOf.get(item) ?? linesIn(item, true);
  linesOf.set(item, known);
  return known;
};

/** The algebra and numbers alone, where reasons stand elsewhere. */
export const algebraLines = (item: Item): readonly string[] => linesIn(item, false);

const linesIn = (item: Item, reasons: boolean): readonly string[] => {
  const { exercise, offered, outcomes } = item;
  if (offered && exercise.kind === 'order')
    return [...[...offered.right].map((at) => offered.options[LETTERS.indexOf(at)]?.text ?? ''), ...decided(item)];
  const slip = slipShown(item);
  const worked = exercise.steps.map((step, i) =>
    stepLine(reasons ? step : { ...step, why: '' }, outcomes[i], exercise.formulas?.[i]),
  );
  const last = worked.at(-1);
  const { unit } = exercise;
  // Lengths are worked in millimetres and micrometres; what is asked in another unit is turned at the end.
  if (
    last !== undefined &&
    !offered &&
    !exercise.asItem &&
    UNITS[unit].base === 'mm' &&
    !last.endsWith(`\u00a0${unit}`)
  )
    worked[worked.length - 1] = `${last} = ${answerText(item)}`;
  return [...(slip === '' ? [] : [slip]), ...worked, ...decided(item)];
};

const decided = ({ decides }: Item): readonly string[] => (decides === undefined ? [] : [decides]);
