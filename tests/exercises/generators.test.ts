/**
 * Every exercise of the chapters, drawn ten thousand times: no item is degenerate, no slip is accepted, and each answer is worked
 * out again by arithmetic of its own, in inches and turns, from the texts of the designations.
 */
import { describe, expect, it } from 'vitest';
import { UNITS } from '../../widgets/engine/index.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import { acceptedText, answerText, draws, type Item, itemAt, picksAt } from '../../widgets/exercises/exercise.ts';
import { within } from '../../widgets/exercises/interval.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { stepLines } from '../../widgets/exercises/steps-text.ts';
import { EXERCISES } from '../support/bank.ts';

const SEEDS = 10_000;

interface Screw {
  readonly d: number;
  readonly P: number;
  readonly L: number;
  readonly h: number;
  readonly tpi: number;
}
const INCH = 25.4;
/** Reads a designation without the engine: metric with pitch, lead and pitch, fraction and number sizes. */
const screw = (text: string): Screw => {
  const h = / LH$/.test(text) ? -1 : 1;
  const metric = /^M(\d+)x(?:Ph([\d.]+)P)?([\d.]+)/.exec(text);
  if (metric) {
    const P = Number(metric[3]);
    return { d: Number(metric[1]), P, L: metric[2] === undefined ? P : Number(metric[2]), h, tpi: INCH / P };
  }
  const inch = /^(?:(\d+)\/(\d+)|(\d+))-(\d+)/.exec(text);
  if (!inch) throw new Error(text);
  const tpi = Number(inch[4]);
  const d = inch[3] === undefined ? Number(inch[1]) / Number(inch[2]) : 0.06 + 0.013 * Number(inch[3]);
  return { d: d * INCH, P: INCH / tpi, L: INCH / tpi, h, tpi };
};
const number = (text: string): number => {
  const [, sign = '', value = ''] = /^([-−]?)([\d./]+)/.exec(text) ?? [];
  const [top = '', bottom = '1'] = value.split('/');
  return ((sign === '' ? 1 : -1) * Number(top)) / Number(bottom);
};
/** The root of an external thread is 17/24 of the sharp height deep on each side (ISO 68-1). */
const root = ({ d, P }: Screw): number => d - 1.226_869_322 * P;
const atan = Math.atan;

type Own = (pick: (name: string) => string) => number;
const pair = (pick: (name: string) => string): number => screw(pick('C')).L - screw(pick('A')).L;

