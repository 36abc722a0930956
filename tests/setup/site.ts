/** Builds the notebook once for all browser tests and serves it on a free local port. */
import type { AddressInfo } from 'node:net';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { buildNotebook } from '../../widgets/press/build.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the served notebook, ending in a slash. */
    site: string;
    /** Folder of the built notebook, for pages opened as files. */
    folder: string;
  }
}

export default async (project: TestProject) => {
  const configFile = `${import.meta.dirname}/../../vite.config.ts`;
  await buildNotebook(undefined, 'error');
  const server = await preview({ configFile, logLevel: 'error', preview: { port: 0 } });
  const { port } = server.httpServer.address() as AddressInfo;
  project.provide('site', `http://localhost:${port}/`);
  project.provide('folder', `${import.meta.dirname}/../../dist/`);
  return () => server.close();
};
