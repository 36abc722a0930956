/**
 * The figures of play against the engine: flanks that change sides thread by thread, the loop of reversal with and without a
 * load that keeps its sign, and the simulated build, whole or in slices.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { pairPlay } from '../../widgets/assembly/pair-play.ts';
import { mm, type PlayBatch, playBatch, turnsLost } from '../../widgets/engine/index.ts';
import { changes, standAt } from '../../widgets/figures/flanks-under-load/stand.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { askedBy, type BatchNumbers, SAMPLE } from '../../widgets/figures/play-batch/play-batch.ts';
import { startBatch } from '../../widgets/figures/play-batch/run-batch.ts';
import { joined, traceThrough } from '../../widgets/figures/reversal-loop/runs.ts';
import type { OptionOf } from '../../widgets/input/choices.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf, thread } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const named = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};
const flanks = named('flanks-under-load');
const loop = named('reversal-loop');
const batch = named('play-batch');

const plainly = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');
const drawn = (widget: Figure, numbers: Numbers): Document => picture(valueIn(still(widget).draw(numbers, 'metric')));

const FOOT = { A: 'M10x1.5-6H/6g', C: '3/8-16 UNC-2B/2A' };
const foot = (values: Numbers['values'] = {}, choices: Numbers['choices'] = {}, threads = FOOT): Numbers =>
  numbersOf(
    threads,
    { Q_pt: 5, Q_pc: 8, Q_f: 1, n_o: 4, n: 0, c_mA: 0.1, c_mC: 0.1, ...values },
    { pieces: 'tightest', ...choices },
  );
const pair = (threads = FOOT) => ({ A: thread(threads.A), C: thread(threads.C) });
const playOf = (pieces: OptionOf<'pieces'>, measured: { c_mA?: number; c_mC?: number } = {}, threads = FOOT) =>
  pairPlay({ threads: pair(threads), values: { c_mA: 0.1, c_mC: 0.1, ...measured }, choices: { pieces } });
const footPlay = (pieces: OptionOf<'pieces'> = 'tightest') => valueIn(playOf(pieces));

describe('pairPlay', () => {
  it('of the Foot is 37.5 µm at its tightest and 365.8 µm at its loosest: 0.43 to 4.2 turns', () => {
    const at = (pieces: OptionOf<'pieces'>) => {
      const { A, C, lost } = footPlay(pieces);
      return [((A.j + C.j) * 1000).toFixed(1), lost.toFixed(2)];
    };
    expect(at('tightest')).toEqual(['37.5', '0.43']);
    expect(at('loosest')).toEqual(['365.8', '4.18']);
    expect(at('middling')).toEqual(['201.7', '2.30']);
  });

  it('of the Fine foot costs 4.4 to 43 turns', () => {
    const lost = (pieces: OptionOf<'pieces'>) => valueIn(playOf(pieces, {}, { A: 'M4x0.7', C: '8-36 UNF' })).lost;
    expect(lost('tightest').toFixed(2)).toBe('4.40');
    expect(lost('loosest').toFixed(1)).toBe('42.9');
  });

  it('takes measured clearances in place of the classes, and calls one below nought interference', () => {
    const play = valueIn(playOf('as measured', { c_mA: 0.2, c_mC: 0.1 }));
    expect(play.A.j / play.C.j).toBeCloseTo(2, 12);
    expect(reasonIn(playOf('as measured', { c_mA: -0.02 }))).toBe(
      'Thread A has a clearance of −0.02 mm, which is interference: the screw is larger than the nut and does not go in, so there is no play; give a clearance of 0 mm or more.',
    );
  });
});

describe('flanks-under-load', () => {
  const seatsAt = (Q_pc: number, Q_pt = 5) => {
    const stand = valueIn(standAt(footPlay(), Q_pt, Q_pc));
    return [stand.flankA, stand.flankC];
  };

  it('changes sides thread by thread as the force goes through nought: C first, A when the spring is undone', () => {
    expect([8, 1, -1, -4, -6, -12].map((Q) => seatsAt(Q))).toEqual([
      [1, 1],
      [1, 1],
      [1, -1],
      [1, -1],
      [-1, -1],
      [-1, -1],
    ]);
    expect(changes(5)).toEqual([
      { thread: 'A', at: -5 },
      { thread: 'C', at: 0 },
    ]);
  });

  it('changes A before C under a spring that lifts, and both together without one', () => {
    expect([12, 4, -3].map((Q) => seatsAt(Q, -8))).toEqual([
      [1, 1],
      [-1, 1],
      [-1, -1],
    ]);
    expect([1, -1].map((Q) => seatsAt(Q, 0))).toEqual([
      [1, 1],
      [-1, -1],
    ]);
  });

  it('leaves a thread free that nothing presses', () => expect(seatsAt(0)).toEqual([1, 0]));

  it('moves the carried part by both plays from end to end, one play at a time', () => {
    const play = footPlay();
    const at = (Q_pc: number) => valueIn(standAt(play, 5, Q_pc)).carried;
    expect(at(-3) - at(3)).toBeCloseTo(play.C.j, 12);
    expect(at(-8) - at(-3)).toBeCloseTo(play.A.j, 12);
  });

  it('draws contact as a mark on one flank of each thread, and the gap beside the other', () => {
    const read = (Q_pc: number) => {
      const document = drawn(flanks, foot({ Q_pc }));
      return Object.fromEntries(
        (['A', 'C'] as const).map((name) => [
          name,
          (['upper', 'lower'] as const).map((side) => [
            attribute(document, `[data-path="${name}-${side}-contact"]`, 'd') !== '',
            `${textOf(document, `[data-gap="${name}-${side}"]`)} ${textOf(document, `[data-amount="${name}-${side}"]`)}`.trim(),
          ]),
        ]),
      );
    };
    // Pressed towards the base, the ridge of the turned part touches the base below it and the carried part above it.
    const open = (amount: string) => [false, `open by ${amount}`];
    const closed = [true, 'touches'];
    expect(read(8)).toEqual({ A: [open('18.5 µm'), closed], C: [closed, open('19.1 µm')] });
    expect(read(-3)).toEqual({ A: [open('18.5 µm'), closed], C: [open('19.1 µm'), closed] });
    expect(read(-9)).toEqual({ A: [closed, open('18.5 µm')], C: [open('19.1 µm'), closed] });
  });

  it('draws the gap in the lens as large as the magnification it states', () => {
    const document = drawn(flanks, foot());
    const play = footPlay();
    const at = (path: string) => pointsOf(attribute(document, `[data-path="${path}"]`, 'd')).slice(0, 2);
    const gap = (name: string, side: string) =>
      Math.abs((at(`${name}-${side}-screw`)[0]?.[1] ?? 0) - (at(`${name}-${side}-nut`)[0]?.[1] ?? 0));
    const times = Number(/(\d+) times/.exec(plainly(textOf(document, '.readout')))?.[1]);
    // Sections: three pitches of the coarser thread on 228 pixels.
    const scale = 228 / (3 * 1.5875);
    expect(gap('A', 'upper')).toBeCloseTo(play.A.j * scale * times, 1);
    expect(gap('C', 'lower')).toBeCloseTo(play.C.j * scale * times, 1);
    expect(gap('A', 'lower')).toBeCloseTo(0, 2);
    expect(gap('A', 'upper')).toBeGreaterThan(15);
  });

  it('says the same in sentence and table, and refuses interference', () => {
    const says = plainly(still(flanks).caption(foot({ Q_pc: -3 }), 'metric'));
    expect(says).toContain(
      'With −3 N across thread C the pulled flank of the carried part touches; with +2 N across thread A the pressed flank of the turned part touches.',
    );
    expect(says).toContain('C changes flanks at 0 N and A at −5 N');
    const rows = still(flanks)
      .table(foot(), 'metric')
      .rows.map((r) => plainly(r.join(' | ')));
    expect(rows).toContain(
      'force −5 N to 0 N | A: the pressed flank of the turned part touches | C: the pulled flank of the carried part touches | carried part at 0.2944 µm',
    );
    expect(reasonIn(still(flanks).draw(foot({ c_mC: -0.01 }, { pieces: 'as measured' }), 'metric'))).toContain(
      'interference',
    );
  });
});

describe('reversal-loop', () => {
  const across = (load: number, friction: number, pieces: OptionOf<'pieces'> = 'middling') => {
    const play = footPlay(pieces);
    const trace = valueIn(traceThrough(play, { load, friction }, [0, 4, 0, 4]));
    return { play, trace };
  };

  it('is as wide as both plays with friction alone, and as the turns lost it crosses', () => {
    const { play, trace } = across(0, 1);
    const size = (trace.n.length - 1) / 3;
    const [out, back] = [trace.reading[size / 2] ?? 0, trace.reading[1.5 * size] ?? 0];
    expect(back - out).toBeCloseTo(Math.min(play.A.j + play.C.j, 2 * 0.0875), 9);
    // The reading stands still until the turns lost are made good.
    const still = trace.n.filter((n, i) => i >= size && i <= 2 * size && 4 - n < play.lost - 4 / size);
    for (let i = 0; i < still.length; i++) expect(trace.reading[size + i]).toBeCloseTo(4 * 0.0875, 9);
    expect(trace.reading[2 * size]).toBeCloseTo(4 * 0.0875 - (4 - play.lost) * 0.0875, 9);
  });

  it('is one line under a load that keeps its sign and beats the friction, pressing or pulling, whatever the play', () => {
    for (const load of [-8, 8])
      for (const pieces of ['tightest', 'loosest'] as const) {
        const { trace } = across(load, 1, pieces);
        const size = (trace.n.length - 1) / 3;
        for (let i = 0; i <= size; i++) expect(trace.reading[2 * size - i]).toBeCloseTo(trace.reading[i] ?? 0, 9);
        expect(trace.reading[size]).toBeCloseTo(4 * 0.0875, 9);
      }
  });

  it('opens again, all the way, when the load is a little less than the friction', () => {
    const { trace: loose } = across(0, 1);
    const { trace: weak } = across(0.9, 1);
    expect(weak.reading).toEqual(loose.reading);
  });

  it('follows any turning to the same readings as the whole loop', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4, noNaN: true }), (n) => {
        const { play, trace } = across(0, 1);
        const size = (trace.n.length - 1) / 3;
        const back = valueIn(traceThrough(play, { load: 0, friction: 1 }, [0, 4, n], 7)).reading.at(-1) ?? 0;
        const expected = Math.min(4 * 0.0875, (n + play.lost) * 0.0875);
        expect(back).toBeCloseTo(expected, 9);
        expect(trace.reading[size]).toBeCloseTo(4 * 0.0875, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('joins turning one way to one run and keeps every reversal', () => {
    const turned = [0.5, 1, 2, 1.5, 1, 3, 3].reduce<readonly number[]>(joined, [0]);
    expect(turned).toEqual([0, 2, 1, 3]);
  });

  it('draws both loops apart by dash and mark, with the turns lost beside them', () => {
    const document = drawn(loop, foot({}, { pieces: 'middling' }));
    const [loose, loaded] = ['loose', 'loaded'].map((name) =>
      pointsOf(attribute(document, `[data-loop="${name}"]`, 'd')),
    );
    expect(loose?.length).toBe(289);
    expect(loose).not.toEqual(loaded);
    expect(plainly(document.body.textContent ?? '')).toContain('lost on reversal2.30 turns');
    const says = plainly(still(loop).caption(foot({}, { pieces: 'middling' }), 'metric'));
    expect(says).toContain('follows after 2.30 turns (13.8 flats)');
    expect(says).toContain('nothing is lost to play');
    expect(plainly(still(loop).caption(foot({}, { pieces: 'loosest' }), 'metric'))).toContain(
      'not at all within these 4 turns',
    );
  });

  it('refuses leads so near that a reversal would be endless', () => {
    const refused = (A: string, C: string, pieces: OptionOf<'pieces'>) =>
      reasonIn(still(loop).draw(foot({}, { pieces }, { A, C }), 'metric'));
    expect(refused('M10', 'M12x1.5', 'tightest')).toContain('The two leads are equal');
    expect(refused('12 mm x 1 mm', '12 mm x 1.0001 mm', 'loosest')).toContain(
      'take threads whose leads differ by more',
    );
  });
});

describe('play-batch', () => {
  const build = (values: Partial<BatchNumbers['values']> = {}, law: OptionOf<'law'> = 'normal'): BatchNumbers => ({
    threads: pair(),
    values: { n_a: 1_000_000, C_p: 1.33, n_s: 2026, k: 6, ...values },
    choices: { law },
  });

  it('draws a sample at once, says that it is one, and gives its figures in µm, flats and turns by the relations', () => {
    const { settings, Delta } = valueIn(askedBy(build()));
    const sample = valueIn(playBatch({ ...settings, count: SAMPLE }));
    const median = sample.drawn?.quantiles[1]?.play ?? mm(0);
    const turns = valueIn(turnsLost.of({ j_A: median, j_C: mm(0), Delta })).n_j;
    const document = drawn(batch, build());
    const row = [...document.querySelectorAll('.batch-result tbody tr')].find((r) =>
      r.textContent?.startsWith('median'),
    );
    expect([...(row?.querySelectorAll('td') ?? [])].map((c) => plainly(c.textContent ?? ''))).toEqual([
      `${(median * 1000).toFixed(1)} µm`,
      (turns * 6).toFixed(1),
      turns.toFixed(2),
    ]);
    expect(plainly(still(batch).caption(build(), 'metric'))).toContain(
      'A first sample of 20 000; the batch of 1 000 000 has not been drawn yet',
    );
    expect(still(batch).table(build(), 'metric').rows.length).toBe(65);
  });

  it('has the limits of the tables whatever the law: 37.54 to 365.8 µm', () => {
    for (const law of ['uniform', 'normal', 'normal, gauged'] as const) {
      const rows = still(batch)
        .table(build({}, law), 'metric')
        .rows.map((r) => plainly(r[0] ?? ''));
      expect(rows[0]).toBe('least that the limits allow: 37.54 µm');
      expect(rows[4]).toBe('most that the limits allow: 365.8 µm');
    }
  });

  it('in slices on the page is the batch at one go, and tells its progress', async () => {
    const { settings } = valueIn(askedBy(build({ n_a: 300_000 }, 'uniform')));
    const shares: number[] = [];
    const whole = await new Promise<PlayBatch>((done, failed) => {
      startBatch(settings, {
        progress: (share) => shares.push(share),
        done: (result, where) => {
          expect(where).toBe('page');
          done(result);
        },
        refused: (reason) => failed(new Error(reason)),
      });
    });
    expect(whole).toEqual(valueIn(playBatch(settings)));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  it('stops when told to and never reports again', async () => {
    const { settings } = valueIn(askedBy(build({ n_a: 5_000_000 })));
    let told = 0;
    const stop = startBatch(settings, {
      progress: () => told++,
      done: () => {
        throw new Error('it went on');
      },
      refused: () => told++,
    });
    await new Promise((wait) => setTimeout(wait, 40));
    stop();
    const before = told;
    await new Promise((wait) => setTimeout(wait, 60));
    expect(told).toBe(before);
  });

  it('refuses a milliard of assemblies and a capability of nought, each with its reason', () => {
    expect(reasonIn(still(batch).draw(build({ n_a: 1e9 }), 'metric'))).toBe(
      'Number of assemblies: read 1000000000; give a whole number from 1 to 10000000, more would change no figure that can be measured.',
    );
    expect(reasonIn(still(batch).draw(build({ C_p: 0 }), 'metric'))).toContain(
      'a capability of zero is a spread without bound',
    );
  });
});
