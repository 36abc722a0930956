import type { Language } from './language.mjs';

/** The scripts by figure, and those of the papers. */
export type BuiltScripts = Readonly<
  Record<string, { readonly file: string; readonly before: readonly string[]; readonly worker?: string }>
>;
export function buildNotebook(
  outDir?: string,
  logLevel?: 'info' | 'warn' | 'error',
  language?: Language,
  beside?: string,
): Promise<BuiltScripts>;
