/** What is searched: every section, term and symbol of the book, as the site writes it and the browser reads it. */
export interface Findable {
  /** The page and its place. */
  readonly href: string;
  /** Of the page. */
  readonly page: string;
  readonly title: string;
  readonly text: string;
  /** A term or a symbol comes before a text that only uses it. */
  readonly kind: 'section' | 'term' | 'symbol';
  /** Words under which the trade looks for a term, each in the text too, so that a reader sees why it was found. */
  readonly also?: string;
}

/** The script of the index gives it under this name, since a page from a file can fetch nothing else. */
export const INDEX_GLOBAL = 'notebookSearch';
