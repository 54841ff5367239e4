import matter from 'gray-matter';
import { isAlias, isMap, isNode, isScalar, isSeq, LineCounter, parseDocument, type Document, type YAMLMap } from 'yaml';
import { finding, type Finding, type Outcome, type Place } from '../finding.ts';
import type { Places } from './pack.ts';
import { strangeBehindSigns } from './strange-characters.ts';

/**
 * The only door to gray-matter and yaml.
 *
 * gray-matter runs `---js` front matter as code by default, so it only ever sees a text whose
 * opening line is a bare `---`, and every engine but ours refuses. YAML is read with the failsafe
 * schema: every scalar stays the text that the author typed (`012`, `no`, `2026-09-01`), and the
 * pack's schema decides what is a number.
 */

/** Text as typed, lists and groups: what YAML holds once aliases and tags are refused. */
export type Raw = string | readonly Raw[] | { readonly [field: string]: Raw };

export interface FrontMatterText {
  readonly raw: Readonly<Record<string, Raw>>;
  readonly places: Places;
  readonly body: string;
  /** Line of the file, from 1, on which the body begins. */
  readonly bodyLine: number;
}

/** Levels of lists and groups inside one another. A pack needs six. */
const deepest = 20;
/** Fields, items and values of one front matter. A full pack has about 400; checks that hold all of a list against each other stay quick below this. */
const mostValues = 4000;
/** Errors of the YAML parser that are passed on for one file; it can find thousands behind one slip. */
const mostErrors = 10;

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

  const findings: Finding[] = [];
  const places: Record<string, readonly [number, number]> = Object.create(null) as Record<string, readonly [number, number]>;
  const parsed = matter(text, {
    language: 'yaml',
    engines: {
      ...refusedEngines,
      yaml: { parse: (yaml: string) => readYaml(yaml, at, findings, places), stringify: refuseToRun },
    },
  });
  if (findings.some(isRefused)) return refuse(...findings);
  const raw = parsed.data as Record<string, Raw>;
  return { value: { raw, places, body: lines.slice(closing + 1).join('\n'), bodyLine: closing + 2 }, findings };
}

/** A character that may not be there keeps a pack off the site, and the rest of the file can be read all the same. */
function isRefused(found: Finding): boolean {
  return found.level === 'stop' && found.code !== 'file/control-character';
}

function refuseToRun(): never {
  throw new Error('only plain YAML is read');
}
const refusing = { parse: refuseToRun, stringify: refuseToRun };
const refusedEngines = { js: refusing, javascript: refusing, json: refusing, coffee: refusing, toml: refusing };

function readYaml(yaml: string, at: (line: number, column: number) => Place, findings: Finding[], places: Record<string, readonly [number, number]>): object {
  const lineCounter = new LineCounter();
  // gray-matter hands over the text behind the opening `---`, with its line break: so lines are the file's own.
  const document = parseDocument(yaml, {
    lineCounter,
    prettyErrors: false,
    // Looked for below: the parser holds each field against all before it, which takes half a minute for 40,000.
    uniqueKeys: false,
    schema: 'failsafe',
    merge: false,
    strict: true,
    stringKeys: true,
    // Not 'silent', with which a second document would be dropped without a word.
    logLevel: 'error',
  });
  const where = (offset: number): Place => {
    const { line, col } = lineCounter.linePos(offset);
    return at(Math.max(line, 1), Math.max(col, 1));
  };
  for (const problem of [...document.errors, ...document.warnings].slice(0, mostErrors)) {
    const place = where(problem.pos[0]);
    if (problem.code === 'TAG_RESOLVE_FAILED') findings.push(finding('yaml/tag', 'stop', place, { tag: wordAt(yaml, problem.pos[0]) }));
    else findings.push(finding('yaml/syntax', 'stop', place, { problem: problem.code }));
  }
  lookThrough(document, yaml, where, findings, places);
  if (findings.some(isRefused)) return {};
  const data: unknown = plain(document.contents);
  if (data === '' || data === null) return {};
  if (typeof data !== 'object' || Array.isArray(data)) {
    findings.push(finding('front-matter/missing', 'stop', at(1, 1), {}));
    return {};
  }
  return data;
}

/** Where each field begins that stands in its group a second time. */
function repeatedFields(map: YAMLMap): readonly number[] {
  const seen = new Set<string>();
  return map.items.flatMap(({ key }) => {
    const name = isScalar(key) ? String(key.value) : '';
    const again = seen.has(name);
    seen.add(name);
    return again && isScalar(key) ? [key.range?.[0] ?? 0] : [];
  });
}

