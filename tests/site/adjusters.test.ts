/** Adjusters written once and named by chapters: what a line stands for, and what is told of a name or number that is not there. */
import { describe, expect, it } from 'vitest';
import { standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { BALLS, SOCKETS } from '../../widgets/engine/index.ts';
import { adjustersIn, withAdjuster } from '../../widgets/site/adjusters.ts';
import { CHAPTERS, FOLDER, mistakesIn, press } from '../support/chapters.ts';
import { startOf } from '../support/figure-numbers.ts';
import { valueIn } from '../support/results.ts';

const { adjusters } = adjustersIn(FOLDER);

describe('adjusters of the book', () => {
  it('can all be put together', () => {
    expect(adjusters.size).toBeGreaterThanOrEqual(4);
    for (const [name, text] of adjusters) expect(readAdjuster(text).ok, name).toBe(true);
  });

  it('have no ball that the chapter on the tip would not let one press: a size that is sold, 0.35 mm over the narrowest socket at most, and tight in the widest', () => {
    let pressed = 0;
    for (const [name, text] of adjusters) {
      const { tip } = valueIn(readAdjuster(text));
      if (tip.kind !== 'ball' || tip.hexagon === undefined) continue;
      pressed++;
      expect(
        BALLS.map((ball) => ball.diameter),
        name,
      ).toContain(tip.diameter);
      const { flats } = SOCKETS.find((socket) => socket.key === tip.hexagon) ?? { flats: [0, 99] as const };
      for (const across of [tip.hexagon, flats[0]]) expect(tip.diameter - across, name).toBeLessThanOrEqual(0.35);
      expect(tip.diameter, name).toBeGreaterThan(flats[1]);
    }
    expect(pressed).toBeGreaterThan(0);
  });

  it('are one model each: where chapters state lengths of the Foot, these are those of its record in the middle of its range', () => {
    const foot = valueIn(readAdjuster(adjusters.get('foot') ?? ''));
    const { at, engaged, height } = standing(foot, 0);
    // Each thread is engaged from where its upper part begins, or stands, up to where its lower part ends.
    const lower = foot.base.above?.to ?? Number.NaN;
    const [topOfC, C] = [at.turned + (foot.turned.above?.to ?? Number.NaN), engaged.C ?? Number.NaN];
    const [H_A, H_C] = [at.base + lower - engaged.A / 2, topOfC - C / 2];
    const { values } = startOf('pushed-jack').numbers as { values: Record<string, number> };
    const stated = { l_eA: engaged.A, l_eC: C, H_A, H_C, H_t: height, y_b: height, R: 6.35 / 2 };
    for (const [name, is] of Object.entries(stated)) expect(values[name], name).toBeCloseTo(is, 1);
    const pushed = CHAPTERS.find(({ file }) => file.includes('pushed-from-the-side'))?.text ?? '';
    for (const block of ['small-push', 'thread-bears']) {
      const lines = pushed.slice(pushed.search(new RegExp(`^\x60{3}\\w+ ${block}`, 'm')));
      const read = (name: string) => Number(new RegExp(`^${name} = ([\\d.]+) mm`, 'm').exec(lines)?.[1]);
      expect(read('l_e'), block).toBeCloseTo(C, 1);
      expect(read('y'), block).toBeCloseTo(height - H_C, 1);
    }
  });

  it('stand for their threads, for the numbers named, or for the whole description', () => {
    expect(valueIn(withAdjuster('adjuster foot', adjusters))).toEqual(['thread A = M10x1.5', 'thread C = 3/8-16 UNC']);
    expect(valueIn(withAdjuster('adjuster foot: A fit, C fit', adjusters))).toEqual([
      'thread A = M10x1.5-6H/6g',
      'thread C = 3/8-16 UNC-2B/2A',
    ]);
    expect(valueIn(withAdjuster('adjuster = none', adjusters))).toEqual(['adjuster = none']);
    expect(valueIn(withAdjuster('adjuster stop: A, l_A, X_A', adjusters))).toEqual([
      'thread A = M12x1.5',
      'l_A = 20 mm',
      'X_A = 8 mm',
    ]);
    expect(valueIn(withAdjuster('adjuster = riser', adjusters))[0]).toContain('| turned = adapter 3/8-16 UNC');
    expect(valueIn(withAdjuster('n = 1 from -4 to 4', adjusters))).toEqual(['n = 1 from -4 to 4']);
  });

  it('are told apart from what is not there', () => {
    expect(withAdjuster('adjuster hand', adjusters)).toMatchObject({ ok: false, code: 'adjuster-unknown' });
    expect(withAdjuster('adjuster foot: W', adjusters)).toMatchObject({ ok: false, code: 'adjuster-has-not' });
    const chapter = (line: string) =>
      `# A chapter\n\n\`\`\`example turn: One turn\n${line}\nnet-lead = 87.50 µm\n\`\`\`\n`;
    expect(mistakesIn(chapter('adjuster foot')).filter((m) => m.line > 1)).toEqual([]);
    expect(mistakesIn(chapter('adjuster hand'))[0]).toMatchObject({ line: 4 });
    expect(press(chapter('adjuster foot')).model.sets[0]?.inputs.map((i) => i.name)).toEqual(['A', 'C']);
  });
});
