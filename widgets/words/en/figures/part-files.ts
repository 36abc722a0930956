/** Words of the figure that makes files of the parts. */
const PARTS = { base: 'base', turned: 'turned part', carried: 'carried part' } as const;

export const WORDS = {
  title: 'Files of your parts',
  drawing: 'Section to scale',
  adjuster: 'adjuster',
  section: 'section',
  check: '10 mm',
  part: (role: keyof typeof PARTS, kind: string) => `${PARTS[role]}: ${kind}`,
  /** What is printed besides the parts. */
  print: { spring: 'spring', arm: 'arm on the post', post: 'post', foot: 'plate that holds the post', knob: 'knob' },
  steelPost: 'post, a steel rod: cut, not printed',
  counted: (what: string, count: number) => (count > 1 ? `${what}, ${count} of them` : what),
  all: 'all parts',
  together: 'section, put together',
  by: (height: string, width: string) => `${height} high, ${width} across`,
  save: (what: string, kind: string) => `Save ${what} as ${kind.toUpperCase()}`,
  listHead: ['part', 'size', 'files, in millimetres'],
  note: 'The solids of the parts have threads of the basic profile, without play: a print of them is a model to look at, unless you print the threads larger. DXF and SVG are sections at their true size, with a line of 10 mm to check the size by.',
  caption: (parts: number, highest: string, height: string) =>
    `${parts} parts from the rows above; the highest is the ${highest}, ${height}.`,
  head: ['part', 'height', 'across its corners', 'triangles in its solid'],
};
