/**
 * One WebKitGTK browser, asked by the WebDriver standard (W3C, Level 2). Its driver serves one session a process, so each
 * test file starts its own, on a screen of its own that nobody sees.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { miniBrowser, WEBKIT_DRIVER } from '../../setup/webkit.mjs';

export interface Driver {
  /** One command of the session, `path` after `/session/{id}`; throws what the driver says is wrong. */
  readonly ask: (method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown) => Promise<unknown>;
  /** A folder that goes when the browser closes. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}

/** Of the screen that nobody sees; a window can be no larger. */
export const SCREEN = { width: 2700, height: 1700 };

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

export const startWebkit = async ({ dark }: { dark: boolean }): Promise<Driver> => {
  const folder = mkdtempSync(join(tmpdir(), 'webkit-'));
  // The desktop's settings, from which WebKit takes what the reader prefers: no motion.
  mkdirSync(join(folder, 'gtk-3.0'));
  writeFileSync(join(folder, 'gtk-3.0/settings.ini'), '[Settings]\ngtk-enable-animations=0\n');
  // The bar of buttons over the page would keep its window wider than a phone.
  writeFileSync(
    join(folder, 'gtk-3.0/gtk.css'),
    '* { min-width: 0; min-height: 0; padding: 0; margin: 0; border-width: 0; font-size: 1px; -gtk-icon-source: none }\n',
  );
  const port = await freePort();
  const screen = ['-a', '-s', `-screen 0 ${SCREEN.width}x${SCREEN.height}x24`];
  const process_: ChildProcess = spawn('xvfb-run', [...screen, WEBKIT_DRIVER, '-p', String(port)], {
    stdio: 'ignore',
    detached: true,
    env: { ...process.env, XDG_CONFIG_HOME: folder, XDG_CACHE_HOME: folder, XDG_DATA_HOME: folder, HOME: folder },
  });
  const send = async (method: string, path: string, body?: unknown): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(method === 'POST' ? { body: JSON.stringify(body ?? {}) } : {}),
    });
    const { value } = (await answer.json()) as { value: { error?: string; message?: string } | null };
    if (!answer.ok) throw new Error(`WebKit: ${value?.error}: ${value?.message}`);
    return value;
  };
  const stop = () => {
    try {
      if (process_.pid) process.kill(-process_.pid);
    } catch {
      // Gone already.
    }
    rmSync(folder, { recursive: true, force: true });
  };
  // The process of the tests is told to end at last, and would then go without a word.
  const end = () => process.exit();
  process.once('exit', stop);
  process.once('SIGTERM', end);
  for (let tries = 0; ; tries++)
    try {
      await send('GET', '/status');
      break;
    } catch (error) {
      if (tries >= 100) {
        stop();
        throw error;
      }
      await pause(100);
    }
  const session = (await send('POST', '/session', {
    capabilities: {
      alwaysMatch: {
        'webkitgtk:browserOptions': { binary: miniBrowser(), args: ['--automation', ...(dark ? ['--dark-mode'] : [])] },
      },
    },
  })) as { sessionId: string };
  const at = `/session/${session.sessionId}`;
  return {
    ask: (method, path, body) => send(method, at + path, body),
    folder,
    close: async () => {
      await send('DELETE', at).catch(() => {});
      process.off('exit', stop);
      process.off('SIGTERM', end);
      stop();
    },
  };
};
