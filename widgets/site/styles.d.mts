export interface Styles {
  withFigures(names: readonly string[]): string;
  readonly all: string;
  readonly fonts: ReadonlyMap<string, string | Uint8Array>;
}
export function allStyles(): readonly string[];
export function packedStyles(): Promise<Styles>;
