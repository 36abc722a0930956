/** What is asked of the feet in words, and what is said where their threads do not reach. */
import { WORDS } from '#words/figures/levelling-plate.ts';
import { at } from '../../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../../input/format.ts';
import type { PlateState, Round } from './rounds.ts';

/** What one foot is to be turned in this round. */
export const orderText = ({ order, levelling, rooms }: Round, index: number, k: number): string => {
  const [move, room] = [at(levelling.moves, index), at(rooms, index)];
  if (order.kind !== 'too far') return turnText(move.wholeSteps, k);
  return move.turns > room.clockwise || -move.turns > room.anticlockwise ? WORDS.tooFar : WORDS.wait;
};

/** Whole steps with their sense. */
export const turnText = (steps: number, k: number): string => WORDS.order(numeral(Math.abs(steps)), steps, k);

/** The same under the mark of the foot on the plan, where an arrow tells the sense. */
export const orderLabel = (round: Round, index: number, k: number): string => {
  const steps = at(round.levelling.moves, index).wholeSteps;
  if (round.order.kind === 'too far') return orderText(round, index, k);
  return WORDS.orderLabel(numeral(Math.abs(steps)), steps, k);
};

/** The steps a foot is really turned in this round: none where the threads do not reach. */
export const orderedSteps = ({ order, levelling }: Round, index: number): number =>
  order.kind === 'too far' ? 0 : at(levelling.moves, index).wholeSteps;

/** Turns that a foot still has, anticlockwise and clockwise. */
export const roomText = ({ rooms }: Round, index: number): string => {
  const { anticlockwise, clockwise } = at(rooms, index);
  const turns = (n: number) => (n < 5e-4 ? '0' : numeral(n, 3));
  return WORDS.range(`${anticlockwise < 5e-4 ? '' : '−'}${turns(anticlockwise)}`, withSign(turns(clockwise)));
};

/** Where the feet have not the turns for what was asked: how it is shared instead, or that it can't be done and what will. Empty otherwise. */
export const roomSentence = (s: PlateState, view: UnitView): string => {
  const { order } = s.now;
  const motion = (z: number) => show(z, { shown: 'motion', digits: 3 }, view);
  const turns = (z: number) => show(z / Math.abs(s.Delta), { shown: 'turns', digits: 3 }, 'metric');
  if (order.kind === 'as asked') return '';
  if (order.kind === 'shared')
    return WORDS.shared({
      keptFoot: s.kept.kind === 'foot' ? s.kept.name : undefined,
      short: order.short,
      raised: order.lift > 0,
      by: motion(Math.abs(order.lift)),
    });
  const { rises, sinks, asked, there } = order.tooFar;
  return WORDS.notEnoughTurns({
    rises,
    sinks,
    asked: motion(asked),
    askedTurns: turns(asked),
    there: motion(there),
    thereTurns: turns(there),
    missingTurns: turns(asked - there),
    k: s.k,
  });
};
