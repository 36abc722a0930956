/** A mistake in a chapter: where it stands and one sentence on how to mend it. */
export interface Mistake {
  readonly file: string;
  /** One-based. */
  readonly line: number;
  readonly says: string;
}

/** Collects the mistakes of one chapter, so that an author sees all of them at once. */
export interface Ledger {
  readonly file: string;
  readonly mistakes: Mistake[];
  readonly note: (line: number, says: string) => void;
}

export const ledger = (file: string): Ledger => {
  const mistakes: Mistake[] = [];
  return { file, mistakes, note: (line, says) => void mistakes.push({ file, line, says }) };
};

export const mistakeText = ({ file, line, says }: Mistake): string => `${file}:${line}: ${says}`;
