/** What a link states for a page that has no field for it. */
import { describe, expect, it } from 'vitest';
import type { NumberSet } from '../../widgets/assembly/numbers.ts';
import { withoutField } from '../../widgets/client/address.ts';

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
