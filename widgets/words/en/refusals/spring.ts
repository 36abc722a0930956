/** Refusals of printed springs. */
import { listed, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const mm = (x: number): string => `${say(x)} mm`;
const percent = (x: number): string => `${say(100 * x)} %`;

export const SPRING: RefusalWords<
  | 'coupon-without-sag'
  | 'strip-without-thickness'
  | 'meander-all-corner'
  | 'meander-odd'
  | 'coil-too-tight'
  | 'spring-fills-no-length'
  | 'spring-room-too-small'
  | 'spring-overstrained'
  | 'plastic-unknown'
  | 'no-spring-of-shape'
> = {
  'coupon-without-sag': () => 'The weight bends the strip by nothing, so no modulus follows: read a motion above 0 mm.',
  'strip-without-thickness': () =>
    'The strip would have no thickness left: give an error smaller than the strip is thick.',
  'meander-all-corner': ({ thickness, least }) =>
    `A strip ${mm(thickness)} thick leaves nothing between its corners: make legs and connectors longer than ${mm(least)}.`,
  'meander-odd': ({ waves }) =>
    `Read ${waves} half waves; held at both ends this law is for an even count: give an even number.`,
  'coil-too-tight': ({ wire, coil }) =>
    `Wire of ${mm(wire)} can’t be wound to ${mm(coil)}: give a coil of more than one and a half times the wire.`,
  'plastic-unknown': ({ name, known }) => `Read ${name} as a plastic; known are ${listed(known)}.`,
  'spring-fills-no-length': ({ length, stretch }) =>
    `A spring ${mm(length)} long that is stretched by ${mm(stretch)} has no length left when it is free: give it more length or less stretch.`,
  'spring-room-too-small': ({ rate, width, free }) =>
    `No shape of ${say(rate)} N/mm fits in ${mm(width)} by ${mm(free)}: give it more room, more stretch for the same force, or thinner lines.`,
  'spring-overstrained': ({ least, limit }) =>
    `Every shape that fits is strained by ${percent(least)} or more, and ${percent(limit)} is allowed: give it more room, or less stretch.`,
  'no-spring-of-shape': ({ shape, others }) =>
    `Of the shape “${shape}” none does it in this room within this strain: choose ${listed(others)}, or give it more room.`,
};
