/** Der Satz jeder Ablehnung, nach ihrem Kennwort: was gelesen wurde, was erlaubt ist, was hilft. */
import type { RefusalWords } from '../refusal-words.ts';
import { ADJUSTER } from './refusals/adjuster.ts';
import { ASSEMBLY } from './refusals/assembly.ts';
import { BUILT } from './refusals/built.ts';
import { CALIBRATION_REFUSALS } from './refusals/calibration.ts';
import { CLIENT } from './refusals/client.ts';
import { CONTACT_REFUSALS } from './refusals/contact.ts';
import { DESIGNATION } from './refusals/designation.ts';
import { DRAWER } from './refusals/drawer.ts';
import { DRAWINGS } from './refusals/drawings.ts';
import { EXERCISES } from './refusals/exercises.ts';
import { FIGURES_A } from './refusals/figures-a.ts';
import { FIGURES_B } from './refusals/figures-b.ts';
import { FORCE_REFUSALS } from './refusals/force.ts';
import { HOLDING } from './refusals/holding.ts';
import { INPUT } from './refusals/input.ts';
import { KERNEL } from './refusals/kernel.ts';
import { LEVELLING_REFUSALS } from './refusals/levelling.ts';
import { NUMERICS } from './refusals/numerics.ts';
import { PAIR } from './refusals/pair.ts';
import { PASSPORTS } from './refusals/passports.ts';
import { PLAY_REFUSALS } from './refusals/play.ts';
import { SETTLING } from './refusals/settling.ts';
import { SITE } from './refusals/site.ts';
import { SPRING } from './refusals/spring.ts';
import { THREAD } from './refusals/thread.ts';
import { TYPED_TABLES } from './refusals/typed-tables.ts';
import { WAYS_REFUSALS } from './refusals/ways.ts';

export const REFUSALS: RefusalWords = {
  ...ASSEMBLY,
  ...CLIENT,
  ...DESIGNATION,
  ...EXERCISES,
  ...INPUT,
  ...SITE,
  ...TYPED_TABLES,
  ...FIGURES_A,
  ...ADJUSTER,
  ...DRAWER,
  ...DRAWINGS,
  ...FIGURES_B,
  ...BUILT,
  ...CALIBRATION_REFUSALS,
  ...CONTACT_REFUSALS,
  ...FORCE_REFUSALS,
  ...HOLDING,
  ...LEVELLING_REFUSALS,
  ...PLAY_REFUSALS,
  ...SPRING,
  ...WAYS_REFUSALS,
  ...KERNEL,
  ...NUMERICS,
  ...PAIR,
  ...PASSPORTS,
  ...SETTLING,
  ...THREAD,
};