/** The YAML tree as plain values; null-prototype groups, so that a field called `__proto__` is only a name. */
function plain(node: unknown): unknown {
  if (isScalar(node)) return typeof node.value === 'string' ? node.value : '';
  if (isSeq(node)) return node.items.map(plain);
  if (isMap(node)) {
    const group = Object.create(null) as Record<string, unknown>;
    for (const pair of node.items) group[isScalar(pair.key) ? String(pair.key.value) : ''] = plain(pair.value);
    return group;
  }
  return '';
}

/** One walk over the tree: what may not be there is told, and where each field stands is noted. */
function lookThrough(document: Document.Parsed, yaml: string, where: (offset: number) => Place, findings: Finding[], places: Record<string, readonly [number, number]>): void {
  let values = 0;
  let refused = findings.some(isRefused);
  let tagTold = findings.some((each) => each.code === 'yaml/tag');
  const stop = (found: Finding): void => {
    findings.push(found);
    refused = true;
  };
  const note = (path: string, offset: number | undefined): void => {
    if (offset === undefined) return;
    const { line, column } = where(offset);
    places[path] = [line, column];
  };
  /** A scalar, or a collection with all below it. False once it is too much. */
  const look = (node: unknown, path: string, depth: number): boolean => {
    if (!isNode(node)) return true;
    const offset = node.range?.[0] ?? 0;
    values += 1;
    // Brackets in quotes can hide depth from the look at the lines above.
    const tooMuch = values > mostValues && !refused ? finding('yaml/too-many', 'stop', where(offset), { most: mostValues }) : undefined;
    const tooLow = depth >= deepest ? finding('yaml/too-deep', 'stop', where(offset), { most: deepest }) : undefined;
    const most = tooMuch ?? tooLow;
    if (most) {
      stop(most);
      return false;
    }
    const hidden = isScalar(node) && typeof node.value === 'string' ? strangeBehindSigns(node.value, yaml.slice(offset, node.range?.[1])) : undefined;
    if (hidden !== undefined) findings.push(finding('file/control-character', 'stop', where(offset), { character: hidden }));
    if (isAlias(node)) stop(finding('yaml/alias', 'stop', where(offset), { name: node.source.slice(0, 40) }));
    else if (node.tag?.startsWith('!') && !tagTold) {
      tagTold = true;
      stop(finding('yaml/tag', 'stop', where(offset), { tag: node.tag.slice(0, 40) }));
    }
    if (isMap(node)) for (const again of repeatedFields(node)) stop(finding('yaml/duplicate', 'stop', where(again), { field: wordAt(yaml, again) }));
    if (isSeq(node))
      return node.items.every((item, index) => {
        const below = path === '' ? String(index) : `${path}.${String(index)}`;
        note(below, (item as { range?: [number, number, number] | null }).range?.[0]);
        return look(item, below, depth + 1);
      });
    if (!isMap(node)) return true;
    return node.items.every(({ key, value }) => {
      const name = isScalar(key) ? String(key.value) : '';
      const below = path === '' ? name : `${path}.${name}`;
      const keyStart = isScalar(key) ? key.range?.[0] : undefined;
      note(below, isScalar(value) && value.value !== '' ? value.range?.[0] : keyStart);
      note(`${below}.*`, keyStart);
      return look(key, '', depth + 1) && look(value, below, depth + 1);
    });
  };
  places[''] = [2, 1];
  look(document.contents, '', 0);
}

/** The word at an offset, for a message: a field's name or a tag. */
function wordAt(yaml: string, offset: number): string {
  return /^[^\s:]{1,40}/.exec(yaml.slice(offset, offset + 40))?.[0] ?? '';
}

/**
 * The line (from 1, counted after the opening line) on which the front matter is nested past `deepest`, or 0.
 * Told before parsing, because a parser that recurses can run out of stack on a file made to do so.
 */
function tooDeep(lines: readonly string[]): number {
  let flow = 0;
  for (const [index, line] of lines.entries()) {
    const indent = /^(?:[ -]*)/.exec(line)?.[0] ?? '';
    if (indent.length > deepest * 8 || (indent.match(/-/g)?.length ?? 0) > deepest) return index + 1;
    for (const character of line) {
      if (character === '[' || character === '{') flow++;
      else if (character === ']' || character === '}') flow = Math.max(0, flow - 1);
      if (flow > deepest) return index + 1;
    }
  }
  return 0;
}
