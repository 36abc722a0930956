/**
 * What was typed and chosen stands there again when the reader comes back. Fields and choices of the page's numbers are without
 * completion, or a browser that opens the page anew would set them back to what it was left with, whatever the page begins with now.
 * WebKit keeps a page that was left as it was, but sets such fields to what the page was written with; so that is made what stands in
 * them.
 */
export const mountBackAgain = (until: AbortSignal): void => {
  const hold = () => {
    for (const field of document.querySelectorAll<HTMLInputElement>('input[autocomplete=off]')) {
      field.defaultValue = field.value;
      field.defaultChecked = field.checked;
    }
  };
  window.addEventListener('pagehide', hold, { signal: until });
};
