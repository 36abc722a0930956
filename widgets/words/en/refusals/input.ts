/** Why a number, a quantity or a list can’t be read. */
import { listed, quoted, SERIES_NAMES } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const INPUT = {
  'list-too-long': ({ characters, most }) =>
    `Read ${characters} characters; this list has at most ${most}: leave some of it out.`,
  'number-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; a number is at most ${most} characters: type it again, for example 1.5.`,
  'number-empty': () => 'Nothing was typed; a number is needed, for example 1.5.',
  'not-a-number': ({ text }) => `Read ${quoted(text)}, which is not a number: write one like 1.5, 1,5 or 3/8.`,
  'fraction-over-nought': ({ text }) => `Read ${quoted(text)}, a fraction over zero: write one like 3/8.`,
  'number-too-large': ({ text }) =>
    `Read ${quoted(text)}, which is too large a number to work with: type a smaller one.`,
  'quantity-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; a quantity is at most ${most} characters: type it again, for example 1.5 mm.`,
  'quantity-too-large': ({ text }) => `Read ${quoted(text)}, which is too large to work with: type a smaller number.`,
  'unit-unknown': ({ unit, takes }) =>
    `Read ${quoted(unit)} as a unit, which is not one used here: use ${takes.join(', ')}.`,
  'unit-of-other-kind': ({ text, unit, takes }) => `Read ${quoted(text)}, in ${unit}; this takes ${takes.join(', ')}.`,
  'time-without-unit': ({ text }) =>
    `Read ${quoted(text)} without a unit of time, and the law needs one: write ${quoted(`${text} h`)}, min, s or d.`,

  'thread-list-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; a list is at most ${most} characters: name the threads you would use for this job.`,
  'too-many-threads': ({ threads, most }) => `Read ${threads} threads; a list holds at most ${most}: leave some out.`,
  'no-thread-in-list': ({ first, others }, behind) =>
    `${behind(first)}${others > 0 ? ` None of the other ${others} is a thread either.` : ''}`,
  'series-list-too-long': ({ text }) => `Read ${quoted(text)}; name series, for example ${SERIES_NAMES[0]}, UNF.`,
  'series-empty': () => `Nothing was typed; name series (${SERIES_NAMES.join(', ')}), or “none”.`,
  'series-unknown': ({ typed }) =>
    `Read ${quoted(typed)} as a series of threads, which is not one here: name ${listed(SERIES_NAMES.map(String))}, or metric, inch, all, none.`,

  'divider-list-too-long': ({ text }) =>
    `Read ${quoted(text)}; name a few dividers, for example hexagon, twelve points, 50.`,
  'divider-unknown': ({ typed, least, most }) =>
    `Read ${quoted(typed)} as a divider of a turn; name hexagon, square, twelve points or the steps per turn from ${least} to ${most}, like 50, or none.`,
  'too-many-dividers': ({ dividers, most }) =>
    `Read ${dividers} dividers; a list holds at most ${most}: leave some out.`,

  'part-list-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; ${most} characters is the limit here: leave some parts out.`,
  'too-many-parts': ({ parts, most }) =>
    `Read ${parts} parts; at most ${most} are listed: join those that are bought together.`,
  'part-name-missing': ({ row }) =>
    `Read ${quoted(row)}; a part has a name of at most 60 characters, then a colon, count × price.`,
  'part-unread': ({ name, why }, behind) => `${quoted(name)}: ${behind(why)}`,
  'part-count-odd': ({ name, count }) =>
    `${quoted(name)}: read ${quoted(count)} as the count; a whole number from 1 to 1000 stands before ×.`,
  'part-price-odd': ({ name, price }) =>
    `${quoted(name)}: read a price of ${quoted(price)}; it is from 0 to 1 000 000.`,

  'note-too-long': ({ characters, most }) =>
    `Read ${characters} characters; ${most} are the most that fit the sheet: say it shorter.`,
  'not-a-day': ({ text }) =>
    `Read ${quoted(text)}, which is no day; write year, month and day, like 2026-03-31, or day, month and year with dots, like 31.3.2026.`,
  'not-a-temperature': ({ text }) =>
    `Read ${quoted(text)}; give the temperature of the part from −20 °C to 60 °C, like 20.5 °C or 69 °F.`,

  'spread-nought': ({ text }) =>
    `Read ± ${quoted(text)}, which is not above zero; leave the ± out where a number is exact.`,
  'spread-without-value': ({ text }) => `Read ${quoted(text)}; write the value before its ±, like 1.5 mm ± 2 µm.`,
  'spread-tail-unread': ({ text }) => `Read ${quoted(text)} behind a ±; write k = 2 there, or 10 readings, or nothing.`,
  'spread-few-readings': ({ text }) => `Read ${quoted(text)}; a ± from readings takes two of them at least.`,
  'spread-past-range': ({ text, most }) =>
    `Read ${quoted(text)}, whose ± reaches past what this number can be; ± ${most} is the most here.`,
  'spread-past-value': ({ text, says, most }) =>
    `Read ${quoted(text)}, whose ± is larger than the number, so even its sense is open; for the ${says.split(',')[0] ?? says}, ± ${most} is the most here.`,
  'spread-of-count': ({ text, says }) =>
    `Read ${quoted(text)}; the ${says} is counted and not measured: leave its ± out.`,
  'class-without-limits': ({ text }) =>
    `Read ${quoted(text)}; only a class has limits: write it behind the thread, like M10×1.5-6g or M10×1.5-6H/6g.`,
} satisfies Partial<RefusalWords>;
