/** Seconds since midnight of `9:05`; undefined when it is no time of day. */
export function secondsOfClock(text: string): number | undefined {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(text.trim());
  if (!match || Number(match[1]) > 23) return undefined;
  return Number(match[1]) * 3600 + Number(match[2]) * 60;
}

/** `9:05` from seconds since midnight, to the nearest minute; past midnight it begins again. */
export function clockOf(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${String(Math.floor(minutes / 60) % 24)}:${String(minutes % 60).padStart(2, '0')}`;
}
