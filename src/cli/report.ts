import type { Finding } from '../core/finding.ts';
import { sayFinding } from '../core/languages/say-finding.ts';

/** Findings for scripts: plain data with the sentence in it. */
export function asJson(findings: readonly Finding[], language: string): string {
  const plain = findings.map((each) => ({ code: each.code, level: each.level, ...each.place, message: sayFinding(each, language) }));
  return JSON.stringify(plain, null, 2);
}

/** Findings for people, file by file: `packs/hen/pack.md:5:5  stop  The picture …`. */
export function asText(findings: readonly Finding[], language: string, colour: boolean): string {
  const paint = (code: string, text: string) => (colour ? `\u001b[${code}m${text}\u001b[0m` : text);
  const marks = { stop: paint('1;31', 'stop'), warn: paint('33', 'warn'), note: paint('2', 'note') };
  return findings.map((each) => `${safe(each.place.file)}:${String(each.place.line)}:${String(each.place.column)}  ${marks[each.level]}  ${sayFinding(each, language)}`).join('\n');
}

/** How many of each level, in words: "2 stop, 1 to look at". */
export function inSum(findings: readonly Finding[]): string {
  const count = (level: Finding['level']) => findings.filter((each) => each.level === level).length;
  const parts = [
    [count('stop'), 'that stop'],
    [count('warn'), 'to look at'],
    [count('note'), 'good to know'],
  ] as const;
  const said = parts.filter(([number]) => number > 0).map(([number, words]) => `${String(number)} ${words}`);
  return said.length === 0 ? 'nothing to tell' : said.join(', ');
}

/** What was published: "1 pack on 37 pages". */
export function onPages({ published, pages }: { readonly published: number; readonly pages: number }): string {
  const counted = (number: number, one: string) => `${String(number)} ${one}${number === 1 ? '' : 's'}`;
  return `${counted(published, 'pack')} on ${counted(pages, 'page')}`;
}

/** True when colours help: a terminal, and nobody asked to leave them out (no-color.org). */
export function wantsColour(stream: NodeJS.WriteStream): boolean {
  return stream.isTTY && process.env['NO_COLOR'] === undefined;
}

/** A file name can hold characters that steer a terminal. */
function safe(text: string): string {
  // eslint-disable-next-line no-control-regex -- control characters are what is replaced
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '?');
}
