/** The template chapter, and a chapter written from the guide alone, each built as a reader would get it. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bookPage, readBook } from '../../widgets/site/book.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { diagnosticText } from '../../widgets/site/diagnostics.ts';
import { FOLDER, mistakesIn } from '../support/chapters.ts';

const TEMPLATE = readFileSync(resolve(FOLDER, 'template.md'), 'utf8');
const FRONT = '# Front\n\n::: goal\nRead on.\n:::\n';

/** Written by somebody who had DEVELOPERS.md before them and nothing else. */
const FROM_THE_GUIDE = `# A stop for the sander

::: goal
Choose the pair for a table stop and say what a flat of it moves.
:::

Our fence sits on two screws. How fine can it be set?

\`\`\`predict stop
thread A = M12x1.5
thread C = M8x1.25
One turn clockwise: how far does the fence go, and which way?
net-lead = -250 µm
slip net-lead(h_A = -1) # You added the leads.
> The longer lead is in the base, so it goes down.
\`\`\`

\`\`\`figure section fence: The stop, nested.
thread A = M12x1.5
thread C = M8x1.25
n = 0 from -4 to 4
arrangement = nested
lock = holds
\`\`\`

\`\`\`derivation: One flat
let Delta = h_C*L_C - h_A*L_A   # the net lead [net-lead]
let s = abs(Delta)/6            # six flats share it
6*s = abs(Delta)                # and make it up again
Delta = h_C*L_C - h_A*L_A       # where we came from [net-lead]
\`\`\`

\`\`\`example flat with fence: A flat of the stop
net-lead = -250.0 µm
per-step(k = 6) = 41.67 µm
\`\`\`

A flat moves {{ flat.s = 41.67 µm }}; wood moves more than {{ 50 µm }} overnight.
`;

const build = (text: string) => {
  const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
  writeFileSync(join(folder, 'index.md'), FRONT);
  writeFileSync(join(folder, '01-mine.md'), text);
  const book = readBook(folder, FIGURES);
  rmSync(folder, { recursive: true });
  const page = bookPage(book, 'mine', {
    scripts: ['s.js'],
    style: { addresses: ['s.css'] },
    icon: 'i.svg',
    module: false,
  });
  return { mistakes: book.mistakes.map(diagnosticText), page };
};

describe('the template chapter', () => {
  it('is no chapter of the notebook itself', () => {
    const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
    for (const name of ['index.md', 'template.md']) copyFileSync(join(FOLDER, name), join(folder, name));
    writeFileSync(join(folder, '01-mine.md'), TEMPLATE);
    expect(readBook(folder, FIGURES).places.map((p) => p.slug)).toEqual(['index', 'mine']);
    rmSync(folder, { recursive: true });
  });

  it('builds as it stands, into a page with its figure and its numbers', () => {
    const { mistakes, page } = build(TEMPLATE);
    expect(mistakes).toEqual([]);
    expect(page).toContain('data-figure="section"');
    expect(page?.replace(/<[^>]*>/g, '').replace(/\u00a0/g, ' ')).toContain('14.58 µm');
  });

  it('with a wrong number tells file, line and remedy', () => {
    const line = TEMPLATE.split('\n').findIndex((l) => l.startsWith('per-step')) + 1;
    const { mistakes } = build(TEMPLATE.replace('= 14.58 µm', '= 14.85 µm'));
    expect(mistakes).toEqual([
      expect.stringMatching(
        new RegExp(`^chapters/01-mine\\.md:${line}: You expect 14\\.85 µm; the engine’s per-step gives 14\\.58`),
      ),
    ]);
  });
});

describe('a chapter written from the guide alone', () => {
  it('builds without a mistake', () => {
    expect(mistakesIn(FROM_THE_GUIDE)).toEqual([]);
    expect(build(FROM_THE_GUIDE).page).toContain('A stop for the sander');
  });
});
