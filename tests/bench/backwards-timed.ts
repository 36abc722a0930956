/** What the bench of results asked backwards times: the worked example of the Foot, with a doubt on each of its numbers. */
import { doubtIn } from '../../widgets/assembly/backwards/doubt.ts';
import { ofExample, ofNumbers } from '../../widgets/assembly/backwards/question.ts';
import type { Asked } from '../../widgets/assembly/backwards/reach.ts';
import { waysTo } from '../../widgets/assembly/backwards/solve.ts';
import {
  gather,
  type Input,
  type NumberSet,
  type Numbers,
  readField,
  type Value,
} from '../../widgets/assembly/numbers.ts';
import type { Step } from '../../widgets/assembly/steps.ts';
import type { SymbolName } from '../../widgets/engine/index.ts';
import { designSheet } from '../../widgets/figures/design-sheet/design-sheet.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { section } from '../../widgets/figures/section/section.ts';
import type { Spread } from '../../widgets/input/spread.ts';
import { startOf } from '../support/figure-numbers.ts';

const INPUTS: readonly Input[] = [
  { kind: 'thread', name: 'A', label: 'thread A', start: 'M10x1.5 ± 1 µm' },
  { kind: 'thread', name: 'C', label: 'thread C', start: '3/8-16 UNC ± 1 µm' },
  { kind: 'quantity', name: 'n', label: 'turns', start: '1 ± 0.01', min: -4, max: 4 },
];
const step = (relation: string, output: SymbolName, as: string = output, bind: Step['bind'] = {}): Step => ({
  relation,
  output,
  bind,
  as: as as SymbolName,
  digits: 4,
});
const STEPS: readonly Step[] = [
  step('lead', 'L', 'L_A', { P: 'P_A', N: 'N_A' }),
  step('lead', 'L', 'L_C', { P: 'P_C', N: 'N_C' }),
  step('turned-motion', 'z_t'),
  step('net-lead', 'Delta'),
  step('net-motion', 'z_c'),
];

const set: NumberSet = { id: 'timed', inputs: INPUTS };
const values = new Map<string, Value>();
const spreads = new Map<string, Spread>();
for (const input of INPUTS) {
  const held = readField(input, input.start, 'metric');
  if (!held.ok) throw new Error(held.code);
  values.set(input.name, held.value.value);
  if (held.value.spread) spreads.set(input.name, held.value.spread);
}
const asked = (index: number): Asked => ({ set, numbers: gather(set, values), steps: STEPS, index });

/** Every number that can give way to another net motion. */
export const solve = (i: number) => waysTo(ofExample(asked(4)), 0.2 + i / 100);
/** The ± of every result. */
export const batch = () => STEPS.map((_, index) => doubtIn(ofExample(asked(index)), (name) => spreads.get(name)));

const amountsAt = (numbers: Numbers, figure: Figure = designSheet): ReadonlyMap<string, number> => {
  const at = figure.at(numbers, 'metric');
  return new Map(at.ok ? at.value.amounts().map(({ key, value }) => [key, value]) : []);
};
const sheet = startOf('design-sheet');
const doubted = sheet.inputs.filter(({ name }) => ['A', 'C', 'l_A', 'F_lo', 'mu'].includes(name));
const sheetSpread = (name: string): Spread | undefined =>
  doubted.some((input) => input.name === name) ? { half: 1e-3 } : undefined;

const drawn = startOf('section');
const own = [...section.threads, ...section.quantities, ...section.choices] as readonly string[];
const moving = drawn.inputs.filter(({ name }) => own.includes(name) && !section.idle(drawn.numbers).includes(name));
/** Every number of the first figure of the pair that can give way to another motion, each place worked once, as a page does. */
export const solveFigure = (i: number) => {
  const known = new Map<string, number | undefined>();
  const at = (numbers: Numbers) => {
    const place = JSON.stringify([numbers.values, numbers.threads, numbers.choices]);
    if (!known.has(place)) known.set(place, amountsAt(numbers, section).get('carried'));
    return known.get(place);
  };
  return waysTo(ofNumbers(drawn.numbers, moving, 'carried', at), 0.1 + i / 100);
};

/** The ± of every number of the sheet, of five inputs: worked once at each place, as a page does. */
export const overSheet = () => {
  const known = new Map<string, ReadonlyMap<string, number>>();
  const at = (numbers: Numbers, key: string) => {
    const place = JSON.stringify([numbers.values, numbers.threads]);
    const found = known.get(place) ?? amountsAt(numbers);
    known.set(place, found);
    return found.get(key);
  };
  return [...amountsAt(sheet.numbers).keys()].map((key) =>
    doubtIn(
      ofNumbers(sheet.numbers, doubted, key, (numbers) => at(numbers, key)),
      sheetSpread,
    ),
  );
};
