/** The figures of preload and lock against the engine: what is drawn, said and listed is what it gives. */
import { describe, expect, it } from 'vitest';
import { type Numbers, readInput, writeQuantity } from '../../widgets/assembly/numbers.ts';
import {
  fitRetention,
  leastPreload,
  lockError,
  type PreloadCase,
  preloadVerdict,
  springAt,
  threadForces,
} from '../../widgets/engine/index.ts';
import { forceChainFigure } from '../../widgets/figures/force-chain/force-chain.ts';
import { evenly, roundTicks } from '../../widgets/figures/kit/ticks.ts';
import { lockErrorFigure } from '../../widgets/figures/lock-error/lock-error.ts';
import { springDays } from '../../widgets/figures/spring-days/spring-days.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT = { A: 'M10x1.5', C: '3/8-16 UNC' };
const VALUES = {
  F_0: 30,
  k_s: 2,
  W_c: 8,
  W_t: 0.6,
  F_lo: -20,
  F_hi: 40,
  Q_s: 10,
  mu_g: 0.2,
  M_L: 0,
  r_k: 12,
  F_g: 5,
  n_w: 6,
  n: 0,
};
const chain = (choices: Numbers['choices'] = {}, values: Numbers['values'] = {}): Numbers =>
  numbersOf(
    FOOT,
    { ...VALUES, ...values },
    { spring: 'base and carried', action: 'pulls', attitude: 'upright', ...choices },
  );
const drawn = (numbers: Numbers, view: 'metric' | 'inch' = 'metric') =>
  picture(valueIn(still(forceChainFigure).draw(numbers, view)));
const plainly = (text: string): string => text.replace(/\u00a0/g, ' ');

/** The case of these numbers, put together here by hand. */
const CASE: PreloadCase = {
  h_A: 1,
  L_A: 1.5,
  h_C: 1,
  L_C: 1.5875,
  springs: [{ lower: 'base', upper: 'carried', kind: 'pull', force: 30, rate: 2 }],
  weightTurned: 0.6,
  weightCarried: 8,
  attitude: 1,
  load: { least: -22, most: 42 },
  from: 0,
  to: 6,
  margin: 5,
};

