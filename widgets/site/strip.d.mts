import type { Plugin } from 'vite';

export function namedRelations(expected: number): Plugin;
export function withoutWords(expected?: number): Plugin;
export function withoutPackages(packages: Readonly<Record<string, readonly string[]>>): Plugin;
