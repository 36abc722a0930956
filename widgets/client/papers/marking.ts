/** A filled grid is marked against each student’s own numbers: scores, and which exercises and slips were missed. */
import {
  EXERCISE_HEAD,
  FILLED_GRID,
  HALF_FOR_SLIP,
  LEFT_HEAD,
  MARK_ANSWERS,
  MISSED_ITEMS,
  MISSED_SLIPS,
  marked,
  RIGHT_HEAD,
  SCORE,
  SCORES,
  SCORES_AS_CSV,
  SLIP_HEAD,
  STUDENT,
  TIMES_HEAD,
  TITLE_HEAD,
  WRONG_HEAD,
} from '#words/classroom.ts';
import { type Marked, markGrid, scoresCsv } from '../../exercises/mark.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { make, whenSent } from '../dom.ts';
import { button, type ClassAbove, status, textField } from './parts.ts';

const HEADS = [STUDENT, EXERCISE_HEAD, TITLE_HEAD, RIGHT_HEAD, WRONG_HEAD, LEFT_HEAD];

const table = (caption: string, heads: readonly string[], rows: readonly (readonly string[])[]): HTMLElement => {
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

export const mountMarking = (place: HTMLElement, above: ClassAbove): void => {
  const grid = textField('filled-grid', FILLED_GRID, '', 6);
  const half = make('input', { type: 'checkbox', id: 'half-for-slip' });
  const said = status();
  const found = make('div', { class: 'marked' });
  let last: Marked | undefined;
  const save = button(SCORES_AS_CSV, () => {
    if (last) saveFile(scoresCsv(last, { heads: HEADS, score: SCORE, says: SLIP_HEAD }), 'scores.csv', 'text/csv');
  });
  save.hidden = true;
  const form = make(
    'form',
    { novalidate: '' },
    grid.place,
    make('fieldset', { class: 'field choice' }, make('label', {}, half, HALF_FOR_SLIP)),
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, MARK_ANSWERS), save),
  );
  whenSent(form, () => {
    const papers = above.papers();
    if (!papers.ok) return said.refuse(papers);
    const read = markGrid(grid.field.value, papers.value, above.marks, half.checked ? 0.5 : 0);
    grid.field.setAttribute('aria-invalid', String(!read.ok));
    if (!read.ok) return said.refuse(read);
    last = read.value;
    const { students, items, slips, most, unknown, missing } = read.value;
    said.say(marked(students.length, unknown, missing.length));
    save.hidden = false;
    const number = (x: number) => String(Math.round(x * 100) / 100);
    found.replaceChildren(
      table(
        SCORES,
        [STUDENT, SCORE],
        students.map((s) => [s.student, `${number(s.score)} / ${number(most)}`]),
      ),
      table(
        MISSED_ITEMS,
        [TITLE_HEAD, RIGHT_HEAD, WRONG_HEAD, LEFT_HEAD],
        items.map((i) => [i.title, String(i.right), String(i.wrong), String(i.left)]),
      ),
      table(
        MISSED_SLIPS,
        [SLIP_HEAD, TITLE_HEAD, TIMES_HEAD],
        slips.map((s) => [s.says, items.find((i) => i.key === s.key)?.title ?? '', String(s.count)]),
      ),
    );
  });
  place.append(form, said.line, found);
};
