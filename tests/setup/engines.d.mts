export interface EngineFact {
  readonly engine: 'chromium' | 'firefox' | 'webkit';
  /** The project of its tests. */
  readonly project: string;
  readonly name: string;
  readonly files: () => readonly string[];
  readonly packages: readonly string[];
  readonly mend: string;
}

export declare const ENGINES: readonly EngineFact[];
export declare const missing: (engine: EngineFact) => string[];
/** The sentence that says an engine is left out. */
export declare const leftOut: (engine: EngineFact) => string;
