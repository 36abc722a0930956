/** The entry at a place of a list that surely has it; a place beyond its ends is a slip of the code, not of the reader. */
export const at = <T>(xs: ArrayLike<T>, i: number): T => {
  const x = xs[i];
  if (x === undefined) throw new RangeError(`No entry ${i} of ${xs.length}.`);
  return x;
};

/** The same for columns of numbers in long loops: a function that meets few kinds of list is the faster by far. */
export const numberAt = (xs: Float64Array | Int32Array | Uint8Array, i: number): number => {
  const x = xs[i];
  if (x === undefined) throw new RangeError(`No number ${i} of ${xs.length}.`);
  return x;
};
