/** The bank of the chapters as they stand, and one small bank that never changes. */
import { type Bank, makeBank } from '../../widgets/exercises/bank.ts';
import type { Exercise } from '../../widgets/exercises/exercise.ts';
import { type Adjusters, NO_ADJUSTERS } from '../../widgets/site/adjusters.ts';
import { createDiagnostics } from '../../widgets/site/diagnostics.ts';
import { readExercise } from '../../widgets/site/exercise-block.ts';
import { wholeBook } from './chapters.ts';

/** Reads a block as the press does; its mistakes are thrown, since these tests are about sound ones. */
export const exerciseFrom = (info: string, body: string, adjusters: Adjusters = NO_ADJUSTERS): Exercise => {
  const [, id = '', title = ''] = /^exercise ([a-z0-9-]+): (.*)$/.exec(info) ?? [];
  const book = createDiagnostics('test');
  const block = readExercise(id, title, body, 2, book, adjusters);
  if (!block) throw new Error(book.mistakes.map((m) => m.says).join('\n'));
  return block.exercise;
};

export const mistakesOf = (body: string): string[] => {
  const book = createDiagnostics('test');
  readExercise('tried', 'Tried', body, 2, book);
  return book.mistakes.map((m) => `${m.line}: ${m.says}`);
};

export const BANK: Bank = wholeBook().bank;

export const EXERCISES: readonly Exercise[] = BANK.chapters.flatMap((c) => c.exercises);

export const PAIR = `thread A = one of M8x1.25, M10x1.5, M12x1.75
thread C = one of 5/16-18 UNC, 3/8-16 UNC, 7/16-14 UNC
n = one of 1/2 turn, 1 turn, 2 turns
Threads {A} and {C}, turned by {n}. How far?
net-lead # Per turn.
net-motion # Times the turns.
answer in µm, 3 digits
slip = (L_C + L_A)*n # You added the leads.
slip net-motion(Delta = L_C) # One pitch only.
hint Subtract {A} from {C}.`;

export const SMALL: Bank = makeBank([
  { slug: 'pairs', title: 'Pairs', exercises: [exerciseFrom('exercise pair: A pair', PAIR)] },
]);
