/** Rows of tests/reference/mechanics.json by their id; the source stands in the row. */
import file from '../reference/mechanics.json' with { type: 'json' };

interface Expected {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly relativeTolerance: number;
}

/** Inputs as numbers and expected values by name, each with half-widths from its published tolerance. */
export const mechanicsRow = (id: string) => {
  const row = file.rows.find((r) => r.id === id);
  if (!row) throw new Error(`no reference row ${id}`);
  const inputs = row.inputs as Readonly<Record<string, unknown>>;
  const expected = row.expected as unknown;
  return {
    input: (name: string): number => {
      const value = inputs[name];
      if (typeof value !== 'number') throw new Error(`${id} has no number ${name}`);
      return value;
    },
    value: (name: string): { value: number; within: number } => {
      const found = Array.isArray(expected) ? (expected as Expected[]).find((e) => e.name === name) : undefined;
      if (!found) throw new Error(`${id} expects no ${name}`);
      return { value: found.value, within: Math.abs(found.value) * found.relativeTolerance };
    },
    fact: (name: string): unknown => (expected as Readonly<Record<string, unknown>>)[name],
  };
};
