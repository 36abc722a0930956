/**
 * A chapter that means harm, and what the pages may do at all: in the pressed page stands no script but the notebook’s own, no
 * handler, no address that runs, and the policy that would stop them.
 */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { bookPage } from '../../widgets/site/book.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { renderChapter } from '../../widgets/site/chapter.ts';
import { pageHtml } from '../../widgets/site/page.ts';
import { wholeBook } from '../support/chapters.ts';

const HARM = '<script>alert(1)</script><img src=x onerror=alert(1)>"\'><svg onload=alert(1)>';

const BLOCKS = [
  `\`\`\`figure section foot: ${HARM}
thread A = M10x1.5 # ${HARM}
thread C = 3/8-16
n = 1 from -4 to 4 # ${HARM}
arrangement = in line
lock = holds
\`\`\``,
  `\`\`\`example turned with foot: ${HARM}
net-lead = 87.50 µm # ${HARM} [x](javascript:alert(1))
\`\`\``,
  `\`\`\`predict with foot
${HARM}
net-lead = 87.50 µm
slip net-lead(h_A = -1) # ${HARM}
> ${HARM}
\`\`\``,
  `\`\`\`exercise one-flat: ${HARM}
thread A = one of M8x1.25, M10x1.5, M12x1.75
thread C = one of 5/16-18 UNC, 3/8-16 UNC
k = one of 4, 6, 12
${HARM} {A} with {C}, {k} steps
net-lead # ${HARM}
per-step
answer in µm, 3 digits
slip = abs(Delta) # ${HARM}
hint ${HARM}
\`\`\``,
  `\`\`\`derivation: ${HARM}
let z_t = -h_A*L_A*n # ${HARM} [turned-motion]
let z_r = h_C*L_C*n # b [relative-motion]
let z_c = z_t + z_r # c
let Delta = z_c/n # d
Delta = h_C*L_C - h_A*L_A # ${HARM} [net-lead]
\`\`\``,
];

const PROSE = [
  HARM,
  '</script></title></textarea></style></svg><script>alert(1)</script>',
  '<a href="javascript:alert(1)">x</a> <iframe src=x></iframe> <base href=//x> <meta http-equiv=refresh content="0;url=x">',
  '[x](javascript:alert(1)) [x](JaVaScRiPt:alert(1)) [x](java&#x73;cript:alert(1)) [x](<javascript:alert(1)>) [x]( &#1;javascript:alert(1)) [x](&NewLine;java&Tab;script:alert(1))',
  '[x](vbscript:x) [x](data:text/html,<script>alert(1)</script>) [x](file:///etc/x) <javascript:alert(1)>',
  '[x](04-two-screws.md "\\" onmouseover=alert(1) x=\\"") [x](04-two-screws.md \'"><img src=x onerror=alert(1)>\')',
  '[x][r]\n\n[r]: javascript:alert(1) "<script>alert(1)</script>"',
  '![x](x" onerror="alert(1)) ![" onerror="alert(1)](x)',
  `{{! ${HARM} }} {{ ${HARM} }} {{ foot.${HARM} = 1 }}`,
  `$${HARM}$ $\\href{javascript:alert(1)}{x}$ $h_C*L_C$`,
  `\`\`\`"><img src=x onerror=alert(1)>\n${HARM}\n\`\`\``,
  `\`\`\`figure <script> foot: x\n\`\`\``,
  `\`\`\`example a"onload=alert(1) with foot: x\nnet-lead = 1 mm\n\`\`\``,
  `::: goal ${HARM}\n${HARM}\n:::`,
  `## ${HARM}`,
  `| ${HARM} | b |\n|---|---|\n| ${HARM} | c |`,
  `&lt;script&gt;alert(1)&lt;/script&gt; &#60;script&#62;alert(1)`,
];

/** What a page must not hold, as lines that name it. */
const harmIn = (html: string, scripts: number): string[] => {
  const { document } = parseHTML(html);
  const found: string[] = [];
  let run = 0;
  for (const element of document.querySelectorAll('*')) {
    const name = element.localName;
    if (/^(iframe|object|embed|base|form|img|style|template|foreignobject)$/.test(name)) found.push(`<${name}>`);
    if (name === 'script' && !/^application\/(ld\+)?json$/.test(element.getAttribute('type') ?? '')) {
      run++;
      if (element.textContent !== '' || !element.hasAttribute('src')) found.push('a script in the page');
    }
    if (name === 'meta' && /refresh/i.test(element.getAttribute('http-equiv') ?? '')) found.push('a refresh');
    for (const { name: attribute, value } of element.attributes) {
      if (/^on/i.test(attribute)) found.push(`${name} ${attribute}`);
      if (/^(href|src|xlink:href|action|formaction|data|srcset)$/i.test(attribute)) {
        // As a browser reads it: blanks and control characters before the scheme, and line breaks in it, are nothing.
        const address = value.replace(/[\s\p{Cc}]/gu, '');
        if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(address) && !address.startsWith('https://creativecommons.org/'))
          found.push(`${name} ${attribute}=${value}`);
      }
    }
  }
  if (run !== scripts) found.push(`${run} scripts`);
  return found;
};

