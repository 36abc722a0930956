/** A result asked backwards, its ± and where it comes from, on the worked examples of a pair. */
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../widgets/assembly/backwards/chain.ts';
import { DRAWS, doubtIn, drawsIn } from '../../widgets/assembly/backwards/doubt.ts';
import { ofExample } from '../../widgets/assembly/backwards/question.ts';
import { type Asked, reaching, resultOf, scopeIn } from '../../widgets/assembly/backwards/reach.ts';
import { type GivesWay, waysTo } from '../../widgets/assembly/backwards/solve.ts';
import { linksTo, traced } from '../../widgets/assembly/backwards/traced.ts';
import { gather, type Input, type NumberSet, readField, type Value } from '../../widgets/assembly/numbers.ts';
import type { Step } from '../../widgets/assembly/steps.ts';
import {
  gain,
  mm,
  netLead,
  perStep,
  plain,
  runToEnd,
  type SymbolName,
  symbolFact,
} from '../../widgets/engine/index.ts';
import type { Spread } from '../../widgets/input/spread.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const thread = (name: string, start: string): Input => ({ kind: 'thread', name, label: `thread ${name}`, start });
const number = (name: SymbolName, start: string, min?: number, max?: number): Input => {
  const fact = symbolFact(name);
  return { kind: 'quantity', name, label: fact.says, start, min: min ?? fact.min, max: max ?? fact.max };
};
const step = (relation: string, output: string, bind: Step['bind'] = {}, as = output): Step => ({
  relation,
  output: output as SymbolName,
  bind,
  as: as as SymbolName,
  digits: 4,
});

const asked = (
  inputs: readonly Input[],
  steps: readonly Step[],
  index: number,
): Asked & { spread: (name: string) => Spread | undefined } => {
  const set: NumberSet = { id: 'x', inputs };
  const spreads = new Map<string, Spread>();
  const values = new Map<string, Value>();
  for (const input of inputs) {
    const held = valueIn(readField(input, input.start, 'metric'));
    values.set(input.name, held.value);
    if (held.spread) spreads.set(input.name, held.spread);
  }
  return { set, numbers: gather(set, values), steps, index, spread: (name) => spreads.get(name) };
};

const drawnIn = (of: ReturnType<typeof asked>) => {
  const doubt = doubtIn(ofExample(of), of.spread);
  return doubt && runToEnd(drawsIn(ofExample(of), of.spread, doubt, DRAWS));
};

const FOOT = [
  step('lead', 'L', { P: 'P_A', N: 'N_A' }, 'L_A'),
  step('lead', 'L', { P: 'P_C', N: 'N_C' }, 'L_C'),
  step('turned-motion', 'z_t'),
  step('net-lead', 'Delta'),
  step('net-motion', 'z_c'),
];
const foot = (index: number, A = 'M10x1.5', C = '3/8-16 UNC', n = '1') =>
  asked([thread('A', A), thread('C', C), number('n', n, -4, 4)], FOOT, index);
const way = (of: Asked, wish: number, name: string): GivesWay => {
  const found = valueIn(waysTo(ofExample(of), wish)).find(({ input, beside }) => input.name === name && !beside);
  if (!found) throw new Error(name);
  return found;
};

describe('which numbers may give way', () => {
  it('are those that reach the result through its steps', () => {
    expect(reaching(foot(4)).map(({ name }) => name)).toEqual(['A', 'C', 'n']);
    expect(reaching(foot(3)).map(({ name }) => name)).toEqual(['A', 'C']);
    expect(reaching(foot(2)).map(({ name }) => name)).toEqual(['A', 'n']);
  });

  it('a result that none reaches is refused in one sentence', () => {
    const fixed = asked([number('n', '1')], [step('net-lead', 'Delta', { h_C: 1, L_C: 2, h_A: 1, L_A: 1.5 })], 0);
    expect(reasonIn(waysTo(ofExample(fixed), 1))).toMatch(/None of the numbers here leads to the net lead/);
  });
});

