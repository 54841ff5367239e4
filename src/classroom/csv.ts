/**
 * Rows as comma-separated values for a table program: CRLF, a mark for UTF-8 in front, quotes where they are needed. Source: RFC 4180.
 *
 * A cell that begins with = + - @ or a tab would be reckoned as a formula by some programs, and what a child or a made-up file writes must
 * never run: such a cell gets an apostrophe in front. Source: OWASP, CSV Injection, from memory. Numbers are told as numbers.
 */
export function csv(rows: readonly (readonly (string | number)[])[]): string {
  return `\ufeff${rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;
}

function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^(?:\s|\p{Cc})*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r]/u.test(value) ? `'${value}` : value;
  return /[",\r\n']/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
