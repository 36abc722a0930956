/**
 * Tests of ideas before and after a route, in a script of their own: what the reader thought is kept in this browser and nowhere else, and
 * saved as CSV where they want to. A class's files are read in the browser too.
 */
import {
  heldBy,
  IDEA_SAYS,
  IDEA_VERDICT,
  IDEAS_AS_CSV,
  IDEAS_ERASE,
  IDEAS_FILES,
  IDEAS_HEADS,
  IDEAS_READ,
  ideasKept,
  ideasOf,
  ideasOpen,
  ideaWas,
  KEEP_AFTER,
  KEEP_BEFORE,
  KEPT_BEFORE,
} from '#words/ideas.ts';
import { FOUND, type Found, type Idea, ideasCsv, readIdeas, remaining, whatRemains } from '../../exercises/ideas.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { reasonOf } from '../../words/reason.ts';
import { all, make, setText, whenSent } from '../dom.ts';
import { readStored, writeStored } from '../storage.ts';

const KEY = 'notebook-ideas';
type Kept = Readonly<Record<string, { readonly before?: Found; readonly after?: Found }>>;

/** What is stored, each entry that makes sense: by route and item. */
const kept = (): Kept => {
  try {
    const stored: unknown = JSON.parse(readStored(KEY));
    const sound: Record<string, { before?: Found; after?: Found }> = {};
    for (const [name, one] of Object.entries((stored ?? {}) as Record<string, Record<string, unknown> | null>)) {
      const [before, after] = [one?.before, one?.after].map((x) => FOUND.find((found) => found === x));
      sound[name] = { ...(before && { before }), ...(after && { after }) };
    }
    return sound;
  } catch {
    return {};
  }
};

export const mountIdeas = (place: HTMLElement): void => {
  const route = place.dataset.ideas ?? '';
  const items = all(place, '[data-idea]');
  // A page has no form of its own: a frame may forbid them, and then its script answers all the same.
  const form = make('form', { novalidate: '' });
  form.append(...place.querySelectorAll('fieldset'));
  place.append(form);
  const keep = make('button', { type: 'submit' });
  const status = make('p', { class: 'verdict', role: 'status' });
  const save = make('button', { type: 'button', class: 'plain' }, IDEAS_AS_CSV);
  const erase = make('button', { type: 'button', class: 'plain' }, IDEAS_ERASE);
  const says = items.map((item) => {
    const line = make('p', { class: 'verdict' });
    item.append(line);
    return line;
  });
  form.append(keep, ' ', save, ' ', erase, status);
  const nameOf = (item: HTMLElement) => `${route} ${item.dataset.idea}`;
  const ideas = (): readonly Idea[] =>
    items.map((item) => ({
      route,
      item: item.dataset.idea ?? '',
      misconception: item.dataset.misconception ?? '',
      ...kept()[nameOf(item)],
    }));
  const wasAsked = () => ideas().some(({ before }) => before !== undefined);
  const stand = () => {
    setText(keep, wasAsked() ? KEEP_AFTER : KEEP_BEFORE);
    save.hidden = erase.hidden = !wasAsked();
  };
  const chosen = (item: HTMLElement) =>
    item.querySelector<HTMLInputElement>('input:checked')?.value as Found | undefined;
  whenSent(form, () => {
    const open = items.filter((item) => chosen(item) === undefined).length;
    if (open > 0) {
      setText(status, ideasOpen(open));
      return;
    }
    const when = wasAsked() ? 'after' : 'before';
    const held: Record<string, unknown> = { ...kept() };
    for (const item of items) held[nameOf(item)] = { ...kept()[nameOf(item)], [when]: chosen(item) };
    writeStored(KEY, JSON.stringify(held));
    stand();
    if (when === 'before') {
      setText(status, KEPT_BEFORE);
      for (const item of all(form, 'input')) (item as HTMLInputElement).checked = false;
      return;
    }
    const now = ideas();
    for (const [i, { before, after, misconception }] of now.entries()) {
      const line = says[i];
      if (!line || after === undefined) continue;
      setText(line, `${IDEA_SAYS[after]} ${after === 'misconception' ? misconception : ''} ${ideaWas(before)}`.trim());
    }
    const right = (time: 'before' | 'after') => now.filter((one) => one[time] === 'right').length;
    setText(status, ideasKept(right('before'), right('after'), now.length));
  });
  save.addEventListener('click', () => saveFile(ideasCsv(ideas()), `ideas-${route}.csv`, 'text/csv'));
  erase.addEventListener('click', () => {
    const rest = Object.entries(kept()).filter(([name]) => !name.startsWith(`${route} `));
    writeStored(KEY, JSON.stringify(Object.fromEntries(rest)));
    form.reset();
    for (const line of says) setText(line, '');
    setText(status, '');
    stand();
    keep.focus();
  });
  stand();
};

/** Files of a class, and which misconceptions remain in it. */
export const mountIdeasClass = (place: HTMLElement): void => {
  place.querySelector('[data-without-script]')?.remove();
  const field = make('input', { id: 'ideas-files', type: 'file', accept: '.csv,text/csv', multiple: '' });
  const status = make('p', { class: 'verdict', role: 'status' });
  const table = make('div', {
    class: 'table-scroll',
    role: 'group',
    tabindex: '0',
    'aria-label': IDEAS_READ,
    hidden: '',
  });
  place.append(make('label', { for: 'ideas-files' }, IDEAS_FILES), field, status, table);
  field.addEventListener('change', async () => {
    const texts = await Promise.all([...(field.files ?? [])].map((file) => file.text()));
    const read = texts.map(readIdeas);
    const refused = read.flatMap((one) => (one.ok ? [] : [reasonOf(one)]));
    const rows = remaining(read.flatMap((one) => (one.ok ? one.value : [])));
    setText(status, [ideasOf(read.length - refused.length, refused.length), ...refused.slice(0, 3)].join(' '));
    table.hidden = rows.length === 0;
    table.replaceChildren(
      make(
        'table',
        {},
        make('thead', {}, make('tr', {}, ...IDEAS_HEADS.map((head) => make('th', { scope: 'col' }, head)))),
        make(
          'tbody',
          {},
          ...rows.map(({ misconception, before, after }) =>
            make(
              'tr',
              {},
              make('th', { scope: 'row' }, misconception),
              make('td', {}, heldBy(before.held, before.of)),
              make('td', {}, heldBy(after.held, after.of)),
              make('td', {}, heldBy(before.right, before.of)),
              make('td', {}, heldBy(after.right, after.of)),
              make('td', {}, IDEA_VERDICT[whatRemains({ before, after })]),
            ),
          ),
        ),
      ),
    );
  });
};
