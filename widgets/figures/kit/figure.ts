/**
 * What every figure is: the numbers it reads, what follows from them, and a picture, a caption and a table that all say the
 * same. The build and the browser call the same `draw`.
 *
 * A figure names the threads, symbols, choices and lists it reads; its state is worked from just these, once a frame, and is a
 * refusal where they can’t be drawn. A name that is not in the glossary, or that is read without being named, does not compile.
 */
import type { GroupName } from '#words/figures/groups.ts';
import type { Numbers } from '../../assembly/numbers.ts';
import { good, type Result, type SymbolName, type Thread } from '../../engine/index.ts';
import type { ChoiceName, OptionOf } from '../../input/choices.ts';
import type { UnitView } from '../../input/format.ts';
import type { TextName } from '../../input/texts.ts';
import { type Amount, isAmount, type Row, readoutHtml } from './readout.ts';

/** What threads are called in chapters: the two of a pair, a plain screw beside them, or the only one. */
export type ThreadName = 'A' | 'C' | 'B' | 'thread';

/** Just the numbers that a figure names, all of them there. */
export interface NumbersOf<T extends ThreadName, Q extends SymbolName, C extends ChoiceName, X extends TextName> {
  readonly threads: { readonly [K in T]: Thread };
  readonly values: { readonly [K in Q]: number };
  readonly choices: { readonly [K in C]: OptionOf<K> };
  readonly texts: { readonly [K in X]: string };
}

export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface DesignInUse {
  readonly name: string;
  readonly passport: string;
  readonly netLead: number | undefined;
}

/** What a mounted figure may use of the page. */
export interface FigureContext<T extends ThreadName, Q extends SymbolName, C extends ChoiceName, X extends TextName> {
  readonly numbers: () => NumbersOf<T, Q, C, X>;
  readonly view: () => UnitView;
  /** Sets a quantity of the reader's numbers, kept within its field's bounds; the page draws again on the next frame. */
  readonly set: (name: Q, value: number) => void;
  /** Types a text into a list of the reader's numbers, as if by hand: its own, or one that a figure beside it reads. */
  readonly type: (name: TextName, text: string) => void;
  /** The design in use, if any: its passports of pieces, and what a turn moves by its threads, mm, where it has both. */
  readonly design: () => DesignInUse | undefined;
  /** Keeps a text with the design in use; the answer is why that does not last, in a sentence, or empty. */
  readonly keepInDesign: (name: TextName, text: string) => string;
  /** Draws again though no number changed, because the figure has found something out meanwhile. */
  readonly redraw: () => void;
}

/** A script that works beside the page, as the page has it. */
export interface WorkerScript {
  /** Where a worker finds it; undefined where none can be begun, on a page from a file or one that holds everything itself. */
  readonly address: string | undefined;
  /** Runs it on the page instead; false where it can't be had. */
  readonly run: () => Promise<boolean>;
}

export interface InBackground {
  /** Its script, under `figures/`. */
  readonly file: string;
  readonly lend: (script: WorkerScript) => void;
}

interface Definition<T extends ThreadName, Q extends SymbolName, C extends ChoiceName, X extends TextName, S> {
  /** As a chapter names it. */
  readonly name: string;
  /** The accessible name of the figure. */
  readonly title: string;
  readonly threads: readonly T[];
  readonly quantities: readonly Q[];
  readonly choices?: readonly C[];
  /** Lists typed as text. */
  readonly texts?: readonly X[];
  /** Which of these are set in another figure or example of the page, and have no field here. */
  readonly setElsewhere?: readonly NoInfer<T | Q | C | X>[];
  /** The two or three that a reader works first: their fields stand under the picture, in this order. */
  readonly chief: readonly NoInfer<T | Q | C | X>[];
  /** Every other one, in named groups that are folded under the foot. */
  readonly groups?: Readonly<Partial<Record<GroupName, readonly NoInfer<T | Q | C | X>[]>>>;
  /** Those that change nothing here as the others stand; they are not asked for. */
  readonly idle?: (numbers: NumbersOf<T, Q, C, X>) => readonly NoInfer<T | Q | C | X>[];
  /** Options of a choice that these numbers have nothing for; they are not offered. */
  readonly absent?: (numbers: NumbersOf<T, Q, C, X>) => Readonly<Partial<Record<NoInfer<C>, readonly string[]>>>;
  /** Numbers that its verdict on a design rests on: where a design in use does not have them all, its tick is left away and that is said. */
  readonly decidedBy?: readonly NoInfer<T | Q | C | X>[];
  /** All that picture, caption and table need, or the sentence that says why these numbers can't be drawn. */
  readonly state: (numbers: NumbersOf<T, Q, C, X>, view: UnitView) => Result<S>;
  /** The still picture as HTML or SVG text. */
  readonly draw: (state: S, view: UnitView) => string;
  /** One sentence: shape, extremes, the present point. */
  readonly caption: (state: S, view: UnitView) => string;
  /** What is read off beside the picture: numbers that can be asked backwards, and words. They stand first among the readings. */
  readonly rows?: (state: S, view: UnitView) => readonly Row[];
  /** Numbers that picture or readings print by themselves, each in an element with its key as `data-result`. */
  readonly printed?: (state: S, view: UnitView) => readonly Amount[];
  /**
   * What else is read off, as HTML: lists, verdicts. All readings stand in the foot, folded, and follow once the frame is drawn.
   */
  readonly readings?: (state: S, view: UnitView) => string;
  /** Where `update` moves them: they are made anew only with the picture. */
  readonly steadyReadings?: boolean;
  /** What the fold with readings and table is called, where it holds what the figure is for. */
  readonly numbersName?: string;
  /** The numbers behind the picture. */
  readonly table: (state: S, view: UnitView) => Table;
  /** What the still picture depends on; while it stays the same, `update` alone moves it. Every number, where left out. */
  readonly renderKey?: (state: S, numbers: NumbersOf<T, Q, C, X>) => unknown;
  /** Moves the picture on the stage to the present state; only sets attributes and texts. */
  readonly update?: (stage: HTMLElement, state: S, view: UnitView) => void;
  /** Listens on the stage, which outlives the pictures on it. */
  readonly mount?: (stage: HTMLElement, context: FigureContext<T, Q, C, X>) => void;
  /** Where it works in the background. */
  readonly worker?: InBackground;
}

