/** The word of a list that a slip of the hand most likely meant, or undefined when none is near. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  const typed = word.toLowerCase();
  let best: string | undefined;
  let fewest = Math.max(1, Math.floor(Math.min(typed.length, 12) / 3)) + 1;
  if (typed.length > 60) return undefined;
  for (const each of words) {
    const slips = slipsBetween(typed, each.toLowerCase());
    if (slips < fewest) {
      fewest = slips;
      best = each;
    }
  }
  return best;
}

/** Letters to add, drop, change or swap with their neighbour to get from one word to the other (optimal string alignment). */
export function slipsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let fewest = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) fewest = Math.min(fewest, (beforeLast[j - 2] ?? 0) + 1);
      row.push(fewest);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
