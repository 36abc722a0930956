/**
 * Names that numbers had in older notebooks: links and designs that carry them go on meaning what they meant. All of them stand in one table.
 */
import type { SymbolName } from '../engine/index.ts';

interface Former {
  readonly was: string;
  readonly is: SymbolName;
  /**
   * How a design of that time shows that this was meant, where the old name is one of today for something else. The count of steps was such a
   * name: k stood for the divisions of a knob where a divider stood beside it, and for the steps of a turn where none did.
   */
  readonly meant?: (old: Readonly<Record<string, string>>) => boolean;
  /** It had the other sign: up used to be plus for these forces; towards the base is plus now, as for every other force. */
  readonly otherSign?: true;
}

const FORMER: readonly Former[] = [
  { was: 'Q_c', is: 'Q_pc', otherSign: true },
  { was: 'Q_t', is: 'Q_pt', otherSign: true },
  { was: 'k', is: 'k_d', meant: (old) => old.divider !== undefined },
  { was: 'theta', is: 'theta_h', meant: (old) => old.A !== undefined },
  { was: 'w', is: 'S_w', meant: (old) => old.X_A !== undefined },
  { was: 'S', is: 'S_w', meant: () => true },
  { was: 'n_2', is: 'n_w', meant: (old) => old.F_g !== undefined },
  { was: 's_w', is: 's_h', meant: (old) => old.H_w !== undefined && old.divider === undefined },
  { was: 'l', is: 'l_d', meant: (old) => old.m_r !== undefined },
];

/** Options that had other words: the feet of a plate were letters, as the threads of each foot are. */
const FORMER_OPTIONS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  kept: { 'foot A': 'foot 1', 'foot B': 'foot 2', 'foot C': 'foot 3' },
};

/** An option in the words of today. */
export const presentOption = (name: string, text: string): string => FORMER_OPTIONS[name]?.[text] ?? text;

/** Those that a design tells apart by what else it holds. */
export const RENAMED: readonly (readonly [
  was: string,
  is: SymbolName,
  meant: (old: Readonly<Record<string, string>>) => boolean,
])[] = FORMER.flatMap(({ was, is, meant }) => (meant ? [[was, is, meant] as const] : []));

/** The name a number has now, and the text it has under it, where its sign changed. */
export const presentNumber = (name: string, text: string): readonly [name: string, text: string] => {
  const former = FORMER.find(({ was, otherSign }) => otherSign && was === name);
  return former === undefined ? [name, text] : [former.is, inPresentSign(text)];
};

/** The names this number had when its sign was the other one. */
export const formerNames = (name: string): readonly string[] =>
  FORMER.filter(({ is, otherSign }) => otherSign && is === name).map(({ was }) => was);

/** A text for a number of the old sign as a text for one of the new; what is no number stays as it is, for the field to refuse. */
export const inPresentSign = (text: string): string => {
  const [, sign, rest] = /^\s*([-−–+]?)\s*([\d.,].*)$/s.exec(text) ?? [];
  if (rest === undefined) return text;
  return sign === '' || sign === '+' ? `−${rest}` : rest;
};
