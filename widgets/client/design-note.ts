/** In the foot of a figure or under the fields of an example, while a design is in use: which of them it has filled, and which it has not. */
import { FIELDS_FROM, fromDesign, restsOnChapter } from '#words/client.ts';
import { offersOf } from '../assembly/design-use.ts';
import { type Input, type NumberSet, readInput, writeValue } from '../assembly/numbers.ts';
import { NO_PARTS } from '../input/texts.ts';
import { designInUse, onDesignsChange } from './design-store.ts';
import { make, setText } from './dom.ts';
import { whenTheyRest } from './in-sight.ts';
import type { Store } from './store.ts';

export interface FieldsFrom {
  readonly design: readonly string[];
  /** Filled, but worked out from other numbers of the design. */
  readonly worked: readonly string[];
  /** The design has it, and the field does not take it. */
  readonly refused: readonly string[];
  readonly chapter: readonly string[];
  /** Neither: typed or turned since. */
  readonly reader: readonly string[];
}

/** Where the number in each of these fields comes from, told by what stands in it now. */
export const fieldsFrom = (
  numbers: Readonly<Record<string, string>>,
  set: NumberSet,
  inputs: readonly Input[],
  store: Store,
): FieldsFrom => {
  const offers = offersOf(numbers, set);
  const from: Record<keyof FieldsFrom, string[]> = { design: [], worked: [], refused: [], chapter: [], reader: [] };
  for (const input of inputs) {
    const field = store.field(set.id, input.name);
    if (!field) continue;
    const offer = offers.get(input.name);
    if (offer?.text === NO_PARTS || offer?.emptied) continue;
    const given = offer ? readInput(input, offer.text, 'metric') : undefined;
    const written = writeValue(input, field.value, 'metric');
    const filled =
      field.reason === undefined && given?.ok === true && written === writeValue(input, given.value, 'metric');
    const own = store.pristine(set.id, input.name);
    const kind =
      offer && filled
        ? offer.worked
          ? 'worked'
          : 'design'
        : offer?.taken || !own
          ? 'reader'
          : offer
            ? 'refused'
            : 'chapter';
    from[kind].push(input.label);
  }
  return from;
};

/** What a verdict rests on that is the chapter’s own, where the design filled the rest: such a verdict is none of the design. */
export const restsOn = (
  { design, worked, chapter, refused }: FieldsFrom,
  decided: readonly string[],
): readonly string[] =>
  design.length + worked.length === 0
    ? []
    : decided.filter((label) => chapter.includes(label) || refused.includes(label));

/** The same in sentences: a short one, and the lists behind it. */
export const noteOf = (
  name: string,
  from: FieldsFrom,
): { readonly summary: string; readonly lists: readonly string[] } => {
  const filled = from.design.length + from.worked.length;
  const own = from.chapter.length + from.refused.length;
  const all = filled + own + from.reader.length;
  const list = (head: string, names: readonly string[]) =>
    names.length === 0 ? [] : [`${head}: ${names.join('; ')}.`];
  return {
    summary: fromDesign(name, { filled, all, own, typed: from.reader.length }),
    lists: [
      ...list(FIELDS_FROM.design, from.design),
      ...list(FIELDS_FROM.worked, from.worked),
      ...list(FIELDS_FROM.chapter, from.chapter),
      ...list(FIELDS_FROM.refused, from.refused),
      ...list(FIELDS_FROM.reader, from.reader),
    ],
  };
};

/** `place` is where the note stands; the fields it tells of are those in `fields`. */
export const mountDesignNote = (
  place: HTMLElement,
  fields: readonly HTMLElement[],
  store: Store,
  until: AbortSignal,
): void => {
  const set = store.sets.get(fields[0]?.dataset.inputs ?? '');
  const names = fields.flatMap((field) => (field.dataset.names ?? '').split(' '));
  const inputs = set?.inputs.filter((input) => names.includes(input.name)) ?? [];
  if (!set || inputs.length === 0) return;
  const summary = make('summary', {});
  const lists = make('div', {});
  const note = make('details', { class: 'design-note' }, summary, lists);
  note.hidden = true;
  const rests = make('p', { class: 'design-rests', role: 'status' });
  rests.hidden = true;
  place.append(rests, note);
  const figure = place.closest<HTMLElement>('[data-decided]');
  const decided = (figure?.dataset.decided ?? '').split(' ');
  /** Labels of the numbers that the verdict rests on as the others stand. */
  const deciding = () =>
    inputs
      .filter(
        ({ name }) => decided.includes(name) && !figure?.querySelector<HTMLElement>(`[data-field="${name}"]`)?.hidden,
      )
      .map(({ label }) => label);
  const judge = (from: FieldsFrom | undefined) => {
    const borrowed = from && figure ? restsOn(from, deciding()) : [];
    figure?.toggleAttribute('data-borrowed', borrowed.length > 0);
    rests.hidden = borrowed.length === 0;
    setText(rests, borrowed.length === 0 ? '' : restsOnChapter(borrowed));
  };
  // Read once for each change of the shelf.
  let mine = designInUse();
  const refresh = () => {
    note.hidden = mine === undefined;
    const from = mine && fieldsFrom(mine.numbers, set, inputs, store);
    judge(from);
    if (!mine || !from) return;
    const said = noteOf(mine.name, from);
    setText(summary, said.summary);
    if (lists.textContent !== said.lists.join(''))
      lists.replaceChildren(...said.lists.map((text) => make('p', {}, text)));
  };
  onDesignsChange(() => {
    mine = designInUse();
    refresh();
  }, until);
  store.onDrawn((sets) => {
    if (mine && sets.has(set.id)) whenTheyRest(refresh);
  });
  refresh();
};
