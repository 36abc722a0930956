/**
 * Before each test file: properties draw the same cases at every run, so that a run that fails can be run again (`SEED=9 npm test`
 * draws others), and the file begins with modules that remember nothing of the files before it, with which it shares a process.
 */
import fc from 'fast-check';
import { afterAll, vi } from 'vitest';

fc.configureGlobal({ seed: Number(process.env.SEED ?? 8) });
vi.resetModules();
afterAll(() => void vi.unstubAllGlobals());
