/** Writes the worker for reading offline into the folder of a built notebook. */
export declare const writeOffline: (folder: string) => void;
