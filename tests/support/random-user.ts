/**
 * A reader who does anything: types good and bad texts, steps, slides, picks, switches units, keeps, uses and removes designs,
 * leaves and comes back. Each action is a plain record that says which of the things on the page it takes by a number, so a
 * list of them can be played again, and made shorter.
 */
import fc from 'fast-check';
import type { Page } from './driven.ts';
import { awake, readThrough, settled } from './page.ts';

export type Action =
  | { readonly do: 'type'; readonly at: number; readonly text: string; readonly keys: boolean }
  | { readonly do: 'scale'; readonly at: number; readonly by: number }
  | { readonly do: 'step' | 'choose' | 'anchor' | 'use' | 'remove' | 'link'; readonly at: number }
  | { readonly do: 'slide'; readonly at: number; readonly key: string }
  | { readonly do: 'units'; readonly view: string }
  | { readonly do: 'keep'; readonly at: number; readonly name: string }
  | { readonly do: 'own' | 'reload' | 'away' | 'back' }
  /** In another tab of the same browser. */
  | { readonly do: 'elsewhere'; readonly what: 'inch' | 'metric' | 'keep' | 'own' };

const TEXTS = [
  ...[
    'M12x1.75',
    'M8',
    '5/16-18',
    '1/4-20',
    'M16x1.5',
    'M6x0.75 LH',
    '2',
    '9',
    '0.5',
    '12',
    '40',
    '1/3',
    '-1',
    '20 µm',
    '1 in',
  ],
  ...['2 ± 0.01', 'M10x1.5 ± 2 µm', '1 ± 0'],
  ...['rubbish', 'M10x-1', '', '9999', '5 bananas', 'M10x1.5', '<b>', 'a&b=c#%41+'],
];
const at = fc.nat(199);
const one = <const T extends string>(...kinds: T[]) => fc.constantFrom(...kinds);

export const anyAction: fc.Arbitrary<Action> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ do: one('type'), at, text: fc.constantFrom(...TEXTS), keys: fc.boolean() }) },
  { weight: 4, arbitrary: fc.record({ do: one('scale'), at, by: fc.constantFrom(0.5, 1.1, 1.37, 2, -1) }) },
  { weight: 5, arbitrary: fc.record({ do: one('step'), at }) },
  { weight: 4, arbitrary: fc.record({ do: one('choose'), at }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: one('slide'),
      at,
      key: fc.constantFrom('ArrowRight', 'ArrowLeft', 'PageUp', 'PageDown', 'Home', 'End'),
    }),
  },
  { weight: 3, arbitrary: fc.record({ do: one('units'), view: fc.constantFrom('metric', 'inch', 'both') }) },
  { weight: 2, arbitrary: fc.record({ do: one('keep'), at, name: fc.constantFrom('Foot', 'Stop') }) },
  { weight: 3, arbitrary: fc.record({ do: one('use', 'remove', 'anchor'), at }) },
  { weight: 1, arbitrary: fc.record({ do: one('link'), at }) },
  { weight: 3, arbitrary: fc.record({ do: one('own', 'reload', 'away', 'back') }) },
  { weight: 1, arbitrary: fc.record({ do: one('elsewhere'), what: fc.constantFrom('inch', 'metric', 'keep', 'own') }) },
);

/** What stands on a page, by the name of its place: what is compared. */
export type Sight = Readonly<Record<string, string>>;

/** Fields with what stands beside them, and the units. */
const fieldsOf = (page: Page): Promise<Sight> =>
  page.evaluate(() => {
    const seen: Record<string, string> = {};
    const note = (name: string, text: string | null | undefined) => {
      seen[name] = (text ?? '').replace(/\s+/g, ' ').trim();
    };
    for (const [i, place] of document.querySelectorAll('[data-inputs]').entries())
      for (const [k, field] of place.querySelectorAll('.field').entries()) {
        const typed = field.querySelector<HTMLInputElement | HTMLTextAreaElement>('input[type=text], textarea');
        const name = `${place.getAttribute('data-inputs')} ${i}.${k} ${field.querySelector('label, legend')?.textContent}`;
        note(name, typed?.value ?? field.querySelector<HTMLInputElement>('input:checked')?.value);
        note(`${name}, beside it`, field.querySelector('.field-note')?.textContent);
        note(`${name}, wrong`, typed?.getAttribute('aria-invalid'));
      }
    note('units', document.querySelector<HTMLInputElement>('.units input:checked')?.value);
    return seen;
  });

