/** A sheet stands whole on the page; its longer parts are folded there, and open on paper. */

/** `key` tells the part again when the sheet is drawn anew, so that it stays as its reader has it; title and body are HTML. */
export const sheetPart = (key: string, title: string, body: string, open = false): string =>
  `<details class="sheet-part" data-part-key="${key}"${open ? ' open' : ''}><summary><h3>${title}</h3></summary>${body}</details>`;
