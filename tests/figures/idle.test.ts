/**
 * Where the numbers of a figure are asked for: each in one place, and none that changes nothing as the others stand. The figures of the
 * book are held to what they declare: an idle number, whatever it is, leaves picture, sentence and readings as they are.
 */
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import type { SymbolName } from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { CHOICES } from '../../widgets/input/choices.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { drawn } from '../support/deep.ts';
import { startOf } from '../support/figure-numbers.ts';

const all = [...FIGURES.values()];

/** The opening numbers, with each option of each choice in turn, and quantities in turn at nought: some of them at every run. */
const casesOf = (figure: Figure, numbers: Numbers): { name: string; numbers: Numbers }[] => [
  { name: 'as it opens', numbers },
  ...figure.choices.flatMap((choice) =>
    CHOICES[choice].options.map((option) => ({
      name: `${choice} = ${option}`,
      numbers: { ...numbers, choices: { ...numbers.choices, [choice]: option } },
    })),
  ),
  ...drawn(6, figure.quantities).map((symbol) => ({
    name: `${symbol} = 0`,
    numbers: { ...numbers, values: { ...numbers.values, [symbol]: 0 } },
  })),
];

/** What a figure shows at these numbers. Its table may set beside it what the other options would give. */
const shownAt = (figure: Figure, numbers: Numbers): string | undefined => {
  const at = figure.at(numbers, 'metric');
  return at.ok ? JSON.stringify([at.value.draw(), at.value.caption(), at.value.readings()]) : undefined;
};

/** The first case of each set of idle numbers. */
const withIdle = (figure: Figure, numbers: Numbers) => {
  const met = new Set(['']);
  return casesOf(figure, numbers).filter((one) => {
    const idle = figure.idle(one.numbers).join();
    // What is idle is told at once; a drawing may take a second.
    return !met.has(idle) && shownAt(figure, one.numbers) !== undefined && met.add(idle);
  });
};

describe('the fields of a figure', () => {
  for (const figure of all)
    it(`${figure.name}: each number stands in one place, two or three of them with the picture`, () => {
      const takes = [...figure.threads, ...figure.quantities, ...figure.choices, ...figure.texts];
      const placed = [...figure.chief, ...figure.groups.flatMap((group) => group.names), ...figure.setElsewhere];
      expect([...placed].sort()).toEqual([...takes].sort());
      expect(figure.chief.length).toBeGreaterThanOrEqual(1);
      expect(figure.chief.length).toBeLessThanOrEqual(3);
    });
});

describe('an idle number changes nothing', () => {
  for (const figure of all) {
    const { numbers, inputs } = startOf(figure.name);
    const cases = withIdle(figure, numbers);
    if (cases.length === 0) continue;
    it(figure.name, () => {
      for (const { name, numbers: given } of cases) {
        const before = shownAt(figure, given);
        for (const idle of figure.idle(given)) {
          const input = inputs.find((one) => one.name === idle);
          const others: Numbers[] =
            input?.kind === 'quantity'
              ? [input.min, (input.min + input.max) / 2].map((value) => ({
                  ...given,
                  values: { ...given.values, [idle as SymbolName]: value },
                }))
              : input?.kind === 'choice'
                ? CHOICES[input.name].options.map((option) => ({
                    ...given,
                    choices: { ...given.choices, [idle]: option },
                  }))
                : idle === 'dividers'
                  ? ['square', 'knob 25'].map((text) => ({ ...given, texts: { ...given.texts, dividers: text } }))
                  : [];
          expect(others.length, `${idle} can be varied`).toBeGreaterThan(0);
          for (const other of others)
            expect(shownAt(figure, other) === before, `${name}: ${idle} changes what is shown`).toBe(true);
        }
      }
    });
  }
});
