/**
 * What happens to a chapter with a mistake in it: the file, the exact line and one sentence on how to mend it. Each case
 * spoils one line of a chapter that is otherwise good.
 */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { blocksOf, CHAPTERS, mistakesIn, press } from '../support/chapters.ts';
import { howMany } from '../support/deep.ts';

/** A small chapter with one of everything. */
const GOOD = `# A chapter

::: goal
Say what the pair moves.
:::

Some words, a given {{ 2.5 µm }}, a name {{! 60° }} and algebra $Delta = h_C*L_C - h_A*L_A$. See
[below](#numbers) and so on.

\`\`\`figure section foot: The pair.
thread A = M10x1.5
thread C = 3/8-16
n = 1 from -4 to 4
arrangement = in line
lock = holds
\`\`\`

## Numbers

\`\`\`example turned with foot: Turned
net-lead = 87.50 µm # The difference.
net-motion = 87.50 µm
per-step(k = 6) = 14.58 µm
\`\`\`

The result is {{ turned.Delta = 87.50 µm }}.

\`\`\`predict with foot
How far does one turn move it?
net-lead = 87.50 µm
slip net-lead(h_A = -1) # You added the leads.
> The difference.
\`\`\`

\`\`\`derivation: The net lead
let z_t = -h_A*L_A*n            # thread A [turned-motion]
let z_r = h_C*L_C*n             # thread C [relative-motion]
let z_c = z_t + z_r             # it rides
let Delta = z_c/n               # per turn
Delta = h_C*L_C - h_A*L_A       # the net lead [net-lead]
\`\`\`

| a | b |
|---|---|
| one | two |

::: summary
That is all.
:::
`;

const lineOf = (text: string, part: string): number => text.slice(0, text.indexOf(part)).split('\n').length;

