/**
 * Examples that fade: the same kind of work as above, whose last steps the reader fills in (Atkinson, Renkl & Merrill 2003, from memory). The
 * reason and the formula stand; numbers and result come once they are found, or asked for.
 */
import { blankFilled, blankLeads, CHECK, FILL_IN, SHOW_STEP } from '#words/client.ts';
import { fieldUnit } from '../../assembly/numbers.ts';
import { runSteps, type Step } from '../../assembly/steps.ts';
import { symbolFact } from '../../engine/index.ts';
import { formatOf, show, unitText } from '../../input/format.ts';
import { readQuantity } from '../../input/quantity.ts';
import { reasonOf } from '../../words/reason.ts';
import { answerForm } from '../answer-form.ts';
import { all, make, setText, whenSent } from '../dom.ts';
import type { Store } from '../store.ts';

/** As near as a result that was rounded to three digits. */
const NEAR = 0.01;
const isNear = (value: number, result: number): boolean => Math.abs(value - result) <= NEAR * Math.abs(result);

/** `blank` steps at the end wait for the reader, one after the other. */
export const mountFading = (place: HTMLElement, set: string, steps: readonly Step[], store: Store): void => {
  const lines = all(place, '[data-step]');
  const first = Math.max(0, lines.length - Number(place.dataset.blank));
  const wait = (at: number) => {
    const [line, step] = [lines[at], steps[at]];
    if (!line || !step) return;
    const fact = symbolFact(step.as);
    const unit = () => fieldUnit(step.as, store.view());
    const { field, label, verdict, form } = answerForm(`${place.id}-blank-${at}`, CHECK);
    const shown = make('button', { type: 'button', class: 'plain' }, SHOW_STEP);
    const caption = () => setText(label, FILL_IN(fact.says, unitText(unit())));
    caption();
    form.append(shown);
    const attempt = make('div', { class: 'blank-step' }, form, verdict);
    line.append(attempt);
    const found = (says: string) => {
      form.remove();
      setText(verdict, says);
      line.classList.remove('to-fill');
      wait(at + 1);
    };
    whenSent(form, () => {
      const outcome = runSteps(steps, store.scope(set))[at];
      if (!outcome?.ok) return setText(verdict, outcome ? reasonOf(outcome) : '');
      const read = readQuantity(field.value, fact.unit, unit());
      field.setAttribute('aria-invalid', String(!read.ok));
      if (!read.ok) return setText(verdict, reasonOf(read));
      const { value } = read.value;
      if (!isNear(value, outcome.value)) return setText(verdict, blankLeads(fact.says, isNear(-value, outcome.value)));
      found(blankFilled(show(outcome.value, formatOf(fact, step.digits), store.view())));
      lines[at + 1]?.querySelector('input')?.focus();
    });
    shown.addEventListener('click', () => {
      found('');
      // The button goes away; the reader stays at this line.
      line.tabIndex = -1;
      line.focus();
    });
    store.onChange((_sets, view) => {
      if (view) caption();
    });
  };
  for (const line of lines.slice(first)) line.classList.add('to-fill');
  wait(first);
};
