/** Warum eine Zahl nicht für ein Zeichen stehen kann, und warum eine Beziehung keine Antwort hat. */
import { asRead, listed, type SymbolFact, type SymbolName, symbolFact } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const sentence = (symbol: SymbolName): string => {
  const { says } = symbolFact(symbol);
  return says.charAt(0).toUpperCase() + says.slice(1);
};

const inUnit = (value: number, fact: SymbolFact): string => {
  const text = (x: number) => asRead(Number(x.toPrecision(6)));
  const degrees = Math.min(Number.MAX_VALUE, Math.max(-Number.MAX_VALUE, value * (180 / Math.PI)));
  if (fact.unit === 'rad') return `${text(degrees)}°`;
  if (fact.unit === 'turn') return `${text(value)} Umdrehungen`;
  return `${text(value)}${fact.unit === '1' ? '' : ` ${fact.unit}`}`;
};

const allowed = (symbol: SymbolName): string => {
  const fact = symbolFact(symbol);
  return `von ${inUnit(fact.min, fact)} bis ${inUnit(fact.max, fact)}${fact.because === undefined ? '' : `, denn ${fact.because}`}`;
};

export const KERNEL = {
  'symbol-missing': ({ symbol }) => `${sentence(symbol)} fehlt: Gib eine Zahl ${allowed(symbol)}.`,
  'symbol-not-a-number': ({ symbol, read }) =>
    `${sentence(symbol)}: gelesen ${asRead(read)}, das keine Zahl ist; gib eine ${allowed(symbol)}.`,
  'symbol-not-a-hand': ({ symbol, read }) =>
    `${sentence(symbol)}: gelesen ${asRead(read)}; sie ist 1 für ein Rechtsgewinde und −1 für ein Linksgewinde.`,
  'symbol-out-of-bounds': ({ symbol, read }) =>
    `${sentence(symbol)}: gelesen ${inUnit(read, symbolFact(symbol))}; gib einen Wert ${allowed(symbol)}.`,
  'symbol-not-whole': ({ symbol, read }) =>
    `${sentence(symbol)}: gelesen ${asRead(read)}; hier zählen nur ganze Zahlen, gib eine ${allowed(symbol)}.`,
  'output-without-bound': ({ symbol }) =>
    `${sentence(symbol)} wird mit diesen Werten grenzenlos: Bringe sie näher an die eines wirklichen Gewindes.`,
  'no-way-to': ({ symbol, relation, missing }) =>
    relation === undefined
      ? `${sentence(symbol)} steht in keiner Beziehung: Frage nach einem anderen Zeichen, npm run ask listet sie auf.`
      : `Nichts führt aus dem Bekannten zu ${symbol} (${symbolFact(symbol).says}); am nächsten kommt ${relation} und braucht noch ${listed(missing.map((m) => `${m} (${symbolFact(m).says})`))}: Gib ${missing.length === 1 ? 'es' : 'sie bis auf eines'}.`,
} satisfies Partial<RefusalWords>;
