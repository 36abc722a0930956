/** A sentence that goes on behind a colon or a semicolon begins small. */
export const clause = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);
