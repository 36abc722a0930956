/** The styles of figures: each stands with its figure, is on the pages of that figure only, and touches no other. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LAZY } from '../../widgets/figures/lazy.ts';
import { allStyles, packedStyles } from '../../widgets/site/styles.mjs';

const root = new URL('../../', import.meta.url);
const styles = allStyles().map((path) => ({ path, text: readFileSync(new URL(path, root), 'utf8') }));
const ofFigure = (path: string) => /^widgets\/figures\/(?!kit\/)([\w-]+)\//.exec(path)?.[1];

/** The selectors of a sheet, one by one, without its comments. */
const selectorsIn = (text: string): string[] =>
  [...text.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([^{}@;]+)\{/g)].flatMap((match) =>
    (match[1] ?? '').split(/,(?![^()]*\))/).map((selector) => selector.trim()),
  );

describe('the styles of figures', () => {
  const own = styles.flatMap(({ path, text }) => {
    const figure = ofFigure(path);
    return figure === undefined ? [] : [{ figure, selectors: selectorsIn(text) }];
  });

  it('stand with every figure of the book, and with no other', () => {
    const names = LAZY.map(({ name }) => name);
    expect(own.map(({ figure }) => figure).filter((figure) => !names.includes(figure))).toEqual([]);
    expect(own.length).toBeGreaterThan(20);
  });

  it('reach into no other figure, since both can stand on one page', () => {
    const classes = (selector: string) => [...selector.matchAll(/\.([\w-]+)/g)].map((match) => match[1]);
    const all = own.flatMap(({ figure, selectors }) => selectors.map((selector) => ({ figure, selector })));
    const reaching = all.flatMap(({ figure, selector }) => {
      const names = classes(selector);
      if (names.length === 0 || /[\s>[]/.test(selector)) return [];
      return all
        .filter((other) => other.figure !== figure)
        .filter((other) => names.every((name) => classes(other.selector.split(/[\s>]+/).at(-1) ?? '').includes(name)))
        .map((other) => `${figure}: ${selector} would style ${other.figure}: ${other.selector}`);
    });
    expect(reaching).toEqual([]);
  });

  it('reach into no paper, grid or plan for a class: the notebook in one file has all styles', () => {
    const folders = ['widgets/exercises/', 'widgets/client/papers/'];
    const sources = folders.flatMap((folder) =>
      readdirSync(new URL(folder, root))
        .filter((name) => name.endsWith('.ts'))
        .map((name) => readFileSync(new URL(folder + name, root), 'utf8')),
    );
    const ofPapers = new Set(
      sources.flatMap((text) => [...text.matchAll(/class="([\w -]+)/g)].flatMap(([, names = '']) => names.split(' '))),
    );
    expect(ofPapers).toContain('paper');
    const reaching = own
      .flatMap(({ figure, selectors }) => selectors.map((selector) => ({ figure, selector })))
      .filter(({ selector }) => /^(\.[\w-]+)+$/.test(selector))
      .filter(({ selector }) =>
        selector
          .slice(1)
          .split('.')
          .every((name) => ofPapers.has(name)),
      );
    expect(reaching).toEqual([]);
  });

  it('are on a page of their figure, and on no other', async () => {
    const { withFigures, all } = await packedStyles();
    expect(withFigures(['ramp'])).toContain('.ramp-line');
    expect(withFigures(['section'])).not.toContain('.ramp-line');
    expect(withFigures(['section'])).toContain('.knob');
    expect(withFigures([])).not.toContain('.knob');
    expect(all).toContain('.ramp-line');
    // What has the last word stands last.
    expect(withFigures(['ramp']).indexOf('.projector-bar')).toBeGreaterThan(
      withFigures(['ramp']).indexOf('.ramp-line'),
    );
  });
});
