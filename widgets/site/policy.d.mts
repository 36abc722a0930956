export function pagePolicy(styles: readonly string[]): string;
export function oneFilePolicy(scripts: readonly string[], styles: readonly string[]): string;
