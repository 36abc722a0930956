/** Exercises on the page, papers from a roster, and the files of the question bank. */
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { answerText, type Item, itemAt } from '../../widgets/exercises/exercise.ts';
import { BANK, EXERCISES } from '../support/bank.ts';
import { inDeep } from '../support/deep.ts';
import { beyond, type Locator, type Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import { asFiles, saved, settled, useBrowser, words } from '../support/page.ts';
import { print } from '../support/paper.ts';
import { valueIn } from '../support/results.ts';

const { visit } = useBrowser();

const exercise = (page: Page, id: string): Locator => page.locator(`[data-exercise="${id}"]`);
/** The item that stands on the page now. */
const itemOn = async (place: Locator, id: string): Promise<Item> => {
  const one = EXERCISES.find((e) => e.id === id);
  if (!one) throw new Error(id);
  return valueIn(itemAt(one, ((await place.getAttribute('data-picks')) ?? '').split(',').map(Number)));
};
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');
const answer = async (place: Locator, text: string): Promise<string> => {
  await place.locator('input[type=text]').fill(text);
  await place.getByRole('button', { name: 'Check' }).click();
  await settled(place.page());
  return words(place.locator('.verdict'));
};
const isOpen = async (place: Locator): Promise<boolean> => (await place.getAttribute('open')) !== null;

describe('an exercise', () => {
  it('reads without script: a question, and hint and worked answer to be opened', inDeep, async () => {
    const { page } = await visit('two-screws.html', { javaScriptEnabled: false });
    const place = exercise(page, 'pair-turned');
    const item = await itemOn(place, 'pair-turned');
    expect(await words(place.locator('.question'))).toContain(plain(item.question));
    expect(await place.locator('.answer').isVisible()).toBe(false);
    await place.locator('.worked summary').click();
    expect(await words(place.locator('.answer'))).toContain(`Answer: ${plain(answerText(item))}; accepted from`);
    expect(await place.locator('.steps > li').count()).toBe(4);
  });

  it('takes the answer in any unit of length, with a point or a comma', async () => {
    const { page } = await visit('two-screws.html');
    const place = exercise(page, 'pair-turned');
    const { amount } = await itemOn(place, 'pair-turned');
    const sign = amount < 0 ? '-' : '';
    const size = Math.abs(amount);
    for (const text of [
      `${sign}${size.toPrecision(4)} um`,
      `${sign}${size.toPrecision(4)}`,
      `${sign}${(size / 25.4).toPrecision(4).replace('.', ',')} thou`,
      `${sign}${(size / 2.54).toPrecision(5)} tenths`,
      `${sign}${(size / 1000).toPrecision(4)} mm`,
    ])
      expect(await answer(place, text), text).toMatch(/^Right: /);
    expect(await place.locator('.verdict').getAttribute('role')).toBe('status');
  });

  it('names the slip, then opens the hint, then offers the answer, which once read counts for nothing', async () => {
    const { page } = await visit('two-screws.html');
    const place = exercise(page, 'pair-turned');
    const item = await itemOn(place, 'pair-turned');
    const [hint, worked] = [place.locator('.hint'), place.locator('.worked')];
    const added = item.slips.find((s) => s.says.startsWith('You added'));
    expect(await answer(place, `${added?.amount} µm`)).toMatch(/^Not yet\. You added the leads/);
    expect([await isOpen(hint), await isOpen(worked)]).toEqual([false, false]);
    expect(await answer(place, `${item.amount * 25.4}`)).toMatch(/25\.4 times too much/);
    expect([await isOpen(hint), await isOpen(worked)]).toEqual([true, false]);
    expect(await answer(place, `${item.amount * 1.07}`)).toMatch(/near.* The answer stands below/);
    expect([await isOpen(hint), await isOpen(worked)]).toEqual([true, false]);
    await worked.locator('summary').click();
    expect(await words(place.locator('.answer'))).toContain(plain(answerText(item)));
    expect(await answer(place, `${item.amount}`)).toMatch(/^Right.* this round does not count/);
    expect(await words(page.locator('.progress'))).toMatch(/^0 of \d+ solved/);
    await place.getByRole('button', { name: 'New numbers' }).click();
    const { amount } = await itemOn(place, 'pair-turned');
    expect(await answer(place, `${amount}`)).not.toMatch(/does not count/);
    expect(await words(page.locator('.progress'))).toMatch(/^1 of \d+ solved/);
  });

  it('that can’t be read is refused with a sentence and counts for nothing', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const place = exercise(page, 'pair-turned');
    for (const [text, says] of [
      ['', /^Nothing was typed/],
      ['1e999', /too large a number/],
      ['87 N', /in N; this takes mm/],
      ['<img src=x onerror=alert(1)>', /not a number/],
      ['8'.repeat(10_240), /10240 characters/],
    ] as const) {
      expect(await answer(place, text), text.slice(0, 10)).toMatch(says);
      expect(await place.locator('input').getAttribute('aria-invalid')).toBe('true');
    }
    expect(await words(page.locator('.progress'))).toMatch(/^0 of \d+ solved/);
    expect(await isOpen(place.locator('.hint'))).toBe(false);
  });

  it('gives new numbers, with steps and answer that belong to them', async () => {
    const { page } = await visit('two-screws.html');
    const place = exercise(page, 'pair-turned');
    let before = await place.getAttribute('data-picks');
    for (let i = 0; i < 8; i++) {
      await place.getByRole('button', { name: 'New numbers' }).click();
      const item = await itemOn(place, 'pair-turned');
      expect(item.picks.join(',')).not.toBe(before);
      before = item.picks.join(',');
      expect(await words(place.locator('.question'))).toContain(plain(item.question));
      const last = await place.locator('.steps > li:last-child [data-result]').textContent();
      const shown = Number(
        (last ?? '')
          .replace(/[=\s]/g, '')
          .replace('−', '-')
          .replace(/[^\d.-].*$/, ''),
      );
      const scale = /mm/.test(last ?? '') ? 1000 : 1;
      expect(Math.abs((shown * scale) / item.amount - 1), last ?? '').toBeLessThan(1e-3);
    }
    expect(await place.locator('input').evaluate((e) => e === document.activeElement)).toBe(true);
  });

  it('fades: once solved, the last step is left to the reader, then two', async () => {
    const { page } = await visit('two-screws.html');
    const place = exercise(page, 'pair-turned');
    for (const left of [0, 1, 2, 2]) {
      expect(await place.locator('.steps > li.left-out').count()).toBe(left);
      const { amount } = await itemOn(place, 'pair-turned');
      expect(await answer(place, String(amount))).toMatch(/^Right/);
      await place.getByRole('button', { name: 'New numbers' }).click();
    }
    await place.locator('.worked summary').click();
    expect(await place.locator('.answer').isVisible()).toBe(false);
    await place.getByRole('button', { name: 'Show the rest' }).click();
    expect(await place.locator('.steps > li.left-out').count()).toBe(0);
    expect(await place.locator('.answer').isVisible()).toBe(true);
  });

  it('is folded to one line, one open at a time; its link and keys open it, and paper has all', async () => {
    const { page } = await visit('two-screws.html#exercise-pair-way');
    const open = () =>
      page.locator('.exercise > .whole[open]').evaluateAll((all) => all.map((d) => d.parentElement?.id));
    expect(await open()).toEqual(['exercise-pair-way']);
    const first = page.locator('#exercise-pair-turned > .whole > summary');
    await first.focus();
    await page.keyboard.press('Enter');
    expect(await open()).toEqual(['exercise-pair-turned']);
    expect(await words(first)).toContain('find a number');
    const later = page.locator('#exercise-pair-wrong-line > .whole > summary');
    await later.scrollIntoViewIfNeeded();
    const top = (await later.boundingBox())?.y ?? 0;
    await later.click();
    expect(await open()).toEqual(['exercise-pair-wrong-line']);
    // What was pressed stays under the hand, though another closed above it.
    expect(Math.abs(((await later.boundingBox())?.y ?? 0) - top)).toBeLessThan(3);
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    expect((await open()).length).toBe(await page.locator('.exercise').count());
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await open()).toEqual(['exercise-pair-wrong-line']);
  });

  it('keeps progress in the browser, exports it and erases it when asked twice', async () => {
    const { page } = await visit('what-must-be-held.html');
    const place = exercise(page, 'lock-gives');
    const { amount } = await itemOn(place, 'lock-gives');
    await answer(place, String(amount * 3));
    await answer(place, String(amount));
    const line = page.locator('.progress');
    expect(await words(line)).toMatch(/^1 of \d+ solved at least once/);
    const file = await saved(page, () => line.getByRole('button', { name: 'Export' }).click());
    expect(JSON.parse(file.bytes.toString('utf8'))).toMatchObject({
      exercises: { 'lock-gives': { tried: 2, right: 1 } },
      done: [],
      predicted: [],
    });
    await line.getByRole('button', { name: 'Erase' }).click();
    expect(await words(line)).toMatch(/^1 of \d+ /);
    await line.getByRole('button', { name: 'Erase all of it?' }).click();
    expect(await words(line)).toMatch(/^0 of \d+ /);
    expect(await page.evaluate(() => localStorage.getItem('notebook-progress'))).toBeNull();
  });

  it('lives with a progress that is not one', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    for (const bad of ['{', '[1,2]', '7', '{"pair-turned":{"tried":-1,"right":"x"},"__proto__":{"right":9}}']) {
      await page.evaluate((text) => localStorage.setItem('notebook-progress', text), bad);
      const place = exercise(page, 'pair-turned');
      expect(await answer(place, '1')).not.toBe('');
      expect(await words(page.locator('.progress'))).toMatch(/^0 of \d+/);
    }
  });
});

