export interface BuiltScripts {
  readonly library: string;
  readonly figures: Readonly<
    Record<string, { readonly file: string; readonly plot: boolean; readonly worker?: string }>
  >;
}
export function buildNotebook(outDir?: string, logLevel?: 'info' | 'warn' | 'error'): Promise<BuiltScripts>;
