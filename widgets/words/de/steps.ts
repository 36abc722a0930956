/** Schritte einer Umdrehung in ihren Formen: Fläche, Zwölftel, Skalenteil. */
import { STEP_NAMES } from './choices.ts';

const FORMS: Readonly<Record<string, readonly [one: string, many: string, of: string]>> = {
  [STEP_NAMES.other]: ['eine Fläche', 'Flächen', 'einer Fläche'],
  [STEP_NAMES['twelve points']]: ['ein Zwölftel', 'Zwölftel', 'eines Zwölftels'],
  [STEP_NAMES.knob]: ['ein Skalenteil', 'Skalenteile', 'eines Skalenteils'],
};

export const oneStep = (step: string): string => FORMS[step]?.[0] ?? `ein ${step}`;
export const manySteps = (step: string): string => FORMS[step]?.[1] ?? step;
export const ofStep = (step: string): string => FORMS[step]?.[2] ?? `eines ${step}`;
/** Am Anfang eines Satzes. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
