/** Days as people write them, kept as ISO 8601 does, so that they sort as texts. */

/**
 * `2026-11-27`, or with dots `27.11.2026`: with dots the day is first wherever dates are written so. With strokes it may be day or
 * month, so `3/11/2026` is none. From 1900; a day that the calendar lacks is none.
 */
export const dayIn = (text: string): string | undefined => {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  const [, day2, month2, year2] = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/.exec(text) ?? [];
  const [y, m, d] = [year ?? year2, month ?? month2, day ?? day2].map(Number) as [number, number, number];
  if (!(y >= 1900)) return undefined;
  const date = new Date(Date.UTC(y, m - 1, d));
  return date.getUTCMonth() === m - 1 && date.getUTCDate() === d
    ? `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`
    : undefined;
};

/** The day that the reader’s calendar shows, not that of Greenwich. */
export const dayShown = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
