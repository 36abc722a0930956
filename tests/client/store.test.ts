/** The page’s state while a long list is read in slices: each field has a reading of its own, and what it is given later stands. */
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { NumberSet } from '../../widgets/assembly/numbers.ts';
import { createStore, type Store } from '../../widgets/client/store.ts';
import { LONG_TEXT } from '../../widgets/input/texts.ts';

const OWN = 'turns; reading (µm)\n0; 0\n1; 87.5';
const set = (id: string): NumberSet => ({
  id,
  inputs: [
    { kind: 'text', name: 'runs', label: 'readings', start: OWN },
    { kind: 'text', name: 'piece', label: 'piece', start: 'foot 1' },
  ],
});
/** A table that takes more than one slice to read; the last row tells it from others. */
const long = (last: number): string =>
  ['turns; reading (µm)', ...Array.from({ length: 40_000 }, (_, i) => `${i / 4000}; ${i / 40}`), `20; ${last}`].join(
    '\n',
  );

const open = (): Store => createStore([set('shop'), set('home')], () => undefined, 'metric');
const runs = (store: Store, id: string) => store.numbers(id).texts?.runs ?? '';
const lastRow = (store: Store, id: string) => runs(store, id).split('\n').at(-1);
const readOut = (holds: () => boolean) => vi.waitFor(() => expect(holds()).toBe(true), 5000);
/** Longer than any reading here takes. */
const rest = () => new Promise((wait) => setTimeout(wait, 300));

beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
});

describe('what the chapter states of its own readings', () => {
  const OTHER = 'turns; reading (µm)\n0; 0\n2; 175';
  const piece = (store: Store) => store.numbers('shop').texts?.piece;

  it('goes when other readings take their place, by typing or by a link, and stays with its own', () => {
    const store = open();
    store.type('shop', 'runs', 'no table');
    store.type('shop', 'runs', OWN);
    expect(piece(store)).toBe('foot 1');
    store.type('shop', 'runs', OTHER);
    expect(piece(store)).toBe('');
    expect(store.numbers('home').texts?.piece).toBe('foot 1');
    store.reset();
    expect(piece(store)).toBe('foot 1');
    const linked = createStore([set('shop')], (_, name) => (name === 'runs' ? OTHER : undefined), 'metric');
    expect(piece(linked)).toBe('');
  });

  it('is left alone once it is the reader’s', () => {
    const store = open();
    store.type('shop', 'piece', 'mine');
    store.type('shop', 'runs', OTHER);
    expect(piece(store)).toBe('mine');
    const linked = createStore([set('shop')], (_, name) => (name === 'runs' ? OTHER : 'mine too'), 'metric');
    expect(piece(linked)).toBe('mine too');
  });
});

describe('a list that is refused for its length', () => {
  it('stays whole in its field, and the refusal counts the same characters', () => {
    const drawer = { kind: 'text', name: 'hardware', label: 'drawer', start: 'socket screw M8, 20 mm' } as const;
    const store = createStore([{ id: 'bin', inputs: [drawer] }], () => undefined, 'metric');
    const pasted = Array.from({ length: 5000 }, (_, i) => `socket screw M8, ${i + 1} mm`).join('\n');
    store.type('bin', 'hardware', pasted);
    const field = store.field('bin', 'hardware');
    expect(field?.text).toBe(pasted);
    expect(field?.reason).toContain(`Read 5000 rows, ${pasted.length} characters`);
    expect(field?.value).toBe(drawer.start);
  });
});

describe('a long list that is being read', () => {
  it('keeps the last good one in force until it is read', async () => {
    const store = open();
    const text = long(1);
    expect(text.length).toBeGreaterThan(LONG_TEXT);
    store.type('shop', 'runs', text);
    expect(runs(store, 'shop')).toBe(OWN);
    await readOut(() => runs(store, 'shop') === text);
  });

  it('goes on being read while other fields are typed in, another long list too', async () => {
    const store = open();
    store.type('shop', 'runs', long(1));
    store.type('shop', 'piece', 'foot 2');
    store.type('home', 'runs', long(2));
    store.type('home', 'piece', 'foot 3');
    await readOut(() => lastRow(store, 'shop') === '20; 1' && lastRow(store, 'home') === '20; 2');
    expect(store.numbers('shop').texts?.piece).toBe('foot 2');
  });

  it('gives way to what its own field is given meanwhile: typed, loaded, or the chapter’s own', async () => {
    const short = 'turns; reading (µm)\n0; 0\n2; 175';
    for (const [give, stands] of [
      [(s: Store) => s.type('shop', 'runs', short), short],
      [(s: Store) => s.load('shop', 'runs', short), short],
      [(s: Store) => s.reset(), OWN],
      [(s: Store) => s.type('shop', 'runs', 'no table'), OWN],
    ] as const) {
      const store = open();
      store.type('shop', 'runs', long(1));
      give(store);
      await rest();
      expect(runs(store, 'shop')).toBe(stands);
    }
  });
});
