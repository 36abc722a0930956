/** On a printed sheet, one line of which numbers are the chapter’s own: paper keeps no fields that would tell. */
import { ownOnPaper } from '#words/client.ts';
import type { Figure } from '../../figures/kit/figure.ts';
import { NO_PARTS } from '../../input/texts.ts';
import { fieldsFrom } from '../design-note.ts';
import { designInUse } from '../design-store.ts';
import type { Store } from '../store.ts';

/** Of the fields that count as the others stand; those that are empty have nothing that could be anybody’s. */
export const ownLine = (figure: Figure, id: string, store: Store): string => {
  const set = store.sets.get(id);
  if (!set) return '';
  const idle = figure.idle(store.numbers(id));
  const asked = [...figure.threads, ...figure.quantities, ...figure.choices, ...figure.texts];
  const inputs = set.inputs.filter(({ name }) => {
    const value = store.field(id, name)?.value;
    return asked.includes(name) && !idle.includes(name) && value !== '' && value !== NO_PARTS;
  });
  const { chapter, refused } = fieldsFrom(designInUse()?.numbers ?? {}, set, inputs, store);
  // The line is one of many on a page: names without what is said of them.
  const own = [...chapter, ...refused].map((label) => label.replace(/[,:]? *[(:].*$/, ''));
  return own.length === 0 ? '' : ownOnPaper(own, own.length === inputs.length);
};
