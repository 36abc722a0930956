/**
 * Long work that the figures of a page share, one piece at a time: worked at once where it is short or where no page is, else in slices, and
 * whoever shows it is told how far it has come and when it is done.
 */
import { type Result, runToEnd } from '../engine/index.ts';
import { runInSlices } from './run-in-slices.ts';

interface Listener {
  readonly redraw: () => void;
  readonly progress: (share: number) => void;
}

export interface HeldWork<T> {
  /** The result for this key, or undefined while it is at work. Steps give the share that is done. */
  readonly of: (key: string, run: () => Generator<number, Result<T>, void>, short: boolean) => Result<T> | undefined;
  /** For as long as the stage is on the page. */
  readonly when: (stage: HTMLElement, listener: Listener) => void;
}

export const heldWork = <T>(): HeldWork<T> => {
  let last: { readonly key: string; result: Result<T> | undefined } | undefined;
  let stop = () => {};
  const waiting = new Map<HTMLElement, Listener>();
  const tell = (how: (listener: Listener) => void) => {
    for (const [stage, listener] of waiting)
      if (stage.isConnected) how(listener);
      else waiting.delete(stage);
  };
  return {
    of: (key, run, short) => {
      if (last?.key === key) return last.result;
      stop();
      const work: { readonly key: string; result: Result<T> | undefined } = { key, result: undefined };
      last = work;
      if (short || typeof window === 'undefined') {
        work.result = runToEnd(run());
        return work.result;
      }
      stop = runInSlices(
        run(),
        (result) => {
          work.result = result;
          tell(({ redraw }) => setTimeout(redraw));
        },
        (share) => {
          if (typeof share === 'number') tell(({ progress }) => progress(share));
        },
      );
      return undefined;
    },
    when: (stage, listener) => void waiting.set(stage, listener),
  };
};
