/**
 * Travel: how far a pair goes before a thread runs out, and what each millimetre of stroke eats.
 *
 * Per turn the turned part uses L_A of thread A and L_C of thread C, whatever the hands; X is the length of
 * thread that may be used up before engagement falls below the least the maker accepts (common practice, no
 * source: about one diameter for steel in steel under load, half of it for a light adjuster). Lengths mm, n in turns.
 */
import { mm, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';

export const turnsAvailable = relation({
  name: 'turns-available',
  says: 'Turns available until the first of the two threads has used its length.',
  takes: ['X_A', 'L_A', 'X_C', 'L_C'],
  gives: { n_max: 'min(X_A/L_A, X_C/L_C)' },
  source: 'Geometry: each thread uses its own lead per turn.',
  compute: ({ X_A, L_A, X_C, L_C }) => ({ n_max: turns(Math.min(X_A / L_A, X_C / L_C)) }),
});

export const stroke = relation({
  name: 'stroke',
  says: 'Stroke of the carried part over the turns available.',
  takes: ['n_max', 'Delta'],
  gives: { S: 'n_max*abs(Delta)' },
  source: 'Net lead times turns.',
  compute: ({ n_max, Delta }) => ({ S: mm(n_max * Math.abs(Delta)) }),
});

export const threadEaten = relation({
  name: 'thread-eaten',
  says: 'Length of a thread used for a wanted motion of the carried part.',
  takes: ['w', 'G'],
  gives: { X: 'abs(w)*G' },
  source: 'Each unit of stroke uses the gain in thread.',
  compute: ({ w, G }) => ({ X: mm(Math.abs(w) * G) }),
});
