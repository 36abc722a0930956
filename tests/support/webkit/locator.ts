/** A place on the page in WebKit: what the tests ask of one, over the WebDriver standard. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { File, Limit, Locator, Named, Point, Role, RunOn, Size } from '../driven.ts';
import type { Step, Wanted } from './find.ts';
import type { WebkitPage } from './page.ts';

export const wanted = (text: string | RegExp, exact = false): Wanted =>
  typeof text === 'string' ? { text, exact } : { source: text.source, flags: text.flags };

/** A selector as playwright spells it: CSS, `xpath=…`, or `visible=true`. */
export const stepOf = (selector: string): Step => {
  if (selector === 'visible=true') return { by: 'visible' };
  return selector.startsWith('xpath=') ? { by: 'xpath', path: selector.slice(6) } : { by: 'css', path: selector };
};

export const roleStep = (role: Role, { name, exact }: Named = {}): Step =>
  name === undefined ? { by: 'role', role } : { by: 'role', role, name: wanted(name, exact) };

export class WebkitLocator implements Locator {
  readonly #page: WebkitPage;
  readonly steps: readonly Step[];

  constructor(page: WebkitPage, steps: readonly Step[]) {
    this.#page = page;
    this.steps = steps;
  }

  #with(...steps: Step[]): WebkitLocator {
    return new WebkitLocator(this.#page, [...this.steps, ...steps]);
  }

  page(): WebkitPage {
    return this.#page;
  }
  locator(selector: string, { hasText }: { hasText?: string | RegExp } = {}): WebkitLocator {
    const inside = this.#with(stepOf(selector));
    return hasText === undefined ? inside : inside.filter({ hasText });
  }
  getByRole(role: Role, named?: Named): WebkitLocator {
    return this.#with(roleStep(role, named));
  }
  getByLabel(text: string | RegExp, { exact }: { exact?: boolean } = {}): WebkitLocator {
    return this.#with({ by: 'label', wanted: wanted(text, exact) });
  }
  getByText(text: string, { exact }: { exact?: boolean } = {}): WebkitLocator {
    return this.#with({ by: 'text', wanted: wanted(text, exact) });
  }
  filter({ hasText }: { hasText: string | RegExp }): WebkitLocator {
    return this.#with({ by: 'hasText', wanted: wanted(hasText) });
  }
  and(other: WebkitLocator): WebkitLocator {
    return this.#with({ by: 'and', steps: other.steps });
  }
  nth(index: number): WebkitLocator {
    return this.#with({ by: 'nth', index });
  }
  first(): WebkitLocator {
    return this.nth(0);
  }
  last(): WebkitLocator {
    return this.nth(-1);
  }
  async all(): Promise<WebkitLocator[]> {
    return Array.from({ length: await this.count() }, (_, i) => this.nth(i));
  }

  count(): Promise<number> {
    return this.evaluateAll((all) => all.length);
  }
  /** Runs in the page with every element found, none among them. */
  evaluateAll<R, E extends SVGElement | HTMLElement>(run: (all: E[]) => R): Promise<R> {
    return this.#page.inPage(this.steps, `return (${run})(found)`, null) as Promise<R>;
  }
  /** Runs in the page with the one element there, waited for; throws when there are several. */
  async evaluate<R, Given, E extends SVGElement | HTMLElement = HTMLElement>(
    run: RunOn<E, Given, R>,
    given?: Given,
  ): Promise<R> {
    const code = `if (found.length > 1) throw new Error(found.length + ' elements where one was meant: ' + JSON.stringify(steps));
      return found.length === 0 ? { none: true } : { value: await (${run})(found[0], given) }`;
    return this.#page
      .until(
        () => this.#page.inPage(this.steps, code, given) as Promise<{ none?: true; value?: R }>,
        (answer) => answer.none === undefined,
        () => `nothing at ${JSON.stringify(this.steps)}`,
      )
      .then((answer) => answer.value as R);
  }

