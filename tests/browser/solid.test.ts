/** The solid: drawn by WebGL, turned and looked round by hand, put together by its buttons, at rest when nothing moves, and whole again after its context was lost. */
import { expect, it } from 'vitest';
import { inDeep, some } from '../support/deep.ts';
import { beyond, type Locator, type Page } from '../support/driven.ts';
import { inChromium } from '../support/engines.ts';
import { asFiles, fieldIn, figure, sentence, settled, shown, useBrowser, type Way, words } from '../support/page.ts';

const { visit } = useBrowser({ solids: true });

/** Before the script that draws: counts calls and triangles that go to the picture, and lends the context so that it can be lost. */
const COUNTS = `(() => {
  self.drawn = { calls: 0, triangles: 0 };
  const { drawArrays, drawElements } = WebGL2RenderingContext.prototype;
  WebGL2RenderingContext.prototype.drawArrays = function (mode, first, count) {
    self.drawn.calls++; self.drawn.triangles += count / 3; self.drawn.gl = this;
    return drawArrays.call(this, mode, first, count);
  };
  WebGL2RenderingContext.prototype.drawElements = function (mode, count, ...more) {
    self.drawn.calls++; self.drawn.triangles += count / 3; self.drawn.gl = this;
    return drawElements.call(this, mode, count, ...more);
  };
})();`;

const open = async (way: Way = {}, before = ''): Promise<{ page: Page; section: Locator; view: Locator }> => {
  const { page } = await visit('per-flat.html', { ...way, fresh: true });
  if (before !== '') await beyond(page).addInitScript(before);
  await beyond(page).route(/solid-painter/, async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: COUNTS + (await answer.text()) });
  });
  await beyond(page).goto(new URL('three-parts.html', page.url()).href);
  const section = await shown(figure(page, 'solid'));
  const view = section.locator('[data-solid]');
  await section.locator('.is-live canvas').waitFor();
  await atRest(page);
  return { page, section, view };
};

/** Where it is drawn: in the worker that was begun last, or on the page. */
const askPainter = <R>(page: Page, expression: string): Promise<R> => {
  const worker = beyond(page).workers().at(-1);
  return worker ? worker.evaluate<R>(expression) : beyond(page).evaluate<R>(expression);
};

const drawn = (page: Page): Promise<{ calls: number; triangles: number }> =>
  askPainter(page, '({ calls: self.drawn?.calls ?? 0, triangles: self.drawn?.triangles ?? 0 })');

/** The fine picture comes a moment after the last change; then nothing more is drawn. */
const atRest = async (page: Page): Promise<void> => {
  let before = -1;
  for (let i = 0; i < 60; i++) {
    const { calls } = await drawn(page);
    if (calls === before && calls > 0) return;
    before = calls;
    await beyond(page).waitForTimeout(400);
  }
  throw new Error('it never comes to rest');
};

const turnsIn = async (section: Locator): Promise<number> =>
  Number((await fieldIn(section, /turns/i).inputValue()).replace('−', '-'));

/** Bytes of the picture as it stands there: an empty one packs to nearly nothing. */
const weight = async (page: Page, section: Locator): Promise<number> => {
  const box = await section.locator('[data-solid]').boundingBox();
  return (await beyond(page).screenshot({ clip: box ?? { x: 0, y: 0, width: 1, height: 1 } })).length;
};

const pull = async (page: Page, from: { x: number; y: number }, dx: number): Promise<void> => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 1; i <= 5; i++) await page.mouse.move(from.x + (dx * i) / 5, from.y);
  await page.mouse.up();
  await settled(page);
};

it('is drawn within what a slow machine draws, and then draws nothing while nothing moves', inChromium, async () => {
  const { page, section } = await open();
  const before = await drawn(page);
  await beyond(page).waitForTimeout(600);
  expect((await drawn(page)).calls).toBe(before.calls);
  // One change: at most a coarse and a fine picture.
  await section.locator('[data-slider=cut]').press('ArrowLeft');
  await atRest(page);
  const after = await drawn(page);
  expect(after.calls - before.calls).toBeGreaterThan(0);
  expect((after.calls - before.calls) / 2).toBeLessThan(20);
  expect((after.triangles - before.triangles) / 2).toBeLessThan(100_000);
});

