/** Each term of the glossary has a place of its own on its page, so that a search leads to the term and not to the head of the list. */

export const termId = (term: string): string =>
  `term-${term
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')}`;

/** An item of a list that begins with its term in bold. */
export const withTermIds = (html: string): string =>
  html.replace(
    /<li>(\s*(?:<p>)?)<strong>([^<]+)<\/strong>/g,
    (_, before: string, term: string) => `<li id="${termId(term)}">${before}<strong>${term}</strong>`,
  );
