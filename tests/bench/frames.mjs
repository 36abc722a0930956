/**
 * From a key on a figure’s main control to the frame that shows it, for every widget, as is and with the processor slowed.
 * The wait for the screen, 8 ms in the mean, is in it. Processor time is what the page’s thread spent on a key in all, words
 * that follow the picture included: it hardly grows when the machine has other work, while a thread that is slowed counts its waiting too. Script is
 * what of it ran in scripts, with what they asked of the browser. Solids are drawn by a worker, whose time is none of the page's.
 */
import { controlOf, figuresOf } from './controls.mjs';
import { median, notebook, open, quantile, wait, withSite } from './support.mjs';

export const title =
  'Key to painted frame, ms: median (95 %), aim ≤ 16.7, slowed 4× ≤ 50; busy: processor time of the page for a key, ms, script: of scripts';

const PRESSES = 32;
/** The first presses compile; they are not the reader's usual ones. */
const WARM = 4;
const AIMS = [
  [1, 16.7],
  [4, 50],
];

export const bench = async (line) => {
  const only = process.env.BENCH_ONLY?.split(',');
  const figures = figuresOf(await notebook()).filter(({ name }) => only?.includes(name) ?? true);
  const over = [];
  await withSite(async (browser, site) => {
    for (const { page, name } of figures) {
      const told = [];
      for (const [slowed, aim] of AIMS) {
        const { kind, frames, busy, script } = await pressed(browser, site + page, name, slowed);
        if (slowed === 1) told.push(kind.padEnd(6));
        told.push(`busy ${busy.toFixed(1)} script ${script.toFixed(1)}`);
        told.push(`${slowed}×: ${median(frames).toFixed(1)} (${quantile(frames, 0.95).toFixed(1)})`);
        if (!(median(frames) <= aim)) over.push(`${name} at ${slowed}×`);
      }
      line(name, told.join('   '));
    }
  });
  line('over the aim', over.length === 0 ? 'none' : over.join(', '));
};

const pressed = async (browser, address, name, slowed) => {
  const { page, client, close } = await open(browser, address, { slowed });
  const { kind, keys } = await controlOf(page, name);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.evaluate(watchFrames);
  let from;
  for (let i = 0; i < WARM + PRESSES; i++) {
    if (i === WARM) from = await busyTime(client);
    // Some one way, as many back.
    await page.keyboard.press(keys[kind === 'slider' || kind === 'field' ? Math.floor(i / 4) % 2 : i % 2]);
    await page.waitForFunction((count) => globalThis.benchFrames.length >= count, i + 1);
    // Out of step with the screen, as hands are.
    await wait(40 + 25 * Math.random());
  }
  const to = await busyTime(client);
  const each = (name) => (to[name] - from[name]) / PRESSES;
  const frames = (await page.evaluate(() => globalThis.benchFrames)).slice(WARM);
  await close();
  return { kind, frames, busy: each('TaskDuration'), script: each('ScriptDuration') };
};

const busyTime = async (client) => {
  const { metrics } = await client.send('Performance.getMetrics');
  return Object.fromEntries(metrics.map(({ name, value }) => [name, 1000 * value]));
};

/** In the page: each key, from the moment the browser took it to just after the frame it led to was laid out and painted. */
const watchFrames = () => {
  globalThis.benchFrames = [];
  addEventListener(
    'keydown',
    (event) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => globalThis.benchFrames.push(performance.now() - event.timeStamp);
        port2.postMessage(0);
      }),
    { capture: true },
  );
};
