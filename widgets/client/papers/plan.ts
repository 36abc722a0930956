/** The plan of a course: lessons from the minutes, needs and goals that chapters state, with their exercises. */
import {
  CHAPTERS_OF_PLAN,
  CHAPTERS_TAKEN,
  LESSON_HEAD,
  LESSONS,
  MINUTES_A_LESSON,
  MINUTES_HEAD,
  OUTCOMES_HEAD,
  PLAN,
  PLAN_AS_CSV,
  PLAN_WAY,
  PRACTISED_BY,
  PRINT_PLAN,
  partOf,
  planSays,
  REACH,
  SET_PLAN,
  TAKE_NEEDS,
  wayTakes,
} from '#words/classroom.ts';
import { csvRow } from '../../exercises/csv-row.ts';
import { langOf, langText } from '../../exercises/own-language.ts';
import {
  type CourseChapter,
  type Plan,
  planCourse,
  readLessons,
  readMinutes,
  withNeeds,
} from '../../exercises/plan.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { escapeText } from '../../input/escape.ts';
import { make, whenSent } from '../dom.ts';
import { button, lineField, printed, status } from './parts.ts';

const rowsOf = ({ lessons }: Plan) => cellsOf(lessons).map(({ cells }) => cells);
const cellsOf = (lessons: Plan['lessons']) =>
  lessons.flatMap(({ number, parts }) =>
    parts.map(({ chapter, minutes, from }) => {
      // What one can do is there when the chapter is ended.
      const ends = from === 'whole' || from === 'ended';
      const cells = [
        String(number),
        partOf(chapter.number, chapter.title, from),
        String(minutes),
        ends ? chapter.outcomes.join(' ') : '',
        ends ? chapter.exercises.join('; ') : '',
      ];
      return { cells, lang: langText(chapter) };
    }),
  );
const HEADS = [LESSON_HEAD, CHAPTERS_TAKEN, MINUTES_HEAD, OUTCOMES_HEAD, PRACTISED_BY];

const planHtml = (plan: Plan, says: string): string =>
  `<section class="paper grid course-plan"><h2>${PLAN}</h2><p>${escapeText(says)}</p><table><thead><tr>${HEADS.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${cellsOf(
    plan.lessons,
  )
    .map(
      ({ cells, lang }) =>
        `<tr>${cells.map((cell, i) => `<td${i === 2 ? '' : ` class="words"${lang}`}>${escapeText(cell)}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody></table></section>`;

export const mountPlan = (place: HTMLElement, course: readonly CourseChapter[]): void => {
  const lessons = lineField('plan-lessons', LESSONS, '10');
  const minutes = lineField('plan-minutes', MINUTES_A_LESSON, '45');
  const said = status();
  const sheet = printed('plan');
  const shown = make('div', { class: 'papers-preview', role: 'region', 'aria-label': PLAN, tabindex: '0' });
  const boxes = course.map((chapter) => {
    const box = make('input', { type: 'checkbox', id: `plan-${chapter.slug}` });
    box.checked = chapter.number <= 11;
    return { chapter, box };
  });
  const chosen = () => new Set(boxes.flatMap(({ chapter, box }) => (box.checked ? [chapter.slug] : [])));
  let last: Plan | undefined;
  const acts = make(
    'div',
    { class: 'button-row', hidden: '' },
    button(PRINT_PLAN, sheet.print),
    button(PLAN_AS_CSV, () => {
      if (last) saveFile(`${[HEADS, ...rowsOf(last)].map(csvRow).join('\r\n')}\r\n`, 'course-plan.csv', 'text/csv');
    }),
  );
  /** What is said of the way to a chapter, before what is said of its plan. */
  let first = '';
  const set = () => {
    last = undefined;
    acts.hidden = true;
    for (const part of [shown, sheet.place]) part.replaceChildren();
    const [n, each] = [readLessons(lessons.field.value), readMinutes(minutes.field.value)];
    lessons.field.setAttribute('aria-invalid', String(!n.ok));
    minutes.field.setAttribute('aria-invalid', String(!each.ok));
    if (!n.ok) return said.refuse(n);
    if (!each.ok) return said.refuse(each);
    const plan = planCourse(course, chosen(), n.value, each.value);
    if (!plan.ok) return said.refuse(plan);
    last = plan.value;
    const says = planSays({
      lessons: plan.value.lessons.length,
      over: plan.value.over,
      enough: plan.value.enough,
      left: plan.value.left.map(({ chapter, minutes }) => ({
        chapter: `${chapter.number} ${chapter.title}`,
        minutes,
        begun: minutes < chapter.minutes,
      })),
      unmet: plan.value.unmet.map(({ chapter, needs }) => ({
        chapter: chapter.title,
        needs: needs.map(({ title }) => title),
      })),
    });
    said.say(first === '' ? says : `${first} ${says}`);
    first = '';
    shown.innerHTML = sheet.place.innerHTML = planHtml(plan.value, says);
    acts.hidden = false;
  };
  const goal = make(
    'select',
    { id: 'plan-goal' },
    ...course.map(({ slug, number, title, lang }) =>
      make('option', { value: slug, ...(lang === undefined ? {} : { lang }) }, `${number} ${title}`),
    ),
  );
  /** Only what leads to the chapter, in the lessons that there are. */
  const reach = () => {
    const way = withNeeds(course, new Set([goal.value]));
    const title = way.find(({ slug }) => slug === goal.value)?.title ?? '';
    for (const { chapter, box } of boxes) box.checked = way.includes(chapter);
    first = wayTakes(
      title,
      way.length,
      way.reduce((sum, chapter) => sum + chapter.minutes, 0),
    );
    form.dispatchEvent(new Event('change', { bubbles: true }));
    form.requestSubmit();
  };
  const form = make(
    'form',
    { novalidate: '' },
    lessons.place,
    minutes.place,
    make(
      'details',
      {},
      make('summary', {}, CHAPTERS_OF_PLAN),
      make(
        'div',
        { class: 'plan-chapters' },
        ...boxes.map(({ chapter, box }) => make('label', langOf(chapter), box, `${chapter.number} ${chapter.title}`)),
      ),
      button(TAKE_NEEDS, () => {
        const all = new Set(withNeeds(course, chosen()).map(({ slug }) => slug));
        for (const { chapter, box } of boxes) box.checked = all.has(chapter.slug);
      }),
    ),
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, SET_PLAN)),
  );
  whenSent(form, set);
  place.append(
    make('div', { class: 'field' }, make('label', { for: goal.id }, REACH), make('span', { class: 'field-box' }, goal)),
    make('div', { class: 'button-row' }, button(PLAN_WAY, reach)),
    form,
    said.line,
    acts,
    shown,
  );
};
