import { CHOICE_WORDS } from '#words/choices.ts';

/** Inputs that are picked, not typed: each with its options, the first being what a chapter gets if it says nothing. */
export const CHOICES = {
  arrangement: { says: 'arrangement', options: ['in line', 'nested', 'one spindle, two nuts', 'thread adapter'] },
  lock: { says: 'lock of the carried part', options: ['holds', 'gives'] },
  lens: { says: 'lens', options: ['away', 'on each thread'] },
  pull: { says: 'the load along the axis', options: ['presses down', 'pulls up'] },
  assembly: {
    says: 'assembled with',
    options: ['both at mid-range', 'both screwed home', 'A at mid-range, C home'],
  },
  divider: { says: 'divided by', options: ['hexagon', 'square', 'twelve points', 'knob'] },
  hands: { says: 'hands', options: ['same hand', 'opposite hands', 'either'] },
  fitted: { says: 'arranged', options: ['either way', 'in line', 'nested'] },
  drawer: { says: 'threads from', options: ['anywhere', 'at least one you own', 'both you own'] },
  against: { says: 'map against', options: ['gain', 'stroke', 'size', 'the two leads'] },
  order: { says: 'list first', options: ['nearest motion', 'smallest gain', 'smallest size', 'longest stroke'] },
  best: { says: 'list first', options: ['finest step', 'longest stroke', 'lowest', 'cheapest', 'least drift'] },
  counted: { says: 'the wanted step counts', options: ['a step', 'a flat', 'a turn'] },
  pieces: { says: 'pieces', options: ['tightest', 'middling', 'loosest', 'as measured'] },
  law: { says: 'pieces are spread', options: ['uniform', 'normal', 'normal, gauged'] },
  guided: { says: 'the carried part goes', options: ['in a guide', 'without a guide'] },
  keeper: { says: 'the carried part is kept from turning by', options: ['a key', 'springs'] },
  longer_A: { says: 'the longer part of thread A', options: ['its screw', 'its nut'] },
  longer_C: { says: 'the longer part of thread C', options: ['its screw', 'its nut'] },
  turning: { says: 'the hand turns', options: ['clockwise', 'there and back'] },
  asked: { says: 'what must be right', options: ['the height', 'the place sideways'] },
  errors: { says: 'lead errors of the two threads', options: ['independent', 'the same error'] },
  periodic: { says: 'periodic errors of the two threads', options: ['not measured', 'measured'] },
  rubs: { says: 'friction other than in the threads', options: ['nothing', 'the tip', 'a collar'] },
  kept: { says: 'what stays', options: ['foot 1', 'foot 2', 'foot 3', 'mean height'] },
  grooves: { says: 'grooves', options: ['to the middle', 'all one way', 'round the middle'] },
  spring: {
    says: 'spring between',
    options: ['base and carried', 'base and turned', 'turned and carried', 'no parts'],
  },
  action: { says: 'the spring', options: ['pulls', 'pushes'] },
  attitude: { says: 'position of the assembly', options: ['upright', 'on its side', 'upside down'] },
  retention: { says: 'loss of force', options: ['stated', 'fitted to two readings'] },
  plastic: { says: 'printed in', options: ['as measured', 'PLA', 'PETG', 'ABS', 'ASA', 'PC', 'nylon, dry'] },
  ranked: { says: 'rank by', options: ['least strain', 'least scatter', 'smallest'] },
  shape: { says: 'shape', options: ['the first that does it', 'meander', 'ring', 'oval', 'strap', 'coil, bought'] },
  rests: { says: 'the ball rests', options: ['on a flat', 'in a vee', 'on two rollers', 'in a cone'] },
  seat: {
    says: 'the tip, a hardened ball, stands on',
    options: ['hardened ball steel', 'mild steel', 'aluminium 6061-T6', 'aluminium 1100-O, soft', 'brass, half hard'],
  },
  socket: { says: 'socket of a screw', options: ['M3', 'M4', 'M5', 'M6', 'M8', 'M10', 'M12'] },
  paper: { says: 'paper', options: ['A4 upright', 'A3 across', 'A2 across', 'Letter upright'] },
  sheet: {
    says: 'sheet',
    options: ['assembly', 'base', 'turned part', 'carried part', 'spring', 'arm', 'post', 'foot', 'knob'],
  },
  path: { says: 'parts in the path are', options: ['steel', 'aluminium', 'brass', 'granite', 'printed PLA'] },
  allowance: { says: 'stated lead errors add up', options: ['at worst', 'root-sum-square'] },
} as const;

export type ChoiceName = keyof typeof CHOICES;
/** What a choice may be. */
export type OptionOf<C extends ChoiceName> = (typeof CHOICES)[C]['options'][number];
export const isChoice = (name: string): name is ChoiceName => Object.hasOwn(CHOICES, name);

/** What is chosen, as its field says it. */
export const choiceSays = (name: ChoiceName): string => CHOICE_WORDS[name]?.says ?? CHOICES[name].says;
/** An option as a reader sees it: links and chapters keep its name. */
export const optionText = (name: ChoiceName, option: string): string => CHOICE_WORDS[name]?.options[option] ?? option;
