export const PAGE_POLICY: string;
export function oneFilePolicy(scripts: readonly string[], styles: readonly string[]): string;
