/** The design sheet against the engine, question by question, and its checks in both outcomes. */
import { describe, expect, it } from 'vitest';
import { designSheet } from '../../widgets/design-sheet/design-sheet.ts';
import { workSheet } from '../../widgets/design-sheet/work.ts';
import { readThread } from '../../widgets/engine/index.ts';
import type { Numbers } from '../../widgets/shared/numbers.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const thread = (text: string) => valueIn(readThread(text));
const foot = (
  change: Partial<{ values: Numbers['values']; choices: Numbers['choices']; A: string; C: string }> = {},
): Numbers => ({
  threads: { A: thread(change.A ?? 'M10x1.5-6H/6g'), C: thread(change.C ?? '3/8-16 UNC-2B/2A') },
  values: {
    k_d: 50,
    S_w: 0.3,
    s_w: 0.015,
    X_A: 10,
    X_C: 10,
    t_l: 0.8,
    theta_h: Math.PI / 120,
    eps_A: 0.001,
    eps_C: 0.001,
    a_A: 0.001,
    a_C: 0.001,
    W_c: 20,
    F_lo: 0,
    F_hi: 30,
    F_0: 20,
    k_s: 1,
    F_g: 5,
    mu: 0.15,
    r_h: 12,
    kappa: 50000,
    R: 3.175,
    l: 40,
    Delta_T: 2,
    ...change.values,
  },
  choices: {
    arrangement: 'in line',
    divider: 'hexagon',
    spring: 'base and carried',
    action: 'pulls',
    attitude: 'upright',
    seat: 'hardened ball steel',
    path: 'steel',
    ...change.choices,
  },
  texts: { parts: 'stud: 2 × 1,20; ball: 0.35; guide post' },
});
const sheetOf = (numbers: Numbers) => valueIn(workSheet(numbers));
const failed = (numbers: Numbers) =>
  sheetOf(numbers)
    .checks.filter((c) => !c.passed)
    .map((c) => c.says('metric'));

describe('the sheet of the Foot', () => {
  it('says what the chapters say of it', () => {
    const rows = new Map(
      designSheet
        .table(foot(), 'metric')
        .rows.map(([, name = '', value = '']) => [name, value.replace(/\u00a0/g, ' ')]),
    );
    expect(rows.get('per turn, clockwise')).toBe('87.50 µm');
    expect(rows.get('per flat (6 a turn)')).toBe('14.58 µm');
    expect(rows.get('turns available')).toBe('6.30 turns');
    // 10 mm of 3/8-16: 10/1.5875 turns of 87.5 µm.
    expect(rows.get('stroke')).toBe('551.2 µm');
    // Play from published limits (from memory), chapter 6: 37.5 to 365.8 µm for both threads, 4.18 turns.
    expect(rows.get('lost on reversal without preload, at most')).toBe('4.18 turns, 25.1 flats');
    // ±0.1 % independent on the Foot: 2.5 % root sum square, 3.53 % worst, of 300 µm.
    expect(rows.get('lead error over the stroke, root sum square')).toBe('7.49 µm');
    expect(rows.get('lead error over the stroke, worst case')).toBe('10.6 µm');
    // 40 mm of steel, 11.5e-6 per kelvin, 2 K.
    expect(rows.get('grows with that warmth')).toBe('0.9200 µm');
    expect(failed(foot())).toEqual([]);
  });

  it('keeps what grows with travel apart, and leaves play out where the threads are seated', () => {
    const { budget } = sheetOf(foot());
    expect(budget.seated).toBe(true);
    expect(budget.fixed.map((t) => t.name)).not.toContain('play, on reversal');
    expect(budget.growing.every((t) => t.name.startsWith('lead error'))).toBe(true);
    const twice = sheetOf(foot({ values: { S_w: 0.5 } })).budget;
    expect((twice.growing[0]?.size ?? 0) / (budget.growing[0]?.size ?? 1)).toBeCloseTo(5 / 3, 9);
    expect(twice.fixed).toEqual(budget.fixed);
  });

  it('counts play where nothing holds the threads to one flank', () => {
    const loose = foot({ values: { W_c: 0, F_lo: -10 }, choices: { spring: 'no parts' } });
    const { budget } = sheetOf(loose);
    expect(budget.seated).toBe(false);
    expect(budget.fixed[0]?.name).toBe('play, on reversal');
    expect(budget.fixed[0]?.size).toBeCloseTo(0.3658, 4);
  });
});

describe('each check fails on the design that deserves it', () => {
  const CASES: [name: string, numbers: Numbers, says: RegExp][] = [
    ['a step too coarse', foot({ values: { s_w: 0.01 } }), /One flat moves 14\.58 µm; 10\.00 µm or less was wanted/],
    ['a stroke too long', foot({ values: { S_w: 2 } }), /stroke of 551\.2 µm; 2\.000 mm was wanted/],
    ['a thread that lets go', foot({ values: { F_lo: -500 } }), /^Thread A lets go/],
    [
      'a wall too thin',
      foot({ A: 'M12x1.5', C: 'M8x1.25', choices: { arrangement: 'nested' }, values: { t_l: 1 } }),
      /wall of the sleeve is 0\.79\d* mm/,
    ],
    [
      'a sleeve that can’t be',
      foot({ A: 'M12x1.75', C: 'M10x1.5', choices: { arrangement: 'nested' } }),
      /does not go inside|wall/,
    ],
    ['a motion that stalls', foot({ values: { a_A: 0.01, a_C: 0.01 } }), /stalls or runs back/],
    ['a seat that dents', foot({ choices: { seat: 'aluminium 6061-T6' } }), /begins to dent/],
    ['a load that turns it', foot({ C: '3/8-16 UNC LH', values: { mu: 0 } }), /turns the part by itself/],
  ];
  it.each(CASES)('%s', (_name, numbers, says) => {
    expect(
      failed(numbers)
        .join('\n')
        .replace(/\u00a0/g, ' '),
    ).toMatch(says);
  });

  it('refuses equal leads in words, and draws no sheet', () => {
    expect(reasonIn(workSheet(foot({ C: 'M8x1.5' })))).toContain('two leads are equal');
    expect(designSheet.draw(foot({ C: 'M8x1.5' }), 'metric').ok).toBe(false);
  });
});
