/**
 * Paper has no folds, so what a page folds away is opened for print and closed after it. Answers to predictions and exercises stay as
 * the reader has left them, since a printed chapter is worked with a pencil; a button prints them all.
 */
import { ON_PAPER, PRINT_CHAPTER, PRINT_WITH_ANSWERS, PRINTING } from '#words/client.ts';
import { make } from './dom.ts';

/** What gives an answer away; print.css leaves the same ones closed where there is no script. */
const ANSWERS = '.reveal, .hint, .worked';

export const mountPrinting = (root: HTMLElement, until: AbortSignal): void => {
  const folds = () => [...root.querySelectorAll('details')];
  let opened: HTMLDetailsElement[] = [];
  const unfold = () => {
    const shut = folds().filter((d) => !d.open && (root.dataset.answers !== undefined || !d.matches(ANSWERS)));
    for (const details of shut) details.open = true;
    opened.push(...shut);
  };
  const foldBack = () => {
    for (const details of opened) details.open = false;
    opened = [];
    delete root.dataset.answers;
  };
  window.addEventListener('beforeprint', unfold, { signal: until });
  window.addEventListener('afterprint', foldBack, { signal: until });

  const article = root.querySelector('article');
  if (!article?.querySelector('[data-predict], [data-exercise]')) return;
  const button = (text: string, act: () => void) => {
    const b = make('button', { type: 'button', class: 'plain' }, text);
    b.addEventListener('click', act);
    return b;
  };
  article.append(
    make(
      'div',
      { class: 'printing', role: 'group', 'aria-label': PRINTING },
      make('p', {}, ON_PAPER),
      make(
        'div',
        { class: 'button-row' },
        button(PRINT_CHAPTER, () => window.print()),
        button(PRINT_WITH_ANSWERS, () => {
          root.dataset.answers = '';
          window.print();
        }),
      ),
    ),
  );
};
