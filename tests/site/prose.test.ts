/** The book and the tables of words read easily, and whoever writes a hard word is told where and what to write. */
import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { diagnosticText } from '../../widgets/site/diagnostics.ts';
import {
  countProse,
  LONGEST,
  longSentences,
  MOST_IN_VIEW,
  MOST_SYMBOLS,
  piecesOf,
  proseFaults,
  sentencesOf,
} from '../../widgets/site/prose.ts';
import { readingOrder, termsOf, termsTooEarly } from '../../widgets/site/term-order.ts';

const root = resolve(import.meta.dirname, '../..');
const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(resolve(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`);
/** All but the words that a reader may look for, which the notebook does not say itself. */
const FILES = [...filesIn('chapters', '.md'), ...filesIn('widgets/words', '.ts')].filter(
  (file) => !file.endsWith('/other-words.ts'),
);
const isGerman = (file: string): boolean => /\/de\//.test(file);

const saysOf = (text: string, file = 'chapters/99-test.md'): string[] =>
  proseFaults(file, text).map(({ line, says }) => `${line}: ${says}`);
const words = (count: number): string => `${Array.from({ length: count }, () => 'word').join(' ')}.`;

describe('the text of the notebook', () => {
  for (const file of FILES.filter((one) => !isGerman(one)))
    it(`reads easily in ${file}`, () => {
      expect(proseFaults(file, readFileSync(resolve(root, file), 'utf8')).map(diagnosticText)).toEqual([]);
    });
});

describe('the terms of the glossary', () => {
  const textOf = (file: string): string => readFileSync(resolve(root, file), 'utf8');
  const terms = termsOf(textOf('chapters/glossary.md'));
  const order = readingOrder(textOf('chapters/index.md'));

  it('are explained in chapters that the map of the front page leads to', () => {
    expect(terms.length).toBeGreaterThan(50);
    expect(terms.filter(({ home }) => !order.includes(home))).toEqual([]);
  });

  for (const file of FILES.filter((one) => one.endsWith('.md') && !isGerman(one)))
    it(`are not used before they are explained in ${file}`, () => {
      expect(termsTooEarly(file, textOf(file), terms, order).map(diagnosticText)).toEqual([]);
    });

  it('are found in sentences, not in labels and derivations, until they are set bold or lead to where they are explained', () => {
    const [glossary, map] = [
      '- **Gain**: how many times. See [Gain](02-b.md).\n',
      '```routes\nAll: of it.\n01-a.md\n02-b.md needs 01-a.md\n```\n',
    ];
    const early = (text: string, file = 'chapters/01-a.md'): string[] =>
      termsTooEarly(file, text, termsOf(glossary), readingOrder(map)).map(diagnosticText);
    expect(early('One.\n\nThe gains are large.')).toEqual([
      expect.stringMatching(/01-a\.md:3: “gain” is explained later/),
    ]);
    expect(early('Nothing against it.\n\n```figure a b: A.\nG = 3 # gain\n```')).toEqual([]);
    expect(early('The **gain** says how many times.\n\nThe gain is large.')).toEqual([]);
    expect(early('The [gain](02-b.md#gain) is large.')).toEqual([]);
    expect(early('The gain is large.', 'chapters/02-b.md')).toEqual([]);
  });
});

describe('the German text', () => {
  it('has no longer sentence than the English one, whose other rules are not of German', () => {
    const files = FILES.filter(isGerman);
    expect(files.length).toBeGreaterThan(50);
    expect(
      files.flatMap((file) => longSentences(file, readFileSync(resolve(root, file), 'utf8')).map(diagnosticText)),
    ).toEqual([]);
  });
});