describe('force-chain', () => {
  it('seats both threads by a spring between base and carried part', () => {
    const v = valueIn(preloadVerdict(CASE));
    expect([v.A.kind, v.C.kind]).toEqual(['seated', 'seated']);
    const document = drawn(chain());
    expect(textOf(document, '[data-verdict="C"]')).toBe(
      '✓ Thread C: the pressed flank of the carried part touches over the whole stroke, with 16.0 N or more.',
    );
    expect(textOf(document, '[data-verdict="A"]')).toContain(
      '✓ Thread A: the pressed flank of the turned part touches',
    );
    const least = valueIn(leastPreload(CASE));
    expect(least.force).toBe(19);
    expect(textOf(document, '.chain-notes')).toContain(
      'both threads need 19.0 N from it, set by thread C at 0 turns under −22.0 N; 30.0 N is enough.',
    );
  });

  it('says at which place and load each thread lets go where the spring joins base and turned part', () => {
    const document = drawn(chain({ spring: 'base and turned' }));
    expect(textOf(document, '[data-verdict="C"]')).toBe(
      '✕ Thread C: the flanks open at 0 turns, the carried part at 0 µm, under −8.00 N.',
    );
    // 8.6 + 30 − 3n = 22 gives n = 5.533.
    expect(textOf(document, '[data-verdict="A"]')).toBe(
      '✕ Thread A: the flanks open at 5.53 turns, the carried part at +484 µm, under −22.0 N.',
    );
    expect(textOf(document, '.chain-notes')).toContain('This spring, however strong, does nothing for thread C');
    expect(plainly(still(forceChainFigure).caption(chain({ spring: 'base and turned' }), 'metric'))).toContain(
      'its ends come nearer by 9.00 mm over the stroke, so its force goes from 30.0 N to 12.0 N.',
    );
  });

  it('seats upright by weight alone, not on its side and on the pulled flanks upside down', () => {
    const none = { spring: 'no parts' } as const;
    const idle = { F_lo: 0, F_hi: 0, Q_s: 0 };
    const mark = (attitude: string, values = idle) =>
      textOf(drawn(chain({ ...none, attitude }, values)), '[data-verdict="C"]');
    expect(mark('upright')).toContain('✓ Thread C: the pressed flank of the carried part touches');
    expect(mark('on its side')).toContain('✕ Thread C: the flanks open at 0 turns');
    expect(mark('upside down')).toContain('✓ Thread C: the pulled flank of the carried part touches');
    expect(mark('upright', { ...idle, F_lo: -10 })).toContain('✕ Thread C: the flanks open');
    expect(plainly(still(forceChainFigure).caption(chain(none, idle), 'metric'))).toContain(
      'No spring: only weight and load act',
    );
  });

  it('says that a preload below the least lets the flank go, and how much it needs', () => {
    const document = drawn(chain({}, { F_0: 10 }));
    expect(textOf(document, '[data-verdict="C"]')).toContain('✕ Thread C: the flanks open at 0 turns');
    expect(textOf(document, '.chain-notes')).toContain('need 19.0 N from it');
    expect(textOf(document, '.chain-notes')).toContain('10.0 N is below that: more preload.');
    // Enough to hold, not enough for the margin.
    expect(textOf(drawn(chain({}, { F_0: 16 })), '[data-verdict="C"]')).toBe(
      '! Thread C: the pressed flank of the carried part touches over the whole stroke, but only 2.00 N is left of the 5.00 N to keep.',
    );
  });

  it('draws the forces that the engine gives, both threads on one scale', () => {
    const document = drawn(chain({ spring: 'turned and carried' }));
    const given: PreloadCase = {
      ...CASE,
      springs: [{ lower: 'turned', upper: 'carried', kind: 'pull', force: 30, rate: 2 }],
    };
    const nought = pointsOf(attribute(document, '[data-nought="C"]', 'd'))[0]?.[1] ?? 0;
    const ends = (path: string) => {
      const points = pointsOf(attribute(document, path, 'd'));
      return [points[0]?.[1] ?? 0, points.at(-1)?.[1] ?? 0];
    };
    const [c0, c6] = ends('[data-least="C"]');
    const [a0] = ends('[data-most="A"]');
    const scale = (nought - (c0 ?? 0)) / threadForces(given, 0, -22).C;
    expect(scale).toBeGreaterThan(0);
    expect((nought - (c6 ?? 0)) / scale).toBeCloseTo(threadForces(given, 6, -22).C, 0);
    expect((nought - (a0 ?? 0)) / scale).toBeCloseTo(threadForces(given, 0, 42).A, 0);
  });

  it('moves the ends of each spring as their parts move: far on the turned part, hardly on the carried', () => {
    const length = (spring: string, n: number) => {
      const ys = pointsOf(attribute(drawn(chain({ spring }, { n })), '[data-path="coils"]', 'd')).map(([, y]) => y);
      return Math.max(...ys) - Math.min(...ys);
    };
    const change = (spring: string) => length(spring, 6) - length(spring, 0);
    expect(change('base and turned')).toBeLessThan(-20);
    expect(change('turned and carried')).toBeGreaterThan(20);
    expect(Math.abs(change('base and carried'))).toBeLessThan(5);
    // In the proportion of the leads: −1.5, 1.5875 and their difference.
    expect(change('turned and carried') / change('base and turned')).toBeCloseTo(-1.5875 / 1.5, 1);
  });

  it('shows in the lens which flanks touch, and none where the load decides', () => {
    const touch = (numbers: Numbers, thread: string) => attribute(drawn(numbers), `[data-touch="${thread}"]`, 'd');
    const seated = chain();
    const hung = chain({ attitude: 'upside down', spring: 'no parts' }, { F_lo: 0, F_hi: 0, Q_s: 0 });
    expect(touch(seated, 'C')).not.toBe(touch(hung, 'C'));
    // The carried part is the nut of thread C and sits down; the base is the nut of thread A and stands still.
    const slope = (d: string) => {
      const [[, y0] = [0, 0], [, y1] = [0, 0]] = pointsOf(d);
      return Math.sign(y1 - y0);
    };
    expect([slope(touch(seated, 'C')), slope(touch(seated, 'A'))]).toEqual([1, -1]);
    expect([slope(touch(hung, 'C')), slope(touch(hung, 'A'))]).toEqual([-1, 1]);
    expect(touch(chain({ spring: 'base and turned' }), 'C')).toBe('');
  });

  it('lists what the engine gives along the stroke', () => {
    const { rows } = still(forceChainFigure).table(chain(), 'metric');
    expect(rows).toHaveLength(7);
    expect(rows[0]?.map(plainly)).toEqual(['0', '0 µm', '30.0 N', '+16.6 N', '+80.6 N', '+16.0 N', '+80.0 N']);
    const [spring] = CASE.springs;
    if (!spring) throw new Error('no spring');
    expect(springAt(spring, 6, CASE)).toBeCloseTo(31.05, 9);
    expect(plainly(rows[6]?.[2] ?? '')).toBe('31.1 N');
  });

  it('counts what a key rubs like a side load: its torque over its radius', () => {
    const told = (values: object) => JSON.stringify(still(forceChainFigure).table(chain({}, values), 'metric'));
    expect(told({ M_L: 120 })).toBe(told({ Q_s: 20 }));
    expect(told({ M_L: 120 })).not.toBe(told({}));
  });

  it('refuses a least load above the most', () => {
    expect(plainly(reasonIn(still(forceChainFigure).draw(chain({}, { F_lo: 50 }), 'metric')))).toBe(
      'The least load, 50.0 N, is above the most, 40.0 N: give the smaller first, and a pull away from the base with a minus.',
    );
  });

  it('draws a long stroke smaller rather than off the paper', () => {
    const document = drawn(chain({}, { n_w: 600, n: 600, F_0: 1000 }));
    for (const name of ['base', 'turned', 'carried', 'coils'])
      for (const [, y] of pointsOf(attribute(document, `[data-path="${name}"]`, 'd'))) {
        expect(y).toBeGreaterThan(-1);
        expect(y).toBeLessThan(431);
      }
  });
});

