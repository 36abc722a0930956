/** A typed answer: its unit, its slip, and what can’t be read. */

import { describe, expect, it } from 'vitest';
import { relationNamed } from '../../widgets/engine/index.ts';
import { inCounts } from '../../widgets/exercises/as-counted.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import { itemAt } from '../../widgets/exercises/exercise.ts';
import { acceptedInterval, within } from '../../widgets/exercises/interval.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { LETTERS } from '../../widgets/exercises/offered.ts';
import { fnv1a64 } from '../../widgets/exercises/seed.ts';
import { evaluateSlip } from '../../widgets/exercises/slip-formula.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { EXERCISES, exerciseFrom, mistakesOf, PAIR, SMALL } from '../support/bank.ts';
import { valueIn } from '../support/results.ts';

const pair = SMALL.chapters[0]?.exercises[0];
if (!pair) throw new Error('no exercise');
// M10×1.5 with 3/8-16, one turn: 87.5 µm.
const item = valueIn(itemAt(pair, [1, 1, 1]));

describe('judge(87.5 µm, …)', () => {
  for (const [text, kind, says] of [
    ['87.5 um', 'right', /^Right: 87\.5 µm\. Accepted: 86\.62 to 88\.38 µm\.$/],
    ['87,5 µm', 'right', /Right/],
    ['87.5', 'right', /Right/],
    ['0.0875 mm', 'right', /Right/],
    ['3.44 thou', 'right', /Right/],
    ['34.4 tenths', 'right', /Right/],
    ['3,44 thou', 'right', /Right/],
    ['86.62', 'right', /Right/],
    ['88.38', 'right', /Right/],
    ['86.61', 'wrong', /near: a little too small/],
    ['88.39', 'wrong', /near: a little too large/],
    ['-87.5', 'other way', /the other way/],
    ['−87,5 µm', 'other way', /the other way/],
    ['3.0875 mm', 'slip', /You added the leads/],
    ['1.5875 mm', 'slip', /One pitch only/],
    ['1.59 mm', 'slip', /One pitch only/],
    ['-1.59 mm', 'slip', /One pitch only/],
    ['34.4 thou', 'slip', /ten times too much: a decimal point/],
    ['3.44 tenths', 'slip', /a tenth of it: a decimal point/],
    ['2222.5', 'slip', /25\.4 times too much/],
    ['3.445', 'slip', /25\.4 times too little/],
    ['87.5 mm', 'slip', /thousand times too much/],
    ['0.0875', 'slip', /thousandth of it/],
    ['0', 'wrong', /not zero/],
    ['500', 'wrong', /too large/],
    ['2', 'wrong', /too small\. What did you find for the net lead/],
    ['175', 'wrong', /Did you double or halve something/],
    ['525', 'wrong', /Did you take turns for flats/],
    ['1.5', 'wrong', /too small/],
    ['-2', 'wrong', /too small an amount, and the other way/],
    ['', 'unread', /^Nothing was typed/],
    ['   ', 'unread', /^Nothing was typed/],
    ['1e999', 'unread', /too large a number/],
    ['1e300', 'wrong', /too large/],
    ['NaN', 'unread', /not a number/],
    ['Infinity', 'unread', /not a number/],
    ['87.5 N', 'unread', /in N; this takes mm, µm, in, thou, tenths/],
    ['87.5°', 'unread', /in °; this takes/],
    ['87.5 parsec', 'unread', /not one used here/],
    ['<b>87.5</b>', 'unread', /not a number/],
    ['9'.repeat(5000), 'unread', /5000 characters/],
  ] as const)
    it(`${text.slice(0, 20)} is ${kind}`, () => {
      const verdict = judge(item, text);
      expect(verdict.says.replace(/\u00a0/g, ' ')).toMatch(says);
      expect(verdict.kind).toBe(kind);
      if (['slip', 'wrong', 'other way'].includes(kind))
        expect(verdict.says, 'does not give the answer away').not.toMatch(/87\.5\D*µm/);
    });
});

