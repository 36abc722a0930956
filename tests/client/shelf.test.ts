/** The shelf of designs in a browser’s storage: what a newer notebook keeps there is never lost, and what is said counts true. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DESIGN_FORMAT, DESIGN_VERSION, MOST_DESIGNS, readDesigns } from '../../widgets/assembly/design-file.ts';
import {
  designInUse,
  designs,
  keepDesigns,
  readDesignStore,
  removeDesign,
  shelfText,
  useDesign,
} from '../../widgets/client/design-store.ts';
import { readingsKey } from '../../widgets/client/kept-readings.ts';
import { reasonIn } from '../support/results.ts';

const KEY = 'notebook-designs';
const kept = new Map<string, string>();
const stored = () => JSON.parse(kept.get(KEY) ?? 'null');
const store = (file: object) =>
  kept.set(KEY, JSON.stringify({ format: DESIGN_FORMAT, version: DESIGN_VERSION, ...file }));

beforeEach(() => {
  kept.clear();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a shelf that a newer notebook has written', () => {
  const NEWER = { version: DESIGN_VERSION + 1, designs: [{ name: 'Foot', parts: ['a shape of its own'] }] };

  it('of a newer version is not written over: nothing is kept, used or removed, and it is said why', () => {
    store(NEWER);
    const before = kept.get(KEY);
    expect(reasonIn(readDesignStore())).toContain('newer notebook');
    const { names, fault } = keepDesigns([{ name: 'Foot', numbers: { A: 'M8×1.25' } }]);
    expect(names).toEqual([]);
    expect(fault).toContain('newer notebook');
    expect(removeDesign('Foot').ok).toBe(false);
    expect(kept.get(KEY)).toBe(before);
  });

  it('with more designs than are kept here is not written over either', () => {
    store({ designs: Array.from({ length: MOST_DESIGNS + 1 }, (_, i) => ({ name: `d${i}`, numbers: {} })) });
    const before = kept.get(KEY);
    expect(keepDesigns([{ name: 'one more', numbers: { A: 'M8×1.25' } }]).names).toEqual([]);
    expect(kept.get(KEY)).toBe(before);
  });

  it('keeps names, numbers and fields this notebook does not know, through keeping, merging and removing', () => {
    store({
      made: 'by a newer notebook',
      designs: [
        {
          name: 'Foot',
          note: 'left rear',
          numbers: { A: 'M10×1.5', wings: '2', arrangement: 'upside down', X_A: '1e9 mm' },
        },
        { name: 'Stop', numbers: { wings: '3' } },
        { title: 'no design of this notebook' },
        { name: 'Old', numbers: { A: 'M6×1' } },
      ],
    });
    keepDesigns([{ name: 'Foot', numbers: { A: 'M12×1.75', C: 'M8×1.25' } }]);
    removeDesign('Old');
    keepDesigns([{ name: 'New', numbers: { A: 'M5×0.8' } }]);
    expect(stored()).toEqual({
      format: DESIGN_FORMAT,
      version: DESIGN_VERSION,
      made: 'by a newer notebook',
      designs: [
        {
          name: 'Foot',
          note: 'left rear',
          numbers: { A: 'M12×1.75', C: 'M8×1.25', wings: '2', arrangement: 'upside down', X_A: '1e9 mm' },
        },
        { name: 'Stop', numbers: { wings: '3' } },
        { title: 'no design of this notebook' },
        { name: 'New', numbers: { A: 'M5×0.8' } },
      ],
    });
    expect(designs().map((d) => d.name)).toEqual(['Foot', 'Stop', 'New']);
    expect(designs()[0]?.numbers).toEqual({ A: 'M12×1.75', C: 'M8×1.25' });
    expect(JSON.parse(shelfText())).toEqual(stored());
  });
});

describe('keepDesigns', () => {
  const many = (count: number) =>
    Array.from({ length: count }, (_, i) => ({ name: `d${i}`, numbers: { A: 'M8×1.25' } }));

  it('counts what is on the shelf afterwards, and says that the others found no room', () => {
    keepDesigns([{ name: 'mine', numbers: { A: 'M6×1' } }]);
    const { names, fault } = keepDesigns(many(MOST_DESIGNS));
    expect(names.length).toBe(MOST_DESIGNS - 1);
    expect(fault).toContain(`${MOST_DESIGNS} designs`);
    expect(designs().length).toBe(MOST_DESIGNS);
  });

  it('counts designs of one name once, their numbers together', () => {
    const { names } = keepDesigns([
      { name: 'Foot', numbers: { A: 'M6×1' } },
      { name: 'Foot', numbers: { C: 'M8×1.25' } },
    ]);
    expect(names).toEqual(['Foot']);
    expect(designs()).toEqual([{ name: 'Foot', numbers: { A: 'M6×1', C: 'M8×1.25' } }]);
  });

  it('writes no more than is read again', () => {
    const long = { taps: 'M8×1.25, '.repeat(60) };
    const fat = Array.from({ length: MOST_DESIGNS }, (_, i) => ({
      name: `d${i}`,
      numbers: Object.fromEntries(Array.from({ length: 30 }, (_, k) => [`wings${k}`, long.taps])),
    }));
    expect(keepDesigns(fat).fault).toContain('more room than a file');
    expect(designs()).toEqual([]);
  });

  it('over an entry that is cut off keeps the new one', () => {
    kept.set(KEY, '{"format":"differential-screw-des');
    expect(readDesignStore().ok).toBe(false);
    expect(keepDesigns(many(1))).toEqual({ names: ['d0'], fault: '' });
    useDesign('d0');
    expect(designInUse()?.numbers.A).toBe('M8×1.25');
  });
});

describe('readings of a design', () => {
  const at = (design: string, page = 'calibrate') => readingsKey(design, page);
  const listed = (): Record<string, unknown> => {
    const stored: Record<string, unknown> = {
      getItem: (key: string) => stored[key] ?? null,
      setItem: (key: string, text: string) => void Object.assign(stored, { [key]: text }),
      removeItem: (key: string) => void delete stored[key],
    };
    return stored;
  };

  it('go into its file and come back from it, by page, and go with the design that is removed', () => {
    vi.stubGlobal('localStorage', listed());
    keepDesigns([
      { name: 'Foot', numbers: { A: 'M8×1.25' } },
      { name: 'Stop', numbers: { A: 'M12×1.5' } },
    ]);
    localStorage.setItem(at('Foot'), '{"shop.runs":"0; 0"}');
    localStorage.setItem(at('Foot 2'), '{"shop.runs":"9; 9"}');
    const text = shelfText();
    expect(JSON.parse(text).designs[0].readings).toEqual({ calibrate: { 'shop.runs': '0; 0' } });
    expect(JSON.parse(text).designs[1]).not.toHaveProperty('readings');
    removeDesign('Foot');
    expect(localStorage.getItem(at('Foot'))).toBe(null);
    expect(localStorage.getItem(at('Foot 2'))).toBe('{"shop.runs":"9; 9"}');
    const read = readDesigns(text);
    keepDesigns(read.ok ? read.value.designs : []);
    expect(localStorage.getItem(at('Foot'))).toBe('{"shop.runs":"0; 0"}');
    // What was measured here since is not written over by a file.
    localStorage.setItem(at('Foot'), '{"shop.runs":"1; 1"}');
    keepDesigns(read.ok ? read.value.designs : []);
    expect(localStorage.getItem(at('Foot'))).toBe('{"shop.runs":"1; 1"}');
  });

  it('are taken from a file as texts under keys of a page, and nothing else of them', () => {
    const file = (readings: unknown) =>
      JSON.stringify({
        format: DESIGN_FORMAT,
        version: DESIGN_VERSION,
        designs: [{ name: 'Foot', numbers: {}, readings }],
      });
    const taken = (readings: unknown) => {
      const read = readDesigns(file(readings));
      return read.ok ? read.value.designs[0]?.readings : undefined;
    };
    expect(
      taken({ calibrate: { 'shop.runs': '0; 0', 'shop runs': 'x', 'shop.n': 7 }, '../x': { 'a.b': 'c' } }),
    ).toEqual({
      calibrate: { 'shop.runs': '0; 0' },
    });
    for (const none of [undefined, null, 7, 'x', [], { calibrate: 7 }, { calibrate: { 'a.b': 'x'.repeat(500_000) } }])
      expect(taken(none)).toBeUndefined();
  });

  it('a file of version 2, which has none, is read on', () => {
    const read = readDesigns(
      JSON.stringify({ format: DESIGN_FORMAT, version: 2, designs: [{ name: 'Foot', numbers: { A: 'M8×1.25' } }] }),
    );
    expect(read.ok && read.value.designs).toEqual([{ name: 'Foot', numbers: { A: 'M8×1.25' } }]);
  });
});
