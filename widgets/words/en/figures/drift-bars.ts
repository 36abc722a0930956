/** The words of what moves though nobody turns. */
export const WORDS = {
  title: 'What moves while nobody turns',
  label: 'What moves while nobody turns, compared with one step of the pair',
  pair: (A: string, C: string) => `${A} with ${C}`,
  bars: {
    tip: 'the tip sinks in',
    shank: 'a steel shank shortens',
    room: (material: string) => `the room changes, ${material}`,
    hand: (material: string) => `a warm hand, ${material}`,
    creep: 'a printed part creeps',
  },
  step: (step: string) => `motion of one ${step}`,
  oneStep: (v: { readonly step: string; readonly pair: string; readonly motion: string }) =>
    `one ${v.step} of ${v.pair}: ${v.motion}`,
  bar: (v: { readonly name: string; readonly motion: string; readonly steps: string; readonly step: string }) =>
    `${v.name}: ${v.motion}, ${v.steps} ${v.step}s`,
  caption: (v: {
    readonly step: string;
    readonly perStep: string;
    readonly largest: string;
    readonly motion: string;
    readonly steps: string;
  }) =>
    `Compared with one ${v.step} of ${v.perStep}, the largest is this: ${v.largest}, ${v.motion}, which is ${v.steps} ${v.step}s.`,
  head: (step: string) => ['what moves', 'motion', `${step}s`],
};
