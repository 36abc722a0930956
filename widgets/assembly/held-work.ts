/**
 * Long work that the figures of a page share, one piece at a time: worked at once where it is short or where no page is, else in slices, and
 * whoever shows it is told how far it has come and when it is done. Short work that is asked for again and again, as by a key that is held, is
 * worked now and then and when the key rests; until then what was worked before stands.
 */
import { type Result, runToEnd } from '../engine/index.ts';
import { runInSlices } from './run-in-slices.ts';

/**
 * Short work asked for sooner than the rest after the last is of one go. It is worked after that rest, and in a go that has had none for the
 * longest, ms. Both are longer where the work takes long: they are at least so many times what it took.
 */
const REST = { least: 150, times: 8 };
const LONGEST = { least: 500, times: 24 };

interface Listener {
  readonly redraw: () => void;
  readonly progress: (share: number) => void;
}

export interface HeldWork<T> {
  /**
   * The result for this key, or undefined while it is at work. Steps give the share that is done. In a go of short work it may be the last good
   * result, which says itself what it is of.
   */
  readonly of: (key: string, run: () => Generator<number, Result<T>, void>, short: boolean) => Result<T> | undefined;
  /** For as long as the stage is on the page. */
  readonly when: (stage: HTMLElement, listener: Listener) => void;
}

export const heldWork = <T>(): HeldWork<T> => {
  let last: { readonly key: string; result: Result<T> | undefined } | undefined;
  let stop = () => {};
  let [asked, worked, took] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  const atLeast = ({ least, times }: typeof REST) => Math.max(least, times * took);
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
      const before = last?.result;
      const work: { readonly key: string; result: Result<T> | undefined } = { key, result: undefined };
      last = work;
      const atOnce = () => {
        const since = performance.now();
        work.result = runToEnd(run());
        worked = performance.now();
        took = worked - since;
        return work.result;
      };
      if (typeof window === 'undefined') return atOnce();
      if (short) {
        const now = performance.now();
        const inOneGo = now - asked < atLeast(REST) && now - worked < atLeast(LONGEST);
        asked = now;
        if (!inOneGo || !before?.ok) return atOnce();
        work.result = before;
        const resting = window.setTimeout(() => {
          atOnce();
          tell(({ redraw }) => redraw());
        }, atLeast(REST));
        stop = () => window.clearTimeout(resting);
        return before;
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
