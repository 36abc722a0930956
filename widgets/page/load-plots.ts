/** Fetches the plots when the first of them comes into view. A classic script, since a page may run from a file. */
import type { Widget } from '../shared/widget.ts';

declare const __PLOTS__: string;

declare global {
  interface Window {
    /** Set by the plots script. */
    notebookPlots?: readonly Widget[];
  }
}

let loading: Promise<readonly Widget[]> | undefined;

export const loadPlots = (): Promise<readonly Widget[]> => {
  loading ??= import.meta.env.DEV ? import('../plots/main.ts').then((m) => m.PLOTTED) : fromScript();
  return loading;
};

const fromScript = (): Promise<readonly Widget[]> =>
  new Promise((resolve) => {
    const script = document.createElement('script');
    script.src = __PLOTS__;
    // Without the script the printed picture stays, which is right for the chapter's own numbers.
    script.onerror = () => resolve([]);
    script.onload = () => resolve(window.notebookPlots ?? []);
    document.head.append(script);
  });