/** Results of examples, sentences that follow, and what each figure says; a figure that refuses keeps an earlier picture, which is no state. */
const resultsOf = (page: Page): Promise<Sight> =>
  page.evaluate(() => {
    const seen: Record<string, string> = {};
    const note = (name: string, text: string | null | undefined) => {
      seen[name] = (text ?? '').replace(/\s+/g, ' ').trim();
    };
    for (const [i, q] of document.querySelectorAll('.q.now').entries()) note(`sentence ${i}`, q.textContent);
    for (const [i, r] of document.querySelectorAll('.example [data-result]').entries())
      note(`result ${i}`, r.textContent);
    for (const [i, f] of document.querySelectorAll<HTMLElement>('figure.live').entries()) {
      note(`figure ${i} ${f.dataset.figure}, refusal`, f.querySelector('[data-refusal]')?.textContent);
      if (!f.classList.contains('stale'))
        note(`figure ${i} ${f.dataset.figure}`, f.querySelector('[data-says]')?.textContent);
    }
    return seen;
  });

/** Leaves the field, as a reader does who looks at the page. */
const leave = async (page: Page): Promise<void> => {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await settled(page);
};

const fieldsSeen = async (page: Page): Promise<Sight> => {
  await leave(page);
  return fieldsOf(page);
};

export const wholeSight = async (page: Page): Promise<Sight> => {
  await leave(page);
  await page.evaluate(() => scrollTo(0, 0));
  await readThrough(page);
  return { ...(await fieldsOf(page)), ...(await resultsOf(page)) };
};

/** Where two sights differ, a line each; empty where they are the same. */
export const differences = (here: Sight, there: Sight): string[] =>
  [...new Set([...Object.keys(here), ...Object.keys(there)])]
    .filter((name) => here[name] !== there[name])
    .map((name) => `${name}: “${here[name]}” became “${there[name]}”`);

/**
 * Does this to the thing of this kind that the number picks, in the page itself, since a hand that moves there costs more than all the
 * rest; what hands do is asked of them elsewhere. False where there is no such thing.
 */
const touch = (
  page: Page,
  kind: string,
  n: number,
  does: 'click' | 'focus' | 'show' | { text: string } | { by: number },
) =>
  page.evaluate(
    ([selector, nth, what]) => {
      const all = [...document.querySelectorAll<HTMLElement>(selector)].filter((e) => e.checkVisibility());
      const chosen = all[nth % all.length];
      if (!chosen) return false;
      for (const old of document.querySelectorAll('[data-touched]')) old.removeAttribute('data-touched');
      chosen.setAttribute('data-touched', '');
      if (what === 'show') chosen.scrollIntoView();
      if (what === 'click') chosen.click();
      if (what === 'focus') chosen.focus();
      if (typeof what === 'string' || !('value' in chosen)) return true;
      const field = chosen as HTMLInputElement;
      if (field.readOnly) return false;
      const scaled = (number: string, by: number) =>
        String(Number((Number(number.replace('−', '-')) * by).toPrecision(6)));
      field.focus();
      field.value =
        'text' in what ? what.text : field.value.replace(/[−-]?\d+(?:\.\d+)?/, (number) => scaled(number, what.by));
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      return true;
    },
    [kind, n, does] as const,
  );

const OWN = '[data-tools] > button';

const keep = async (page: Page, n: number, name: string) => {
  await page.evaluate(
    ([nth, called]) => {
      const field = document.querySelector<HTMLInputElement>('#design-name');
      const from = document.querySelector<HTMLSelectElement>('#design-from');
      if (!field) return;
      if (from) from.selectedIndex = nth % from.options.length;
      field.value = called;
      field.form?.requestSubmit();
    },
    [n, name] as const,
  );
};

