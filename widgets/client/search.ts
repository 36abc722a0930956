/** The search box: it fetches its index when it is first used, so that nobody who does not search waits for it. */
import { FOUND_IN, foundCount, NOTHING_FOUND, SEARCH, SEARCH_MISSING, TO_GLOSSARY } from '#words/client.ts';
import { type Findable, INDEX_GLOBAL } from '../page/search-index.ts';
import { all, make, setText } from './dom.ts';
import { find } from './find.ts';
import { runScript } from './load-figures.ts';

/** Typing rests this long before it is looked for, ms. */
const REST = 120;

export const mountSearch = (place: HTMLElement, file: string): void => {
  const box = make('input', {
    type: 'search',
    'aria-label': SEARCH,
    placeholder: SEARCH,
    autocomplete: 'off',
    spellcheck: 'false',
    maxlength: '100',
    'aria-controls': 'search-results',
  });
  const says = make('p', { role: 'status' });
  const list = make('ol');
  const panel = make('div', { class: 'search-results', id: 'search-results' }, says, list);
  panel.hidden = true;
  const search = make('search', { class: 'search' }, box, panel);
  place.prepend(search);

  let index: readonly Findable[] | undefined;
  const fetched = async (): Promise<readonly Findable[] | undefined> => {
    if (index === undefined && (await runScript(file)))
      index = (window as unknown as Record<string, readonly Findable[]>)[INDEX_GLOBAL];
    return index;
  };
  const links = () => all(list, 'a');

  let asked = 0;
  const look = async () => {
    const mine = ++asked;
    const typed = box.value;
    panel.hidden = typed.trim() === '';
    if (panel.hidden) return;
    const book = await fetched();
    // Somebody may have typed on while the index came.
    if (mine !== asked) return;
    const found = book ? find(book, typed) : [];
    setText(says, book ? (found.length > 0 ? foundCount(found.length) : NOTHING_FOUND(typed)) : SEARCH_MISSING);
    list.replaceChildren(
      ...found.map(({ entry, around }) =>
        make(
          'li',
          {},
          make('a', { href: entry.href }, entry.title),
          make('span', { class: 'found-in' }, FOUND_IN(entry.kind, entry.page)),
          make('p', {}, ...around.map((piece, i) => (i % 2 === 1 && piece !== '' ? make('mark', {}, piece) : piece))),
        ),
      ),
      ...(found.length === 0 ? [make('li', {}, make('a', { href: 'glossary.html' }, TO_GLOSSARY))] : []),
    );
  };
  let rest = 0;
  box.addEventListener('input', () => {
    window.clearTimeout(rest);
    rest = window.setTimeout(look, REST);
  });
  box.addEventListener('focus', () => void fetched());

  const close = () => {
    panel.hidden = true;
  };
  search.addEventListener('keydown', (event) => {
    const every = links();
    const at = every.indexOf(document.activeElement as HTMLElement);
    if (event.key === 'Escape' && !panel.hidden) {
      box.focus();
      close();
    } else if (event.key === 'ArrowDown') (every[at + 1] ?? every[at])?.focus();
    else if (event.key === 'ArrowUp' && at >= 0) (every[at - 1] ?? box).focus();
    else if (event.key === 'Enter' && at < 0) void look().then(() => links()[0]?.focus());
    else return;
    event.preventDefault();
  });
  search.addEventListener('focusout', (event) => {
    if (!(event.relatedTarget instanceof Node && search.contains(event.relatedTarget))) close();
  });
  box.addEventListener('focus', () => {
    panel.hidden = box.value.trim() === '';
  });
  // A link to a place on the same page leaves the page as it is.
  list.addEventListener('click', close);
};
