/** A result cut before its decimal point, so that results under one another can stand on it; together the parts are the text. */
export const aroundPoint = (text: string): readonly [string, string] => {
  const whole = /^\D*(?:[\d,\u2009\u202f\u00a0]*\d)?/.exec(text)?.[0] ?? '';
  return /\d/.test(whole) ? [whole, text.slice(whole.length)] : ['', text];
};
