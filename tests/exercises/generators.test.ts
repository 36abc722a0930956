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
import PUBLISHED from '../reference/thread-limits.json' with { type: 'json' };
import { BANK, EXERCISES } from '../support/bank.ts';
import { howMany } from '../support/deep.ts';
import { ownAnswer } from '../support/own-answers.ts';
import type { Screw } from '../support/own-arithmetic.ts';
import { drawn, INCH, screw, value } from '../support/own-arithmetic.ts';

/** A fixed sample at every run. */
const SEEDS = howMany(150, 10_000);

/** The root of an external thread is 17/24 of the sharp height deep on each side (ISO 68-1). */
const root = ({ d, P }: Screw): number => d - 1.226_869_322 * P;
const atan = Math.atan;

type Limits = Partial<Record<'D2max' | 'd2min', number>>;
type Own = (pick: (name: string) => string) => number;
const pair = (pick: (name: string) => string): number => screw(pick('C')).L - screw(pick('A')).L;

/** The answer in the unit asked. */
const OWN: Readonly<Record<string, Own>> = {
  // The limits as they are published, and not by the formulas.
  'batch-loosest': (p) => {
    const room = (name: string, limits: Readonly<Record<string, Limits>>, unit: number): number => {
      const { D2max = Number.NaN, d2min = Number.NaN } = limits[p(name).replace(/ UN.*$|-6H.*$/, '')] ?? {};
      return (D2max - d2min) * unit * Math.tan(Math.PI / 6);
    };
    return (room('A', PUBLISHED.iso.rows, 1) + room('C', PUBLISHED.unified.rows, INCH)) / Math.abs(pair(p));
  },
  'strip-rate': (p) => {
    const I = (value(p('b_f')) * value(p('t_f')) ** 3) / 12;
    return (12 * value(p('E_f')) * I) / value(p('l_m')) ** 3;
  },
  // Rungs counted one by one.
  'offset-of-holes': (p) => {
    let width = value(p('w_n'));
    for (let rung = 1; rung < value(p('i_r')); rung++) width += value(p('w_s'));
    return width - value(p('w_n'));
  },
  'snap-of-clip': (p) => {
    // A newton at the end of an arm one millimetre wide of unit modulus: how far it goes, and how its root is strained then.
    const [t, l] = [value(p('t_a')), value(p('l_a'))];
    const I = t ** 3 / 12;
    return (100 * ((l * t) / 2 / I) * value(p('y_a'))) / (l ** 3 / (3 * I));
  },
  'ball-on-rim': (p) => {
    // By the angle under which the middle of a flat is seen from the centre.
    const R = value(p('D_b')) / 2;
    return R * (1 + Math.cos(Math.asin(value(p('s_f')) / 2 / R)));
  },
  'foot-tips': (p) => value(p('F')) * Math.tan(atan(value(p('R_o')) / value(p('y_b')))),
  'meander-strain': (p) => {
    // Give a newton of half waves, by legs and connectors, and the moment of half a leg.
    const [m, L, c] = [value(p('m_f')), value(p('L_f')), value(p('p_f'))];
    const give = m * (L ** 3 / 12 + (c * L ** 2) / 4);
    return 100 * ((value(p('u_f')) / give) * (L / 2) * (value(p('t_f')) / 2));
  },
  'turned-alone': (p) => -screw(p('A')).h * screw(p('A')).L * value(p('n')),
  'seen-from-turned': (p) => screw(p('C')).L * value(p('n')),
  'core-of-sleeve': (p) => root(screw(p('A'))),
  // By the turns that the motion takes.
  'thread-for-stroke': (p) => (value(p('w')) / Math.abs(pair(p))) * screw(p('C')).L,
  'lead-to-look-for': (p) => value(p('s_w')) * value(p('k')),
  'vee-wall': (p) => value(p('F')) / 2 / Math.cos(Math.PI / 2 - (value(p('beta_v')) * Math.PI) / 180),
  'lead-after-turns': (p) => (value(p('e_g')) + value(p('e_g'))) / value(p('n_2')),
  'read-rule': (p) => -10 * value(p('n')) * (screw(p('thread')).P / 10),
  'pair-read-dial': (p) => value(p('w')) / pair(p),
  'flats-from-dial': (p) => (value(p('w')) / Math.abs(pair(p))) * value(p('k')),
  'metric-by-angle': (p) => (-screw(p('thread')).h * screw(p('thread')).L * 1000 * value(p('theta'))) / 360,
  'inch-by-turns': (p) => (-1000 / screw(p('thread')).tpi) * value(p('n')),
  'two-starts': (p) => -screw(p('thread')).L * 1000 * value(p('n')),
  'pair-turned': (p) => pair(p) * value(p('n')) * 1000,
  'opposite-hands': (p) => (screw(p('C')).L + screw(p('A')).L) * value(p('n')),
  'lock-gives': (p) => (screw(p('C')).L * 1000 * value(p('psi'))) / 360,
  'one-flat': (p) => (Math.abs(pair(p)) / value(p('k'))) * 1000,
  'flats-wanted': (p) => (value(p('w')) / 1000 / Math.abs(pair(p))) * 6,
  'hand-angle': (p) => ((Math.abs(pair(p)) / INCH) * 1e4 * value(p('theta'))) / 360,
  'close-pair': (p) => (Math.abs(pair(p)) / value(p('k'))) * 1000,
  'plain-step': (p) => (value(p('s_h')) * 360) / value(p('theta_h')),
  // The last place that touches: a radius out, and half the engagement below, on a flank that slopes by 30°.
  'push-on-part': (p) =>
    (value(p('F')) * (value(p('d_2')) / 2 + (value(p('l_e')) / 2) * Math.tan(Math.PI / 6))) / value(p('y')),
  // A twelfth of the engagement, on a flank of 30°, against the height over the place where the flanks point to.
  'nut-or-screw': (p) => {
    const above = value(p('y')) + (value(p('d_2')) / 2) * Math.tan(Math.PI / 3);
    return (value(p('F')) * (value(p('l_e')) / 12) * Math.tan(Math.PI / 6)) / (above + value(p('l_e')) / 6);
  },
  // Full thread is 5/8 of the sharp height and an eighth more, on each side: 1.299 038 pitches off the diameter.
  'tap-hole': (p) => screw(p('thread')).d - (value(p('q_t')) / 100) * 1.299_038_106 * screw(p('thread')).P,
  'turns-there-are': (p) => (value(p('l_s')) - screw(p('thread')).d) / screw(p('thread')).L,
  'play-of-thread': (p) => ((value(p('D_2')) - value(p('d_2'))) * 1000) / Math.sqrt(3),
  'sleeve-wall': (p) => (root(screw(p('A'))) - screw(p('C')).d) / 2,
  reversal: (p) => (value(p('j_A')) + value(p('j_C'))) / Math.abs(pair(p)),
  'gap-of-key': (p) => (screw(p('C')).L * 1000 * value(p('g_k'))) / (value(p('r_k')) * 2 * Math.PI),
  'worst-error': (p) => (value(p('eps_A')) * screw(p('A')).L + value(p('eps_C')) * screw(p('C')).L) / Math.abs(pair(p)),
  'smooth-pair': (p) => (value(p('F')) * Math.abs(pair(p))) / 2 / Math.PI,
  climbing: (p) => {
    const { d, P } = screw(p('thread'));
    const d2 = d - 0.649_519_053 * P;
    const [slope, rub] = [P / (Math.PI * d2), value(p('mu')) / Math.cos(Math.PI / 6)];
    // Sum of tangents instead of the tangent of a sum.
    return ((value(p('F')) * d2) / 2) * ((slope + rub) / (1 - slope * rub));
  },
  'warm-part': (p) => value(p('l')) * value(p('Delta_T')) * value(p('alpha_T')) * 1000,
  'wedge-turn': (p) => {
    const half = (value(p('phi_w')) * Math.PI) / 360;
    return (screw(p('thread')).L * 1000 * 2 * Math.tan(half)) / (1 - Math.tan(half) ** 2);
  },
  'lead-from-readings': (p) => (value(p('z_2')) - value(p('z_1'))) / (value(p('n_2')) - value(p('n_1'))),
  'stroke-of-pair': (p) => {
    // Compared crosswise, without dividing.
    const [a, c] = [value(p('X_A')) * screw(p('C')).L, value(p('X_C')) * screw(p('A')).L];
    return ((Math.min(a, c) * Math.abs(pair(p))) / screw(p('A')).L / screw(p('C')).L) * 1000;
  },
  'flats-to-level': (p) => ((-value(p('z_2')) / 1000 / value(p('x_2'))) * value(p('x_s')) * 6) / (INCH / 16 - 1.5),
};

