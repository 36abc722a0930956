/** What the pages’ policy stops in a browser, and that nothing a reader can type, paste, open or follow runs. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { describe, expect, inject, it } from 'vitest';
import { DESIGN_FORMAT } from '../../widgets/assembly/design-file.ts';
import { inDeep, some } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { inChromium, needs } from '../support/engines.ts';
import { asFiles, awake, fieldIn, figure, settled, shown, type, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

const HARM = '<img src=x onerror="window.ran=1"><script>window.ran=1</script>"\'><svg onload="window.ran=1">';

/** Nothing has run, and nothing was made that might. */
const untouched = async (page: Page) => {
  await settled(page);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(
    await page.locator('img, iframe, object, embed, body script[src], [onerror], [onload], [onclick]').count(),
  ).toBe(0);
  expect(await page.locator('a[href^="javascript"], a[href^="data"]').count()).toBe(0);
};

describe('the policy', () => {
  for (const [where, from] of [
    ['served', () => inject('site')],
    ['opened as a file', asFiles],
  ] as const)
    it(
      `stops, ${where}, every script that is not a file of the notebook, and the page goes on working`,
      from === asFiles ? inChromium : {},
      async (context) => {
        needs(context, 'requests');
        const { page, faults, turnTo } = await visit('index.html', { from: from(), fresh: true });
        for (const address of ['two-screws.html', 'notebook-one-file.html?page=two-screws']) {
          await turnTo(address);
          const section = await shown(figure(page, 'section'));
          await page.evaluate(() => {
            const add = (name: string, more: Record<string, string>) => {
              const element = document.createElement(name);
              for (const [key, value] of Object.entries(more)) element.setAttribute(key, value);
              if (more.text) element.textContent = more.text;
              document.body.append(element);
              return element;
            };
            add('script', { text: 'window.ran = 1' });
            add('script', { src: 'data:text/javascript,window.ran=1' });
            add('script', { src: URL.createObjectURL(new Blob(['window.ran = 1'], { type: 'text/javascript' })) });
            add('img', { src: 'data:,x', onerror: 'window.ran = 1' });
            add('a', { href: 'javascript:window.ran=1' }).click();
            add('button', { onclick: 'window.ran = 1' }).click();
            add('style', { text: 'body { display: none }' });
            add('iframe', { srcdoc: '<script>parent.ran = 1</script>' });
            add('base', { href: 'https://example.org/' });
          });
          await page.waitForTimeout(150);
          expect(await page.evaluate(() => 'ran' in window), address).toBe(false);
          expect(await page.locator('body').isVisible(), address).toBe(true);
          expect(await page.evaluate(() => document.baseURI)).not.toContain('example');
          expect(
            faults.some((f) => f.includes('policy: script-src')),
            address,
          ).toBe(true);
          faults.splice(0);
          // Half a turn of a net lead of 162.5 µm.
          await type(fieldIn(section, /^Thread A/i), 'M12x1.75');
          expect(await words(section.locator('[data-says]'))).toContain('81.25 µm');
          expect(faults).toEqual([]);
        }
      },
    );

  it('of the one file lets the scripts and styles run that stand in it, each by its hash, and no other', () => {
    const html = readFileSync(join(inject('folder'), 'notebook-one-file.html'), 'utf8');
    const rules = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html)?.[1]?.split('; ') ?? [];
    const rule = (kind: string) =>
      rules
        .find((r) => r.startsWith(`${kind} `))
        ?.split(' ')
        .slice(1)
        .sort();
    const hashes = (texts: Iterable<string>) =>
      [...texts].map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`).sort();
    const scripts = hashes(
      [...html.matchAll(/<script( type="text\/plain" data-file="[^"]*")?>([\s\S]*?)<\/script>/g)].map(
        ([, packed, text = '']) => (packed ? inflateSync(Buffer.from(text, 'base64')).toString() : text),
      ),
    );
    expect(scripts.length).toBeGreaterThan(20);
    expect(rule('script-src')).toEqual(scripts);
    const [head = ''] = html.split('<script', 1);
    expect(rule('style-src-elem')).toEqual(
      hashes([...head.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, text = '']) => text)),
    );
    expect(rule('default-src')).toEqual(["'none'"]);
  });
});

describe('what means harm', () => {
  it('in names and numbers of a file of designs, and of this browser’s storage, is text', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    const text = JSON.stringify({
      format: DESIGN_FORMAT,
      version: 1,
      designs: [
        { name: HARM, numbers: { A: 'M8', C: HARM, [HARM]: HARM, __proto__: { A: HARM }, arrangement: HARM } },
        { name: 'javascript:window.ran=1', numbers: { A: 'M8x1' } },
        { name: '__proto__', numbers: { A: 'M6' } },
      ],
    });
    await page.locator('.designs summary').click();
    await page
      .locator('.designs input[type=file]')
      .setInputFiles({ name: `${'x'.repeat(9)}.json`, mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.waitForFunction(() => /3 designs were read/.test(document.querySelector('.designs')?.textContent ?? ''));
    expect(await words(page.locator('.design-list li span').first())).toContain('<img src=x onerror=');
    await page.locator('.design-list button').first().click();
    await untouched(page);
    await page.evaluate((stored) => localStorage.setItem('notebook-designs', stored), text);
    await page.evaluate((name) => localStorage.setItem('notebook-design-in-use', name), HARM);
    await page.evaluate(
      (id) => localStorage.setItem('notebook-progress', `{${JSON.stringify(id)}:{"tried":1,"right":1}}`),
      HARM,
    );
    await page.evaluate((units) => localStorage.setItem('notebook-units', units), HARM);
    await page.reload();
    await awake(page);
    await untouched(page);
  });

  it('in what is stored of a reader’s journey is text, and leads nowhere but into the notebook', inDeep, async () => {
    const { page } = await visit('index.html', { fresh: true });
    const onward = async (href: string) => {
      const stored = JSON.stringify({ done: [HARM, 7], predicted: HARM, at: { href, says: HARM } });
      await page.evaluate((text) => localStorage.setItem('notebook-journey', text), stored);
      await page.reload();
      await awake(page);
      await untouched(page);
      return page.locator('.continue a').evaluateAll((all) => all.map((a) => [a.getAttribute('href'), a.textContent]));
    };
    for (const href of ['javascript:window.ran=1', 'https://example.org/one-screw.html', '//x/one-screw.html', HARM])
      expect(await onward(href), href).toEqual([]);
    expect(await onward('one-screw.html#exercises')).toEqual([['one-screw.html#exercises', `Continue: ${HARM}`]]);
  });

  it(
    'in every field of a page that takes words or lists is text, on the screen and in the tables',
    inChromium,
    async () => {
      const { page, turnTo } = await visit('index.html');
      for (const name of some(2, [
        'three-feet.html',
        'other-ways.html',
        'calibrate.html',
        'design-sheet.html',
        'finding-a-pair.html',
        'from-your-parts.html',
        'bench-card.html',
        'spring-strength.html',
        'parts-that-hold.html',
        'printed-springs.html',
      ])) {
        await turnTo(name);
        for (const place of await page.locator('figure.live').all()) {
          await shown(place);
          for (const text of [
            HARM,
            `M8, ${HARM.slice(0, 40)}; wedge: 1`,
            `turns; µm; ${HARM.slice(0, 30)}\n0; 0; x\n1; 87; x`,
          ]) {
            // All at once, as a link would.
            await place.evaluate((inside, typed) => {
              for (const field of inside.querySelectorAll<HTMLInputElement>(
                '.field input[type=text], .field textarea',
              )) {
                field.value = typed;
                field.dispatchEvent(new Event('input', { bubbles: true }));
              }
            }, text);
            await settled(page);
          }
        }
        await untouched(page);
      }
    },
  );

  it('in the roster and the class code of papers is text on every sheet', inDeep, async () => {
    const { page } = await visit(
      `class-material.html?class=${encodeURIComponent(HARM.slice(0, 39))}&bank=x&ask=${encodeURIComponent(HARM)}`,
    );
    await page.locator('#papers-class').waitFor();
    await page.locator('#papers-class').fill('<b onclick=ran=1>7</b>');
    await page.locator('#papers-roster').fill(`${HARM.slice(0, 60)}\n=cmd()\n</section><script>window.ran=1</script>`);
    await page.getByRole('button', { name: 'Set the papers' }).click();
    await page.getByRole('button', { name: 'Print the sheets' }).waitFor();
    await untouched(page);
    expect(await words(page.locator('.papers-preview').first())).toContain('<img src=x onerror=');
    expect(await page.locator('.paper').count()).toBeGreaterThan(5);
  });

  it('in an answer, a prediction and the fragment of an address is text', inChromium, async () => {
    const { page } = await visit(`two-screws.html#${encodeURIComponent(HARM)}`);
    await page.locator('[data-predict] input').first().fill(HARM);
    await page.locator('[data-predict] button').first().click();
    const exercise = page.locator('[data-exercise]').first();
    await exercise.locator('input[type=text]').fill(HARM);
    await exercise.getByRole('button', { name: 'Check' }).click();
    expect(await words(exercise.locator('.verdict'))).toContain('Read “<img');
    await untouched(page);
  });
});
