/** The form an answer is typed into, for exercises and predictions alike: a field with its label, a button, the verdict. */
import { make } from './dom.ts';

export const answerForm = (id: string, press: string) => {
  const field = make('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    'aria-describedby': `${id}-verdict`,
    maxlength: '20000',
  });
  const label = make('label', { for: id });
  const verdict = make('p', { id: `${id}-verdict`, class: 'verdict', role: 'status' });
  const button = make('button', { type: 'submit' }, press);
  const form = make('form', { novalidate: '' }, label, make('span', { class: 'field-box' }, field, button));
  return { field, label, verdict, form };
};
