/**
 * The next whole number of steps in a direction: from between two, the nearer that way, so that nought is always met. A value
 * that is whole but for rounding counts as whole: six flats make a turn.
 */
export const nextStep = (value: number, step: number, sign: 1 | -1): number => {
  const at = value / step;
  const whole = Math.round(at);
  const from = Math.abs(at - whole) < 1e-3 ? whole : sign > 0 ? Math.floor(at) : Math.ceil(at);
  return (from + sign) * step;
};
