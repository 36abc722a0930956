/** By holder (`page`, `figures`, and those of packages), the names it lends of each file. */
export interface Plan {
  readonly holders: ReadonlyMap<string, ReadonlyMap<string, ReadonlySet<string>>>;
}
export function planOf(asked: {
  readonly late: Readonly<Record<string, string>>;
  readonly kept: ReadonlyMap<string, { readonly names: readonly string[]; readonly code: string }>;
  readonly libraries: Readonly<Record<string, string>>;
  readonly language?: string;
}): Plan;
