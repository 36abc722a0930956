/** Finds Chromium, or installs Debian's where this machine lets us. The browser tests need it; nothing else does. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { CHROMIUM } from './chromium.mjs';

if (!existsSync(CHROMIUM)) {
  console.log('Installing Chromium from the Debian packages …');
  const root = process.getuid?.() === 0 ? [] : ['sudo'];
  const run = (...words) =>
    execFileSync([...root, ...words][0], [...root, ...words].slice(1), {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  try {
    run('apt-get', 'update');
    run('apt-get', 'install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation');
  } catch {
    console.error(
      `Chromium is not at ${CHROMIUM} and could not be installed. Install it, or name another with CHROMIUM=/path/to/chromium.`,
    );
    process.exit(1);
  }
}
