/** Im Deutschen beginnt ein ganzer Satz auch nach einem Doppelpunkt groß. */
export const clause = (sentence: string): string => sentence;