/** A figure worked at some numbers. */
export interface Drawn {
  readonly renderKey: string;
  readonly draw: () => string;
  readonly caption: () => string;
  /** Empty where the picture says it all. */
  readonly readings: () => string;
  /** Every number that can be asked backwards. */
  readonly amounts: () => readonly Amount[];
  readonly steadyReadings: boolean;
  readonly table: () => Table;
  readonly update: (stage: HTMLElement) => void;
}

/** Fields that are folded under one name. */
export interface Group {
  readonly name: GroupName;
  readonly names: readonly string[];
}

/** A figure as chapters, site and page have it, its symbols only known at run time. */
export interface Figure {
  readonly name: string;
  readonly title: string;
  readonly threads: readonly string[];
  readonly quantities: readonly SymbolName[];
  readonly choices: readonly ChoiceName[];
  readonly texts: readonly TextName[];
  readonly setElsewhere: readonly string[];
  readonly chief: readonly string[];
  readonly groups: readonly Group[];
  readonly decidedBy: readonly string[];
  readonly numbersName: string | undefined;
  /** Names of the numbers that change nothing at these. */
  readonly idle: (numbers: Numbers) => readonly string[];
  /** Options, by the name of their choice, that these numbers have nothing for. */
  readonly absent: (numbers: Numbers) => Readonly<Partial<Record<string, readonly string[]>>>;
  /** Works the state at these numbers once; picture, caption and table are had from it when they are asked for. */
  readonly at: (numbers: Numbers, view: UnitView) => Result<Drawn>;
  readonly mount: ((stage: HTMLElement, context: PageContext) => void) | undefined;
  readonly worker: InBackground | undefined;
}

/** What the page lends a figure that it mounts. */
interface PageContext {
  readonly numbers: () => Numbers;
  readonly view: () => UnitView;
  readonly set: (name: string, value: number) => void;
  readonly type: (name: string, text: string) => void;
  readonly design: () => DesignInUse | undefined;
  readonly keepInDesign: (name: TextName, text: string) => string;
  readonly redraw: () => void;
}

export const defineFigure = <
  const T extends ThreadName,
  const Q extends SymbolName,
  S,
  const C extends ChoiceName = never,
  const X extends TextName = never,
>(
  definition: Definition<T, Q, C, X, S>,
): Figure => {
  const {
    name,
    title,
    threads,
    quantities,
    state,
    draw,
    caption,
    rows,
    printed,
    readings,
    table,
    renderKey,
    update,
    mount,
    worker,
  } = definition;
  const choices = definition.choices ?? [];
  const texts = definition.texts ?? [];
  /** A number that a figure reads is there, since a chapter that leaves it out does not build. */
  const picked = <K extends string, V>(names: readonly K[], from: Readonly<Partial<Record<K, V>>> | undefined) =>
    Object.fromEntries(
      names.map((key) => {
        const value = from?.[key];
        if (value === undefined) throw new Error(`The figure ${name} is asked without its ${key}.`);
        return [key, value];
      }),
    ) as { readonly [P in K]: V };
  const numbersOf = (numbers: Numbers): NumbersOf<T, Q, C, X> => ({
    threads: picked<T, Thread>(threads, numbers.threads as Partial<Record<T, Thread>>),
    values: picked<Q, number>(quantities, numbers.values),
    choices: picked<C, string>(choices, numbers.choices) as NumbersOf<T, Q, C, X>['choices'],
    texts: picked<X, string>(texts, numbers.texts),
  });
  return {
    name,
    title,
    threads,
    quantities,
    choices,
    texts,
    setElsewhere: definition.setElsewhere ?? [],
    chief: definition.chief,
    decidedBy: definition.decidedBy ?? [],
    numbersName: definition.numbersName,
    groups: Object.entries(definition.groups ?? {}).map(([group, names]) => ({ name: group as GroupName, names })),
    idle: (all) => definition.idle?.(numbersOf(all)) ?? [],
    absent: (all) => definition.absent?.(numbersOf(all)) ?? {},
    at: (all, view) => {
      const numbers = numbersOf(all);
      const worked = state(numbers, view);
      if (!worked.ok) return worked;
      const s = worked.value;
      return good({
        renderKey: JSON.stringify([renderKey ? renderKey(s, numbers) : numbers, view]),
        draw: () => draw(s, view),
        caption: () => caption(s, view),
        readings: () => readoutHtml(rows?.(s, view) ?? [], view) + (readings?.(s, view) ?? ''),
        amounts: () => [...(rows?.(s, view).filter(isAmount) ?? []), ...(printed?.(s, view) ?? [])],
        steadyReadings: definition.steadyReadings === true,
        table: () => table(s, view),
        update: (stage) => update?.(stage, s, view),
      });
    },
    mount:
      mount &&
      ((stage, context) =>
        mount(stage, {
          ...context,
          numbers: () => numbersOf(context.numbers()),
        })),
    worker,
  };
};
