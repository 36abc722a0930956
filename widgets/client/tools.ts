/** The masthead's tools: the one unit switch, and the way back to the chapter's own numbers. */
import { UNIT_VIEWS, type UnitView } from '../input/format.ts';
import { useDesign } from './design-store.ts';
import { make } from './dom.ts';
import type { Store } from './store.ts';

const FACES: Record<UnitView, string> = { metric: 'mm, µm', inch: 'inch, thou', both: 'both' };

export const mountTools = (place: HTMLElement, store: Store): void => {
  const group = make('fieldset', { class: 'units' }, make('legend', {}, 'Lengths in'));
  const radios = UNIT_VIEWS.map((view) => {
    const radio = make('input', { type: 'radio', name: 'units', value: view });
    radio.checked = view === store.view();
    radio.addEventListener('change', () => store.setView(view));
    group.append(make('label', {}, radio, make('span', {}, FACES[view])));
    return radio;
  });
  const reset = make('button', { type: 'button', class: 'plain' }, 'Chapter’s own numbers');
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
