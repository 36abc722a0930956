/** Which script carries which module: once where it matters, and on every page only what every page needs. */
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../widgets/site/lent.mjs';

const file = (path: string) => resolve(import.meta.dirname, '../../widgets', path);
const takes = (names: string, path: string) => `import { ${names} } from './widgets/${path}';`;
const libraries = { plots: '@observablehq/plot' };

const holdersOf = (plan: ReturnType<typeof planOf>, path: string, name: string): readonly string[] =>
  [...plan.holders].filter(([, files]) => files.get(file(path))?.has(name)).map(([holder]) => holder);

const KNOB = 'figures/kit/knob.ts';
const STORAGE = 'client/storage.ts';

describe('a name that late scripts take', () => {
  it('is lent by the page where the page has it, whether one takes it or two', () => {
    const kept = new Map([[file(KNOB), { names: ['knobSvg'], code: '' }]]);
    const plan = planOf({ late: { one: takes('knobSvg', KNOB) }, kept, libraries });
    expect(holdersOf(plan, KNOB, 'knobSvg')).toEqual(['page']);
    // The page keeps it for itself, by whatever keyword, and no other script imports it.
    const inner = new Map([[file(KNOB), { names: [], code: 'const knobSvg = 1;' }]]);
    expect(
      holdersOf(planOf({ late: { one: takes('knobSvg', KNOB) }, kept: inner, libraries }), KNOB, 'knobSvg'),
    ).toEqual(['page']);
  });

  it('stands in the script of one, and in the shared one where two take it', () => {
    const late = { one: takes('knobSvg, mountKnob', KNOB), two: takes('mountKnob', KNOB) };
    const plan = planOf({ late, kept: new Map(), libraries });
    expect(holdersOf(plan, KNOB, 'knobSvg')).toEqual([]);
    expect(holdersOf(plan, KNOB, 'mountKnob')).toEqual(['figures']);
  });

  it('is found in the file that defines it, behind the one entry of the engine', () => {
    const late = { one: takes('netLead', 'engine/index.ts'), two: takes('netLead', 'engine/index.ts') };
    expect(holdersOf(planOf({ late, kept: new Map(), libraries }), 'engine/pair/differential.ts', 'netLead')).toEqual([
      'figures',
    ]);
  });

  it('goes with the package that its file needs', () => {
    const late = {
      one: takes('chartSvg', 'figures/kit/plots/chart.ts'),
      two: takes('chartSvg', 'figures/kit/plots/chart.ts'),
    };
    const plan = planOf({ late, kept: new Map(), libraries });
    expect(holdersOf(plan, 'figures/kit/plots/chart.ts', 'chartSvg')).toEqual(['plots']);
    expect(
      holdersOf(planOf({ late, kept: new Map(), libraries: {} }), 'figures/kit/plots/chart.ts', 'chartSvg'),
    ).toEqual(['figures']);
  });
});

describe('a module that remembers', () => {
  it('is lent by the page as a whole where the page has its memory', () => {
    const kept = new Map([[file(STORAGE), { names: [], code: 'const held = /* @__PURE__ */ new Map();' }]]);
    const plan = planOf({ late: { one: takes('readStored', STORAGE) }, kept, libraries });
    expect(holdersOf(plan, STORAGE, 'readStored')).toEqual(['page']);
  });

  it('is shared as a whole where two scripts take different names of it', () => {
    const late = { one: takes('readStored', STORAGE), two: takes('writeStored', STORAGE) };
    const plan = planOf({ late, kept: new Map(), libraries });
    expect(['readStored', 'writeStored'].map((name) => holdersOf(plan, STORAGE, name))).toEqual([
      ['figures'],
      ['figures'],
    ]);
  });
});