describe('spring-days', () => {
  const days = (values: Numbers['values'] = {}, retention = 'stated'): Numbers =>
    numbersOf(
      {},
      { F_0: 30, q_r: 0.06, t_0: 1, t: 24000, F_p: 19, t_r1: 1, F_r1: 29.4, t_r2: 96, F_r2: 26.2, ...values },
      { retention },
    );
  const html = (numbers: Numbers) => picture(valueIn(still(springDays).draw(numbers, 'metric')));

  it('tells whether enough is left at the end of life', () => {
    // 1 − 0.06·log10(24001) = 0.73719
    expect(textOf(html(days()), '.chain-verdict')).toBe(
      '✓ enough: 22.1 N is left after 1000 d, and 19.0 N must be left.',
    );
    expect(textOf(html(days({ F_p: 23 })), '.chain-verdict')).toContain('✕ not enough: 22.1 N is left');
    // 23/30 is fallen to after 10^(7/30/0.06) − 1 hours.
    expect(plainly(still(springDays).caption(days({ F_p: 23 }), 'metric'))).toContain(
      'it has fallen to that after 323 d.',
    );
    expect(html(days({ F_p: 23 })).querySelector('[data-falls]')).not.toBeNull();
  });

  it('draws equal falls in equal steps of tenfold time', () => {
    const { rows } = still(springDays).table(days(), 'metric');
    const left = new Map(rows.map(([t = '', F = '']) => [plainly(t), Number(plainly(F).split(' ')[0])]));
    expect((left.get('10.0 d') ?? 0) - (left.get('100 d') ?? 0)).toBeCloseTo(1.8, 1);
    expect((left.get('100 d') ?? 0) - (left.get('1000 d') ?? 0)).toBeCloseTo(1.8, 1);
  });

  it('fits two readings as the engine does, marks them, and calls what is far beyond them a guess', () => {
    const numbers = days({}, 'fitted to two readings');
    const fit = valueIn(fitRetention({ t: 1, F: 29.4 }, { t: 96, F: 26.2 }, 1));
    const says = plainly(still(springDays).caption(numbers, 'metric'));
    expect(says).toContain(
      `Fitted to two readings: ${fit.F_0.toFixed(1)} N at the start, ${(100 * fit.q_r).toFixed(2)} % of it`,
    );
    expect(says).toContain('beyond ten times the last reading, so it is a guess');
    expect(html(numbers).querySelectorAll('[data-reading]').length).toBe(2);
    expect(html(numbers).querySelector('.guess')).not.toBeNull();
    expect(html(days()).querySelector('.guess')).toBeNull();
  });

  it('refuses a preload below what must be left, and readings that grow', () => {
    expect(plainly(reasonIn(still(springDays).draw(days({ F_0: 12 }), 'metric')))).toBe(
      'The spring starts with 12.0 N, below the 19.0 N that must be left, so the flanks are not seated even when it is new: give a stronger spring.',
    );
    expect(reasonIn(still(springDays).draw(days({ F_r2: 30 }, 'fitted to two readings'), 'metric'))).toContain(
      'a relaxing spring only loses',
    );
  });
});

