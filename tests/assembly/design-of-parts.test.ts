/** A design described by its parts: what it gives to the fields of every chapter, and that it is the same everywhere. */
import { describe, expect, it } from 'vitest';
import { springForce, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { numbersOfAdjuster } from '../../widgets/assembly/adjuster/as-numbers.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { asDesign, offersOf } from '../../widgets/assembly/design-use.ts';
import { fitStateOf } from '../../widgets/assembly/fit-state.ts';
import { readInput } from '../../widgets/assembly/numbers.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { adjustersIn } from '../../widgets/site/adjusters.ts';
import { CHAPTERS, FOLDER, press } from '../support/chapters.ts';
import { valueIn } from '../support/results.ts';

const { adjusters } = adjustersIn(FOLDER);
const textOf = (name: string): string => adjusters.get(name) ?? '';
const SETS = CHAPTERS.flatMap(({ file, text }) => press(text, file).model.sets.map((set) => ({ file, set })));

describe.each([...adjusters.keys()])('the design %s', (name) => {
  const adjuster = valueIn(readAdjuster(textOf(name)));
  const design = asDesign({ adjuster: textOf(name) });

  it('fills its threads and lengths into every set that asks for them, with one and the same value', () => {
    let filled = 0;
    const values = new Map<string, string>();
    for (const { file, set } of SETS) {
      const offers = offersOf(design, set);
      for (const [field, { text, worked, taken }] of offers) {
        if (!taken) continue;
        if (field !== 'adjuster') expect(worked, `${file} ${set.id} ${field}`).toBe(true);
        expect(values.get(field) ?? text, `${file} ${set.id} ${field}`).toBe(text);
        values.set(field, text);
        filled++;
      }
    }
    expect(filled).toBeGreaterThan(20);
    expect(valueIn(readThread(values.get('A') ?? '')).L).toBeCloseTo(adjuster.A.thread.L, 12);
  });

  it('gives the sheet and the section the stroke it has itself', () => {
    const numbers = numbersOfAdjuster(adjuster);
    if (numbers.arrangement === undefined) return;
    const amount = (symbol: string) => {
      const set = SETS.find((s) => s.set.inputs.some((i) => i.name === symbol))?.set;
      const input = set?.inputs.find((i) => i.name === symbol);
      if (!input) throw new Error(`no chapter asks for ${symbol}`);
      return valueIn(readInput(input, numbers[symbol] ?? '', 'metric')) as number;
    };
    const fit = valueIn(
      fitStateOf(
        {
          threads: { A: adjuster.A.thread, C: (adjuster.C as NonNullable<typeof adjuster.C>).thread },
          values: {
            l_A: amount('l_A'),
            b_A: amount('b_A'),
            l_C: amount('l_C'),
            b_C: amount('b_C'),
            q_e: amount('q_e'),
          },
          choices: { arrangement: numbers.arrangement as 'in line', assembly: 'both at mid-range' },
        },
        0,
      ),
    );
    expect(fit.adjuster.stroke).toBeCloseTo(adjuster.stroke, 6);
    expect(fit.adjuster.Delta).toBeCloseTo(adjuster.Delta, 12);
  });
});

describe('a design that is no pair, or none of the arrangements', () => {
  it.each([
    'base = nut M12x1, 20 mm | turned = screw M12x1, 40 mm',
    'base = stud M12x1.75 30 mm | turned = double nut M12x1.75 18 mm, M10x1.5 15 mm, height 60 mm | carried = screw M10x1.5, thread 30 mm',
  ])('gives nothing to a page that would mix it with its own: %s', (text) => {
    const plain = text.includes('screw M12x1,');
    for (const { set } of SETS) {
      const asks = (name: string) => set.inputs.some((i) => i.name === name);
      if (asks('adjuster')) continue;
      if (asks('arrangement') || (plain && asks('C'))) expect(offersOf({ adjuster: text }, set).size, set.id).toBe(0);
    }
  });
});

describe('springs', () => {
  it('have the force that was set at assembly, and more or less of it as their ends part', () => {
    const riser = valueIn(readAdjuster(textOf('riser')));
    expect(springForce(riser, 0)).toBe(12);
    // The carried part sinks 87.5 µm a turn clockwise, so springs between base and carried part slacken by 0.6 N/mm of it.
    expect(springForce(riser, 1)).toBeCloseTo(12 - 0.6 * 0.0875, 9);
    const between = valueIn(readAdjuster(textOf('riser').replace('base and carried', 'turned and carried')));
    expect(springForce(between, 1)).toBeCloseTo(12 + 0.6 * 1.5, 9);
    expect(standing(riser, 0).motion).toEqual({ turned: 0, carried: 0 });
  });
});
