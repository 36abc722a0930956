/** The document plots are drawn in: the page's own, or at build time the one the catalogue lends. */
let lent: Document | undefined;

export const lendDocument = (document: Document): void => {
  lent = document;
};

export const plotDocument = (): Document => {
  const found = typeof document === 'undefined' ? lent : document;
  if (!found) throw new Error('A plot was drawn outside a browser before a document was lent to it.');
  return found;
};
