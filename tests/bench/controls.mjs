/** Every figure of the chapters, and the control that a reader works it by: a knob or slider of its own, else a field. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The first figure of each widget: its page, its name and its place among the figures of that name. */
export const figuresOf = (folder) => {
  const found = new Map();
  for (const page of readdirSync(folder).filter((name) => name.endsWith('.html') && !name.includes('one-file')))
    for (const [, name] of readFileSync(join(folder, page), 'utf8').matchAll(/<figure[^>]* data-figure="([^"]+)"/g))
      if (!found.has(name)) found.set(name, { page, name });
  return [...found.values()];
};

/** Brings the figure into view, awake, and gives its control with a key that works it and one that works it back. */
export const controlOf = async (page, name) => {
  const figure = page.locator(`figure[data-figure="${name}"]`).first();
  await figure.scrollIntoViewIfNeeded();
  await page.waitForSelector(`figure[data-figure="${name}"][data-awake]`);
  const kinds = {
    slider: '[role="slider"]',
    field: '.field.quantity input:visible',
    thread: '.field.thread input:visible',
    text: '.field.text :is(input, textarea):visible',
    choice: '.field.choice input:visible',
  };
  for (const [kind, css] of Object.entries(kinds)) {
    const control = figure.locator(css).first();
    if ((await control.count()) === 0) continue;
    await control.scrollIntoViewIfNeeded();
    // A pitch with one digit more and one digit less are both threads.
    if (kind === 'thread') await control.fill('M10x1.2');
    await control.focus();
    if (kind !== 'thread' && kind !== 'text') return { control, kind, keys: ['ArrowUp', 'ArrowDown'] };
    await page.keyboard.press('End');
    return { control, kind, keys: ['5', 'Backspace'] };
  }
  throw new Error(`The figure ${name} has no control to work.`);
};
