/** Where a reader meets each symbol first, read off the pages as they are printed; and the glossary made of it. */
import { FIRST_MET, metIn, SYMBOL, SYMBOL_NAME, symbolUnit, TABLE, UNIT } from '#words/page.ts';
import { fieldUnit } from '../assembly/numbers.ts';
import { isSymbol, SYMBOLS, type SymbolName, symbolFact } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import { setSymbol, typeset } from './expression.ts';

export interface MetAt {
  readonly href: string;
  readonly says: string;
}

interface Page {
  readonly html: string;
  readonly sections: readonly { readonly id: string; readonly title: string }[];
}

/** In the order of the book, where its sign stands; a picture that it lights up in shows no sign. */
export const symbolsMet = (
  places: readonly { readonly slug: string; readonly kind: string; readonly number: number | undefined }[],
  rendered: ReadonlyMap<string, Page>,
): ReadonlyMap<SymbolName, MetAt> => {
  const met = new Map<SymbolName, MetAt>();
  for (const { slug, number } of places) {
    const page = rendered.get(slug);
    // The front shows a chapter's figure before the chapter has said anything.
    if (!page || number === undefined) continue;
    let at: Page['sections'][number] | undefined;
    for (const [, id, symbol = ''] of page.html.matchAll(/<h2 id="([^"]+)"|<m[a-z]+ data-sym="([^"]+)"/g)) {
      if (id !== undefined) at = page.sections.find((section) => section.id === id);
      else if (isSymbol(symbol) && !met.has(symbol))
        met.set(symbol, { href: `${slug}.html${at ? `#${at.id}` : ''}`, says: metIn(number, at?.title) });
    }
  }
  return met;
};

/** Of the symbols that stand on a page. */
export const metOn = (html: string, met: ReadonlyMap<SymbolName, MetAt>): Record<string, readonly [string, string]> => {
  const here = new Set([...html.matchAll(/data-sym="([^"]+)"/g)].map(([, symbol = '']) => symbol));
  return Object.fromEntries(
    [...here].flatMap((symbol) => {
      const at = met.get(symbol as SymbolName);
      return at ? [[symbol, [at.href, at.says] as const]] : [];
    }),
  );
};

export const SYMBOLS_PLACE = '<div data-symbols></div>';

/** Puts the glossary of symbols in its place: those that the book uses, by their names. */
export const withSymbols = (html: string, met: ReadonlyMap<SymbolName, MetAt>): string => {
  if (!html.includes(SYMBOLS_PLACE)) return html;
  const rows = (Object.keys(SYMBOLS) as SymbolName[])
    .filter((name) => met.has(name))
    .sort((a, b) => symbolFact(a).says.localeCompare(symbolFact(b).says, 'en'))
    .map((name) => {
      const at = met.get(name);
      return (
        `<tr id="symbol-${name}"><td>${typeset(setSymbol(name))}</td><th scope="row">${escapeText(symbolFact(name).says)}</th>` +
        `<td>${escapeText(symbolUnit(fieldUnit(name, 'metric')))}</td><td><a href="${at?.href}">${escapeText(at?.says ?? '')}</a></td></tr>`
      );
    });
  const heads = [SYMBOL, SYMBOL_NAME, UNIT, FIRST_MET].map((word) => `<th scope="col">${word}</th>`).join('');
  return html.replace(
    SYMBOLS_PLACE,
    () =>
      `<div class="table-scroll glossary" tabindex="0" role="group" aria-label="${TABLE}" data-symbols><table><thead><tr>${heads}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`,
  );
};
