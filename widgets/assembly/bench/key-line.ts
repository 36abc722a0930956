/** What a teacher is told of a hidden fault: one line. */
import { BENCH } from '#words/bench.ts';
import { show, type UnitView } from '../../input/format.ts';
import type { Bench, Fault } from './hidden-fault.ts';

const SHOWN = {
  'lead error': 'percent',
  wave: 'motion',
  lean: 'degrees',
  'loose lock': 'degrees',
  'side push': 'force',
  'gauge off its axis': 'degrees',
  'warm hand': 'K',
  'worn flank': 'motion',
} as const satisfies Record<Fault, unknown>;

export const keyLine = ({ seed, hidden: { fault, size } }: Bench, view: UnitView): string =>
  BENCH.key(seed, fault, show(size, { shown: SHOWN[fault], digits: 2 }, view));
