import type { Result } from '../../engine/index.ts';

/** What stands in place of the field of a prediction. */
export interface PictureField {
  readonly control: HTMLElement;
  readonly picture: HTMLElement;
  /** What was predicted, in base units, or by its sign alone. */
  readonly read: () => Result<number> | undefined;
  /** Draws both and plays the answer. */
  readonly play: (made: number) => void;
  /** What is said of it, where it is no one number. */
  readonly says?: () => string;
  /** Draws it anew in other units. */
  readonly redraw?: () => void;
}
