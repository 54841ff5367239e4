import { isAlias, isMap, isNode, isScalar, isSeq, LineCounter, parseDocument, type Document, type YAMLMap } from 'yaml';
import { finding, type Finding, type Place } from '../finding.ts';
import type { ReadYaml } from './raw.ts';
import { strangeBehindSigns } from './strange-characters.ts';

/**
 * YAML read by the parser that says what is wrong and where. Everything that is told about a text's YAML is told here.
 * It reads with the failsafe schema: every scalar stays the text that the author typed (`012`, `no`, `2026-09-01`).
 */

/** Levels of lists and groups inside one another. A pack needs six. */
export const deepest = 20;
/** Fields, items and values of one front matter. A full pack has about 400; checks that hold all of a list against each other stay quick below this. */
export const mostValues = 4000;
/** Errors of the YAML parser that are passed on for one file; it can find thousands behind one slip. */
const mostErrors = 10;

/** A character that may not be there keeps a pack off the site, and the rest of the file can be read all the same. */
export function isRefused(found: Finding): boolean {
  return found.level === 'stop' && found.code !== 'file/control-character';
}

/** The values of a text, and everything there is to tell about it. `at` makes a place of a line and a column, which count from 1. */
export function readCarefully(yaml: string, at: (line: number, column: number) => Place): ReadYaml {
  const findings: Finding[] = [];
  const places = Object.create(null) as Record<string, readonly [number, number]>;
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
  const data: unknown = findings.some(isRefused) ? '' : plain(document.contents);
  if (data === '' || data === null) return { raw: {}, places, findings };
  if (typeof data !== 'object' || Array.isArray(data)) {
    findings.push(finding('front-matter/missing', 'stop', at(1, 1), {}));
    return { raw: {}, places, findings };
  }
  return { raw: data as ReadYaml['raw'], places, findings };
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
