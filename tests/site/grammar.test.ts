/** The lines an author writes inside a block. */
import { describe, expect, it } from 'vitest';
import { isStepLine, readCall, readInputLine, readStepLine, splitComment } from '../../widgets/site/grammar.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('splitComment', () => {
  const cases: readonly (readonly [string, string, string | undefined])[] = [
    ['n = 1 # turns', 'n = 1', 'turns'],
    ['n = 1', 'n = 1', undefined],
    ['thread C = #10-32', 'thread C = #10-32', undefined],
    ['thread C = #10-32 # a number size', 'thread C = #10-32', 'a number size'],
    ['# only a reason', '', 'only a reason'],
    ['  n = 1   #   spaced   ', 'n = 1', 'spaced'],
    ['lead = 1 mm # first # second', 'lead = 1 mm', 'first # second'],
  ];
  for (const [line, body, comment] of cases)
    it(`cuts “${line}” into “${body}” and ${comment === undefined ? 'nothing' : `“${comment}”`}`, () => {
      expect(splitComment(line)).toEqual({ body, comment });
    });
});

describe('isStepLine', () => {
  it('tells steps from numbers', () => {
    for (const line of [
      'net-lead = 1 mm',
      'lead = 1 mm',
      'gain(L = L_A) -> G_A = 17',
      'no-such = 3',
      'stroke -> S = 1 mm',
    ])
      expect(isStepLine(line), line).toBe(true);
    for (const line of ['n = 1', 'thread A = M10x1.5', 'arrangement = in line', 'L_C = 2 mm', 'k = 50 from 2 to 360'])
      expect(isStepLine(line), line).toBe(false);
  });
});

describe('readInputLine', () => {
  it('reads a thread, named or not, and labels it by its place', () => {
    expect(valueIn(readInputLine('thread A = M10x1.5'))).toEqual({
      kind: 'thread',
      name: 'A',
      label: 'thread A, base to turned part',
      start: 'M10x1.5',
    });
    expect(valueIn(readInputLine('thread = #10-32 LH # yours'))).toEqual({
      kind: 'thread',
      name: 'thread',
      label: 'yours',
      start: '#10-32 LH',
    });
  });
  it('reads a quantity with the glossary’s bounds, in base units', () => {
    expect(valueIn(readInputLine('n = 1'))).toMatchObject({
      kind: 'quantity',
      name: 'n',
      start: '1',
      min: -600,
      max: 600,
    });
  });
  it('reads narrower bounds in the units they are typed in', () => {
    const input = valueIn(readInputLine('theta = 30° from -90° to 0.5 turn'.replace('0.5 turn', '180°')));
    expect(input).toMatchObject({ name: 'theta', start: '30°' });
    if (input.kind !== 'quantity') throw new Error('no quantity');
    expect(input.min).toBeCloseTo(-Math.PI / 2, 12);
    expect(input.max).toBeCloseTo(Math.PI, 12);
  });
  it('takes a bare motion as µm and a bare size as mm', () => {
    expect(valueIn(readInputLine('w = 100 from 0 to 500'))).toMatchObject({ max: 0.5 });
    expect(valueIn(readInputLine('X_A = 10 from 0 to 0.5 in'))).toMatchObject({ max: 12.7 });
  });
  it('reads a choice and refuses an option that is none', () => {
    expect(valueIn(readInputLine('arrangement = one spindle, two nuts'))).toMatchObject({ kind: 'choice' });
    expect(reasonIn(readInputLine('arrangement = sideways'))).toMatch(
      /is not an option of arrangement; it is one of: in line/,
    );
  });
  const refused: readonly (readonly [string, RegExp])[] = [
    ['thread A = banana', /which is not a thread designation/],
    ['quux = 3', /“quux” is not a symbol of the engine’s glossary/],
    ['n = lots', /which is not a number/],
    ['n = 1 A', /as a unit, which is not one used here/],
    ['n = 1 kg', /in kg; this takes turns/],
    ['n = 1 mm', /in mm; this takes turns/],
    ['n = 5 from -4 to 4', /starts at 5, outside its own bounds/],
    ['n = 1 from -4 to 1e9', /give a value from −600 turns to 600 turns/],
    ['k = 2.5', /only whole numbers/],
    ['h = 0', /1 for a right-hand thread/],
    ['just words', /not a number \(name = value\) and not a step/],
    ['', /not a number/],
  ];
  for (const [line, words] of refused)
    it(`refuses “${line}” with a reason`, () => {
      expect(reasonIn(readInputLine(line))).toMatch(words);
    });
});

describe('readStepLine', () => {
  it('reads relation, bindings, name, expected value, digits and reason', () => {
    expect(valueIn(readStepLine('gain(L = L_A, Delta = 0.5 mm) -> G_A = 17.14 # The price.'))).toEqual({
      step: {
        relation: 'gain',
        output: 'G',
        bind: { L: 'L_A', Delta: 0.5 },
        as: 'G_A',
        digits: 4,
        why: 'The price.',
      },
      expected: { value: 17.14, unit: '1', digits: 4, half: 0.005 },
      text: '17.14',
    });
  });
  it('tells a reason, true of any numbers, from a remark on those of the chapter', () => {
    for (const [end, why, remark] of [
      [' # The price.', 'The price.', undefined],
      [' #! Too dear.', undefined, 'Too dear.'],
      [' # The price. #! Too dear, {{! 1 mm }}.', 'The price.', 'Too dear, {{! 1 mm }}.'],
    ] as const) {
      const { step } = valueIn(readStepLine(`net-lead = 87.50 µm${end}`));
      expect([step.why, step.remark], end).toEqual([why, remark]);
    }
  });
  it('counts a trailing nought as a digit and half a unit of the last as allowed', () => {
    const { step, expected } = valueIn(readStepLine('net-lead = 87.50 µm'));
    expect(step.digits).toBe(4);
    expect(expected.half).toBeCloseTo(0.005e-3, 15);
  });
  it('takes a bare binding as the name itself', () => {
    expect(valueIn(readStepLine('per-step(k = 6, Delta) = 1 µm')).step.bind).toEqual({ k: 6 });
  });
  const refused: readonly (readonly [string, RegExp])[] = [
    ['no-such = 1', /“no-such” is not a relation of the engine; npm run ask lists them/],
    ['net-lead', /does not say what you expect/],
    ['net-lead = about 87', /which is not a number/],
    ['net-lead = 87 N', /in N; this takes mm/],
    ['per-step(banana = 6) = 1 µm', /per-step does not take “banana”; it takes Delta, k/],
    ['per-step(k = six) = 1 µm', /per-step, k: Read “six”/],
    ['net-lead -> banana = 1 µm', /“banana” is not a symbol/],
    ['net-lead -> n = 1', /net-lead gives net lead, .*; it can’t be kept as n, turns/],
  ];
  for (const [line, words] of refused)
    it(`refuses “${line}” with a reason`, () => {
      expect(reasonIn(readStepLine(line))).toMatch(words);
    });
});

describe('readCall', () => {
  it('leaves what stands after the call', () => {
    expect(valueIn(readCall('net-lead(h_A = -1) and more')).rest).toBe('and more');
  });
});
