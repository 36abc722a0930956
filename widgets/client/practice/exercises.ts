/**
 * Exercises: new numbers as often as wanted, an answer typed with its unit, the slip it looks like, then the hint, then
 * the worked steps. Worked steps fade: whole at first, their end left out for a reader who has solved it before.
 */

import {
  ANOTHER_EXERCISE,
  ANSWER_OFFERED,
  CHECK,
  COPIED,
  DONE,
  dueSays,
  ERASE_ALL,
  ERASE_PROGRESS,
  EXPORT_PROGRESS,
  fromChapter,
  NEW_NUMBERS,
  notOnFigure,
  PROGRESS,
  PUT_ON_FIGURE,
  SHOW_REST,
  yourAnswer,
} from '#words/client.ts';
import type { Bank } from '../../exercises/bank.ts';
import { drawItem } from '../../exercises/draw.ts';
import { acceptedText, answerText, askText, type Exercise, type Item, itemAt } from '../../exercises/exercise.ts';
import { judge } from '../../exercises/judge.ts';
import { LETTERS } from '../../exercises/offered.ts';
import { onFigure } from '../../exercises/on-figure.ts';
import { withIndexes } from '../../exercises/plain-formula.ts';
import { bankOrder } from '../../exercises/review.ts';
import { shownHtml } from '../../exercises/shown-html.ts';
import { stepLines } from '../../exercises/steps-text.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { escapeText } from '../../input/escape.ts';
import { unitText } from '../../input/format.ts';
import { answerForm } from '../answer-form.ts';
import { all, make, setText, whenSent } from '../dom.ts';
import { eraseJourney, journey, tellMoved } from '../journey.ts';
import { dueOn, eraseProgress, progress, progressSays, recordTry, tallyOf } from '../progress.ts';
import { writeSteps } from '../step-line.ts';
import type { Store } from '../store.ts';
import { offeredField } from './offered-field.ts';

const MOST_FADED = 2;

/** Any text will do as a seed here: practice need not come again. */
const anySeed = (): readonly string[] => ['practice', String(Math.random()), String(Math.random())];

interface Practice {
  readonly put: (item: Item) => void;
}

/** Where an exercise is followed by others, of any kind. */
interface Following {
  readonly next: () => void;
}

