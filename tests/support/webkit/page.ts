/** A page in WebKit: what the tests ask of one, over the WebDriver standard. */
import type { Limit, Named, Page, Role, Run, Size } from '../driven.ts';
import { type Driver, SCREEN } from './driver.ts';
import { find, type Step } from './find.ts';
import { roleStep, stepOf, WebkitLocator, wanted } from './locator.ts';

const PATIENCE = 15_000;
/** More than the bars of a window take. */
const BARS = 100;
const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Keys by the code points the standard gives them (WebDriver, section “Keyboard actions”). */
const KEYS: Record<string, string> = {
  Tab: '\uE004',
  Enter: '\uE007',
  Shift: '\uE008',
  Control: '\uE009',
  Alt: '\uE00A',
  Escape: '\uE00C',
  Space: ' ',
  PageUp: '\uE00E',
  PageDown: '\uE00F',
  End: '\uE010',
  Home: '\uE011',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
  Backspace: '\uE003',
  Delete: '\uE017',
};

/** A script that resolves what the steps lead to, runs `body` on it, and gives the answer or the error as data. */
const script = (body: string): string => `
  const [steps, given] = arguments;
  const find = ${find};
  const answer = arguments[arguments.length - 1];
  // An element is the driver’s to hand over; of anything else, what can be said as data.
  const data = (value) => {
    if (value instanceof Element) return value;
    try { return JSON.parse(JSON.stringify(value) ?? 'null'); } catch { return null; }
  };
  (async () => { const found = find(steps); ${body} })().then(
    (value) => answer({ value: data(value) }),
    (error) => answer({ error: String(error && error.message || error) }));
`;

interface Windows {
  readonly close: () => void;
  readonly newPage: () => Promise<Page>;
}

export class WebkitPage implements Page {
  readonly #driver: Driver;
  readonly #handle: string;
  /** Where the driver’s commands go now; one session has one such place. */
  readonly #at: { handle: string };
  readonly #windows: Windows;
  #pointer = { x: 0, y: 0 };
  #rolled = { x: 0, y: 0 };
  #url = '';
  #size: Size | null = null;

  constructor(driver: Driver, at: { handle: string }, handle: string, windows: Windows) {
    this.#driver = driver;
    this.#at = at;
    this.#handle = handle;
    this.#windows = windows;
  }

