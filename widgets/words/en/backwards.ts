/** What stands behind a result of a worked example: the wish for another, where it comes from, and its ±. */
import { listed } from '../../engine/index.ts';

export const behind = (says: string): string => `Behind the ${says}`;
export const I_WANT = 'I want';
export const WHICH_GIVES_WAY = 'Which number may give way?';
export const CLOSE_BEHIND = 'Close';
export const bareCounts = (unit: string): string => `A bare number counts as ${unit}.`;

/** One input that can: what it would be. */
export const becomes = (label: string, text: string): string => `${label} = ${text}`;
export const andBecomes = (first: string, second: string): string => `${first}, ${second}`;
export const andGives = (result: string): string => `gives ${result}`;
export const upTo = (text: string): string => `and every value up to ${text} too`;
export const canHave = (label: string, count: number): string =>
  `${capital(label)} ${count === 1 ? 'can' : `can, in ${count} ways`}:`;
/** What an input does when it can’t: how far the result goes while the field goes through its range. */
export const cannot = (label: string, reach: string): string => `${capital(label)} cannot: ${reach}. The nearest:`;
export const cannotAtAll = (label: string): string =>
  `${capital(label)} cannot: the result has no value anywhere in its range.`;
export const reaches = (
  least: string,
  most: string,
  stock: boolean,
  range: readonly [from: string, to: string] | undefined,
): string =>
  `${range ? `from ${range[0]} to ${range[1]}` : stock ? 'with stock threads' : 'over its options'} the result goes from ${least} to ${most}`;
export const stays = (value: string): string => `the result stays ${value} whatever it is`;
export const exactPitch = (pitches: readonly string[]): string =>
  `Exactly, to nine digits: a thread of your own with a pitch of ${pitches.join(' or ')}.`;
export const found = (text: string, gives: string, digits: number): string =>
  `Now ${text}, and the result is ${gives}${digits >= 9 ? '' : digits < 1 ? ', not what you asked' : `, your wish to ${digits} ${digits === 1 ? 'digit' : 'digits'}`}.`;
export const NOTHING_FITS = 'No single number can give exactly that. The nearest stands behind each.';
type Fields = readonly (readonly [label: string, text: string])[];
export const undoTo = (fields: Fields): string =>
  `Undo: ${listed(fields.map(([label, text]) => `${label} = ${text}`))} again`;
export const undone = (fields: Fields): string =>
  `${capital(listed(fields.map(([label, text]) => `${label} is ${text}`)))} again.`;
/** Two threads that give way together. */
export const together = (first: string, second: string): string => `${first} with ${second}`;
export const STOCK = {
  balls: 'The nearest balls that are sold:',
  drills: 'With the nearest drills that are sold:',
} as const;
/** What the sign of an answer means. */
export const MEANS = { clockwise: 'clockwise', anticlockwise: 'anticlockwise', up: 'up', down: 'down' } as const;

export const WHERE_FROM = 'Where from?';
export const sourceIs = (source: string): string => `Source: ${source.replace(/\.$/, '')}.`;
export const DERIVED_AT = 'Derived at';
export const TAKES = 'It takes';
/** Where one of the inputs of a step comes from. */
export const fromField = (label: string): string => `your ${label}`;
export const FROM_STEP = 'worked below';
/** A figure that counts or picks and asks no relation. */
export const WORKED_HERE = 'The figure works this number itself from the numbers beside it.';
export const STATED = 'stated in the example';

export const DOUBT = 'How sure is it?';
/** k and its coverage in words; `freedom` is undefined where it has no bound. */
export const coverage = (k: string, freedom: number | undefined): string =>
  `± is k = ${k} times the standard uncertainty: about 95 of 100 such results lie within it${freedom === undefined ? '' : `. k is larger than 2 because few readings stand behind it (${freedom} ${freedom === 1 ? 'degree' : 'degrees'} of freedom)`}.`;
export const COMES_FROM = 'What it comes from, the largest first, as shares of the variance:';
export const halveFirst = (label: string, now: string, then: string): string =>
  `Halve the ± of ${label} first: the result’s ± falls from ${now} to ${then}.`;
export const drawnSame = (count: string, low: string, high: string): string =>
  `The law bends here or one ± rules, so it was also drawn ${count} times: the middle 95 of 100 lie from ${low} to ${high}, which agrees.`;
export const drawnDiffers = (count: string, low: string, high: string): string =>
  `The law bends here or one ± rules, so trust the draws more: of ${count}, the middle 95 of 100 lie from ${low} to ${high}.`;
export const drawnLost = (percent: string): string => `For ${percent} of the draws there is no result at all.`;
export const NO_DOUBT =
  'Its numbers have no ±. Type one behind a number above: 1° ± 0.1°, 30 N ± 10 %, or M10×1.5 ± 2 µm for the pitch of a thread.';
export const UNDOUBTED = (labels: readonly string[]): string => `Taken as exact: ${listed(labels)}.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
