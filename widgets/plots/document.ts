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

/**
 * A plot as text. Plot names each group of its marks, where no role allows a name; the figure's own title says it better. The
 * style sheet it puts into each plot stands in the page's own, since the page lets no other count.
 */
export const plotMarkup = (plot: Element): string =>
  plot.outerHTML
    .replace(/<style>[^<]*<\/style>/, '')
    .replace(/<g\b[^>]*>/g, (tag) => (tag.includes(' role=') ? tag : tag.replace(/ aria-label="[^"]*"/, '')));
