export declare const CHARACTERS: string;
