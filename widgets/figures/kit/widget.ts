/**
 * What every widget is: a name, the inputs it takes, a still drawing that needs no script, one sentence and one
 * table that say the same as the drawing, and what wakes up in the browser. The build and the browser call the same
 * `draw`.
 */

import type { Numbers } from '../../assembly/numbers.ts';
import type { Result } from '../../engine/index.ts';
import type { ChoiceName } from '../../input/choices.ts';
import type { UnitView } from '../../input/format.ts';
import type { TextName } from '../../input/texts.ts';

export interface Widget {
  /** As a chapter names it. */
  readonly name: string;
  /** The accessible name of the figure. */
  readonly title: string;
  readonly threads: readonly string[];
  readonly quantities: readonly string[];
  readonly choices: readonly ChoiceName[];
  /** Lists typed as text. */
  readonly texts?: readonly TextName[];
  /** The still picture as HTML/SVG text, or the sentence that says why these numbers can't be drawn. */
  readonly draw: (numbers: Numbers, view: UnitView) => Result<string>;
  /** One sentence: shape, extremes, the present point. */
  readonly says: (numbers: Numbers, view: UnitView) => string;
  /** The numbers behind the picture. */
  readonly table: (numbers: Numbers, view: UnitView) => Table;
  /** What the still drawing depends on; while it stays the same, `update` alone moves the picture. */
  readonly outline: (numbers: Numbers, view: UnitView) => string;
  /** Attaches what the reader can do to the stage, which outlives the drawings on it. */
  readonly mount?: (stage: HTMLElement, context: FigureContext) => void;
  /** Moves the drawing on the stage to the present numbers. */
  readonly update?: (stage: HTMLElement, numbers: Numbers, view: UnitView) => void;
}

export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What a waking widget may use of the page. */
export interface FigureContext {
  readonly numbers: () => Numbers;
  readonly view: () => UnitView;
  /** Sets a quantity of the reader's numbers, clamped to its field's bounds; the page redraws on the next frame. */
  readonly set: (name: string, value: number) => void;
  /** Types a text into a list of the reader's numbers, as if by hand. */
  readonly type: (name: string, text: string) => void;
  /** Draws again though no number changed, because the widget has found something out meanwhile. */
  readonly redraw: () => void;
}
