/**
 * Numbers that changed their sign, and with it their name: links and designs that carry the old name go on meaning what they
 * meant. Up used to be plus for these forces; towards the base is plus now, as for every other force.
 */
const PRESENT_NAMES: Readonly<Record<string, string>> = { Q_c: 'Q_pc', Q_t: 'Q_pt' };

/** The name a number has now, and the text it has under it. */
export const presentNumber = (name: string, text: string): readonly [name: string, text: string] => {
  const present = Object.hasOwn(PRESENT_NAMES, name) ? PRESENT_NAMES[name] : undefined;
  return present === undefined ? [name, text] : [present, inPresentSign(text)];
};

/** The names this number had when its sign was the other one. */
export const formerNames = (name: string): readonly string[] =>
  Object.keys(PRESENT_NAMES).filter((former) => PRESENT_NAMES[former] === name);

/** A text for a number of the old sign as a text for one of the new; what is no number stays as it is, for the field to refuse. */
export const inPresentSign = (text: string): string => {
  const [, sign, rest] = /^\s*([-−–+]?)\s*([\d.,].*)$/s.exec(text) ?? [];
  if (rest === undefined) return text;
  return sign === '' || sign === '+' ? `−${rest}` : rest;
};