describe('flats and turns as units of an answer', () => {
  const flats = EXERCISES.find((e) => e.id === 'flats-wanted');
  if (!flats) throw new Error('no exercise');
  // M6×1 with 3/8-16 has 587.5 µm a turn; 50 µm take 0.5106 flats, 0.0851 turns.
  const asked = valueIn(itemAt(flats, [0, 1, 0]));
  for (const [text, kind] of [
    ['0.511 flats', 'right'],
    ['0.511', 'right'],
    ['0,511 flat', 'right'],
    ['0.0851 turns', 'right'],
    ['0.511 turns', 'wrong'],
    ['0.511 mm', 'unread'],
  ] as const)
    it(`${text} is ${kind}`, () => expect(judge(asked, text).kind).toBe(kind));

  // A pair of 87.5 µm a turn with a hexagon.
  for (const [text, unit, of, read] of [
    ['1 flat', 'µm', 'z_c', '0.0145833'],
    ['-0.5 turns', 'µm', 'z_c', '-0.04375'],
    ['2.57 flats', 'turns', 'n_j', '0.428333'],
    ['0.43 turns', 'turns', 'n_j', '0.43 turns'],
    ['1.5 turns', '1', 'm', '9'],
    // An angle is a part of a turn: 90° is a quarter, three of twelve half-flats are a quarter too.
    ['90°', 'turns', 'n_j', '0.25'],
    ['-90 degrees', 'turns', 'n', '-0.25'],
    ['90º', 'turns', 'n', '0.25'],
    ['120°', '1', 'm', '2'],
    ['720°', 'µm', 'z_c', '0.175'],
    ['1/4 turn', '°', 'theta', '90'],
    ['1/4 turn', 'turns', 'n', '1/4 turn'],
    ['1 flat', 'N', 'F_s', '1 flat'],
  ] as const)
    it(`a prediction of ${text}, asked in ${unit}, is ${read}`, () => {
      const counted = inCounts(text, { unit, of, steps: 6, motion: 0.0875 });
      if (/[a-z]/.test(read)) expect(counted).toBe(read);
      else {
        expect(Number.parseFloat(counted)).toBeCloseTo(Number(read), 6);
        expect(counted.endsWith(' mm')).toBe(unit === 'µm');
      }
    });
});

describe('a wrong answer far from every slip', () => {
  it('is met by one question that leads on, in every exercise and at every size', () => {
    for (const exercise of EXERCISES) {
      const drawn = drawItem(exercise, ['far', exercise.id]);
      const { offered, amount, accepted, slips } = drawn;
      if (offered) {
        const wrong = [...LETTERS.slice(0, offered.options.length)];
        const tries = offered.right.length > 1 ? [wrong.toReversed().join(''), wrong.join('')] : wrong;
        for (const text of tries.filter((one) => one !== offered.right))
          expect(
            judge(drawn, text)
              .says.replace(/^Not yet\.?/, '')
              .trim(),
            `${exercise.id} ${text}`,
          ).not.toBe('');
        continue;
      }
      for (const factor of [0.003, 0.07, 0.37, 0.62, 0.91, 1.06, 1.43, 2.8, 7.3, 41, 5e4, -0.21, -1.7, -33]) {
        const made = factor * amount;
        const near = (x: number) => within(Math.abs(made), acceptedInterval(Math.abs(x), exercise.digits));
        if (within(made, accepted) || near(amount) || slips.some((s) => near(s.amount))) continue;
        const { kind, says } = judge(drawn, made.toPrecision(7));
        expect(kind, exercise.id).toBe('wrong');
        expect(says, `${exercise.id} ${factor}`).toMatch(/\?|Check that first\./);
      }
      // The hint and the worked steps wait behind it.
      expect(drawn.hint, exercise.id).not.toBe('');
      expect(drawn.outcomes.length, exercise.id).toBeGreaterThan(0);
    }
  });
});

