/** What the notebook says itself is in the language of the edition, whatever that of the chapter it stands in. */
import { LANGUAGE, WRITTEN_IN } from '#words/language.ts';

/** As an attribute of an element; none in the edition in which all chapters are written. */
export const OWN = LANGUAGE === WRITTEN_IN ? '' : ` lang="${LANGUAGE}"`;

/** A few words within a sentence of the chapter. */
export const ownWords = (html: string): string => (OWN === '' ? html : `<span${OWN}>${html}</span>`);
