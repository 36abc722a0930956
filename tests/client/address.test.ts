/**
 * The address is the whole state: whatever was done on a page, in this tab and in others, its address opened in a browser that
 * keeps nothing gives the same page, and so does a reload. A reader of chance holds it, without a browser: the page's state, its
 * shelf of designs and its address are the ones of the pages; what storage keeps is a map.
 */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { NumberSet } from '../../widgets/assembly/numbers.ts';
import { addressOf, type Left, leftIn, openStore, putLeft, rememberView } from '../../widgets/client/address.ts';
import { designInUse, designs, keepDesigns, removeDesign, useDesign } from '../../widgets/client/design-store.ts';
import { applyDesign, numbersOf } from '../../widgets/client/designs.ts';
import { readingsKey } from '../../widgets/client/kept-readings.ts';
import type { Store } from '../../widgets/client/store.ts';
import { UNIT_VIEWS } from '../../widgets/input/format.ts';
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
    { kind: 'text', name: 'settled', label: 'log', start: '1 h; 0' },
  ],
};
const PAGES: readonly (readonly NumberSet[])[] = [[FOOT], [FOOT, SHEET], [SHEET]];

const TEXTS = [
  ...['M12x1.75', 'M10x1.5', 'M10', '1/4-20 LH', 'rubbish', 'M10x-1', ''],
  ...['M10x1.5 ± 2 µm', '2 ± 0.01', '0.4 mm ± 10 %', '20 mm ± 5 µm, 4 readings', '1 ± 0', '3; 3.01; 2.99'],
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
  | { readonly do: 'measure'; readonly text: string }
  | { readonly do: 'own' | 'reload' | 'return' }
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
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('measure' as const), text: fc.constantFrom('2 h; 1', '1 h; 0', '') }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constantFrom('own' as const, 'reload' as const, 'return' as const) }) },
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
    // What the page keeps of its readings, for the design in use.
    if (action.do === 'measure')
      storage.setItem(readingsKey(designInUse()?.name ?? ''), JSON.stringify({ 'sheet.settled': action.text }));
    if (action.do === 'reload') tab.store = openStore(tab.sets, tab.search);
    // To another page by a link, and back by a link that carries nothing.
    if (action.do === 'return') {
      rememberView(store.view());
      const here = seen(store);
      const left = JSON.parse(JSON.stringify(leftIn(store))) as Left;
      tab.store = openStore(tab.sets, '');
      expect(putLeft(tab.store, left).away).toEqual([]);
      expect(seen(tab.store), `came back to ${tab.search} with ${JSON.stringify(left)}`).toEqual(here);
    }
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

const open = (search: string, sets = [FOOT]) => openStore(sets, search);
const inForce = (store: Store) => {
  const { threads, values } = store.numbers('foot');
  return { A: threads.A?.designation, ...values };
};

