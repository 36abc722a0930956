/** Steps: engine calls in a row, the one arithmetic of the printed and the living page. */
import { describe, expect, it } from 'vitest';
import { runSteps, type Step } from '../../widgets/assembly/steps.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

const step = (relation: string, output: string, over: Partial<Step> = {}): Step =>
  ({ relation, output, bind: {}, as: output, digits: 4, ...over }) as Step;

const FOOT = { h_A: 1, L_A: 1.5, h_C: 1, L_C: 1.5875, n: 1 };

describe('runSteps', () => {
  it('finds inputs by their own names, and later steps find what earlier ones gave', () => {
    const outcomes = runSteps(
      [step('net-lead', 'Delta'), step('net-motion', 'z_c'), step('per-step', 's', { bind: { k: 6 } })],
      FOOT,
    );
    expect(outcomes.map((o) => (o.ok ? o.value : reasonOf(o)))).toEqual([
      0.08749999999999991,
      0.08749999999999991,
      0.08749999999999991 / 6,
    ]);
    expect(outcomes[0]).toMatchObject({ inputs: { h_A: 1, L_A: 1.5, h_C: 1, L_C: 1.5875 } });
  });
  it('takes a number or another name where one is bound', () => {
    const [bound] = runSteps([step('net-lead', 'Delta', { bind: { h_A: -1 } })], FOOT);
    expect(bound).toMatchObject({ ok: true, value: 3.0875 });
    const [named] = runSteps([step('gain', 'G', { bind: { L: 'L_A', Delta: 1 }, as: 'G_A' as never })], FOOT);
    expect(named).toMatchObject({ ok: true, value: 1.5 });
  });
  it('keeps a result under the name it is given and not under its own', () => {
    const outcomes = runSteps([step('net-lead', 'Delta', { as: 'z_c' as never }), step('net-motion', 'z_c')], FOOT);
    expect(outcomes[1]).toEqual({ ok: false, code: 'step-waits', values: {} });
  });
  it('lets a step without a result say why, and those that need it wait', () => {
    const equal = { ...FOOT, L_C: 1.5 };
    const outcomes = runSteps(
      [
        step('net-lead', 'Delta'),
        step('gain', 'G', { bind: { L: 'L_A' } }),
        step('thread-eaten', 'X', { bind: { w: 1 } }),
      ],
      equal,
    );
    expect(outcomes.map((o) => (o.ok ? o.value : reasonOf(o)))).toEqual([
      0,
      expect.stringMatching(/^The two leads are equal, so turning does not move the carried part/),
      'This line waits for the one above it.',
    ]);
  });
  it('does not let a failed step leave its old value behind', () => {
    const outcomes = runSteps(
      [step('gain', 'G', { bind: { L: 'L_A', Delta: 0 } }), step('thread-eaten', 'X', { bind: { w: 1 } })],
      { ...FOOT, G: 99 },
    );
    expect(outcomes[1]).toEqual({ ok: false, code: 'step-waits', values: {} });
  });
  it('says so where a relation does not exist', () => {
    expect(runSteps([step('no-such', 'Delta')], {})).toEqual([
      { ok: false, code: 'relation-unknown', values: { relation: 'no-such' } },
    ]);
  });
  it('leaves the scope it was given as it was', () => {
    const scope = { ...FOOT };
    runSteps([step('net-lead', 'Delta')], scope);
    expect(scope).toEqual(FOOT);
  });
});