describe('the page of class material', () => {
  const form = (page: Page) => page.locator('.papers[data-papers] > form');
  const status = (page: Page) => words(page.locator('.papers > .verdict').first());
  const set = async (page: Page, roster: string): Promise<string> => {
    // As a paste puts it there: typing thousands of lines one by one takes Chromium minutes.
    await page.getByLabel(/^Roster/).evaluate((field: HTMLTextAreaElement, text) => {
      field.value = text;
    }, roster);
    await form(page).getByRole('button', { name: 'Set the papers' }).click();
    await page.locator('.papers[data-papers] > .papers-preview:not([aria-busy=true])').waitFor({ state: 'attached' });
    await settled(page);
    return status(page);
  };
  const open = async (search = '', way = {}) => {
    const { page } = await visit(`class-material.html${search}#papers`, way);
    await page.waitForSelector('.papers form');
    return page;
  };

  it('opens folded to a line a part, short and light, and a link to a part opens it', async () => {
    const { page } = await visit('class-material.html', { fresh: true });
    await settled(page);
    expect(await page.locator('details.part[open]').count()).toBe(0);
    // What works on the bank is fetched for who opens a part, and not before.
    expect(await page.locator('.papers form').count()).toBe(0);
    const height = () => page.evaluate(() => document.documentElement.scrollHeight);
    expect(await height()).toBeLessThan(4000);
    await page.evaluate(() => {
      location.hash = '#lab';
    });
    await page.locator('[data-classwork=lab] button').first().waitFor();
    expect(await page.locator('details.part[open]').count()).toBe(1);
    await page.goto(page.url().replace('#lab', '?class=7B&ask=one-screw:1&bank=1-feedbeef00'));
    await page.locator('.papers[data-papers] form').waitFor();
    expect(await status(page)).toMatch(/^This link asks for the question bank/);
  });

  it('shows the bank version that follows from the chapters', async () => {
    const page = await open();
    expect(await words(page.locator('.papers-bank'))).toBe(`Question bank ${BANK.version}.`);
  });

  it('sets a paper for each of the roster, and prints a page for each and nothing else, on A4 and Letter', async (context) => {
    needs(context, 'paper');
    const page = await open(`?class=7B&ask=one-screw:1,two-screws:1,lead-error:1&bank=${BANK.version}`, {
      fresh: true,
    });
    expect(await set(page, 'Ada\nBob\nBob\n<b>Eve</b>')).toMatch(
      /^4 papers are set, 3 exercises each\..*One name stands in the list of students more than once/,
    );
    expect(await page.locator('.papers-print[data-kind=sheets] section.paper').count()).toBe(4);
    expect(await page.locator('.papers-print b').count()).toBe(0);
    await page.evaluate(() => {
      window.print = () => {};
    });
    for (const [size, width, height] of [
      ['A4', 595, 842],
      ['Letter', 612, 792],
    ] as const) {
      await page.getByLabel(size, { exact: true }).check();
      // Sheets are counted off for the paper that is chosen.
      await set(page, 'Ada\nBob\nBob\n<b>Eve</b>');
      await page.getByRole('button', { name: 'Print the sheets' }).click();
      const sheets = await print(page, size);
      // As many as the pages say they are.
      expect(sheets.length).toBe(await page.locator('.papers-print[data-kind=sheets] .paper-page').count());
      expect(Math.abs((sheets[0]?.width ?? 0) - width)).toBeLessThan(2);
      expect(Math.abs((sheets[0]?.height ?? 0) - height)).toBeLessThan(2);
    }
    // Printing took the mark away again.
    expect(await page.locator('body').getAttribute('data-print')).toBeNull();
  });

  it('has on paper what was asked to be printed, without the page and without the key', async (context) => {
    needs(context, 'as printed');
    const page = await open('', { fresh: true });
    await set(page, 'Ada');
    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.getByRole('button', { name: 'Print the sheets' }).click();
    await beyond(page).emulateMedia({ media: 'print' });
    expect(await page.locator('main').isVisible()).toBe(false);
    expect(await page.locator('.papers-print[data-kind=key]').isVisible()).toBe(false);
    expect(await page.locator('.papers-print[data-kind=sheets]').isVisible()).toBe(true);
  });

  it('says what is wrong with a roster, a code or a count, and marks the field', inDeep, async () => {
    const page = await open();
    expect(await set(page, '')).toMatch(/^The list of students is empty/);
    expect(await page.getByLabel(/^Roster/).getAttribute('aria-invalid')).toBe('true');
    expect(await set(page, Array.from({ length: 5000 }, (_, i) => `s${i}`).join('\n'))).toMatch(
      /^The list of students has 5000 names/,
    );
    await page.getByLabel('Class code').fill(' ');
    expect(await set(page, 'Ada')).toMatch(/^The class code is empty/);
    await page.getByLabel('Class code').fill('7B');
    for (const count of ['11', '-1', '1.5', 'many', '1e999']) {
      await page.locator('.papers-counts').getByLabel('One screw').fill(count);
      expect(await set(page, 'Ada'), count).toMatch(/^One screw: read .*from 0 to 10/);
    }
    for (const { title } of BANK.chapters)
      await page.locator('.papers-counts').getByLabel(title, { exact: true }).fill('0');
    expect(await set(page, 'Ada')).toMatch(/^No exercise is asked for/);
    await page.locator('.papers-counts').getByLabel('One screw').fill('2');
    expect(await set(page, 'Ada')).toMatch(/^One paper is set, 2 exercises each/);
    expect(await page.locator('.papers [aria-invalid=true]').count()).toBe(0);
  });

  it('gives a link that sets the same again, without the roster, and refuses one to another bank', inDeep, async () => {
    const page = await open();
    await page.getByLabel('Class code').fill('7B & co');
    await page.locator('.papers-counts').getByLabel('One screw').fill('3');
    await set(page, 'Ada\nBob');
    const first = await page.locator('.papers-preview').first().innerHTML();
    const href = (await page.getByRole('link', { name: /Link to this set/ }).getAttribute('href')) ?? '';
    expect(href).not.toMatch(/Ada|Bob/);
    const again = await open(new URL(href).search);
    expect(await again.getByLabel('Class code').inputValue()).toBe('7B & co');
    expect(await status(again)).toMatch(/set of the link is filled in/);
    await set(again, 'Ada\nBob');
    expect(first).toContain('accepted');
    expect(await again.locator('.papers-preview').first().innerHTML()).toBe(first);
    const other = await open('?class=7B&ask=one-screw:3&bank=1-feedbeef00');
    expect(await status(other)).toMatch(/^This link asks for the question bank “1-feedbeef00”; this notebook holds/);
  });

  // How long that takes is told by `npm run bench -- papers`.
  it('sets 200 papers and keeps nothing of the roster', async () => {
    const page = await open();
    expect(await set(page, Array.from({ length: 200 }, (_, i) => `Student ${i}`).join('\n'))).toMatch(
      /^200 papers are set/,
    );
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage }) + location.href)).not.toContain('Student');
  });

  it('takes old papers away where new ones are refused, and has what was typed again after another chapter', async () => {
    const page = await open('', { fresh: true });
    const sheets = page.getByRole('button', { name: 'Print the sheets' });
    await set(page, 'Ada');
    expect(await sheets.isVisible()).toBe(true);
    expect(await set(page, '')).toMatch(/^The list of students is empty/);
    expect(await sheets.isVisible()).toBe(false);
    expect(await page.locator('.papers-print .paper-page:not([data-kind=safety] *)').count()).toBe(0);
    await page.getByLabel(/^Roster/).fill('Léa\nZoe; inch');
    await page.getByLabel('Class code').fill('7B');
    await page.getByLabel('Class code').blur();
    await page.goto(page.url().replace(/class-material.*/, 'glossary.html'));
    await page.goBack();
    await page.waitForSelector('.papers form');
    expect(await page.getByLabel(/^Roster/).inputValue()).toBe('Léa\nZoe; inch');
    // Changed since, so nothing is set.
    expect(await sheets.isVisible()).toBe(false);
    await set(page, 'Léa\nZoe; inch');
    const printed = () => page.locator('.papers-print[data-kind=sheets]').innerHTML();
    const before = await printed();
    for (const again of [
      () => page.reload(),
      () => page.goto(page.url().replace(/class-material.*/, 'glossary.html')).then(() => page.goBack()),
      // By links both ways, as the book has them: a new place in the history of the tab.
      () =>
        page
          .goto(page.url().replace(/class-material.*/, 'glossary.html'))
          .then(() => page.goto(page.url().replace('glossary.html', 'class-material.html#papers'))),
    ]) {
      await again();
      await sheets.waitFor();
      expect(await page.getByLabel(/^Roster/).inputValue()).toBe('Léa\nZoe; inch');
      expect(await printed()).toBe(before);
    }
    // With the tab alone: in no link, and in no storage that outlasts it.
    expect(await page.evaluate(() => JSON.stringify([{ ...localStorage }, location.href]))).not.toContain('Zoe');
    // A link to papers stands over what the tab had.
    await page.goto(
      page
        .url()
        .replace(/class-material.*/, `class-material.html?class=8C&ask=one-screw:2&bank=${BANK.version}#papers`),
    );
    await page.waitForSelector('.papers form');
    expect(await page.getByLabel('Class code').inputValue()).toBe('8C');
    expect(await page.getByLabel(/^Roster/).inputValue()).toBe('');
  });

  it(
    'sets a thousand papers while the page goes on, says how far it is, and lets none be printed before all are set',
    inDeep,
    async () => {
      const page = await open(
        `?class=7B&ask=${BANK.chapters.map((c) => `${c.slug}:2`).join(',')}&bank=${BANK.version}`,
      );
      const seen = await page.evaluate(async () => {
        const place = document.querySelector('.papers') as HTMLElement;
        const sheets = document.querySelector('.papers-print[data-kind=sheets]') as HTMLElement;
        const print = [...place.querySelectorAll('button')].find((b) => b.textContent === 'Print the sheets');
        (place.querySelector('textarea') as HTMLTextAreaElement).value = Array.from(
          { length: 1000 },
          (_, i) => `Student ${i}`,
        ).join('\n');
        place.querySelector('form')?.requestSubmit();
        const between: { count: number; status: string; printable: boolean }[] = [];
        while (sheets.childElementCount < 1000) {
          await new Promise(requestAnimationFrame);
          const status = place.querySelector('.verdict')?.textContent ?? '';
          between.push({ count: sheets.childElementCount, status, printable: print?.checkVisibility() !== false });
        }
        return between.slice(0, -1);
      });
      expect(seen.length).toBeGreaterThan(5);
      expect(new Set(seen.map(({ count }) => count)).size).toBeGreaterThan(5);
      expect(seen.filter(({ printable }) => printable)).toEqual([]);
      const told = seen.map(({ status: text }) => /^(\d+) of 1000 papers so far/.exec(text)?.[1]).filter((n) => n);
      expect(told.length).toBeGreaterThan(0);
      expect(new Set(told).size, 'told now and then, not at every slice').toBeLessThan(seen.length / 2);
      expect(await set(page, 'Ada')).toMatch(/^One paper is set/);
      expect(await page.locator('.papers-print[data-kind=sheets] section.paper').count()).toBe(1);
    },
  );

  it('gives up the papers it is setting when others are asked for', inDeep, async () => {
    const page = await open();
    await page.evaluate(() => {
      const [field, form] = [document.querySelector('.papers textarea'), document.querySelector('.papers form')];
      if (!(field instanceof HTMLTextAreaElement && form instanceof HTMLFormElement)) throw new Error('no form');
      field.value = Array.from({ length: 500 }, (_, i) => `Student ${i}`).join('\n');
      form.requestSubmit();
    });
    expect(await set(page, 'Ada\nBob')).toMatch(/^2 papers are set/);
    await page.waitForTimeout(300);
    expect(await page.locator('.papers-print[data-kind=sheets] section.paper').count()).toBe(2);
    expect(await status(page)).toMatch(/^2 papers are set/);
  });

  it('hands out the question bank as two packages and a table, from a file as well', async () => {
    const page = await open('', { from: asFiles(), fresh: true });
    for (const [name, file] of [
      ['Question bank as QTI 2.1', 'question-bank-qti-2.1.zip'],
      ['as QTI 3.0', 'question-bank-qti-3.0.zip'],
    ] as const) {
      const download = await saved(page, () => page.getByRole('button', { name, exact: true }).click());
      expect(download.name).toBe(file);
      const files = Object.keys(unzipSync(new Uint8Array(download.bytes)));
      expect(files[0]).toBe('imsmanifest.xml');
      expect(files.filter((path) => path.startsWith('items/')).length).toBe(6);
      expect(files).toContain('test.xml');
    }
    const table = await saved(page, () => page.getByRole('button', { name: 'as CSV' }).click());
    expect(table.bytes.toString('utf8').split('\r\n').length).toBe(6 + 2);
  });

  it('prints the project with the threads of each worked pair, and with how far off the pairs found are', async () => {
    const { page } = await visit('class-material.html#project', { fresh: true });
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
      window.print = () => undefined;
    });
    await page.locator('[data-classwork=project] table').waitFor({ state: 'attached' });
    const wanted = page.locator('#project-lead');
    await wanted.fill('87.5 µm');
    await wanted.press('Enter');
    await page.getByRole('button', { name: 'Print the project' }).click();
    const text = (await page.locator('[data-kind=project]').textContent()) ?? '';
    expect(text).toContain('3/8-16 UNC + 7/16-14 UNC');
    expect(text).toMatch(/No pair is near: the nearest is \d+ % off/);
  });

  it('prints the project on two sheets with every stage, and the safety sheet on one, on A4 and Letter', async (context) => {
    needs(context, 'paper');
    const { page } = await visit('class-material.html#project', { fresh: true });
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
      window.print = () => undefined;
    });
    await page.locator('[data-classwork=project] table').waitFor({ state: 'attached' });
    for (const size of ['A4', 'Letter'] as const) {
      await page.getByRole('button', { name: 'Print the project' }).click();
      expect(await page.locator('[data-kind=project] tr').filter({ hasText: '9 Write up' }).count()).toBe(1);
      expect((await print(page, size)).length, size).toBe(2);
      await page.getByRole('button', { name: 'Print the safety sheet' }).click();
      expect((await print(page, size)).length, size).toBe(1);
    }
  });

  it('judges the readings of a class, each against the pair of its own student', async () => {
    const page = await open('', { fresh: true });
    await page.getByLabel(/^Roster/).fill('Ada\nBob; inch');
    const lab = page.locator('[data-classwork=lab]');
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
    });
    await lab.getByRole('button', { name: 'Set the lab' }).click();
    const rigs = await saved(page, () => lab.getByRole('button', { name: 'Readings of all rigs as CSV' }).click());
    await lab.getByLabel(/^Readings as typed/).fill(rigs.bytes.toString('utf8'));
    await lab.getByRole('button', { name: 'Judge these readings' }).click();
    expect(await words(lab.locator('.verdict').last())).toBe('The readings of 2 students are judged.');
    expect(await lab.locator('.table-scroll tbody tr').count()).toBe(2);
    // One student by name: neither pair nor unit is asked again.
    await lab.getByLabel(/^Whose they are/).fill('bob');
    await lab.getByLabel(/^Readings as typed/).fill('0; 0; up\n6; 3.445; up\n12; 6.89; up\n11; 6.32; up');
    await lab.getByRole('button', { name: 'Judge these readings' }).click();
    expect(await words(lab.locator('.verdict').last())).toMatch(/^Bob, M.* A turn moves 87\.5\d µm/);
  });

  it('saves the change that stands in an open form with the file, and says where it is refused', async () => {
    const { page } = await visit('class-material.html#own-exercises', { fresh: true });
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
    });
    const part = page.locator('[data-classwork=own]');
    await part.locator('.own-list > details > summary').first().click();
    const row = part.locator('.own-row').first();
    await row.locator('summary').click();
    const title = row.locator('input[id^=own-title]');
    const save = page.getByRole('button', { name: 'Save these changes to a file' });
    await title.fill('Typed and not taken');
    const download = await saved(page, () => save.click());
    expect(strFromU8(new Uint8Array(download.bytes))).toContain('Typed and not taken');
    // Sizes are typed last.
    await row.locator('textarea').last().fill('potato');
    await save.click();
    await settled(page);
    expect(await words(row.locator('.verdict'))).toContain('potato');
  });

  it('has a teacher’s own exercises again after a reload, and the papers that were set with them', async () => {
    const page = await open('', { fresh: true });
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
    });
    const part = page.locator('[data-classwork=own]');
    await part.locator('.own-list > details > summary').first().click();
    await part.locator('.own-row input[type=checkbox]').first().click();
    expect(await words(part.locator('> .verdict'))).toMatch(/^1 exercise is left out, 0 are changed/);
    expect(await set(page, 'Ada')).toMatch(/^One paper is set/);
    const bank = await words(page.locator('.papers-bank'));
    await page.reload();
    await page.locator('.papers[data-papers] > .papers-preview .paper').first().waitFor({ state: 'attached' });
    expect(await words(page.locator('.papers-bank'))).toBe(bank);
    expect(await status(page)).toMatch(/^One paper is set/);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.part')) fold.toggleAttribute('open', true);
    });
    const again = page.locator('[data-classwork=own]');
    await again.locator('.own-list > details > summary').first().click();
    await again.locator('.own-row input[type=checkbox]').first().check();
    expect(await words(again.locator('> .verdict'))).toBe('All exercises are as the chapters have them.');
    expect(await words(page.locator('.papers-bank'))).toBe(`Question bank ${BANK.version}.`);
  });

  it('mixes exercises of all chapters, never two of one chapter running', async () => {
    const { page } = await visit('review.html');
    await page.locator('[data-review] form').waitFor();
    const place = page.locator('[data-review]');
    const from = () => words(place.locator('[data-from]'));
    const seen = [await from()];
    for (let i = 0; i < 12; i++) {
      await place.getByRole('button', { name: 'Another exercise' }).click();
      const now = await from();
      expect(now).not.toBe(seen.at(-1));
      seen.push(now);
    }
    expect(new Set(seen).size).toBeGreaterThan(3);
    // Until one comes that asks for a number.
    for (let i = 0; i < 20 && !(await place.locator('input[type=text]').isVisible()); i++)
      await place.getByRole('button', { name: 'Another exercise' }).click();
    expect(await answer(place, 'x')).toMatch(/not a number/);
    await place.locator('.worked summary').click();
    expect(await words(place.locator('.steps'))).toMatch(/ = .*\d/);
  });
});
