import type { LaunchOptions } from 'playwright-core';

export declare const FIREFOX: string;
export declare const LAUNCH_FIREFOX: LaunchOptions;
