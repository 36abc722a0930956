/** Words of the thread that a stroke uses up. */

interface Caption {
  readonly gainA: string;
  readonly gainC: string;
  /** The thread that runs out first. */
  readonly limiting: string;
  readonly turns: string;
  readonly stroke: string;
  readonly enough: boolean;
}

export const WORDS = {
  title: 'Thread used up by a stroke',
  drawing: 'Stroke wanted and thread used, to one scale',
  thread: (name: string, designation: string) => `thread ${name}, ${designation}`,
  wanted: (stroke: string) => `stroke wanted: ${stroke}`,
  uses: (thread: string, used: string, there: string, tooMuch: boolean) =>
    `${thread}: uses ${used} of ${there}${tooMuch ? ', more than there is' : ''}`,
  caption: ({ gainA, gainC, limiting, turns, stroke, enough }: Caption) =>
    `Each unit of stroke eats ${gainA} of thread A and ${gainC} of thread C. Thread ${limiting} runs out first, after ${turns} turns and ${stroke} of stroke, ${
      enough ? 'enough for the stroke wanted' : 'less than the stroke wanted'
    }.`,
  head: ['thread', 'usable length', 'used by the stroke', 'gain'],
};
