/** Which exercises stand on each sheet, by how high each is: as many as fit, none parted, at least one. */
export const paginate = (heights: readonly number[], room: number): number[][] => {
  const pages: number[][] = [];
  let left = 0;
  for (const [i, height] of heights.entries()) {
    const page = pages.at(-1);
    if (page === undefined || height > left) {
      pages.push([i]);
      left = room - height;
    } else {
      page.push(i);
      left -= height;
    }
  }
  return pages.length === 0 ? [[]] : pages;
};
