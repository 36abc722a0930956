/** The numbers of figures that can be asked: each is printed under its key, goes backwards and forwards again, and has a ± and a source. */
import { describe, expect, it } from 'vitest';
import { doubtIn } from '../../widgets/assembly/backwards/doubt.ts';
import { ofNumbers, type Question } from '../../widgets/assembly/backwards/question.ts';
import { soldThing } from '../../widgets/assembly/backwards/sold.ts';
import { waysTo } from '../../widgets/assembly/backwards/solve.ts';
import { linksTo, traced } from '../../widgets/assembly/backwards/traced.ts';
import { type Input, type Numbers, readField } from '../../widgets/assembly/numbers.ts';
import { relationNamed } from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { LAZY } from '../../widgets/figures/lazy.ts';
import { escapeText } from '../../widgets/input/escape.ts';
import { these } from '../support/deep.ts';
import { startOf } from '../support/figure-numbers.ts';
import { valueIn } from '../support/results.ts';

/** Figures without a number that can be asked, and why. */
const WITHOUT: Readonly<Record<string, string>> = {
  drawer:
    'is itself a result asked backwards: its wishes are typed, its list is what gives way; the numbers of what is taken are asked at the adjuster',
  'pair-map':
    'is itself a result asked backwards: the pairs that give a wanted motion; the numbers of one are asked where it opens',
  'part-drawings': 'shows dimensions as they are stated, and works out none',
  'part-files': 'shows sizes as they are stated, and works out none',
  'play-batch':
    'draws assemblies at random, twenty thousand anew at every number; what the limits allow is asked at the limits of a class',
  'which-part': 'draws and solves assemblies at random, for seconds at every number',
  'fault-bench': 'hides a fault by a seed, which its numbers would give away',
};

const numberIn = (figure: Figure, numbers: Numbers, key: string): number | undefined => {
  const at = figure.at(numbers, 'metric');
  return at.ok ? at.value.amounts().find((amount) => amount.key === key)?.value : undefined;
};
const figureNamed = (name: string): Figure => LAZY.find((figure) => figure.name === name) as Figure;

const asked = (
  name: string,
  key: string,
  names: readonly string[],
): Question & { readonly set: readonly Input[]; readonly figure: Figure } => {
  const figure = figureNamed(name);
  const { numbers, inputs } = startOf(name);
  const own = inputs.filter((input) => names.includes(input.name));
  return { ...ofNumbers(numbers, own, key, (at) => numberIn(figure, at, key)), set: inputs, figure };
};

describe('the numbers of every figure', () => {
  const usual = [
    'section',
    'ramp',
    'fit-section',
    'thread-limits',
    'other-ways',
    'printed-parts',
    'design-sheet',
    'calibration',
    'force-chain',
    'beside-bought',
    'certificate',
  ];
  for (const name of these(
    LAZY.map((figure) => figure.name),
    usual,
  ))
    it(`${name}: have keys of their own, and each is printed once under its key, unless they are lists`, () => {
      const at = valueIn(figureNamed(name).at(startOf(name).numbers, 'metric'));
      const keys = at.amounts().map(({ key }) => key);
      // What works in the background has none until it is done.
      if (name !== 'pushed-jack' && name !== 'jack-solid') expect(keys.length > 0, name).toBe(!(name in WITHOUT));
      expect(new Set(keys).size, String(keys)).toBe(keys.length);
      // Where from: by the relations that were asked, or by those that a function of the figure holds.
      const set = startOf(name);
      for (const { key, by = [] } of at.amounts()) {
        const { result, calls } = traced(() => numberIn(figureNamed(name), set.numbers, key));
        const links = linksTo(calls, result ?? 0, { id: 'x', inputs: set.inputs }, set.numbers);
        expect(links.length + by.length, key).toBeGreaterThan(0);
        for (const relation of by) expect(relationNamed(relation), relation).toBeDefined();
      }
      const html = at.draw() + at.readings();
      for (const key of keys) expect(html.split(`data-result="${escapeText(key)}"`), key).toHaveLength(2);
    });
});

