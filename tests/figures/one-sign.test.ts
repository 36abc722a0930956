/**
 * One sign and one name for a flank in every figure: the same threads under the same forces are laid side by side in the chapter on
 * play, in the force chain, in the loop of readings and on the design sheet.
 */
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf } from '../support/figures.ts';
import { valueIn } from '../support/results.ts';

const THREADS = { A: 'M10x1.5-6H/6g', C: '3/8-16 UNC-2B/2A' };
const figureOf = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};
const drawn = (name: string, numbers: Numbers): Document =>
  picture(valueIn(still(figureOf(name)).draw(numbers, 'metric')));
const plainly = (text: string): string => text.replace(/\u00a0/g, ' ');

/** Thread, force across it in N, and the flank that touches, named with its part. */
interface Seen {
  readonly force: number;
  readonly flank: string;
}
const seenIn = (text: string): Seen => ({
  force: Number(/([+−]?[\d.]+) N/.exec(plainly(text))?.[1]?.replace('−', '-').replace('+', '')),
  flank: /(?:pressed|pulled) flank of the \w+ part(?= touches)/.exec(text)?.[0] ?? 'none',
});
/** Which way the line of contact falls across the picture: the ridge is that of the turned part in both. */
const slopeOf = (d: string): number => {
  const [[, y0] = [0, 0], [, y1] = [0, 0]] = pointsOf(d);
  return Math.sign(y1 - y0);
};

const LOADS = [
  // Upright, 8 N of weight above, 0.6 N of turned part and a spring that draws that to the base with 4.4 N.
  {
    load: 0,
    A: { force: 13, flank: 'pressed flank of the turned part' },
    C: { force: 8, flank: 'pressed flank of the carried part' },
  },
  {
    load: -11,
    A: { force: 2, flank: 'pressed flank of the turned part' },
    C: { force: -3, flank: 'pulled flank of the carried part' },
  },
  {
    load: -18,
    A: { force: -5, flank: 'pulled flank of the turned part' },
    C: { force: -10, flank: 'pulled flank of the carried part' },
  },
] as const;

describe('the same state in two chapters', () => {
  it.each(LOADS)('under a load of $load N has the same force, flank and contact on each thread', ({ load, A, C }) => {
    const play = drawn(
      'flanks-under-load',
      numbersOf(THREADS, { Q_pc: load + 8, Q_pt: 0.6 + 4.4, c_mA: 0.1, c_mC: 0.1 }, { pieces: 'middling' }),
    );
    const chain = drawn(
      'force-chain',
      numbersOf(
        THREADS,
        {
          F_0: 4.4,
          k_s: 1,
          W_c: 8,
          W_t: 0.6,
          F_lo: load,
          F_hi: load,
          Q_s: 0,
          mu_g: 0,
          M_L: 0,
          r_k: 20,
          F_g: 0,
          n_w: 0,
          n: 0,
        },
        { spring: 'base and turned', action: 'pulls', attitude: 'upright' },
      ),
    );
    for (const [name, expected, key] of [
      ['A', A, 'turned'],
      ['C', C, 'relative'],
    ] as const) {
      expect(seenIn(textOf(play, `[data-read="${key}"]`)), `play, thread ${name}`).toEqual(expected);
      expect(seenIn(textOf(chain, `[data-here="${name}"]`)), `chain, thread ${name}`).toEqual(expected);
      expect(textOf(chain, `[data-verdict="${name}"]`)).toContain(`the ${expected.flank} touches`);
      // In the lenses the mark of contact stands where that name stands, and on the same side of the ridge in both chapters.
      const closed = (['upper', 'lower'] as const).filter(
        (side) => attribute(play, `[data-path="${name}-${side}-contact"]`, 'd') !== '',
      );
      expect(closed).toHaveLength(1);
      const label = [...play.querySelectorAll(`[data-flank="${name}-${closed[0]}"]`)]
        .map((t) => t.textContent)
        .join(' ');
      expect(label.replace('flank', 'flank of the')).toBe(expected.flank);
      expect(textOf(play, `[data-gap="${name}-${closed[0]}"]`)).toBe('touches');
      expect(slopeOf(attribute(play, `[data-path="${name}-${closed[0]}-contact"]`, 'd'))).toBe(
        slopeOf(attribute(chain, `[data-touch="${name}"]`, 'd')),
      );
    }
  });
});

describe('a load on the carried part alone', () => {
  it.each([
    [20, 'pressed'],
    [-20, 'pulled'],
  ] as const)('of %s N is on the %s flanks in play, in the loop and on the sheet', (load, flank) => {
    const names = [`${flank} flank of the turned part`, `${flank} flank of the carried part`];
    const play = drawn(
      'flanks-under-load',
      numbersOf(THREADS, { Q_pc: load, Q_pt: 0, c_mA: 0.1, c_mC: 0.1 }, { pieces: 'middling' }),
    );
    expect(['turned', 'relative'].map((key) => seenIn(textOf(play, `[data-read="${key}"]`)))).toEqual(
      names.map((name) => ({ force: load, flank: name })),
    );

    const loop = drawn(
      'reversal-loop',
      numbersOf(THREADS, { n_o: 4, n: 0, Q_pc: load, Q_f: 1, c_mA: 0.1, c_mC: 0.1 }, { pieces: 'middling' }),
    );
    expect(textOf(loop, '[data-read="loaded-flanks"]')).toBe(`A ${flank}, C ${flank}`);

    const sheet = new Map(
      still(figureOf('design-sheet'))
        .table(
          {
            ...numbersOf(
              THREADS,
              {
                ...{
                  sigma_a: 100,
                  tau_a: 60,
                  k_d: 50,
                  S_w: 0,
                  s_w: 0.02,
                  e_w: 0.02,
                  H_w: 90,
                  theta_h: 0.026,
                  t_l: 0.5,
                  l: 40,
                  Delta_T: 2,
                },
                ...{ l_A: 20, b_A: 20, l_C: 20, b_C: 20, q_e: 1, eps_A: 0.001, eps_C: 0.001, a_A: 0, a_C: 0 },
                ...{ F_lo: load, F_hi: load, W_c: 0, F_g: 5, F_0: 0, k_s: 1, mu: 0.15, r_h: 10, kappa: 1e5, R: 3 },
              },
              {
                ...{ spring: 'no parts', action: 'pulls', attitude: 'upright', arrangement: 'in line', path: 'steel' },
                ...{ assembly: 'both at mid-range', divider: 'hexagon', periodic: 'not measured', seat: 'mild steel' },
              },
            ),
            texts: { parts: '', adjuster: 'none' },
          },
          'metric',
        )
        .rows.map(([, name = '', value = '']) => [name, value]),
    );
    expect([sheet.get('thread A'), sheet.get('thread C')]).toEqual(names.map((name) => `the ${name} touches`));
  });
});
