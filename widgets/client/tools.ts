/** The masthead's tools: the one unit switch, and the way back to the chapter's own numbers. */
import { LENGTHS_IN, OWN_NUMBERS, UNIT_FACES } from '#words/client.ts';
import { UNIT_VIEWS } from '../input/format.ts';
import { useDesign } from './design-store.ts';
import { make } from './dom.ts';
import type { Store } from './store.ts';

export const mountTools = (place: HTMLElement, store: Store): void => {
  const group = make('fieldset', { class: 'units' }, make('legend', {}, LENGTHS_IN));
  const radios = UNIT_VIEWS.map((view) => {
    const radio = make('input', { type: 'radio', name: 'units', value: view });
    radio.checked = view === store.view();
    radio.addEventListener('change', () => store.setView(view));
    group.append(make('label', {}, radio, make('span', {}, UNIT_FACES[view])));
    return radio;
  });
  const reset = make('button', { type: 'button', class: 'plain' }, OWN_NUMBERS);
  reset.addEventListener('click', () => {
    useDesign('');
    store.reset();
  });
  place.append(group, reset);
  const refresh = () => {
    for (const radio of radios) radio.checked = radio.value === store.view();
    document.documentElement.dataset.units = store.view();
    const pristine = [...store.sets].every(([id, set]) => set.inputs.every((i) => store.pristine(id, i.name)));
    // The button goes away; the reader's keys stay beside where it was.
    if (pristine && document.activeElement === reset) radios.find((radio) => radio.checked)?.focus();
    reset.hidden = pristine;
  };
  refresh();
  store.onChange(refresh);
};
