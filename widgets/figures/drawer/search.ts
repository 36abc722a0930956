/**
 * The search of a drawer: at once where the picture is printed or the drawer is small, in slices on the page else. While it runs, the earlier
 * picture stands and the page says how far it is; a button or another drawer ends it.
 */
import { type Stacks, searchDrawer } from '../../assembly/drawer/stacks.ts';
import { runInSlices } from '../../assembly/run-in-slices.ts';
import { bad, type Result, runToEnd } from '../../engine/index.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'drawer-being-searched': { readonly share: number };
    'drawer-search-stopped': { readonly share: number };
  }
}

/** What may be worked before a frame is drawn, ms. */
const AT_ONCE = 10;
/** How often the page is told, ms. */
const TELL_EVERY = 150;

interface Running {
  readonly key: string;
  readonly stop: () => void;
  share: number;
}
let finished: { readonly key: string; readonly result: Result<Stacks> } | undefined;
let running: Running | undefined;
let stopped: Pick<Running, 'key' | 'share'> | undefined;
/** Figures that wait for a search, and their buttons: another drawer that is refused ends a search without a new picture. */
const waiting = new Set<() => void>();
const buttons = new Set<() => void>();
export const tellWhenSearched = (redraw: () => void, showButton: () => void): void => {
  waiting.add(redraw);
  buttons.add(showButton);
};
const endOthers = (): void => {
  if (!running && !stopped) return;
  running?.stop();
  running = undefined;
  stopped = undefined;
  queueMicrotask(() => {
    for (const show of buttons) show();
  });
};

/** Whether a search is under way, was stopped by the reader, or neither. */
export const searchNow = (): 'running' | 'stopped' | 'none' =>
  running ? 'running' : stopped === undefined ? 'none' : 'stopped';

/** Ends the search that is under way, or takes up again the one that was ended. */
export const stopOrGoOn = (): void => {
  if (running) {
    running.stop();
    stopped = { key: running.key, share: running.share };
    running = undefined;
  } else stopped = undefined;
  for (const redraw of waiting) redraw();
};

export const stacksOf = (text: string, kept: number): Result<Stacks> => {
  const key = `${kept} ${text}`;
  if (finished?.key === key) return finished.result;
  if (running?.key === key) return bad('drawer-being-searched', { share: running.share });
  if (stopped?.key === key) return bad('drawer-search-stopped', { share: stopped.share });
  endOthers();
  const run = searchDrawer(text, kept);
  const keep = (result: Result<Stacks>): Result<Stacks> => {
    running = undefined;
    finished = { key, result };
    return result;
  };
  if (typeof window === 'undefined') return keep(runToEnd(run));
  const end = performance.now() + AT_ONCE;
  while (performance.now() < end) {
    const step = run.next();
    if (step.done) return keep(step.value);
  }
  let told = performance.now();
  const now: Running = {
    key,
    share: 0,
    stop: runInSlices(
      run,
      (result) => {
        keep(result);
        for (const redraw of waiting) redraw();
      },
      (share) => {
        now.share = share;
        if (performance.now() - told < TELL_EVERY) return;
        told = performance.now();
        for (const redraw of waiting) redraw();
      },
    ),
  };
  running = now;
  return bad('drawer-being-searched', { share: 0 });
};
