/** Papers of a large class and of a whole school set and handed to the page with their keys: what held the page meanwhile, and how long until all are there. */
import { longTasks, longText } from './long-tasks.mjs';
import { open, withSite } from './support.mjs';

export const title =
  'Papers with grid and keys, 200 (aim: under 3 s) and a thousand: tasks over 50 ms (aim: none), and time until they are set';

const CLASSES = [200, 1000, 1000];

export const bench = (line) =>
  withSite(async (browser, site) => {
    for (const students of CLASSES) {
      const roster = Array.from({ length: students }, (_, i) => `Student ${i}`).join('\n');
      const { page, client, close } = await open(browser, `${site}class-material.html#papers`);
      await page.waitForSelector('.papers form');
      await page.getByLabel(/^Roster/).evaluate((field, text) => {
        field.value = text;
      }, roster);
      const tasks = await longTasks(client);
      const from = performance.now();
      // The page tells when it is done: a search through all the papers for words would be work of the bench’s own.
      await page.evaluate(
        () =>
          new Promise((done) => {
            const print = document.querySelector('.button-row[hidden]');
            new MutationObserver(() => !print.hidden && done()).observe(print, { attributeFilter: ['hidden'] });
            document.querySelector('.papers form').requestSubmit();
          }),
      );
      const took = performance.now() - from;
      const long = await tasks();
      line(`${students} papers, tasks over 50 ms`, longText(long));
      line('  each, processor time, ms', long.map(({ busy }) => busy.toFixed(0)).join(', '));
      line('  until set, ms', took.toFixed(0));
      await close();
    }
  });
