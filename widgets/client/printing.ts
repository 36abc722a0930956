/**
 * Paper has no folds, so what a page folds away is opened for print and closed after it. A chapter is printed in one of three ways,
 * chosen before: to read, with the answers that the reader has opened; as a worksheet, which has questions and room in place of text
 * and answers; or with all answers. The browser's own command prints it to read. A figure that is a sheet of paper is printed alone.
 */
import {
  ON_PAPER,
  PRINT_THIS,
  PRINT_TO_READ,
  PRINT_WITH_ANSWERS,
  PRINT_WORKSHEET,
  PRINTING,
  WORKSHEET_HEAD,
} from '#words/client.ts';
import { make } from './dom.ts';

/** What gives an answer away; print.css leaves the same ones closed where there is no script. */
const ANSWERS = '.reveal, .hint, .worked';
/** What stands elsewhere in full, so that its one line is enough. */
const SHORT = '.again, .givens';
/** What a section of a worksheet is kept for. */
const TO_DO = 'figure, .example, .predict, .exercise';

/** Figures that are sheets of paper. */
const SHEETS = 'figure:has(.stage :is(.sheet, .paper-scroll, .passport-view))';

type Way = 'read' | 'worksheet' | 'answers' | 'one';

/** `ready` waits for figures that still have to take the reader's numbers. */
export const mountPrinting = (root: HTMLElement, ready: () => Promise<void>, until: AbortSignal): void => {
  let way: Way = 'read';
  let turned: HTMLDetailsElement[] = [];
  const turn = (details: Iterable<HTMLDetailsElement>, open: boolean) => {
    for (const one of details)
      if (one.open !== open) {
        one.open = open;
        turned.push(one);
      }
  };
  const prepare = () => {
    root.dataset.printed = way;
    const folds = [...root.querySelectorAll('details')];
    turn(
      folds.filter((d) => !d.matches(SHORT) && (way === 'answers' || !d.matches(ANSWERS))),
      true,
    );
    if (way === 'worksheet')
      turn(
        folds.filter((d) => d.matches(ANSWERS)),
        false,
      );
  };
  const restore = () => {
    for (const details of turned) details.open = !details.open;
    turned = [];
    way = 'read';
    root.querySelector('.printed-one')?.classList.remove('printed-one');
    delete root.dataset.printed;
  };
  window.addEventListener('beforeprint', prepare, { signal: until });
  window.addEventListener('afterprint', restore, { signal: until });

  for (const sheet of root.querySelectorAll(SHEETS)) {
    const alone = make('button', { type: 'button', class: 'plain' }, PRINT_THIS);
    alone.addEventListener('click', () => {
      way = 'one';
      sheet.classList.add('printed-one');
      window.print();
    });
    sheet.querySelector('.foot-line')?.append(alone);
  }

  const article = root.querySelector('article');
  if (!article?.querySelector('[data-predict], [data-exercise]')) return;
  for (const heading of article.querySelectorAll('h2')) if (!hasTask(heading)) heading.classList.add('without-task');
  article.querySelector('h1')?.after(make('p', { class: 'worksheet-head', 'aria-hidden': 'true' }, WORKSHEET_HEAD));
  const button = (text: string, chosen: Way) => {
    const b = make('button', { type: 'button', class: 'plain' }, text);
    b.addEventListener('click', async () => {
      await ready();
      way = chosen;
      window.print();
    });
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
        button(PRINT_TO_READ, 'read'),
        button(PRINT_WORKSHEET, 'worksheet'),
        button(PRINT_WITH_ANSWERS, 'answers'),
      ),
    ),
  );
};

/** Whether anything is to be done between this heading and the next. */
const hasTask = (heading: Element): boolean => {
  for (let next = heading.nextElementSibling; next && next.tagName !== 'H2'; next = next.nextElementSibling)
    if (next.matches(TO_DO)) return true;
  return false;
};
