/** A hundred thousand readings pasted into the calibration: how long until they are drawn, and what held the page meanwhile. */
import { longTasks, longText } from './long-tasks.mjs';
import { open, wait, withSite } from './support.mjs';

export const title = 'A hundred thousand readings pasted: tasks over 50 ms (aim: none), and time until they are drawn';

const ROWS = 100_000;
const ROUNDS = 3;

/** A logger's file: up and down over 16 turns, 88.6 µm a turn, 2 µm of gap. */
const logged = () => {
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const up = i < ROWS / 2;
    const n = ((up ? i : ROWS - i) * 16) / (ROWS / 2);
    return `${n.toFixed(5)}, ${(88.6 * n + (up ? 0 : 2) + Math.sin(i * 12.9898)).toFixed(2)}, ${up ? 'up' : 'down'}`;
  });
  return ['turns, µm, direction', ...rows].join('\n');
};

export const bench = (line) =>
  withSite(async (browser, site) => {
    const text = logged();
    for (let i = 0; i < ROUNDS; i++) {
      const { page, client, close } = await open(browser, `${site}calibrate.html`);
      await page.locator('figure[data-figure="calibration"]').scrollIntoViewIfNeeded();
      await page.waitForSelector('figure[data-figure="calibration"][data-awake]');
      await wait(500);
      // Taking the text into the page is the bench’s own work.
      await page.evaluate((pasted) => {
        globalThis.benchClipboard = new DataTransfer();
        globalThis.benchClipboard.setData('text/plain', pasted);
      }, text);
      const tasks = await longTasks(client);
      const from = performance.now();
      await page.evaluate(() => {
        const [field] = document.querySelectorAll('figure[data-figure="calibration"] .field.text textarea');
        const data = globalThis.benchClipboard;
        field.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, cancelable: true, bubbles: true }));
      });
      await page.locator('figure[data-figure="calibration"] .cal-thinned').waitFor();
      const took = performance.now() - from;
      const long = await tasks();
      line('tasks over 50 ms', longText(long));
      line('  each, processor time, ms', long.map(({ busy }) => busy.toFixed(0)).join(', '));
      line('  until drawn, ms', took.toFixed(0));
      await close();
    }
  });
