/** Access by WCAG 2.2 AA: axe finds nothing, every control is reached and seen, nothing is too small or too wide. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { fieldIn, NARROW, pageNames, settled, shown, type, useBrowser, WIDE } from '../support/page.ts';

const { visit } = useBrowser();
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong, as lines that name the rule and the place. Rules may be narrowed to what a change of view can change. */
const violations = async (page: Page, rules?: readonly string[]): Promise<string[]> => {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  return page.evaluate(
    async ([tags, only]) => {
      const engine = (window as unknown as { axe: typeof axe }).axe;
      const found = await engine.run(document, {
        runOnly: only ? { type: 'rule', values: [...only] } : { type: 'tag', values: [...tags] },
        resultTypes: ['violations'],
      });
      return found.violations.flatMap((v) =>
        v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary?.replace(/\s+/g, ' ')}`),
      );
    },
    [TAGS, rules] as const,
  );
};
/** Draws every figure, as a reader who has scrolled through. */
const readThrough = async (page: Page): Promise<void> => {
  for (const place of await page.locator('figure.live').all()) await shown(place);
  await page.evaluate(() => scrollTo(0, 0));
  await settled(page);
};

/** Opens everything in the text, or the panels of the masthead, which lie over the text while they are open. */
const openAll = (page: Page, within: 'main' | '.masthead', open = true): Promise<void> =>
  page.evaluate(
    ([place, opened]) => {
      for (const details of document.querySelectorAll<HTMLDetailsElement>(`${place} details`)) details.open = opened;
    },
    [within, open] as const,
  );

/** How many pixels the page is too wide, and what sticks out. */
const tooWide = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const over = document.documentElement.scrollWidth - innerWidth;
    if (over <= 0) return '';
    const out = [...document.querySelectorAll('body *')].filter(
      (e) =>
        e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.table-scroll, .katex, .voice, .skip, svg'),
    );
    return `${over} px: ${out
      .slice(0, 4)
      .map((e) => `${e.tagName} ${e.className}`)
      .join('; ')}`;
  });

const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, select, label:has(input[type=radio]), label:has(input[type=checkbox]), input[type=text], [role=slider], summary, .contents a, .neighbours a',
      ),
    ]
      .filter((e) => e.checkVisibility())
      .map((e) => ({ e, box: e.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(
        ({ e, box }) =>
          `${e.tagName} ${e.textContent?.slice(0, 20)} ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`,
      ),
  );

const nameless = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...[...document.querySelectorAll<HTMLInputElement>('input, select, textarea')]
      .filter((e) => !(e.labels?.[0]?.textContent?.trim() || e.getAttribute('aria-label')))
      .map((e) => e.outerHTML.slice(0, 80)),
    ...[...document.querySelectorAll('[role=img], [role=slider], [role=group]')]
      .filter((e) => !e.getAttribute('aria-label') && !e.getAttribute('aria-labelledby'))
      .map((e) => e.outerHTML.slice(0, 80)),
  ]);

describe('every page', () => {
  for (const name of pageNames())
    it(`${name} is readable and workable as it opens, opened out, gone wrong and mended, light and dark, wide and narrow`, async () => {
      const { page } = await visit(name, { colorScheme: 'light', fresh: true });
      // Boxes that the page leaves out while they are out of view have stale places, which would be measured.
      await page.addStyleTag({ content: '* { content-visibility: visible !important }' });
      const look = async (scheme: 'light' | 'dark', size: { width: number; height: number }) => {
        await page.emulateMedia({ colorScheme: scheme });
        await page.setViewportSize(size);
        await settled(page);
      };
      await readThrough(page);
      expect.soft(await violations(page), 'as it opens, light, wide').toEqual([]);
      expect.soft(await nameless(page), 'controls and pictures without a name').toEqual([]);
      await look('dark', NARROW);
      await readThrough(page);
      expect.soft(await tooSmall(page), 'targets under 24 px').toEqual([]);
      await look('light', { width: 320, height: 640 });
      expect.soft(await tooWide(page), 'scrolls sideways at 320 px').toBe('');

      // Everything opened, each prediction made, each field wrong.
      await openAll(page, '.masthead');
      expect.soft(await tooWide(page), 'scrolls sideways at 320 px, masthead opened').toBe('');
      expect.soft(await tooSmall(page), 'targets under 24 px, masthead opened').toEqual([]);
      expect.soft(await violations(page, ['color-contrast', 'label']), 'masthead opened').toEqual([]);
      await openAll(page, '.masthead', false);
      await openAll(page, 'main');
      await page.evaluate(() => {
        for (const input of document.querySelectorAll<HTMLInputElement>(
          '.predict input[type=text], main .inputs input[type=text]',
        )) {
          input.value = input.closest('.predict') ? '7' : 'w'.repeat(200);
          input.dispatchEvent(new Event('input', { bubbles: true }));
          input.form?.requestSubmit();
        }
      });
      await settled(page);
      expect.soft(await tooWide(page), 'scrolls sideways at 320 px, opened and wrong').toBe('');
      await look('dark', NARROW);
      expect.soft(await violations(page), 'opened and wrong, dark, narrow').toEqual([]);
      expect.soft(await tooSmall(page), 'targets under 24 px, opened and wrong').toEqual([]);
      await look('light', WIDE);
      expect.soft(await violations(page, ['color-contrast']), 'opened and wrong, light, wide').toEqual([]);

      // Mended, lit, and at twice the size.
      const reset = page.getByRole('button', { name: /own numbers/ });
      if (await reset.isVisible()) await reset.click();
      await page.evaluate(() => {
        for (const place of document.querySelectorAll('main [data-sym]')) place.classList.add('lit');
      });
      await look('dark', { width: 640, height: 900 });
      expect.soft(await violations(page, ['color-contrast']), 'mended and lit, dark').toEqual([]);
      await page.addStyleTag({ content: 'html { font-size: 2.2rem !important }' });
      await settled(page);
      expect.soft(await tooWide(page), 'scrolls sideways at twice the size').toBe('');
    });
});

describe('a page', () => {
  it('can be worked by Tab alone: every control is reached in order, and is seen to be', async () => {
    for (const name of ['two-screws.html', 'per-flat.html']) {
      const { page } = await visit(name);
      await readThrough(page);
      const wanted = await page.evaluate(() => {
        const all = [
          ...document.querySelectorAll<HTMLElement>('a[href], button, input, summary, [tabindex="0"]'),
        ].filter((e) => e.checkVisibility() && !(e instanceof HTMLInputElement && e.type === 'radio' && !e.checked));
        for (const [i, e] of all.entries()) e.setAttribute('data-order', String(i));
        return all.length;
      });
      const reached: number[] = [];
      const unseen: string[] = [];
      for (let i = 0; i < wanted + 3; i++) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate(() => {
          const e = document.activeElement;
          if (!e || e === document.body) return null;
          const style = getComputedStyle(e);
          const label = e.matches('input[type=radio]') ? e.closest('label') : null;
          const outlined = [e, label, e.nextElementSibling].some((x) => {
            const s = x && getComputedStyle(x);
            return (
              s && ((s.outlineStyle !== 'none' && Number.parseFloat(s.outlineWidth) >= 2) || s.boxShadow !== 'none')
            );
          });
          const box = e.getBoundingClientRect();
          return {
            order: Number(e.getAttribute('data-order') ?? -1),
            seen: outlined && box.bottom > 0 && box.top < innerHeight,
            name: `${e.tagName} ${e.getAttribute('aria-label') ?? e.textContent?.slice(0, 30)} ${style.outline}`,
          };
        });
        if (!at) break;
        if (reached.includes(at.order)) break;
        // What the browser makes a stop of its own accord: a box that scrolls.
        expect(at.order, at.name).not.toBe(-1);
        reached.push(at.order);
        if (!at.seen) unseen.push(at.name);
      }
      expect(unseen, name).toEqual([]);
      expect(reached, name).toEqual([...reached].sort((a, b) => a - b));
      expect(reached.length, name).toBe(wanted);
    }
  });

  it('lets the first Tab skip to the text', async () => {
    const { page } = await visit('two-screws.html');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('To the text');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('text');
  });

  it('says after a change what a figure now shows, once it has settled', async () => {
    const { page } = await visit('two-screws.html');
    const knob = await shown(page.locator('[data-figure=section] [data-knob]'));
    await knob.focus();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    const voice = page.locator('.voice');
    expect(await voice.getAttribute('aria-live')).toBe('polite');
    expect(await voice.textContent()).toBe('');
    await page.waitForFunction(
      () => document.querySelector('.voice')?.textContent?.startsWith('1.3333 turns clockwise'),
      undefined,
      { timeout: 3000 },
    );
  });

  it('does not move by itself where motion is not wanted', async () => {
    const { page } = await visit('two-screws.html', { reducedMotion: 'reduce' });
    const moving = await page.evaluate(
      () =>
        [document.documentElement, ...document.querySelectorAll('*')].filter((e) => {
          const s = getComputedStyle(e);
          const longest = Math.max(
            ...`${s.transitionDuration},${s.animationDuration}`.split(',').map(Number.parseFloat),
          );
          return s.scrollBehavior === 'smooth' || longest > 0.01;
        }).length,
    );
    expect(moving).toBe(0);
  });

  it('tells its parts apart without colour: each curve of the plot has its own dash, each cut part its own hatching', async () => {
    const { page } = await visit('two-screws.html');
    const plot = await shown(page.locator('[data-figure=motion-plot]'));
    const dashes = await plot
      .locator('.legend path')
      .evaluateAll((all) => all.map((p) => p.getAttribute('stroke-dasharray') ?? 'none'));
    expect(new Set(dashes).size).toBe(dashes.length);
    const fills = await page
      .locator('[data-figure=section] path[fill^="url"]')
      .evaluateAll((all) => all.map((p) => p.getAttribute('fill')));
    expect(new Set(fills).size).toBe(fills.length);
    expect(fills.length).toBeGreaterThanOrEqual(2);
  });

  it('marks a wrong field by more than colour, and in forced colours too', async () => {
    const { page } = await visit('two-screws.html', { forcedColors: 'active' });
    const section = await shown(page.locator('[data-figure=section]'));
    const A = fieldIn(section, /thread A/i);
    await type(A, 'nonsense');
    expect(await A.getAttribute('aria-invalid')).toBe('true');
    expect(await section.locator('.field-note').first().isVisible()).toBe(true);
    // The drawing is still there: lines take the colours of the system.
    const strokes = await section.locator('[data-path=turned]').evaluate((p) => getComputedStyle(p).stroke);
    expect(strokes).not.toBe('none');
  });
});
