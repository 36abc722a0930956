/** A filled grid is marked against each student’s own numbers: scores, which exercises and slips were missed, and each answer. */
import {
  ANSWER_HEAD,
  ANSWER_KINDS,
  ANSWERS_UNREAD,
  BY_ANSWER,
  EXERCISE_HEAD,
  FILLED_GRID,
  HALF_FOR_SLIP,
  LEFT_HEAD,
  MARK_ANSWERS,
  MISSED_ITEMS,
  MISSED_SLIPS,
  marked,
  OUT_OF,
  RIGHT_HEAD,
  SCORE,
  SCORES,
  SCORES_AS_CSV,
  SLIP_HEAD,
  STUDENT,
  TIMES_HEAD,
  TITLE_HEAD,
  UNREAD_HEAD,
  VERDICT_HEAD,
  WRONG_HEAD,
} from '#words/classroom.ts';
import { answersOf, type Marked, markGrid, scoresCsv } from '../../exercises/mark.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { make, whenSent } from '../dom.ts';
import { button, type ClassAbove, status, tableOf, textField } from './parts.ts';

const HEADS = [STUDENT, EXERCISE_HEAD, TITLE_HEAD, RIGHT_HEAD, WRONG_HEAD, UNREAD_HEAD, LEFT_HEAD];
const ANSWER_HEADS = [STUDENT, EXERCISE_HEAD, TITLE_HEAD, ANSWER_HEAD, VERDICT_HEAD, SLIP_HEAD];

export const mountMarking = (place: HTMLElement, above: ClassAbove): void => {
  const grid = textField('filled-grid', FILLED_GRID, '', 6);
  const half = make('input', { type: 'checkbox', id: 'half-for-slip' });
  const said = status();
  const found = make('div', { class: 'marked' });
  let last: Marked | undefined;
  const save = button(SCORES_AS_CSV, () => {
    if (!last) return;
    const words = {
      heads: HEADS,
      score: SCORE,
      of: OUT_OF,
      says: SLIP_HEAD,
      answers: ANSWER_HEADS,
      kinds: ANSWER_KINDS,
    };
    saveFile(scoresCsv(last, words), 'scores.csv', 'text/csv');
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
    // What an earlier grid gave is not to be taken for this one’s.
    last = undefined;
    save.hidden = true;
    found.replaceChildren();
    const papers = above.papers();
    if (!papers.ok) return said.refuse(papers);
    const read = markGrid(grid.field.value, papers.value, above.marks, half.checked ? 0.5 : 0);
    grid.field.setAttribute('aria-invalid', String(!read.ok));
    if (!read.ok) return said.refuse(read);
    last = read.value;
    const { students, items, slips, most, unknown, missing, taken } = read.value;
    const answers = answersOf(read.value);
    const unread = answers.filter(({ kind }) => kind === 'unread');
    said.say(marked(students.length, unknown, missing, taken, unread.length));
    save.hidden = false;
    const number = (x: number) => String(Math.round(x * 100) / 100);
    found.append(
      ...(unread.length === 0
        ? []
        : [
            tableOf(
              ANSWERS_UNREAD,
              [STUDENT, TITLE_HEAD, ANSWER_HEAD, SLIP_HEAD],
              unread.map((a) => [a.student, a.title, a.typed, a.says]),
            ),
          ]),
      tableOf(
        SCORES,
        [STUDENT, SCORE],
        students.map((s) => [s.student, `${number(s.score)} / ${number(most)}`]),
      ),
      tableOf(
        MISSED_ITEMS,
        [TITLE_HEAD, RIGHT_HEAD, WRONG_HEAD, UNREAD_HEAD, LEFT_HEAD],
        items.map((i) => [i.title, String(i.right), String(i.wrong), String(i.unread), String(i.left)]),
      ),
      ...(slips.length === 0
        ? []
        : [
            tableOf(
              MISSED_SLIPS,
              [SLIP_HEAD, TITLE_HEAD, TIMES_HEAD],
              slips.map((s) => [s.says, items.find((i) => i.key === s.key)?.title ?? '', String(s.count)]),
            ),
          ]),
      make(
        'details',
        {},
        make('summary', {}, BY_ANSWER),
        tableOf(
          BY_ANSWER,
          [STUDENT, TITLE_HEAD, ANSWER_HEAD, VERDICT_HEAD, SLIP_HEAD],
          answers.map((a) => [a.student, a.title, a.typed, ANSWER_KINDS[a.kind], a.says]),
        ),
      ),
    );
  });
  place.append(form, said.line, found);
};
