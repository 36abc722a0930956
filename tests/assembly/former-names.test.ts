/** Links and designs from before a force changed its sign keep their meaning, under the name and the sign of today. */
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readDesigns } from '../../widgets/assembly/design-file.ts';
import { inPresentSign } from '../../widgets/assembly/former-names.ts';
import { addressOf, openStore } from '../../widgets/client/address.ts';
import { valueIn } from '../support/results.ts';

const force = (name: 'Q_pc' | 'Q_pt', start: string) =>
  ({ kind: 'quantity', name, label: name, start, min: -20, max: 20 }) as const;
const SETS = [{ id: 'foot', inputs: [force('Q_pc', '8 N'), force('Q_pt', '5 N')] }];
const open = (search: string) => openStore(SETS, search);

beforeEach(() => void vi.stubGlobal('requestAnimationFrame', () => 0));

describe('an old link', () => {
  it.each([
    ['foot.Q_c=3 N', 'Q_pc', -3],
    ['foot.Q_c=-8 N', 'Q_pc', 8],
    ['foot.Q_c=−2,5 N', 'Q_pc', 2.5],
    ['foot.Q_t=+1 N', 'Q_pt', -1],
    ['foot.Q_pc=3 N', 'Q_pc', 3],
    // The name of today rules where both stand.
    ['foot.Q_c=3 N&foot.Q_pc=4 N', 'Q_pc', 4],
  ] as const)('%s gives %s = %d', (search, name, value) =>
    expect(open(search.replace('+', '%2B')).field('foot', name)?.value).toBe(value),
  );

  it('is written with the names of today, and the old one does not come back', () => {
    const search = 'foot.Q_c=3+N';
    expect([...new URLSearchParams(addressOf(open(search), search))]).toEqual([['foot.Q_pc', '−3 N']]);
    const undone = open(search);
    undone.reset();
    expect(addressOf(undone, search)).toBe('');
  });
});

describe('an old link to a plate', () => {
  const plate = [
    { id: 'plate', inputs: [{ kind: 'choice', name: 'kept', label: 'stays', start: 'mean height' } as const] },
  ];
  it('names the foot that stays by its letter, which is its number now', () => {
    expect(openStore(plate, 'plate.kept=foot+B').field('plate', 'kept')?.value).toBe('foot 2');
    expect(openStore(plate, 'plate.kept=foot+3').field('plate', 'kept')?.value).toBe('foot 3');
  });
});

describe('an old design', () => {
  it('is read with the names and signs of today', () => {
    const file = JSON.stringify({
      format: 'differential-screw-designs',
      version: 1,
      designs: [{ name: 'Foot', numbers: { A: 'M10', Q_c: '−8 N', Q_t: '5 N' } }],
    });
    expect(valueIn(readDesigns(file))).toEqual({
      designs: [{ name: 'Foot', numbers: { A: 'M10', Q_pc: '8 N', Q_pt: '−5 N' } }],
      notes: [],
    });
  });
});

it('a text that is no number stays as it was typed', () => {
  for (const text of ['rubbish', '', '-', '−']) expect(inPresentSign(text)).toBe(text);
});