describe('proseFaults', () => {
  it('names file, line and the better word', () => {
    expect(proseFaults('chapters/99-test.md', 'One.\n\nAt nought it\nstands.').map(diagnosticText)).toEqual([
      'chapters/99-test.md:3: “nought”: write zero.',
    ]);
  });

  it.each([
    ['a paragraph', 'Two\nlines with a drunken thread.'],
    ['a list', '- one\n- much slack'],
    ['a cell', '| a | b |\n|---|---|\n| c | the slop of it |'],
    ['a caption', '```figure ramp a: A thread that wanders.\n```'],
    ['a reason', '```example a: A\nlead = 1 mm # Hardly more.\n```'],
    ['a remark', '```example a: A\nlead = 1 mm # More. #! Hardly more.\n```'],
    ['a question', '```predict a\nthread A = M10x1.5\nHow far does it move, besides?\n```'],
    ['a slip', '```predict a\nslip net-lead(h_A = -1) # You forgot the slack.\n```'],
    ['an answer', '```predict a\n> At nought.\n```'],
    ['a hint', '```exercise a: A\nhint Divide by nought.\n```'],
    ['a derivation', '```derivation: A\nlet z = L*n # likewise\n```'],
  ])('finds a hard word in %s', (_, text) => {
    expect(saysOf(text)).toHaveLength(1);
  });

  it('leaves names in code, values and links alone', () => {
    expect(
      saysOf('Write `M10x1.5` or {{ now foot: lock-slop = 1 µm }}, as [there](08-a.md#the-drunken-thread).'),
    ).toEqual([]);
    expect(saysOf('Write M10x1.5.')).toHaveLength(1);
  });

  it(`finds a sentence of more than ${LONGEST} words, a formula and a value counting as one each`, () => {
    expect(saysOf(words(LONGEST))).toEqual([]);
    expect(saysOf(words(LONGEST + 1))).toHaveLength(1);
    expect(saysOf(words(LONGEST).replace('word word', '$2*pi + 1 + 1$ {{ a.Delta = 1 µm }}'))).toEqual([]);
    expect(saysOf(`${words(LONGEST)} ${words(LONGEST)}`)).toEqual([]);
  });

  it('finds a symbol in a sentence before the chapter has met it, by its words, as a number or in a derivation', () => {
    expect(saysOf('It uses $G$ millimetres.')).toHaveLength(1);
    expect(saysOf('The gain $G$ says how much it uses.\n\nIt uses $G$ millimetres.')).toEqual([]);
    expect(
      saysOf('```derivation: A\nlet G = L/abs(Delta) # one over the other\n```\n\nIt uses $G$ millimetres.'),
    ).toEqual([]);
    expect(saysOf('```figure a b: A.\npsi = 1°\n```\n\nThen $psi$ is small.')).toEqual([]);
  });

  it('finds a sign that stands for two things in a chapter', () => {
    const both = '```figure a b: A.\nx_s = 1 mm\n```\n\nThe place $x_s$ and the travel $x_w$ of the wedge.';
    expect(saysOf(both)).toEqual([]);
    // Both the first force of three and the first of two readings are written F₁.
    expect(saysOf('```example a: A\nF_1 = 1 N\nF_r1 = 2 N\n```')).toEqual([
      expect.stringMatching(/^3: F_1 is force at the first reading here and load on the first foot above/),
    ]);
  });

  /** A sentence with so many symbols, each named by the derivation above it, which is folded. */
  const holding = (symbols: readonly string[]): string => `Now ${symbols.map((s) => `$${s}$`).join(', ')}.`;
  const MANY = 'F M G d P S X c j k l m n s u'.split(' ');
  const met = `\`\`\`figure a b: A.\n${MANY.map((s) => `${s} = 1`).join('\n')}\n\`\`\`\n\n`;

  it(`finds more than ${MOST_IN_VIEW} symbols in one section, and more than ${MOST_SYMBOLS} in a chapter`, () => {
    const [first, second] = [MANY.slice(0, MOST_IN_VIEW), MANY.slice(MOST_IN_VIEW, MOST_SYMBOLS)];
    const two = `${met}${holding(first)}\n\n## Then\n\n${holding(second)}`;
    expect(saysOf(two)).toEqual([]);
    expect(saysOf(`${met}${holding(MANY.slice(0, MOST_IN_VIEW + 1))}`)).toEqual([
      expect.stringContaining(`${MOST_IN_VIEW + 1} symbols in one section`),
    ]);
    expect(saysOf(`${two}\n\n## Last\n\n${holding(MANY.slice(MOST_SYMBOLS, MOST_SYMBOLS + 1))}`)).toEqual([
      expect.stringContaining(`${MOST_SYMBOLS + 1} symbols in the main line`),
    ]);
  });

  it('counts the line at which a long derivation arrives and not its folded steps, and numbered places as one', () => {
    const steps =
      '```derivation: A\nlet z_t = -h_A*L_A*n # a\nlet z_r = h_C*L_C*n # b\nlet z_c = z_t + z_r # c\nDelta = z_c/n # d\n```';
    expect(countProse(steps, new Set()).inMain).toBe(3);
    expect(countProse(steps.replace('let z_t = -h_A*L_A*n # a\n', ''), new Set()).inMain).toBe(7);
    expect(countProse('From $x_1$ to $x_2$ and $x_3$.', new Set()).inMain).toBe(1);
  });

  it('reads the sentences of a table of words, each part of a refusal alone, those in slots too, and neither code nor comments', () => {
    const slot = ['$', "{slack('nought a b')}"].join('');
    const table = `/** At nought. */\nconst nought = { slack: () => \`Read ${slot} at nought; give one.\` };`;
    expect(saysOf(table, 'widgets/words/en/refusals/a.ts')).toEqual([
      '2: “nought”: write zero.',
      '2: “nought”: write zero.',
    ]);
    const parts = `const a = '${[words(20), words(20)].join(' ').replace('. ', '; ')}';`;
    expect(saysOf(parts, 'widgets/words/en/refusals/a.ts')).toEqual([]);
  });
});

describe('countProse', () => {
  it('counts words, the longest and the median sentence, symbols in the main line, in a section and in all, and terms new to the book', () => {
    const known = new Set(['lead']);
    const chapter =
      'The **lead** $L$ is one turn. The **gain** $G$ is more.\n\nYes.\n\n```derivation: Why\nlet G = L/abs(Delta) # one over the other\n```\n';
    expect(countProse(chapter, known)).toEqual({
      words: 17,
      longest: 6,
      median: 4,
      inMain: 3,
      inView: 3,
      inAll: 3,
      terms: ['gain'],
    });
    expect(known.has('gain')).toBe(true);
  });
});

describe('piecesOf', () => {
  it('keeps a derivation apart, since it is read by whoever asks why', () => {
    const pieces = piecesOf('One.\n\n```derivation: Why\nlet G = L/abs(Delta) # a reason [gain]\n```\n').filter(
      (p) => !p.code,
    );
    expect(pieces.map(({ text, folded }) => [text, folded])).toEqual([
      ['One.', false],
      ['Why', true],
      ['a reason', true],
    ]);
  });
});

describe('sentencesOf', () => {
  it('ends a sentence at its mark and not within a number, a thread or a value', () => {
    expect(sentencesOf('It is 1.5 mm, `M4x0.7`. So {{ 1.5 mm }}! “Is it?” Yes.')).toHaveLength(4);
  });
});
