/**
 * The algebra of a slip, `= L_C + L_A`: numbers, names, + − * / ^, brackets, round(x, decimals), sqrt, abs, sin, cos, tan, atan and
 * pi. Values are in the engine's base units. A slip is a wrong way of working, so it has no relation of its own.
 */
import { type Bad, bad, good, type Result } from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'formula-cut-off': { readonly formula: string };
    'formula-bracket-open': { readonly formula: string };
    'formula-name-unknown': { readonly name: string };
    'formula-unread': { readonly formula: string; readonly from: string };
    'formula-without-value': { readonly formula: string };
  }
}

const FUNCTIONS: Readonly<Record<string, (x: number, y: number) => number>> = {
  round: (x, decimals) => Math.round(x * 10 ** decimals * (1 + 1e-13)) / 10 ** decimals,
  sqrt: Math.sqrt,
  abs: Math.abs,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  atan: Math.atan,
};

export const evaluateSlip = (formula: string, scope: Readonly<Record<string, number>>): Result<number> => {
  const tokens = formula.match(/\d+\.?\d*(?:e[+-]?\d+)?|[A-Za-z_]\w*|[-+*/^(),]|\S/g) ?? [];
  let at = 0;
  const faults: Bad[] = [];
  const wrong = (why: Bad): number => {
    faults.push(why);
    return Number.NaN;
  };
  const take = (token: string): boolean => {
    if (tokens[at] !== token) return false;
    at++;
    return true;
  };
  const sum = (): number => {
    let value = product();
    for (;;)
      if (take('+')) value += product();
      else if (take('-')) value -= product();
      else return value;
  };
  const product = (): number => {
    let value = sign();
    for (;;)
      if (take('*')) value *= sign();
      else if (take('/')) value /= sign();
      else return value;
  };
  const sign = (): number => (take('-') ? -sign() : power());
  const power = (): number => {
    const base = atom();
    return take('^') ? base ** sign() : base;
  };
  const atom = (): number => {
    const token = tokens[at++];
    if (token === undefined) return wrong(bad('formula-cut-off', { formula }));
    if (token === '(') {
      const value = sum();
      return take(')') ? value : wrong(bad('formula-bracket-open', { formula }));
    }
    if (/^\d/.test(token)) return Number(token);
    if (token === 'pi') return Math.PI;
    const call = Object.hasOwn(FUNCTIONS, token) && tokens[at] === '(' ? FUNCTIONS[token] : undefined;
    if (call) {
      at++;
      const first = sum();
      const second = take(',') ? sum() : 0;
      return take(')') ? call(first, second) : wrong(bad('formula-bracket-open', { formula }));
    }
    return (
      (Object.hasOwn(scope, token) ? scope[token] : undefined) ?? wrong(bad('formula-name-unknown', { name: token }))
    );
  };
  const value = sum();
  const [first] = faults;
  if (first !== undefined) return first;
  const from = tokens[at];
  if (from !== undefined) return bad('formula-unread', { formula, from });
  return Number.isFinite(value) ? good(value) : bad('formula-without-value', { formula });
};
