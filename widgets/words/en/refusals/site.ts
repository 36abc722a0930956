/** What the author of a chapter is told of a line that can’t be read. */
import { listed } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const SITE = {
  'adjuster-unknown': ({ name, known }) =>
    `There is no adjuster “${name}” in chapters/adjusters.md; it has ${listed(known)}.`,
  'adjuster-has-not': ({ name, number, has }) =>
    `The adjuster “${name}” says nothing about “${number}”; it has ${listed(has)}.`,
  'list-with-odd-entries': ({ note }) => note,
  'line-of-no-kind': ({ line }) =>
    `“${line}” is not a number (name = value) and not a step (relation = expected value).`,
  'option-not-of-choice': ({ option, choice, options, near }) =>
    `“${option}” is not an option of ${choice}; ${near === undefined ? `it is one of: ${options.join(', ')}.` : `did you mean ${near}?`}`,
  'bounds-misspelt': ({ name, start, rest }) =>
    `After “${start}” stands “${rest}”, which is not a unit and gives no bounds; write it like ${name} = ${start} from LEAST to MOST.`,
  'input-unknown': ({ name, near }) =>
    `“${name}” is not a symbol of the engine’s glossary (widgets/engine/kernel/symbols.ts), a choice, a list or a thread${near === undefined ? '; check its spelling.' : `; did you mean ${near}?`}`,
  'start-out-of-bounds': ({ name, start }) => `${name} starts at ${start}, outside its own bounds.`,
  'nothing-expected': ({ step }) =>
    `“${step}” does not say what you expect; write it at the end, for example “= 87.50 µm” (npm run ask prints it).`,
  'expected-without-unit': ({ text, unit }) => `“${text}” has no unit; write for example “${text} ${unit}”.`,
  'not-a-relation': ({ name, near }) =>
    `“${name}” is not a relation of the engine; ${near === undefined ? 'npm run ask lists them.' : `did you mean ${near}?`}`,
  'relation-gives-nothing': ({ relation }) => `${relation} gives nothing.`,
  'name-not-a-symbol': ({ name, near }) =>
    `“${name}” is not a symbol of the engine’s glossary (widgets/engine/kernel/symbols.ts)${near === undefined ? '.' : `; did you mean ${near}?`}`,
  'kept-under-other-unit': ({ relation, gives, name, says }) =>
    `${relation} gives ${gives}; it can’t be kept as ${name}, ${says}.`,
  'input-not-taken': ({ relation, name, takes }) =>
    `${relation} does not take “${name}”; it takes ${takes.join(', ')}.`,
  'binding-unread': ({ relation, name, why }, behind) => `${relation}, ${name}: ${behind(why)}`,
  'slip-without-words': () => 'A slip says what went wrong: add “# you added the leads …” at its end.',
  'slip-without-value': ({ why }, behind) => `This slip has no value: ${why ? behind(why) : ''}`,
  'slip-right-by-chance': () => 'This slip gives the right answer within 2 %, so nobody can tell it from that.',
} satisfies Partial<RefusalWords>;
