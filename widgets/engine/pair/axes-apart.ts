/**
 * The axes of the two threads of one part, which never lie quite in one line.
 *
 * Thread C of the turned part stands beside the axis of thread A by e and leans to it by α. As the part turns, what it carries goes
 * round with it: at the height y above thread A its place is off by e and by α y, at worst both one way, so the tip goes round on a circle of
 *   r_c = e + α y
 * once a turn, and across it by twice that. It holds where nothing else guides the carried part; a guide without clearance stops the circle, and takes the force.
 * Angles are small. Source: geometry, derived here. That this is often the largest once-a-turn error of a stud threaded from both ends is common
 * practice, no source. Units: mm, rad.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';

export const tipCircle = relation({
  name: 'tip-circle',
  says: 'Circle on which the tip goes round, where the axes of the two threads lie apart and lean to each other, at worst.',
  takes: ['e_o', 'alpha_o', 'y'],
  gives: { r_c: 'e_o + alpha_o*y' },
  source: 'Small rotation about the axis of thread A; derived in axes-apart.ts.',
  compute: ({ e_o, alpha_o, y }) => ({ r_c: mm(e_o + alpha_o * y) }),
});
