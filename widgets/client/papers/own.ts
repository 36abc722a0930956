/** Where a teacher leaves exercises out, gives them marks, and changes their words and sizes; kept with the tab, and in a file. */
import {
  CHANGE_EXERCISE,
  changedNow,
  HINT_FIELD,
  MARKS_FIELD,
  OPEN_OWN,
  ownRead,
  ownSays,
  QUESTION_FIELD,
  SAVE_OWN,
  sizesField,
  TAKE_BACK,
  TAKE_CHANGE,
  TITLE_FIELD,
  USED,
} from '#words/classroom.ts';
import type { Bank } from '../../exercises/bank.ts';
import type { Exercise } from '../../exercises/exercise.ts';
import {
  type Edit,
  edited,
  editOf,
  fitting,
  NO_OWN,
  type Own,
  readMarks,
  readOwn,
  sizesKept,
  sizesShown,
  writeOwn,
} from '../../exercises/own.ts';
import { langOf } from '../../exercises/own-language.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { make, whenSent } from '../dom.ts';
import { tabText, writeTab } from '../storage.ts';
import { button, lineField, status, textField } from './parts.ts';

const KEY = 'notebook-own-exercises';
const isNone = ({ hidden, marks, edits }: Own): boolean =>
  hidden.length + Object.keys(marks).length + Object.keys(edits).length === 0;

export const mountOwn = (place: HTMLElement, bank: Bank, changed: (own: Own) => void): void => {
  let own = NO_OWN;
  const said = status();
  const list = make('div', { class: 'own-list' });
  const counts = () => ({
    hidden: own.hidden.length,
    edits: Object.keys(own.edits).length,
    marks: Object.keys(own.marks).length,
  });
  /** Takes what fits the bank, and keeps it with the tab; gives what did not fit. */
  const take = (next: Own): readonly string[] => {
    const fit = fitting(bank, next);
    own = fit.own;
    changed(own);
    writeTab(KEY, isNone(own) ? '' : writeOwn(own));
    said.say(ownSays(counts()));
    return fit.unfit;
  };

  /** What takes the changes that were typed and not yet taken, false where one is refused; by the id of their exercise. */
  const typed = new Map<string, () => boolean>();

  const editor = (exercise: Exercise, id: string): HTMLElement => {
    const now = own.edits[id] ?? editOf(exercise);
    const title = lineField(`own-title-${id}`, TITLE_FIELD, now.title);
    const question = textField(`own-question-${id}`, QUESTION_FIELD, now.question, 4);
    const hint = textField(`own-hint-${id}`, HINT_FIELD, now.hint, 2);
    const sizes = exercise.pools.map(({ input, options }) => ({
      input,
      ...textField(
        `own-${input.name}-${id}`,
        sizesField(input.name),
        sizesShown(input, now.sizes[input.name] ?? options.join(', ')),
        2,
      ),
    }));
    const says = status();
    const form = make(
      'form',
      { novalidate: '' },
      title.place,
      question.place,
      hint.place,
      ...sizes.map((s) => s.place),
      make(
        'div',
        { class: 'button-row' },
        make('button', { type: 'submit' }, TAKE_CHANGE),
        button(TAKE_BACK, () => {
          const { [id]: _gone, ...edits } = own.edits;
          typed.delete(id);
          take({ ...own, edits });
          form.replaceWith(editor(exercise, id));
        }),
      ),
      says.line,
    );
    const takeEdit = (): boolean => {
      const edit: Edit = {
        title: title.field.value,
        question: question.field.value,
        hint: hint.field.value,
        sizes: Object.fromEntries(sizes.map(({ input, field }) => [input.name, sizesKept(input, field.value)])),
      };
      const read = edited(exercise, edit);
      if (!read.ok) {
        says.refuse(read);
        form.querySelector('input')?.focus();
        return false;
      }
      typed.delete(id);
      take({ ...own, edits: { ...own.edits, [id]: edit } });
      says.say(changedNow(read.value.title));
      return true;
    };
    whenSent(form, takeEdit);
    form.addEventListener('input', () => typed.set(id, takeEdit));
    return form;
  };

  const row = (exercise: Exercise): HTMLElement => {
    const { id, title } = exercise;
    const used = make('input', { type: 'checkbox', id: `own-used-${id}` });
    used.checked = !own.hidden.includes(id);
    used.addEventListener('change', () => {
      const hidden = own.hidden.filter((one) => one !== id);
      take({ ...own, hidden: used.checked ? hidden : [...hidden, id] });
    });
    const marks = make('input', {
      type: 'text',
      inputmode: 'numeric',
      id: `own-marks-${id}`,
      maxlength: '20',
      autocomplete: 'off',
      value: String(own.marks[id] ?? 1),
    });
    marks.addEventListener('change', () => {
      const read = readMarks(marks.value);
      marks.setAttribute('aria-invalid', String(!read.ok));
      if (!read.ok) return said.refuse(read);
      take({ ...own, marks: { ...own.marks, [id]: read.value } });
    });
    const change = make('details', {}, make('summary', {}, CHANGE_EXERCISE));
    // A form for each of some fifty exercises would be laid out for nothing.
    change.addEventListener('toggle', () => {
      if (change.open && change.childElementCount === 1) change.append(editor(exercise, id));
    });
    return make(
      'div',
      { class: 'own-row', role: 'group', 'aria-label': title },
      make(
        'label',
        {},
        used,
        make('span', langOf(exercise), title),
        ' ',
        make('span', { class: 'visually-hidden' }, USED),
      ),
      make('label', { for: marks.id, class: 'own-marks' }, MARKS_FIELD),
      make('span', { class: 'field-box' }, marks),
      change,
    );
  };

  const show = () =>
    list.replaceChildren(
      ...bank.chapters.map(({ title, exercises }) => {
        const fold = make('details', {}, make('summary', exercises[0] ? langOf(exercises[0]) : {}, title));
        fold.addEventListener('toggle', () => {
          if (fold.open && fold.childElementCount === 1) fold.append(...exercises.map(row));
        });
        return fold;
      }),
    );
  const file = make('input', { type: 'file', id: 'own-file', accept: '.json,application/json' });
  file.addEventListener('change', async () => {
    const [chosen] = file.files ?? [];
    file.value = '';
    if (!chosen) return;
    const read = readOwn(await chosen.text());
    if (!read.ok) return said.refuse(read);
    typed.clear();
    const unfit = take(read.value);
    show();
    said.say(ownRead({ ...counts(), unfit }));
  });
  const kept = readOwn(tabText(KEY));
  if (kept.ok) take(kept.value);
  show();
  place.append(
    list,
    make(
      'div',
      { class: 'button-row' },
      button(SAVE_OWN, () => {
        // A file without what stands in an open form would drop it without a word; one that is refused says why, and nothing is saved.
        if ([...typed.values()].every((takeIt) => takeIt()))
          saveFile(writeOwn(own), 'own-exercises.json', 'application/json');
      }),
      make('label', { for: file.id, class: 'file-label' }, `${OPEN_OWN} `, file),
    ),
    said.line,
  );
};