/** The answer in the unit asked. */
const OWN: Readonly<Record<string, Own>> = {
  'strip-rate': (p) => {
    const I = (number(p('b_f')) * number(p('t_f')) ** 3) / 12;
    return (12 * number(p('E_f')) * I) / number(p('l_m')) ** 3;
  },
  // Rungs counted one by one.
  'offset-of-holes': (p) => {
    let width = number(p('w_n'));
    for (let rung = 1; rung < number(p('i_r')); rung++) width += number(p('w_s'));
    return width - number(p('w_n'));
  },
  'snap-of-clip': (p) => {
    // A newton at the end of an arm one millimetre wide of unit modulus: how far it goes, and how its root is strained then.
    const [t, l] = [number(p('t_a')), number(p('l_a'))];
    const I = t ** 3 / 12;
    return (100 * ((l * t) / 2 / I) * number(p('y_a'))) / (l ** 3 / (3 * I));
  },
  'ball-on-rim': (p) => {
    // By the angle under which the middle of a flat is seen from the centre.
    const R = number(p('D_b')) / 2;
    return R * (1 + Math.cos(Math.asin(number(p('s_f')) / 2 / R)));
  },
  'foot-tips': (p) => number(p('F')) * Math.tan(atan(number(p('R_o')) / number(p('y_b')))),
  'meander-strain': (p) => {
    // Give a newton of half waves, by legs and connectors, and the moment of half a leg.
    const [m, L, c] = [number(p('m_f')), number(p('L_f')), number(p('p_f'))];
    const give = m * (L ** 3 / 12 + (c * L ** 2) / 4);
    return 100 * ((number(p('u_f')) / give) * (L / 2) * (number(p('t_f')) / 2));
  },
  'metric-by-angle': (p) => (-screw(p('thread')).h * screw(p('thread')).L * 1000 * number(p('theta'))) / 360,
  'inch-by-turns': (p) => (-1000 / screw(p('thread')).tpi) * number(p('n')),
  'two-starts': (p) => -screw(p('thread')).L * 1000 * number(p('n')),
  'pair-turned': (p) => pair(p) * number(p('n')) * 1000,
  'opposite-hands': (p) => (screw(p('C')).L + screw(p('A')).L) * number(p('n')),
  'lock-gives': (p) => (screw(p('C')).L * 1000 * number(p('psi'))) / 360,
  'one-flat': (p) => (Math.abs(pair(p)) / number(p('k'))) * 1000,
  'flats-wanted': (p) => (number(p('w')) / 1000 / Math.abs(pair(p))) * 6,
  'hand-angle': (p) => ((Math.abs(pair(p)) / INCH) * 1e4 * number(p('theta'))) / 360,
  'close-pair': (p) => (Math.abs(pair(p)) / number(p('k'))) * 1000,
  // The last place that touches: a radius out, and half the engagement below, on a flank that slopes by 30°.
  'push-on-part': (p) =>
    (number(p('F')) * (number(p('d_2')) / 2 + (number(p('l_e')) / 2) * Math.tan(Math.PI / 6))) / number(p('y')),
  'plain-step': (p) => (number(p('s_h')) * 360) / number(p('theta_h')),
  // Full thread is 5/8 of the sharp height and an eighth more, on each side: 1.299 038 pitches off the diameter.
  'tap-hole': (p) => screw(p('thread')).d - (number(p('q_t')) / 100) * 1.299_038_106 * screw(p('thread')).P,
  'turns-there-are': (p) => (number(p('l_s')) - screw(p('thread')).d) / screw(p('thread')).L,
  'play-of-thread': (p) => ((number(p('D_2')) - number(p('d_2'))) * 1000) / Math.sqrt(3),
  'sleeve-wall': (p) => (root(screw(p('A'))) - screw(p('C')).d) / 2,
  reversal: (p) => (number(p('j_A')) + number(p('j_C'))) / Math.abs(pair(p)),
  'gap-of-key': (p) => (screw(p('C')).L * 1000 * number(p('g_k'))) / (number(p('r_k')) * 2 * Math.PI),
  'worst-error': (p) =>
    (number(p('eps_A')) * screw(p('A')).L + number(p('eps_C')) * screw(p('C')).L) / Math.abs(pair(p)),
  'smooth-pair': (p) => (number(p('F')) * Math.abs(pair(p))) / 2 / Math.PI,
  climbing: (p) => {
    const { d, P } = screw(p('thread'));
    const d2 = d - 0.649_519_053 * P;
    const [slope, rub] = [P / (Math.PI * d2), number(p('mu')) / Math.cos(Math.PI / 6)];
    // Sum of tangents instead of the tangent of a sum.
    return ((number(p('F')) * d2) / 2) * ((slope + rub) / (1 - slope * rub));
  },
  'warm-part': (p) => number(p('l')) * number(p('Delta_T')) * number(p('alpha_T')) * 1000,
  'wedge-turn': (p) => {
    const half = (number(p('phi_w')) * Math.PI) / 360;
    return (screw(p('thread')).L * 1000 * 2 * Math.tan(half)) / (1 - Math.tan(half) ** 2);
  },
  'lead-from-readings': (p) => (number(p('z_2')) - number(p('z_1'))) / (number(p('n_2')) - number(p('n_1'))),
  'stroke-of-pair': (p) => {
    // Compared crosswise, without dividing.
    const [a, c] = [number(p('X_A')) * screw(p('C')).L, number(p('X_C')) * screw(p('A')).L];
    return ((Math.min(a, c) * Math.abs(pair(p))) / screw(p('A')).L / screw(p('C')).L) * 1000;
  },
  'flats-to-level': (p) => ((-number(p('z_2')) / 1000 / number(p('x_2'))) * number(p('x_s')) * 6) / (INCH / 16 - 1.5),
};

const pickOf =
  ({ exercise, picks }: Item) =>
  (name: string): string => {
    const at = exercise.pools.findIndex((p) => p.input.name === name);
    const text = exercise.pools[at]?.options[picks[at] ?? 0];
    if (text === undefined) throw new Error(`no pool ${name}`);
    return text;
  };

