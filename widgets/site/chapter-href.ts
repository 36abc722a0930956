/** A chapter of the book by its file: `04-two-screws.md`, or `04b-another.md` behind it. */
export const CHAPTER_FILE = /^\d+[a-z]?-[a-z0-9-]+\.md$/;

/** Chapters link to each other's Markdown files; pages to each other's HTML. */
export const pageHref = (href: string): string =>
  href.replace(/^(?:\.\/)?(?:\d+[a-z]?-)?([a-z0-9-]+)\.md(?=#|$)/, (_, slug: string) => `${slug}.html`);
