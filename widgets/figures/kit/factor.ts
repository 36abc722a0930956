/** By how much a small length is drawn too large: always a round number, which is written beside it. */

/** The largest of 1, 2, 5, 10 … by which this length, mm, becomes no more than that one; 1 for no length. */
export const factorFor = (length: number, drawn: number): number => {
  if (!(length > 1e-9)) return 1;
  const wished = drawn / length;
  const decade = 10 ** Math.floor(Math.log10(wished));
  const lead = wished / decade;
  return decade * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
};
