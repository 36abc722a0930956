/** What is said of readings that this browser keeps. */
const withDesign = (design: string): string => (design === '' ? '' : `, with the design “${design}”`);

export const keptHere = (design: string, lasting: boolean): string =>
  lasting
    ? `The readings that you typed on this page are kept in this browser${withDesign(design)}.`
    : 'This browser has no room for the readings or keeps nothing: they last until the page is closed, and a link carries the short ones.';
export const EMPTY_THEM = 'Empty them';
export const emptied = 'The readings of this page are no longer kept.';
export const keptOthers = (design: string): string =>
  `This browser keeps other readings of this page${withDesign(design)}: until you choose, nothing typed here is kept.`;
export const PUT_BACK = 'Put them back';
export const TAKE_THESE = 'Keep these instead';
export const notInLink =
  'The readings of this link are too long for it: they come back only in the browser in which they were typed.';
export const typedBefore = (design: string): string =>
  `Readings were typed on this page while no design was in use: they do not belong to “${design}” yet.`;
export const tooLongToKeep = (most: string): string =>
  `The readings of this page have more than ${most} characters, which this browser does not keep: keep their file.`;
