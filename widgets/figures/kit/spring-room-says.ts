/** The one sentence on the room that drawn springs have, wherever it is said. */
import { WORDS } from '#words/adjuster.ts';
import type { SpringRoom } from '../../assembly/adjuster/spring-room.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';

export const roomSays = (room: SpringRoom, view: UnitView): string => {
  const size = (x: number): string => show(x, { shown: 'size', digits: 3 }, view);
  const percent = (x: number): string => `${numeral(100 * x, 2)}\u00a0%`;
  const says = WORDS.springRoom;
  if (room.fits)
    return says.fits(
      Number.isFinite(room.clear) ? size(room.clear) : '',
      size(room.least),
      size(room.most),
      room.strain === undefined ? '' : percent(room.strain),
    );
  switch (room.why) {
    case 'folds':
      return says.folds(size(room.length), size(room.room));
    case 'gap':
      return says.gap(size(room.wanted), size(room.is));
    case 'slack':
      return says.slack(numeral(Math.abs(room.n), 3), room.n > 0);
    case 'strain':
      return says.strain(percent(room.strain), percent(room.limit));
    case 'part':
      return says.part(room.part, size(-room.by), size(room.radius));
    case 'each other':
      return says.eachOther(size(room.width), size(room.room));
    case 'above':
      return says.above(size(room.by));
    case 'below':
      return says.below(size(room.by));
  }
};
