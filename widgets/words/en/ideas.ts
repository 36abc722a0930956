/** What is said of the tests of ideas before and after a route, and of what a class still thinks. */
export const KEEP_BEFORE = 'Keep as before the route';
export const KEEP_AFTER = 'Keep as after the route';
export const ideasOpen = (open: number): string =>
  open === 1 ? 'One question has no answer yet.' : `${open} questions have no answer yet.`;
export const KEPT_BEFORE =
  'Kept in this browser. Now go through the route, and come back here. What you thought is said after it.';
/** After the route: of an idea that was answered. */
export const IDEA_SAYS = {
  right: 'Right.',
  misconception: 'Not so. Many people think this:',
  other: 'Not so.',
} as const;
export const ideaWas = (before: string | undefined): string =>
  before === undefined ? '' : before === 'right' ? 'Before the route: right.' : 'Before the route: not so.';
export const ideasKept = (before: number, after: number, of: number): string =>
  `Right before the route: ${before} of ${of}. Right after it: ${after} of ${of}.`;
export const IDEAS_AS_CSV = 'Save what I thought, as CSV';
export const IDEAS_ERASE = 'Begin again';
export const IDEAS_FILES = 'Files of the class (CSV)';
export const IDEAS_READ = 'What the class thinks';
export const ideasOf = (files: number, refused: number): string =>
  `${files === 1 ? 'One file is' : `${files} files are`} read${refused === 0 ? '' : `, ${refused} refused`}. The idea that most still hold stands first.`;
export const IDEAS_HEADS = ['Idea', 'Held before', 'Held after', 'Right before', 'Right after', 'Says'] as const;
export const heldBy = (held: number, of: number): string => (of === 0 ? '–' : `${held} of ${of}`);
export const IDEA_VERDICT = {
  remains: 'remains',
  gone: 'gone',
  unheld: 'not held',
  open: 'not asked after the route yet',
} as const;
export const IDEAS_WITHOUT_SCRIPT = 'Reading the files of a class needs JavaScript.';
