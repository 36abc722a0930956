/**
 * Fetches the script of a figure when it comes near the window, and before it those that carry what it shares with others. Classic
 * scripts, since a page may run from a file; the dev server imports the modules themselves.
 */
import type { Figure, InBackground } from '../figures/kit/figure.ts';

/** By late script its file, those that run before it, in their order, and its worker. */
type Scripts = Readonly<
  Record<string, { readonly file: string; readonly before: readonly string[]; readonly worker?: string }>
>;
declare const __FIGURES__: Scripts;

/** What a script exports: a figure under whatever name. */
type FigureModule = Readonly<Record<string, unknown>>;

declare global {
  interface Window {
    /** Of the notebook in one file, which carries its scripts packed: the text that was packed as this. */
    unpackNotebook?: (packed: string) => Promise<string>;
    notebookFigures?: Readonly<Record<string, FigureModule>>;
  }
}

const fetched = new Map<string, Promise<boolean>>();

/** Runs a script once; false where it can't be had, and the printed picture stays. */
export const runScript = (file: string): Promise<boolean> => {
  const known = fetched.get(file);
  if (known) return known;
  const running = new Promise<boolean>((resolve) => {
    const script = document.createElement('script');
    // A page that carries everything in one file has the text of its scripts with it.
    const carried = document.querySelector(`script[type="text/plain"][data-file="${file}"]`);
    const unpack = window.unpackNotebook;
    if (carried && unpack) {
      unpack(carried.textContent)
        .then((text) => {
          script.textContent = text;
          document.head.append(script);
          resolve(true);
        })
        .catch(() => resolve(false));
      return;
    }
    script.src = file;
    script.onload = () => resolve(true);
    script.onerror = () => {
      // The next figure that needs it asks again.
      fetched.delete(file);
      script.remove();
      resolve(false);
    };
    document.head.append(script);
  });
  fetched.set(file, running);
  return running;
};

/** What a late script exports; undefined where it can't be had. */
export const loadModule = (name: string): Promise<FigureModule | undefined> =>
  import.meta.env.DEV ? fromServer(name) : fromScript(name);

export const loadFigure = async (name: string): Promise<Figure | undefined> => {
  const module = await loadModule(name);
  const figure =
    module && Object.values(module).find((value): value is Figure => isFigure(value) && value.name === name);
  if (figure?.worker) lendWorker(figure.worker, __FIGURES__[name]?.worker);
  return figure;
};

const lendWorker = ({ file, lend }: InBackground, built: string | undefined): void => {
  const script = import.meta.env.DEV ? `/widgets/figures/${file}.ts` : built;
  if (script === undefined) return;
  const { href, protocol } = new URL(script, document.baseURI);
  // A page from a file may begin no worker, nor one that holds everything itself, which has no file of it.
  const served = /^https?:$/.test(protocol) && !window.unpackNotebook;
  lend({
    address: served ? href : undefined,
    run: () =>
      import.meta.env.DEV
        ? import(/* @vite-ignore */ script).then(
            () => true,
            () => false,
          )
        : runScript(script),
  });
};

const fromScript = async (name: string): Promise<FigureModule | undefined> => {
  const script = __FIGURES__[name];
  if (!script) return undefined;
  for (const file of [...script.before, script.file]) if (!(await runScript(file))) return undefined;
  return window.notebookFigures?.[name];
};

/** Late scripts that are no figures. */
const OF_THE_PAGE: readonly string[] = [
  'papers',
  'backwards',
  'practice',
  'ideas',
  'projector',
  'readings',
  'figure-page',
];

const fromServer = (name: string): Promise<FigureModule> =>
  import(
    /* @vite-ignore */ OF_THE_PAGE.includes(name)
      ? `/widgets/client/${name}/${name}.ts`
      : `/widgets/figures/${name}/${name}.ts`
  );

const isFigure = (value: unknown): value is Figure =>
  typeof value === 'object' && value !== null && 'name' in value && 'at' in value;
