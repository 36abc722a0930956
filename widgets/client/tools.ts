/** The masthead's tools: the one unit switch, and the way back to the chapter's own numbers. */
import { LENGTHS_IN, OWN_NUMBERS, putAway, UNIT_FACES, USE_AGAIN } from '#words/client.ts';
import { UNIT_VIEWS } from '../input/format.ts';
import { designInUse, onDesignsChange, useDesign } from './design-store.ts';
import { applyDesign } from './designs.ts';
import { make } from './dom.ts';
import type { Store } from './store.ts';

/** `says` is a sentence on the numbers that the page opened with, until the chapter's own or a design take their place. */
export const mountTools = (place: HTMLElement, store: Store, says: string, until: AbortSignal): void => {
  const group = make('fieldset', { class: 'units' }, make('legend', {}, LENGTHS_IN));
  const radios = UNIT_VIEWS.map((view) => {
    const radio = make('input', { type: 'radio', name: 'units', value: view, autocomplete: 'off' });
    radio.checked = view === store.view();
    radio.addEventListener('change', () => store.setView(view));
    group.append(make('label', {}, radio, make('span', {}, UNIT_FACES[view])));
    return radio;
  });
  const reset = make('button', { type: 'button', class: 'plain' }, OWN_NUMBERS);
  reset.addEventListener('click', () => {
    const mine = designInUse();
    useDesign('');
    store.reset();
    away.replaceChildren();
    if (!mine) return;
    const again = make('button', { type: 'button', class: 'plain' }, USE_AGAIN);
    again.addEventListener('click', () => {
      useDesign(mine.name);
      applyDesign(store, mine);
    });
    away.replaceChildren(putAway(mine.name), ' ', again);
  });
  const away = make('p', { class: 'field-note', role: 'status' }, says);
  // It says so until a design is in use again.
  onDesignsChange(() => {
    if (designInUse()) away.replaceChildren();
  }, until);
  place.append(group, reset, away);
  const refresh = () => {
    for (const radio of radios) radio.checked = radio.value === store.view();
    const root = document.documentElement;
    if (root.dataset.units !== store.view()) root.dataset.units = store.view();
    const pristine = [...store.sets].every(([id, set]) => set.inputs.every((i) => store.pristine(id, i.name)));
    // The button goes away; the reader's keys stay beside where it was.
    if (pristine && document.activeElement === reset) radios.find((radio) => radio.checked)?.focus();
    reset.hidden = pristine;
  };
  refresh();
  store.onChange(refresh);
};
