/** Files into one zip that is the same byte for byte whenever it is made from the same files. */
import { strToU8, zipSync } from 'fflate';

/** A zip can't hold a time before 1980; a fixed one keeps two exports of the same bank alike. */
const FIXED = '1980-01-01T12:00:00';

export const zipped = (files: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> =>
  new Uint8Array(
    zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])), {
      level: 6,
      mtime: FIXED,
    }),
  );
