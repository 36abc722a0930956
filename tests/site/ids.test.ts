/** Hatchings, clips and headings are found by id over the whole page: each stands once, and each that is asked for is there. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allStyles } from '../../widgets/site/styles.mjs';
import { CHAPTERS, press } from '../support/chapters.ts';

const idsIn = (html: string): string[] => [...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1] ?? '');
const askedIn = (html: string): string[] => [...html.matchAll(/url\(#([^)]+)\)/g)].map((m) => m[1] ?? '');
const twice = (ids: readonly string[]): string[] => [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];

describe('the ids of a page', () => {
  for (const { file, text } of CHAPTERS)
    it(`stand once each, and hatch what they should, in ${file}`, () => {
      const { html } = press(text, file);
      expect(twice(idsIn(html))).toEqual([]);
      const there = new Set(idsIn(html));
      expect([...new Set(askedIn(html))].filter((id) => !there.has(id))).toEqual([]);
    });

  it('stay apart where one widget stands on a page twice', () => {
    const figure = (set: string, threads: string) =>
      `\`\`\`figure section ${set}: A section.\n${threads}\nn = 0\narrangement = in line\nlock = holds\n\`\`\`\n`;
    const { html } = press(
      `# Two\n\n${figure('one', 'thread A = M10x1.5\nthread C = M8x1.25')}\n${figure('two', 'thread A = M6x1\nthread C = M5x0.8')}`,
    );
    expect(idsIn(html).filter((id) => id.endsWith('section-base'))).toEqual(['one-section-base', 'two-section-base']);
    expect(askedIn(html)).toContain('two-section-base');
    expect(twice(idsIn(html))).toEqual([]);
  });

  it('are asked for by no style sheet, which can’t know the numbers whose name an id carries', () => {
    const sheets = allStyles().map((name) => ({
      name,
      text: readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8'),
    }));
    expect(sheets.length).toBeGreaterThan(10);
    expect(sheets.filter(({ text }) => /url\(\s*["']?#/.test(text)).map(({ name }) => name)).toEqual([]);
  });

  it('leave no friction unhatched in the bars of a torque, nor in their key', () => {
    const { html } = press(CHAPTERS.find((c) => c.file.includes('effort-and-feel'))?.text ?? '');
    const rubbing = html.match(/<rect class="piece [ac]-rub"[^>]*>/g) ?? [];
    // Two in the key, and one a thread in each of the four bars: two pairs of threads and two threads alone.
    expect(rubbing).toHaveLength(2 + 6);
    for (const piece of rubbing) expect(piece).toMatch(/ fill="url\(#stop-torque-hatch-[ac]\)"/);
  });

  it('leave no shape without the hatching by which it is told apart from another', () => {
    const { html } = press(CHAPTERS.find((c) => c.file.includes('periodic-error'))?.text ?? '');
    const zones = html.match(/<(?:rect|path) class="rate-zone[^>]*>/g) ?? [];
    expect(zones.length).toBeGreaterThanOrEqual(4);
    for (const zone of zones) expect(zone).toContain('fill="url(#drunken-drunken-');
  });
});
