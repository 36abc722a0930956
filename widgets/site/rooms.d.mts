import type { Language } from './language.mjs';

/** The exports of a module of the rooms, `file` as seen from the root of the repository. */
export declare const loadRooms: <T>(file: string, language?: Language) => Promise<T>;