describe('a wrong answer that is off by π', () => {
  it('is asked about π only where a formula of the exercise has π in it', () => {
    let asked = 0;
    for (const exercise of EXERCISES) {
      const drawn = drawItem(exercise, ['pi', exercise.id]);
      if (drawn.offered) continue;
      const hasPi = exercise.steps.some(({ relation }) =>
        /\bpi\b/.test(Object.values(relationNamed(relation)?.gives ?? {}).join(' ')),
      );
      for (const factor of [Math.PI, 1 / Math.PI]) {
        const { says } = judge(drawn, (factor * drawn.amount).toPrecision(5));
        if (says.includes('π')) asked++;
        if (!hasPi) expect(says, exercise.id).not.toMatch(/leave out π|radians/);
      }
    }
    expect(asked).toBeGreaterThan(0);
  });
});

describe('a slip by ten or a thousand', () => {
  const asked = (unit: string) => {
    const exercise = exerciseFrom('exercise tried: Tried', PAIR.replace('in µm', `in ${unit}`));
    const { slips, amount } = valueIn(itemAt(exercise, [1, 1, 1]));
    const says = (factor: number) => slips.find((s) => Math.abs(s.amount / amount / factor - 1) < 1e-9)?.says ?? '';
    return [10, 0.1, 1000, 1e-3].map(says);
  };
  const INCH = /thou|tenths|\binch/;
  for (const unit of ['µm', 'mm'])
    it(`asked in ${unit} speaks of the point and the prefix, not of an inch and its parts`, () => {
      const [more, less, thousand, thousandth] = asked(unit);
      for (const says of [more, less]) expect(says).toMatch(/decimal point/);
      for (const says of [thousand, thousandth]) expect(says).toMatch(/prefix/);
      // “A thousand times” and “a tenth of it” are the factors themselves.
      for (const says of [more, less, thousand, thousandth]) expect(says?.replace(/^[^:]*:/, '')).not.toMatch(INCH);
    });
  for (const unit of ['thou', 'tenths'])
    it(`asked in ${unit} speaks of thou and tenths, and of no prefix, which they have not`, () => {
      const [more, less, thousand, thousandth] = asked(unit);
      for (const says of [more, less]) expect(says).toMatch(/: .*thou.*tenths/);
      for (const says of [thousand, thousandth]) expect(says).toMatch(/: .*inch/);
      for (const says of [more, less, thousand, thousandth]) expect(says).not.toMatch(/prefix/);
    });
});

describe('acceptedInterval', () => {
  // Worked by hand from the rule: max(1 %, half a unit of the last digit), edges out to one digit more.
  const cases = [
    { amount: 87.5, digits: 3, low: 86.62, high: 88.38 },
    { amount: 87.5, digits: 2, low: 86.6, high: 88.4 },
    { amount: -87.5, digits: 3, low: -88.38, high: -86.62 },
    { amount: 1.04, digits: 2, low: 0.99, high: 1.09 },
    { amount: 1000, digits: 3, low: 990, high: 1010 },
    { amount: 0.05, digits: 2, low: 0.0495, high: 0.0505 },
  ];
  for (const { amount, digits, low, high } of cases)
    it(`of ${amount} to ${digits} digits is ${low} to ${high}`, () => {
      const interval = acceptedInterval(amount, digits);
      expect(interval.low).toBeCloseTo(low, 9);
      expect(interval.high).toBeCloseTo(high, 9);
      expect(within(low, interval) && within(high, interval)).toBe(true);
    });
});

it('fnv1a64 gives the published values', () => {
  // Landon Curt Noll's test vectors of FNV-1a, 64 bits (from memory).
  expect(fnv1a64('').toString(16)).toBe('cbf29ce484222325');
  expect(fnv1a64('a').toString(16)).toBe('af63dc4c8601ec8c');
  expect(fnv1a64('foobar').toString(16)).toBe('85944171f73967e8');
});

