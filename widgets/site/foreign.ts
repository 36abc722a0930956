/** Pages of an edition in another language that are not translated: whatever names them says so. */
import { WRITTEN_IN } from '#words/language.ts';

/** The attribute of what stands in the language in which the notebook is written, where that is not the edition’s. */
export const langOf = ({ foreign }: { readonly foreign?: boolean }): string => (foreign ? ` lang="${WRITTEN_IN}"` : '');
