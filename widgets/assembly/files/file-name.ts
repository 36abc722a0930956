/** Names of files: what a reader typed, made harmless, with the unit in it, since neither STL nor DXF says one. */

const LONGEST = 40;

export const fileName = (words: readonly string[], extension: string): string => {
  const name = words
    .join('-')
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, LONGEST)
    .replace(/-+$/, '');
  return `${name === '' ? 'part' : name}-mm.${extension}`;
};
