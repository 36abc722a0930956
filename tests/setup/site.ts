/** Builds the notebook once for all browser tests and serves it on a free local port. */
import type { AddressInfo } from 'node:net';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

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
  // A test runner says NODE_ENV is “test”, in which Vite would build the dev server's page, with the plots inside it.
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  await build({ configFile, mode: 'plots', logLevel: 'error' });
  await build({ configFile, logLevel: 'error' });
  process.env.NODE_ENV = NODE_ENV;
  const server = await preview({ configFile, logLevel: 'error', preview: { port: 0 } });
  const { port } = server.httpServer.address() as AddressInfo;
  project.provide('site', `http://localhost:${port}/`);
  project.provide('folder', `${import.meta.dirname}/../../dist/`);
  return () => server.close();
};
