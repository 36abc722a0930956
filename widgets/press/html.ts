/** Text made safe to stand in HTML, in an element or an attribute. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

/** JSON made safe to stand in a data element: no tag can open in it. */
export const jsonForHtml = (value: unknown): string => JSON.stringify(value).replace(/</g, '\\u003c');
