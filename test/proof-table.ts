/** The table of proofs: its rows, how it looks, where it is kept, and whether what README says is what it says. */

export interface Row {
  readonly class: string;
  readonly cases: number;
  readonly held: number;
  readonly ms: number;
  /** Megabytes; 0 where it was not measured. */
  readonly peakMB: number;
}

const begin = '<!-- table of proofs: written by `npm run prove -- --write` -->';
const end = '<!-- end of the table of proofs -->';

/** Rows as tests wrote them, one JSON a line. Of a class that came twice the later one counts. */
export function readRows(lines: string): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const line of lines.split('\n')) {
    if (line.trim() === '') continue;
    const row = JSON.parse(line) as Row;
    rows.set(row.class, row);
  }
  return [...rows.values()].sort((a, b) => (a.class < b.class ? -1 : 1));
}

export function tableOf(rows: readonly Row[]): string {
  const cells = rows.map(({ class: name, cases, held, ms, peakMB }) => [
    name,
    String(cases),
    held === cases ? 'all' : `**${String(held)}**`,
    `${(ms / 1000).toFixed(1)} s`,
    peakMB === 0 ? '' : `${String(peakMB)} MB`,
  ]);
  return [['Class', 'Cases', 'Held', 'Time', 'Peak memory'], ['---', '--:', '--:', '--:', '--:'], ...cells].map((row) => `| ${row.join(' | ')} |`).join('\n');
}

/** The document with the table put between its two marks. */
export function withTable(document: string, rows: readonly Row[]): string {
  const [from, to] = [document.indexOf(begin), document.indexOf(end)];
  if (from < 0 || to < from) throw new Error('there is no place for the table of proofs');
  return `${document.slice(0, from + begin.length)}\n\n${tableOf(rows)}\n\n${document.slice(to)}`;
}

/** Cases of each class that a document's table tells, with whether all held. */
export function toldIn(document: string): ReadonlyMap<string, { readonly cases: number; readonly held: boolean }> {
  const table = document.slice(document.indexOf(begin), document.indexOf(end));
  const rows = [...table.matchAll(/^\| (?!Class|---)(.+?) \| (\d+) \| (.+?) \|/gm)];
  return new Map(rows.map(([, name = '', cases, held]) => [name, { cases: Number(cases), held: held === 'all' }]));
}

/** What README promises with a number, as `[class of the table, number]`: the rows of its table under Security. */
export function promisedIn(readme: string): readonly (readonly [name: string, cases: number])[] {
  const section = /\n## Security\n([^]*?)(?=\n## )/.exec(readme)?.[1] ?? '';
  return [...section.matchAll(/^\| [^|]+ \| ([^|]+?) \| ([\d,]+) \|$/gm)].map(([, name = '', cases = '']) => [name, Number(cases.replaceAll(',', ''))] as const);
}

/** What does not agree between README and a table, in plain lines. */
export function disagreements(promised: ReturnType<typeof promisedIn>, told: ReturnType<typeof toldIn>): readonly string[] {
  return promised.flatMap(([name, cases]) => {
    const row = told.get(name);
    if (!row) return [`README names "${name}", and the table has no such class`];
    return row.cases === cases && row.held ? [] : [`README says ${String(cases)} of "${name}", and the table ${String(row.cases)}${row.held ? '' : ', not all held'}`];
  });
}
