/** Worked examples and living sentences: the same steps as the build ran, run again on the reader's numbers. */

import { SCRIPT_MISSING } from '#words/client.ts';
import { runSteps, type Step } from '../assembly/steps.ts';
import { type NumberFormat, show } from '../input/format.ts';
import type { PageModel } from '../page/model.ts';
import { reasonOf } from '../words/reason.ts';
import { mountAskable } from './askable.ts';
import type * as Backwards from './backwards/backwards.ts';
import { all, setText } from './dom.ts';
import { inSight } from './in-sight.ts';
import { loadModule } from './load-figures.ts';
import { writeSteps } from './step-line.ts';
import type { Store } from './store.ts';

export const mountExample = (
  place: HTMLElement,
  set: string,
  steps: readonly Step[],
  store: Store,
  model: PageModel,
  announce: (text: string) => void,
): void => {
  const lines = all(place, '[data-step]');
  const example = { place, set, steps };
  const inputs = store.sets.get(set)?.inputs ?? [];
  /** The script for what stands behind a result, once it was asked for. */
  let part: typeof Backwards | undefined;
  const fetchPart = async () => {
    part ??= (await loadModule('backwards')) as typeof Backwards | undefined;
    return part;
  };
  const doubts = async () => {
    if (!part && inputs.some(({ name }) => store.field(set, name)?.spread !== undefined)) await fetchPart();
    if (!part) return;
    const { writeDoubts, refreshBehind } = part;
    writeDoubts(example, store, model);
    refreshBehind(place);
  };
  mountAskable(place, async (result) => {
    const behind = await fetchPart();
    if (!behind) return announce(SCRIPT_MISSING);
    const { toggleBehind } = behind;
    toggleBehind(example, result, store, model, announce);
  });
  const remarks = all(place, '[data-own]');
  const instead = all(place, '[data-instead]');
  const refresh = () => {
    writeSteps(lines, steps, runSteps(steps, store.scope(set)), store.view());
    // Any number of the set may be one that a remark compares with, also where the line itself does not take it.
    const own = inputs.every(({ name }) => store.pristine(set, name));
    for (const remark of remarks) remark.hidden = !own;
    for (const reason of instead) reason.hidden = own;
    void doubts();
  };
  refresh();
  const follow = inSight(place, refresh);
  store.onDrawn((sets, view) => {
    if (view || sets.has(set)) follow();
  });
};

/** Quantities in sentences: all follow the unit switch, some follow the reader's numbers. */
export const mountQuantities = (
  root: HTMLElement,
  live: readonly { readonly set: string; readonly steps: readonly Step[] }[],
  store: Store,
): void => {
  for (const place of all(root, '.q')) {
    const format = {
      shown: place.dataset.shown,
      ...(place.dataset.digits ? { digits: Number(place.dataset.digits) } : {}),
    } as NumberFormat;
    const following = place.dataset.now === undefined ? undefined : live[Number(place.dataset.now)];
    const refresh = () => {
      if (following) {
        const outcome = runSteps(following.steps, store.scope(following.set)).at(-1);
        place.dataset.value = outcome?.ok ? String(outcome.value) : '';
        place.classList.toggle('refused', outcome?.ok === false);
        if (outcome && !outcome.ok) setText(place, `(${reasonOf(outcome)})`);
      }
      if (place.dataset.value) setText(place, show(Number(place.dataset.value), format, store.view()));
    };
    refresh();
    const follow = following ? inSight(place, refresh) : refresh;
    store.onDrawn((sets, view) => {
      if (view || (following && sets.has(following.set))) follow();
    });
  }
};
