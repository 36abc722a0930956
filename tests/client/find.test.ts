/** Looking through the index of the search. */
import { describe, expect, it } from 'vitest';
import { find } from '../../widgets/client/find.ts';
import type { Findable } from '../../widgets/page/search-index.ts';

const entry = (title: string, text: string, kind: Findable['kind'] = 'section'): Findable => ({
  href: `${title}.html`,
  page: 'Page',
  title,
  text,
  kind,
});
const INDEX = [
  entry('Springs', 'A spring keeps one flank pressed. The net lead does not matter to a spring.'),
  entry('Net lead', 'What a turn moves the carried part.', 'term'),
  entry('Delta', 'chapter 2', 'symbol'),
  entry('The wave', `${'word '.repeat(60)}a periodic error of 10 \u00b5m comes once a turn ${'word '.repeat(60)}`),
];
const titles = (typed: string) => find(INDEX, typed).map(({ entry: { title } }) => title);

describe('find', () => {
  it('takes every word that was typed as the beginning of a word, whatever its capitals', () => {
    expect(titles('SPRI flan')).toEqual(['Springs']);
    expect(titles('spring wave')).toEqual([]);
    expect(titles('pring')).toEqual([]);
  });

  it('puts a term before a text that only uses it, and finds a symbol by its name', () => {
    expect(titles('net lead')).toEqual(['Net lead', 'Springs']);
    expect(titles('delta')).toEqual(['Delta']);
  });

  it('knows the micro sign in both spellings', () => {
    expect(titles('\u03bcm')).toEqual(titles('\u00b5m'));
    expect(titles('\u03bcm')).toEqual(['The wave']);
  });

  it('shows the words round the first that was found, what was typed in every second piece', () => {
    const [found] = find(INDEX, 'periodic err');
    expect(found?.around.filter((_, i) => i % 2 === 1)).toEqual(expect.arrayContaining(['periodic', 'error']));
    expect(found?.around.join('').length).toBeLessThan(220);
    expect(found?.around.join('')).toMatch(/^… /);
  });

  it('leaves the small words of a sentence out, and finds one where several were asked for', () => {
    expect(titles('what is a spring')).toEqual(titles('spring'));
    expect(titles('springs and flanks I have')).toEqual(['Springs']);
    expect(titles('waves')).toEqual(['The wave']);
    // What is all that was typed is looked for.
    expect(titles('what')).toEqual(['Net lead']);
    const marked = find(INDEX, 'is a flank').flatMap(({ around }) => around.filter((_, i) => i % 2 === 1));
    expect(marked).toEqual(['flank']);
  });

  it('lets the names of symbols not push the text out', () => {
    const many = Array.from({ length: 20 }, (_, i) => entry(`lead of thread ${i}`, 'chapter 2', 'symbol'));
    const kinds = find([...many, ...INDEX], 'lead').map(({ entry: { kind } }) => kind);
    expect(kinds).toContain('section');
    expect(kinds.filter((kind) => kind === 'symbol').length).toBeLessThan(6);
  });

  it('leads from another word of the trade to the term, before a text that has the word', () => {
    const [gauge, term] = [
      entry('A gauge', 'A gauge, and a gauge again.'),
      { ...entry('Lost motion', 'What is lost. Also: backlash, dead travel, gauge.', 'term'), also: 'backlash; gauge' },
    ];
    const found = (typed: string) => find([...INDEX, gauge, term], typed).map(({ entry: { title } }) => title);
    expect(found('backlash')).toEqual(['Lost motion']);
    expect(found('Backl')).toEqual(['Lost motion']);
    expect(find([term], 'backlash')[0]?.around).toContain('backlash');
    expect(found('gauge')).toContain('Lost motion');
  });

  it('finds nothing for no word, and for signs alone', () => {
    for (const typed of ['', '   ', '***', '(']) expect(titles(typed)).toEqual([]);
  });
});
