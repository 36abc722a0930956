/** What the tests themselves stand on: where a browser for them is looked for. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { ENGINES, missing } from '../setup/engines.mjs';
import { miniBrowser } from '../setup/webkit.mjs';

it('WebKit’s browser is looked for when it is asked for, so one installed meanwhile is found', () => {
  vi.stubEnv('MINI_BROWSER', undefined);
  const libraries = mkdtempSync(join(tmpdir(), 'libraries-'));
  const folder = join(libraries, 'some-machine', 'webkit2gtk-4.1');
  const webkit = ENGINES.find(({ engine }) => engine === 'webkit');
  if (!webkit) throw new Error('no WebKit among the engines');
  const here = { ...webkit, files: () => [miniBrowser(libraries)] };
  try {
    expect(missing(here)).toEqual([join(libraries, 'webkit2gtk-4.1/MiniBrowser')]);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'MiniBrowser'), '');
    expect(missing(here)).toEqual([]);
    expect(miniBrowser(libraries)).toBe(join(folder, 'MiniBrowser'));
    expect(webkit.files()).toContain(miniBrowser());
  } finally {
    rmSync(libraries, { recursive: true });
    vi.unstubAllEnvs();
  }
});
