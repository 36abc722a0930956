import type { LaunchOptions } from 'playwright-core';

export declare const FIREFOX: string;
export declare const firefoxFor: (likes: { readonly dark: boolean; readonly forced: boolean }) => LaunchOptions;
