/** Whole days from 2000-01-01 to a date `2026-09-01`; 0 for none. */
export function daysOf(date: string | undefined): number {
  return date === undefined ? 0 : Math.round((Date.parse(`${date}T00:00:00Z`) - Date.UTC(2000, 0, 1)) / 86_400_000);
}
