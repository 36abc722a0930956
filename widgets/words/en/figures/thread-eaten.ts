/** Words of the thread that a stroke uses up. */

interface Caption {
  readonly gainA: string;
  readonly gainC: string;
  /** The thread that runs out first. */
  readonly limiting: string;
  readonly turns: string;
  readonly stroke: string;
  readonly enough: boolean;
  /** What the stops of stated parts leave. */
  readonly stated: { readonly turns: string; readonly stroke: string } | undefined;
}

export const WORDS = {
  title: 'Thread used by a stroke',
  drawing: 'Wanted stroke and thread used, to one scale',
  thread: (name: string, designation: string) => `thread ${name}, ${designation}`,
  wanted: (stroke: string) => `wanted stroke: ${stroke}`,
  uses: (thread: string, used: string, there: string, tooMuch: boolean) =>
    `${thread}: uses ${used} of ${there}${tooMuch ? ', more than there is' : ''}`,
  caption: ({ gainA, gainC, limiting, turns, stroke, enough, stated }: Caption) => {
    const verdict = enough ? 'enough for the wanted stroke' : 'less than the wanted stroke';
    const first = `Each unit of stroke uses ${gainA} units of thread A and ${gainC} of thread C. Thread ${limiting} runs out first, after ${turns} turns and ${stroke} of stroke`;
    return stated
      ? `${first}. As the parts are put together, their stops leave ${stated.turns} turns and ${stated.stroke}, ${verdict}.`
      : `${first}, ${verdict}.`;
  },
  used: (thread: string) => `used by the stroke, ${thread}`,
  stroke: 'stroke there is',
  turns: 'turns there are',
  gain: (thread: string) => `gain, ${thread}`,
  head: ['thread', 'usable length', 'used by the stroke', 'gain'],
};
