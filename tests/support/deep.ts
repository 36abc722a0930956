/** How much chance is asked: `npm test` asks a little, always the same; `npm run deep` sets DEEP and asks much more. `SEED=9` draws other cases. */
const deep = process.env.DEEP !== undefined;
export const SEED = Number(process.env.SEED ?? 8);

/** A count for every run and one for a deep run; a variable of the environment stands over both. */
export const howMany = (usual: number, thorough: number, variable?: string): number => {
  const asked = variable === undefined ? undefined : process.env[variable];
  return asked === undefined ? (deep ? thorough : usual) : Number(asked);
};
