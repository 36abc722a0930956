/** A design described by its parts: what it gives to the fields of every chapter, and that it is the same everywhere. */
import { describe, expect, it } from 'vitest';
import { type Springs, springForce, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { numbersOfAdjuster } from '../../widgets/assembly/adjuster/as-numbers.ts';
import { lockOfSprings } from '../../widgets/assembly/adjuster/drawn-springs.ts';
import { writeDrawnSprings } from '../../widgets/assembly/adjuster/spring-row.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { asDesign, offersOf } from '../../widgets/assembly/design-use.ts';
import { fitStateOf } from '../../widgets/assembly/fit-state.ts';
import { readInput } from '../../widgets/assembly/numbers.ts';
import { rowOfSpring, springsOf } from '../../widgets/assembly/spring/spring-of.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { adjustersIn } from '../../widgets/site/adjusters.ts';
import { CHAPTERS, FOLDER, press } from '../support/chapters.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const { adjusters } = adjustersIn(FOLDER);
const textOf = (name: string): string => adjusters.get(name) ?? '';
const SETS = CHAPTERS.flatMap(({ file, text }) => press(text, file).model.sets.map((set) => ({ file, set })));

describe.each([...adjusters.keys()])('the design %s', (name) => {
  const adjuster = valueIn(readAdjuster(textOf(name)));
  const design = asDesign({ adjuster: textOf(name) });

  it('fills its threads and lengths into every set that asks for them, with one and the same value', () => {
    let filled = 0;
    const values = new Map<string, string>();
    for (const { file, set } of SETS) {
      const offers = offersOf(design, set);
      for (const [field, { text, worked, taken }] of offers) {
        if (!taken) continue;
        if (field !== 'adjuster') expect(worked, `${file} ${set.id} ${field}`).toBe(true);
        // Where a clip or a number of springs is asked for, the springs hang at this radius; everywhere else the lock bears there.
        const of =
          field === 'r_k' && set.inputs.some((i) => i.name === 'w_n' || i.name === 'N_f')
            ? 'r_k of the springs'
            : field;
        expect(values.get(of) ?? text, `${file} ${set.id} ${field}`).toBe(text);
        values.set(of, text);
        filled++;
      }
    }
    expect(filled).toBeGreaterThan(20);
    expect(valueIn(readThread(values.get('A') ?? '')).L).toBeCloseTo(adjuster.A.thread.L, 12);
  });

  it('gives the sheet and the section the stroke it has itself', () => {
    const numbers = numbersOfAdjuster(adjuster);
    if (numbers.arrangement === undefined) return;
    const amount = (symbol: string) => {
      const set = SETS.find((s) => s.set.inputs.some((i) => i.name === symbol))?.set;
      const input = set?.inputs.find((i) => i.name === symbol);
      if (!input) throw new Error(`no chapter asks for ${symbol}`);
      return valueIn(readInput(input, numbers[symbol] ?? '', 'metric')) as number;
    };
    const fit = valueIn(
      fitStateOf(
        {
          threads: { A: adjuster.A.thread, C: (adjuster.C as NonNullable<typeof adjuster.C>).thread },
          values: {
            l_A: amount('l_A'),
            b_A: amount('b_A'),
            l_C: amount('l_C'),
            b_C: amount('b_C'),
            q_e: amount('q_e'),
          },
          choices: { arrangement: numbers.arrangement as 'in line', assembly: 'both at mid-range' },
        },
        0,
      ),
    );
    expect(fit.adjuster.stroke).toBeCloseTo(adjuster.stroke, 6);
    expect(fit.adjuster.Delta).toBeCloseTo(adjuster.Delta, 12);
  });
});

describe('a design that is no pair, or none of the arrangements', () => {
  it.each([
    'base = nut M12x1, 20 mm | turned = screw M12x1, 40 mm',
    'base = stud M12x1.75 30 mm | turned = double nut M12x1.75 18 mm, M10x1.5 15 mm, height 60 mm | carried = screw M10x1.5, thread 30 mm',
  ])('gives nothing to a page that would mix it with its own: %s', (text) => {
    const plain = text.includes('screw M12x1,');
    for (const { set } of SETS) {
      const asks = (name: string) => set.inputs.some((i) => i.name === name);
      if (asks('adjuster')) continue;
      if (asks('arrangement') || (plain && asks('C'))) expect(offersOf({ adjuster: text }, set).size, set.id).toBe(0);
    }
  });
});

const readBack = (springs: Springs, loss: number | undefined): string =>
  writeDrawnSprings(springs.drawn as NonNullable<Springs['drawn']>, {
    count: springs.count,
    between: springs.between,
    radius: springs.radius ?? 0,
    force: springs.force ?? 0,
    loss,
  });

describe('printed springs, stated by their drawing', () => {
  const DRAWN =
    '2 between base and carried, 12 N, at 15 mm, meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa';
  const text = (springs: string, lock = '') =>
    textOf('riser')
      .replace(/lock = .*\n/, '')
      .replace(/springs = .*/, `springs = ${springs}${lock && `\nlock = ${lock}`}`);
  // By hand, corners off: leg 20 − 0.513, connector 4.2 − 0.513; k = E b t³/(m l²(l + 3p)) of each.
  const [leg, connector] = [20 - 0.19 * 2.7, 4.2 - 0.19 * 2.7];
  const rate = (2077 * 10 * 2.7 ** 3) / (8 * leg ** 2 * (leg + 3 * connector));

  it('have the rate of the drawing, all together, in every chapter', () => {
    const a = valueIn(readAdjuster(text(DRAWN)));
    expect(a.springs?.rate).toBeCloseTo(2 * rate, 9);
    const numbers = numbersOfAdjuster(a);
    // Worked, not typed: to five digits.
    expect(numbers.k_s).toBe(`${Number((2 * rate).toPrecision(5))} N/mm`);
    expect(numbers.F_0).toMatch(/^\d{1,2}\.?\d{0,4} N$/);
    expect(springForce(a, 1)).toBeCloseTo(12 - 2 * rate * 0.0875, 9);
  });

  it('lock by the drawing and their pull, where no key does', () => {
    const numbers = numbersOfAdjuster(valueIn(readAdjuster(text(DRAWN))));
    // 1.759 N/mm across (chapter on printed springs), 6 N each over 40 mm, both at 15 mm: 2 × 225 × (1.759 + 0.15).
    expect(Number.parseFloat(numbers.kappa ?? '')).toBeCloseTo(2 * 225 * (1.759 + 0.15), 0);
    expect(numbers.keeper).toBe('springs');
    const keyed = numbersOfAdjuster(valueIn(readAdjuster(text(DRAWN, 'key at 12 mm, clearance 0.05 mm'))));
    expect(keyed).toMatchObject({ keeper: 'a key', g_k: '0.05 mm' });
    expect(keyed.kappa).toBeUndefined();
    // Between the carried and the turned part they keep nothing from turning with the hand.
    expect(
      numbersOfAdjuster(valueIn(readAdjuster(text(DRAWN.replace('base and', 'turned and'))))).kappa,
    ).toBeUndefined();
  });

  it('reach the jack as built, the preload and the lock by one and the same fields', () => {
    const design = asDesign({ adjuster: text(DRAWN) });
    const own = numbersOfAdjuster(valueIn(readAdjuster(text(DRAWN))));
    const asking = (name: string) =>
      SETS.filter(({ set }) => set.inputs.some((i) => i.name === name)).flatMap(({ set }) => {
        const offer = offersOf(design, set).get(name);
        return offer?.taken ? [offer.text] : [];
      });
    for (const name of ['k_s', 'F_0', 'kappa', 'keeper'] as const) {
      expect(asking(name).length, name).toBeGreaterThanOrEqual(name === 'keeper' ? 1 : 2);
      expect(new Set(asking(name)), name).toEqual(new Set([own[name]]));
    }
  });

  it('are the row that the figure of printed springs writes, and have its rate and its lock', () => {
    const values = {
      F_k: 6,
      u_f: 2,
      S_w: 0.3,
      l_f: 40,
      w_f: 24,
      b_f: 10,
      w_l: 0.45,
      E_f: 2077,
      // Enough for several shapes.
      eps_m: 0.02,
      t_e: 0.1,
      q_r: 0.09,
      t: 8760,
      N_f: 2,
      r_k: 15,
    };
    const found = valueIn(springsOf({ values, choices: { plastic: 'as measured', ranked: 'least strain' } }));
    const shapes = new Set(found.springs.map(({ design }) => design.shape));
    expect(shapes.size).toBeGreaterThan(1);
    for (const shape of shapes) {
      const best = found.springs.find(({ design }) => design.shape === shape);
      if (!best) throw new Error(shape);
      const row = rowOfSpring(best.design, found, values);
      const a = valueIn(readAdjuster(text(row.replace('springs = ', ''))));
      const springs = a.springs as NonNullable<typeof a.springs>;
      // Written to a hundredth of a millimetre.
      expect((springs.rate ?? 0) / 6, shape).toBeCloseTo(1, 2);
      expect((lockOfSprings(springs) ?? 0) / (best.lock?.kappa ?? 0), shape).toBeCloseTo(1, 1);
      expect(row).not.toMatch(/\d\.\d{3}/);
      expect(readBack(springs, springs.loss)).toBe(row);
    }
    const coil = found.coil;
    if (!coil) throw new Error('no coil');
    const row = rowOfSpring(coil, found, values);
    const { springs } = valueIn(readAdjuster(text(row.replace('springs = ', ''))));
    expect((springs?.rate ?? 0) / 6).toBeCloseTo(1, 2);
    expect(readBack(springs as NonNullable<typeof springs>, undefined)).toBe(row);
  });

  it.each([
    'row of 3 rings, radius 5.2 mm, strip 1.35 mm, high 8.25 mm, length 42.5 mm, modulus 2077 MPa',
    'row of 1 ring, radius 12.345 mm, strip 1.35 mm, high 8 mm, length 40 mm, modulus 2077 MPa',
    'row of 2 ovals, radius 4 mm, straights 9.05 mm, strip 1.35 mm, high 8 mm, length 40 mm, modulus 2077 MPa',
    'strap, span 27.1 mm, strip 1.35 mm, high 8 mm, modulus 2077 MPa',
    'coil of 5.25 turns, wire 0.8 mm, diameter 6.4 mm, length 40 mm, modulus 81370 MPa',
    'meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa',
  ])('are written with the digits that were typed: %s', (drawing) => {
    const row = `springs = 2 between base and carried, 12.5 N, at 15.05 mm, ${drawing}, loses 9.5 %`;
    const { springs } = valueIn(readAdjuster(text(row.replace('springs = ', ''))));
    expect(springs?.rate).toBeGreaterThan(0);
    expect(readBack(springs as NonNullable<typeof springs>, springs?.loss)).toBe(row);
  });

  it.each([
    ['row of 3 rings, legs 5 mm, radius 5 mm, strip 1 mm, high 8 mm, length 40 mm, modulus 2077 MPa', 'legs'],
    ['coil of 5 turns, wire 0.8 mm, length 40 mm, modulus 81370 MPa', 'lacks diameter'],
    ['span 27 mm, strip 1.35 mm, high 8 mm, modulus 2077 MPa', 'lacks strap'],
  ])('of a shape without its sizes, or with those of another, are told so: %s', (drawing, says) => {
    expect(reasonIn(readAdjuster(text(`2 at 15 mm, 12 N, ${drawing}`)))).toContain(says);
  });

  it.each([
    [DRAWN.replace(', legs 20 mm', ''), 'lacks legs'],
    [DRAWN.replace('12 N', '12 N, 3 N/mm'), 'leave out one of the two'],
    [DRAWN.replace('8 waves', '7 waves'), 'half waves'],
    [DRAWN.replace('connectors 4.2', 'connectors 0.2'), 'corner'],
    [DRAWN.replace('modulus 2077 MPa', 'modulus none'), 'springs'],
  ])('are refused with what to mend: %s', (springs, says) => {
    expect(reasonIn(readAdjuster(text(springs)))).toContain(says);
  });
});

describe('springs', () => {
  it('have the force that was set at assembly, and more or less of it as their ends part', () => {
    const riser = valueIn(readAdjuster(textOf('riser')));
    expect(springForce(riser, 0)).toBe(12);
    // The carried part sinks 87.5 µm a turn clockwise, so springs between base and carried part slacken by 0.6 N/mm of it.
    expect(springForce(riser, 1)).toBeCloseTo(12 - 0.6 * 0.0875, 9);
    const between = valueIn(readAdjuster(textOf('riser').replace('base and carried', 'turned and carried')));
    expect(springForce(between, 1)).toBeCloseTo(12 + 0.6 * 1.5, 9);
    expect(standing(riser, 0).motion).toEqual({ turned: 0, carried: 0 });
  });
});

describe('springs beside a key', () => {
  // The row of the Riser says 15 mm; its key stands at 12 mm, under the same name.
  const offered = (text: string, with_: string) => {
    const set = SETS.find(({ set: s }) => s.id === with_)?.set;
    if (!set) throw new Error(`no set ${with_}`);
    return offersOf(asDesign({ adjuster: text }), set).get('r_k')?.text;
  };
  it('are taken from their own row where springs are asked for', () => {
    expect(offered(textOf('riser'), 'spring')).toBe('15 mm');
    expect(offered(textOf('riser').replace(', at 15 mm', ''), 'spring')).toBeUndefined();
  });
});
