/** What the room of contact says of a ball in its seat. Loads N, as the engine holds them. */
import { type SeatContact, say } from '../../engine/index.ts';

/** Whether a contact is still elastic, and what that means for its numbers. */
export const seatText = ({ state, yieldLoad }: Pick<SeatContact, 'state' | 'yieldLoad'>): string =>
  state === 'elastic'
    ? `Elastic: first yield would come at ${say(yieldLoad, 3)} N.`
    : `Past first yield, which came at ${say(yieldLoad, 3)} N: the elastic result no longer holds and the true sink is larger. A lasting dent is very small at first; far above this load you can see it.`;
