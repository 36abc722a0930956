/**
 * Every language has every word. The types below do not compile where a table of words lacks a word of the English one, takes other values or
 * has one that is no longer there; the compiler names it. The tests hold the list to the files, and the German tables that are no copies.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { RELATIONS, SYMBOLS } from '../../widgets/engine/index.ts';
import type { ChoiceName, OptionOf } from '../../widgets/input/choices.ts';
import type { TextName } from '../../widgets/input/texts.ts';
import type { CHOICE_WORDS, TEXT_WORDS } from '../../widgets/words/de/choices.ts';
import { RELATION_WORDS } from '../../widgets/words/de/relations.ts';
import { SYMBOL_WORDS } from '../../widgets/words/de/symbols.ts';
import type { Same } from '../../widgets/words/same.ts';

/** A table of words beside the English one: all of it, and nothing that is not in it. */
type Complete<En, De extends Same<En>> = Exclude<keyof De, keyof En> extends never ? De : never;

interface German {
  'adjuster.ts': Complete<
    typeof import('../../widgets/words/en/adjuster.ts'),
    typeof import('../../widgets/words/de/adjuster.ts')
  >;
  'backwards.ts': Complete<
    typeof import('../../widgets/words/en/backwards.ts'),
    typeof import('../../widgets/words/de/backwards.ts')
  >;
  'bench.ts': Complete<
    typeof import('../../widgets/words/en/bench.ts'),
    typeof import('../../widgets/words/de/bench.ts')
  >;
  'calibration.ts': Complete<
    typeof import('../../widgets/words/en/calibration.ts'),
    typeof import('../../widgets/words/de/calibration.ts')
  >;
  'classroom.ts': Complete<
    typeof import('../../widgets/words/en/classroom.ts'),
    typeof import('../../widgets/words/de/classroom.ts')
  >;
  'clause.ts': Complete<
    typeof import('../../widgets/words/en/clause.ts'),
    typeof import('../../widgets/words/de/clause.ts')
  >;
  'client.ts': Complete<
    typeof import('../../widgets/words/en/client.ts'),
    typeof import('../../widgets/words/de/client.ts')
  >;
  'contact.ts': Complete<
    typeof import('../../widgets/words/en/contact.ts'),
    typeof import('../../widgets/words/de/contact.ts')
  >;
  'designation.ts': Complete<
    typeof import('../../widgets/words/en/designation.ts'),
    typeof import('../../widgets/words/de/designation.ts')
  >;
  'designs.ts': Complete<
    typeof import('../../widgets/words/en/designs.ts'),
    typeof import('../../widgets/words/de/designs.ts')
  >;
  'figures/adjuster.ts': Complete<
    typeof import('../../widgets/words/en/figures/adjuster.ts'),
    typeof import('../../widgets/words/de/figures/adjuster.ts')
  >;
  'figures/ball-and-seat.ts': Complete<
    typeof import('../../widgets/words/en/figures/ball-and-seat.ts'),
    typeof import('../../widgets/words/de/figures/ball-and-seat.ts')
  >;
  'figures/ball-in-socket.ts': Complete<
    typeof import('../../widgets/words/en/figures/ball-in-socket.ts'),
    typeof import('../../widgets/words/de/figures/ball-in-socket.ts')
  >;
  'figures/bench-card.ts': Complete<
    typeof import('../../widgets/words/en/figures/bench-card.ts'),
    typeof import('../../widgets/words/de/figures/bench-card.ts')
  >;
  'figures/beside-bought.ts': Complete<
    typeof import('../../widgets/words/en/figures/beside-bought.ts'),
    typeof import('../../widgets/words/de/figures/beside-bought.ts')
  >;
  'figures/build-steps.ts': Complete<
    typeof import('../../widgets/words/en/figures/build-steps.ts'),
    typeof import('../../widgets/words/de/figures/build-steps.ts')
  >;
  'figures/calibration.ts': Complete<
    typeof import('../../widgets/words/en/figures/calibration.ts'),
    typeof import('../../widgets/words/de/figures/calibration.ts')
  >;
  'figures/certificate.ts': Complete<
    typeof import('../../widgets/words/en/figures/certificate.ts'),
    typeof import('../../widgets/words/de/figures/certificate.ts')
  >;
  'figures/coated-thread.ts': Complete<
    typeof import('../../widgets/words/en/figures/coated-thread.ts'),
    typeof import('../../widgets/words/de/figures/coated-thread.ts')
  >;
  'figures/design-sheet-lines.ts': Complete<
    typeof import('../../widgets/words/en/figures/design-sheet-lines.ts'),
    typeof import('../../widgets/words/de/figures/design-sheet-lines.ts')
  >;
  'figures/design-sheet.ts': Complete<
    typeof import('../../widgets/words/en/figures/design-sheet.ts'),
    typeof import('../../widgets/words/de/figures/design-sheet.ts')
  >;
  'figures/divided-turn.ts': Complete<
    typeof import('../../widgets/words/en/figures/divided-turn.ts'),
    typeof import('../../widgets/words/de/figures/divided-turn.ts')
  >;
  'figures/drawer.ts': Complete<
    typeof import('../../widgets/words/en/figures/drawer.ts'),
    typeof import('../../widgets/words/de/figures/drawer.ts')
  >;
  'figures/drift-bars.ts': Complete<
    typeof import('../../widgets/words/en/figures/drift-bars.ts'),
    typeof import('../../widgets/words/de/figures/drift-bars.ts')
  >;
  'figures/drunken-thread.ts': Complete<
    typeof import('../../widgets/words/en/figures/drunken-thread.ts'),
    typeof import('../../widgets/words/de/figures/drunken-thread.ts')
  >;
  'figures/fault-bench.ts': Complete<
    typeof import('../../widgets/words/en/figures/fault-bench.ts'),
    typeof import('../../widgets/words/de/figures/fault-bench.ts')
  >;
  'figures/fit-section.ts': Complete<
    typeof import('../../widgets/words/en/figures/fit-section.ts'),
    typeof import('../../widgets/words/de/figures/fit-section.ts')
  >;
  'figures/flanks-under-load.ts': Complete<
    typeof import('../../widgets/words/en/figures/flanks-under-load.ts'),
    typeof import('../../widgets/words/de/figures/flanks-under-load.ts')
  >;
  'figures/foot-on-plane.ts': Complete<
    typeof import('../../widgets/words/en/figures/foot-on-plane.ts'),
    typeof import('../../widgets/words/de/figures/foot-on-plane.ts')
  >;
  'figures/force-chain.ts': Complete<
    typeof import('../../widgets/words/en/figures/force-chain.ts'),
    typeof import('../../widgets/words/de/figures/force-chain.ts')
  >;
  'figures/friction-curve.ts': Complete<
    typeof import('../../widgets/words/en/figures/friction-curve.ts'),
    typeof import('../../widgets/words/de/figures/friction-curve.ts')
  >;
  'figures/groups.ts': Complete<
    typeof import('../../widgets/words/en/figures/groups.ts'),
    typeof import('../../widgets/words/de/figures/groups.ts')
  >;
  'figures/hand-force.ts': Complete<
    typeof import('../../widgets/words/en/figures/hand-force.ts'),
    typeof import('../../widgets/words/de/figures/hand-force.ts')
  >;
  'figures/kit.ts': Complete<
    typeof import('../../widgets/words/en/figures/kit.ts'),
    typeof import('../../widgets/words/de/figures/kit.ts')
  >;
  'figures/jack-solid.ts': Complete<
    typeof import('../../widgets/words/en/figures/jack-solid.ts'),
    typeof import('../../widgets/words/de/figures/jack-solid.ts')
  >;
  'figures/ladder.ts': Complete<
    typeof import('../../widgets/words/en/figures/ladder.ts'),
    typeof import('../../widgets/words/de/figures/ladder.ts')
  >;
  'figures/lead-error.ts': Complete<
    typeof import('../../widgets/words/en/figures/lead-error.ts'),
    typeof import('../../widgets/words/de/figures/lead-error.ts')
  >;
  'figures/leads-in-nut.ts': Complete<
    typeof import('../../widgets/words/en/figures/leads-in-nut.ts'),
    typeof import('../../widgets/words/de/figures/leads-in-nut.ts')
  >;
  'figures/levelling-plate.ts': Complete<
    typeof import('../../widgets/words/en/figures/levelling-plate.ts'),
    typeof import('../../widgets/words/de/figures/levelling-plate.ts')
  >;
  'figures/lock-error.ts': Complete<
    typeof import('../../widgets/words/en/figures/lock-error.ts'),
    typeof import('../../widgets/words/de/figures/lock-error.ts')
  >;
  'figures/motion-plot.ts': Complete<
    typeof import('../../widgets/words/en/figures/motion-plot.ts'),
    typeof import('../../widgets/words/de/figures/motion-plot.ts')
  >;
  'figures/other-ways.ts': Complete<
    typeof import('../../widgets/words/en/figures/other-ways.ts'),
    typeof import('../../widgets/words/de/figures/other-ways.ts')
  >;
  'figures/pair-map.ts': Complete<
    typeof import('../../widgets/words/en/figures/pair-map.ts'),
    typeof import('../../widgets/words/de/figures/pair-map.ts')
  >;
  'figures/part-drawings.ts': Complete<
    typeof import('../../widgets/words/en/figures/part-drawings.ts'),
    typeof import('../../widgets/words/de/figures/part-drawings.ts')
  >;
  'figures/part-files.ts': Complete<
    typeof import('../../widgets/words/en/figures/part-files.ts'),
    typeof import('../../widgets/words/de/figures/part-files.ts')
  >;
  'figures/passport.ts': Complete<
    typeof import('../../widgets/words/en/figures/passport.ts'),
    typeof import('../../widgets/words/de/figures/passport.ts')
  >;
  'figures/plate-modes.ts': Complete<
    typeof import('../../widgets/words/en/figures/plate-modes.ts'),
    typeof import('../../widgets/words/de/figures/plate-modes.ts')
  >;
  'figures/plate-on-feet.ts': Complete<
    typeof import('../../widgets/words/en/figures/plate-on-feet.ts'),
    typeof import('../../widgets/words/de/figures/plate-on-feet.ts')
  >;
  'figures/play-batch.ts': Complete<
    typeof import('../../widgets/words/en/figures/play-batch.ts'),
    typeof import('../../widgets/words/de/figures/play-batch.ts')
  >;
  'figures/printed-parts.ts': Complete<
    typeof import('../../widgets/words/en/figures/printed-parts.ts'),
    typeof import('../../widgets/words/de/figures/printed-parts.ts')
  >;
  'figures/printed-spring.ts': Complete<
    typeof import('../../widgets/words/en/figures/printed-spring.ts'),
    typeof import('../../widgets/words/de/figures/printed-spring.ts')
  >;
  'figures/pushed-jack.ts': Complete<
    typeof import('../../widgets/words/en/figures/pushed-jack.ts'),
    typeof import('../../widgets/words/de/figures/pushed-jack.ts')
  >;
  'figures/ramp.ts': Complete<
    typeof import('../../widgets/words/en/figures/ramp.ts'),
    typeof import('../../widgets/words/de/figures/ramp.ts')
  >;
  'figures/reversal-loop.ts': Complete<
    typeof import('../../widgets/words/en/figures/reversal-loop.ts'),
    typeof import('../../widgets/words/de/figures/reversal-loop.ts')
  >;
  'figures/rounding-cost.ts': Complete<
    typeof import('../../widgets/words/en/figures/rounding-cost.ts'),
    typeof import('../../widgets/words/de/figures/rounding-cost.ts')
  >;
  'figures/section.ts': Complete<
    typeof import('../../widgets/words/en/figures/section.ts'),
    typeof import('../../widgets/words/de/figures/section.ts')
  >;
  'figures/settling-log.ts': Complete<
    typeof import('../../widgets/words/en/figures/settling-log.ts'),
    typeof import('../../widgets/words/de/figures/settling-log.ts')
  >;
  'figures/solid.ts': Complete<
    typeof import('../../widgets/words/en/figures/solid.ts'),
    typeof import('../../widgets/words/de/figures/solid.ts')
  >;
  'figures/spring-days.ts': Complete<
    typeof import('../../widgets/words/en/figures/spring-days.ts'),
    typeof import('../../widgets/words/de/figures/spring-days.ts')
  >;
  'figures/thread-eaten.ts': Complete<
    typeof import('../../widgets/words/en/figures/thread-eaten.ts'),
    typeof import('../../widgets/words/de/figures/thread-eaten.ts')
  >;
  'figures/thread-limits.ts': Complete<
    typeof import('../../widgets/words/en/figures/thread-limits.ts'),
    typeof import('../../widgets/words/de/figures/thread-limits.ts')
  >;
  'figures/torque-bars.ts': Complete<
    typeof import('../../widgets/words/en/figures/torque-bars.ts'),
    typeof import('../../widgets/words/de/figures/torque-bars.ts')
  >;
  'figures/vee-coupling.ts': Complete<
    typeof import('../../widgets/words/en/figures/vee-coupling.ts'),
    typeof import('../../widgets/words/de/figures/vee-coupling.ts')
  >;
  'figures/waves-in-nut.ts': Complete<
    typeof import('../../widgets/words/en/figures/waves-in-nut.ts'),
    typeof import('../../widgets/words/de/figures/waves-in-nut.ts')
  >;
  'figures/which-part.ts': Complete<
    typeof import('../../widgets/words/en/figures/which-part.ts'),
    typeof import('../../widgets/words/de/figures/which-part.ts')
  >;
  'force.ts': Complete<
    typeof import('../../widgets/words/en/force.ts'),
    typeof import('../../widgets/words/de/force.ts')
  >;
  'ideas.ts': Complete<
    typeof import('../../widgets/words/en/ideas.ts'),
    typeof import('../../widgets/words/de/ideas.ts')
  >;
  'language.ts': Complete<
    typeof import('../../widgets/words/en/language.ts'),
    typeof import('../../widgets/words/de/language.ts')
  >;
  'other-words.ts': Complete<
    typeof import('../../widgets/words/en/other-words.ts'),
    typeof import('../../widgets/words/de/other-words.ts')
  >;
  'page.ts': Complete<typeof import('../../widgets/words/en/page.ts'), typeof import('../../widgets/words/de/page.ts')>;
  'pair.ts': Complete<typeof import('../../widgets/words/en/pair.ts'), typeof import('../../widgets/words/de/pair.ts')>;
  'papers.ts': Complete<
    typeof import('../../widgets/words/en/papers.ts'),
    typeof import('../../widgets/words/de/papers.ts')
  >;
  'readings.ts': Complete<
    typeof import('../../widgets/words/en/readings.ts'),
    typeof import('../../widgets/words/de/readings.ts')
  >;
  'refusals.ts': Complete<
    typeof import('../../widgets/words/en/refusals.ts'),
    typeof import('../../widgets/words/de/refusals.ts')
  >;
  'refusals/adjuster.ts': Complete<
    typeof import('../../widgets/words/en/refusals/adjuster.ts'),
    typeof import('../../widgets/words/de/refusals/adjuster.ts')
  >;
  'refusals/assembly.ts': Complete<
    typeof import('../../widgets/words/en/refusals/assembly.ts'),
    typeof import('../../widgets/words/de/refusals/assembly.ts')
  >;
  'refusals/built.ts': Complete<
    typeof import('../../widgets/words/en/refusals/built.ts'),
    typeof import('../../widgets/words/de/refusals/built.ts')
  >;
  'refusals/calibration.ts': Complete<
    typeof import('../../widgets/words/en/refusals/calibration.ts'),
    typeof import('../../widgets/words/de/refusals/calibration.ts')
  >;
  'refusals/client.ts': Complete<
    typeof import('../../widgets/words/en/refusals/client.ts'),
    typeof import('../../widgets/words/de/refusals/client.ts')
  >;
  'refusals/contact.ts': Complete<
    typeof import('../../widgets/words/en/refusals/contact.ts'),
    typeof import('../../widgets/words/de/refusals/contact.ts')
  >;
  'refusals/designation.ts': Complete<
    typeof import('../../widgets/words/en/refusals/designation.ts'),
    typeof import('../../widgets/words/de/refusals/designation.ts')
  >;
  'refusals/drawer.ts': Complete<
    typeof import('../../widgets/words/en/refusals/drawer.ts'),
    typeof import('../../widgets/words/de/refusals/drawer.ts')
  >;
  'refusals/drawings.ts': Complete<
    typeof import('../../widgets/words/en/refusals/drawings.ts'),
    typeof import('../../widgets/words/de/refusals/drawings.ts')
  >;
  'refusals/exercises.ts': Complete<
    typeof import('../../widgets/words/en/refusals/exercises.ts'),
    typeof import('../../widgets/words/de/refusals/exercises.ts')
  >;
  'refusals/figures-a.ts': Complete<
    typeof import('../../widgets/words/en/refusals/figures-a.ts'),
    typeof import('../../widgets/words/de/refusals/figures-a.ts')
  >;
  'refusals/figures-b.ts': Complete<
    typeof import('../../widgets/words/en/refusals/figures-b.ts'),
    typeof import('../../widgets/words/de/refusals/figures-b.ts')
  >;
  'refusals/force.ts': Complete<
    typeof import('../../widgets/words/en/refusals/force.ts'),
    typeof import('../../widgets/words/de/refusals/force.ts')
  >;
  'refusals/holding.ts': Complete<
    typeof import('../../widgets/words/en/refusals/holding.ts'),
    typeof import('../../widgets/words/de/refusals/holding.ts')
  >;
  'refusals/input.ts': Complete<
    typeof import('../../widgets/words/en/refusals/input.ts'),
    typeof import('../../widgets/words/de/refusals/input.ts')
  >;
  'refusals/kernel.ts': Complete<
    typeof import('../../widgets/words/en/refusals/kernel.ts'),
    typeof import('../../widgets/words/de/refusals/kernel.ts')
  >;
  'refusals/levelling.ts': Complete<
    typeof import('../../widgets/words/en/refusals/levelling.ts'),
    typeof import('../../widgets/words/de/refusals/levelling.ts')
  >;
  'refusals/numerics.ts': Complete<
    typeof import('../../widgets/words/en/refusals/numerics.ts'),
    typeof import('../../widgets/words/de/refusals/numerics.ts')
  >;
  'refusals/pair.ts': Complete<
    typeof import('../../widgets/words/en/refusals/pair.ts'),
    typeof import('../../widgets/words/de/refusals/pair.ts')
  >;
  'refusals/passports.ts': Complete<
    typeof import('../../widgets/words/en/refusals/passports.ts'),
    typeof import('../../widgets/words/de/refusals/passports.ts')
  >;
  'refusals/play.ts': Complete<
    typeof import('../../widgets/words/en/refusals/play.ts'),
    typeof import('../../widgets/words/de/refusals/play.ts')
  >;
  'refusals/settling.ts': Complete<
    typeof import('../../widgets/words/en/refusals/settling.ts'),
    typeof import('../../widgets/words/de/refusals/settling.ts')
  >;
  'refusals/site.ts': Complete<
    typeof import('../../widgets/words/en/refusals/site.ts'),
    typeof import('../../widgets/words/de/refusals/site.ts')
  >;
  'refusals/spring.ts': Complete<
    typeof import('../../widgets/words/en/refusals/spring.ts'),
    typeof import('../../widgets/words/de/refusals/spring.ts')
  >;
  'refusals/thread.ts': Complete<
    typeof import('../../widgets/words/en/refusals/thread.ts'),
    typeof import('../../widgets/words/de/refusals/thread.ts')
  >;
  'refusals/typed-tables.ts': Complete<
    typeof import('../../widgets/words/en/refusals/typed-tables.ts'),
    typeof import('../../widgets/words/de/refusals/typed-tables.ts')
  >;
  'refusals/ways.ts': Complete<
    typeof import('../../widgets/words/en/refusals/ways.ts'),
    typeof import('../../widgets/words/de/refusals/ways.ts')
  >;
  'texts.ts': Complete<
    typeof import('../../widgets/words/en/texts.ts'),
    typeof import('../../widgets/words/de/texts.ts')
  >;
  'thread.ts': Complete<
    typeof import('../../widgets/words/en/thread.ts'),
    typeof import('../../widgets/words/de/thread.ts')
  >;
  'typed.ts': Complete<
    typeof import('../../widgets/words/en/typed.ts'),
    typeof import('../../widgets/words/de/typed.ts')
  >;
}

