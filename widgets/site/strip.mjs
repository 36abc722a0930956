/**
 * What the page's scripts leave out, at build time only: of each relation the words and formulas, which the press has set
 * into the pages already, and of the plot library the parts it names but the notebook's plots never reach. Both stop the
 * build where they no longer find what they leave out.
 */

/** The parts of a relation that only the press, the papers and the tests read. */
const WORDS = ['says', 'gives', 'source'];
const ENGINE = /\/widgets\/engine\/(?:[\w-]+\/)?[\w-]+\.ts$/;

/** Relations without their words. With `expected`, the build must have met exactly so many. */
export const withoutWords = (expected) => {
  let met = 0;
  return {
    name: 'without-words',
    apply: 'build',
    buildStart() {
      met = 0;
    },
    transform: {
      filter: { id: ENGINE, code: /\brelation\(\{/ },
      handler(code, id) {
        const cuts = [];
        for (const definition of relationsIn(this.parse(code))) {
          met++;
          for (const word of WORDS) {
            const property = definition.properties.find((p) => p.key?.name === word);
            if (!property)
              this.error(`A relation in ${id} has no “${word}” to leave out; mend widgets/site/strip.mjs.`);
            cuts.push(property);
          }
        }
        // From the end, so that the places before stay true.
        for (const { start, end } of cuts.sort((a, b) => b.start - a.start))
          code = code.slice(0, start) + code.slice(code[end] === ',' ? end + 1 : end);
        return code;
      },
    },
    buildEnd(error) {
      if (!error && expected !== undefined && met !== expected)
        this.error(`Left out the words of ${met} relations, but there are ${expected}; mend widgets/site/strip.mjs.`);
    },
  };
};

/** The object given to each call of `relation`, wherever it stands. */
const relationsIn = (node) => {
  if (typeof node !== 'object' || node === null) return [];
  const within = Object.values(node).flatMap(relationsIn);
  return node.type === 'CallExpression' && node.callee.name === 'relation' ? [node.arguments[0], ...within] : within;
};

/**
 * Packages that a library imports but that nothing here reaches: each name in them is a function that says so, but for those
 * it needs while it loads. `packages` gives these kept names by package.
 */
export const withoutPackages = (packages) => {
  const mark = '\0left-out:';
  const met = new Set();
  return {
    name: 'without-packages',
    enforce: 'pre',
    resolveId: (id, importer) => (id in packages && !importer?.startsWith(mark) ? `${mark}${id}` : undefined),
    load: {
      filter: { id: /^\0left-out:/ },
      async handler(id) {
        const name = id.slice(mark.length);
        met.add(name);
        const kept = packages[name];
        const left = Object.keys(await import(name)).filter((exported) => !kept.includes(exported));
        return [
          `const leftOut = () => { throw new Error('${name} is left out of this notebook; see widgets/site/strip.mjs.'); };`,
          `export { ${left.map((exported) => `leftOut as ${exported}`).join(', ')} };`,
          ...kept.map((exported) => `export { ${exported} } from '${name}';`),
        ].join('\n');
      },
    },
    buildEnd(error) {
      const missed = Object.keys(packages).filter((name) => !met.has(name));
      if (!error && missed.length > 0)
        this.error(`Nothing imports ${missed.join(', ')} any more; take it out of the list in widgets/site/build.mjs.`);
    },
  };
};
