/** Installs the packages of the lock where they are not there yet; nothing to do on later runs. */
import { execFileSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

const installed = 'node_modules/.package-lock.json';
const fresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync('package-lock.json').mtimeMs;
if (!fresh) {
  console.log('Installing the packages of the lock …');
  execFileSync('npm', ['ci'], { stdio: 'inherit' });
}
