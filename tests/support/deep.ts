import { randomState, uniform } from '../../widgets/engine/index.ts';

/** How much is asked: `npm test` asks a little, always the same; `npm run deep` sets DEEP and asks much more. `SEED=9` draws other cases. */
const deep = process.env.DEEP !== undefined;
export const SEED = Number(process.env.SEED ?? 8);

/** A count for every run and one for a deep run; a variable of the environment stands over both. */
export const howMany = (usual: number, thorough: number, variable?: string): number => {
  const asked = variable === undefined ? undefined : process.env[variable];
  return asked === undefined ? (deep ? thorough : usual) : Number(asked);
};

/** Said of a test that only a deep run has the time for: what it holds is held elsewhere too, or in one case of its kind. */
export const inDeep = { skip: !deep };

/** The cases of a list that stand for the others, at every run; all of them in a deep run. */
export const some = <T>(count: number, cases: readonly T[]): readonly T[] =>
  cases.slice(0, howMany(count, cases.length));

/** These of a list, by name, at every run; all of it in a deep run. */
export const these = <T>(all: readonly T[], names: readonly T[]): readonly T[] => (deep ? all : names);

/** Some of a list, drawn by the seed and always the same for it, at every run; all of it, in its own order, in a deep run. */
export const drawn = <T>(count: number, all: readonly T[]): readonly T[] => {
  const state = randomState(SEED);
  if (deep || count >= all.length || !state.ok) return all;
  const ranked = all.map((item) => ({ item, rank: uniform(state.value) })).sort((a, b) => a.rank - b.rank);
  const chosen = new Set(ranked.slice(0, count).map(({ item }) => item));
  return all.filter((item) => chosen.has(item));
};
