/**
 * Asks the engine: `npm run ask` lists every relation; `npm run --silent ask -- net-lead '{"h_C":1,…}'` prints the
 * result as JSON, or one sentence on the error output and exit code 2. `npm run --silent ask -- solve n A=M10x1.5 C=3/8-16
 * 'z_c=200 µm ± 2 µm'` finds one number from others in any order, with its ±, the relations on the way and their sources; --say gives it as a
 * sentence.
 */
import { loadRooms } from './rooms.mjs';

const load = (path) => loadRooms(`widgets/${path}`);
const engine = await load('engine/index.ts');
const { RELATIONS, relationNamed, symbolFact } = engine;
const [name, json = '{}'] = process.argv.slice(2);

const refuse = (sentence) => {
  console.error(sentence);
  process.exit(2);
};

const slot = (symbol) => {
  const { says, unit } = symbolFact(symbol);
  return `${symbol} [${unit}] ${says}`;
};

if (name === undefined) {
  for (const r of RELATIONS) {
    console.log(`${r.name}: ${r.says}`);
    for (const symbol of r.takes)
      console.log(`    takes  ${slot(symbol)}, ${symbolFact(symbol).min} to ${symbolFact(symbol).max}`);
    for (const [symbol, formula] of Object.entries(r.gives))
      console.log(`    gives  ${slot(symbol)}${formula === undefined ? '' : ` = ${formula}`}`);
  }
} else if (name === 'solve') {
  const { solveAsked } = await load('assembly/backwards/ask.ts');
  const words = process.argv.slice(3).filter((word) => word !== '--say');
  const solved = solveAsked(words);
  if (!solved.ok) refuse((await load('words/reason.ts')).reasonOf(solved));
  else if (!process.argv.includes('--say')) console.log(JSON.stringify(solved.value, null, 2));
  else {
    const { unknown, answers, chain } = solved.value;
    const values = answers.map(({ text, uncertainty }) => uncertainty?.text ?? text).join(' or ');
    console.log(`${unknown} is ${values}, by ${chain.map(({ relation }) => relation).join(', ')}.`);
  }
} else {
  const relation = relationNamed(name);
  if (!relation) refuse(`“${name}” is not a relation of the engine; npm run ask lists them.`);
  let inputs;
  try {
    inputs = JSON.parse(json);
  } catch {
    refuse(`Read ${json.slice(0, 40)}, which is not JSON; write for example '{"L":1.5,"n":2}'.`);
  }
  if (typeof inputs !== 'object' || inputs === null || Array.isArray(inputs))
    refuse(`The inputs are one JSON object, for example '{"L":1.5,"n":2}'.`);
  const unknown = Object.keys(inputs).find((key) => !relation.takes.includes(key));
  if (unknown !== undefined) refuse(`${name} does not take “${unknown}”; it takes ${relation.takes.join(', ')}.`);
  const result = relation.of(inputs);
  if (!result.ok) refuse((await load('words/reason.ts')).reasonOf(result));
  console.log(JSON.stringify(result.value));
}