const practise = (
  place: HTMLElement,
  first: Item,
  store: Store,
  after: () => void,
  following?: Following,
): Practice => {
  let item = first;
  let wrong = 0;
  place.classList.add('at-work');
  const part = (name: string) => place.querySelector(`[data-${name}]`);
  const [hint, worked] = [
    place.querySelector<HTMLDetailsElement>('.hint'),
    place.querySelector<HTMLDetailsElement>('.worked'),
  ];
  const { field, label, verdict, form } = answerForm(`answer-${place.dataset.exercise ?? 'review'}`, CHECK);
  const done = make('span', { class: 'done-mark' });
  place.querySelector('.whole > summary > .kind')?.append(done);
  const again = make('button', { type: 'button', class: 'plain' }, following ? ANOTHER_EXERCISE : NEW_NUMBERS);
  const whole = make('button', { type: 'button', class: 'plain', hidden: '' }, SHOW_REST);
  worked?.append(whole);
  const offered = offeredField(`offered-${place.dataset.exercise ?? 'review'}`, verdict);
  form.prepend(offered.place);
  const seen = make('button', { type: 'button', class: 'plain', hidden: '' }, PUT_ON_FIGURE);
  const without = make('p', { class: 'how', role: 'status' });
  place.querySelector('.attempt')?.append(form, verdict, again, seen, without);

  /** The figure of the page that shows most of this item, and what its fields are given. */
  const figureOf = (one: Item) => {
    const lies = one.offered?.options[LETTERS.indexOf(offered.value())]?.lies;
    const stack = lies === undefined ? undefined : one.exercise.drawer?.stacks[lies];
    return all(document.body, '[data-figure]')
      .flatMap((figure) => {
        const set = figure.dataset.set ?? '';
        const found = onFigure(one.exercise, one.picks, store.sets.get(set)?.inputs ?? [], stack);
        return found ? [{ figure, set, ...found }] : [];
      })
      .sort((a, b) => a.without.length - b.without.length)[0];
  };
  seen.addEventListener('click', () => {
    const shown = figureOf(item);
    if (!shown) return;
    for (const [name, text] of shown.texts) store.load(shown.set, name, text, 'metric');
    setText(without, shown.without.length === 0 ? '' : notOnFigure(shown.without));
    shown.figure.tabIndex = -1;
    shown.figure.scrollIntoView({ block: 'center' });
    shown.figure.focus({ preventScroll: true });
  });

  /** Steps left out now, and whether the whole answer has been seen since this item was put. */
  let leftOut = 0;
  let told = false;
  const fade = (count: number) => {
    leftOut = count;
    const lines = all(place, '.steps > li');
    for (const [i, line] of lines.entries()) line.classList.toggle('left-out', i >= lines.length - count);
    place.querySelector('.answer')?.classList.toggle('left-out', count > 0);
    whole.hidden = count === 0;
  };

  const tick = () => setText(done, tallyOf(item.exercise.id).right > 0 ? DONE : '');
  const write = () => {
    const { exercise } = item;
    tick();
    place.dataset.picks = item.picks.join(',');
    // In a review one may stand in another language than the last.
    for (const said of [part('question'), part('hint')])
      if (exercise.lang === undefined) said?.removeAttribute('lang');
      else said?.setAttribute('lang', exercise.lang);
    setText(part('question'), item.question);
    setText(place.querySelector('.ask'), askText(item));
    setText(part('hint'), item.hint);
    setText(part('decides'), item.decides ?? '');
    const answer = part('answer');
    if (answer) answer.innerHTML = withIndexes(escapeText(answerText(item)));
    setText(part('accepted'), acceptedText(item));
    setText(label, yourAnswer(unitText(exercise.unit)));
    const between = place.querySelector<HTMLElement>('[data-between]');
    if (between) between.hidden = item.offered !== undefined;
    const shown = place.querySelector('[data-shown]');
    // What is offered stands in the form now, and in a list for paper.
    if (shown) shown.innerHTML = shownHtml(item);
    offered.place.hidden = item.offered === undefined;
    label.hidden = field.hidden = item.offered !== undefined;
    if (item.offered) offered.put(item.offered);
    const lines = all(place, '[data-step]');
    const steps = place.querySelector('.steps');
    if (lines.length > 0) writeSteps(lines, exercise.steps, item.outcomes, store.view());
    else if (steps)
      steps.innerHTML = stepLines(item)
        .map((line) => `<li>${withIndexes(escapeText(line))}</li>`)
        .join('');
    fade(Math.min(MOST_FADED, tallyOf(exercise.id).right, item.offered ? 0 : exercise.steps.length));
  };
  const put = (other: Item) => {
    item = other;
    wrong = 0;
    told = false;
    seen.hidden = true;
    setText(without, '');
    field.value = '';
    field.removeAttribute('aria-invalid');
    setText(verdict, '');
    for (const details of [hint, worked]) if (details) details.open = false;
    write();
  };

  whenSent(form, () => {
    const { kind, says } = judge(item, item.offered ? offered.value() : field.value);
    field.setAttribute('aria-invalid', String(kind === 'unread'));
    setText(verdict, says);
    verdict.dataset.kind = kind;
    if (kind === 'unread') return;
    // The picture answers much, so it comes after the reader's own thought.
    seen.hidden = figureOf(item) === undefined;
    // A copied answer is no solution: this round stays out of the count.
    if (kind === 'right' && told) setText(verdict, `${says} ${COPIED}`);
    else recordTry(item.exercise.id, kind === 'right');
    tellMoved();
    tick();
    after();
    if (kind === 'right') return;
    wrong++;
    if (wrong >= 2 && hint) hint.open = true;
    if (wrong >= 3 && worked && !worked.open) setText(verdict, `${says} ${ANSWER_OFFERED}`);
  });
  again.addEventListener('click', () => {
    if (following) following.next();
    else put(drawItem(item.exercise, anySeed(), new Set([item.picks.join(',')])));
    if (item.offered) offered.focus();
    else field.focus();
  });
  worked?.addEventListener('toggle', () => {
    told ||= worked.open && leftOut === 0;
  });
  whole.addEventListener('click', () => {
    fade(0);
    told = true;
    // The button goes away; the reader stays where it was.
    worked?.querySelector('summary')?.focus();
  });
  store.onChange((_sets, view) => {
    if (view) writeSteps(all(place, '[data-step]'), item.exercise.steps, item.outcomes, store.view());
  });
  write();
  return { put };
};