  get folder(): string {
    return this.#driver.folder;
  }
  async #ask(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<unknown> {
    if (this.#at.handle !== this.#handle) {
      await this.#driver.ask('POST', '/window', { handle: this.#handle });
      this.#at.handle = this.#handle;
    }
    return this.#driver.ask(method, path, body);
  }
  async inPage(steps: readonly Step[], body: string, given: unknown): Promise<unknown> {
    const answer = (await this.#ask('POST', '/execute/async', {
      script: script(body),
      args: [steps, given ?? null],
    })) as { value?: unknown; error?: string };
    if (answer.error !== undefined) throw new Error(answer.error);
    return answer.value;
  }
  /** Asks again until the answer will do; while the page changes under the question, that counts as no answer. */
  async until<T>(
    ask: () => Promise<T>,
    good: (answer: T) => boolean,
    complaint: (last: T | undefined) => string,
    patience = PATIENCE,
  ): Promise<T> {
    const end = Date.now() + patience;
    for (;;) {
      const answer = await ask();
      if (good(answer)) return answer;
      if (Date.now() > end) throw new Error(`${complaint(answer)}, after ${patience} ms`);
      await pause(30);
    }
  }

  locator(selector: string, more: { hasText?: string | RegExp } = {}): WebkitLocator {
    const there = new WebkitLocator(this, [stepOf(selector)]);
    return more.hasText === undefined ? there : there.filter({ hasText: more.hasText });
  }
  getByRole(role: Role, named: Named = {}): WebkitLocator {
    return new WebkitLocator(this, [roleStep(role, named)]);
  }
  getByLabel(text: string | RegExp, { exact }: { exact?: boolean } = {}): WebkitLocator {
    return new WebkitLocator(this, [{ by: 'label', wanted: wanted(text, exact) }]);
  }
  getByText(text: string, { exact }: { exact?: boolean } = {}): WebkitLocator {
    return new WebkitLocator(this, [{ by: 'text', wanted: wanted(text, exact) }]);
  }

  async goto(address: string): Promise<void> {
    this.#url = address;
    await this.#ask('POST', '/url', { url: this.#url });
  }
  async reload(): Promise<void> {
    await this.#ask('POST', '/refresh', {});
  }
  /**
   * Back to another document, or to another place of this one. The driver’s own way back passes over places that no hand has gone to, and
   * answers before the page has gone.
   */
  async goBack(): Promise<void> {
    await this.evaluate(() => {
      const here = window as unknown as { left: boolean };
      here.left = false;
      addEventListener('popstate', () => Object.assign(here, { left: true }), { once: true });
      setTimeout(() => history.back());
    });
    const gone = () => this.evaluate(() => (window as unknown as { left?: boolean }).left !== false).catch(() => false);
    await this.until(gone, Boolean, () => 'did not go back');
    await this.waitForFunction(() => document.readyState === 'complete');
  }
  evaluate<R, Given>(run: Run<Given, R>, given?: Given): Promise<R> {
    return this.inPage([], typeof run === 'string' ? run : `return (${run})(given)`, given) as Promise<R>;
  }
  async waitForTimeout(ms: number): Promise<void> {
    await pause(ms);
  }
  async waitForSelector(selector: string): Promise<void> {
    await this.locator(selector).waitFor({ state: 'attached' });
  }
  async waitForFunction<Given>(run: Run<Given, unknown>, given?: Given, { timeout }: Limit = {}): Promise<void> {
    await this.until(
      () => this.evaluate(run, given),
      (answer) => Boolean(answer),
      () => `waited in vain for ${run}`,
      timeout,
    );
  }
  async waitForURL(address: RegExp): Promise<void> {
    const url = () => this.evaluate(() => location.href).catch(() => '');
    await this.until(
      url,
      (now) => address.test(now),
      (last) => `at ${last}, not at ${address}`,
    );
    await this.waitForFunction(() => document.readyState === 'complete');
  }
  /** Where the test last sent the page; where it has gone since, `location` tells. */
  url(): string {
    return this.#url;
  }
  title(): Promise<string> {
    return this.evaluate(() => document.title);
  }
  /** The standard has no command for what a reader prefers: the page stays as the browser was started, and on a screen. */
  async emulateMedia(): Promise<void> {}
  viewportSize(): Size | null {
    return this.#size;
  }
  /** Sets the size of the page; the window is larger by its own bars, and the screen only so tall. */
  async setViewportSize(asked: Size): Promise<void> {
    const size = { width: asked.width, height: Math.min(asked.height, SCREEN.height - BARS) };
    this.#size = size;
    for (let tries = 0; tries < 40; tries++) {
      const [width, height] = await this.evaluate(() => [innerWidth, innerHeight] as const);
      if (width === size.width && height === size.height) return;
      if (tries % 10 === 0) {
        const rect = (await this.#ask('GET', '/window/rect')) as { width: number; height: number };
        await this.#ask('POST', '/window/rect', {
          width: size.width + Math.max(0, rect.width - width),
          height: size.height + Math.max(0, rect.height - height),
        });
      }
      await pause(25);
    }
    const [width] = await this.evaluate(() => [innerWidth]);
    if (width !== size.width) throw new Error(`WebKit’s window takes ${width} px, not ${size.width}`);
  }
  async sendKeys(element: unknown, text: string): Promise<void> {
    const id = Object.values(element as Record<string, string>)[0];
    await this.#ask('POST', `/element/${id}/value`, { text });
  }
  async close(): Promise<void> {
    await this.evaluate(() => localStorage.clear()).catch(() => {});
    await this.goto('about:blank');
    this.#windows.close();
  }
  context(): { newPage: () => Promise<Page> } {
    return { newPage: this.#windows.newPage };
  }

  readonly keyboard = {
    press: async (chord: string): Promise<void> => {
      const names = chord === '+' ? ['+'] : chord.split('+');
      const values = names.map((name) => KEYS[name] ?? name);
      await this.#act({
        type: 'key',
        id: 'keys',
        actions: [
          ...values.map((value) => ({ type: 'keyDown', value })),
          ...values.toReversed().map((value) => ({ type: 'keyUp', value })),
        ],
      });
    },
    type: async (text: string): Promise<void> => {
      await this.#act({
        type: 'key',
        id: 'keys',
        actions: [...text].flatMap((value) => [
          { type: 'keyDown', value: value === '\n' ? KEYS.Enter : value },
          { type: 'keyUp', value: value === '\n' ? KEYS.Enter : value },
        ]),
      });
    },
  };
  readonly mouse = {
    move: async (x: number, y: number, { steps = 1 }: { steps?: number } = {}): Promise<void> => {
      const from = this.#pointer;
      // The standard lets no pointer leave the page, which a reader's does while it drags: it stops at the edge.
      const [width, height] = await this.evaluate(() => [innerWidth, innerHeight] as const);
      const within = (value: number, size: number) => Math.round(Math.min(size - 1, Math.max(0, value)));
      const at = (k: number) => ({
        type: 'pointerMove',
        duration: 0,
        x: within(from.x + ((x - from.x) * k) / steps, width),
        y: within(from.y + ((y - from.y) * k) / steps, height),
      });
      await this.#point(Array.from({ length: steps }, (_, i) => at(i + 1)));
      this.#pointer = { x, y };
    },
    down: () => this.#point([{ type: 'pointerDown', button: 0 }]),
    up: () => this.#point([{ type: 'pointerUp', button: 0 }]),
    click: async (x: number, y: number): Promise<void> => {
      await this.mouse.move(x, y);
      await this.mouse.down();
      await this.mouse.up();
    },
    wheel: async (deltaX: number, deltaY: number): Promise<void> => {
      const { x, y } = this.#pointer;
      // WebKitGTK takes what it is told for a place, and rolls the wheel by how far that is from the last.
      this.#rolled = { x: this.#rolled.x + deltaX, y: this.#rolled.y + deltaY };
      await this.#act({
        type: 'wheel',
        id: 'wheel',
        actions: [
          {
            type: 'scroll',
            x: Math.round(x),
            y: Math.round(y),
            deltaX: this.#rolled.x,
            deltaY: this.#rolled.y,
            duration: 0,
          },
        ],
      });
      // WebKit hands it to the page with a later frame, and two of one frame as one.
      await pause(80);
    },
  };
  readonly touchscreen = {
    tap: (x: number, y: number): Promise<void> =>
      this.#act({
        type: 'pointer',
        id: 'finger',
        parameters: { pointerType: 'touch' },
        actions: [
          { type: 'pointerMove', duration: 0, x: Math.round(x), y: Math.round(y) },
          { type: 'pointerDown', button: 0 },
          { type: 'pointerUp', button: 0 },
        ],
      }),
  };
  async #act(source: Record<string, unknown>): Promise<void> {
    await this.#ask('POST', '/actions', { actions: [source] });
  }
  #point(actions: Record<string, unknown>[]): Promise<void> {
    return this.#act({ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions });
  }
}
