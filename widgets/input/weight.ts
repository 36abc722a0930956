/** What was read of a force that was typed as a mass or in a unit of weight: 10 kg is a mass, and weighs 98.07 N. */

import { weighs } from '#words/texts.ts';
import type { Unit } from '../engine/index.ts';
import { numeral, show } from './format.ts';
import { readQuantity } from './quantity.ts';
import { splitSpread } from './spread.ts';

/** Those of mass; the others are of force already. */
const MASSES: readonly Unit[] = ['kg', 'lb'];
const WEIGHTS: readonly Unit[] = [...MASSES, 'kgf', 'lbf'];

/** One sentence, or none where the text is no force or is typed in newtons. */
export const weightNote = (text: string): string => {
  const read = readQuantity(splitSpread(text)[0], 'N', 'N');
  if (!read.ok) return '';
  const { value, unit } = read.value;
  if (!WEIGHTS.includes(unit)) return '';
  const own = readQuantity(`1 ${unit}`, 'N', 'N');
  const amount = own.ok ? value / own.value.value : 0;
  return weighs({
    typed: `${numeral(amount)}\u00a0${unit}`,
    newtons: show(value, { shown: 'force', digits: 4 }, 'metric'),
    mass: MASSES.includes(unit),
  });
};
