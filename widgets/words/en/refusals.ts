/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { CALIBRATION_REFUSALS } from './refusals/calibration.ts';
import { CONTACT_REFUSALS } from './refusals/contact.ts';
import { FORCE_REFUSALS } from './refusals/force.ts';
import { LEVELLING_REFUSALS } from './refusals/levelling.ts';
import { PLAY_REFUSALS } from './refusals/play.ts';
import { WAYS_REFUSALS } from './refusals/ways.ts';

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...CALIBRATION_REFUSALS,
  ...CONTACT_REFUSALS,
  ...FORCE_REFUSALS,
  ...LEVELLING_REFUSALS,
  ...PLAY_REFUSALS,
  ...WAYS_REFUSALS,
};
