/**
 * Puts a picture in the place of the one before by changing only what differs: a browser then styles, lays out and paints that alone, and what
 * has the focus stays. Pictures of one figure are alike from key to key, so that parts are matched by their places.
 */

/** Whether a part can become the other by its attributes and what stands in it. */
const alike = (old: Node, next: Node): boolean =>
  old.nodeType === next.nodeType &&
  old.nodeName === next.nodeName &&
  // What is drawn on it is no part of the document, and its size may not be set once a worker has it.
  old.nodeName !== 'CANVAS' &&
  (!(old instanceof Element && next instanceof Element) ||
    old.getAttribute('data-key') === next.getAttribute('data-key'));

const takeAttributes = (old: Element, next: Element): void => {
  for (const { name, value } of next.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (old.attributes.length === next.attributes.length) return;
  for (const { name } of [...old.attributes]) if (!next.hasAttribute(name)) old.removeAttribute(name);
};

const become = (old: ChildNode, next: ChildNode): void => {
  if (old instanceof Element && next instanceof Element) {
    takeAttributes(old, next);
    if (old instanceof HTMLInputElement) old.checked = old.defaultChecked;
    takeChildren(old, next);
  } else if (old.nodeValue !== next.nodeValue) old.nodeValue = next.nodeValue;
};

const takeChildren = (old: ParentNode & Node, next: ParentNode & Node): void => {
  const [before, now] = [[...old.childNodes], [...next.childNodes]];
  for (const [i, child] of now.entries()) {
    const there = before[i];
    if (!there) old.append(child);
    else if (alike(there, child)) become(there, child);
    else there.replaceWith(child);
  }
  for (const child of before.slice(now.length)) child.remove();
};

const foldsIn = (place: ParentNode): ReadonlyMap<string, HTMLDetailsElement> =>
  new Map(
    [...place.querySelectorAll<HTMLDetailsElement>('details[data-part-key]')].map((part) => [
      part.dataset.partKey ?? '',
      part,
    ]),
  );

/** Makes the content of an element what this text says. Folds with a key stay as the reader has them; so does the focus on what has a key. */
export const redraw = (place: Element, html: string): void => {
  const made = document.createElement('template');
  made.innerHTML = html;
  const folds = foldsIn(place);
  for (const [key, part] of foldsIn(made.content)) part.open = folds.get(key)?.open ?? part.open;
  const active = place.contains(document.activeElement) ? document.activeElement : null;
  const name = ['data-key', 'data-result'].find((one) => active?.hasAttribute(one));
  const held = name && active?.getAttribute(name);
  takeChildren(place, made.content);
  if (held && document.activeElement?.getAttribute(name) !== held)
    place.querySelector<HTMLElement>(`[${name}="${CSS.escape(held)}"]`)?.focus({ preventScroll: true });
};
