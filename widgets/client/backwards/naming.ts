/** How a panel names the reader’s numbers. */
import type { Input } from '../../assembly/numbers.ts';

/** The first words of a label, and as many more as tell it from the others. */
export const named = ({ label }: Pick<Input, 'label'>, among: readonly Pick<Input, 'label'>[] = []): string => {
  const parts = label.split(',');
  const others = among.filter((other) => other.label !== label);
  for (let i = 1; i < parts.length; i++) {
    const first = parts.slice(0, i).join(',');
    if (!others.some((other) => other.label === first || other.label.startsWith(`${first},`))) return first;
  }
  return label;
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
