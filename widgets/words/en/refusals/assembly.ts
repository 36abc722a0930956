/** Why the numbers of a page, a design or a step can’t be taken. */
import { listed, quoted, type SymbolName, symbolFact } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const named = (symbol: SymbolName): string => `${symbol} (${symbolFact(symbol).says})`;

export const ASSEMBLY = {
  'option-unknown': ({ text, says, options }) => `Read ${quoted(text)} as the ${says}; choose ${options.join(', ')}.`,
  'outside-field': ({ text, label, least, most }) =>
    `Read ${quoted(text)}; ${label} goes from ${least} to ${most} here.`,
  'seat-unknown': ({ text, seats }) => `Read ${quoted(text)}, which is not in the table: use ${seats.join(', ')}.`,
  'nothing-to-calibrate': () =>
    'These two threads have one and the same lead, so a turn moves nothing; take two whose leads differ.',
  'least-load-above-most': ({ least, most }) =>
    `The least load, ${least}, is above the most, ${most}: give the smaller first, and a pull away from the base with a minus.`,

  'result-fixed': ({ says }) =>
    `None of the numbers here leads to the ${says}, so none can give way: type another result.`,
  'wish-with-spread': ({ text }) =>
    `Read ${quoted(text)}; a wish is one number: leave the ± out here, and write it behind the number above that has it.`,
  'wish-of-several': ({ text }) =>
    `Read ${quoted(text)}, which is more than one wish; write one number here, and the others into their own fields above.`,
  'wish-open': ({ text }) =>
    `Read ${quoted(text)}; what is unknown is found among the numbers above: write here what the result is to be, like 0.2 mm.`,
  'ask-no-unknown': () =>
    'Nothing is asked; write the name of the number to find alone, for example n, beside those known.',
  'ask-two-unknowns': ({ names }) =>
    `Read ${names.length} unknowns, ${listed(names)}; one can be found from the others: leave only one of them out.`,
  'ask-name-unknown': ({ name }) =>
    `Read ${quoted(name)}; a number is called by its symbol, and a thread is known as A, C or thread: npm run ask lists the symbols.`,
  'ask-name-twice': ({ name }) => `${name} is given twice; leave one of the two out.`,
  'ask-known-asked': ({ name }) => `${name} is both known and asked for; leave one of the two out.`,
  'knowns-contradict': ({ symbol, read, gives, relation }) =>
    `What is known contradicts itself: ${named(symbol)} is read as ${read}, and the others give ${gives} by ${relation}: leave one out, or write ${gives}.`,
  'wish-out-of-reach': ({ unknown, met, least, most, nearest, gives }) =>
    `No ${named(unknown)} gives that: ${met} goes from ${least} to ${most}; the nearest is ${unknown} = ${nearest}, which gives ${gives}.`,
  'wish-without-law': ({ unknown, met }) =>
    `No value of ${named(unknown)} gives ${named(met)} any value beside what else is known: look through the others.`,
  'relation-unknown': ({ relation }) => `There is no relation called ${relation}.`,
  'step-waits': () => 'This line waits for the one above it.',
  'output-not-given': ({ relation, output }) => `${relation} does not give ${output}.`,

  'design-file-too-long': ({ length, of, most }) =>
    `The file has ${length} ${of === 'bytes' ? 'bytes' : 'characters'}; a file of designs has at most ${most}. Choose the file that was exported here.`,
  'design-file-not-json': ({ text }) =>
    `Read ${quoted(text)}, which is not JSON or is cut off; choose a file that was exported here and is whole.`,
  'design-file-of-other-kind': ({ format }) =>
    `This is JSON of another kind; a file of designs says "format": "${format}". Choose one that was exported here.`,
  'design-file-version': ({ version, newest }) =>
    `The file says ${version === undefined ? 'no version' : `version ${version}`}; this notebook reads versions up to ${newest}. Open it in the newer notebook and export it from there, or update this one.`,
  'design-file-without-list': () => 'The file holds no list of designs; choose one that was exported here.',
  'design-file-too-many': ({ designs, most }) =>
    `The file holds ${designs} designs; at most ${most} are kept. Take some out.`,
  'design-without-numbers': () => 'It has no numbers.',
  'design-without-name': () => 'It has no name.',
  'design-number-not-text': ({ name }) => `${quoted(name)}: a number is kept as text with its unit.`,
  'design-number-unknown': ({ name }) => `${quoted(name)} is not a number of this notebook.`,
  'bench-one-thread': () => 'The bench takes a jack of two threads; describe a carried part as well.',
  'bench-no-play': ({ thread }) =>
    `The pieces of thread ${thread} do not go together; state classes or diameters that leave play.`,
  'bench-places': ({ count, most }) => `${count} places to read; 2 to ${most} can be read.`,
  'design-number-unread': ({ name, why }, behind) => `${name}: ${behind(why)}`,
} satisfies Partial<RefusalWords>;
