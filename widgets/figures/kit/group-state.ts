/** What a shut group of fields says of itself in one line, on the printed page and on the living one. */
import { NOTHING_YET, rowsOfList, stateOfGroup } from '#words/figures/groups.ts';
import { type Input, type Value, writeValue } from '../../assembly/numbers.ts';
import { spokenNumber, symbolFact } from '../../engine/index.ts';
import { optionText } from '../../input/choices.ts';
import { formatOf, show, type UnitView } from '../../input/format.ts';

/** More would not be read at a glance: fields, and characters, with those that say how many more there are, in a line that two others stand beside. */
const MOST_TOLD = 3;
const LONGEST = 40;
const AND_MORE = 8;

/** One field with its name, as short as it can be told. */
const heldText = (input: Input, value: Value, view: UnitView, alone: boolean): string => {
  switch (input.kind) {
    case 'thread':
      return input.name === 'thread'
        ? spokenNumber(writeValue(input, value, view))
        : `${input.name} ${spokenNumber(writeValue(input, value, view))}`;
    case 'choice':
      return optionText(input.name, String(value));
    case 'text':
      return listText(String(value));
    case 'quantity':
      return `${alone ? '' : `${shortName(input.label)} `}${show(Number(value), formatOf(symbolFact(input.name)), view === 'both' ? 'metric' : view)}`;
  }
};

/** A label without what explains it. */
const shortName = (label: string): string => label.replace(/\s*[,(:;].*$/, '');

/** A short text as it is, a list by how many rows it has. */
const listText = (text: string): string => {
  const rows = text.split('\n').filter((row) => row.trim() !== '');
  if (rows.length === 0) return NOTHING_YET;
  const [first = ''] = rows;
  return rows.length === 1 && first.length <= 40 ? first : rowsOfList(rows.length);
};

export const groupState = (fields: readonly (readonly [Input, Value])[], view: UnitView): string => {
  const held = fields.map(([input, value]) => heldText(input, value, view, fields.length === 1));
  if (held.length > 0 && held.every((text) => text === NOTHING_YET)) return NOTHING_YET;
  let [told, length] = [0, 0];
  for (const text of held) {
    length += text.length + 2;
    const rest = told + 1 < held.length ? AND_MORE : 0;
    if (told === MOST_TOLD || (told > 0 && length + rest > LONGEST)) break;
    told++;
  }
  return stateOfGroup(held.slice(0, told), held.length - told);
};
