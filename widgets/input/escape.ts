/** Text as it stands in markup. */

export const escapeText = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);
