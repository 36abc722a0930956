/** The command that asks one relation: a result as JSON, or the sentence why there is none. */
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';

const ask = (...args: string[]) =>
  spawnSync(process.execPath, [resolve(import.meta.dirname, '../../widgets/site/ask.mjs'), ...args], {
    encoding: 'utf8',
  });

it('gives a result, or a refusal in its sentence', () => {
  expect(JSON.parse(ask('net-lead', '{"h_C":1,"L_C":1.5875,"h_A":1,"L_A":1.5}').stdout).Delta).toBeCloseTo(0.0875, 12);
  const refused = ask('usable-thread', '{"l_s":10,"q_e":1,"d":10}');
  expect(refused.status).toBe(2);
  expect(refused.stderr).toMatch(/^A thread 10 mm long can’t keep 10 mm engaged/);
});

const known = ['C=3/8-16 UNC', 'z_c=200 µm ± 2 µm', 'A=M10x1.5'];

it('finds one number from others, as a sentence', () => {
  expect(ask('solve', ...known, 'n', '--say').stdout).toMatch(/^n is \(2\.286 ± 0\.026\).*net-motion\.\n$/);
});

it('finds it as JSON too, and refuses in a sentence', inDeep, () => {
  const solved = JSON.parse(ask('solve', ...known, 'n').stdout);
  expect(solved.answers[0].value).toBeCloseTo(16 / 7, 9);
  expect(solved.chain.map(({ relation }: { relation: string }) => relation)).toEqual(['net-lead', 'net-motion']);
  const refused = ask('solve', 'n', 'k');
  expect(refused.status).toBe(2);
  expect(refused.stderr).toMatch(/^Read 2 unknowns/);
});
