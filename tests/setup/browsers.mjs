/**
 * Finds the browsers, or installs Debian's where this machine lets us. The browser tests need Chromium; Firefox and WebKit
 * are left out, in so many words, where they can't be had.
 */
import { execFileSync } from 'node:child_process';
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
if (absent().some(({ engine }) => engine === 'chromium')) process.exit(1);
