/**
 * What is offered in place of a field: answers or lines of which one is chosen, as radio buttons, and lines put in order by two buttons
 * each. Both work by keys, by taps and for who listens; what is chosen is read as letters, as a paper has it.
 */
import { earlier, later, movedTo, YOUR_CHOICE, YOUR_ORDER } from '#words/client.ts';
import { lettered } from '#words/papers.ts';
import { LETTERS, type Offered } from '../../exercises/offered.ts';
import { withIndexes } from '../../exercises/plain-formula.ts';
import { escapeText } from '../../input/escape.ts';
import { all, make, setText } from '../dom.ts';

export interface OfferedField {
  readonly place: HTMLElement;
  readonly put: (offered: Offered) => void;
  /** The letters chosen; empty where nothing is. */
  readonly value: () => string;
  readonly focus: () => void;
}

/** What is offered under its letter, indexes set low. */
const line = (at: string, text: string): HTMLElement => {
  const span = make('span');
  span.innerHTML = withIndexes(escapeText(lettered(at, text)));
  return span;
};

export const offeredField = (name: string, status: HTMLElement): OfferedField => {
  const place = make('fieldset', { class: 'offered-field', hidden: '' });
  let order: string[] = [];

  const choices = ({ options }: Offered) => {
    order = [];
    place.replaceChildren(
      make('legend', {}, YOUR_CHOICE),
      ...options.map(({ text }, i) => {
        const at = LETTERS[i] ?? '';
        return make('label', {}, make('input', { type: 'radio', name, value: at }), line(at, text));
      }),
    );
  };

  const lines = ({ options }: Offered) => {
    order = options.map((_, i) => LETTERS[i] ?? '');
    const text = (at: string) => options[LETTERS.indexOf(at)]?.text ?? '';
    const list = make('ol');
    const items = new Map(
      order.map((at) => {
        const button = (by: number, label: string, sign: string) => {
          const b = make(
            'button',
            { type: 'button', class: 'plain', 'data-by': String(by), 'aria-label': label },
            sign,
          );
          b.addEventListener('click', () => move(at, by, b));
          return b;
        };
        const item = make(
          'li',
          {},
          line(at, text(at)),
          button(-1, earlier(text(at)), '↑'),
          button(1, later(text(at)), '↓'),
        );
        return [at, item] as const;
      }),
    );
    const stand = () => {
      list.append(...order.flatMap((at) => items.get(at) ?? []));
      // Said, not disabled: a button that goes dead under a finger drops the focus of the keys.
      for (const [at, item] of items)
        for (const b of all(item, '[data-by]'))
          b.setAttribute('aria-disabled', String(order[order.indexOf(at) + Number(b.dataset.by)] === undefined));
    };
    const move = (at: string, by: number, b: HTMLElement) => {
      const [from, to] = [order.indexOf(at), order.indexOf(at) + by];
      const other = order[to];
      if (other === undefined) return;
      order[to] = at;
      order[from] = other;
      stand();
      b.focus();
      delete status.dataset.kind;
      setText(status, movedTo(text(at), to + 1, order.length));
    };
    stand();
    place.replaceChildren(make('legend', {}, YOUR_ORDER), list);
  };

  return {
    place,
    put: (offered) => (offered.right.length > 1 ? lines(offered) : choices(offered)),
    value: () => order.join('') || (place.querySelector<HTMLInputElement>('input:checked')?.value ?? ''),
    focus: () => place.querySelector<HTMLElement>('input, button')?.focus(),
  };
};
