/**
 * The address is the whole state: whatever was done on a page, in this tab and in others, its address opened in a browser that
 * keeps nothing gives the same page, and so does a reload. A reader of chance holds it, without a browser: the page's state, its
 * shelf of designs and its address are the ones of the pages; what storage keeps is a map.
 */
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { addressOf, openStore, rememberView } from '../../widgets/page/address.ts';
import { applyDesign, numbersOf } from '../../widgets/page/designs.ts';
import { designs, keepDesigns, removeDesign, useDesign } from '../../widgets/page/shelf.ts';
import type { Store } from '../../widgets/page/store.ts';
import { UNIT_VIEWS } from '../../widgets/shared/format.ts';
import type { NumberSet } from '../../widgets/shared/numbers.ts';
import { howMany } from '../support/deep.ts';

// A hundred thousand cases take minutes where they are asked for.
vi.setConfig({ testTimeout: howMany(60_000, 3_600_000) });

const mm = (name: 'w' | 'X_A' | 'l_e', min: number, max: number, start: string) =>
  ({ kind: 'quantity', name, label: name, start, min, max }) as const;
/** Of every kind of number one or two, a motion whose metric and inch units differ by 25.4 and a size whose differ the same. */
const FOOT: NumberSet = {
  id: 'foot',
  inputs: [
    { kind: 'thread', name: 'A', label: 'thread A', start: 'M10x1.5' },
    { kind: 'thread', name: 'C', label: 'thread C', start: '3/8-16' },
    mm('w', 0.01, 20, '400 µm'),
    mm('l_e', 3, 25, '8 mm'),
    { kind: 'quantity', name: 'n', label: 'turns', start: '1', min: -4, max: 4 },
    { kind: 'quantity', name: 'eps_A', label: 'error of A', start: '-0.1 %', min: -0.005, max: 0.005 },
    { kind: 'quantity', name: 'eps_C', label: 'error of C', start: '0.1 %', min: -0.005, max: 0.005 },
    { kind: 'choice', name: 'errors', label: 'errors', start: 'independent' },
    // A bound that nine digits can't write.
    { kind: 'quantity', name: 'psi', label: 'angle', start: '1°', min: -0.9, max: 0.9 },
    { kind: 'quantity', name: 't', label: 'time', start: '24 h', min: 0, max: 9000 },
  ],
};
const SHEET: NumberSet = {
  id: 'sheet',
  inputs: [
    { kind: 'thread', name: 'A', label: 'thread A', start: 'M8x1.25' },
    { kind: 'choice', name: 'arrangement', label: 'arrangement', start: 'in line' },
    mm('X_A', 1, 400, '1 in'),
    { kind: 'text', name: 'taps', label: 'taps', start: 'M6, 8-36' },
  ],
};
const PAGES: readonly (readonly NumberSet[])[] = [[FOOT], [FOOT, SHEET], [SHEET]];

const TEXTS = [
  ...['M12x1.75', 'M10x1.5', 'M10', '1/4-20 LH', 'rubbish', 'M10x-1', ''],
  ...[
    '9',
    '10',
    '400',
    '.4',
    '0.5',
    '1/3',
    '1.23456789123',
    '1e-3',
    '15.748031496 thou',
    '8 mm',
    '1 in',
    '-5',
    '0.2 %',
    '0.3',
  ],
  ...[
    'the same error',
    'independent',
    'nested',
    'sideways',
    'M8, nothing',
    '90 min',
    '24',
    ' 7 ',
    'a&b=c#%41+',
    'x'.repeat(70),
  ],
];

type Action =
  | { readonly do: 'type' | 'load'; readonly field: number; readonly text: string; readonly left: boolean }
  | { readonly do: 'put'; readonly field: number; readonly value: number }
  | { readonly do: 'units'; readonly view: number }
  | { readonly do: 'keep' | 'use' | 'remove'; readonly design: number }
  | { readonly do: 'own' | 'reload' }
  | { readonly do: 'tab'; readonly page: number }
  | { readonly do: 'turn'; readonly page: number };

