import type { Plugin } from 'vite';
export const LANGUAGES: Readonly<Record<'en' | 'de', string>>;
export type Language = keyof typeof LANGUAGES;
export function languageNamed(name?: string): Language;
export function aliasesIn(language: Language): Readonly<Record<string, string>>;
export function inLanguage(language: Language, options?: { readonly tellsRelations?: boolean }): Plugin[];