describe('the exercises of the chapters', () => {
  it('are at least two for each of the first three chapters, and each has a derivation of its own here', () => {
    expect(EXERCISES.length).toBeGreaterThanOrEqual(18);
    for (const { id } of EXERCISES) expect(Object.keys(OWN), id).toContain(id);
  });

  for (const exercise of EXERCISES)
    describe(`${exercise.id}, drawn from ${SEEDS} seeds,`, () => {
      const items = new Map<string, Item>();
      for (let i = 0; i < SEEDS; i++) {
        const item = drawItem(exercise, ['test', String(i)]);
        items.set(item.picks.join(','), item);
      }
      const all = [...items.values()];

      it('gives sound items of many kinds, all of those there are', () => {
        expect(all.length).toBeGreaterThanOrEqual(8);
        const sound = Array.from({ length: draws(exercise) }, (_, i) => itemAt(exercise, picksAt(exercise, i)).ok);
        expect(all.length).toBe(sound.filter(Boolean).length);
      });

      it('has answers that are numbers, neither nought nor tiny, in an interval as wide as was promised', () => {
        for (const { amount, accepted } of all) {
          expect(Number.isFinite(amount)).toBe(true);
          expect(Math.abs(amount)).toBeGreaterThanOrEqual(0.01);
          const size = Math.abs(amount);
          const last = 10 ** (Math.floor(Math.log10(size)) - exercise.digits + 1);
          const half = Math.max(0.01 * size, last / 2);
          for (const edge of [amount - accepted.low, accepted.high - amount]) {
            expect(edge).toBeGreaterThanOrEqual(half * (1 - 1e-6));
            expect(edge).toBeLessThanOrEqual(half + last / 10);
          }
          expect(accepted.low * accepted.high, 'one sign only').toBeGreaterThan(0);
        }
      });

      it('has the answer that another way of working gives', () => {
        const own = OWN[exercise.id];
        if (!own) throw new Error(exercise.id);
        for (const item of all) {
          const other = own(pickOf(item));
          expect(Math.abs(other / item.amount - 1), item.question).toBeLessThan(1e-8);
        }
      });

      it('accepts no slip, nor what a slip rounds to, and names each', () => {
        const named = new Set<number>();
        for (const item of all)
          for (const { amount, rule, says } of item.slips) {
            expect(within(amount, item.accepted), `${item.question} ${says}`).toBe(false);
            expect(within(Number(amount.toPrecision(exercise.digits)), item.accepted), says).toBe(false);
            if (rule === undefined) continue;
            const verdict = judge(item, `${amount} ${exercise.unit === '1' ? '' : exercise.unit}`);
            expect(['slip', 'other way', 'wrong'], `${item.question} ${says}`).toContain(verdict.kind);
            if (verdict.says.includes(says)) named.add(rule);
          }
        expect(named.size, 'slips that are named somewhere').toBe(exercise.slips.length);
      });

      it('accepts the right answer in every unit of its kind, as typed by people', () => {
        for (const item of all.slice(0, 12)) {
          const base = item.amount * UNITS[exercise.unit].factor;
          for (const [unit, fact] of Object.entries(UNITS)) {
            if (fact.base !== UNITS[exercise.unit].base || unit === '%' || unit === '1') continue;
            const text = `${(base / fact.factor).toPrecision(9)} ${unit}`;
            expect(judge(item, text).kind, `${text}: ${item.question}`).toBe('right');
            expect(judge(item, text.replace('.', ',')).kind, text).toBe('right');
          }
          expect(judge(item, String(Number(item.amount.toPrecision(exercise.digits)))).kind).toBe('right');
        }
      });

      it('has a question, a key and steps without places left open', () => {
        for (const item of all.slice(0, 50)) {
          const text = [item.question, item.hint, answerText(item), acceptedText(item), ...stepLines(item)].join(' ');
          expect(text).not.toMatch(/[{}]|NaN|Infinity|undefined|\\/);
          expect(stepLines(item).every((line) => / = .*\d/.test(line))).toBe(true);
        }
      });
    });
});

it('the tangent of a sum, used above, is the tangent of a sum', () => {
  expect((0.1 + 0.2) / (1 - 0.02)).toBeCloseTo(Math.tan(atan(0.1) + atan(0.2)), 12);
});