describe('a slip’s formula', () => {
  for (const [formula, value] of [
    ['1 + 2*3', 7],
    ['-(1 + 2)*3', -9],
    ['2^3^0 - 1', 1],
    ['-2^2', -4],
    ['8/4/2', 1],
    ['10 - 4 - 3', 3],
    ['round(1.5875, 2)', 1.59],
    ['round(1.5875, 1)', 1.6],
    ['sqrt(9) + abs(-1)', 4],
    ['x*pi/x - pi', 0],
    ['tan(atan(0.5))', 0.5],
    ['1.5e-3*2', 0.003],
  ] as const)
    it(`${formula} is ${value}`, () => expect(valueIn(evaluateSlip(formula, { x: 2 }))).toBeCloseTo(value, 12));
  for (const [formula, says] of [
    ['', 'breaks off'],
    ['1 +', 'breaks off'],
    ['(1 + 2', 'never closed'],
    ['1 2', 'can’t be read from “2” on'],
    ['y + 1', '“y” is not a number of this exercise'],
    ['constructor', 'is not a number of this exercise'],
    ['1/0', 'no value'],
    ['sqrt(0 - 1)', 'no value'],
    ['1 ; 2', 'can’t be read from “;” on'],
  ] as const)
    it(`“${formula}” is refused`, () => {
      const read = evaluateSlip(formula, {});
      expect(read.ok ? '' : reasonOf(read)).toContain(says);
    });
});

describe('an exercise block', () => {
  it('that is sound has no mistake', () => expect(mistakesOf(PAIR)).toEqual([]));
  it('with a slip just outside the interval that rounds into it is refused', () => {
    const slip = (times: number) =>
      mistakesOf(PAIR.replace('3 digits', '2 digits').replace('(L_C + L_A)*n', `answer*${times}`)).join();
    expect(slip(1.011)).toContain('so nobody can tell it from');
    expect(slip(1.2)).toBe('');
  });
  for (const [what, from, to, says] of [
    ['a step with an expected value', 'net-lead #', 'net-lead = 87.5 µm #', '6: “= 87.5 µm” is too much'],
    ['an unknown unit', 'in µm,', 'in cubits,', '8: “answer in cubits, 3 digits” can’t be read'],
    [
      'a unit of another kind',
      'in µm,',
      'in N,',
      '7: The last step gives motion of the carried part, which is not asked in N',
    ],
    ['one digit', '3 digits', '1 digits', 'with 2 to 6 digits'],
    ['no hint', 'hint Subtract {A} from {C}.', '', 'needs a question'],
    ['no slip', /slip .*\n/g, '', 'needs a question'],
    ['a slip without words', ' # You added the leads.', '', '9: A slip says what went wrong'],
    ['a slip that is right', '(L_C + L_A)*n', '(L_C - L_A)*n', 'gives the right answer, so nobody can tell it from'],
    ['two slips that are one', '(L_C + L_A)*n', 'L_C*n', 'always gives what the slip'],
    ['a slip of an unknown name', '(L_C + L_A)*n', 'L_B*n', 'has no value in any item'],
    ['a slip of an unknown relation', 'net-motion(Delta', 'no-such(Delta', '“no-such” is not a relation'],
    ['a place without a pool', 'by {n}', 'by {m}', '“{m}” in the exercise “tried” has no pool'],
    ['a pool that is not told', 'by {n}', 'on', 'does not tell n'],
    ['an option that can’t be read', 'M12x1.75', 'M12x', '2: thread A: Read “M12x'],
    ['an option twice', 'M12x1.75', 'M10x1.5', '2: The pool of thread A holds an option twice'],
    ['a pool twice', 'thread C', 'thread A', '3: “A” has a pool already'],
    ['an option out of bounds', '2 turns', '9999 turns', '4: n: '],
    ['too few items', /one of (M8|5|1).*/g, '$1', ''],
    ['an answer of nought', /thread C = .*/, 'thread C = M10x1.5', ''],
  ] as const)
    it(`with ${what} is refused with a sentence`, () => {
      const body = PAIR.replace(from, to);
      expect(body).not.toBe(PAIR);
      const mistakes = mistakesOf(body).join('\n');
      expect(mistakes).not.toBe('');
      expect(mistakes).toContain(says);
    });
});