/** [what is wrong, the text that is spoilt, what takes its place, distinctive words, lines below the spoilt text] */
const CASES: readonly (readonly [string, string, string, RegExp, number?])[] = [
  [
    'a wrong expected number',
    'net-lead = 87.50 µm # The',
    'net-lead = 87.51 µm # The',
    /You expect 87\.51 µm; the engine’s net-lead gives 87\.50\sµm/,
  ],
  [
    'a digit too many, wrongly rounded',
    'per-step(k = 6) = 14.58 µm',
    'per-step(k = 6) = 14.584 µm',
    /You expect 14\.584 µm.*14\.583\sµm/,
  ],
  [
    'an expected number in the wrong unit',
    'net-motion = 87.50 µm',
    'net-motion = 87.50 thou',
    /You expect 87\.50 thou/,
  ],
  [
    'an expected number in a unit of another kind',
    'net-motion = 87.50 µm',
    'net-motion = 87.50 N',
    /in N; this takes mm, µm/,
  ],
  [
    'an expected number without a unit',
    'net-motion = 87.50 µm',
    'net-motion = 87.50',
    /“87\.50” has no unit; write for example “87\.50 µm”/,
  ],
  [
    'HTML in a sentence',
    'Some words, a given',
    '<b>Some words</b>, a given',
    /“<b>” would be printed as it stands, since HTML is not taken/,
  ],
  ['a step that expects nothing', 'net-motion = 87.50 µm', 'net-motion', /does not say what you expect/],
  [
    'a number in the reason of a step, which the reader may change',
    '# The difference.\nnet-motion',
    '# Less than {{! 0.1 mm }}.\nnet-motion',
    /The reason of this step states “0\.1”.*after #! in place of #/,
  ],
  [
    'a thread in the reason of a step',
    '# The difference.\nnet-motion',
    '# The difference. M10 goes down.\nnet-motion',
    /The reason of this step states “M10”/,
  ],
  [
    'a remark on a number, which is no step',
    'n = 1 from -4 to 4',
    'n = 1 from -4 to 4 #! turns',
    /Read “#! turns” as a unit/,
  ],
  [
    'a wrong number in a sentence',
    '{{ turned.Delta = 87.50 µm }}',
    '{{ turned.Delta = 87.4 µm }}',
    /You expect 87\.4 µm/,
  ],
  [
    'a sentence that names no example',
    '{{ turned.Delta',
    '{{ turnt.Delta',
    /No example is called “turnt”; did you mean turned\?/,
  ],
  [
    'a sentence that names no step',
    '{{ turned.Delta',
    '{{ turned.lambda',
    /has no step that gives lambda; it gives Delta/,
  ],
  [
    'a wrong sign in a derivation’s last line',
    'Delta = h_C*L_C - h_A*L_A       #',
    'Delta = h_C*L_C + h_A*L_A       #',
    /The two sides are not equal/,
  ],
  [
    'a wrong sign in a line that cites a relation',
    'let z_t = -h_A*L_A*n',
    'let z_t = h_A*L_A*n',
    /The engine’s turned-motion gives/,
  ],
  [
    'a length added to a number',
    'let z_c = z_t + z_r',
    'let z_c = z_t + 1',
    /adds or takes away things of different kinds/,
  ],
  [
    'a length that is no length',
    'let z_c = z_t + z_r',
    'let z_c = z_t*z_r',
    /z_c is motion of the carried part, in mm/,
  ],
  [
    'an unknown symbol in a derivation',
    'let z_c = z_t + z_r',
    'let z_c = z_t + zr',
    /“zr” is not a symbol of the engine’s glossary.*did you mean z_r\?/,
  ],
  [
    'a derivation line that can’t be parsed',
    'let z_c = z_t + z_r',
    'let z_c = z_t + * z_r',
    /is not algebra that can be read/,
  ],
  ['a derivation line without equals', 'let Delta = z_c/n', 'let Delta', /has no equals sign/],
  ['a derivation line without a reason', 'z_c/n               # per turn', 'z_c/n', /does not say why/],
  ['a derivation that arrives nowhere', '# the net lead [net-lead]', '# the net lead', /last line cites no relation/],
  [
    'a derivation that cites an unknown relation',
    '[net-lead]',
    '[nett-lead]',
    /“nett-lead” is not a relation of the engine; did you mean net-lead\?/,
  ],
  [
    'a derivation that cites a relation of something else',
    '[net-lead]',
    '[turned-motion]',
    /turned-motion does not give Delta/,
  ],
  ['an unknown relation', 'net-motion = 87.50', 'nett-motion = 87.50', /“nett-motion” is not a relation of the engine/],
  [
    'a binding the relation does not take',
    'per-step(k = 6) = 14.58',
    'per-step(q = 6) = 14.58',
    /per-step does not take “q”; it takes Delta, k/,
  ],
  ['a binding out of bounds', 'per-step(k = 6) = 14.58', 'per-step(k = 0) = 14.58', /steps per turn: read 0/i],
  ['a step without its inputs', 'per-step(k = 6) = 14.58', 'per-step = 14.58', /per-step has no result here.*Delta, k/],
  ['an unknown symbol among the numbers', 'n = 1 from -4 to 4', 'nn = 1 from -4 to 4', /“nn” is not a symbol/],
  ['a number out of its own bounds', 'n = 1 from -4 to 4', 'n = 9 from -4 to 4', /outside its own bounds/],
  [
    'a number out of the glossary’s bounds',
    'n = 1 from -4 to 4',
    'n = 1 from -4 to 4000',
    /give a value from −600 turns/,
  ],
  ['a number declared twice', 'n = 1 from -4 to 4', 'n = 1\nn = 2', /“n” is already one of the numbers of “foot”/, 1],
  ['an unreadable thread', 'thread C = 3/8-16', 'thread C = 3/8-1b6', /not a thread designation|after the size comes/],
  [
    'a choice that is none',
    'lock = holds',
    'lock = maybe',
    /“maybe” is not an option of lock; it is one of: holds, gives/,
  ],
  ['a line that is nothing', 'lock = holds', 'lock: holds', /is not a number/],
  [
    'an unknown widget',
    'figure section foot',
    'figure sektion foot',
    /There is no figure called “sektion”; did you mean “section”\?/,
  ],
  ['a number the widget misses', 'thread C = 3/8-16', '', /The figure “section” also needs: thread C/, -2],
  [
    'a figure that can’t be drawn',
    'arrangement = in line',
    'arrangement = nested',
    /can’t be drawn.*does not go inside/,
    -4,
  ],
  ['a step in a figure', 'lock = holds', 'lock = holds\nnet-lead = 87.50 µm', /A figure takes numbers, not steps/, 1],
  [
    'two examples of one name',
    '\n```predict with foot',
    '\n```example turned with foot: Again\nnet-lead = 87.50 µm\n```\n\n```predict with foot',
    /two examples called “turned”/,
    1,
  ],
  ['numbers declared twice', 'example turned with foot', 'example foot', /The numbers “foot” are declared above/],
  [
    'numbers that nothing declares',
    'predict with foot',
    'predict with feet',
    /No block above declares the numbers “feet”; /,
  ],
  ['an example without a title', 'turned with foot: Turned', 'turned with foot', /has no title/],
  [
    'a block head that can’t be read',
    '```predict with foot',
    '```predict using the foot',
    /“predict using the foot” can’t be read/,
  ],
  [
    'a prediction without an answer',
    'net-lead = 87.50 µm\nslip',
    'slip',
    /A prediction needs a question, and under it/,
    -2,
  ],
  ['a slip equal to the answer', 'slip net-lead(h_A = -1)', 'slip net-lead(h_A = 1)', /right answer within 2 %/],
  [
    'a slip as good as the answer',
    'slip net-lead(h_A = -1)',
    'slip net-lead(L_C = 1.589 mm)',
    /right answer within 2 %/,
  ],
  ['a slip that says nothing', ' # You added the leads.', '', /A slip says what went wrong/],
  ['a dead link to a chapter', '(#numbers)', '(44-nowhere.md)', /./],
  [
    'a figure typed into prose',
    'and so on.',
    'by 14.58 µm or so.',
    /“14\.58 µm” is typed by hand; write \{\{ 14\.58 µm \}\}/,
  ],
  ['an angle typed into a table', '| one | two |', '| one | 30° |', /“30°” is typed by hand/],
  ['a figure typed into a caption', 'foot: The pair.', 'foot: The pair moves 87 µm.', /“87 µm” is typed by hand/],
  [
    'a figure typed into a question',
    'How far does one turn move it?',
    'How far does\n30° move it?',
    /“30°” is typed/,
    1,
  ],
  ['a figure typed into an answer', '> The difference.', '> All of 87 µm.', /“87 µm” is typed by hand/],
  ['a figure typed into a reason', '# The difference.', '# All of 1.5 mm.', /The reason of this step states “1\.5”/],
  ['a figure typed into a derivation’s reason', '# it rides', '# it rides 1.5 mm', /“1\.5 mm” is typed by hand/],
  ['a wrong value in a reason', '# The difference.', '# {{ turned.Delta = 80 µm }}', /You expect 80 µm/],
  ['a brace that is never closed', '{{! 60° }}', '{{! sixty', /“\{\{” has no partner/],
  ['a value that is no quantity', '{{ 2.5 µm }}', '{{ about two }}', /“about two” is not a quantity/],
  [
    'bad algebra between dollars',
    '$Delta = h_C*L_C - h_A*L_A$',
    '$Delta = h_C*L_C -$',
    /is not algebra that can be set/,
  ],
  [
    'an unknown symbol between dollars',
    '$Delta = h_C*',
    '$Detla = h_C*',
    /“Detla” is not a symbol.*did you mean Delta\?/,
  ],
  ['a picture from elsewhere', 'and so on.', '![x](https://example.com/x.png)', /Pictures from files are not taken/],
  ['a box that is none', '::: summary', '::: sumary', /“::: sumary” opens no box; did you mean summary\?/],
  ['bounds by a misspelt word', 'n = 1 from -4 to 4', 'n = 1 form -4 to 4', /write it like n = 1 from LEAST to MOST/],
  [
    'an option that is nearly one',
    'lock = holds',
    'lock = hold',
    /“hold” is not an option of lock; did you mean holds\?/,
  ],
  ['a choice of no known name', 'lock = holds', 'lok = holds', /“lok” is not a symbol.*did you mean lock\?/],
  ['a block that is none', '```example turned with', '```exampel turned with', /is no block; did you mean “example”\?/],
  ['a unit that is none', '87.50 µm # The', '87.50 mym # The', /Read “mym” as a unit/],
  ['a fold without a title', '::: summary', '::: more', /Say behind “::: more” what is folded/],
  ['no title', '# A chapter\n', '\n', /The chapter has no title/],
];

describe('a chapter', () => {
  it('with one of everything has no mistakes', () => {
    expect(mistakesIn(GOOD)).toEqual([]);
  });

  for (const [what, part, spoilt, words, below = 0] of CASES)
    if (!/dead link/.test(what))
      it(`with ${what} is refused at its line`, () => {
        expect(GOOD).toContain(part);
        const text = GOOD.replace(part, () => spoilt);
        const found = mistakesIn(text).filter((m) => words.test(m.says));
        expect(
          found.map((m) => m.says),
          mistakesIn(text)
            .map((m) => `${m.line} ${m.says}`)
            .join('\n'),
        ).not.toEqual([]);
        const breaks = part.length - part.trimStart().length;
        expect(found[0]?.line).toBe(lineOf(GOOD, part) + (breaks > 0 && spoilt.startsWith('\n') ? below : below));
        expect(found[0]?.file).toBe('chapters/99-test.md');
        expect(found[0]?.says).toMatch(/^.{25,}[.…?]$/s);
      });

  it('with a fence that is never closed is refused at the fence, and the rest of the chapter is not mistaken for it', () => {
    for (const opening of ['```figure section foot', '```example turned', '```predict with foot', '```derivation']) {
      const from = GOOD.indexOf(opening);
      const text = `${GOOD.slice(0, from)}${GOOD.slice(from).replace('\n```\n', '\n').split('\n```')[0]}\n`;
      const at = mistakesIn(text).find((m) => /never closed/.test(m.says));
      expect(at?.line, opening).toBe(lineOf(GOOD, opening));
    }
  });

  it('with a fence that runs on into the next block is told that once, and nothing of what it has swallowed', () => {
    expect(mistakesIn(GOOD.replace('lock = holds\n```\n', 'lock = holds\n'))).toEqual([
      {
        file: 'chapters/99-test.md',
        line: lineOf(GOOD, '```figure section foot'),
        says: `This block is still open where another opens in line ${lineOf(GOOD, '```example turned') - 1}; end it before that with a line \`\`\`.`,
      },
    ]);
  });

  it('with plain code that is never closed is refused too', () => {
    expect(mistakesIn('# T\n\nText.\n\n```text\nM10\n')).toEqual([
      { file: 'chapters/99-test.md', line: 5, says: 'This block is never closed; end it with a line ```.' },
    ]);
  });

  it('with a box that is never closed is refused at the box', () => {
    expect(mistakesIn('# T\n\n::: caution\nMind your hands.\n')).toEqual([
      { file: 'chapters/99-test.md', line: 3, says: 'This box is never closed; end it with a line :::.' },
    ]);
  });

  it('with a box that is not closed before the next one opens is refused at the open one, which would swallow the rest', () => {
    const text = GOOD.replace('pair moves.\n:::\n', 'pair moves.\n');
    expect(mistakesIn(text)).toEqual([
      {
        file: 'chapters/99-test.md',
        line: lineOf(GOOD, '::: goal'),
        says: `This box is still open where another opens in line ${lineOf(text, '::: summary')}; end it before that with a line :::.`,
      },
    ]);
    const two = '# T\n\n::: caution\nOne.\n\n::: note\nTwo.\n\n::: summary\nThree.\n:::\n';
    expect(mistakesIn(two).map(({ line }) => line)).toEqual([3, 6]);
  });

  it('with a misspelt box is told of it once, and of a close that closes nothing too', () => {
    expect(mistakesIn(GOOD.replace('::: summary', '::: sumary')).length).toBe(1);
    expect(mistakesIn(GOOD.replace('::: summary', '::: sumary').replace('is all.', 'is all.\n')).length).toBe(1);
    expect(mistakesIn('# T\n\nText.\n\n:::\n')).toEqual([
      {
        file: 'chapters/99-test.md',
        line: 5,
        says: 'This line ::: closes no box; take it away, or open a box above it.',
      },
    ]);
  });

  it('with boxes and blocks in a list or nested in one another is not mistaken for an open one', () => {
    expect(mistakesIn('# T\n\n- one\n\n  ```text\n  M10\n  ```\n\n:::: note\n::: caution\nMind.\n:::\n::::\n')).toEqual(
      [],
    );
  });

  it('with one mistake is told of it once: what has no result for want of it is no mistake of its own', () => {
    /** Two mistakes, or a name that is then missed where it is asked for. */
    const MORE = [
      'a dead link to a chapter',
      'numbers declared twice',
      'a wrong value in a reason',
      'a block that is none',
    ];
    for (const [what, part, spoilt] of CASES)
      if (!MORE.includes(what))
        expect(mistakesIn(GOOD.replace(part, () => spoilt)).map((m) => `${what}, ${m.line}: ${m.says}`)).toHaveLength(
          1,
        );
  });

  it('shows every mistake at once, not only the first', () => {
    const text = GOOD.replace('lock = holds', 'lock = maybe')
      .replace('87.50 µm # The', '87.6 µm # The')
      .replace('z_t + z_r', 'z_t - z_r');
    expect(mistakesIn(text).length).toBeGreaterThanOrEqual(3);
  });
});

describe('a link', () => {
  it('to a chapter that is not there, or to a heading that is not there, is refused at its line', async () => {
    const { mkdtempSync, rmSync, writeFileSync } = await import('node:fs');
    const { tmpdir } = await import('node:os');
    const { join } = await import('node:path');
    const { readBook } = await import('../../widgets/site/book.ts');
    const { FIGURES } = await import('../../widgets/site/catalogue.ts');
    const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
    try {
      writeFileSync(join(folder, 'index.md'), '# Front\n\nSee [one](01-one.md) and [its end](01-one.md#end).\n');
      writeFileSync(
        join(folder, '01-one.md'),
        '# One\n\nWords\nand [a dead one](02-two.md),\nand [a wrong heading](#ned) and [out](https://example.com/).\n\n## End\n\n| a |\n|---|\n| [cell](03-three.md) |\n',
      );
      expect(readBook(folder, FIGURES).mistakes.map((m) => [m.file, m.line, m.says.slice(0, 40)])).toEqual([
        ['chapters/01-one.md', 4, 'The link “02-two.md” leads nowhere; chap'],
        ['chapters/01-one.md', 5, 'The link “#ned” names a heading that is '],
        ['chapters/01-one.md', 11, 'The link “03-three.md” leads nowhere; ch'],
      ]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe('a chapter put between two others', () => {
  it('takes its place, those after it are numbered on, and links to them by their old names still lead there', async () => {
    const { mkdtempSync, rmSync, writeFileSync } = await import('node:fs');
    const { tmpdir } = await import('node:os');
    const { join } = await import('node:path');
    const { readBook } = await import('../../widgets/site/book.ts');
    const { FIGURES } = await import('../../widgets/site/catalogue.ts');
    const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
    const example = '```example foot: Foot\nthread A = M10x1.5\nthread C = 3/8-16\nnet-lead = 87.50 µm\n```\n';
    try {
      writeFileSync(join(folder, 'index.md'), '# Front\n\n[one](01-one.md), [new](01b-new.md), [two](02-two.md)\n');
      writeFileSync(join(folder, '01-one.md'), `# One\n\n${example}`);
      writeFileSync(join(folder, '02-two.md'), `# Two\n\n${example}\nSee [](01b-new.md#example-foot).\n`);
      writeFileSync(join(folder, '01b-new.md'), `# New\n\n${example}`);
      const { places, mistakes, rendered } = readBook(folder, FIGURES);
      expect(mistakes).toEqual([]);
      expect(places.map(({ slug, number }) => [slug, number])).toEqual([
        ['index', undefined],
        ['one', 1],
        ['new', 2],
        ['two', 3],
      ]);
      expect([...(rendered.get('two')?.labels.values() ?? [])].join()).toContain('3.1');
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe('markup that could run', () => {
  const EVIL = '<script>alert(1)</script><img src=x onerror=alert(1)>';

  it('comes out as text wherever an author can write', () => {
    const places = [
      ['Say what the pair moves.', EVIL],
      ['foot: The pair.', `foot: ${EVIL}`],
      ['foot: Turned', `foot: ${EVIL}`],
      ['# The difference.', `# ${EVIL}`],
      ['How far does one turn move it?', EVIL],
      ['> The difference.', `> ${EVIL}`],
      ['# You added the leads.', `# ${EVIL}`],
      ['derivation: The net lead', `derivation: ${EVIL}`],
      ['# it rides', `# ${EVIL}`],
      ['from -4 to 4', `from -4 to 4 # ${EVIL}`],
      ['{{! 60° }}', `{{! ${EVIL} }}`],
      ['{{ 2.5 µm }}', `{{ ${EVIL} }}`],
      ['## Numbers', `## Numbers ${EVIL}`],
      ['| one | two |', `| one | ${EVIL} |`],
      ['(#numbers)', '(javascript:alert(1))'],
      ['(#numbers)', '(data:text/html,<script>alert(1)</script>)'],
      ['```example turned', `\`\`\`${EVIL}`],
    ] as const;
    for (const [part, evil] of places) {
      expect(GOOD).toContain(part);
      const { html, model, title, goal } = press(GOOD.replace(part, () => evil));
      const { document } = parseHTML(`<!doctype html><html><body>${html}</body></html>`);
      expect(document.querySelectorAll('script, img, iframe, object, embed').length, part).toBe(0);
      for (const e of document.querySelectorAll('*'))
        for (const name of e.getAttributeNames()) expect(name, part).not.toMatch(/^on/);
      for (const a of document.querySelectorAll('a[href]'))
        expect(a.getAttribute('href'), part).not.toMatch(/^(?:javascript|data|vbscript):/i);
      expect(JSON.stringify([model, title, goal]).length).toBeGreaterThan(10);
    }
  });

  it('can’t leave the page’s data or its head either', async () => {
    const { pageHtml } = await import('../../widgets/site/page.ts');
    const text = GOOD.replace('# A chapter', `# ${EVIL}`)
      .replace('from -4 to 4', `from -4 to 4 # </script>${EVIL}`)
      .replace('Say what the pair moves.', `"><script>alert(1)</script>`);
    const pressed = press(text);
    const place = { slug: 'test', title: pressed.title, goal: pressed.goal, kind: 'chapter' as const, number: 1 };
    const html = pageHtml(pressed, place, [place], {
      scripts: [],
      style: { text: () => '' },
      icon: 'i.svg',
      module: false,
    });
    const { document } = parseHTML(html);
    // Two pieces of data and no script: what the page is, and its model.
    expect([...document.querySelectorAll('script')].map((s) => s.type)).toEqual([
      'application/ld+json',
      'application/json',
    ]);
    expect(JSON.parse(document.getElementById('page-model')?.textContent ?? '')).toEqual(pressed.model);
    expect(document.querySelectorAll('img').length).toBe(0);
  });

  it('runs nothing that algebra could name: functions, imports and assignments are refused', () => {
    for (const evil of [
      'import("x")',
      'f(x) = x',
      'a.constructor',
      '[1, 2]',
      '"text"',
      'createUnit("q")',
      'L_A := 3',
      'x ? 1 : 2',
    ])
      expect(
        mistakesIn(`# T\n\nSo $${evil}$.\n`).map((m) => m.line),
        evil,
      ).toEqual([3]);
  });
});

describe('the real chapters, spoilt', () => {
  it('are red when the sign in any line of any derivation is flipped', () => {
    let found = 0;
    let flipped = 0;
    for (const { file, text } of CHAPTERS) {
      const lines = text.split('\n');
      for (const { lines: body, opening } of blocksOf(text, 'derivation')) {
        // Only this derivation is pressed again, in a chapter of its own, which is quick.
        for (const [i, line] of body.entries()) {
          const [algebra = '', comment = ''] = line.split(/\s#\s/);
          for (const at of [...algebra.matchAll(/[+-]/g)].map((m) => m.index)) {
            // Every fifteenth stands for the others but in a deep run.
            if (found++ % howMany(15, 1) > 0) continue;
            const other = algebra[at] === '-' ? '+' : '-';
            const spoilt = `${algebra.slice(0, at)}${other}${algebra.slice(at + 1)} # ${comment}`;
            const chapter = `# T\n\n\`\`\`derivation: D\n${body.with(i, spoilt).join('\n')}\n\`\`\`\n`;
            expect(lines[opening + i]).toBe(line);
            expect(mistakesIn(chapter), `${file}:${opening + 1 + i}: ${spoilt}`).not.toEqual([]);
            flipped++;
          }
        }
      }
    }
    expect(flipped).toBeGreaterThanOrEqual(howMany(4, 12));
  }, 120_000);

  it('are red when the last digit of any expected value of a worked example is moved by two', () => {
    let moved = 0;
    for (const { file, text } of CHAPTERS.filter((_, i) => i % howMany(9, 1) === 0)) {
      const lines = text.split('\n');
      const spots = blocksOf(text, 'example').flatMap((b) =>
        b.lines.flatMap((line, i) => {
          const digit = /=\s*[-−]?[\d.]*(\d)(?=[^\d=]*(?:#.*)?$)/.exec(line.replace(/\s#\s.*/, ''));
          return /^[a-z]+-?[a-z-]*[ (]/.test(line) && /->|^[a-z]+-|^lead|^gain|^stroke|^advance/.test(line) && digit
            ? [{ at: b.opening + i, index: digit.index + digit[0].length - 1 }]
            : [];
        }),
      );
      // All at once: each must be named at its own line.
      const spoilt = [...lines];
      for (const { at, index } of spots) {
        const line = spoilt[at] ?? '';
        spoilt[at] = `${line.slice(0, index)}${(Number(line[index]) + 2) % 10}${line.slice(index + 1)}`;
        moved++;
      }
      const named = new Set(
        press(spoilt.join('\n'), file)
          .mistakes.filter((m) => /You expect/.test(m.says))
          .map((m) => m.line),
      );
      for (const { at } of spots) expect(named.has(at + 1), `${file}:${at + 1}: ${spoilt[at]}`).toBe(true);
    }
    expect(moved).toBeGreaterThanOrEqual(howMany(8, 30));
  }, 120_000);
});

describe('the reason of a step', () => {
  const lineOf = (reason: string): string => {
    const { html, mistakes } = press(
      GOOD.replace('net-lead = 87.50 µm # The difference.\n', `net-lead = 87.50 µm${reason}\n`),
    );
    expect(mistakes).toEqual([]);
    const why = parseHTML(`<body>${html}</body>`).document.querySelector('#example-turned .why');
    return [...(why?.childNodes ?? [])]
      .map((n) => `${n.nodeType === 3 ? '' : (n as Element).hasAttribute('data-own') ? '!' : '?'}${n.textContent}`)
      .join('|');
  };

  it('stands for any numbers; a remark on the chapter’s own is marked, and has the relation’s sentence behind it', () => {
    expect(lineOf(' # The difference.')).toBe('The difference.');
    expect(lineOf('')).toMatch(/^Net lead/);
    expect(lineOf(' # The difference. #! Up, by {{! 0.1 mm }} at most.')).toBe(
      'The difference. |!Up, by 0.1 mm at most.',
    );
    expect(lineOf(' #! Thread C is the coarser.')).toMatch(/^!Thread C is the coarser\.\|\?Net lead/);
  });

  it('may state a number that follows the reader’s, or stands in algebra', () => {
    expect(lineOf(' # It is {{ now foot: net-lead = 87.50 µm }}, from $2*pi$.')).toContain('87.50');
  });
});
