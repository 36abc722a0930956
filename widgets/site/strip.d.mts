import type { Plugin } from 'vite';

export function withoutWords(expected?: number): Plugin;
export function withoutPackages(packages: Readonly<Record<string, readonly string[]>>): Plugin;
