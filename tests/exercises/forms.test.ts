/** One definition, asked as it is written, backwards, and as “show that”. */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { runSteps } from '../../widgets/assembly/steps.ts';
import { toBase } from '../../widgets/engine/index.ts';
import { makeBank } from '../../widgets/exercises/bank.ts';
import { draws, itemAt, picksAt } from '../../widgets/exercises/exercise.ts';
import { FORMS, formsOf } from '../../widgets/exercises/forms.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { choose, paperParameters, readPaperLink, setBank, setPaper } from '../../widgets/exercises/paper.ts';
import { keySheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
import { EXERCISES, exerciseFrom, mistakesOf, PAIR } from '../support/bank.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const BACK = 'backwards n in turns, 3 digits: Threads {A} and {C}. It moved {answer}. How many turns?';
const pair = exerciseFrom('exercise pair: A pair', `${PAIR}\n${BACK}`);
const BANK = makeBank([{ slug: 'pairs', title: 'Pairs', exercises: [pair] }]);
const COUNTS = new Map([['pairs', 6]]);
const paper = (form: (typeof FORMS)[number]) =>
  setPaper(choose(BANK, COUNTS, '7B', { form }), '7B', 'Ada', BANK.version);

describe('asked backwards', () => {
  it('tells the answer and asks for the number, which the steps lead to what was told', () => {
    const { find } = formsOf(pair);
    if (!find) throw new Error('no form');
    for (let i = 0; i < draws(pair); i++) {
      const picks = picksAt(pair, i);
      const forward = itemAt(pair, picks);
      if (!forward.ok) continue;
      const item = valueIn(itemAt(find, picks));
      const last = item.outcomes.at(-1);
      const told = toBase({ amount: Number(forward.value.amount.toPrecision(3)), unit: 'µm' });
      expect(last?.ok && last.value).toBeCloseTo(told, 12);
      expect(item.question).not.toMatch(/\{|turned by/);
      expect(judge(item, String(item.amount)).kind).toBe('right');
      expect(judge(item, String(item.amount * 1.05)).kind).not.toBe('right');
    }
  });

  it('works for every exercise of the book that says so, at every item', () => {
    const turned = EXERCISES.filter(({ backwards }) => backwards !== undefined);
    expect(turned.length).toBeGreaterThan(3);
    for (const exercise of turned) {
      const { find } = formsOf(exercise);
      for (let i = 0; i < Math.min(60, draws(exercise)); i++) {
        const picks = picksAt(exercise, i);
        if (!itemAt(exercise, picks).ok || !find) continue;
        const item = valueIn(itemAt(find, picks));
        expect(item.outcomes.every(({ ok }) => ok)).toBe(true);
        expect(runSteps(exercise.steps, {}).length).toBe(item.outcomes.length);
      }
    }
  });

  it('is refused where the question tells what it asks, or not what it gives', () => {
    const told = (line: string) => mistakesOf(`${PAIR}\n${line}`).join('\n');
    expect(told(BACK)).toBe('');
    expect(told('backwards n in turns: {answer}')).toMatch(/can’t be read/);
    expect(told('backwards A in mm, 3 digits: {C} {answer} {n}')).toMatch(/can’t be found in mm/);
    expect(told('backwards n in mm, 3 digits: {A} {C} {answer}')).toMatch(/can’t be found in mm/);
    expect(told('backwards n in turns, 3 digits: {A} moved {answer}')).toMatch(/lacks \{C\}/);
    expect(told('backwards n in turns, 3 digits: {A} {C} {n} {answer}')).toMatch(/every number but n/);
  });
});

describe('a paper', () => {
  it('asks the inverse, and has the same numbers for ever for the same words', () => {
    const lines = paper('backwards');
    expect(lines[0]?.key).toBe('pair-backwards');
    expect(lines.map(({ item }) => item.exercise.id)).toEqual(Array.from({ length: 6 }, () => 'pair-backwards'));
    expect(paper('backwards').map(({ item }) => item.question)).toEqual(lines.map(({ item }) => item.question));
  });

  it('asks to show: the answer is told, room is left in place of a blank, and the key has the steps', () => {
    const lines = paper('show-that');
    const { document } = parseHTML(`<body>${studentSheet(lines, 'Ada', { classCode: '7B', version: '1' })}</body>`);
    expect(document.querySelectorAll('.blank')).toHaveLength(0);
    expect(document.querySelectorAll('.room')).toHaveLength(6);
    expect(document.querySelector('li p')?.textContent).toMatch(/How far\? Show that the answer is −?[\d.]+\sµm/);
    const key = parseHTML(`<body>${keySheet(lines, 'Ada', { classCode: '7B', version: '1' })}</body>`).document;
    expect(key.querySelector('li li')?.textContent).toMatch(/Δ = /);
  });

  it('mixes the forms by lot, and a bank that a machine judges has none to show', () => {
    const kinds = (lines: ReturnType<typeof setBank>) => new Set(lines.map(({ item }) => item.exercise.id));
    const many = new Map([['pairs', 10]]);
    expect(kinds(setPaper(choose(BANK, many, '7B', { form: 'mixed' }), '7B', 'Ada', '1'))).toEqual(
      new Set(['pair', 'pair-backwards', 'pair-show']),
    );
    expect([...kinds(setBank(BANK, many, '7B', { form: 'mixed' }))].sort()).toEqual(['pair', 'pair-backwards']);
    expect([...kinds(setBank(BANK, many, '7B', { form: 'show-that' }))]).toEqual(['pair']);
  });

  it('carries its form in its link, and refuses one that is none', () => {
    for (const form of FORMS) {
      const search = `?${new URLSearchParams(paperParameters({ classCode: '7B', counts: COUNTS, form }, BANK.version))}`;
      const read = readPaperLink(search, BANK);
      expect(read?.ok && (read.value.form ?? 'as-written')).toBe(form);
    }
    const odd = `?${new URLSearchParams({ ...paperParameters({ classCode: '7B', counts: COUNTS }, BANK.version), form: 'sideways' })}`;
    const read = readPaperLink(odd, BANK);
    expect(read && reasonIn(read)).toMatch(/“sideways”/);
  });
});
