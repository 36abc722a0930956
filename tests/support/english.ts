/** What of a page in another language is English, though nothing says so: texts and names with words that only English has. */

/** Short words of every English sentence that are no German words. */
const WORDS =
  /\b(?:the|of|and|with|which|that|from|this|not|your|you|turns?|threads?|length|each|both|where|are|has|have|its|can|than|more|only|how|what|when|into|over|under|between|clockwise|anticlockwise|is|for|to|by)\b/;
/** Kept as they are: designations and descriptions of parts that are typed, and keys of the shop’s own names. */
const TYPED = /^(?:\s*(?:base|turned|carried|tip|springs|lock|divider|keep|assembled|name)\s*=.*)+$/s;
const NAMED = ['aria-label', 'title', 'alt', 'aria-valuetext', 'placeholder', 'aria-roledescription'];

export const englishIn = (document: Document): string[] => {
  const found: string[] = [];
  const tell = (text: string | null | undefined) => {
    if (text && WORDS.test(text) && !TYPED.test(text)) found.push(text.trim());
  };
  const walk = (node: Element, foreign: boolean): void => {
    const lang = node.getAttribute('lang');
    const english = lang === null ? foreign : lang.startsWith('en');
    if (/^(?:script|style|code|math|head)$/i.test(node.tagName)) return;
    if (!english) for (const name of NAMED) tell(node.getAttribute(name));
    for (const child of node.childNodes)
      if (child.nodeType === 1) walk(child as Element, english);
      else if (child.nodeType === 3 && !english) tell(child.textContent);
  };
  if (document.body) walk(document.body, false);
  return found;
};
