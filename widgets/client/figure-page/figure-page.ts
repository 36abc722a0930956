/** Wakes a figure: its picture, sentence and table follow the reader's numbers while it is in view. */

import { pictureKept, SAVE_AS_CSV, SCRIPT_MISSING } from '#words/client.ts';
import { netLeadOf } from '../../assembly/design-use.ts';
import type { Drawn, Figure } from '../../figures/kit/figure.ts';
import { pictureOf, readingsOf, tableCsv, tableHtml } from '../../figures/kit/figure-parts.ts';
import { saveFile } from '../../figures/kit/save.ts';
import type { PageModel } from '../../page/model.ts';
import { reasonOf } from '../../words/reason.ts';
import { markResults, mountAskable } from '../askable.ts';
import type * as Backwards from '../backwards/backwards.ts';
import { designInUse, keepDesigns } from '../design-store.ts';
import { make, setText } from '../dom.ts';
import type { Folds } from '../folds.ts';
import { whenTheyRest } from '../in-sight.ts';
import { loadModule } from '../load-figures.ts';
import type { Store } from '../store.ts';
import { ownLine } from './own-line.ts';
import { redraw } from './redraw.ts';

export const mountFigure = (
  place: HTMLElement,
  figure: Figure,
  store: Store,
  folds: Folds,
  model: PageModel,
  announce: (text: string) => void,
  until: AbortSignal,
): void => {
  const set = place.dataset.set ?? '';
  const stage = place.querySelector<HTMLElement>('[data-stage]');
  if (!stage) return;
  const says = place.querySelector('[data-says]');
  const refusal = place.querySelector('[data-refusal]');
  const readings = place.querySelector<HTMLElement>('[data-readings]');
  const table = place.querySelector<HTMLElement>('[data-table]');
  const details = table?.closest('details');

  /** The script for what stands behind a number, once it was asked for. */
  let part: typeof Backwards | undefined;
  const fetchPart = async () => {
    part ??= (await loadModule('backwards')) as typeof Backwards | undefined;
    return part;
  };
  const asked = { place, figure, set };
  /** Numbers that were printed anew can be asked again, and say their ±. */
  const numbersAnew = async () => {
    markResults(place);
    const inputs = store.sets.get(set)?.inputs ?? [];
    if (!part && inputs.some(({ name }) => store.field(set, name)?.spread !== undefined)) await fetchPart();
    if (!part) return;
    const { writeFigureDoubts, refreshBehind } = part;
    writeFigureDoubts(asked, store);
    refreshBehind(place);
  };
  mountAskable(place, async (result) => {
    const behind = await fetchPart();
    if (!behind) return announce(SCRIPT_MISSING);
    const { toggleFigureBehind } = behind;
    toggleFigureBehind(asked, result, store, model, announce);
  });

  let drawn: Drawn | undefined;
  /** Worked once a frame: the picture now, words and table after it. */
  const paint = () => {
    const now = figure.at(store.numbers(set), store.view());
    setText(refusal, now.ok ? '' : pictureKept(reasonOf(now)));
    place.classList.toggle('stale', !now.ok);
    if (now.ok) delete place.dataset.refused;
    else place.dataset.refused = now.code;
    const before = drawn?.renderKey;
    drawn = now.ok ? now.value : undefined;
    if (!drawn) return;
    if (drawn.renderKey !== before) redraw(stage, pictureOf(drawn, set));
    drawn.update(stage);
  };

  /** Only a sheet is taken away from its fields. */
  const own = stage.querySelector('.sheet') ? make('p', { class: 'own-numbers' }) : undefined;
  if (own) stage.after(own);
  const tellOwn = () => setText(own, ownLine(figure, set, store));
  const words = () => {
    // Seen on paper alone: it follows at rest, and before the page is printed.
    if (own?.textContent) whenTheyRest(tellOwn);
    else if (own) tellOwn();
    if (!drawn) return;
    setText(says, drawn.caption());
    // What is folded away follows when the numbers rest.
    if (!details || details.open) readOff();
    if (details?.open) fillTable();
    void numbersAnew();
  };
  // Undefined at first: a page that begins with nothing to read must still put away what it was written with.
  let readBefore: string | undefined;
  const readOff = () => {
    if (!readings || !drawn) return;
    const now = drawn.steadyReadings ? drawn.renderKey : readingsOf(drawn, set);
    if (now === readBefore) return;
    readBefore = now;
    redraw(readings, readingsOf(drawn, set));
    markResults(place);
    drawn.update(stage);
  };
  const fillTable = () => {
    if (table && drawn) redraw(table, tableHtml(drawn.table()));
  };

  // A text that was refused in a field that is idle now changes nothing here.
  const markWrong = () => {
    const idle = figure.idle(store.numbers(set));
    folds.idle(idle);
    // What is chosen stays to be seen, whether there is anything for it or not.
    for (const [name, options] of Object.entries(figure.absent(store.numbers(set))))
      for (const radio of place.querySelectorAll<HTMLInputElement>(`[data-field="${name}"] input[type=radio]`)) {
        const label = radio.closest('label');
        if (label) label.hidden = !radio.checked && (options?.includes(radio.value) ?? false);
      }
    const wrong =
      store.sets
        .get(set)
        ?.inputs.some((i) => !idle.includes(i.name) && store.field(set, i.name)?.reason !== undefined) ?? false;
    place.classList.toggle('last-good', wrong);
  };

  paint();
  words();
  readOff();
  markWrong();
  figure.mount?.(stage, {
    numbers: () => store.numbers(set),
    view: store.view,
    set: (name, value) => store.put(set, name, value),
    type: (name, text) => store.type(set, name, text),
    design: () => {
      const mine = designInUse();
      return mine && { name: mine.name, passport: mine.numbers.passport ?? '', netLead: netLeadOf(mine.numbers) };
    },
    keepInDesign: (name, text) => {
      const mine = designInUse();
      return mine ? keepDesigns([{ name: mine.name, numbers: { [name]: text } }]).fault : '';
    },
    redraw: () => {
      drawn = undefined;
      refresh();
    },
  });

  place.dataset.awake = 'true';

  // Out of view nothing is drawn while numbers change; the figure catches up when it comes back, or when they rest, for
  // those who search the page or have it read to them.
  let seen = true;
  let behind = false;
  new IntersectionObserver(([entry]) => {
    seen = entry?.isIntersecting ?? true;
    if (seen && behind) refresh();
  }).observe(place);
  let settle = 0;
  const follow = () => {
    words();
    window.clearTimeout(settle);
    settle = window.setTimeout(() => {
      readOff();
      if (place.contains(document.activeElement) && !place.matches('.untold, [data-waits]'))
        announce(says?.textContent ?? '');
    }, 700);
  };
  const refresh = () => {
    behind = false;
    paint();
    markWrong();
    follow();
  };
  const concerns = (sets: ReadonlySet<string>, view: boolean) => view || sets.has(set);
  store.onChange((sets, view) => {
    if (!concerns(sets, view)) return;
    behind = !seen;
    if (!seen) return;
    paint();
    markWrong();
  });
  store.onDrawn((sets, view) => {
    if (!concerns(sets, view)) return;
    if (!behind) follow();
    else {
      window.clearTimeout(settle);
      settle = window.setTimeout(refresh, 700);
    }
  });

  details?.addEventListener('toggle', words);
  // Paper has no folds, and shows what is out of view too.
  const unfold = () => {
    if (behind) refresh();
    readOff();
    fillTable();
  };
  window.addEventListener('beforeprint', unfold, { signal: until });
  if (details && table) {
    const save = make('button', { type: 'button', class: 'plain' }, SAVE_AS_CSV);
    save.addEventListener('click', () => {
      if (drawn) saveFile(tableCsv(drawn.table()), `${figure.name}.csv`, 'text/csv');
    });
    table.after(save);
  }
};
