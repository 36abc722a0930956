/** Inline Markdown inside a block, and the line on which it begins. */
export interface Passage {
  readonly text: string;
  readonly line: number;
}

/** Sets inline Markdown that begins on this line of the chapter. */
export type Inline = (text: string, line: number) => string;
