/**
 * What two people write for the same word or name: case, accents, kinds of apostrophe, dash and space, and spaces left out make no difference.
 * For telling whether they are alike, not for showing.
 */
export const looselyWritten = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}\s]/gu, '')
    .replace(/[\u2018\u2019\u02bc\u00b4`]/g, "'")
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .toLowerCase();
