/** What is asked of the feet in words, and what is said where their threads do not reach. */
import { at } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import type { PlateState, Round } from './rounds.ts';
import { stepWord, turnText } from './step-words.ts';

/** What one foot is to be turned in this round. */
export const orderText = ({ order, levelling, rooms }: Round, index: number, k: number): string => {
  const [move, room] = [at(levelling.moves, index), at(rooms, index)];
  if (order.kind !== 'too far') return turnText(move.wholeSteps, k);
  return move.turns > room.clockwise || -move.turns > room.anticlockwise ? 'too far' : 'wait';
};

/** The same under the mark of the foot on the plan, where an arrow tells the sense. */
export const orderLabel = (round: Round, index: number, k: number): string => {
  const steps = at(round.levelling.moves, index).wholeSteps;
  if (round.order.kind === 'too far') return orderText(round, index, k);
  return steps === 0 ? 'stays' : `${numeral(Math.abs(steps))} ${stepWord(k, steps)}`;
};

/** The steps a foot is really turned in this round: none where the threads do not reach. */
export const orderedSteps = ({ order, levelling }: Round, index: number): number =>
  order.kind === 'too far' ? 0 : at(levelling.moves, index).wholeSteps;

/** Turns that a foot still has, anticlockwise and clockwise. */
export const roomText = ({ rooms }: Round, index: number): string => {
  const { anticlockwise, clockwise } = at(rooms, index);
  const turns = (n: number) => (n < 5e-4 ? '0' : numeral(n, 3));
  return `${anticlockwise < 5e-4 ? '' : '−'}${turns(anticlockwise)} to ${withSign(turns(clockwise))}`;
};

/** Where the feet have not the turns for what was asked: how it is shared instead, or that it can't be done and what will. Empty otherwise. */
export const roomSentence = (s: PlateState, view: UnitView): string => {
  const { order } = s.now;
  const motion = (z: number) => show(z, { shown: 'motion', digits: 3 }, view);
  const turns = (z: number) => show(z / Math.abs(s.Delta), { shown: 'turns', digits: 3 }, 'metric');
  if (order.kind === 'as asked') return '';
  if (order.kind === 'shared') {
    const what = s.kept.kind === 'foot' ? `With foot ${s.kept.name} left as it is` : 'With the mean height kept';
    return `${what}, foot ${order.short} would run out of thread. So the whole plate is ${order.lift > 0 ? 'raised' : 'lowered'} by ${motion(Math.abs(order.lift))} besides, and all three feet share the turning.`;
  }
  const { rises, sinks, asked, there } = order.tooFar;
  return (
    `The feet do not have enough turns for this: foot ${rises} has to rise ${motion(asked)} against foot ${sinks}, which is ${turns(asked)}; ` +
    `from where they stand the two can move ${motion(there)} against one another in whole ${stepWord(s.k, 2)}, which is ${turns(there)}. ` +
    `At no height of the plate does it fit; ${turns(asked - there)} are missing. Turn no foot yet. ` +
    'Bring the plate roughly level first, with packing under the low foot or with the feet in coarse mode; then read again.'
  );
};