describe('a number of a figure asked backwards', () => {
  const CASES = [
    ['section', 'carried', 'n', 0.2],
    ['design-sheet', 'turns-between-the-stops', 'l_A', 8],
    ['divided-turn', 'step', 'k_d', 0.001],
    ['thread-eaten', 'X_A', 'S_w', 10],
    ['torque-bars', 'raise', 'F', 50],
    ['lead-error', 'eps', 'eps_A', 0.02],
    ['drift-bars', 'bar-0', 'F', 0.001],
    ['lock-error', 'lost', 'g_k', 0.01],
    ['foot-on-plane', 'tips', 'R_o', 40],
    ['force-chain', 'C-least', 'F_0', 15],
    ['force-chain', 'spring', 'k_s', 25],
    ['levelling-plate', 'load-1', 'W', 60],
    ['plate-on-feet', 'height-1', 'eps', 0.01],
    ['calibration', 'nominal', 'n', 0.05],
    ['calibration', 'travel', 'n', 0.1],
    ['certificate', 'whole', 'theta_i', 0.002],
    ['bench-card', 'reverse', 'e_g', 0.005],
    ['beside-bought', 'own-hand', 'theta_h', 0.003],
    ['beside-bought', 'A-core', 'sigma_a', 9000],
    ['solid', 'turned', 'n', -0.5],
    ['thread-limits', 'hole', 'q_t', 8.6],
  ] as const;
  for (const [name, key, input, wish] of these(CASES, [...CASES.slice(0, 4), ...CASES.slice(9)]))
    it(`${name}: ${input} for another ${key}, and forward again`, () => {
      const question = asked(name, key, [input]);
      const field = question.set.find((other) => other.name === input);
      if (field?.kind !== 'quantity') throw new Error(`${name} has no ${input}`);
      const [way] = valueIn(waysTo(question, wish));
      const law = question.ofQuantity(field);
      if (!way) throw new Error('no way');
      for (const { value = Number.NaN, gives } of [...way.answers, ...way.nearest]) expect(law(value)).toBe(gives);
      const whole = [way.least ?? Number.NaN, way.most ?? Number.NaN] as const;
      // Inside what it reaches there is an answer; outside there is none, and the nearest is an end.
      if (wish >= whole[0] && wish <= whole[1] && input !== 'k_d') {
        expect(way.answers.length).toBeGreaterThan(0);
        for (const { gives } of way.answers) expect(gives / wish).toBeCloseTo(1, 7);
      } else if (input !== 'k_d') expect(whole).toContain(way.nearest[0]?.gives);
    });

  it('a hole before tapping: the share of thread that would make it, and those of the nearest drills that are sold', () => {
    const question = { ...asked('thread-limits', 'hole', ['q_t']), sold: soldThing('drills') };
    const [way] = valueIn(waysTo(question, 8.53));
    expect(way?.stock?.thing).toBe('drills');
    // 8.5 mm is the drill of every chart for M10×1.5; by the shop formula d − 1.299 P of thread it leaves 77 %.
    expect(way?.stock?.choices.map(({ sold }) => sold)).toContain('8.5 mm');
    const common = way?.stock?.choices.find(({ sold }) => sold === '8.5 mm');
    expect(common?.value).toBeCloseTo(1.5 / (1.29904 * 1.5), 4);
    expect(common?.gives).toBeCloseTo(8.5, 8);
  });

  it('the ± of a figure is that of the example beside it: 2.5 µm of 175 µm for ±1 µm of a pitch and ±0.01 turns', () => {
    const { numbers, ...question } = asked('section', 'carried', ['A', 'n']);
    const at = { ...numbers, values: { ...numbers.values, n: 2 } };
    const two = ofNumbers(at, question.inputs, 'carried', (m) => numberIn(question.figure, m, 'carried'));
    const texts: Record<string, string> = { A: 'M10x1.5 ± 1 µm', n: '2 ± 0.01' };
    const spread = (name: string) => {
      const input = question.set.find((other) => other.name === name);
      return input && valueIn(readField(input, texts[name] ?? '', 'metric')).spread;
    };
    expect(doubtIn(two, spread)?.U).toBeCloseTo(2 * Math.sqrt(0.002 ** 2 / 3 + 0.000875 ** 2 / 3), 8);
  });

  it.each([
    // Δ = L_C − L_A, so a thousandth of L_A takes that much off, whatever draws the figure.
    ['section', 'perTurn', 'A', (P: number) => -P / 1000],
    ['design-sheet', 'per-turn-clockwise', 'C', (P: number) => P / 1000],
  ] as const)('a pitch that is moved within its ± moves %s %s', (name, key, thread, by) => {
    const { numbers, ...question } = asked(name, key, [thread]);
    const own = question.inputs.filter((input) => input.name === thread);
    const P = numbers.threads[thread]?.P ?? Number.NaN;
    const law = question.ofSeveral(own);
    expect((law([P * 1.001]) ?? Number.NaN) - (law([P]) ?? Number.NaN)).toBeCloseTo(by(P), 9);
  });

  it.each([
    ['design-sheet', 'turns-between-the-stops', 'C'],
    ['fit-section', 'clockwise', 'A'],
  ] as const)('a longer pitch gives fewer turns to the stop of that thread: %s', (name, key, thread) => {
    const { numbers, ...question } = asked(name, key, [thread]);
    const P = numbers.threads[thread]?.P ?? Number.NaN;
    const law = question.ofSeveral(question.inputs);
    expect((law([P * 1.001]) ?? Number.NaN) / (law([P]) ?? Number.NaN)).toBeCloseTo(1 / 1.001, 9);
  });

  it('comes from the relations that gave just this number, and from the reader’s numbers', () => {
    const figure = figureNamed('divided-turn');
    const { numbers, inputs } = startOf('divided-turn');
    const { result, calls } = traced(() => numberIn(figure, numbers, 'step'));
    const links = linksTo(calls, result ?? 0, { id: 'x', inputs }, numbers);
    expect(links.map(({ relation }) => relation.name)).toEqual(['per-step', 'net-lead']);
    expect(links[0]?.takes).toMatchObject([{ name: 'Delta', worked: true }, { name: 'k' }]);
    expect(links[1]?.takes.map(({ input }) => input)).toEqual(['C', 'C', 'A', 'A']);
    // Nothing listens any more.
    const before = calls.length;
    numberIn(figure, numbers, 'step');
    expect(calls.length).toBe(before);
  });
});