describe('a time', () => {
  const life = { kind: 'quantity', name: 't', label: 'end of life', start: '1000 d', min: 1, max: 480000 } as const;

  it('is not read without its unit', () => {
    for (const text of ['24', '24,5', '1e3', '1/2'])
      expect(reasonIn(readInput(life, text, 'metric'))).toBe(
        `Read “${text}” without a unit of time, and the law needs one: write “${text} h”, min, s or d.`,
      );
    expect(valueIn(readInput(life, '24 d', 'metric'))).toBe(576);
  });

  it('is written so that it reads back, in days where they are round', () => {
    for (const [hours, text] of [
      [24000, '1000 d'],
      [100, '100 h'],
      [96, '4 d'],
      [1, '1 h'],
      [0.5, '30 min'],
      [1 / 60, '1 min'],
    ] as const) {
      expect(writeQuantity('t', hours, 'metric')).toBe(text);
      if (hours >= 1) expect(valueIn(readInput(life, text, 'metric'))).toBeCloseTo(hours, 9);
    }
  });
});

describe('lock-error', () => {
  const lock = (values: Numbers['values'] = {}, threads = { A: 'M12x1.5', C: 'M8x1.25' }): Numbers =>
    numbersOf(threads, { F: 200, mu: 0.15, g_k: 0.05, r_k: 8, kappa: 5000, k: 6, ...values });
  const html = (numbers: Numbers) => picture(valueIn(still(lockErrorFigure).draw(numbers, 'metric')));

  it('hands the lock what thread C needs: 83.9 N·mm for the Stop raising 200 N, turned anticlockwise', () => {
    expect(textOf(html(lock()), '.lock-view .line')).toBe(
      'torque on the lock: 166 N·mm turning clockwise, 83.9 N·mm turning anticlockwise',
    );
  });

  it('adds gap and wind-up as the engine does and lays them along flats', () => {
    const rho = Math.atan(0.15 / Math.cos(Math.PI / 6));
    const d2 = 8 - (3 * Math.sqrt(3) * 1.25) / 8;
    const lambda = Math.atan(1.25 / (Math.PI * d2));
    const M = (s: number) => 100 * d2 * Math.tan(rho + s * lambda);
    const error = valueIn(
      lockError({
        L_C: 1.25,
        h_C: 1,
        Delta: -0.25,
        clockwise: -M(1),
        anticlockwise: M(-1),
        kappa: 5000,
        gap: 0.05,
        radius: 8,
      }),
    );
    const rows = still(lockErrorFigure)
      .table(lock(), 'metric')
      .rows.map((r) => r.map(plainly));
    expect(rows[3]).toEqual([
      'lost on reversal',
      '–',
      `${(error.shift * 1e3).toFixed(1)} µm`,
      `${(6 * error.turns).toFixed(3)} flats`,
    ]);
    expect(rows[0]?.[2]).toBe(`−${Math.abs(error.clockwise * 1e3).toFixed(2)} µm`);
    const width = (kind: string) => Number(attribute(html(lock()), `[data-bar="${kind}"]`, 'width'));
    expect(width('slack') + width('wind')).toBeCloseTo(width('all'), 1);
  });

  it('finds nearly four flats on the Fine foot where the Stop loses a quarter of one', () => {
    const fine = lock({}, { A: 'M4x0.7', C: '8-36 UNF' });
    expect(
      Number(/together [\d.]+ µm, ([\d.]+) flats/.exec(plainly(still(lockErrorFigure).caption(lock(), 'metric')))?.[1]),
    ).toBeCloseTo(0.268, 3);
    expect(
      Number(/together [\d.]+ µm, ([\d.]+) flats/.exec(plainly(still(lockErrorFigure).caption(fine, 'metric')))?.[1]),
    ).toBeCloseTo(3.88, 2);
  });

  it('refuses equal leads and a gap that holds nothing', () => {
    expect(reasonIn(still(lockErrorFigure).draw(lock({}, { A: 'M12x1.25', C: 'M8x1.25' }), 'metric'))).toContain(
      'leads are equal',
    );
    expect(reasonIn(still(lockErrorFigure).draw(lock({ g_k: 5 }), 'metric'))).toContain('holds nothing');
  });
});

describe('ticks', () => {
  it('are round, in order and inside', () => {
    expect(roundTicks(-14, 55, 4)).toEqual([0, 20, 40]);
    expect(roundTicks(0, 1, 8)).toHaveLength(6);
    expect(roundTicks(3, 3, 4)).toEqual([]);
    expect(evenly(0, 6, 4)).toEqual([0, 2, 4, 6]);
  });
});