describe('what they become', () => {
  it('turns: 0.2 mm of a pair that moves 87.5 µm a turn are 16/7 turns, and forward again to nine digits', () => {
    const [answer] = way(foot(4), 0.2, 'n').answers;
    expect(answer?.value).toBeCloseTo(16 / 7, 8);
    expect(answer?.digits).toBeGreaterThanOrEqual(8);
    expect(answer?.gives).toBeCloseTo(0.2, 9);
  });

  it('turns that the field does not reach: the nearest, and from where to where', () => {
    const turns = way(foot(4), 1, 'n');
    expect(turns.answers).toEqual([]);
    expect(turns.nearest[0]).toMatchObject({ text: '4', gives: expect.closeTo(0.35, 12) });
    expect(turns.least).toBeCloseTo(-0.35, 12);
    expect(turns.most).toBeCloseTo(0.35, 12);
  });

  it('a thread: a stock one that gives it exactly, by enumeration', () => {
    // 1.5875 − 1.25 = 0.3375.
    const texts = way(foot(3), 0.3375, 'A').answers.map(({ text }) => text);
    expect(texts).toContain('M8×1.25');
  });

  it('a thread: the three nearest where none does, and the pitch that would', () => {
    const A = way(foot(3), 0.1, 'A');
    expect(A.answers).toEqual([]);
    expect(A.nearest).toHaveLength(3);
    expect(A.pitches).toEqual([expect.closeTo(1.4875, 12)]);
    const gives = A.nearest.map((choice) => Math.abs(choice.gives - 0.1));
    expect([...gives].sort((a, b) => a - b)).toEqual(gives);
  });

  it('a thread: no other is called exact for a wish so small that all are near it', () => {
    // 16 threads an inch on other sizes give no motion at all, which is not a hundredth of a micrometre.
    const A = way(foot(3), 1e-5, 'A');
    expect(A.answers).toEqual([]);
    expect(A.nearest[0]?.gives).toBe(0);
  });

  it('a thread: also where the first of the list gives what is there already', () => {
    expect(way(foot(3, 'M10x0.8'), 0.3375, 'A').answers.map(({ text }) => text)).toContain('M8×1.25');
  });

  it('a hand: a wish that only opposite hands reach is found with one', () => {
    const texts = way(foot(3), 3.0875, 'A').answers.map(({ text }) => text);
    expect(texts.every((text) => text.endsWith('LH'))).toBe(true);
    expect(texts[0]).toBe('M10×1.5 LH');
  });

  it('two threads together: the nearest pair of stock threads, which comes nearer than either alone', () => {
    const ways = valueIn(waysTo(ofExample(foot(3)), 0.02));
    const off = (of: GivesWay | undefined) => Math.abs((of?.nearest[0]?.gives ?? Number.NaN) - 0.02);
    const both = ways.find(({ beside }) => beside?.name === 'C');
    const alone = ways.filter(({ input, beside }) => input.kind === 'thread' && !beside);
    expect(off(both)).toBeLessThan(Math.min(...alone.map(off)));
    for (const { gives } of both?.nearest ?? []) {
      expect(both?.least).toBeLessThanOrEqual(gives);
      expect(both?.most).toBeGreaterThanOrEqual(gives);
    }
  });

  it('another head: a flat, a point or a division', () => {
    const head: Input = { kind: 'choice', name: 'divider', label: 'divided by', start: 'hexagon' };
    const of = asked([number('Delta', '87.5 µm'), head, number('k_d', '50')], [step('per-step', 's')], 0);
    expect(way(of, 0.0875 / 12, 'divider').answers.map(({ text }) => text)).toEqual(['twelve points']);
    expect(way(of, 0.0875 / 50, 'divider').answers.map(({ text }) => text)).toEqual(['knob']);
  });

  it('a whole number is whole, and the nearest is named with what it gives', () => {
    const knob = asked([number('Delta', '87.5 µm'), number('k', '6')], [step('per-step', 's')], 0);
    const k = way(knob, 0.001, 'k');
    expect(k.answers).toEqual([]);
    expect(k.nearest[0]).toMatchObject({ text: '88', gives: expect.closeTo(0.0875 / 88, 12) });
    expect(way(knob, 0.0875 / 50, 'k').answers.map(({ text }) => text)).toEqual(['50']);
  });

  it('both of two answers: a net lead of either sign moves as far a step', () => {
    const knob = asked([number('Delta', '87.5 µm', -1, 1), number('k', '6')], [step('per-step', 's')], 0);
    expect(way(knob, 0.02, 'Delta').answers.map(({ value }) => value)).toEqual([
      expect.closeTo(-0.12, 9),
      expect.closeTo(0.12, 9),
    ]);
  });

  it('a step that rules over a number of the set hides it', () => {
    const steps = [step('net-lead', 'Delta', { h_C: 1, L_C: 2, h_A: 1, L_A: 1.5 }), step('net-motion', 'z_c')];
    expect(reaching(asked([number('Delta', '1 mm'), number('n', '1')], steps, 1)).map(({ name }) => name)).toEqual([
      'n',
    ]);
  });

  it('every way that is found goes forward to the wish, for hands and starts by enumeration', () => {
    for (const [A, C] of [
      ['M10x1.5', 'M8x1.25'],
      ['M10x1.5 LH', 'M8x1.25'],
      ['M10x1.5', 'M8x1.25 LH'],
      ['M12x1 2 starts', 'M8x1.25'],
    ] as const)
      for (const wish of [-0.2, 0.75, 2.75]) {
        const of = foot(4, A, C, '1');
        for (const { input, beside, answers } of valueIn(waysTo(ofExample(of), wish)))
          for (const { text, beside: other = '' } of answers) {
            const again = foot(
              4,
              input.name === 'A' ? text : A,
              input.name === 'C' ? text : beside ? other : C,
              input.name === 'n' ? text : '1',
            );
            expect(resultOf(again)(scopeIn(again)), `${input.name} = ${text}`).toBeCloseTo(wish, 8);
          }
      }
  });
});

