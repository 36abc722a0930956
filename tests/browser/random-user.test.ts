/**
 * The address is the whole state of a page: a reader of chance does some dozens of things over a few pages, and the address is
 * opened in a browser that keeps nothing. `ACTIONS=5000 SEED=3 npm run deep -- random-user` does more and others; a run that
 * fails says how to play the least part of it again.
 */
import fc from 'fast-check';
import { expect, inject, it } from 'vitest';
import { howMany, SEED, these } from '../support/deep.ts';
import { beyond } from '../support/driven.ts';
import { engine } from '../support/engines.ts';
import { awake, pageNames, useBrowser, written } from '../support/page.ts';
import { type Action, act, anyAction, differences, type User, wholeSight } from '../support/random-user.ts';

const { visit } = useBrowser();

/** At every run; a deep one goes over all pages that have figures. */
const FEW = [
  'two-screws',
  'play-and-flanks',
  'lead-error',
  'design-sheet',
  'three-feet',
  'per-flat',
  'preload-and-lock',
  'effort-and-feel',
  'calibrate',
  'does-it-fit',
];
const NO_FIGURES = ['glossary', 'ideas', 'review', 'symptoms'];
const ACTIONS = howMany(24, 5000, 'ACTIONS');
/** Actions before the address is opened elsewhere. */
const JOURNEY = 24;
/** A failing journey is played this many times more at most, to find the least part of it that fails. */
const TRIES = 40;

interface Journey {
  readonly page: string;
  readonly actions: readonly Action[];
}

/** Plays a journey; what its address does not bring back, if anything. */
const play = async ({ page: start, actions }: Journey): Promise<string[]> => {
  const { page, close } = await visit(`${start}.html`, { fresh: true });
  const other = await page.context().newPage();
  try {
    await other.goto(`${inject('site')}two-screws.html`);
    await awake(other);
    // A tab behind another is drawn once a second; WebKit’s driver brings to the front whatever it asks.
    if (engine() !== 'webkit') await beyond(page).bringToFront();
    const user: User = { page, other, depth: 0 };
    for (const action of actions) {
      const lost = await act(user, action).catch((error: Error) => [`fails: ${error.message}`]);
      if (lost.length > 0) return [`${action.do} at ${page.url()}`, ...lost];
    }
    const here = await wholeSight(page);
    const address = (await written(page)).href;
    const elsewhere = await visit(address.slice(inject('site').length), { fresh: true, apart: true });
    try {
      // What is worked out in the background may come late, here or there.
      let lost = differences(here, await wholeSight(elsewhere.page));
      for (let i = 0; i < 20 && lost.length > 0; i++) {
        await elsewhere.page.waitForTimeout(150);
        lost = differences(await wholeSight(page), await wholeSight(elsewhere.page));
      }
      return lost.length === 0 ? [] : [`opened elsewhere: ${address}`, ...lost];
    } finally {
      await elsewhere.close();
    }
  } finally {
    await other.close();
    await close();
  }
};

interface Failure {
  readonly journey: Journey;
  readonly lost: readonly string[];
}

/** Leaves out actions for as long as the journey fails without them. */
const shortened = async (failure: Failure): Promise<Failure> => {
  let least = failure;
  let tries = TRIES;
  for (let size = Math.ceil(least.journey.actions.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2))
    for (let from = 0; from < least.journey.actions.length && tries > 0; tries--) {
      const { page, actions } = least.journey;
      const journey = { page, actions: [...actions.slice(0, from), ...actions.slice(from + size)] };
      const lost = await play(journey);
      if (lost.length > 0) least = { journey, lost };
      else from += size;
    }
  return least;
};

const journeys = (): Journey[] => {
  const all = pageNames().map((name) => name.replace('.html', ''));
  const pages = these(
    all.filter((name) => !NO_FIGURES.includes(name)),
    FEW,
  );
  if (process.env.REPLAY !== undefined) return [JSON.parse(process.env.REPLAY) as Journey];
  const actions = fc.sample(anyAction, { numRuns: ACTIONS, seed: SEED });
  return Array.from({ length: Math.ceil(ACTIONS / JOURNEY) }, (_, i) => ({
    page: pages[(i + SEED) % pages.length] ?? '',
    actions: actions.slice(i * JOURNEY, (i + 1) * JOURNEY),
  }));
};

it('whatever a reader does, a reload and the address in another browser give the same page', {
  retry: 0,
  timeout: 240_000 + ACTIONS * 2000,
}, async () => {
  for (const journey of journeys()) {
    const lost = await play(journey);
    if (lost.length === 0) continue;
    const least = process.env.REPLAY === undefined ? await shortened({ journey, lost }) : { journey, lost };
    const replay = JSON.stringify(least.journey).replace(/'/g, "'\\''");
    expect.fail(
      [`SEED=${SEED}. To play it again: REPLAY='${replay}' npm run deep -- random-user`, ...least.lost].join('\n'),
    );
  }
});
