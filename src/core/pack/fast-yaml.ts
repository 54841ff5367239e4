import { FAILSAFE_SCHEMA, load, type EventType, type State } from 'js-yaml';
import { deepest, mostValues } from './careful-yaml.ts';
import type { Raw, ReadYaml } from './raw.ts';

/**
 * The only door to js-yaml, which reads YAML many times as fast as the careful parser. It is believed only where a text is
 * plain and sound; everything else is left to `careful-yaml.ts`, which alone tells what is wrong.
 * `test/core/pack/two-readers-of-yaml.test.ts` holds the two against each other: the same values at the same places.
 */

/**
 * What the two parsers do not take for the same: tabs, carriage returns, byte order marks, escapes other than `\"`, `\\` and
 * `\n`, a remark without a space before it, the marks around documents, lines of nothing but spaces, and marks of types and
 * anchors, which js-yaml loses where a block follows.
 */
const unusual = /[\t\r\ufeff]|\\[^"\\n]|[,:[\]{}"']#|^(?:---|\.\.\.)|^ +$|(?:^|[-:?,[{]) *[!&]/m;

/** The values and places of a text; undefined where it is not plain, or not sound. */
export function readPlainYaml(yaml: string): ReadYaml | undefined {
  if (unusual.test(yaml)) return undefined;
  const top = treeOf(yaml);
  if (top?.kind !== 'mapping') return undefined;
  const places = Object.create(null) as MutablePlaces;
  places[''] = [2, 1];
  const raw = plain(top, '', places);
  return raw === undefined ? undefined : { raw: raw as ReadYaml['raw'], places, findings: [] };
}

type MutablePlaces = Record<string, readonly [line: number, column: number]>;

/** A value as the parser goes through it. */
interface Node {
  /** Where it stands: line and column, from 1. */
  readonly place: readonly [line: number, column: number];
  kind: string | null;
  /** The text of a scalar; the parser's own list or group otherwise. */
  result: unknown;
  /** Items, or fields and their values in turn. */
  parts: Node[];
}

/** Everything in a text, by what the parser tells as it goes; undefined where it throws or warns. */
function treeOf(yaml: string): Node | undefined {
  const open: Node[] = [];
  let top: Node | undefined;
  let begun = 0;
  const listener = (event: EventType, state: State): void => {
    if (event === 'open') {
      begun += 1;
      // Some are begun twice, so both are reached a little before what is told as too many or too deep.
      if (begun > mostValues || open.length >= deepest) refuse();
      const node: Node = { place: placeOfContent(yaml, state), kind: null, result: null, parts: [] };
      open.at(-1)?.parts.push(node);
      open.push(node);
      return;
    }
    const node = open.pop();
    if (node === undefined) return refuse();
    node.kind = state.kind;
    node.result = state.result;
    const [only, more] = node.parts;
    // What might have been a field's name and was a value has been begun twice.
    if (only?.result === node.result && more === undefined) node.parts = only?.parts ?? [];
    top = node;
  };
  try {
    load(yaml, { schema: FAILSAFE_SCHEMA, listener, onWarning: refuse });
  } catch {
    return undefined;
  }
  return top;
}

/** Ends the parser's work. */
function refuse(): never {
  throw new Error('not plain');
}

/** Where the next thing stands that is no space and no remark. */
function placeOfContent(yaml: string, { position, line, lineStart }: State): Node['place'] {
  let at = position;
  let lines = line;
  let start = lineStart;
  for (;;) {
    const character = yaml[at];
    if (character === '\n') {
      at += 1;
      lines += 1;
      start = at;
    } else if (character === ' ') at += 1;
    else if (character === '#') at = endOfLine(yaml, at);
    else return [lines + 1, at - start + 1];
  }
}

function endOfLine(yaml: string, from: number): number {
  const end = yaml.indexOf('\n', from);
  return end === -1 ? yaml.length : end;
}

/**
 * The tree as plain values, each with its place. Undefined where the parser's own lists and groups hold anything else, as
 * with `[a: b]`, or where an item has no place because it is empty.
 */
function plain(node: Node, path: string, places: MutablePlaces): Raw | undefined {
  if (node.kind === 'scalar') return node.result as string;
  if (node.kind === 'sequence') return listOf(node.parts, node.result as readonly unknown[], path === '' ? '' : `${path}.`, places);
  if (node.kind === 'mapping') return groupOf(node.parts, node.result as Readonly<Record<string, unknown>>, path === '' ? '' : `${path}.`, places);
  return '';
}

function listOf(parts: readonly Node[], items: readonly unknown[], above: string, places: MutablePlaces): Raw | undefined {
  if (parts.length !== items.length) return undefined;
  const list: Raw[] = [];
  for (const [index, part] of parts.entries()) {
    if (part.kind === null || part.result !== items[index]) return undefined;
    const at = above + String(index);
    places[at] = part.place;
    const item = plain(part, at, places);
    if (item === undefined) return undefined;
    list.push(item);
  }
  return list;
}

function groupOf(parts: readonly Node[], fields: Readonly<Record<string, unknown>>, above: string, places: MutablePlaces): Raw | undefined {
  if (parts.length !== Object.keys(fields).length * 2) return undefined;
  const group = Object.create(null) as Record<string, Raw>;
  let key: Node | undefined;
  for (const part of parts) {
    if (key === undefined) {
      key = part;
      continue;
    }
    const name = key.result as string;
    if (key.kind !== 'scalar' || part.result !== fields[name]) return undefined;
    const at = above + name;
    places[at] = part.kind === 'scalar' && part.result !== '' ? part.place : key.place;
    places[`${at}.*`] = key.place;
    const value = plain(part, at, places);
    if (value === undefined) return undefined;
    group[name] = value;
    key = undefined;
  }
  return group;
}