it('turns when its head is pulled sideways, and is looked round when pulled beside it', inChromium, async () => {
  const { page, section, view } = await open();
  const label = await section.locator('[data-label=turned]').boundingBox();
  const box = await view.boundingBox();
  if (!box || !label) throw new Error('no picture');
  // The head stands at the height of its name, on the axis.
  const head = { x: box.x + (215 / 520) * box.width, y: label.y + label.height / 2 };
  await pull(page, head, -0.4 * box.width);
  const n = await turnsIn(section);
  expect(n).toBeGreaterThan(0.1);
  // Labels move with the picture, which a busy worker paints later.
  await expect.poll(() => words(section.locator('[data-motion=turned]'))).toMatch(/^▼ .*mm$/);
  expect(await words(section.locator('[data-motion=carried]'))).toMatch(/^▲ .*µm$/);
  await pull(page, { x: box.x + 0.95 * box.width, y: box.y + 0.1 * box.height }, -0.2 * box.width);
  expect(await turnsIn(section)).toBe(n);
  expect(await section.locator('[data-slider=round]').getAttribute('aria-valuenow')).not.toBe('15');
});

it('is put together by its buttons, by keys alone, and shown whole again', inChromium, async () => {
  const { page, section } = await open();
  await section.locator('[data-begin]').press('Enter');
  const says = section.locator('[data-step-says]');
  const count = Number(/(\d+) steps/.exec(await words(says))?.[1]);
  expect(count).toBeGreaterThan(4);
  const seen = new Set<string>();
  for (let i = 0; i < count; i++) {
    await section.locator('[data-build="1"]').press('Enter');
    seen.add(await words(says));
  }
  expect(seen.size).toBe(count);
  await section.locator('[data-whole]').press('Enter');
  expect(await section.locator('[data-begin]').isVisible()).toBe(true);
  expect(await page.evaluate('document.activeElement.hasAttribute("data-begin")')).toBe(true);
});

it('shows the line drawing when its context is lost, and the solid when it is back', inChromium, async () => {
  const { page, section } = await open();
  const before = await weight(page, section);
  await askPainter(page, 'self.lost = self.drawn.gl.getExtension("WEBGL_lose_context"); self.lost.loseContext()');
  await section.locator('.solid-still [data-still] path').first().waitFor({ state: 'visible' });
  // The numbers go on meanwhile.
  await section.locator('[data-knob]').press('ArrowRight');
  await settled(page);
  expect(await sentence(section)).toMatch(/turns clockwise/);
  await askPainter(page, 'self.lost.restoreContext()');
  await section.locator('.is-live canvas').waitFor({ state: 'visible' });
  await atRest(page);
  expect(await weight(page, section)).toBeGreaterThan(0.7 * before);
});

/** A browser that has none, in a worker and on a page. */
const NO_WEBGL =
  '(self.OffscreenCanvas ?? HTMLCanvasElement).prototype.getContext = () => null; if (self.HTMLCanvasElement) HTMLCanvasElement.prototype.getContext = () => null;';

/** A worker that can't be begun, one whose script does not come up, and one that the browser has ended. */
const NO_WORKERS = {
  barred: 'window.Worker = class { constructor() { throw new DOMException("barred", "SecurityError"); } };',
  broken:
    'window.Worker = class { constructor() { setTimeout(() => this.onerror?.(new Event("error"))); } postMessage() {} terminate() {} };',
  silent:
    'const later = setTimeout; window.setTimeout = (run, ms) => later(run, ms >= 2000 ? 150 : ms); window.Worker = class { postMessage() {} terminate() {} };',
} as const;
it.each(some(1, ['broken', 'barred', 'silent'] as const))(
  'is drawn on the page where its worker is %s',
  inChromium,
  async (kind) => {
    const { page, section } = await open({}, NO_WORKERS[kind]);
    expect(beyond(page).workers()).toEqual([]);
    const before = await drawn(page);
    await section.locator('[data-knob]').press('ArrowRight');
    await atRest(page);
    expect((await drawn(page)).calls).toBeGreaterThan(before.calls);
    expect(await words(section.locator('[data-motion=carried]'))).toMatch(/^▲ /);
  },
);

it('is drawn on by the page, unasked, where its worker is ended in the middle', inChromium, async () => {
  const { page, section } = await open(
    {},
    `const Begun = self.Worker; self.Worker = class extends Begun { constructor(...given) { super(...given); self.begun = this; } };
    const later = setTimeout; self.setTimeout = (run, ms, ...more) => later(run, ms >= 2000 && self.ended ? 150 : ms, ...more);`,
  );
  await beyond(page).evaluate('self.ended = true; self.begun.terminate()');
  await section.locator('[data-knob]').press('ArrowRight');
  // What draws on the page is fetched then.
  await expect.poll(() => beyond(page).evaluate('self.drawn?.calls ?? 0'), { timeout: 20_000 }).toBeGreaterThan(0);
  expect(beyond(page).workers()).toEqual([]);
  await atRest(page);
  expect(await section.locator('.is-live canvas').isVisible()).toBe(true);
  expect(await words(section.locator('[data-motion=carried]'))).toMatch(/^▲ /);
});

