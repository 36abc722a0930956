/**
 * What a reader thinks of the ideas before a route and after it: each item finds one misconception, by the answer that follows from it. Results
 * are kept as one letter an item, and written and read as CSV, so that a class can be looked at without a list of who said what.
 */
import { bad, good, type Result } from '../engine/index.ts';
import { toCsv } from '../input/readings-table.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'ideas-unread': { readonly text: string; readonly columns: readonly string[] };
    'ideas-line-unread': { readonly line: number; readonly text: string };
  }
}

/** Right; what the misconception says; anything else. */
export const FOUND = ['right', 'misconception', 'other'] as const;
export type Found = (typeof FOUND)[number];

/** A misconception, and what one reader's answers found of it. */
export interface Idea {
  readonly route: string;
  readonly item: string;
  readonly misconception: string;
  readonly before?: Found;
  readonly after?: Found;
}

const COLUMNS = ['route', 'item', 'misconception', 'before', 'after'] as const;

export const ideasCsv = (ideas: readonly Idea[]): string =>
  toCsv(
    COLUMNS,
    ideas.map(({ route, item, misconception, before = '', after = '' }) => [route, item, misconception, before, after]),
  );

const cellsOf = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, bare = '']) =>
    quoted === undefined ? bare.trim() : quoted.replaceAll('""', '"'),
  );
const LONGEST = 400;
const foundIn = (text: string): Found | undefined => FOUND.find((one) => one === text);

/** Reads one file, of one reader or of several one after the other. */
export const readIdeas = (text: string): Result<readonly Idea[]> => {
  const lines = text.replace(/^\ufeff/, '').split(/\r?\n/);
  const head = COLUMNS.join(',');
  if (lines[0]?.trim() !== head) return bad('ideas-unread', { text: lines[0] ?? '', columns: COLUMNS });
  const ideas: Idea[] = [];
  for (const [i, line] of lines.entries()) {
    if (line.trim() === '' || line.trim() === head) continue;
    const [route = '', item = '', misconception = '', before = '', after = '', ...rest] = cellsOf(line);
    const known = [before, after].every((one) => one === '' || foundIn(one) !== undefined);
    if (route === '' || item === '' || rest.length > 0 || !known || line.length > 3 * LONGEST)
      return bad('ideas-line-unread', { line: i + 1, text: line });
    const [first, second] = [foundIn(before), foundIn(after)];
    ideas.push({
      route: route.slice(0, LONGEST),
      item: item.slice(0, LONGEST),
      misconception: misconception.slice(0, LONGEST),
      ...(first && { before: first }),
      ...(second && { after: second }),
    });
  }
  return good(ideas);
};

export interface Remaining {
  readonly route: string;
  readonly item: string;
  readonly misconception: string;
  /** How many answered, how many of them by the misconception, and how many rightly. */
  readonly before: Answered;
  readonly after: Answered;
}
interface Answered {
  readonly of: number;
  readonly held: number;
  readonly right: number;
}

/** What has become of an idea; one that nobody held is not gone. */
export const whatRemains = ({ before, after }: Pick<Remaining, 'before' | 'after'>) =>
  after.of === 0 ? 'open' : after.held > 0 ? 'remains' : before.held > 0 ? 'gone' : 'unheld';

/** What a class still thinks, the idea held by most of those who have answered afterwards first. */
export const remaining = (ideas: readonly Idea[]): readonly Remaining[] => {
  const groups = new Map<string, Idea[]>();
  for (const idea of ideas) {
    const key = `${idea.route} ${idea.item}`;
    groups.set(key, [...(groups.get(key) ?? []), idea]);
  }
  const counted = (all: readonly Idea[], when: 'before' | 'after') => ({
    of: all.filter((one) => one[when] !== undefined).length,
    held: all.filter((one) => one[when] === 'misconception').length,
    right: all.filter((one) => one[when] === 'right').length,
  });
  const share = ({ after, before }: Remaining): number =>
    after.of > 0 ? after.held / after.of : before.held / Math.max(1, before.of) / 1e3;
  return [...groups.values()]
    .flatMap((all) => {
      const [first] = all;
      return first
        ? [
            {
              route: first.route,
              item: first.item,
              misconception: first.misconception,
              before: counted(all, 'before'),
              after: counted(all, 'after'),
            },
          ]
        : [];
    })
    .toSorted((a, b) => share(b) - share(a));
};
