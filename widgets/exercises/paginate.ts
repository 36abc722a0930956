/** What stands on a sheet, and how much of it is left, in the unit of the heights. */
export interface SheetOf {
  readonly places: readonly number[];
  readonly left: number;
}

const greedy = (heights: readonly number[], room: number): SheetOf[] => {
  const sheets: { places: number[]; left: number }[] = [];
  for (const [i, height] of heights.entries()) {
    const sheet = sheets.at(-1);
    if (sheet === undefined || height > sheet.left) sheets.push({ places: [i], left: room - height });
    else {
      sheet.places.push(i);
      sheet.left -= height;
    }
  }
  return sheets;
};

const HALVINGS = 20;

/**
 * Which exercises stand on each sheet, by how high each is: in order, none parted, at least one on each, on as few sheets as hold them. Of the
 * ways to do that it takes the one whose fullest sheet is the least full, so that the last sheet is not the only one with room.
 */
export const paginate = (heights: readonly number[], room: number): SheetOf[] => {
  const first = greedy(heights, room);
  if (first.length === 0) return [{ places: [], left: room }];
  let [low, high] = [room / (first.length + 1), room];
  let sheets = first;
  for (let i = 0; i < HALVINGS && first.length > 1; i++) {
    const mid = (low + high) / 2;
    const next = greedy(heights, mid);
    if (next.length <= first.length) [high, sheets] = [mid, next];
    else low = mid;
  }
  const spare = room - high;
  return sheets.map(({ places, left }) => ({ places, left: Math.max(0, left + (sheets === first ? 0 : spare)) }));
};