/** One exercise is open at a time: a page of six would be long. What is pressed stays under the hand while another closes above it. */
const mountFolds = (places: readonly HTMLElement[], until: AbortSignal): void => {
  const foldOf = (place: HTMLElement) => place.querySelector<HTMLDetailsElement>(':scope > .whole');
  const only = (fold: HTMLDetailsElement) => {
    for (const place of places) {
      const other = foldOf(place);
      if (other && other !== fold) other.open = false;
    }
  };
  for (const place of places) {
    const fold = foldOf(place);
    const line = fold?.querySelector('summary');
    line?.addEventListener('click', () => {
      if (fold?.open) return;
      const { top } = line.getBoundingClientRect();
      if (fold) only(fold);
      window.scrollBy({ top: line.getBoundingClientRect().top - top, behavior: 'instant' });
    });
  }
  const asLinked = () => {
    const place = places.find(({ id }) => id !== '' && `#${id}` === location.hash);
    const fold = place && foldOf(place);
    if (!fold || fold.open) return;
    only(fold);
    fold.open = true;
    place.scrollIntoView();
  };
  window.addEventListener('hashchange', asLinked, { signal: until });
  asLinked();
};

export const mountExercises = (
  root: HTMLElement,
  exercises: readonly Exercise[],
  store: Store,
  until: AbortSignal,
): void => {
  const places = all(root, '[data-exercise]');
  const last = places.at(-1);
  if (!last) return;
  const line = progressLine(exercises.map((e) => e.id));
  last.after(line.place);
  mountFolds(places, until);
  for (const place of places) {
    const exercise = exercises.find((e) => e.id === place.dataset.exercise);
    const item = exercise && itemAt(exercise, (place.dataset.picks ?? '').split(',').map(Number));
    if (item?.ok) practise(place, item.value, store, line.refresh);
  }
};

/** What was done; where the reader left off is of this browser alone. */
const progressFile = (): string => {
  const { done, predicted } = journey();
  return `${JSON.stringify({ exercises: progress(), done, predicted }, null, 2)}\n`;
};

/** What was solved so far, with a way to take it along and a way to be rid of it. */
const progressLine = (ids: readonly string[]): { place: HTMLElement; refresh: () => void } => {
  const says = make('span');
  const save = make('button', { type: 'button', class: 'plain' }, EXPORT_PROGRESS);
  const erase = make('button', { type: 'button', class: 'plain' }, ERASE_PROGRESS);
  const refresh = () => {
    setText(says, progressSays(ids));
    setText(erase, ERASE_PROGRESS);
    const { done, predicted } = journey();
    erase.hidden = save.hidden = Object.keys(progress()).length + done.length + predicted.length === 0;
  };
  save.addEventListener('click', () => saveFile(progressFile(), 'notebook-progress.json', 'application/json'));
  erase.addEventListener('click', () => {
    if (erase.textContent === ERASE_PROGRESS) {
      setText(erase, ERASE_ALL);
      return;
    }
    eraseProgress();
    eraseJourney();
    // The button goes away; the reader's keys stay on the line it stood in.
    place.focus();
    refresh();
  });
  erase.addEventListener('blur', () => setText(erase, ERASE_PROGRESS));
  const place = make(
    'p',
    { class: 'progress', role: 'group', 'aria-label': PROGRESS, tabindex: '-1' },
    says,
    ' ',
    save,
    ' ',
    erase,
  );
  refresh();
  return { place, refresh };
};

/** Exercises of all chapters in turn: those solved least come first, no chapter twice running. */
export const mountReview = (place: HTMLElement, bank: Bank, store: Store): void => {
  const exercises = bank.chapters.flatMap((c) => c.exercises);
  if (exercises.length === 0) return;
  let chapter = '';
  const known = new Set(exercises.map((e) => e.id));
  const following = (): Item => {
    const chosen = bankOrder(bank, (id) => tallyOf(id).right, chapter, Math.random(), dueOn());
    setText(place.querySelector('[data-due]'), dueSays(dueOn().filter((id) => known.has(id)).length));
    chapter = chosen.slug;
    place
      .querySelector('[data-from]')
      ?.replaceChildren(
        make('a', { href: `${chosen.slug}.html#exercise-${chosen.exercise.id}` }, fromChapter(chosen.title)),
      );
    return drawItem(chosen.exercise, anySeed());
  };
  const line = progressLine(exercises.map((e) => e.id));
  place.hidden = false;
  const practice: Practice = practise(place, following(), store, line.refresh, {
    next: () => practice.put(following()),
  });
  place.after(line.place);
};
