/** The worker for reading offline, in a stand-in for a browser whose cache or network fails. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { writeOffline } from '../../widgets/site/offline.mjs';

const folder = mkdtempSync(join(tmpdir(), 'offline-'));
mkdirSync(join(folder, 'assets'));
for (const name of ['index.html', 'chapter.html', 'assets/a.js']) writeFileSync(join(folder, name), name);
writeOffline(folder, { language: 'en', noPage: { title: 'No page', says: 'There is none.', pages: 'Pages' } });
const SCRIPT = readFileSync(join(folder, 'offline.js'), 'utf8');
afterAll(() => rmSync(folder, { recursive: true }));

interface Ground {
  /** What the cache finds under a path; it may fail. */
  readonly cached: (path: string) => Promise<string | undefined>;
  readonly host: (path: string) => Promise<string>;
}

/** Starts the worker as the browser does, and asks it for a page or a file; what it answers, or undefined where it leaves that to the browser. */
const worker = ({ cached, host }: Ground) => {
  const heard = new Map<string, (event: unknown) => void>();
  const pathOf = (asked: string | { readonly url: string }) =>
    new URL(typeof asked === 'string' ? asked : asked.url, 'https://host/').pathname.slice(1);
  const self = {
    addEventListener: (kind: string, does: (event: unknown) => void) => heard.set(kind, does),
    location: { origin: 'https://host' },
    registration: { scope: 'https://host/' },
    skipWaiting: () => undefined,
    clients: { claim: () => undefined },
  };
  const caches = { match: (asked: string | { readonly url: string }) => cached(pathOf(asked)) };
  const fetched = (asked: { readonly url: string }) => host(pathOf(asked));
  const request = class {
    constructor(readonly url: string) {}
  };
  const response = class {
    constructor(readonly body: string) {}
  };
  // A worker that the browser ends and starts again has nothing but this.
  new Function('self', 'caches', 'fetch', 'Request', 'Response', SCRIPT)(self, caches, fetched, request, response);
  return async (path: string, mode: 'navigate' | 'no-cors', method = 'GET', origin = 'https://host') => {
    let answer: Promise<unknown> | undefined;
    heard.get('fetch')?.({
      request: { url: `${origin}/${path}`, mode, method },
      respondWith: (given: Promise<unknown>) => {
        answer = given;
      },
    });
    return answer;
  };
};

const down = () => Promise.reject(new TypeError('no network'));
const broken = () => Promise.reject(new DOMException('The storage can’t be read', 'UnknownError'));
const from = (where: string) => async (path: string) => `${path} of the ${where}`;
const nothing = async () => undefined;

describe('the worker for reading offline', () => {
  it('gives pages from the host and files from the cache', async () => {
    const ask = worker({ cached: from('cache'), host: from('host') });
    expect(await ask('chapter.html', 'navigate')).toBe('chapter.html of the host');
    expect(await ask('assets/a.js', 'no-cors')).toBe('assets/a.js of the cache');
  });

  it('gives pages from the cache where there is no network, the front page by the address of the folder too', async () => {
    const ask = worker({ cached: from('cache'), host: down });
    expect(await ask('chapter.html', 'navigate')).toBe('chapter.html of the cache');
    expect(await ask('', 'navigate')).toBe('index.html of the cache');
  });

  it('asks the host for everything while its cache was emptied or can’t be read', async () => {
    for (const cached of [nothing, broken]) {
      const ask = worker({ cached, host: from('host') });
      expect(await ask('assets/a.js', 'no-cors')).toBe('assets/a.js of the host');
      expect(await ask('chapter.html', 'navigate')).toBe('chapter.html of the host');
    }
  });

  it('says in a page that it has none, without network and without cache', async () => {
    for (const cached of [nothing, broken])
      expect(await worker({ cached, host: down })('chapter.html', 'navigate')).toMatchObject({
        body: expect.stringContaining('There is none. <a href="https://host/index.html">'),
      });
  });

  it('keeps out of what is sent and of other sites', async () => {
    const ask = worker({ cached: from('cache'), host: from('host') });
    expect(await ask('chapter.html', 'navigate', 'POST')).toBeUndefined();
    expect(await ask('x.js', 'no-cors', 'GET', 'https://elsewhere')).toBeUndefined();
  });
});
