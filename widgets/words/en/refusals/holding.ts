/** Refusals of parts that hold: printed fits, clips, press fits, a ball in a socket, the base. */
import { listed, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const mm = (x: number): string => `${say(x)} mm`;
const degrees = (x: number): string => `${say((180 * x) / Math.PI)}°`;

export const HOLDING: RefusalWords<
  | 'drawn-width-gone'
  | 'lip-locks'
  | 'hub-without-wall'
  | 'ball-loose'
  | 'ball-deeper-than-itself'
  | 'ring-inside-out'
  | 'foot-without-load'
  | 'foot-falls-over'
  | 'face-without-crown'
  | 'push-at-the-ground'
  | 'torque-of-no-friction'
  | 'friction-without-load'
  | 'clip-arm-short'
  | 'clip-limb-inside'
  | 'wall-below-line'
  | 'knob-too-large'
  | 'socket-unknown'
> = {
  'drawn-width-gone': ({ width }) =>
    `It would be drawn ${mm(width)} wide: give a wider piece, or offset and clearance smaller than it.`,
  'lip-locks': ({ angle, most }) =>
    `A lip that leans by ${degrees(angle)} locks with this friction: lean it by less than ${degrees(most)}.`,
  'hub-without-wall': ({ outside, bore }) =>
    `A hub ${mm(outside)} outside has no wall round a bore of ${mm(bore)}: make it wider.`,
  'ball-loose': ({ ball, socket }) =>
    `A ball of ${mm(ball)} drops into a socket ${mm(socket)} wide and rests on no rim: take a wider ball, or glue it.`,
  'ball-deeper-than-itself': ({ out, ball }) =>
    `A ball of ${mm(ball)} pressed so far stands ${mm(out)} out, below the rim: press it in by less.`,
  'ring-inside-out': ({ outer, inner }) =>
    `A ring ${mm(inner)} inside and ${mm(outer)} outside has no face: make the inside radius the smaller.`,
  'foot-without-load': () => 'A foot that carries nothing rocks at any push: give a load above 0 N.',
  'foot-falls-over': ({ tip, radius }) =>
    `A tip ${mm(tip)} up on a face of radius ${mm(radius)} falls over by itself: make the face flatter or the tip lower.`,
  'face-without-crown': () =>
    'A face that stands proud by nothing is flat and has no radius: give a height above 0 mm.',
  'push-at-the-ground': () => 'A push at the ground tips nothing: give a height above 0 mm.',
  'torque-of-no-friction': ({ torque, least }) =>
    `Read ${say(torque)} N·mm; a thread without friction would take ${say(least)} N·mm to raise this load: check weight, lever and sense.`,
  'friction-without-load': () =>
    'Without a load the thread rubs nothing that could be read: hang a weight above 0 N on it.',
  'clip-arm-short': ({ length, least }) =>
    `An arm ${mm(length)} long ends before the corner of the hexagon: make it ${mm(least)} or longer.`,
  'clip-limb-inside': ({ radius, least }) =>
    `Springs ${mm(radius)} from the axis stand in the arms of the clip: set them ${mm(least)} out or more.`,
  'knob-too-large': ({ marks, diameter, most }) =>
    `A knob of ${marks} marks that print would be ${mm(diameter)} across, more than ${mm(most)}: take fewer marks, or mark a bought one.`,
  'wall-below-line': ({ wall, line }) =>
    `A wall of ${mm(wall)} is thinner than the printed line of ${mm(line)}, and would not come out: make the part larger.`,
  'socket-unknown': ({ name, known }) => `Read ${name} as a screw; sockets are known of ${listed(known)}.`,
};
