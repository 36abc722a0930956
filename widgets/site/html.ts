/** JSON made safe to stand in a data element: no tag can open in it. */
export const jsonForHtml = (value: unknown): string => JSON.stringify(value).replace(/</g, '\\u003c');
