/** The tests of ideas: one right answer an item, results that go out and come back, and what remains in a class. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Found, ideasCsv, readIdeas, remaining, whatRemains } from '../../widgets/exercises/ideas.ts';
import { createDiagnostics } from '../../widgets/site/diagnostics.ts';
import { readIdeasBlock } from '../../widgets/site/ideas-block.ts';
import { reasonOf as reason } from '../../widgets/words/reason.ts';

const IDEAS = readFileSync(new URL('../../chapters/ideas.md', import.meta.url), 'utf8');
const blocks = [...IDEAS.matchAll(/```ideas ([a-z]+): (.*)\n([\s\S]*?)\n```/g)].map(
  ([, name = '', title = '', body = '']) => {
    const book = createDiagnostics('ideas');
    return { block: readIdeasBlock(name, title, body, 2, book), mistakes: book.mistakes };
  },
);

describe('the tests of ideas', () => {
  it('are one for each route, with items that find a misconception each and ask for no number', () => {
    const routes = /```routes\n([\s\S]*?)```/.exec(
      readFileSync(new URL('../../chapters/index.md', import.meta.url), 'utf8'),
    )?.[1];
    const names = [...(routes ?? '').matchAll(/^([A-Z][^:]*): /gm)].map(([, name]) => name);
    expect([...IDEAS.matchAll(/^## (.*)$/gm)].map(([, name]) => name)).toEqual(names);
    expect(blocks.flatMap((b) => b.mistakes)).toEqual([]);
    for (const { block } of blocks) {
      expect(block.items.length).toBeGreaterThanOrEqual(6);
      for (const { question, misconception, answers } of block.items) {
        expect(`${question} ${answers.map((a) => a.text).join(' ')}`).not.toMatch(/\d+(?:\.\d+)? ?(?:mm|µm|N\b|%)/);
        expect(misconception).toMatch(/\.$/);
      }
    }
  });

  it('are refused where an item lacks an answer or a name', () => {
    for (const body of [
      'x: Y.\nQ?\n+ a\n~ b\n~ c',
      'x: Y.\nQ?\n+ a\n+ b\n- c',
      'Q?\n+ a\n- b\n~ c',
      'x: Y.\n+ a\n- b\n~ c',
    ]) {
      const book = createDiagnostics('ideas');
      readIdeasBlock('tried', 'Tried', body, 2, book);
      expect(book.mistakes, body).toHaveLength(1);
    }
  });
});

describe('the results of a class', () => {
  const reader = (before: Found | undefined, after: Found | undefined, item = 'leads-add') =>
    ideasCsv([
      {
        route: 'pair',
        item,
        misconception: 'They add, "always", I think.',
        ...(before && { before }),
        ...(after && { after }),
      },
    ]);
  const rows = (text: string) => {
    const read = readIdeas(text);
    if (!read.ok) throw new Error(reason(read));
    return read.value;
  };

  it('come back as they went out, quotes and commas too', () => {
    expect(rows(reader('misconception', 'right'))).toEqual([
      {
        route: 'pair',
        item: 'leads-add',
        misconception: 'They add, "always", I think.',
        before: 'misconception',
        after: 'right',
      },
    ]);
    // Files put one after the other, from a table program with a mark at the head.
    expect(rows(`\ufeff${reader('right', undefined)}${reader(undefined, 'other')}`)).toHaveLength(2);
  });

  it('say how many still hold each idea, the most first', () => {
    const all = [
      ...rows(reader('misconception', 'right')),
      ...rows(reader('misconception', 'misconception')),
      ...rows(reader('misconception', undefined)),
      ...rows(reader('right', 'misconception', 'stroke')),
    ];
    expect(
      remaining(all).map(({ item, before, after }) => [item, before.held, before.of, after.held, after.of]),
    ).toEqual([
      ['stroke', 0, 1, 1, 1],
      ['leads-add', 3, 3, 1, 2],
    ]);
    expect(remaining([])).toEqual([]);
    expect(remaining(rows(reader('right', 'right', 'never'))).map(whatRemains)).toEqual(['unheld']);
    expect(remaining(rows(reader('misconception', 'right'))).map(whatRemains)).toEqual(['gone']);
    expect(remaining(all).map(whatRemains)).toEqual(['remains', 'remains']);
    expect(remaining(all)[1]?.after).toEqual({ of: 2, held: 1, right: 1 });
  });

  it('of another file are refused with a sentence', () => {
    for (const text of [
      '',
      'name,mark\nAda,3',
      `${reader('right', 'right')}pair,x,Y,maybe,right`,
      `${reader('right', 'right')},,,,`,
    ]) {
      const read = readIdeas(text);
      expect(read.ok ? '' : reason(read), text).toMatch(/ideas/);
    }
  });
});