describe('the ± of a result', () => {
  it('two pitches that enter as leads: the difference keeps the doubt of both', () => {
    // Δ = P_C − P_A, each ±1 µm: u = √2/√3 µm.
    const doubt = doubtIn(
      ofExample(foot(3, 'M10x1.5 ± 1 µm', 'M8x1.25 ± 1 µm')),
      foot(3, 'M10x1.5 ± 1 µm', 'M8x1.25 ± 1 µm').spread,
    );
    expect(doubt?.u).toBeCloseTo(1e-3 * Math.sqrt(2 / 3), 9);
    expect(doubt?.k).toBeCloseTo(2, 3);
    expect(doubt?.parts.map(({ share }) => share)).toEqual([expect.closeTo(0.5, 6), expect.closeTo(0.5, 6)]);
  });

  it('a number that enters twice is one: a thread in both places leaves no doubt of their difference', () => {
    const steps = [step('net-lead', 'Delta', { h_C: 1, L_C: 'L_A', h_A: 1 })];
    const of = asked([thread('A', 'M10x1.5 ± 1 µm')], steps, 0);
    expect(doubtIn(ofExample(of), of.spread)).toBeUndefined();
  });

  it('the ranked parts, and what half of the first would leave', () => {
    const of = foot(4, 'M10x1.5 ± 1 µm', 'M8x1.25', '2 ± 0.01');
    const doubt = doubtIn(ofExample(of), of.spread);
    expect(doubt?.parts.map(({ input }) => input.name)).toEqual(['n', 'A']);
    // z = n (P_C − P_A): 0.25 × 0.01 mm and 2 × 1 µm.
    const [a, b] = [0.0025 / Math.sqrt(3), 0.002 / Math.sqrt(3)];
    expect(doubt?.u).toBeCloseTo(Math.hypot(a, b), 9);
    expect(doubt?.halved).toBeCloseTo((doubt?.k ?? 0) * Math.hypot(a / 2, b), 9);
  });

  it('few readings take a larger k', () => {
    const of = asked([number('w', '0.4 mm ± 2 µm, 5 readings'), number('s', '10 µm')], [step('steps-for', 'm')], 0);
    // t of 4 degrees of freedom at 95.45 %: 2.87 (JCGM 100, table G.2).
    expect(doubtIn(ofExample(of), of.spread)?.k).toBeCloseTo(2.87, 2);
  });

  it('a law that bends is sampled, and it is said where the two differ', () => {
    const of = asked([number('L', '1.5 mm'), number('Delta', '10 µm ± 8 µm')], [step('gain', 'G')], 0);
    const doubt = doubtIn(ofExample(of), of.spread);
    const drawn = drawnIn(of);
    expect(drawn?.differs).toBe(true);
    // L/Δ from 2 µm to 18 µm: no gain is below 1500/18, whatever the first order says.
    expect(drawn?.low).toBeGreaterThan(1500 / 18 - 1);
    expect((doubt?.value ?? 0) - (doubt?.U ?? 0)).toBeLessThan(1500 / 18);
  });

  it('a law that runs straight over many parts is not', () => {
    const of = foot(3, 'M10x1.5 ± 1 µm', 'M8x1.25 ± 1 µm');
    expect(drawnIn(of)).toBeUndefined();
  });
});

describe('where a number comes from', () => {
  it('names each step back to the reader’s numbers', () => {
    const links = chainOf(foot(4));
    expect(links.map(({ step: { relation } }) => relation)).toEqual(['net-motion', 'net-lead', 'lead', 'lead']);
    expect(links[0]?.takes).toEqual([
      { name: 'n', value: 1, input: 'n' },
      { name: 'Delta', value: expect.closeTo(0.0875, 12), step: 3 },
    ]);
    expect(links[1]?.takes.map(({ name, input, step: from }) => [name, input ?? from])).toEqual([
      ['h_C', 'C'],
      ['L_C', 1],
      ['h_A', 'A'],
      ['L_A', 0],
    ]);
  });
});

describe('where a number of a figure comes from', () => {
  const of = foot(4);
  const { calls, result } = traced(() => {
    const { Delta } = valueIn(netLead.of({ h_C: plain(1), L_C: mm(1.5875), h_A: plain(1), L_A: mm(1.5) }));
    // Asked in passing, and no part of the answer.
    valueIn(gain.of({ L: mm(1.5875), Delta }));
    return valueIn(perStep.of({ Delta, k: plain(6) })).s;
  });

  it('the relation that gave it, then those that gave what it took, and the reader’s numbers at the end', () => {
    const links = linksTo(calls, result, of.set, of.numbers);
    expect(links.map(({ relation }) => relation.name)).toEqual(['per-step', 'net-lead']);
    expect(links[0]?.takes.find(({ name }) => name === 'Delta')).toMatchObject({ worked: true });
    expect(links[1]?.takes.map(({ name, input }) => `${name} ${input}`)).toContain('L_C C');
  });

  it('all that were asked where none gave it, as for a nought', () => {
    const links = linksTo(calls, 0, of.set, of.numbers);
    expect(links.map(({ relation }) => relation.name)).toEqual(['per-step', 'gain', 'net-lead']);
  });
});
