/** Was die Beziehungen des Rechenwerks von sich sagen. */
export const RELATION_WORDS: Readonly<Record<string, { readonly says: string }>> = {};
