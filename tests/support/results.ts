/** Opens a result in a test: the value, or the reason as the failure; and the other way about. */

import type { Result } from '../../widgets/engine/index.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

export const valueIn = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`refused: ${reasonOf(result)}`);
  return result.value;
};

export const reasonIn = (result: Result<unknown>): string => {
  if (result.ok) throw new Error('accepted what should be refused');
  return reasonOf(result);
};
