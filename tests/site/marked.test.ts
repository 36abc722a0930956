/** What a chapter states of the parts as built says where it comes from: nothing that decides a verdict is made up in silence. */
import { describe, expect, it } from 'vitest';
import { blocksOf, CHAPTERS } from '../support/chapters.ts';

/** What the reader chooses to do, which is no property of a part. */
const CHOSEN = ['Q_y', 'y_b', 'F', 'n_o'];
const MARK = /\((?:from the drawing|from their drawing|measured|assumption[^)]*|standard[^)]*)\)/;

const lines = (figure: string): readonly string[] => {
  const blocks = CHAPTERS.flatMap(({ text }) => blocksOf(text, 'figure')).filter(({ info }) =>
    info.startsWith(`figure ${figure} `),
  );
  return blocks.flatMap((block) => block.lines).filter((line) => /^\w+ = [-\d]/.test(line));
};

describe('starting values of the jack as built', () => {
  it('are marked as measured, from a drawing, standard or assumed, every one', () => {
    const stated = lines('pushed-jack').filter((line) => !CHOSEN.includes(line.split(' ')[0] ?? ''));
    expect(stated.length).toBeGreaterThan(25);
    expect(stated.filter((line) => !MARK.test(line))).toEqual([]);
  });

  it('of the design sheet are too, but for what is wanted of it and what it carries', () => {
    const wanted = ['k_d', 'S_w', 's_w', 'e_w', 'H_w', 'W_c', 'F_lo', 'F_hi'];
    const stated = lines('design-sheet').filter((line) => !wanted.includes(line.split(' ')[0] ?? ''));
    expect(stated.length).toBeGreaterThanOrEqual(44);
    expect(stated.filter((line) => !MARK.test(line))).toEqual([]);
    // What decides whether a pair stalls is not judged at all until it is measured.
    expect(CHAPTERS.flatMap(({ text }) => text.match(/^periodic = .*$/gm) ?? [])).toEqual([
      'periodic = not measured',
      'periodic = not measured',
    ]);
  });

  it('of coats, leads, waves, rings and plates are too', () => {
    const named = (figure: string, names: RegExp) => lines(figure).filter((line) => names.test(line));
    const stated = [
      ...named('coated-thread', /^(t_z|c) = /),
      ...named('foot-on-plane', /^(R_o|R_i|mu|s_c) = /),
      ...named('plate-modes', /^(k_j|w_x|w_y) = /),
    ];
    expect(stated).toHaveLength(9);
    expect(stated.filter((line) => !MARK.test(line))).toEqual([]);
  });

  it('of the set-up of a calibration are too, where they make its ±', () => {
    const setUp = lines('calibration').filter((line) => /^(q_g|theta_i|a_o|theta_c|e_d|e_rp) = /.test(line));
    expect(setUp.length).toBeGreaterThanOrEqual(6);
    expect(setUp.filter((line) => !MARK.test(line))).toEqual([]);
  });
});
