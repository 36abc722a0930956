/** Writes the worker for reading offline into the folder of a built notebook. */
export declare const writeOffline: (
  folder: string,
  words: {
    readonly language: string;
    readonly noPage: { readonly title: string; readonly says: string; readonly pages: string };
  },
) => void;