const ASSETS = { scripts: ['assets/a.js'], style: { addresses: ['assets/a.css'] }, icon: 'i.svg', module: false };

const page = (text: string): string => {
  const pressed = renderChapter('chapters/99-x.md', text, FIGURES);
  const place = { slug: 'x', title: pressed.title, goal: pressed.goal, kind: 'chapter' as const, number: 1 };
  return pageHtml(
    pressed,
    place,
    [{ ...place, kind: 'front' as const, slug: 'index', number: undefined }, place, { ...place, slug: 'y' }],
    ASSETS,
  );
};

describe('a chapter that means harm', () => {
  it('finds what it looks for, in a page that holds it', () => {
    expect(
      harmIn('<body><script>x</script><a href=" java\nscript:x" onclick="x"></a><img src="//x"></body>', 0),
    ).toEqual(['a script in the page', 'a href= java\nscript:x', 'a onclick', '<img>', 'img src=//x', '1 scripts']);
  });

  it('has its harm set as text in every place a block has for words', () => {
    const html = page([`# ${HARM}`, `::: goal\n${HARM}\n:::`, ...BLOCKS].join('\n\n'));
    expect(harmIn(html, 1)).toEqual([]);
    // It was not left out either: the reader sees what the author wrote.
    const { document } = parseHTML(html);
    for (const place of [
      'h1',
      'title',
      '.box.goal',
      '.caption',
      '.example h3',
      '.why',
      '.predict .question',
      '.exercise h3',
      '.derivation',
    ])
      expect(document.querySelector(place)?.textContent, place).toContain('<script>alert(1)</script>');
  });

  for (const [i, text] of PROSE.entries())
    it(`is text in prose: ${text.slice(0, 60).replace(/\n/g, '⏎')}`, () => {
      const head = i % 2 === 0 ? '# A chapter\n\n' : `---\ntitle: ${HARM}\nscripts: [x.js]\n---\n\n# ${HARM}\n\n`;
      expect(
        harmIn(page(`${head}::: goal\nGoal.\n:::\n\n${BLOCKS[0]}\n\n${text}\n`), 1).filter((f) => f !== '<img>'),
      ).toEqual([]);
    });

  it('takes pictures for the mistake they are, and lets none load from elsewhere', () => {
    const pressed = renderChapter('chapters/99-x.md', '# A\n\n![x](https://example.org/x.png)\n', FIGURES);
    expect(pressed.mistakes.map((m) => m.says).join()).toContain('Pictures from files are not taken');
  });
});

const POLICY = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/;
const rulesOf = (html: string): Record<string, string> =>
  Object.fromEntries(
    (POLICY.exec(html)?.[1] ?? '').split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]),
  );

describe('the policy of the pages', () => {
  const book = wholeBook();

  it('stands before all that could break it, lets nothing run but the site’s own files, and the page needs no more', () => {
    for (const { slug } of book.places) {
      const html = bookPage(book, slug, ASSETS) ?? '';
      const rules = rulesOf(html);
      expect(rules['default-src'], slug).toBe("'none'");
      for (const kind of ['script-src', 'style-src-elem', 'worker-src', 'font-src', 'img-src'])
        expect(rules[kind], slug).toBe("'self'");
      for (const kind of ['base-uri', 'form-action']) expect(rules[kind], slug).toBe("'none'");
      expect(
        Object.entries(rules).filter(
          ([kind, sources]) => /unsafe|\*|https?:/.test(sources) && !kind.startsWith('style-src'),
        ),
        slug,
      ).toEqual([]);
      expect(html.search(POLICY), slug).toBeLessThan(html.search(/<script|<link|<style/));
      expect(harmIn(html, 1), slug).toEqual([]);
    }
  });

  it('is left out in the dev server, which adds scripts of its own', () => {
    expect(bookPage(book, 'index', { ...ASSETS, module: true })).not.toMatch(POLICY);
  });
});
