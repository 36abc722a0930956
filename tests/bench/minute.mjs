/**
 * A figure worked for a minute without a pause, by pointer where it can be dragged and by keys where not: tasks that held the
 * page for longer than 50 ms, and what has grown after rubbish was cleared away. BENCH_SECONDS shortens it.
 */
import { controlOf, figuresOf } from './controls.mjs';
import { longTasks, longText } from './long-tasks.mjs';
import { notebook, open, wait, withSite } from './support.mjs';

const SECONDS = Number(process.env.BENCH_SECONDS ?? 60);
/** The heaviest of their kind: two plots with four sliders, a knob with a loop behind it, a design worked whole. */
const FIGURES = (process.env.BENCH_ONLY ?? 'drunken-thread,reversal-loop,design-sheet').split(',');
const WARM_SECONDS = 4;

export const title = `Worked for ${SECONDS} s: tasks over 50 ms (aim: none), by the clock and by processor time; growth in each half (aim: none)`;

export const bench = async (line) => {
  const figures = figuresOf(await notebook()).filter(({ name }) => FIGURES.includes(name));
  await withSite(async (browser, site) => {
    for (const { page: file, name } of figures) {
      const { page, client, close } = await open(browser, site + file);
      const { control, kind } = await controlOf(page, name);
      await client.send('Performance.enable');
      const work = kind === 'slider' ? dragged : pressed;
      await work(page, control, WARM_SECONDS);
      const seen = [await inMemory(client)];
      const long = [];
      let moves = 0;
      for (const half of [0.5, 0.5]) {
        const tasks = await longTasks(client);
        moves += await work(page, control, half * SECONDS);
        long.push(...(await tasks()));
        seen.push(await inMemory(client));
      }
      line(`${name}, ${kind}, ${Math.round(moves / SECONDS)} moves/s`, longText(long));
      for (const what of ['heap, kB', 'elements', 'listeners']) {
        const [first = 0, middle = 0, last = 0] = seen.map((memory) => memory[what]);
        line(`  ${what}`, `${first}, then ${signed(middle - first)} and ${signed(last - middle)}`);
      }
      await close();
    }
  });
};

const signed = (x) => `${x < 0 ? '−' : '+'}${Math.abs(x)}`;

/** Round and round a knob, to and fro along a slider. */
const dragged = async (page, control, seconds) => {
  const box = await control.boundingBox();
  const [x, y, reach] = [box.x + box.width / 2, box.y + box.height / 2, Math.min(60, box.width / 3)];
  const round = (await control.getAttribute('data-knob')) !== null;
  const at = (t) => [x + reach * Math.sin(t), round ? y - reach * Math.cos(t) : y];
  await page.mouse.move(...at(0));
  await page.mouse.down();
  const moves = await through(seconds, (i) => page.mouse.move(...at(i / 30)));
  await page.mouse.up();
  return moves;
};

const pressed = (page, _control, seconds) =>
  through(seconds, (i) => page.keyboard.press(Math.floor(i / 20) % 2 === 0 ? 'ArrowUp' : 'ArrowDown'));

const through = async (seconds, move) => {
  const end = performance.now() + 1000 * seconds;
  let count = 0;
  while (performance.now() < end) {
    await move(count++);
    await wait(10);
  }
  return count;
};

const inMemory = async (client) => {
  await wait(1000);
  for (let i = 0; i < 3; i++) await client.send('HeapProfiler.collectGarbage');
  const { metrics } = await client.send('Performance.getMetrics');
  const of = (name) => metrics.find((metric) => metric.name === name)?.value ?? Number.NaN;
  return {
    'heap, kB': Math.round(of('JSHeapUsedSize') / 1000),
    elements: of('Nodes'),
    listeners: of('JSEventListeners'),
  };
};
