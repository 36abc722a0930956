/** Which browser engine the tests of this run work in, and what its driver can't do, which is said where a test is left out. */
import { inject, type TestContext } from 'vitest';

export type Engine = 'chromium' | 'firefox' | 'webkit';

declare module 'vitest' {
  export interface ProvidedContext {
    engine: Engine;
  }
}

/** What some tests need beside turning pages, typing, pointing and looking. */
export type Skill = 'paper' | 'touch' | 'sizes' | 'colours' | 'offline' | 'requests' | 'first word' | 'protocol';

const NOT_IN_STANDARD = 'the standard protocol that drives it has no command for that';

const LACKS: Record<Skill, { readonly says: string; readonly engines: Partial<Record<Engine, string>> }> = {
  paper: { says: 'printing', engines: { firefox: NOT_IN_STANDARD, webkit: NOT_IN_STANDARD } },
  touch: { says: 'a finger', engines: { firefox: NOT_IN_STANDARD } },
  sizes: { says: 'windows larger than a screen', engines: { webkit: 'its window can’t be' } },
  colours: { says: 'colours that the reader prefers', engines: { firefox: NOT_IN_STANDARD, webkit: NOT_IN_STANDARD } },
  offline: { says: 'a network cut off', engines: { webkit: NOT_IN_STANDARD } },
  requests: { says: 'what a page asks of the network', engines: { webkit: NOT_IN_STANDARD } },
  'first word': { says: 'a script before the page’s own', engines: { webkit: NOT_IN_STANDARD } },
  protocol: {
    says: 'looking inside the engine',
    engines: { firefox: 'it takes Chromium’s own protocol', webkit: 'it takes Chromium’s own protocol' },
  },
};

export const engine = (): Engine => inject('engine');

/** Leaves a test out, with the reason, where the engine’s driver lacks what it needs. */
export const needs = (context: Pick<TestContext, 'skip'>, ...skills: Skill[]): void => {
  for (const skill of skills) {
    const why = LACKS[skill].engines[engine()];
    if (why !== undefined) context.skip(`needs ${LACKS[skill].says}: ${why}`);
  }
};
