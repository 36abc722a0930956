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

/**
 * Runs when a form is sent, by its button or by Enter in a field, which presses the button. A frame that forbids forms never
 * tells of a form that is sent, so it is the press that is heard.
 */
export const whenSent = (form: HTMLFormElement, run: () => void): void => {
  const sent = (event: Event) => {
    event.preventDefault();
    run();
  };
  form.addEventListener('click', (event) => {
    if (event.target instanceof Element && event.target.closest('button[type=submit]')) sent(event);
  });
  // Sent by a script, for which no button is pressed.
  form.addEventListener('submit', sent);
};

/** Writes text only where it differs, so that an unchanged place is not laid out again; into the text that stands there, if nothing else does. */
export const setText = (element: Element | null | undefined, text: string): void => {
  if (!element || element.textContent === text) return;
  const only = element.firstChild;
  if (only instanceof Text && !only.nextSibling && text !== '') only.data = text;
  else element.textContent = text;
};