const anyAction: fc.Arbitrary<Action> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      do: fc.constant('type' as const),
      field: fc.nat(12),
      text: fc.constantFrom(...TEXTS),
      left: fc.boolean(),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('put' as const),
      field: fc.nat(12),
      value: fc.oneof(fc.constantFrom(-1e9, 0, 1e9, 1 / 3), fc.double({ min: -5, max: 30, noNaN: true })),
    }),
  },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('units' as const), view: fc.nat(2) }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constantFrom('keep' as const, 'use' as const, 'remove' as const),
      design: fc.nat(1),
    }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constantFrom('own' as const, 'reload' as const) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constantFrom('tab' as const, 'turn' as const), page: fc.nat(2) }) },
);

/** What the page is worked from, and what the reader sees of it once every field is left. */
const seen = (store: Store) => ({
  view: store.view(),
  numbers: [...store.sets.keys()].map((id) => {
    const { threads, ...rest } = store.numbers(id);
    // What was supposed of a thread is said until its field is left.
    return { ...rest, threads: Object.values(threads).map((thread) => ({ ...thread, notes: [] })) };
  }),
  fields: [...store.sets].flatMap(([id, set]) =>
    set.inputs.map(({ name }) => {
      store.tidy(id, name);
      const field = store.field(id, name);
      return [`${id}.${name}`, field?.text, field?.value, field?.reason];
    }),
  ),
});

/** A browser’s storage; every look at it is one of the same. */
const browser = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
};

/** Does all that a reader does, and gives the tabs with their addresses as the pages would keep them. */
const play = (actions: readonly Action[]) => {
  const storage = browser();
  vi.stubGlobal('localStorage', storage);
  const tabs = [{ sets: PAGES[1] ?? [], store: openStore(PAGES[1] ?? [], ''), search: '' }];
  let at = 0;
  /** Any change, also one of another tab that the storage tells of, has every address written again. */
  const write = () => {
    for (const tab of tabs) tab.search = addressOf(tab.store, tab.search);
  };
  write();
  for (const action of actions) {
    const tab = tabs[at];
    if (!tab) throw new Error('no tab');
    const { store } = tab;
    const inputs = [...store.sets].flatMap(([id, set]) => set.inputs.map((input) => ({ id, input })));
    const field = 'field' in action ? inputs[action.field % inputs.length] : undefined;
    const name = 'design' in action ? `design ${action.design}` : '';
    if (action.do === 'type' && field) {
      store.type(field.id, field.input.name, action.text);
      if (action.left) store.tidy(field.id, field.input.name);
    }
    if (action.do === 'put' && field) store.put(field.id, field.input.name, action.value);
    if (action.do === 'units') {
      store.setView(UNIT_VIEWS[action.view] ?? 'metric');
      rememberView(store.view());
    }
    if (action.do === 'keep') {
      const [id] = [...store.sets.keys()];
      if (keepDesigns([{ name, numbers: numbersOf(store, id ?? '') }]).names.length > 0) useDesign(name);
    }
    if (action.do === 'use') {
      const design = designs().find((d) => d.name === name);
      if (design) {
        useDesign(name);
        applyDesign(store, design);
      }
    }
    if (action.do === 'remove') removeDesign(name);
    if (action.do === 'own') {
      useDesign('');
      store.reset();
    }
    if (action.do === 'reload') tab.store = openStore(tab.sets, tab.search);
    if (action.do === 'turn' || action.do === 'tab') {
      const sets = PAGES[action.page] ?? [];
      const fresh = { sets, store: openStore(sets, ''), search: '' };
      if (action.do === 'turn') tabs[at] = fresh;
      else if (tabs.length < 3) at = tabs.push(fresh) - 1;
      else at = (at + 1) % tabs.length;
    }
    write();
  }
  return { tabs, storage };
};

afterEach(() => {
  vi.unstubAllGlobals();
});

const holds = (actions: readonly Action[]) => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  const { tabs, storage } = play(actions);
  for (const { sets, store, search } of tabs) {
    const here = seen(store);
    const says = `${search} of ${sets.map((s) => s.id).join(', ')}`;
    vi.stubGlobal('localStorage', storage);
    expect(seen(openStore(sets, search)), `reloaded: ${says}`).toEqual(here);
    vi.stubGlobal('localStorage', browser());
    expect(seen(openStore(sets, search)), `elsewhere: ${says}`).toEqual(here);
  }
};

describe('the address', () => {
  it('gives the same page after a reload and in another browser, whatever was done', () => {
    fc.assert(fc.property(fc.array(anyAction, { maxLength: 14 }), holds), { numRuns: howMany(800, 100_000) });
  });
});
