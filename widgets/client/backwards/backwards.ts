/**
 * What stands behind a result of a worked example or a number of a figure, in a script that is fetched when it is first asked for: the panel
 * that opens (panel.ts), and the ± under every number that has one.
 */
import { doubtIn } from '../../assembly/backwards/doubt.ts';
import { showWithDoubt } from '../../input/with-doubt.ts';
import type { PageModel } from '../../page/model.ts';
import { all, make, setText } from '../dom.ts';
import type { Store } from '../store.ts';
import { type Panel, panelFor } from './panel.ts';
import {
  type AskedFigure,
  amountsAt,
  doubtOfSubject,
  type Example,
  ofAmount,
  ofStep,
  questionIn,
  type Subject,
  spreadsIn,
  worker,
} from './subject.ts';

/** Writes a ± beside a number, or takes it away. */
const writeDoubt = (place: Element, text: string | undefined, after: Element | null): void => {
  const old = place.querySelector(':scope > .doubt');
  if (text === undefined) old?.remove();
  else if (old) setText(old, text);
  else (after ?? place.lastElementChild)?.after(make('span', { class: 'doubt' }, text));
};

/** Writes its ± under every result that has one; none where no number of the set has any. */
export const writeDoubts = (example: Example, store: Store, model: PageModel): void => {
  for (const line of all(example.place, '[data-step]')) {
    const index = Number(line.dataset.step);
    const step = example.steps[index];
    if (!step) continue;
    const subject = ofStep(example, index, step, store, model);
    const doubt = doubtOfSubject(subject, store);
    const text = doubt && showWithDoubt(doubt.value, doubt.U, subject.format, store.view());
    writeDoubt(line, text, line.querySelector(':scope > .result'));
  }
};

/** The same beside the numbers of a figure. */
export const writeFigureDoubts = (asked: AskedFigure, store: Store): void => {
  const { figure, set, place } = asked;
  const amounts = amountsAt(figure, store.numbers(set), store.view());
  const spreads = spreadsIn(store, set);
  const work = worker(figure);
  for (const result of all(place, '[data-result]')) {
    const amount = amounts.get(result.dataset.result ?? '');
    const cell = result.parentElement;
    if (!amount || !cell) continue;
    const doubt = doubtIn(questionIn(asked, amount, store, work), spreads);
    writeDoubt(cell, doubt && showWithDoubt(doubt.value, doubt.U, amount.format, store.view()), result);
  }
};

const open = new WeakMap<Element, Panel>();

/** Opens what stands behind a result, or closes it; `put` says where it opens, `result` finds the result, which may be printed anew. */
const toggle = (
  subject: Subject,
  store: Store,
  announce: (text: string) => void,
  put: (panel: HTMLElement) => void,
  result: () => HTMLElement | null,
): void => {
  const panel = panelFor(subject, store, announce, () => {
    panel.element.remove();
    result()?.setAttribute('aria-expanded', 'false');
    result()?.focus();
  });
  put(panel.element);
  open.set(panel.element, panel);
  result()?.setAttribute('aria-expanded', 'true');
  const field = panel.element.querySelector('input');
  field?.focus();
  field?.select();
};

export const toggleBehind = (
  example: Example,
  result: HTMLElement,
  store: Store,
  model: PageModel,
  announce: (text: string) => void,
): void => {
  const line = result.closest<HTMLElement>('[data-step]');
  const there = line?.querySelector(':scope > .asked-back');
  const index = Number(line?.dataset.step);
  const step = example.steps[index];
  if (there || !line || !step) {
    there?.remove();
    result.setAttribute('aria-expanded', 'false');
    return;
  }
  toggle(
    ofStep(example, index, step, store, model),
    store,
    announce,
    (panel) => line.append(panel),
    () => result,
  );
};

/** One number of a figure at a time: what is printed of it is made anew as it moves, so the panel stands under all of it. */
export const toggleFigureBehind = (
  asked: AskedFigure,
  result: HTMLElement,
  store: Store,
  model: PageModel,
  announce: (text: string) => void,
): void => {
  const { place, figure, set } = asked;
  const key = result.dataset.result ?? '';
  const there = place.querySelector<HTMLElement>('.asked-back');
  const again = there?.dataset.of === key;
  there?.remove();
  for (const other of all(place, '[data-result]')) other.setAttribute('aria-expanded', 'false');
  const amount = amountsAt(figure, store.numbers(set), store.view()).get(key);
  // Beside a picture stand its fields; the panel stands under both.
  const under = result.closest('[data-readings], .bench') ?? result.closest('[data-stage]');
  if (again || !amount || !under) return;
  toggle(
    ofAmount(asked, amount, store, model),
    store,
    announce,
    (panel) => {
      panel.dataset.of = key;
      under.after(panel);
    },
    () => place.querySelector<HTMLElement>(`[data-result="${CSS.escape(key)}"]`),
  );
};

/** Brings what is open in an example or a figure up to its numbers. */
export const refreshBehind = (place: HTMLElement): void => {
  for (const panel of all(place, '.asked-back')) open.get(panel)?.refresh();
};
