/** Widgets that every page's own script carries: those of the first chapters, small and alive at once. */
import { dividedTurn } from './divided-turn/divided-turn.ts';
import { ramp } from './ramp/ramp.ts';
import { section } from './section/section.ts';
import type { Widget } from './shared/widget.ts';
import { threadEatenFigure } from './thread-eaten/thread-eaten.ts';

export const LIGHT: readonly Widget[] = [ramp, section, dividedTurn, threadEatenFigure];
