/**
 * The script that draws solids, with the library in it: in a worker, which leaves the page to its reader, or on the page where no worker draws. It knows
 * nothing of figures: nets come in, and pictures as plain numbers.
 */
import type { Asked, Told } from './drawing.ts';
import { makeScene, type Scene } from './scene.ts';

const serve = () => {
  const port = globalThis as unknown as {
    onmessage: (event: MessageEvent<Asked>) => void;
    postMessage: (told: Told) => void;
  };
  let scene: Scene | undefined;
  port.onmessage = ({ data }) => {
    if ('canvas' in data) {
      const told = (what: 'lost' | 'back') => () => port.postMessage({ what });
      scene = makeScene(data.canvas, data.size, told('lost'), told('back'));
      port.postMessage({ what: scene ? 'ready' : 'none' });
    } else if ('facets' in data) scene?.setBodies(data.net, data.facets);
    else {
      const from = performance.now();
      scene?.render(data);
      // The next picture is asked for when this one is done, so that none waits behind it.
      scene?.finish();
      port.postMessage({ what: 'drew', took: performance.now() - from });
    }
  };
};

if (typeof document === 'undefined') serve();
else globalThis.makeSolidScene = makeScene;
