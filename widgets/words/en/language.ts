/** The language of these words, as pages and files name it. */
export const LANGUAGE = 'en-GB';
