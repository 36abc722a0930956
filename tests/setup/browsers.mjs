/**
 * Finds the browsers, or installs Debian's where this machine lets us. The browser tests need Chromium; Firefox and WebKit
 * are left out, in so many words, where they can't be had.
 */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { CHROMIUM, SHELL } from './chromium.mjs';
import { ENGINES, leftOut, missing } from './engines.mjs';

const absent = () => ENGINES.filter((engine) => missing(engine).length > 0);

if (absent().length > 0) {
  console.log(
    `Installing ${absent()
      .map(({ name }) => name)
      .join(', ')} from the Debian packages …`,
  );
  const root = process.getuid?.() === 0 ? [] : ['sudo'];
  const run = (...words) => {
    const [command, ...rest] = [...root, ...words];
    execFileSync(command, rest, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
  };
  const packages = absent().flatMap((engine) => engine.packages);
  try {
    run('apt-get', 'update');
    run('apt-get', 'install', '-y', '--no-install-recommends', ...new Set(packages));
  } catch {
    // What is still missing is said below.
  }
}
for (const engine of absent()) console.log(leftOut(engine));

// Chromium whole will do, at twice the time; no password is asked for less, and no network waited for.
if (!process.env.CHROMIUM && existsSync(CHROMIUM) && !existsSync(SHELL)) {
  const quick = (...words) =>
    execFileSync('apt-get', ['-qq', '-o', 'Acquire::Retries=0', '-o', 'Acquire::http::Timeout=10', ...words], {
      stdio: 'ignore',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  try {
    if (process.getuid?.() !== 0) throw new Error('not ours to install');
    console.log('Installing chromium-headless-shell, in which the browser tests take half the time …');
    quick('update');
    quick('install', '-y', '--no-install-recommends', 'chromium-headless-shell');
  } catch {
    console.log('The tests take Chromium whole; with the package chromium-headless-shell they take half the time.');
  }
}
if (absent().some(({ engine }) => engine === 'chromium')) process.exit(1);