describe('the address', () => {
  beforeEach(() => {
    vi.stubGlobal('requestAnimationFrame', () => 0);
    vi.stubGlobal('localStorage', browser());
  });

  it('carries the last good value beside a text that was refused', () => {
    const store = open('');
    store.type('foot', 'A', 'M12x1.75');
    store.type('foot', 'A', 'rubbish');
    const again = open(addressOf(store, ''));
    expect(inForce(again).A).toBe('M12×1.75');
    expect(again.field('foot', 'A')).toMatchObject({ text: 'rubbish', reason: store.field('foot', 'A')?.reason });
  });

  it('never turns a number refused in inches into one accepted in millimetres, the units cut off the link or not', () => {
    const store = open('units=inch');
    store.type('foot', 'l_e', '9');
    expect(store.field('foot', 'l_e')?.reason).toContain('Read “9”');
    const address = new URLSearchParams(addressOf(store, 'units=inch'));
    expect(open(address.toString()).field('foot', 'l_e')).toMatchObject({ text: '9', value: 8 });
    address.delete('units');
    const cut = open(address.toString());
    expect(cut.field('foot', 'l_e')).toMatchObject({ text: '9 in', value: 8 });
    expect(cut.field('foot', 'l_e')?.reason).toContain('goes from 3');
    // A number written by hand is metric, and stays so where it is refused.
    expect(open('units=inch&foot.l_e=0.5').field('foot', 'l_e')).toMatchObject({ text: '0.5 mm', value: 8 });
  });

  it('has a refused number read again when the units are switched, and its reason in those units', () => {
    const store = open('units=inch');
    store.type('foot', 'l_e', '9');
    store.setView('metric');
    expect(store.field('foot', 'l_e')).toMatchObject({ text: '9 mm', value: 9, reason: undefined });
    store.type('foot', 'l_e', '2');
    expect(store.field('foot', 'l_e')?.reason).toMatch(/from 3\smm to 25\smm/);
    store.setView('inch');
    expect(store.field('foot', 'l_e')?.reason).toMatch(/from 0\.11\d+\sin/);
  });

  it('carries a number put back to the chapter’s own while a design that has another is in use', () => {
    keepDesigns([{ name: 'mine', numbers: { A: 'M12×1.75' } }]);
    useDesign('mine');
    const store = open('');
    expect(inForce(store).A).toBe('M12×1.75');
    store.type('foot', 'A', 'M10x1.5');
    const address = addressOf(store, '');
    expect(inForce(open(address)).A).toBe('M10×1.5');
    useDesign('');
    expect(addressOf(open(address), address)).toBe('');
  });

  it('carries the units, also metric ones where another tab has chosen inches meanwhile', () => {
    const store = open('');
    expect(addressOf(store, '')).toBe('');
    rememberView('inch');
    const address = addressOf(store, '');
    expect(address).toBe('units=metric');
    expect(open(address).view()).toBe('metric');
    expect(open('').view()).toBe('inch');
  });

  it('carries errors that are linked, whichever of them was given', () => {
    const store = open('');
    store.type('foot', 'errors', 'the same error');
    expect(inForce(store)).toMatchObject({ eps_A: -0.001, eps_C: -0.001 });
    store.type('foot', 'eps_C', '0.2 %');
    expect(inForce(store)).toMatchObject({ eps_A: 0.002, eps_C: 0.002 });
    store.type('foot', 'eps_A', '0.3');
    store.type('foot', 'eps_A', 'banana');
    const again = open(addressOf(store, ''));
    expect(inForce(again)).toMatchObject({ eps_A: 0.003, eps_C: 0.003 });
    again.type('foot', 'errors', 'independent');
    again.put('foot', 'eps_A', 0.001);
    expect(inForce(again)).toMatchObject({ eps_A: 0.001, eps_C: 0.003 });
  });

  it('is not given up for a design in use by names that are not the page’s', () => {
    keepDesigns([{ name: 'mine', numbers: { A: 'M12×1.75' } }]);
    useDesign('mine');
    expect(inForce(open('course=b2&other.A=M8&foot.zzz=1')).A).toBe('M12×1.75');
    expect(inForce(open('foot.n=2')).A).toBe('M10×1.5');
  });

  it('gives the same page after a reload and in another browser, whatever was done', () => {
    fc.assert(fc.property(fc.array(anyAction, { maxLength: 14 }), holds), { numRuns: howMany(400, 100_000) });
  });

  describe('and numbers that a page was left with', () => {
    const back = (left: Left, sets = [FOOT]) => {
      const store = openStore(sets, '');
      return { store, ...putLeft(store, left) };
    };

    it('come back with the text that was refused, and the chapter’s own are nothing to come back', () => {
      const store = open('');
      expect(leftIn(store)).toEqual({ texts: {}, under: {} });
      store.type('foot', 'n', '3');
      store.type('foot', 'A', 'rubbish');
      const again = back(leftIn(store));
      expect(again).toMatchObject({ back: 2, away: [] });
      expect(inForce(again.store).n).toBe(3);
      expect(again.store.field('foot', 'A')).toMatchObject({
        text: 'rubbish',
        reason: store.field('foot', 'A')?.reason,
      });
      store.reset();
      expect(leftIn(store).texts).toEqual({});
    });

    it('come back in errors that are linked, whatever links them', () => {
      const linked: NumberSet = {
        ...FOOT,
        inputs: FOOT.inputs.map((input) =>
          input.name === 'errors' ? { ...input, start: 'the same error' } : input,
        ) as typeof FOOT.inputs,
      };
      const store = openStore([linked], '');
      store.type('foot', 'errors', 'independent');
      store.type('foot', 'eps_C', '0.3');
      expect(inForce(back(leftIn(store), [linked]).store)).toMatchObject({ eps_A: store.numbers('foot').values.eps_A });
    });

    it('stay away where a design gives another since then, and that is said by the name of the field', () => {
      const store = open('');
      store.type('foot', 'n', '3');
      store.type('foot', 'A', 'M12x1.75');
      const left = leftIn(store);
      keepDesigns([{ name: 'mine', numbers: { A: 'M8×1.25', C: 'M6×1' } }]);
      useDesign('mine');
      const again = back(left);
      expect(again).toMatchObject({ back: 1, away: ['thread A'] });
      expect(inForce(again.store)).toMatchObject({ A: 'M8×1.25', n: 3 });
      // The same number that the design gives is not missing.
      keepDesigns([{ name: 'mine', numbers: { A: 'M12×1.75' } }]);
      expect(back(left)).toMatchObject({ back: 1, away: [] });
    });

    it('are none of the design that was in use, which comes back with the design alone', () => {
      keepDesigns([{ name: 'mine', numbers: { A: 'M12×1.75' } }]);
      useDesign('mine');
      const store = open('');
      store.type('foot', 'n', '3');
      const left = leftIn(store);
      expect(left.texts).toEqual({ 'foot.n': '3' });
      useDesign('');
      expect(inForce(back(left).store)).toMatchObject({ A: 'M10×1.5', n: 3 });
    });

    it('are nothing where what is stored was written by another hand', () => {
      const texts = { 'foot.n': '1e99', 'foot.zzz': '1', 'foot.constructor': 'x' };
      const again = back({ texts, under: { ...texts } });
      expect(again).toMatchObject({ back: 0 });
      expect(inForce(again.store).n).toBe(1);
    });
  });

  describe('and readings that this browser keeps', () => {
    const LONG = Array.from({ length: 300 }, (_, i) => `${i} h; ${i}`).join('\n');
    const log = (store: Store) => store.field('sheet', 'settled')?.value;
    const keep = (design: string, text: string) =>
      localStorage.setItem(readingsKey(design), JSON.stringify({ 'sheet.settled': text }));
    /** Storage as browsers have it: its keys can be listed. */
    const listed = () => {
      const kept: Record<string, unknown> = {
        getItem: (key: string) => kept[key] ?? null,
        setItem: (key: string, text: string) => void Object.assign(kept, { [key]: text }),
        removeItem: (key: string) => void delete kept[key],
      };
      return kept;
    };

    it('brings them back where it is bare, and carries them from then on', () => {
      keep('', '2 h; 1');
      const store = open('', [SHEET]);
      expect(log(store)).toBe('2 h; 1');
      vi.stubGlobal('localStorage', browser());
      expect(log(open(addressOf(store, ''), [SHEET]))).toBe('2 h; 1');
    });

    it('is not mixed with them where it carries any number', () => {
      keep('', '2 h; 1');
      expect(log(open('sheet.X_A=3 mm', [SHEET]))).toBe('1 h; 0');
      const own = open('sheet.settled=5 h; 3', [SHEET]);
      expect(log(own)).toBe('5 h; 3');
      // The chapter’s own are written out, since a bare address would bring the kept ones back.
      own.reset();
      expect(new URLSearchParams(addressOf(own, '')).get('sheet.settled')).toBe('1 h; 0');
    });

    it('brings those of the design in use, not those typed under another or under none', () => {
      keep('', '2 h; 1');
      keep('mine', '7 h; 1');
      keepDesigns([{ name: 'mine', numbers: { A: 'M12×1.75' } }]);
      expect(log(open('', [SHEET]))).toBe('2 h; 1');
      useDesign('mine');
      expect(log(open('', [SHEET]))).toBe('7 h; 1');
    });

    it('names a list that is too long for it by a mark: this browser has it again, of whatever design; another begins with the chapter', () => {
      vi.stubGlobal('localStorage', listed());
      const store = open('', [SHEET]);
      store.type('sheet', 'settled', LONG);
      const search = addressOf(store, '');
      expect(search.length).toBeLessThan(60);
      keep('somebody’s', LONG);
      expect(log(open(search, [SHEET]))).toBe(LONG);
      expect(addressOf(open(search, [SHEET]), search)).toBe(search);
      keep('somebody’s', `${LONG}\n999 h; 9`);
      expect(log(open(search, [SHEET]))).toBe('1 h; 0');
    });

    it('is opened whatever stands in the storage', () => {
      for (const text of ['{', '[]', '7', 'null', '{"sheet.settled":7}', '{"__proto__":"x","sheet.constructor":"y"}']) {
        localStorage.setItem(readingsKey(''), text);
        expect(log(open('', [SHEET])), text).toBe('1 h; 0');
      }
    });
  });
});