/** Those that ask a number; what is offered has its own tests. */
const NUMBERS = EXERCISES.filter((e) => e.kind === undefined);

/** The sheet has two over its two pages, the card of the bench one. */
const SHORT: Readonly<Record<string, number>> = { 'design-sheet': 2, 'bench-card': 1, 'jack-as-built': 2 };

describe('the exercises of the chapters', () => {
  it('have thirty sound items or more each, all asked in other words, so that a class is not asked the same', () => {
    for (const exercise of EXERCISES) {
      const asked = new Set<string>();
      for (let i = 0; i < draws(exercise) && asked.size < 30; i++) {
        const item = itemAt(exercise, picksAt(exercise, i));
        if (item.ok)
          asked.add(
            [item.value.question, item.value.picture, ...(item.value.offered?.options ?? []).map((o) => o.text)].join(
              '\n',
            ),
          );
      }
      expect(asked.size, exercise.id).toBeGreaterThanOrEqual(30);
    }
  });

  it('are six to eight a chapter, two of the sheet, of three kinds or more, and no two of a chapter are one template', () => {
    for (const { slug, exercises } of BANK.chapters) {
      const [least, most] = [SHORT[slug] ?? 6, SHORT[slug] ?? 8];
      expect(exercises.length, slug).toBeGreaterThanOrEqual(least);
      expect(exercises.length, slug).toBeLessThanOrEqual(most);
      const kinds = new Set(exercises.map((e) => `${e.kind} ${e.picture?.shows}`));
      expect(kinds.size, slug).toBeGreaterThanOrEqual(Math.min(3, exercises.length));
      const templates = exercises.map(
        (e) => `${e.kind} ${e.picture?.shows} ${e.unit} ${e.steps.map((s) => `${s.relation}>${s.as}`)}`,
      );
      expect(new Set(templates).size, slug).toBe(exercises.length);
      for (const { id, slips, kind } of exercises)
        if (kind === undefined || kind === 'choice') expect(slips.length, id).toBeGreaterThanOrEqual(2);
    }
  });

  it('give thirty readers of a chapter thirty different sets', () => {
    // A page of the sheet has one exercise; its readers meet in a few.
    for (const { slug, exercises } of BANK.chapters.filter((c) => c.exercises.length > 1)) {
      const sets = Array.from({ length: 30 }, (_, reader) =>
        exercises.map((e) => drawItem(e, [slug, String(reader), e.id]).picks.join(',')).join(' '),
      );
      expect(new Set(sets).size, slug).toBe(30);
    }
  });

  it('have each a derivation of its own, here or among the own answers', () => {
    for (const { id } of NUMBERS)
      expect(OWN[id] !== undefined || ownAnswer(id, 1, () => '1-1') !== undefined, id).toBe(true);
  });

  for (const exercise of NUMBERS)
    describe(`${exercise.id}, drawn from ${SEEDS} seeds,`, () => {
      const items = new Map<string, Item>();
      for (let i = 0; i < SEEDS; i++) {
        const item = drawItem(exercise, ['test', String(i)]);
        items.set(item.picks.join(','), item);
      }
      const all = [...items.values()];

      it('gives sound items of many kinds, all of those there are', () => {
        expect(all.length).toBeGreaterThanOrEqual(8);
        if (draws(exercise) * 12 > SEEDS) return;
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
        const { factor } = UNITS[exercise.unit];
        for (const item of all) {
          const other = own?.(drawn(item)) ?? ownAnswer(exercise.id, factor, drawn(item)) ?? Number.NaN;
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
