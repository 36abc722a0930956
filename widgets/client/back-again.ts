/**
 * What was typed stands there again when the reader comes back. WebKit keeps a page that was left as it was, but empties its fields
 * without completion to what the page was written with; so that is made what stands in them.
 */
export const mountBackAgain = (until: AbortSignal): void => {
  const hold = () => {
    for (const field of document.querySelectorAll<HTMLInputElement>('input[autocomplete=off]'))
      field.defaultValue = field.value;
  };
  window.addEventListener('pagehide', hold, { signal: until });
};
