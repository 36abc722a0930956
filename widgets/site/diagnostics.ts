/** A mistake in a chapter: where it stands and one sentence on how to mend it. */
export interface Diagnostic {
  readonly file: string;
  /** One-based. */
  readonly line: number;
  readonly says: string;
}

/** Collects the mistakes of one chapter, so that an author sees all of them at once. */
export interface Diagnostics {
  readonly file: string;
  readonly mistakes: Diagnostic[];
  readonly note: (line: number, says: string) => void;
}

export const createDiagnostics = (file: string): Diagnostics => {
  const mistakes: Diagnostic[] = [];
  return { file, mistakes, note: (line, says) => void mistakes.push({ file, line, says }) };
};

export const diagnosticText = ({ file, line, says }: Diagnostic): string => `${file}:${line}: ${says}`;
