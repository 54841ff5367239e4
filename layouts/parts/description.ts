/** Fewest and most characters of a page's description for search results. */
const least = 40;
const most = 160;

/** A description cut at a word so that it fits; one too short is followed by another sentence. */
export function fitDescription(text: string, more: string): string {
  const whole = text.length < least ? `${text.replace(/[.\s]*$/, '')}. ${more}` : text;
  if (whole.length <= most) return whole;
  const cut = whole.slice(0, most - 1);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), least)).replace(/[\s,;:.]+$/, '')}…`;
}
