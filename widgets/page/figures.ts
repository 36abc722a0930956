/** Wakes a figure: its picture, sentence and table follow the reader's numbers while it is in view. */
import { pictureOf, tableCsv, tableHtml } from '../shared/figure-parts.ts';
import { saveFile } from '../shared/save.ts';
import type { Widget } from '../shared/widget.ts';
import { all, make, setText } from './dom.ts';
import type { Store } from './store.ts';

export const wakeFigure = (
  figure: HTMLElement,
  widget: Widget,
  store: Store,
  announce: (text: string) => void,
  until: AbortSignal,
): void => {
  const set = figure.dataset.set ?? '';
  const stage = figure.querySelector<HTMLElement>('[data-stage]');
  if (!stage) return;
  const says = figure.querySelector('[data-says]');
  const refusal = figure.querySelector('[data-refusal]');
  const table = figure.querySelector<HTMLElement>('[data-table]');
  const details = table?.closest('details');

  let outline: string | undefined;
  const paint = () => {
    const numbers = store.numbers(set);
    const next = widget.outline(numbers, store.view());
    if (next !== outline) {
      const drawn = pictureOf(widget, numbers, store.view(), set);
      setText(refusal, drawn.ok ? '' : `${drawn.reason} The picture keeps the last numbers that can be drawn.`);
      figure.classList.toggle('stale', !drawn.ok);
      outline = drawn.ok ? next : undefined;
      if (!drawn.ok) return;
      const held = stage.contains(document.activeElement)
        ? document.activeElement?.getAttribute('data-key')
        : undefined;
      stage.innerHTML = drawn.value;
      if (held) stage.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus({ preventScroll: true });
    }
    widget.update?.(stage, numbers, store.view());
  };

  const words = () => {
    if (figure.classList.contains('stale')) return;
    setText(says, widget.says(store.numbers(set), store.view()));
    if (details?.open) fillTable();
  };
  const fillTable = () => {
    if (table && !figure.classList.contains('stale'))
      table.innerHTML = tableHtml(widget.table(store.numbers(set), store.view()));
  };

  const markWrong = () => {
    const wrong = store.sets.get(set)?.inputs.some((i) => store.field(set, i.name)?.reason !== undefined) ?? false;
    figure.classList.toggle('last-good', wrong);
  };

  paint();
  words();
  markWrong();
  widget.wake?.(stage, {
    numbers: () => store.numbers(set),
    view: store.view,
    set: (name, value) => store.put(set, name, value),
    type: (name, text) => store.type(set, name, text),
    redraw: () => {
      outline = undefined;
      refresh();
    },
  });

  figure.dataset.awake = 'true';

  // Out of view nothing is drawn while numbers change; the figure catches up when it comes back, or when they rest, for
  // those who search the page or have it read to them.
  let seen = true;
  let behind = false;
  new IntersectionObserver(([entry]) => {
    seen = entry?.isIntersecting ?? true;
    if (seen && behind) refresh();
  }).observe(figure);
  let settle = 0;
  const follow = () => {
    words();
    window.clearTimeout(settle);
    settle = window.setTimeout(() => {
      if (figure.contains(document.activeElement)) announce(says?.textContent ?? '');
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
    fillTable();
  };
  window.addEventListener('beforeprint', unfold, { signal: until });
  if (details && table) {
    const save = make('button', { type: 'button', class: 'plain' }, 'Save as CSV');
    save.addEventListener('click', () => {
      const csv = tableCsv(widget.table(store.numbers(set), store.view()));
      saveFile(csv, `${widget.name}.csv`, 'text/csv');
    });
    table.after(save);
  }
};

/** Pointing at a quantity lights it wherever it stands on the page. */
export const wakePointing = (root: HTMLElement): void => {
  let lit = '';
  const light = (symbol: string) => {
    if (symbol === lit) return;
    for (const place of all(root, '.lit')) place.classList.remove('lit');
    lit = symbol;
    if (symbol !== '') for (const place of all(root, `[data-sym="${CSS.escape(symbol)}"]`)) place.classList.add('lit');
  };
  root.addEventListener('pointerover', (event) => {
    const at = event.target instanceof Element ? event.target.closest('[data-sym]') : null;
    light(at?.getAttribute('data-sym') ?? '');
  });
};
