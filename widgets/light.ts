/** Widgets that every page's own script carries. */
import { dividedTurn } from './divided-turn/divided-turn.ts';
import { fitSection } from './fit-section/fit-section.ts';
import { flanksUnderLoad } from './flanks-under-load/flanks-under-load.ts';
import { ramp } from './ramp/ramp.ts';
import { section } from './section/section.ts';
import type { Widget } from './shared/widget.ts';
import { threadEatenFigure } from './thread-eaten/thread-eaten.ts';
import { threadLimits } from './thread-limits/thread-limits.ts';

export const LIGHT: readonly Widget[] = [
  ramp,
  section,
  dividedTurn,
  threadEatenFigure,
  fitSection,
  threadLimits,
  flanksUnderLoad,
];