export interface User {
  readonly page: Page;
  /** Another tab of the same browser. */
  readonly other: Page;
  /** Places to come back to. */
  depth: number;
}

const SLIDER = 'figure.live [role=slider]';
const FIELD = '[data-inputs] input[type=text], [data-inputs] textarea';

/** Does one action; a reload, and a way out and back, must leave the fields as they were, or the differences are given. */
export const act = async (user: User, action: Action): Promise<string[]> => {
  const { page } = user;
  const back = async () => {
    user.depth--;
    // The driver of Firefox waits in vain for a load where the way back leads to another place of the same page.
    await page.evaluate(() => {
      const here = window as unknown as { left: boolean };
      here.left = false;
      addEventListener('popstate', () => Object.assign(here, { left: true }), { once: true });
      setTimeout(() => history.back());
    });
    const gone = () => page.evaluate(() => (window as unknown as { left?: boolean }).left !== false);
    while (!(await gone().catch(() => false))) await page.waitForTimeout(30);
    await awake(page);
  };
  const follow = async (n: number) => {
    await page.evaluate(() => document.documentElement.setAttribute('data-left', ''));
    // A page that is followed to itself takes its own place among those that lead back.
    await touch(page, 'nav a[href*=".html"]:not([aria-current])', n, 'click');
    await page.waitForSelector('html[data-awake]:not([data-left])');
    user.depth++;
    await awake(page);
  };
  switch (action.do) {
    case 'type':
      if (!(await touch(page, FIELD, action.at, { text: action.keys ? '' : action.text }))) break;
      if (action.keys) await page.keyboard.type(action.text);
      break;
    case 'scale':
      await touch(page, FIELD, action.at, { by: action.by });
      break;
    case 'step':
      await touch(page, '[data-inputs] button.step', action.at, 'click');
      break;
    case 'choose':
      await touch(page, '[data-inputs] input[type=radio]', action.at, 'click');
      break;
    case 'slide':
      if (!(await touch(page, SLIDER, action.at, 'show'))) break;
      await page.waitForFunction(() => document.querySelector('[data-touched]')?.closest('[data-awake]') !== null);
      // Its figure may have been drawn anew meanwhile.
      await touch(page, SLIDER, action.at, 'focus');
      await page.keyboard.press(action.key);
      break;
    case 'units':
      await touch(page, `.units input[value=${action.view}]`, 0, 'click');
      break;
    case 'keep':
      await keep(page, action.at, action.name);
      break;
    case 'use':
    case 'remove':
      await page.evaluate(() => document.querySelector('.designs')?.setAttribute('open', ''));
      await touch(page, `.design-list button:${action.do === 'use' ? 'first' : 'last'}-of-type`, action.at, 'click');
      break;
    case 'anchor': {
      const moved = await page.evaluate((n) => {
        const all = [...document.querySelectorAll('article h2[id]')];
        const before = location.hash;
        location.hash = all[n % all.length]?.id ?? '';
        return location.hash !== before;
      }, action.at);
      if (moved) user.depth++;
      break;
    }
    case 'link':
      await follow(action.at);
      break;
    case 'own':
      await touch(page, OWN, 0, 'click');
      break;
    case 'back':
      if (user.depth > 0) await back();
      break;
    case 'reload':
    case 'away': {
      const before = await fieldsSeen(page);
      if (action.do === 'reload') {
        await page.reload();
        await awake(page);
      } else {
        await follow(1);
        await back();
      }
      return differences(before, await fieldsSeen(page));
    }
    case 'elsewhere':
      if (action.what === 'keep') await keep(user.other, 0, 'Elsewhere');
      else if (action.what === 'own') await touch(user.other, OWN, 0, 'click');
      else await touch(user.other, `.units input[value=${action.what}]`, 0, 'click');
      break;
  }
  return [];
};
