import matter from 'gray-matter';
import { finding, type Finding, type Outcome, type Place } from '../finding.ts';
import { deepest, isRefused, readCarefully } from './careful-yaml.ts';
import { readPlainYaml } from './fast-yaml.ts';
import type { Places } from './pack.ts';
import type { Raw, ReadYaml } from './raw.ts';

/**
 * The only door to gray-matter, which runs `---js` front matter as code by default: so it only ever sees a text whose
 * opening line is a bare `---`, and every engine but ours refuses. Plain YAML is read by `fast-yaml.ts`, all other by
 * `careful-yaml.ts`; both leave every value the text that the author typed, and the pack's schema decides what is a number.
 */

export type { Raw };

export interface FrontMatterText {
  readonly raw: Readonly<Record<string, Raw>>;
  readonly places: Places;
  readonly body: string;
  /** Line of the file, from 1, on which the body begins. */
  readonly bodyLine: number;
}

/** Front matter and body of one file. Nothing in it is ever run. */
export function readFrontMatter(text: string, file: string): Outcome<FrontMatterText> {
  const at = (line: number, column: number): Place => ({ file, line, column });
  const refuse = (...findings: Finding[]): Outcome<FrontMatterText> => ({ value: undefined, findings });
  if (text.trim() === '') return refuse(finding('file/empty', 'stop', at(1, 1), {}));

  const firstLine = /^[^\n]*/.exec(text)?.[0] ?? '';
  if (!firstLine.startsWith('---')) return refuse(finding('front-matter/missing', 'stop', at(1, 1), {}));
  const language = firstLine.slice(3).trim();
  if (language !== '') return refuse(finding('front-matter/not-yaml', 'stop', at(1, 4), { found: language.slice(0, 40) }));
  const lines = text.split('\n');
  // gray-matter closes at the first "\n---" whatever follows it; only a line of its own is a closing line.
  const closing = lines.findIndex((line, index) => index > 0 && line.startsWith('---'));
  if (closing === -1) return refuse(finding('front-matter/unclosed', 'stop', at(1, 1), {}));
  if (lines[closing]?.trimEnd() !== '---') return refuse(finding('front-matter/not-yaml', 'stop', at(closing + 1, 1), { found: (lines[closing] ?? '').slice(0, 40) }));
  const deep = tooDeep(lines.slice(1, closing));
  if (deep) return refuse(finding('yaml/too-deep', 'stop', at(deep + 1, 1), { most: deepest }));

  let read = nothing;
  matter(text, {
    language: 'yaml',
    engines: {
      ...refusedEngines,
      yaml: { parse: (yaml: string) => (read = readPlainYaml(yaml) ?? readCarefully(yaml, at)).raw, stringify: refuseToRun },
    },
  });
  const { raw, places, findings } = read;
  if (findings.some(isRefused)) return refuse(...findings);
  return { value: { raw, places, body: lines.slice(closing + 1).join('\n'), bodyLine: closing + 2 }, findings };
}

/** What is there where nothing but remarks stands between the lines of dashes: then no engine is asked. */
const nothing: ReadYaml = { raw: {}, places: Object.create(null) as Places, findings: [] };

function refuseToRun(): never {
  throw new Error('only plain YAML is read');
}
const refusing = { parse: refuseToRun, stringify: refuseToRun };
const refusedEngines = { js: refusing, javascript: refusing, json: refusing, coffee: refusing, toml: refusing };

/**
 * The line (from 1, counted after the opening line) on which the front matter is nested past `deepest`, or 0.
 * Told before parsing, because a parser that recurses can run out of stack on a file made to do so.
 */
function tooDeep(lines: readonly string[]): number {
  let flow = 0;
  for (const [index, line] of lines.entries()) {
    const indent = /^(?:[ -]*)/.exec(line)?.[0] ?? '';
    if (indent.length > deepest * 8 || (indent.match(/-/g)?.length ?? 0) > deepest) return index + 1;
    for (const bracket of line.match(/[[\]{}]/g) ?? []) {
      if (bracket === '[' || bracket === '{') flow++;
      else flow = Math.max(0, flow - 1);
      if (flow > deepest) return index + 1;
    }
  }
  return 0;
}