it('is drawn by a worker where the page is served, and by the page where it is opened as a file', inDeep, async () => {
  const served = await open();
  expect(beyond(served.page).workers().length).toBe(1);
  const { page } = await visit('three-parts.html', { fresh: true, from: asFiles() });
  const section = await shown(figure(page, 'solid'));
  await section.locator('.is-live canvas').waitFor();
  expect(beyond(page).workers()).toEqual([]);
});

it('lets the carried part go round when the lock is off', inDeep, async () => {
  const { page, section } = await open();
  await section.getByLabel('gives').click();
  await section.locator('[data-knob]').press('Shift+ArrowRight');
  await settled(page);
  expect(await sentence(section)).toContain('goes round');
  // It then moves by thread A alone.
  expect(await words(section.locator('[data-motion=carried]'))).toMatch(/^▼ 1\.500 mm$/);
});

it('draws nothing in a tab that is hidden, and has caught up when it is seen again', inDeep, async () => {
  const { page, section } = await open();
  const hide = (hidden: boolean) =>
    page.evaluate(
      `Object.defineProperty(document, 'hidden', { configurable: true, get: () => ${hidden} }); document.dispatchEvent(new Event('visibilitychange'))`,
    );
  const before = await drawn(page);
  await hide(true);
  await section.locator('[data-knob]').press('ArrowRight');
  await settled(page);
  await beyond(page).waitForTimeout(600);
  expect((await drawn(page)).calls).toBe(before.calls);
  await hide(false);
  await atRest(page);
  expect((await drawn(page)).calls).toBeGreaterThan(before.calls);
});

it('steps from one place to the next without a passage for a reader who wants less motion', inDeep, async () => {
  const { page, section } = await open({ reducedMotion: 'reduce' });
  await section.locator('[data-begin]').press('Enter');
  await atRest(page);
  const before = await drawn(page);
  await section.locator('[data-build="1"]').press('Enter');
  await atRest(page);
  // A picture while it moves and a fine one at rest, each of a call a body and one for the lines.
  expect((await drawn(page)).calls - before.calls).toBeLessThan(30);
});

it('is the line drawing where a reader has colours of their own', inDeep, async () => {
  const { page } = await visit('three-parts.html', { fresh: true, forcedColors: 'active' });
  const section = await shown(figure(page, 'solid'));
  expect(await section.locator('.solid-still [data-still] path').first().isVisible()).toBe(true);
  expect(await section.locator('canvas:visible').count()).toBe(0);
});

it.each([
  ['320 px wide', { viewport: { width: 320, height: 640 } }],
  ['enlarged to 200 %', { viewport: { width: 640, height: 450 }, deviceScaleFactor: 2 }],
] as const)('has its names inside the picture, and no page to push sideways, %s', inDeep, async (_, way) => {
  const { page, view } = await open(way);
  expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  const box = await view.boundingBox();
  if (!box) throw new Error('no picture');
  for (const role of ['base', 'turned', 'carried']) {
    const label = await view.locator(`[data-label=${role}]`).boundingBox();
    if (!label) throw new Error(`no name of ${role}`);
    expect(label.y, role).toBeGreaterThanOrEqual(box.y - 1);
    expect(label.y + label.height, role).toBeLessThanOrEqual(box.y + box.height + 1);
    expect(label.x + label.width, role).toBeLessThanOrEqual(way.viewport.width);
  }
});

it.each([
  ['without a script', { javaScriptEnabled: false }],
  ['without WebGL', {}],
] as const)('stands as a line drawing with its sentence, %s', inDeep, async (_, way) => {
  const { page } = await visit('per-flat.html', { ...way, fresh: true });
  await beyond(page).route(/solid-painter/, (route) =>
    route.fetch().then(async (answer) => route.fulfill({ response: answer, body: NO_WEBGL + (await answer.text()) })),
  );
  await beyond(page).goto(new URL('three-parts.html', page.url()).href);
  const section = figure(page, 'solid');
  await section.scrollIntoViewIfNeeded();
  if (!('javaScriptEnabled' in way)) {
    await shown(section);
    await section.locator('[data-slider=cut]').waitFor({ state: 'hidden' });
  }
  expect(await section.locator('.solid-still [data-still] path').first().isVisible()).toBe(true);
  expect(await section.locator('canvas:visible').count()).toBe(0);
  expect(await sentence(section)).toMatch(/\.$/);
});
