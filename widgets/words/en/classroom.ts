/** What stands on sheets, keys and grids for a class, and round them on the page. */

// Sheets.

export const pageOf = (page: number, pages: number): string => `Page ${page} of ${pages}`;
export const DATE = 'Date';
export const MARKS = 'Marks';
export const outOf = (marks: number): string => `of ${marks}`;
export const marksFor = (marks: number): string => (marks === 1 ? '1 mark' : `${marks} marks`);
export const NAME = 'Name';
export const WORKING = 'Working';

// Keys.

export const HOW_WORKED = 'How each exercise is worked';
export const workedFor = (classCode: string, bank: string): string => `Class ${classCode} · question bank ${bank}`;
export const KNOWN_SLIPS = 'What a wrong answer tells';
export const HINT_WAS = 'Hint';

// The grid of answers.

export const GRID = 'Answers of all students';
export const STUDENT = 'Student';
export const QUESTION = 'Question';
export const gridColumn = (number: number): string => `${number}`;

// On the page.

export const LOOK = 'On the sheets';
export const ROOM_NAMES = { none: 'no room to work', some: 'room for some lines', much: 'room for a drawing' } as const;
export const LARGE_PRINT = 'large print';
export const PRINT_GRID = 'Print the answer grid';
export const PRINT_METHOD = 'Print how it is worked';
export const GRID_AS_CSV = 'Answer grid as CSV';
export const EMPTY_GRID_AS_CSV = 'Empty grid to fill in, as CSV';
