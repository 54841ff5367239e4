/**
 * How many slips lie between two words, at most `most`: a letter left out, one too many, one exchanged, or two neighbours
 * turned round. Undefined when there are more.
 *
 * Source: F. J. Damerau 1964, Communications of the ACM 7(3), whose four slips made up four fifths of the errors he saw (from memory);
 * reckoned as optimal string alignment.
 */
export function slipsBetween(a: string, b: string, most: number): number | undefined {
  const [first, second] = [[...a], [...b]];
  if (Math.abs(first.length - second.length) > most) return undefined;
  let beforeLast: number[] = [];
  let last = Array.from({ length: second.length + 1 }, (_, index) => index);
  for (let row = 1; row <= first.length; row++) {
    const now = [row];
    let least = row;
    for (let column = 1; column <= second.length; column++) {
      const same = first[row - 1] === second[column - 1];
      let slips = Math.min((last[column] ?? 0) + 1, (now[column - 1] ?? 0) + 1, (last[column - 1] ?? 0) + (same ? 0 : 1));
      if (row > 1 && column > 1 && first[row - 1] === second[column - 2] && first[row - 2] === second[column - 1]) slips = Math.min(slips, (beforeLast[column - 2] ?? 0) + 1);
      now.push(slips);
      least = Math.min(least, slips);
    }
    if (least > most) return undefined;
    [beforeLast, last] = [last, now];
  }
  const slips = last[second.length] ?? 0;
  return slips <= most ? slips : undefined;
}

/** How many slips a word of this length is forgiven: none in a short one, where every slip makes another word. Common practice, no source. */
export function forgiven(word: string): number {
  const { length } = [...word];
  return length < 4 ? 0 : length < 6 ? 1 : 2;
}
