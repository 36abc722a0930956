/**
 * Runs a batch without holding the page: in a worker where the page is served, in slices of a few milliseconds on the
 * page where workers are blocked (a page opened as a file). Both drive the same steps of the engine, so a seed gives the
 * same batch either way. The worker's script is worker.ts beside this file.
 */

import { runInSlices } from '../../assembly/run-in-slices.ts';
import { type PlayBatch, type PlayBatchSettings, playBatchRun } from '../../engine/index.ts';
import { reasonOf } from '../../words/reason.ts';
import type { WorkerScript } from '../kit/figure.ts';

export interface BatchWatch {
  /** Share done, 0 to 1. */
  readonly progress: (share: number) => void;
  readonly done: (batch: PlayBatch, where: Where) => void;
  readonly refused: (reason: string) => void;
}
export type Where = 'worker' | 'page';

type Told = { readonly share: number } | { readonly batch: PlayBatch } | { readonly reason: string };

/** How often a worker tells its progress, ms. */
const TELL_EVERY = 60;
/** A worker silent for so long, ms, is given up: many times what a slow machine takes between two shares. */
const SILENCE = 5000;

/** The address of the worker's script. */
let script: string | undefined;
export const lendWorkerScript = ({ address }: WorkerScript): void => {
  script = address;
};

/** Starts a batch; the function returned stops it. */
export const startBatch = (settings: PlayBatchSettings, watch: BatchWatch): (() => void) => {
  const worker = script === undefined ? undefined : openWorker(script);
  if (!worker) return onPage(settings, watch);
  let patience = 0;
  const leave = () => {
    window.clearTimeout(patience);
    worker.terminate();
  };
  let stop = leave;
  // A worker that does not come up, or falls silent since the browser has ended it, leaves the work to the page.
  const takeOver = () => {
    leave();
    stop = onPage(settings, watch);
  };
  const wait = () => {
    window.clearTimeout(patience);
    patience = window.setTimeout(takeOver, SILENCE);
  };
  worker.onmessage = ({ data }: MessageEvent<Told>) => {
    if ('share' in data) {
      wait();
      return watch.progress(data.share);
    }
    leave();
    if ('batch' in data) watch.done(data.batch, 'worker');
    else watch.refused(data.reason);
  };
  worker.onerror = takeOver;
  wait();
  worker.postMessage(settings);
  return () => stop();
};

const openWorker = (address: string): Worker | undefined => {
  try {
    return new Worker(address, { type: 'module' });
  } catch {
    return undefined;
  }
};

const onPage = (settings: PlayBatchSettings, watch: BatchWatch): (() => void) => {
  const started = playBatchRun(settings);
  if (!started.ok) {
    watch.refused(reasonOf(started));
    return () => {};
  }
  return runInSlices(started.value, (batch) => watch.done(batch, 'page'), watch.progress);
};

/** The other side, inside the worker: settings come in, shares and at last the batch go out. */
export const serveBatches = (): void => {
  const port = globalThis as unknown as {
    onmessage: (event: MessageEvent<PlayBatchSettings>) => void;
    postMessage: (told: Told) => void;
  };
  port.onmessage = ({ data }) => {
    const started = playBatchRun(data);
    if (!started.ok) return port.postMessage({ reason: reasonOf(started) });
    let told = performance.now();
    for (;;) {
      const step = started.value.next();
      if (step.done) return port.postMessage({ batch: step.value });
      if (performance.now() - told < TELL_EVERY) continue;
      told = performance.now();
      port.postMessage({ share: step.value });
    }
  };
};
