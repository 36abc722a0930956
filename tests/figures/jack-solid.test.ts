/** The path over the solid of the jack: as large as its factors say, the same as in the flat figure, and where the run has come. */
import { describe, expect, it } from 'vitest';
import { jackOf, runsOf } from '../../widgets/assembly/jack-of.ts';
import { at } from '../../widgets/engine/index.ts';
import { jackSolid } from '../../widgets/figures/jack-solid/jack-solid.ts';
import { marksOf } from '../../widgets/figures/jack-solid/overlay.ts';
import { aimOf, type Given, type State, stateOf } from '../../widgets/figures/jack-solid/state.ts';
import type { Look } from '../../widgets/figures/kit/solid/view.ts';
import { pushedJack } from '../../widgets/figures/pushed-jack/pushed-jack.ts';
import { startOf } from '../support/figure-numbers.ts';
import { thread } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const start = startOf('jack-solid').numbers as unknown as Given;
const given = (values: object = {}, choices: object = {}): Given => ({
  ...start,
  values: { ...start.values, ...values },
  choices: { ...start.choices, ...choices },
});
const FRONT: Look = { round: 0, above: 0 };
const points = (s: State, key: string, look = FRONT): (readonly [number, number])[] => {
  const mark = marksOf(s, aimOf(s, look), 'metric').find((m) => m.key === key);
  return [...(mark?.put.d ?? '').matchAll(/[ML](\S+) ([\d.-]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
};
const width = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

describe('the path of the tip over the solid', () => {
  const numbers = given({ n: 0.75 });
  const s = valueIn(stateOf(numbers));
  const { scale } = aimOf(s, FRONT);
  const found = valueIn(runsOf(valueIn(jackOf(numbers)), numbers.values.n_o, false));
  const run = found.at === 'end' ? found.runs.pushed : [];
  const path = s.path as NonNullable<State['path']>;

  it('is as wide and as high as the run, times the factor that is written beside it', () => {
    const drawn = points(s, 'pushed');
    expect(drawn).toHaveLength(run.length);
    expect(width(drawn.map(([x]) => x)) / scale / path.across).toBeCloseTo(width(run.map((p) => p.x)), 4);
    // From the side it is y that is seen across.
    expect(width(points(s, 'pushed', { round: 90, above: 0 }).map(([x]) => x)) / scale / path.across).toBeCloseTo(
      width(run.map((p) => p.y)),
      4,
    );
    // Two turns of M10×1.5 and 3/8-16: 2 × (25.4/16 − 1.5) mm.
    const [, low, high] = points(s, 'nominal');
    expect(((low?.[1] ?? 0) - (high?.[1] ?? 0)) / scale / path.along).toBeCloseTo(0.175, 3);
    const texts = marksOf(s, aimOf(s, FRONT), 'metric').flatMap(({ text }) => text ?? []);
    expect(texts).toContain(`× ${path.across} across`);
    expect(texts).toContain(`× ${path.along} along`);
  });

  it('has its dot where the run is after these turns, and not beyond its end', () => {
    // Three quarters of a turn are the 18th of 24 places.
    const now = points(s, 'now');
    expect(at(now, 0)).toEqual(at(points(s, 'pushed'), 18));
    expect(at(run, 18).n).toBeCloseTo(0.75, 12);
    const far = valueIn(stateOf(given({ n: 7 })));
    expect(at(points(far, 'now'), 0)).toEqual(at(points(far, 'pushed'), run.length - 1));
    expect(valueIn(jackSolid.at(given({ n: 7 }), 'metric')).caption()).toMatch(
      /^The run does not reach 7 turns, so it stands at 2 turns\./,
    );
  });

  it('says of push and width what the flat figure says', () => {
    const says = /by ([\d.]+ µm)/;
    const flat = valueIn(pushedJack.at({ ...startOf('pushed-jack').numbers }, 'metric')).caption();
    const solid = valueIn(jackSolid.at(numbers, 'metric')).caption();
    expect(solid.match(says)?.[1]).toBe(flat.match(says)?.[1]);
    expect(solid.match(/path is ([\d.]+ µm) wide/)?.[1]).toBe(flat.match(/within ([\d.]+ µm)/)?.[1]);
  });

  it('is drawn anew only for other parts: turns and push move what is there', () => {
    const keyAt = (values: object, choices: object = {}) =>
      valueIn(jackSolid.at(given(values, choices), 'metric')).renderKey;
    expect(keyAt({ n: 1.5 })).toBe(keyAt({ n: 0.75 }));
    expect(keyAt({ Q_y: 0 })).toBe(keyAt({}));
    expect(keyAt({ R: 4 })).not.toBe(keyAt({}));
  });

  it('has an arrow that points along the push from every side, and none without one', () => {
    const arrow = (look: Look) => points(s, 'push', look).map(([x]) => x);
    const [tail = 0, head = 0] = arrow(FRONT);
    expect(head).toBeGreaterThan(tail);
    const [behindTail = 0, behindHead = 0] = arrow({ round: 180, above: 0 });
    expect(behindHead).toBeLessThan(behindTail);
    const still = valueIn(stateOf(given({ Q_y: 0 })));
    expect([points(still, 'push'), points(still, 'quiet')]).toEqual([[], []]);
  });
});

describe('the adjuster of the jack', () => {
  it('is engaged as stated, and stands for every arrangement', () => {
    const s = valueIn(stateOf(given({ n: 0 })));
    expect(s.standing.engaged.A).toBeCloseTo(15, 6);
    expect(s.standing.engaged.C).toBeCloseTo(14.8, 6);
    // Inside one another a thread must be smaller than that round it.
    const threads = { A: thread('M16x1.5'), C: thread('M8x1.25') };
    for (const arrangement of ['nested', 'one spindle, two nuts', 'thread adapter'] as const)
      expect(valueIn(stateOf({ ...given({}, { arrangement }), threads })).adjuster.carried).toBeDefined();
  });

  it('is refused by one sentence where its threads overlap', () => {
    expect(reasonIn(stateOf(given({ H_C: 18 })))).toMatch(/thread/i);
  });
});
