/** What an author may have meant: the known name that a misspelt one is nearest to, where one is near. */

/** Letters to put in, leave out, change or swap with their neighbour (F. J. Damerau, 1964; each place once). */
const steps = (a: string, b: string): number => {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
};

/** Undefined where nothing is near: a guess far off sends the author astray. */
export const nearest = (word: string, names: Iterable<string>): string | undefined => {
  let best: { readonly name: string; readonly off: number } | undefined;
  // Whoever writes a chapter may paste anything.
  const asked = word.slice(0, 60);
  for (const name of names) {
    const off = steps(asked.toLowerCase(), name.toLowerCase());
    // Signs of a letter or two are all near one another.
    const most = name.length < 3 ? 0 : Math.max(1, Math.floor(name.length / 3));
    if (off <= most && (best === undefined || off < best.off)) best = { name, off };
  }
  return best?.name;
};

/** The end of a sentence about a name that is not known: what was meant, or what there is. */
export const didYouMean = (word: string, names: Iterable<string>, otherwise = ''): string => {
  const near = nearest(word, names);
  return near === undefined ? otherwise : `; did you mean ${near}?`;
};
