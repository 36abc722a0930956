/** The little DOM that the page needs: make an element, find the marked ones. */
export const make = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
};

export const all = (root: ParentNode, selector: string): HTMLElement[] => [
  ...root.querySelectorAll<HTMLElement>(selector),
];

/** Writes text only where it differs, so that an unchanged place is not laid out again. */
export const setText = (element: Element | null | undefined, text: string): void => {
  if (element && element.textContent !== text) element.textContent = text;
};
