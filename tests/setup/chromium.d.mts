export declare const CHROMIUM: string;
export declare const SHELL: string;
export declare const chromiumForTests: () => string;
export declare const LAUNCH: { readonly executablePath: string; readonly args: string[] };
