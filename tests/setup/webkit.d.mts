export declare const WEBKIT_DRIVER: string;
export declare const MINI_BROWSER: string;
