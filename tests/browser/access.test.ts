/**
 * Access by WCAG 2.2 AA, on every page: axe finds nothing in any state, every control is named, reached, seen and large enough,
 * nothing is cut off or too wide from a phone to a wall, and a screen reader is told things in the order in which they stand.
 * Every run looks at all pages at the two widths that differ most, and has axe look at a page of each kind; a deep run goes through
 * all states of all pages.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import { drawn, inDeep, some } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { engine, needs } from '../support/engines.ts';
import { cutOff, illBuilt, longLines, outOfOrder, tooSmall, tooWide } from '../support/layout-checks.ts';
import { fieldIn, NARROW, pageNames, readThrough, settled, shown, type, useBrowser, WIDE } from '../support/page.ts';
import { misread } from '../support/reading-order.ts';

const { visit } = useBrowser();
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const COLOURS = ['color-contrast'];

/** What a state of the page can change is looked at there; the rows of a table and the marks of a formula are alike. */
interface Look {
  readonly rules?: readonly string[];
  readonly within?: string;
}
const ALIKE = ['math', 'tbody tr:nth-child(n + 3)'];

/** What axe finds wrong, as lines that name the rule and the place: by all its rules on the whole page, or as told. */
const violations = async (page: Page, { rules, within }: Look = {}): Promise<string[]> => {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  return page.evaluate(
    async ([tags, only, selector, alike]) => {
      const engine = (window as unknown as { axe: typeof axe }).axe;
      if (selector !== undefined && !document.querySelector(selector)) return [];
      const found = await engine.run(
        { include: [selector ?? 'html'], exclude: only ? [...alike] : [] },
        {
          runOnly: only ? { type: 'rule', values: [...only] } : { type: 'tag', values: [...tags] },
          resultTypes: ['violations'],
        },
      );
      return found.violations.flatMap((v) =>
        v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary?.replace(/\s+/g, ' ')}`),
      );
    },
    [TAGS, rules, within, ALIKE] as const,
  );
};

/** Rules over those of the page, in a way that its policy lets through. */
const restyle = (page: Page, css: string): Promise<void> =>
  page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets.push(sheet);
  }, css);

/** Opens everything in the text, or the panels of the masthead, which lie over the text while they are open. */
const openAll = (page: Page, within: 'main' | '.masthead', open = true): Promise<void> =>
  page.evaluate(
    ([place, opened]) => {
      for (const details of document.querySelectorAll<HTMLDetailsElement>(`${place} details`)) details.open = opened;
    },
    [within, open] as const,
  );

/** Makes each prediction, and types nonsense into each field. */
const goWrong = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const input of document.querySelectorAll<HTMLInputElement>(
      '.predict input[type=text], main .inputs input[type=text]',
    )) {
      input.value = input.closest('.predict') ? '7' : 'w'.repeat(200);
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.form?.querySelector('button')?.click();
    }
  });

/** Characters in a line that an eye still follows back. */
const LONGEST_LINE = 82;

/** The front, plots, a plan and tables, papers: what axe is asked of at every run. */
const KINDS = ['index.html', 'two-screws.html', 'three-feet.html', 'class-material.html'];

const none = async (what: string, found: Promise<string[] | string>) =>
  expect.soft([await found].flat(), what).toEqual([]);
const fits = async (what: string, found: Promise<string>) => expect.soft(await found, what).toBe('');

describe('every page', () => {
  for (const name of [...new Set([...KINDS, ...drawn(3, pageNames())])])
    it(`${name} is well built, and fits the narrowest window and a wide one, opened out and gone wrong too`, async () => {
      const { page } = await visit(name, { colorScheme: 'light', fresh: true });
      await readThrough(page);
      // Boxes that the page leaves out while they are out of view have stale places, which would be measured.
      await restyle(page, '* { content-visibility: visible !important }');
      await settled(page);
      await none('as it is built', illBuilt(page));
      await none('order, wide', outOfOrder(page));
      await none('cut off, wide', cutOff(page));
      await page.setViewportSize({ width: 320, height: 640 });
      await openAll(page, 'main');
      await goWrong(page);
      await settled(page);
      await fits('scrolls sideways at 320 px', tooWide(page));
      await none('targets under 24 px', tooSmall(page));
      await none('order, narrow', outOfOrder(page));
      if (engine() !== 'chromium' || !KINDS.includes(name)) return;
      // A formula that can be scrolled becomes a stop once the page has rested.
      await page.waitForTimeout(500);
      await none('axe', violations(page));
      if (name === 'two-screws.html') await none('read by a screen reader', misread(page, true));
    });

  for (const name of pageNames())
    it(
      `${name} is readable and workable as it opens, opened out, gone wrong and mended, light and dark, from a phone to a wall`,
      inDeep,
      async () => {
        const { page } = await visit(name, { colorScheme: 'light', fresh: true });
        // Colours and roles are the page's own in every engine; one is enough to ask, which can be told to be dark.
        const asked = engine() === 'chromium';
        const axe = async (what: string, look?: Look) => {
          if (asked) await none(`axe, ${what}`, violations(page, look));
        };
        let now = 'light';
        const look = async (scheme: 'light' | 'dark', size: { width: number; height: number }) => {
          // Another scheme has all of a page worked out anew.
          if (scheme !== now) await page.emulateMedia({ colorScheme: scheme });
          now = scheme;
          await page.setViewportSize(size);
          await settled(page);
        };
        await readThrough(page);
        // Boxes that the page leaves out while they are out of view have stale places, which would be measured.
        await restyle(page, '* { content-visibility: visible !important }');
        await settled(page);

        await axe('as it opens, light, wide', { rules: COLOURS });
        await none('as it is built', illBuilt(page));
        if (asked) await none('read by a screen reader', misread(page, name === 'two-screws.html'));
        await none('order, wide', outOfOrder(page));
        await none('cut off, wide', cutOff(page));
        await look('light', { width: 2560, height: 1440 });
        await fits('scrolls sideways at 2560 px', tooWide(page));
        await none('cut off at 2560 px', cutOff(page));
        await none('lines too long at 2560 px', longLines(page, LONGEST_LINE));
        await look('light', NARROW);
        await none('targets under 24 px', tooSmall(page));
        await none('order, narrow', outOfOrder(page));
        await none('cut off, narrow', cutOff(page));
        await look('light', { width: 320, height: 640 });
        await fits('scrolls sideways at 320 px', tooWide(page));

        await openAll(page, '.masthead');
        await fits('scrolls sideways at 320 px, masthead opened', tooWide(page));
        await none('targets under 24 px, masthead opened', tooSmall(page));
        await axe('masthead opened', { rules: ['color-contrast', 'label'], within: '.masthead' });
        await openAll(page, '.masthead', false);
        await openAll(page, 'main');
        await goWrong(page);
        await settled(page);
        await fits('scrolls sideways at 320 px, opened and wrong', tooWide(page));
        await look('dark', NARROW);
        // Boxes that scroll become stops once the window has come to rest.
        await page.waitForTimeout(300);
        await axe('opened and wrong, dark, narrow');
        await none('targets under 24 px, opened and wrong', tooSmall(page));
        await look('light', WIDE);
        await axe('opened and wrong, light', {
          rules: COLOURS,
          within: ':is(.field.wrong, .verdict, .refusal, details[open])',
        });

        // Mended, lit, and enlarged: by the browser, which halves the window, and by the letters alone.
        const reset = page.getByRole('button', { name: /own numbers/ });
        if (await reset.isVisible()) await reset.click();
        await page.evaluate(() => {
          for (const place of document.querySelectorAll('main [data-sym]')) place.classList.add('lit');
        });
        // A lit quantity looks the same wherever it stands.
        const lit = name === 'two-screws.html';
        await look(lit ? 'dark' : 'light', { width: WIDE.width / 2, height: WIDE.height / 2 });
        if (lit) await axe('mended and lit, dark', { rules: COLOURS, within: '.lit' });
        await fits('scrolls sideways at 200 %', tooWide(page));
        await none('cut off at 200 %', cutOff(page));
        await look('light', WIDE);
        await restyle(page, 'html { font-size: 2.2rem !important }');
        await settled(page);
        await fits('scrolls sideways with letters twice the size', tooWide(page));
        await none('cut off with letters twice the size', cutOff(page));
      },
    );
});

describe('axe', () => {
  it('finds nothing while a figure or an example fills the window for a room', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    for (const place of some(1, ['figure.section', '[data-example]'])) {
      await page.locator(place).first().getByRole('button', { name: 'Show large' }).click();
      await page.locator('.projected').waitFor();
      await settled(page);
      expect.soft(await violations(page), place).toEqual([]);
      await page.keyboard.press('Escape');
    }
  });

  it('finds nothing where papers are set, on the screen and as they are printed', async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('class-material.html#papers', { fresh: true });
    await page.locator('[data-papers] form').waitFor();
    await page.getByLabel(/^Roster/).fill('Ada\nBea');
    await page.getByRole('button', { name: 'Set the papers' }).click();
    await page.getByRole('button', { name: 'Print the sheets' }).waitFor();
    expect.soft(await violations(page), 'set').toEqual([]);
    await page.evaluate(() => {
      document.body.dataset.print = 'sheets';
    });
    await beyond(page).emulateMedia({ media: 'print' });
    expect
      .soft(await violations(page, { rules: ['color-contrast', 'list', 'listitem', 'definition-list'] }), 'printed')
      .toEqual([]);
  });

  it('finds nothing in forced colours', inDeep, async (context) => {
    needs(context, 'forced colours');
    for (const scheme of some(1, ['dark', 'light'] as const)) {
      const { page } = await visit('two-screws.html', { fresh: true, forcedColors: 'active', colorScheme: scheme });
      expect(await page.evaluate(() => matchMedia('(forced-colors: active)').matches)).toBe(true);
      await readThrough(page);
      expect.soft(await violations(page), scheme).toEqual([]);
    }
  });

  it('finds no letters too faint in the dark, as each engine draws them', async () => {
    for (const name of some(1, ['two-screws.html', 'three-feet.html'])) {
      const { page } = await visit(name, { fresh: true, colorScheme: 'dark' });
      expect(await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches)).toBe(true);
      await readThrough(page);
      expect.soft(await violations(page, { rules: COLOURS }), name).toEqual([]);
    }
  });
});

describe('a page', () => {
  it('can be worked by Tab, and arrows along its lists: every control is reached in order, and is seen to be', async () => {
    for (const name of some(1, ['per-flat.html', 'two-screws.html'])) {
      const { page } = await visit(name);
      await readThrough(page);
      const wanted = await page.evaluate(() => {
        // Of radio buttons of one name the chosen one is a stop, or the first where none is chosen.
        const passedOver = (e: HTMLElement): boolean => {
          if (!(e instanceof HTMLInputElement && e.type === 'radio') || e.checked) return false;
          const group = [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')].filter(
            (other) => other.name === e.name && other.form === e.form,
          );
          return group[0] !== e || group.some((other) => other.checked);
        };
        const all = [
          ...document.querySelectorAll<HTMLElement>('a[href], button, input, summary, [tabindex="0"]'),
        ].filter((e) => e.checkVisibility() && e.tabIndex >= 0 && !passedOver(e));
        for (const [i, e] of all.entries()) e.setAttribute('data-order', String(i));
        return all.length;
      });
      const here = () =>
        page.evaluate(() => {
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
            // On a screen without a desktop WebKit’s window is never the one in use, and what has the focus there is not shown to have it.
            seen: !document.hasFocus() || (outlined && box.bottom > 0 && box.top < innerHeight),
            /** Others of its list, which it has taken out of the way of Tab: arrows go to them. */
            beside: document.querySelectorAll('[data-order][tabindex="-1"]:not([data-along])').length,
            name: `${e.tagName} ${e.getAttribute('aria-label') ?? (e.textContent?.slice(0, 30) || e.closest('label, .field')?.textContent?.slice(0, 40))} at ${Math.round(box.top)} of ${innerHeight}, ${style.outline}`,
          };
        });
      const reached: number[] = [];
      const along: number[] = [];
      const unseen: string[] = [];
      for (let i = 0; i < wanted + 3; i++) {
        await page.keyboard.press('Tab');
        const at = await here();
        if (!at) break;
        if (reached.includes(at.order)) break;
        // What the browser makes a stop of its own accord: a box that scrolls.
        expect(at.order, at.name).not.toBe(-1);
        reached.push(at.order);
        if (!at.seen) unseen.push(at.name);
        if (at.beside === 0) continue;
        await page.evaluate(() => {
          for (const e of document.querySelectorAll('[data-order][tabindex="-1"]')) e.setAttribute('data-along', '');
        });
        for (let k = 0; k < at.beside; k++) {
          await page.keyboard.press('ArrowDown');
          const next = await here();
          along.push(next?.order ?? -1);
          if (!next?.seen) unseen.push(next?.name ?? 'nothing');
        }
        await page.keyboard.press('Home');
        expect((await here())?.order, at.name).toBe(at.order);
      }
      expect(unseen, name).toEqual([]);
      expect(reached, name).toEqual([...reached].sort((a, b) => a - b));
      expect(new Set([...reached, ...along]).size, name).toBe(wanted);
      // Whoever passes the page by Tab is held up by half of it at most.
      expect(reached.length / wanted, name).toBeLessThan(0.6);
    }
  });

  it('lets the first Tab skip to the text', inDeep, async () => {
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
      () => document.querySelector('.voice')?.textContent?.startsWith('0.83333 turns clockwise'),
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
      .locator('.panel')
      .first()
      .locator('.chart .curve')
      .evaluateAll((all) => all.map((p) => p.getAttribute('stroke-dasharray') ?? 'none'));
    expect(dashes).toHaveLength(3);
    expect(new Set(dashes).size).toBe(dashes.length);
    const fills = await page
      .locator('[data-figure=section] path[fill^="url"]')
      .evaluateAll((all) => all.map((p) => p.getAttribute('fill')));
    expect(new Set(fills).size).toBe(fills.length);
    expect(fills.length).toBeGreaterThanOrEqual(2);
  });

  it('marks a wrong field by more than colour, and in forced colours too', async (context) => {
    needs(context, 'forced colours');
    const { page } = await visit('two-screws.html', { forcedColors: 'active' });
    const section = await shown(page.locator('[data-figure=section]'));
    const A = fieldIn(section, /thread A/i);
    await type(A, 'nonsense');
    expect(await A.getAttribute('aria-invalid')).toBe('true');
    expect(await section.locator('.field-note:not(:empty)').first().isVisible()).toBe(true);
    // The drawing is still there: lines take the colours of the system.
    const strokes = await section.locator('[data-path=turned]').evaluate((p) => getComputedStyle(p).stroke);
    expect(strokes).not.toBe('none');
  });
});
