/** The way through the page and the book: where the reader is, what is done, and where to go on. */
import { continueAt, DONE, I_HAVE_DONE_IT, IN_PLACE, reviewDue, tasksOf } from '#words/client.ts';
import { all, make, setText } from './dom.ts';
import { callDone, journey, leaveAt, MOVED, tasksDone } from './journey.ts';
import { dueOn } from './progress.ts';

interface Section {
  readonly id: string;
  readonly title: string;
  readonly heading: Element;
  readonly entry: HTMLElement;
  readonly predictions: readonly number[];
  readonly exercises: readonly string[];
}

export const mountWay = (root: HTMLElement, until: AbortSignal): void => {
  const slug = root.dataset.page ?? '';
  const isChapter = root.classList.contains('chapter');
  const sections = all(root, '.chapters [data-section]').flatMap((entry) => sectionOf(root, entry) ?? []);
  const tick = isChapter ? doneBox(root, slug) : undefined;
  const onward = root.classList.contains('front') ? root.querySelector('.doors') : null;

  const refresh = () => {
    const { done, at } = journey();
    for (const entry of all(root, '[data-chapter]'))
      mark(entry, done.includes(entry.dataset.chapter ?? '') ? '' : undefined);
    for (const { entry, predictions, exercises } of sections) {
      const of = predictions.length + exercises.length;
      const count = tasksDone(slug, predictions, exercises);
      mark(entry, count === 0 ? undefined : count === of ? '' : tasksOf(count, of));
    }
    if (tick) tick.checked = done.includes(slug);
    for (const old of all(root, '.continue')) old.remove();
    const due = dueOn().length;
    if (onward && due > 0)
      onward.after(make('p', { class: 'continue' }, make('a', { href: 'review.html' }, reviewDue(due))));
    if (onward && at) onward.after(make('p', { class: 'continue' }, make('a', { href: at.href }, continueAt(at.says))));
  };
  refresh();
  unfoldWhereWide(root, until);
  document.addEventListener(MOVED, refresh, { signal: until });
  // Another tab may have gone on meanwhile.
  window.addEventListener('pageshow', refresh, { signal: until });

  if (sections.length === 0) return;
  let here: Section | undefined;
  const locate = () => {
    const passed = sections.filter(({ heading }) => heading.getBoundingClientRect().top < innerHeight / 3).at(-1);
    if (passed === here) return;
    here?.entry.querySelector('a')?.removeAttribute('aria-current');
    passed?.entry.querySelector('a')?.setAttribute('aria-current', 'location');
    here = passed;
  };
  locate();
  const watch = new IntersectionObserver(locate, { rootMargin: '0px 0px -66% 0px' });
  for (const { heading } of sections) watch.observe(heading);
  until.addEventListener('abort', () => watch.disconnect());

  if (!isChapter) return;
  const title = root.querySelector('h1')?.textContent ?? '';
  const leave = () => {
    if (document.visibilityState !== 'hidden') return;
    locate();
    leaveAt(`${slug}.html${here ? `#${here.id}` : ''}`, here ? IN_PLACE(title, here.title) : title);
  };
  document.addEventListener('visibilitychange', leave, { signal: until });
};

/** Where there is room, by the size of letters the reader’s browser is set to, the list is not folded; an engine whose styles can’t open a fold is helped. */
const unfoldWhereWide = (root: HTMLElement, until: AbortSignal): void => {
  const fold = root.querySelector<HTMLDetailsElement>('.way');
  if (!fold || CSS.supports('selector(::details-content)')) return;
  const wide = window.matchMedia('(min-width: 80rem)');
  const follow = () => {
    fold.open = wide.matches;
  };
  follow();
  wide.addEventListener('change', follow, { signal: until });
};

/** What there is to do under a heading: all that stands before the next. */
const sectionOf = (root: HTMLElement, entry: HTMLElement): Section | undefined => {
  const id = entry.dataset.section ?? '';
  const heading = root.querySelector(`#${CSS.escape(id)}`);
  if (!heading) return undefined;
  const predictions: number[] = [];
  const exercises: string[] = [];
  for (let next = heading.nextElementSibling; next && next.tagName !== 'H2'; next = next.nextElementSibling) {
    if (!(next instanceof HTMLElement)) continue;
    if (next.dataset.predict !== undefined) predictions.push(Number(next.dataset.predict));
    if (next.dataset.exercise !== undefined) exercises.push(next.dataset.exercise);
  }
  return { id, title: heading.textContent ?? '', heading, entry, predictions, exercises };
};

/** A mark beside an entry: whole where all is done, how much where some is, none at all for undefined. */
const mark = (entry: HTMLElement, some: string | undefined): void => {
  const now = entry.querySelector('.done-mark');
  if (some === undefined) {
    now?.remove();
    return;
  }
  const place = now ?? make('span', { class: 'done-mark' });
  setText(place, some === '' ? DONE : some);
  if (!now) entry.querySelector('a')?.after(place);
};

const doneBox = (root: HTMLElement, slug: string): HTMLInputElement | undefined => {
  const article = root.querySelector('article');
  if (!article) return undefined;
  const box = make('input', { type: 'checkbox' });
  box.addEventListener('change', () => callDone(slug, box.checked));
  article.append(make('p', { class: 'chapter-done' }, make('label', {}, box, ' ', I_HAVE_DONE_IT)));
  return box;
};
