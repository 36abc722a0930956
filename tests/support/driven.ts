/**
 * What the tests ask of a browser, whichever drives it: these calls and no more. Playwright’s pages satisfy it for Chromium and Firefox,
 * those of `webkit/` for WebKit; a call that is not here does not compile, and is added here and there first. What WebKit’s
 * driver lacks is asked of playwright’s own page (`beyond`), in a test that says what it needs.
 */
import type { Page as PlaywrightPage } from 'playwright-core';
import { engine } from './engines.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}
export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Limit {
  readonly timeout?: number;
}
export interface Named {
  readonly name?: string | RegExp;
  readonly exact?: boolean;
}
export interface File {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}
export type Role = 'button' | 'radio' | 'link' | 'slider';
export type Run<Given, R> = string | ((given: Given) => R | Promise<R>);
export type RunOn<E, Given, R> = (found: E, given: Given) => R | Promise<R>;

export interface Locator {
  page(): Page;
  locator(selector: string, more?: { hasText?: string | RegExp }): Locator;
  getByRole(role: Role, named?: Named): Locator;
  getByLabel(text: string | RegExp, how?: { exact?: boolean }): Locator;
  getByText(text: string, how?: { exact?: boolean }): Locator;
  filter(by: { hasText: string | RegExp }): Locator;
  and(other: Locator): Locator;
  nth(index: number): Locator;
  first(): Locator;
  last(): Locator;
  all(): Promise<Locator[]>;
  count(): Promise<number>;
  evaluate<R, Given, E extends SVGElement | HTMLElement>(run: RunOn<E, Given, R>, given: Given): Promise<R>;
  evaluate<R, E extends SVGElement | HTMLElement>(run: RunOn<E, void, R>): Promise<R>;
  evaluateAll<R, E extends SVGElement | HTMLElement>(run: (all: E[]) => R): Promise<R>;
  getAttribute(name: string): Promise<string | null>;
  textContent(): Promise<string | null>;
  innerHTML(): Promise<string>;
  allTextContents(): Promise<string[]>;
  inputValue(): Promise<string>;
  isVisible(): Promise<boolean>;
  boundingBox(): Promise<(Point & Size) | null>;
  waitFor(how?: { state?: 'visible' | 'attached' | 'hidden' } & Limit): Promise<void>;
  scrollIntoViewIfNeeded(): Promise<void>;
  hover(): Promise<void>;
  click(): Promise<void>;
  tap(): Promise<void>;
  check(): Promise<void>;
  focus(): Promise<void>;
  blur(): Promise<void>;
  fill(text: string): Promise<void>;
  press(key: string): Promise<void>;
  selectOption(value: string): Promise<unknown>;
  setInputFiles(file: File): Promise<void>;
}

export interface Page {
  locator(selector: string, more?: { hasText?: string | RegExp }): Locator;
  getByRole(role: Role, named?: Named): Locator;
  getByLabel(text: string | RegExp, how?: { exact?: boolean }): Locator;
  getByText(text: string, how?: { exact?: boolean }): Locator;
  goto(address: string): Promise<unknown>;
  reload(): Promise<unknown>;
  goBack(): Promise<unknown>;
  url(): string;
  title(): Promise<string>;
  evaluate<R, Given>(run: Run<Given, R>, given: Given): Promise<R>;
  evaluate<R>(run: Run<void, R>): Promise<R>;
  waitForTimeout(ms: number): Promise<void>;
  waitForSelector(selector: string): Promise<unknown>;
  waitForFunction<Given>(run: Run<Given, unknown>, given: Given, limit?: Limit): Promise<unknown>;
  waitForFunction(run: Run<void, unknown>): Promise<unknown>;
  waitForURL(address: RegExp): Promise<void>;
  emulateMedia(like: { colorScheme: 'light' | 'dark' }): Promise<void>;
  viewportSize(): Size | null;
  setViewportSize(size: Size): Promise<void>;
  close(): Promise<void>;
  /** Another window of the same browser. */
  context(): { newPage(): Promise<Page> };
  readonly keyboard: {
    press(key: string): Promise<void>;
    type(text: string): Promise<void>;
  };
  readonly mouse: {
    move(x: number, y: number, how?: { steps?: number }): Promise<void>;
    down(): Promise<void>;
    up(): Promise<void>;
    wheel(deltaX: number, deltaY: number): Promise<void>;
  };
}

/** Playwright’s own page, for what WebKit’s driver lacks; a test that asks this says so first (`needs`). */
export const beyond = (page: Page): PlaywrightPage => {
  if (engine() === 'webkit') throw new Error('WebKit is driven without playwright');
  return page as PlaywrightPage;
};
