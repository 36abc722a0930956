/**
 * A ball pressed into a hexagon socket to make a tip.
 *
 * Equation: diametral interference I = ball diameter − width across flats. The ball touches the six flats at six small places; each
 * takes I/2. The force to press it is not computed: it is far past first yield.
 * Source: geometry; the 6 mm socket with a 6.35 mm ball is common practice, no source. Units: mm.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';

export const ballInterference = relation({
  name: 'ball-interference',
  says: 'Interference of a ball pressed into a hexagon socket, across two flats; below zero it is loose.',
  takes: ['D_b', 's_f'],
  gives: { I_b: 'D_b - s_f' },
  source: 'Definition: ball diameter less the width across flats.',
  compute: ({ D_b, s_f }) => ({ I_b: mm(D_b - s_f) }),
});
