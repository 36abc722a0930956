/** Text as it stands in markup. */

export const escapeText = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

/** The same in a file of XML, which can hold neither control characters nor halves of characters (XML 1.0, production 2: Char). */
export const xmlText = (text: string): string =>
  escapeText(text.replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, ''));
