/** Chapters link to each other's Markdown files; pages to each other's HTML. */
export const pageHref = (href: string): string =>
  href.replace(/^(?:\.\/)?(?:\d+-)?([a-z0-9-]+)\.md(?=#|$)/, (_, slug: string) => `${slug}.html`);
