/** Which browser engine the tests of this run work in, and what its driver can't do, which is said where a test is left out. */
import { inject, type TestContext } from 'vitest';

export type Engine = 'chromium' | 'firefox' | 'webkit';

declare module 'vitest' {
  export interface ProvidedContext {
    engine: Engine;
  }
}

/** What some tests need beside turning pages, typing, pointing and looking. */
export type Skill =
  | 'paper'
  | 'as printed'
  | 'forced colours'
  | 'touch'
  | 'offline'
  | 'kept pages'
  | 'requests'
  | 'first word'
  | 'protocol';

const NOT_IN_STANDARD = 'the standard protocol that drives it has no command for that';

const LACKS: Record<Skill, { readonly says: string; readonly engines: Partial<Record<Engine, string>> }> = {
  paper: { says: 'printing', engines: { webkit: 'its driver has no command for that' } },
  'as printed': {
    says: 'the styles of paper on the screen',
    engines: { firefox: NOT_IN_STANDARD, webkit: NOT_IN_STANDARD },
  },
  'forced colours': { says: 'forced colours', engines: { webkit: 'it has none' } },
  touch: { says: 'a finger', engines: { firefox: NOT_IN_STANDARD } },
  offline: { says: 'a network cut off', engines: { webkit: NOT_IN_STANDARD } },
  'kept pages': { says: 'a way back to a page that was kept', engines: { firefox: 'its driver loses such a page' } },
  requests: { says: 'what a page asks of the network', engines: { webkit: NOT_IN_STANDARD } },
  'first word': { says: 'a script before the page’s own', engines: { webkit: NOT_IN_STANDARD } },
  protocol: {
    says: 'looking inside the engine',
    engines: { firefox: 'it takes Chromium’s own protocol', webkit: 'it takes Chromium’s own protocol' },
  },
};

export const engine = (): Engine => inject('engine');

/** Said of a test that Chromium is asked at every run, and the others where ENGINES=all: they would differ in it the least. */
export const inChromium = { skip: engine() !== 'chromium' && process.env.ENGINES !== 'all' };

/** Leaves a test out, with the reason, where the engine’s driver lacks what it needs. */
export const needs = (context: Pick<TestContext, 'skip'>, ...skills: Skill[]): void => {
  for (const skill of skills) {
    const why = LACKS[skill].engines[engine()];
    if (why !== undefined) context.skip(`needs ${LACKS[skill].says}: ${why}`);
  }
};
