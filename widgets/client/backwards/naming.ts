/** How a panel names the reader’s numbers. */
import type { Input } from '../../assembly/numbers.ts';

/** The first words of a label, which name it among the others. */
export const named = ({ label }: Pick<Input, 'label'>): string => label.split(',')[0] ?? label;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