  getAttribute(name: string): Promise<string | null> {
    return this.evaluate((e, of) => e.getAttribute(of), name);
  }
  textContent(): Promise<string | null> {
    return this.evaluate((e) => e.textContent);
  }
  innerHTML(): Promise<string> {
    return this.evaluate((e) => e.innerHTML);
  }
  inputValue(): Promise<string> {
    return this.evaluate((e) => (e as HTMLInputElement).value);
  }
  isVisible(): Promise<boolean> {
    return this.#page.inPage([...this.steps, { by: 'visible' }], 'return found.length > 0', null) as Promise<boolean>;
  }
  allTextContents(): Promise<string[]> {
    return this.evaluateAll((all) => all.map((e) => e.textContent ?? ''));
  }
  boundingBox(): Promise<(Point & Size) | null> {
    return this.evaluate((e) => {
      const { x, y, width, height } = e.getBoundingClientRect();
      return { x, y, width, height };
    });
  }
  async waitFor({
    state = 'visible',
    timeout,
  }: { state?: 'visible' | 'attached' | 'hidden' } & Limit = {}): Promise<void> {
    const steps: Step[] = state === 'attached' ? [...this.steps] : [...this.steps, { by: 'visible' }];
    const there = state !== 'hidden';
    await this.#page.until(
      () => this.#page.inPage(steps, 'return found.length', null) as Promise<number>,
      (count) => count > 0 === there,
      () => `not ${state}: ${JSON.stringify(this.steps)}`,
      timeout,
    );
  }

  async scrollIntoViewIfNeeded(): Promise<void> {
    await this.evaluate((e) => {
      const box = e.getBoundingClientRect();
      if (box.top < 0 || box.bottom > innerHeight || box.left < 0 || box.right > innerWidth)
        e.scrollIntoView({ block: 'center', inline: 'nearest', behavior: 'instant' });
    });
  }
  /** The middle of the element, once it can be hit there. */
  async #middle(): Promise<{ x: number; y: number }> {
    const at = await this.#page.until(
      async () => {
        await this.scrollIntoViewIfNeeded();
        return this.evaluate(async (e) => {
          const before = e.getBoundingClientRect();
          await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
          const box = e.getBoundingClientRect();
          const still = box.x === before.x && box.y === before.y;
          const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
          const top = document.elementFromPoint(x, y);
          const own = (e as HTMLInputElement).labels?.[0];
          const hit = top !== null && (e.contains(top) || top.contains(e) || own?.contains(top) === true);
          return { x, y, ready: still && hit && !e.matches(':disabled'), over: top?.outerHTML.slice(0, 80) };
        });
      },
      ({ ready }) => ready,
      (last) => `can’t be clicked, ${last?.over} lies there: ${JSON.stringify(this.steps)}`,
    );
    return at;
  }
  async hover(): Promise<void> {
    const { x, y } = await this.#middle();
    await this.#page.mouse.move(x, y);
  }
  async click(): Promise<void> {
    const { x, y } = await this.#middle();
    await this.#page.mouse.click(x, y);
  }
  async tap(): Promise<void> {
    const { x, y } = await this.#middle();
    await this.#page.touchscreen.tap(x, y);
  }
  async check(): Promise<void> {
    const checked = () => this.evaluate((e) => (e as HTMLInputElement).checked);
    if (await checked()) return;
    await this.click();
    const complaint = () => `a click did not check ${JSON.stringify(this.steps)}`;
    await this.#page.until(checked, Boolean, complaint, 2000);
  }
  /** Focus first, as playwright does it, for an element that takes it. */
  async focus(): Promise<void> {
    await this.evaluate((e) => e.focus());
  }
  async blur(): Promise<void> {
    await this.evaluate((e) => e.blur());
  }
  /** All of the text replaced as by typing, so that what the page hears is what a reader’s keys would say. */
  async fill(text: string): Promise<void> {
    await this.scrollIntoViewIfNeeded();
    await this.evaluate((e, whole) => {
      const field = e as HTMLInputElement;
      field.focus();
      field.select();
      if (whole !== '') document.execCommand('insertText', false, whole);
      else if (field.value !== '') document.execCommand('delete');
    }, text);
  }
  async press(key: string): Promise<void> {
    await this.focus();
    await this.#page.keyboard.press(key);
  }
  async selectOption(value: string): Promise<void> {
    await this.evaluate((e, to) => {
      (e as HTMLSelectElement).value = to;
      e.dispatchEvent(new Event('input', { bubbles: true }));
      e.dispatchEvent(new Event('change', { bubbles: true }));
    }, value);
  }
  async setInputFiles(file: File): Promise<void> {
    const path = join(this.#page.folder, file.name);
    writeFileSync(path, file.buffer);
    const element = await this.#page.inPage(this.steps, 'return found[0]', null);
    await this.#page.sendKeys(element, path);
  }
}
