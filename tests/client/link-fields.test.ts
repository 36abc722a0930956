/** What a link states that its page can't take: what it has no field for, and what may mean two things. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { NumberSet } from '../../widgets/assembly/numbers.ts';
import { openStore, withoutField, withoutUnits } from '../../widgets/client/address.ts';

const SETS = new Map<string, NumberSet>([
  ['mine', { id: 'mine', inputs: [{ kind: 'thread', name: 'A', label: 'thread A', start: 'M10' }] }],
]);
const said = (search: string) => withoutField(search, SETS);

describe('a link', () => {
  it('that states what a set of the page has no field for is told so, by name', () => {
    expect(said('?mine.A=M8&mine.X_A=10+mm&mine.X_C=12+mm')).toMatch(
      /“mine\.X_A”, “mine\.X_C”, for which this page has no field/,
    );
    expect(said(`?${Array.from({ length: 5000 }, (_, i) => `mine.x${i}=1`).join('&')}`)).toMatch(
      /^.{0,200}and 4997 more,.{0,200}$/,
    );
  });

  it('with fields that are there, of other pages or of nobody, is not', () => {
    expect(['', '?mine.A=M8', '?other.X_A=10+mm', '?units=inch&x=1', '?mine=1'].map(said).join('')).toBe('');
  });
});

/** Its fields took N/mm once and take N/µm now. */
describe('a stiffness in a link', () => {
  beforeEach(() => vi.stubGlobal('requestAnimationFrame', () => 0));
  afterEach(() => vi.unstubAllGlobals());
  const JACK: NumberSet = {
    id: 'jack',
    inputs: [
      { kind: 'quantity', name: 'k_1', label: 'shank', start: '300 N/µm', min: 1, max: 1e7 },
      { kind: 'quantity', name: 'k_s', label: 'spring', start: '20 N/mm', min: 1, max: 1e7 },
    ],
  };
  const opened = (text: string, name = 'k_1') => {
    const search = `?jack.${name}=${encodeURIComponent(text)}`;
    return {
      value: openStore([JACK], search).field('jack', name)?.value,
      says: withoutUnits(search, new Map([['jack', JACK]])),
    };
  };

  it('without a unit is told, with what may be meant, and the page keeps its own', () => {
    for (const text of ['2000', '2000.5', '2000 ± 5 %'])
      expect(opened(text), text).toEqual({
        value: 300_000,
        says: expect.stringContaining(`“jack.k_1=${text}” without a unit`),
      });
    expect(opened('2000').says).toMatch(/N\/mm or N\/µm\.$/);
  });

  it('with its unit is read as it says, and so is the rate of a spring, which was always N/mm', () => {
    expect(opened('2000 N/mm')).toEqual({ value: 2000, says: '' });
    expect(opened('2 N/µm')).toEqual({ value: 2000, says: '' });
    expect(opened('25', 'k_s')).toEqual({ value: 25, says: '' });
  });
});
