/** What is said of a prediction, and where it stands beside the answer, for anything that a field lets through. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeSign } from '../../widgets/client/practice/picture-predictions.ts';
import { judgePrediction } from '../../widgets/client/prediction-words.ts';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { curveIn, curveSvg, curveX, curveY, judgeCurve, valueAt } from '../../widgets/exercises/curve.ts';
import { UNIT_VIEWS, type UnitView } from '../../widgets/input/format.ts';
import { CHAPTERS, press } from '../support/chapters.ts';
import { picture } from '../support/figures.ts';

/** The prediction of the net lead of the Foot. */
const FOOT = { answer: 0.0875, digits: 4, slips: [{ value: 3.0875, says: 'You added the leads.' }] };
const judge = (typed: number, model = FOOT, name: SymbolName = 'Delta', view: UnitView = 'metric') =>
  judgePrediction(typed, model, symbolFact(name), view);
const plain = (text: string) => text.replace(/\u00a0/g, ' ');

describe('a prediction', () => {
  for (const [typed, verdict] of [
    [0.0875, 'Yes: 87.50 µm.'],
    [-0.0875, 'Right amount, wrong direction: you said −87.5 µm, it is 87.50 µm.'],
    [0.1, 'You said 100 µm; it is 87.50 µm, not far off.'],
    [-0.125, 'You said −125 µm; it is 87.50 µm, the other way.'],
    [0.002, 'You said 2 µm; it is 87.50 µm, 44 times more.'],
    [3, 'You said 3 mm; it is 87.50 µm. You added the leads.'],
    [2.5, 'You said 2.5 mm; it is 87.50 µm, 29 times less.'],
    [3.0875, 'You said 3.0875 mm; it is 87.50 µm. You added the leads.'],
    [-120, 'You said −120 mm; it is 87.50 µm, 1400 times less.'],
    [0, 'You said it does not move; it moves 87.50 µm.'],
    // Written as nought, so judged as nought.
    [1e-320, 'You said it does not move; it moves 87.50 µm.'],
    [-1e-30, 'You said it does not move; it moves 87.50 µm.'],
    [1e-9, 'You said 0.000001 µm; it is 87.50 µm, more than a million times more.'],
  ] as const)
    it(`of ${typed} mm is told: ${verdict}`, () => expect(plain(judge(typed).verdict)).toBe(verdict));

  it('of nothing where nothing moves is not said to be of a motion', () => {
    const turnsLost = { answer: 0.429, digits: 3, slips: [] };
    expect(plain(judge(0, turnsLost, 'n_j').verdict)).toBe('You said 0 turns; it is 0.429 turns.');
  });

  it('of any size is told in words without an exponent, and stands on a scale of a few ticks', () => {
    const size = fc
      .integer({ min: -323, max: 2 })
      .chain((e) => fc.integer({ min: -9, max: 9 }).map((m) => m * 10 ** e));
    fc.assert(
      fc.property(size, fc.constantFrom(...UNIT_VIEWS), (typed, view) => {
        const { verdict, scale = '' } = judge(typed, FOOT, 'Delta', view);
        expect(verdict).not.toMatch(/\de[+−-]?\d|\?|NaN|Infinity/);
        expect(verdict.length).toBeLessThan(160);
        expect(scale).not.toMatch(/NaN|Infinity|undefined/);
        const svg = picture(scale);
        expect(svg.querySelectorAll('.tick').length).toBeLessThanOrEqual(9);
        for (const mark of [...(scale.match(/d="M([\d.]+) 38l|cx="([\d.]+)"/g) ?? [])]) {
          const at = Number(/[\d.]+/.exec(mark)?.[0]);
          expect(at).toBeGreaterThanOrEqual(20);
          expect(at).toBeLessThanOrEqual(380);
        }
      }),
    );
  });

  it('of the other sign stands on the other side of nought, on an axis that says so', () => {
    const marks = (typed: number) => {
      const { scale = '' } = judge(typed);
      const at = (mark: RegExp) => Number(mark.exec(scale)?.[1]);
      const written = [...picture(scale).querySelectorAll('.at')].map((text) => plain(text.textContent ?? ''));
      return { yours: at(/d="M([\d.]+) 38l/), answer: at(/cx="([\d.]+)"/), written };
    };
    for (const typed of [-0.0875, -0.002, -3]) {
      const { yours, answer, written } = marks(typed);
      expect(yours, String(typed)).toBeLessThan(200);
      expect(answer).toBeGreaterThan(200);
      expect(written).toContain('0');
      expect(written[0]).toMatch(/^−/);
      expect(written.some((text) => text.startsWith('+'))).toBe(true);
    }
    // Nought itself is a place, and of one sign the larger stands further out.
    expect(marks(0).yours).toBe(200);
    expect(marks(3).yours).toBeGreaterThan(marks(3).answer);
    expect(
      marks(3).written.every((text) => /^\+1(?:0+)? (?:µm|mm)$/.test(text)),
      String(marks(3).written),
    ).toBe(true);
    expect(marks(0.0875).yours).toBe(marks(0.0875).answer);
  });
});

describe('a prediction by its sign', () => {
  const way = (answer: number, slips: readonly { value: number; says: string }[] = []) => ({
    on: 'way' as const,
    output: 'z',
    answer,
    digits: 3,
    slips,
  });
  const said = (made: number, model: ReturnType<typeof way> | (Omit<ReturnType<typeof way>, 'on'> & { on: 'flank' })) =>
    plain(judgeSign(made, model, symbolFact(model.output as SymbolName), 'metric'));

  it('is right where the signs agree, whatever the amounts, and says how much it is', () => {
    for (const [made, answer] of [
      [1, 0.75],
      [-1, -1e-6],
      [0, 0],
    ] as const)
      expect(said(made, way(answer))).toMatch(/^Yes|^Right/);
    expect(said(1, way(0.75))).toContain('750 µm');
  });

  it('is met by the slip that comes to the same sign, else by a question that leads on', () => {
    const model = way(-0.75, [{ value: 0.75, says: 'You took it for a left-hand screw.' }]);
    expect(said(1, model)).toContain('You took it for a left-hand screw.');
    expect(said(0, model)).toMatch(/\?/);
    expect(said(0, model)).not.toContain('left-hand');
    for (const made of [1, 0]) expect(said(made, model)).not.toMatch(/^Yes|^Right/);
  });

  it('of a flank speaks of flanks', () => {
    const model = { on: 'flank' as const, output: 'F_C', answer: -12, digits: 3, slips: [] };
    expect(said(-1, model)).toContain('the pulled flank');
    expect(said(1, model)).toContain('the pressed flank');
    expect(said(1, model)).toContain('the pulled flank');
    expect(said(1, model)).not.toMatch(/\b(?:up|down)\b/);
  });
});

describe('predictions made on a picture', () => {
  const all = CHAPTERS.map(({ file, text }) => ({ file, made: press(text, file).model.predictions }));

  it('are half of them or more, of every kind that there is', () => {
    const each = all.flatMap(({ made }) => made);
    expect(each.filter((p) => p.on !== undefined).length * 2).toBeGreaterThanOrEqual(each.length);
    for (const kind of ['way', 'flank', 'dial', 'bar', 'curve'])
      expect(
        each.some((p) => p.on === kind),
        kind,
      ).toBe(true);
    expect(all.filter(({ made }) => made.some((p) => p.on === 'curve')).length).toBeGreaterThanOrEqual(3);
  });

  it('as curves: the engine’s own is right, each slip is met by its words, anything else by a question', () => {
    for (const { file, made } of all)
      for (const { curve } of made) {
        if (!curve) continue;
        const { right, slips, up } = curve;
        const span = Math.abs(up.to - up.from);
        expect(judgeCurve(curve, right)).toMatchObject({ right: true });
        // A hand is off by some hundredths of the axis.
        expect(
          judgeCurve(
            curve,
            right.map((y, i) => y + 0.05 * span * (-1) ** i),
          ).right,
          file,
        ).toBe(true);
        for (const { at, says } of slips) expect(judgeCurve(curve, at).says, file).toContain(says);
        const odd = [
          right.map(() => up.from),
          right.map(() => up.to),
          right.map((_, i) => up.from + (span * i) / 6),
          right.map((_, i) => up.to - (span * i) / 6),
          right.map((_, i) => (i % 2 ? up.to : up.from)),
          right.map((y) => y + 0.2 * span),
        ];
        for (const drawn of odd) {
          const said = judgeCurve(curve, drawn);
          if (said.right) continue;
          expect(said.says).toMatch(/The two differ most at .*: you drew .*, it is /);
          expect(/\?|Think of/.test(said.says) || slips.some(({ says }) => said.says.includes(says)), said.says).toBe(
            true,
          );
          expect(said.says).not.toMatch(/NaN|undefined|Infinity/);
        }
      }
  });

  it('as curves follow the unit switch: lengths in thou or tenths on axes of their own, judged alike; what is no length stays', () => {
    const curves = all.flatMap(({ made }) => made.flatMap(({ curve }) => (curve ? [curve] : [])));
    // Of each unit, how much of it is one inch unit, by the definition of the inch (25.4 mm).
    const inInches: Record<string, number> = { in: 25_400, thou: 25.4, tenths: 2.54 };
    let lengths = 0;
    for (const curve of curves) {
      expect(curveIn(curve, 'metric')).toBe(curve);
      expect(curveIn(curve, 'both')).toBe(curve);
      const inch = curveIn(curve, 'inch');
      if (curve.up.unit !== 'µm') {
        expect(inch).toBe(curve);
        continue;
      }
      lengths++;
      const by = inInches[inch.up.unit] ?? Number.NaN;
      for (const [i, y] of curve.right.entries()) {
        expect((inch.right[i] ?? 0) * by).toBeCloseTo(y, 9);
        expect(curveY(inch, inch.right[i] ?? 0)).toBeCloseTo(curveY(curve, y), 9);
      }
      expect(judgeCurve(inch, inch.right)).toEqual(judgeCurve(curve, curve.right));
      for (const { at, says } of inch.slips) expect(judgeCurve(inch, at).says).toContain(says);
      expect(curveSvg(inch)).toMatch(/, (?:thou|tenths)</);
      expect(curveSvg(inch)).not.toMatch(/µm|NaN/);
    }
    expect(lengths).toBeGreaterThanOrEqual(2);
  });

  it('as curves have their axes on paper, empty, and every value on them', () => {
    for (const { file, text } of CHAPTERS) {
      const { html, model } = press(text, file);
      const curves = model.predictions.flatMap(({ curve }) => (curve ? [curve] : []));
      expect([...html.matchAll(/class="curve-picture"/g)].length, file).toBe(curves.length);
      expect(html, file).not.toMatch(/data-yours|data-point/);
      for (const curve of curves)
        for (const [i, y] of curve.right.entries()) {
          const at = curveY(curve, y);
          expect(valueAt(curve, at)).toBeCloseTo(y, 6);
          expect(curveX(curve, curve.places[i] ?? 0)).toBeGreaterThan(0);
        }
    }
  });
});
