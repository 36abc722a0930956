/** What the parts of the page for a class share: the class above them, buttons, fields, and what they print. */

import type { Bad, Result } from '../../engine/index.ts';
import type { SetPaper } from '../../exercises/answer-grid.ts';
import type { OwnUnits } from '../../exercises/forms.ts';
import type { Heading, Marks } from '../../exercises/paper-html.ts';
import type { Roster } from '../../exercises/roster.ts';
import { reasonOf } from '../../words/reason.ts';
import { make, setText } from '../dom.ts';

export interface ClassAbove {
  /** The class as it is typed above; a mistake in it is told by the form itself. */
  readonly roster: () => Result<Roster>;
  readonly heading: () => Result<Heading>;
  /** The papers of the form as it stands, set anew. */
  readonly papers: () => Result<readonly SetPaper[]>;
  readonly marks: Marks;
}

export const button = (text: string, act: () => void): HTMLButtonElement => {
  const b = make('button', { type: 'button' }, text);
  b.addEventListener('click', act);
  return b;
};

export const textField = (id: string, label: string, value: string, rows: number) => {
  const field = make('textarea', {
    id,
    rows: String(rows),
    autocomplete: 'off',
    spellcheck: 'false',
    maxlength: '2000000',
  });
  field.value = value;
  return { field, place: make('div', { class: 'field text' }, make('label', { for: id }, label), field) };
};

export const lineField = (id: string, label: string, value: string) => {
  const field = make('input', { id, type: 'text', autocomplete: 'off', maxlength: '200', value });
  return {
    field,
    place: make(
      'div',
      { class: 'field' },
      make('label', { for: id }, label),
      make('span', { class: 'field-box' }, field),
    ),
  };
};

/** One of several, picked by a radio button. */
export const oneOf = <T extends string>(
  name: string,
  legend: string,
  options: readonly T[],
  chosen: T,
  labelOf: (option: T) => string,
) => {
  const place = make('fieldset', { class: 'field choice' }, make('legend', {}, legend));
  const radios = options.map((option) => {
    const radio = make('input', { type: 'radio', name, value: option });
    place.append(make('label', {}, radio, labelOf(option)));
    return { option, radio };
  });
  const choose = (wanted: T) => {
    for (const { option, radio } of radios) radio.checked = option === wanted;
  };
  choose(chosen);
  return { place, choose, chosen: (): T => radios.find(({ radio }) => radio.checked)?.option ?? chosen };
};

export const status = () => {
  const line = make('p', { class: 'verdict', role: 'status' });
  return {
    line,
    say: (text: string) => setText(line, text),
    refuse: (why: Bad) => setText(line, reasonOf(why)),
  };
};

/** A table that scrolls by itself where the page is narrow. */
export const tableOf = (
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly string[])[],
): HTMLElement => {
  const cells = (of: readonly string[], tag: 'th' | 'td') =>
    of.map((text, i) =>
      make(
        i === 0 && tag === 'td' ? 'th' : tag,
        tag === 'th' ? { scope: 'col' } : i === 0 ? { scope: 'row' } : {},
        text,
      ),
    );
  return make(
    'div',
    { class: 'table-scroll', tabindex: '0', role: 'region', 'aria-label': caption },
    make(
      'table',
      {},
      make('caption', {}, caption),
      make('thead', {}, make('tr', {}, ...cells(heads, 'th'))),
      make('tbody', {}, ...rows.map((row) => make('tr', {}, ...cells(row, 'td')))),
    ),
  );
};

/** A stack of paper that only prints: `print` puts it alone on the sheets. */
export const printed = (kind: string) => {
  document.querySelector(`.papers-print[data-kind="${kind}"]`)?.remove();
  const place = make('div', { class: 'papers-print', 'data-kind': kind });
  document.body.append(place);
  return {
    place,
    print: () => {
      document.body.dataset.print = kind;
      window.print();
    },
  };
};

export const viewOf = (units: OwnUnits | undefined): 'metric' | 'inch' => (units === 'inch' ? 'inch' : 'metric');
