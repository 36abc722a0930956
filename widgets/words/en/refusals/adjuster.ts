/** Refusals of an adjuster described in words: each names the part to change. */
import { listed, quoted, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { WORDS } from '../adjuster.ts';

const PART = { base: 'base', turned: 'turned part', carried: 'carried part' } as const;
const mm = (x: number): string => `${say(x)} mm`;

export const ADJUSTER: RefusalWords<
  | 'adjuster-too-long'
  | 'adjuster-row-unread'
  | 'adjuster-row-twice'
  | 'adjuster-part-missing'
  | 'part-kind-unread'
  | 'part-phrase-unread'
  | 'part-thread-unread'
  | 'part-length-outside'
  | 'part-length-unread'
  | 'part-word-unread'
  | 'part-coat-outside'
  | 'part-count-outside'
  | 'limits-of-other-side'
  | 'part-size-unused'
  | 'no-turns-left'
  | 'row-phrase-unread'
  | 'springs-drawing-lacks'
  | 'springs-rate-and-drawing'
  | 'springs-size-of-none'
  | 'springs-in-two-rows'
  | 'divisions-outside'
  | 'thread-longer-than-part'
  | 'threads-break-through'
  | 'threads-meet-inside'
  | 'hexagon-too-narrow'
  | 'part-wants-threads'
  | 'part-in-wrong-place'
  | 'part-wants-genders'
  | 'ends-do-not-meet'
  | 'assembled-outside'
  | 'upper-thread-joins-nothing'
  | 'assembled-inside-another'
  | 'joint-too-short'
  | 'joint-without-room'
> = {
  'adjuster-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; the description of an adjuster has at most ${most} characters: leave something out.`,
  'adjuster-row-unread': ({ row, keys }) =>
    `Read ${quoted(row)}; a row begins with ${listed(keys)} and an equals sign: write one of those.`,
  'adjuster-row-twice': ({ key }) => `The row ${key} is there twice: leave one of the two out.`,
  'adjuster-part-missing': ({ role }) =>
    `The ${PART[role]} is missing: write a row like ${role === 'base' ? 'base = tapped block M10x1.5, 20 mm' : 'turned = stud M10x1.5, 3/8-16 UNC'}.`,
  'part-kind-unread': ({ role, text, kinds }) =>
    `Read ${quoted(text)} as the ${PART[role]}; it begins with the kind of part: ${listed(kinds)}.`,
  'part-phrase-unread': ({ role, phrase }) =>
    `${quoted(phrase)} in the row of the ${PART[role]} is not known; name a size with its unit (body, head, neck, hexagon, width, height or thread), such as hexagon 17 mm, or count 2 for two of them.`,
  'part-thread-unread': ({ role, because }, behind) =>
    `${PART[role].replace(/^./, (c) => c.toUpperCase())}: ${behind(because)}`,
  'part-length-unread': ({ role, phrase }) =>
    `Read ${quoted(phrase)} in the row of the ${PART[role]} as a length; write its unit, mm, in or thou, behind the number.`,
  'part-word-unread': ({ role, phrase, materials }) =>
    `Read ${quoted(phrase)} in the row of the ${PART[role]}; a word there is a material (${listed(materials)}), blind, through or on the ground: write one of those or leave it out.`,
  'part-length-outside': ({ role, phrase, most }) =>
    `Read ${quoted(phrase)} in the row of the ${PART[role]}; a length is above 0 mm and at most ${mm(most)}: give one within that.`,
  'part-coat-outside': ({ role, phrase, most }) =>
    `Read ${quoted(phrase)} in the row of the ${PART[role]}; a coat is from 0 to ${say(1000 * most)} µm thick on each surface: write it like coat 5 µm.`,
  'part-count-outside': ({ role, phrase }) =>
    `Read ${quoted(phrase)} in the row of the ${PART[role]}; there is at least one of a part: write count 1, or leave it out.`,
  'limits-of-other-side': ({ part, written, gender }) =>
    gender === 'external'
      ? `${written} is of a nut, and this thread of the ${part} is a screw: write a class like 6g or 2A, or d2 as measured, and ${written} at the part it joins.`
      : `${written} is of a screw, and this thread of the ${part} is a nut: write a class like 6H or 2B, or D2 as measured, and ${written} at the part it joins.`,
  'row-phrase-unread': ({ key, phrase, like }) => `Read ${quoted(phrase)} in the row ${key}; write it like ${like}.`,
  'springs-drawing-lacks': ({ lacks }) =>
    `The drawing of the springs lacks ${listed(lacks)}: add ${lacks.length === 1 ? 'it' : 'them'} to the row springs, or state a rate in N/mm instead.`,
  'springs-size-of-none': ({ shape, size, takes }) =>
    `Read ${quoted(size)} in the row springs; a spring like ${quoted(shape)} has ${listed(takes)}: leave ${size} out, or name another shape.`,
  'springs-rate-and-drawing': ({ phrase }) =>
    `Read ${quoted(phrase)} beside a drawing of the springs, from which their rate follows: leave out one of the two.`,
  'springs-in-two-rows': ({ phrase }) =>
    `Read ${quoted(phrase)} in the row lock beside a row springs: write lock = springs, and say the rest in the row springs.`,
  'divisions-outside': ({ text }) => `Read ${quoted(text)} divisions; a knob has from 2 to 10000: give one of those.`,
  'thread-longer-than-part': ({ part, thread, length, room }) =>
    `${thread} in the ${part} is ${mm(length)} long, and the part has room for ${mm(room)}: make the part longer or the thread shorter.`,
  'threads-break-through': ({ part, inside, outside, wall }) =>
    `${inside} does not go inside ${outside}: the wall between the threads of the ${part} would be ${wall.toFixed(2).replace('-', '−')} mm; take a larger outer thread or a smaller inner one, or put one above the other.`,
  'threads-meet-inside': ({ part, lower, upper, over }) =>
    `In the ${part}, ${lower} and ${upper} would overlap by ${mm(over)}: make the part higher or the threads shorter.`,
  'hexagon-too-narrow': ({ part, width, least }) =>
    `The ${part} is ${mm(width)} wide, and what is bored in it needs ${mm(least)}: make it wider.`,
  'part-wants-threads': ({ part, role, wanted, got }) =>
    `A ${part} as ${PART[role]} has ${wanted === 1 ? 'one thread' : 'two threads'}, and ${got === 0 ? 'none was' : got === 1 ? 'one was' : `${got} were`} read: write ${wanted === 1 ? 'one, such as M10x1.5' : 'both, the lower one first'}.`,
  'part-in-wrong-place': ({ part, role, instead }) => `A ${part} can’t be the ${PART[role]}: take ${listed(instead)}.`,
  'part-wants-genders': ({ part }) =>
    `An ${part} has a screw at one end and a nut at the other: write external behind one thread and internal behind the other.`,
  'ends-do-not-meet': ({ joint, lower, upper, because, lowerThread, upperThread }) =>
    because === 'gender'
      ? `Thread ${joint} can’t join the ${lower} and the ${upper}: one of the two ends must be a screw and the other a nut.`
      : `Thread ${joint} can’t join the ${lower} and the ${upper}: one has ${lowerThread}, the other ${upperThread}. Give both the same thread.`,
  'assembled-outside': ({ joint, out, most }) =>
    `Thread ${joint} is assembled ${mm(out)} out from home; it may be from 0 mm to ${mm(most)} out: begin within that.`,
  'upper-thread-joins-nothing': ({ part, thread }) =>
    `The upper thread of the ${part}, ${thread}, joins nothing: add a row for the carried part, or take a screw, which has one thread.`,
  'no-turns-left': ({ clockwise, anticlockwise }) =>
    `As it is assembled it can’t turn: clockwise ${WORDS.stop(clockwise)}, and anticlockwise ${WORDS.stop(anticlockwise)}; begin further out, in the row assembled.`,
  'part-size-unused': ({ part, size, takes }) =>
    `A ${part} has no ${size} of its own: state ${listed(takes)}, or leave it out.`,
  'assembled-inside-another': ({ lower, upper, ground }) =>
    ground
      ? `As it is assembled, the ${upper} would stand in the ground: make the base or the turned part higher, or its screw shorter.`
      : `As it is assembled, the ${upper} would stand inside the ${lower}: make the turned part longer, or begin further out.`,
  'joint-too-short': ({ joint, kept, length, gender }) => {
    const side = gender === 'external' ? 'screw' : 'nut';
    return `Thread ${joint} must keep ${mm(kept)} engaged, but its ${side} is ${mm(length)} long, which leaves no stroke: lengthen the ${side}, or keep less.`;
  },
  'joint-without-room': ({ joint, part, ground }) =>
    ground
      ? `Thread ${joint} has no stroke left: the ${part} touches the ground before its thread holds. Make the base higher or that screw shorter.`
      : `Thread ${joint} has no stroke left: the ${part} strikes its neighbour before its thread holds. Make that thread longer, or the bore deeper.`,
};
