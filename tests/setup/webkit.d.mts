export declare const WEBKIT_DRIVER: string;
export declare const miniBrowser: (libraries?: string) => string;
