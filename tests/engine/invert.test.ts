/** Every relation backwards: at random points of its box, each continuous input on which its result rises or falls throughout. */
import { describe, expect, it } from 'vitest';
import {
  type AnyRelation,
  type Bounds,
  invert,
  type Law,
  RELATIONS,
  rootBetween,
  type SymbolName,
  symbolFact,
} from '../../widgets/engine/index.ts';
import { pointAt } from '../../widgets/site/points.ts';
import { howMany } from '../support/deep.ts';

const lawOf =
  (r: AnyRelation, output: string, input: SymbolName, point: Readonly<Record<string, number>>): Law =>
  (x) => {
    const result = r.of({ ...point, [input]: x });
    return result.ok ? result.value[output] : undefined;
  };

/** Sixteen places over the bounds, even and by ratio, at which a law has a value, and whether it goes one way through them. */
const scan = (law: Law, { min, max }: Bounds) => {
  const least = Math.max(min, 1e-6 * max);
  const xs = Array.from({ length: 40 }, (_, i) =>
    i < 20 ? min + ((max - min) * i) / 19 : least * (max / least) ** ((i - 20) / 19),
  );
  const ys = [...new Set(xs)]
    .sort((a, b) => a - b)
    .flatMap((x) => law(x) ?? [])
    .filter((y) => Number.isFinite(y));
  const steps = ys.slice(1).map((y, i) => y - (ys[i] ?? y));
  return { ys, oneWay: ys.length > 5 && (steps.every((s) => s > 0) || steps.every((s) => s < 0)) };
};

/** A thousand points of a relation of nine inputs take their time. */
const LONG = 600_000;

describe('every relation backwards', () => {
  for (const r of RELATIONS)
    it(
      `${r.name}: finds again each input on which a result rises or falls throughout, and goes forward to the same`,
      () => {
        for (const input of r.takes) {
          const fact = symbolFact(input);
          if (fact.whole || fact.shown === 'sense') continue;
          for (const output of Object.keys(r.gives))
            for (let i = 0; i < howMany(2, 1000, 'POINTS'); i++) {
              const point = pointAt(r.takes, i);
              const law = lawOf(r, output, input, point);
              const x = point[input] ?? Number.NaN;
              const y = law(x);
              if (y === undefined || !scan(law, fact).oneWay) continue;
              const { answers } = invert(law, y, fact);
              const at = `${output} of ${input} at ${JSON.stringify(point)}`;
              // What a last bit of the input changes is all that may be left.
              const grain = (z: number) =>
                Math.max(...[z * (1 + 4e-16), z * (1 - 4e-16)].map((w) => Math.abs((law(w) ?? y) - y)));
              // Forty places may overlook a turn: then there are several, and the one it was made of is among them.
              expect(answers.length, at).toBeGreaterThan(0);
              for (const answer of answers)
                expect(Math.abs(answer.y - y), at).toBeLessThanOrEqual(
                  Math.max(10 ** -Math.min(12, answer.digits) * Math.abs(y), 4 * grain(answer.x)),
                );
              // Where the result hardly feels the input, the input is not told by it.
              const felt = Math.abs((law(x * (1 + 1e-4)) ?? y) - y) > 1e-7 * Math.abs(y);
              const nearest = Math.min(...answers.map((answer) => Math.abs(answer.x - x)));
              if (felt) expect(nearest, at).toBeLessThanOrEqual(1e-6 * Math.abs(x));
            }
        }
      },
      LONG,
    );

  it(
    'is right to find nothing: where the scan passes the wish nowhere, there is no answer and the nearest is the scan’s or better',
    () => {
      let refused = 0;
      for (const r of RELATIONS.filter((_, i) => i % howMany(4, 1) === 0))
        for (const input of r.takes) {
          const fact = symbolFact(input);
          if (fact.whole || fact.shown === 'sense') continue;
          for (const output of Object.keys(r.gives))
            for (let i = 0; i < howMany(1, 30); i++) {
              const law = lawOf(r, output, input, pointAt(r.takes, i));
              const { ys, oneWay } = scan(law, fact);
              if (!oneWay) continue;
              const [least, most] = [Math.min(...ys), Math.max(...ys)];
              for (const wish of [most + 0.1 * (most - least), least - 0.1 * (most - least)]) {
                const { answers, nearest } = invert(law, wish, fact);
                if (answers.length > 0) continue;
                refused++;
                const off = Math.abs((nearest?.y ?? Number.NaN) - wish);
                expect(off, `${r.name} ${output} of ${input}`).toBeLessThanOrEqual(0.1 * (most - least) * (1 + 1e-5));
              }
            }
        }
      expect(refused).toBeGreaterThan(60);
    },
    LONG,
  );
});

describe('a wish that a relation reaches', () => {
  /** Four hundred places over the bounds, even and by ratio. */
  const placesOver = ({ min, max }: Bounds): readonly number[] => {
    const least = Math.max(min, 1e-6 * max);
    const xs = Array.from({ length: 400 }, (_, j) =>
      j < 200 ? min + ((max - min) * j) / 199 : least * (max / least) ** ((j - 200) / 199),
    );
    return [...new Set(xs)].sort((a, b) => a - b);
  };

  it(
    'is never refused: between neighbours of a scan four times as fine, whichever way the law goes elsewhere, near poles too',
    () => {
      let wishes = 0;
      for (const r of RELATIONS.filter((_, i) => i % howMany(6, 1) === 0))
        for (const input of r.takes) {
          const fact = symbolFact(input);
          if (fact.whole || fact.shown === 'sense') continue;
          for (const output of Object.keys(r.gives))
            for (let i = 0; i < howMany(1, 40); i++) {
              const law = lawOf(r, output, input, pointAt(r.takes, i));
              const xs = placesOver(fact);
              for (const share of [0.13, 0.5, 0.77]) {
                const j = Math.floor(share * (xs.length - 1));
                const [p, q] = [law(xs[j] ?? 0), law(xs[j + 1] ?? 0)];
                if (p === undefined || q === undefined || p === q) continue;
                wishes++;
                const { answers } = invert(law, (p + q) / 2, fact);
                expect(answers.length, `${r.name} ${output} of ${input}, point ${i}, from ${xs[j]}`).toBeGreaterThan(0);
              }
            }
        }
      expect(wishes).toBeGreaterThan(100);
    },
    LONG,
  );
});

