/**
 * Prints speed, weight and build time. It passes nothing and fails nothing: on a shared machine absolute times wander, so
 * read medians and ratios.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { preview, runnerImport } from 'vite';
import { buildNotebook } from '../../widgets/press/build.mjs';
import { LAUNCH } from '../setup/chromium.mjs';

const root = resolve(import.meta.dirname, '../..');
const median = (xs) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)] ?? Number.NaN;
const quantile = (xs, q) =>
  [...xs].sort((a, b) => a - b)[Math.min(xs.length - 1, Math.floor(xs.length * q))] ?? Number.NaN;
const line = (name, value) => console.log(`${name.padEnd(62)} ${value}`);
const head = (text) => console.log(`\n${text}`);

const configFile = join(root, 'vite.config.ts');
const started = performance.now();
await buildNotebook(undefined, 'error');
head('Build');
line('whole build, both scripts and all pages', `${((performance.now() - started) / 1000).toFixed(2)} s`);
await chapterTimes();

head('Weight, kB as sent (gzip / brotli)');
const assets = readdirSync(join(root, 'dist/assets'));
const weigh = (path) => {
  const bytes = readFileSync(path);
  return [gzipSync(bytes).length / 1000, brotliCompressSync(bytes).length / 1000];
};
for (const [name, end] of [
  ['script of every page', /^notebook-.*\.js$/],
  ['plot library, before the first plot', /^plot-library-.*\.js$/],
  ['style sheet', /\.css$/],
]) {
  const file = assets.find((f) => end.test(f));
  if (file)
    line(
      name,
      weigh(join(root, 'dist/assets', file))
        .map((k) => k.toFixed(1))
        .join(' / '),
    );
}
for (const page of readdirSync(join(root, 'dist')).filter((f) => f.endsWith('.html')))
  line(
    page,
    weigh(join(root, 'dist', page))
      .map((k) => k.toFixed(1))
      .join(' / '),
  );

await frames();
for (const file of readdirSync(import.meta.dirname).filter((f) => f.endsWith('.mjs') && f !== 'bench.mjs')) {
  head(file.replace('.mjs', ''));
  const { bench } = await import(`./${file}`);
  await bench(line);
}

/** Pressing the chapters once, and a hundred copies of them: the time a chapter must stay the same. */
async function chapterTimes() {
  const load = async (file) => (await runnerImport(join(root, file), { configFile: false, logLevel: 'error' })).module;
  const { pressChapter } = await load('widgets/press/chapter.ts');
  const { WIDGETS } = await load('widgets/catalogue.ts');
  const files = readdirSync(join(root, 'chapters')).filter((f) => /^\d+-/.test(f));
  const texts = files.map((f) => [f, readFileSync(join(root, 'chapters', f), 'utf8')]);
  const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
  const press = (copies) => {
    const from = performance.now();
    for (let i = 0; i < copies; i++)
      for (const [file, text] of texts)
        writeFileSync(join(folder, `${i}-${file}.html`), pressChapter(file, text, WIDGETS).html);
    return (performance.now() - from) / copies / texts.length;
  };
  press(1);
  const once = [press(1), press(1), press(1)];
  const many = press(Math.ceil(100 / texts.length));
  rmSync(folder, { recursive: true });
  line(`pressing ${texts.length} chapters, ms a chapter`, median(once).toFixed(0));
  line('pressing a hundred chapters, ms a chapter', many.toFixed(0));
  line('ratio (1 is linear)', (many / median(once)).toFixed(2));
}

/** From an arrow key on the knob to the frame that shows it, plain and with the processor slowed four times. */
async function frames() {
  head('Input to painted frame, ms (median / 95 %), and frames a second while dragging');
  const server = await preview({ configFile, logLevel: 'error', preview: { port: 0 } });
  const site = `http://localhost:${server.httpServer.address().port}/`;
  const browser = await chromium.launch(LAUNCH);
  for (const slow of [1, 4])
    for (const [page, figure] of [
      ['one-screw', 'ramp'],
      ['two-screws', 'section'],
      ['per-flat', 'divided-turn'],
    ]) {
      const tab = await browser.newPage({ viewport: { width: 390, height: 844 } });
      await tab.goto(`${site}${page}.html`);
      const client = await tab.context().newCDPSession(tab);
      await client.send('Emulation.setCPUThrottlingRate', { rate: slow });
      const knob = tab.locator(`figure.${figure} [data-knob]`);
      await knob.scrollIntoViewIfNeeded();
      await tab.waitForTimeout(400);
      const times = await tab.evaluate(timeKeys, `figure.${figure} [data-knob]`);
      const drag = await tab.evaluate(timeDrag, `figure.${figure} [data-knob]`);
      line(
        `${figure}, ${slow === 1 ? 'as is' : 'slowed 4×'}`,
        `${median(times).toFixed(1)} / ${quantile(times, 0.95).toFixed(1)}   drag: ${drag.toFixed(0)} frames/s`,
      );
      await tab.close();
    }
  await browser.close();
  await server.close();
}

/** In the page: 40 key presses; each is timed to just after the frame in which the page drew it. */
async function timeKeys(selector) {
  const knob = document.querySelector(selector);
  const times = [];
  for (let i = 0; i < 40; i++) {
    await new Promise((done) => setTimeout(done, 30));
    const from = performance.now();
    knob.dispatchEvent(
      new KeyboardEvent('keydown', { key: i % 8 < 4 ? 'ArrowUp' : 'ArrowDown', bubbles: true, cancelable: true }),
    );
    await new Promise((done) =>
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = done;
        channel.port2.postMessage(0);
      }),
    );
    times.push(performance.now() - from);
  }
  return times;
}

/** In the page: two seconds of dragging round, one move a frame; frames counted. */
async function timeDrag(selector) {
  const knob = document.querySelector(selector);
  const box = knob.getBoundingClientRect();
  const at = (a) => ({
    clientX: box.x + box.width / 2 + 60 * Math.sin(a),
    clientY: box.y + box.height / 2 - 60 * Math.cos(a),
    pointerId: 1,
    bubbles: true,
    cancelable: true,
    button: 0,
  });
  const stage = knob.closest('[data-stage]');
  stage.setPointerCapture = () => {};
  knob.dispatchEvent(new PointerEvent('pointerdown', at(0)));
  let count = 0;
  const from = performance.now();
  while (performance.now() - from < 2000) {
    stage.dispatchEvent(new PointerEvent('pointermove', at(Math.sin(count / 30) * 3)));
    await new Promise(requestAnimationFrame);
    count++;
  }
  stage.dispatchEvent(new PointerEvent('pointerup', at(0)));
  return (count * 1000) / (performance.now() - from);
}
