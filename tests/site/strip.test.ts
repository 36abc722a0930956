/** What the page's scripts leave out: still all that a page needs, and loud where it no longer fits. */
import { build, type Plugin } from 'vite';
import { describe, expect, it } from 'vitest';
import { RELATIONS } from '../../widgets/engine/index.ts';
import { namedRelations, withoutPackages, withoutWords } from '../../widgets/site/strip.mjs';

const root = `${import.meta.dirname}/../..`;

/** One script out of a source text, with what the plugins leave out of it. */
const scriptOf = async (source: string, ...plugins: readonly Plugin[]): Promise<string> => {
  const entry = `${root}/widgets/strip-test.entry.js`;
  const built = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    plugins: [
      ...plugins,
      {
        name: 'entry',
        resolveId: (id) => (id === entry ? entry : undefined),
        load: (id) => (id === entry ? source : undefined),
      },
    ],
    build: {
      write: false,
      minify: false,
      modulePreload: false,
      rolldownOptions: { input: entry, output: { format: 'iife', codeSplitting: false } },
    },
  });
  const [bundle] = [built].flat();
  const chunk = bundle && 'output' in bundle ? bundle.output[0] : undefined;
  return chunk?.code ?? '';
};

const RELATIONS_USED = `import { RELATIONS } from './engine/index.ts'; globalThis.all = RELATIONS;`;

describe('a script without the words of relations', () => {
  it('works every relation as before and holds no source, sentence or formula of one', async () => {
    const code = await scriptOf(RELATIONS_USED, withoutWords(RELATIONS.length));
    const scope: { all?: typeof RELATIONS } = {};
    new Function('globalThis', code)(scope);
    expect(scope.all?.map((r) => [r.name, r.takes])).toEqual(RELATIONS.map((r) => [r.name, r.takes]));
    expect(code).not.toContain('h_C*L_C - h_A*L_A');
    for (const relation of RELATIONS) {
      expect(code, relation.name).not.toContain(JSON.stringify(relation.says));
      expect(code, relation.name).not.toContain(JSON.stringify(relation.source));
    }
    const net = scope.all?.find((r) => r.name === 'net-lead');
    expect(net?.of({ h_A: 1, L_A: 1.5, h_C: 1, L_C: 1.5875 })).toEqual({ ok: true, value: { Delta: 1.5875 - 1.5 } });
  });

  it('is refused where the number of relations found is not the number there is', async () => {
    await expect(scriptOf(RELATIONS_USED, withoutWords(RELATIONS.length + 1))).rejects.toThrow(
      `Left out the words of ${RELATIONS.length} relations, but there are ${RELATIONS.length + 1}`,
    );
  });
});

describe('a script whose relations are named', () => {
  it('has them all, in their order, and of their files nothing else that it does not use', async () => {
    const code = await scriptOf(RELATIONS_USED, namedRelations(RELATIONS.length));
    const scope: { all?: typeof RELATIONS } = {};
    new Function('globalThis', code)(scope);
    expect(scope.all?.map((r) => r.name)).toEqual(RELATIONS.map((r) => r.name));
    expect(await scriptOf(RELATIONS_USED)).toMatch(/\bsimulate = /);
    expect(code).not.toMatch(/\bsimulate = /);
  });

  it('is refused where the number of relations found is not the number there is', async () => {
    await expect(scriptOf(RELATIONS_USED, namedRelations(RELATIONS.length - 1))).rejects.toThrow(
      `Found ${RELATIONS.length} relations to name, but there are ${RELATIONS.length - 1}`,
    );
  });
});

describe('a script without packages that nothing reaches', () => {
  it('keeps what is named, and says which package is missing where something else is called after all', async () => {
    const code = await scriptOf(
      `import { geoTransform, geoPath } from 'd3-geo'; globalThis.kept = geoTransform({}); globalThis.left = geoPath;`,
      withoutPackages({ 'd3-geo': ['geoTransform'] }),
    );
    const scope: { kept?: unknown; left?: () => unknown } = {};
    new Function('globalThis', code)(scope);
    expect(scope.kept).toMatchObject({ stream: expect.any(Function) });
    expect(() => scope.left?.()).toThrow('d3-geo is left out of this notebook');
  });

  it('is refused where nothing imports the package any more', async () => {
    await expect(scriptOf('globalThis.none = 1;', withoutPackages({ 'd3-geo': [] }))).rejects.toThrow(
      'Nothing imports d3-geo any more',
    );
  });
});
