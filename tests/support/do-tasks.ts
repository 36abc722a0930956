/** Goes through the tasks of the chapters with one way of working, and reads what comes of them. */

import { describe, expect, it } from 'vitest';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { type Hands, TASKS, type Task } from './chapter-tasks.ts';
import { these } from './deep.ts';
import type { Locator, Page } from './driven.ts';
import { figure, sentence, settled, shown, type Visit } from './page.ts';

/** What can be dragged in a figure, by name, and changes its numbers; how a solid is looked at is set by a tap on a rail alone. */
const dragged = (place: Locator): Promise<string[]> =>
  place
    .locator('.stage [role=slider]:not(.plate-plan *, .solid-sliders *)')
    .evaluateAll((all) => all.map((e) => e.getAttribute('aria-label') ?? ''));

/** Numbers as a sentence writes them, each with half a unit of its last digit. */
const numberIn = (text: string): { value: number; within: number } => {
  const plain = text.replace(/[^\d.]/g, '');
  return { value: Number(plain), within: 0.5001 * 10 ** -(plain.split('.')[1]?.length ?? 0) };
};

/** The sentence once it says this, or as it is in the end. */
const comesToSay = async (place: Locator, says: RegExp): Promise<string> => {
  for (let i = 0; i < 80 && !says.test(await plainSentence(place)); i++) await place.page().waitForTimeout(50);
  return plainSentence(place);
};
const plainSentence = async (place: Locator): Promise<string> => (await sentence(place)).replace(/\u202f/g, ' ');

const anew = async (page: Page): Promise<void> => {
  await page.evaluate(() => {
    for (const b of document.querySelectorAll('button')) if (/own numbers/.test(b.textContent ?? '')) b.click();
  });
  await settled(page);
};

const judge = async (place: Locator, task: Task): Promise<void> => {
  const text = await comesToSay(place, task.says);
  const groups = task.says.exec(text)?.slice(1);
  const name = `${task.widget}: ${task.asks}`;
  expect.soft(groups, `${name}: ${text}`).toBeDefined();
  for (const [i, wanted] of task.is().entries()) {
    const { value, within } = numberIn(groups?.[i] ?? '');
    expect
      .soft(Math.abs(value - wanted), `${name}: read ${groups?.[i]}, the engine says ${wanted}`)
      .toBeLessThan(within);
  }
};

/**
 * At every run one task for each kind of control: choice and turned head, field of threads, curve that is dragged, button. A deep run
 * does all.
 */
const KINDS = ['per-flat.html', 'contact-heat-creep.html', 'how-much-friction.html', 'three-feet.html'];

export const doTasks = (
  way: string,
  visit: (address: string) => Promise<Visit>,
  hands: (place: Locator) => Hands,
  /** Moves what can be dragged, by the name it has and the field that sets the same. */
  move: (place: Locator, drag: string, field: string, by: number) => Promise<void>,
): void => {
  describe(`every figure, by ${way}`, () => {
    it('has a task in its chapter', () => {
      expect([...FIGURES.keys()].filter((name) => !TASKS.some((t) => t.widget === name))).toEqual([]);
    });

    for (const page of these([...new Set(TASKS.map((t) => t.page))], KINDS))
      it(`does what ${page} asks`, async () => {
        const visited = await visit(page);
        for (const task of TASKS.filter((t) => t.page === page)) {
          await anew(visited.page);
          const place = await shown(figure(visited.page, task.widget, task.index), true, false);
          const fields =
            task.fieldsOf === undefined ? place : await shown(figure(visited.page, task.fieldsOf), true, false);
          await task.work(hands(fields));
          await judge(await shown(place, true, false), task);
          if (task.drags) await anew(visited.page);
          const names = await dragged(place);
          if (task.drags) expect.soft(names, `${task.widget}: what can be dragged`).toEqual(Object.keys(task.drags));
          for (const [drag, field] of Object.entries(task.drags ?? {})) {
            const slider = place.locator(`.stage [role=slider][aria-label="${drag}"]`);
            const before = await slider.getAttribute('aria-valuetext');
            // At one end of its range only the other way is open, and the field may have room beyond it.
            for (const by of [-1, 2]) {
              if ((await slider.getAttribute('aria-valuetext')) !== before) break;
              await move(place, drag, field, by);
              await settled(visited.page);
            }
            expect.soft(await slider.getAttribute('aria-valuetext'), `${task.widget}: ${drag}`).not.toBe(before);
          }
        }
      });
  });
};