describe('invert', () => {
  const places = (law: Law, wish: number, bounds: Bounds) => invert(law, wish, bounds).answers.map(({ x }) => x);

  it('finds every answer: both of a parabola, all of a wave, one that only touches', () => {
    expect(places((x) => x * x, 2, { min: -5, max: 5 })).toEqual(
      [-Math.SQRT2, Math.SQRT2].map((x) => expect.closeTo(x, 12)),
    );
    expect(places(Math.sin, 0.5, { min: 0, max: 20 })).toHaveLength(7);
    const touch = places((x) => (x - 0.3) ** 2, 0, { min: -1, max: 1 });
    expect(touch).toHaveLength(1);
    expect(touch[0]).toBeCloseTo(0.3, 6);
  });

  it('takes two answers that lie closer than its grid, where the law turns between them', () => {
    expect(places((x) => (x - 0.7001) * (x - 0.7003), 0, { min: 0, max: 10 })).toEqual([
      expect.closeTo(0.7001, 9),
      expect.closeTo(0.7003, 9),
    ]);
  });

  it('takes no change of sign over a pole for an answer', () => {
    expect(places((x) => 1 / (x - 0.37), 0, { min: 0, max: 1 })).toEqual([]);
  });

  it('finds one on the steep side of a pole that the grid only passes by', () => {
    const law: Law = (x) => (Math.abs(x - 0.3771) < 1e-6 ? undefined : 1 / (x - 0.3771));
    for (const wish of [5000, -5000])
      expect(places(law, wish, { min: 0, max: 1 })).toEqual([expect.closeTo(0.3771 + 1 / wish, 9)]);
  });

  it('asks a law that goes one way no more than ninety times, also where it refuses', () => {
    let asked = 0;
    const law: Law = (x) => {
      asked++;
      return x ** 3 + x;
    };
    expect(places(law, 3.7, { min: -4, max: 4, about: 1 })).toHaveLength(1);
    expect(asked).toBeLessThan(90);
    asked = 0;
    expect(places(law, 1000, { min: -4, max: 4, about: 1 })).toEqual([]);
    expect(asked).toBeLessThan(90);
  });

  it('finds both answers of a dip between the last place of its grid and an edge towards which the law runs off', () => {
    const law: Law = (x) => (x <= 0.2 ? undefined : x + 1e-4 / (x - 0.2));
    // x + 10⁻⁴/(x − 0.2) = 0.23: (x − 0.2)² − 0.03 (x − 0.2) + 10⁻⁴ = 0.
    const half = Math.sqrt(0.03 ** 2 / 4 - 1e-4);
    expect(places(law, 0.23, { min: 0.01, max: 500 })).toEqual(
      [-half, half].map((off) => expect.closeTo(0.215 + off, 9)),
    );
  });

  it('finds an answer at the edge of where the law has a value', () => {
    const law: Law = (x) => (x < 2 ? undefined : Math.sqrt(x - 2) + 0.1);
    expect(places(law, 0.1 + 1e-4, { min: 0, max: 9 })).toEqual([expect.closeTo(2 + 1e-8, 10)]);
  });

  it('says from where to where, when all between give it', () => {
    const [flat] = invert((x) => Math.min(x, 4), 4, { min: 0, max: 10 }).answers;
    expect(flat?.x).toBeCloseTo(4, 9);
    expect(flat?.to).toBe(10);
  });

  it('takes whole numbers only, and gives the nearest', () => {
    const steps: Law = (k) => 87.5 / k;
    const bounds = { min: 1, max: 10_000, whole: true } as const;
    expect(places(steps, 87.5 / 4321, bounds)).toEqual([4321]);
    const none = invert(steps, 1.01, bounds);
    expect(none.answers).toEqual([]);
    expect(none.nearest).toEqual({ x: 87, y: 87.5 / 87 });
  });

  it('says what the law reaches', () => {
    expect(invert((x) => x * x, 30, { min: -5, max: 5 })).toMatchObject({
      answers: [],
      least: 0,
      most: 25,
      nearest: { y: 25 },
    });
  });

  it('root between: the root of Dottie, cos x = x, to the last digits', () => {
    // OEIS A003957.
    expect(rootBetween((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.73908513321516, 14);
  });
});

describe('a law so steep that doubles are few', () => {
  it('has its answer all the same, with as many digits as the doubles let it have', () => {
    const [answer] = invert((x) => 1e12 * (x - 1000), 1, { min: 0, max: 2000 }).answers;
    // Doubles about 1000 stand 1.1e-13 apart, so the law goes by steps of 0.11.
    expect(Math.abs((answer?.y ?? Number.NaN) - 1)).toBeLessThan(0.12);
  });

  it('has none where it jumps over the wish', () => {
    expect(invert((x) => (x < 1.3 ? x : x + 5), 4, { min: 0, max: 3 }).answers).toEqual([]);
  });
});
