/** Builds the notebook once for all browser tests, into a folder that goes with them, and serves it on a free local port. */
import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { buildNotebook } from '../../widgets/site/build.mjs';
import { servedTo } from '../support/served.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the served notebook, ending in a slash. */
    site: string;
    /** Folder of the built notebook, for pages opened as files. */
    folder: string;
  }
}

/** Every engine has a server of its own; the first builds what all of them serve. */
const shared = globalThis as { notebook?: Promise<string> };

const build = async (): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'notebook-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  await buildNotebook(folder, 'error');
  return `${folder}/`;
};

export default async (project: TestProject) => {
  shared.notebook ??= build();
  const folder = await shared.notebook;
  const server = await preview({
    configFile: `${import.meta.dirname}/../../vite.config.ts`,
    logLevel: 'error',
    build: { outDir: folder },
    preview: { port: 0 },
    plugins: servedTo(project.config.provide.engine ?? 'chromium', folder),
  });
  const { port } = server.httpServer.address() as AddressInfo;
  project.provide('site', `http://localhost:${port}/`);
  project.provide('folder', folder);
  return () => server.close();
};