/** Choices and lists that stand in English under their own names. */
type Choices = {
  readonly [C in ChoiceName]: { readonly says: string; readonly options: { readonly [O in OptionOf<C>]: string } };
};
type GermanChoices = Complete<Choices, typeof CHOICE_WORDS>;
type GermanTexts = Complete<Readonly<Record<TextName, string>>, typeof TEXT_WORDS>;

const WORDS = join(import.meta.dirname, '../../widgets/words');
const filesIn = (language: string): string[] =>
  readdirSync(join(WORDS, language), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts'))
    .sort();

describe('the German words', () => {
  it('have every word of English, by type', () => {
    expectTypeOf<German>().toBeObject();
    expectTypeOf<GermanChoices>().toBeObject();
    expectTypeOf<GermanTexts>().toBeObject();
  });

  it('are held by a type each to the English table of the same name', () => {
    const source = readFileSync(import.meta.filename, 'utf8');
    const listed = [...source.matchAll(/^ {2}'(\S+\.ts)': Complete</gm)].map(([, file]) => file);
    // Choices are held to the choices themselves.
    expect([...listed, 'choices.ts'].sort()).toEqual(filesIn('en'));
    expect(filesIn('de')).toEqual(expect.arrayContaining(filesIn('en')));
  });

  it('name every symbol and say what every relation is', () => {
    expect(Object.keys(SYMBOL_WORDS).sort()).toEqual(Object.keys(SYMBOLS).sort());
    expect(Object.keys(RELATION_WORDS).sort()).toEqual(RELATIONS.map(({ name }) => name).sort());
  });
});
