/** The numbers with which a chapter opens a figure. */
import { gather, type Input, type Numbers, readInput } from '../../widgets/assembly/numbers.ts';
import { blocksOf, CHAPTERS, press } from './chapters.ts';
import { valueIn } from './results.ts';

/** The numbers a chapter gives to a figure of the widget. */
export const startOf = (widget: string): { numbers: Numbers; inputs: readonly Input[] } => {
  for (const { file, text } of CHAPTERS)
    for (const { info } of blocksOf(text, 'figure')) {
      const [, name, id] = /^figure (\S+) (?:with )?([\w-]+)(?: measured)?:/.exec(info) ?? [];
      if (name !== widget) continue;
      const inputs = press(text, file).model.sets.find((s) => s.id === id)?.inputs ?? [];
      const values = inputs.map((input) => [input.name, valueIn(readInput(input, input.start, 'metric'))] as const);
      return { numbers: gather({ id: id ?? '', inputs }, new Map(values)), inputs };
    }
  throw new Error(`no chapter has the figure ${widget}`);
};
