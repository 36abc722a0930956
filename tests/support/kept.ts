/**
 * What many test files work out alike (the chapters as they are printed, the question bank) is worked out once and kept on the disk
 * beside the packages, under a digest of every source and chapter. So the next process of the same run takes it from there, and no
 * edit ever meets what was made before it.
 */
import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { deserialize, serialize } from 'node:v8';

const ROOT = resolve(import.meta.dirname, '../..');
const FOLDER = join(ROOT, 'node_modules/.cache/tests');

/** Modules are emptied before each file; this stays for the life of the process. */
const process_ = globalThis as { keptDigest?: string; keptParts?: Map<string, unknown> };

const digest = (): string => {
  const hash = createHash('sha256').update(readFileSync(join(ROOT, 'package-lock.json')));
  for (const room of ['widgets', 'chapters'])
    for (const file of readdirSync(join(ROOT, room), { recursive: true, encoding: 'utf8' }).sort())
      if (/\.(?:ts|mjs|md|json)$/.test(file)) hash.update(file).update(readFileSync(join(ROOT, room, file)));
  return hash.digest('hex').slice(0, 20);
};

/** Where a part of this name is kept, for these sources. */
const placeOf = (name: string): string => {
  process_.keptDigest ??= digest();
  const folder = join(FOLDER, process_.keptDigest);
  if (!existsSync(folder)) {
    // Another process may be making the same folder; only what is of other sources goes.
    mkdirSync(folder, { recursive: true });
    for (const old of readdirSync(FOLDER))
      if (old !== process_.keptDigest) rmSync(join(FOLDER, old), { recursive: true, force: true });
  }
  return join(folder, name);
};

/** Two processes may write the same part at once: each writes whole, under a name of its own. */
const write = (file: string, content: string | Uint8Array): void => {
  const own = `${file}.${randomUUID()}`;
  writeFileSync(own, content);
  renameSync(own, file);
};

/** The part of this name, worked out once for these sources. It must be plain data: what a structured clone keeps. */
export const kept = <T>(name: string, make: () => T): T => {
  process_.keptParts ??= new Map();
  const before = process_.keptParts.get(name);
  if (before !== undefined) return before as T;
  const file = placeOf(name.replace(/[^a-z0-9]+/g, '-'));
  let part: T;
  if (existsSync(file)) part = deserialize(readFileSync(file)) as T;
  else {
    part = make();
    write(file, serialize(part));
  }
  process_.keptParts.set(name, part);
  return part;
};
