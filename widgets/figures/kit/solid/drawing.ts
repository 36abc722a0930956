/**
 * Who draws a solid: a worker on a canvas that it is handed, so that the page only says how the bodies stand; the page itself where there is no worker, or
 * none that draws (a page from a file or in one file, an older browser). Both run one script, `painter.ts`, which is fetched when the first solid comes near.
 */
import type { InBackground, WorkerScript } from '../figure.ts';
import type { Body } from './bodies.ts';
import type { Faceted } from './facets.ts';
import type { makeScene, Scene } from './scene.ts';
import type { Net, Shot } from './shot.ts';
import type { Frame } from './view.ts';

type Size = Pick<Frame, 'width' | 'height'>;

/** What a worker is asked. */
export type Asked =
  | { readonly canvas: OffscreenCanvas; readonly size: Size }
  | { readonly net: Net; readonly facets: readonly Faceted[] }
  | Shot;
/** What it answers; `took` in ms. */
export type Told =
  | { readonly what: 'ready' | 'none' | 'lost' | 'back' }
  | { readonly what: 'drew'; readonly took: number };

export interface Drawing {
  readonly canvas: HTMLCanvasElement;
  /** Whether a picture is there only when it is told to be drawn, since a worker draws it. */
  readonly later: boolean;
  readonly setBodies: (net: Net, bodies: readonly Body[]) => void;
  readonly render: (shot: Shot) => void;
  readonly close: () => void;
}

declare global {
  /** Of the script, where it runs on the page. */
  var makeSolidScene: typeof makeScene | undefined;
}

/** A worker silent for so long, ms, is given up: many times what a picture takes without a graphics processor. */
export const SILENCE = 5000;

let script: WorkerScript | undefined;
/** Of every figure with a solid. */
export const PAINTER: InBackground = {
  file: 'kit/solid/painter',
  lend: (lent) => {
    script = lent;
  },
};

const canvasOf = (): HTMLCanvasElement => {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('aria-hidden', 'true');
  return canvas;
};
const facetsOf = (bodies: readonly Body[]): readonly Faceted[] => bodies.map(({ facets }) => facets);

/** Undefined where there is none; one that does not come up says that it has none. */
export const drawingInWorker = (size: Size, hear: (told: Told) => void): Drawing | undefined => {
  const canvas = canvasOf();
  if (script?.address === undefined || !('transferControlToOffscreen' in canvas)) return undefined;
  let worker: Worker;
  let surface: OffscreenCanvas;
  try {
    worker = new Worker(script.address, { type: 'module' });
    surface = canvas.transferControlToOffscreen();
  } catch {
    return undefined;
  }
  const ask = (asked: Asked, handed: Transferable[] = []) => worker.postMessage(asked, handed);
  const none = () => hear({ what: 'none' });
  const patience = window.setTimeout(none, SILENCE);
  worker.onmessage = ({ data }: MessageEvent<Told>) => {
    window.clearTimeout(patience);
    hear(data);
  };
  worker.onerror = none;
  ask({ canvas: surface, size }, [surface]);
  return {
    canvas,
    later: true,
    setBodies: (net, bodies) => ask({ net, facets: facetsOf(bodies) }),
    render: ask,
    close: () => {
      window.clearTimeout(patience);
      worker.terminate();
    },
  };
};

export const drawingOnPage = (size: Size, hear: (told: Told) => void): Drawing => {
  const canvas = canvasOf();
  const tell = (what: 'ready' | 'none' | 'lost' | 'back') => () => hear({ what });
  let scene: Scene | undefined;
  void (async () => {
    await script?.run();
    scene = globalThis.makeSolidScene?.(canvas, size, tell('lost'), tell('back'));
    tell(scene ? 'ready' : 'none')();
  })();
  return {
    canvas,
    later: false,
    setBodies: (net, bodies) => scene?.setBodies(net, facetsOf(bodies)),
    render: (shot) => {
      const from = performance.now();
      scene?.render(shot);
      // A timer comes after the frame that is being made, and after the picture where there is no graphics processor.
      window.setTimeout(() => hear({ what: 'drew', took: performance.now() - from }));
    },
    close: () => {},
  };
};
