import { encode } from 'uqr';

/** The only door to uqr: a square code of a text as SVG, one unit a module, with the quiet zone of four modules that readers need (ISO/IEC 18004). Level M mends 15 % of damage. */
export function qrSvg(text: string): string {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const path = data.flatMap((row, y) => runsOf(row).map(([from, length]) => `M${String(from)} ${String(y)}h${String(length)}v1h-${String(length)}z`)).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(size)} ${String(size)}"><path d="${path}" fill="#000"/></svg>`;
}

/** Runs of dark modules in a row: where each begins and how long it is. */
function runsOf(row: readonly boolean[]): readonly (readonly [from: number, length: number])[] {
  const runs: [number, number][] = [];
  for (const [x, dark] of row.entries()) {
    const last = runs.at(-1);
    if (!dark) continue;
    if (last && last[0] + last[1] === x) last[1] += 1;
    else runs.push([x, 1]);
  }
  return runs;
}
