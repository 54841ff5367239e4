import { isCollection, isMap, isPair, isScalar, isSeq, parseDocument, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Step } from './pack.ts';
import { fieldText, scalarText, treeText, type Manner, type Tree } from './scalar-text.ts';

/**
 * Changes a pack's file by changing only the lines that a change is about. The file is never printed anew: remarks,
 * order, quotes, blank lines and fields that are not ours stay as their author typed them.
 *
 * It works on the text with the places that the YAML parser tells; besides `careful-yaml.ts` it is the only file that knows yaml.
 */

/** One change. Steps are the author's own field names and list indexes from 0, as in `['stops', 2, 'listen for']`. */
export type Edit =
  /** Puts a value at a field, and makes the groups and lists on the way; at an index just behind a list's last item it adds one. */
  | { readonly kind: 'set'; readonly steps: readonly Step[]; readonly value: Tree }
  /** Takes a field or a list's item away; a list or group that has nothing left goes with it. */
  | { readonly kind: 'remove'; readonly steps: readonly Step[] }
  /** Puts a new item before the one at an index of a list that is there. */
  | { readonly kind: 'insert'; readonly steps: readonly Step[]; readonly index: number; readonly value: Tree }
  /** Moves a list's item, with the remarks right above it, to where it has the index `to`. */
  | { readonly kind: 'move'; readonly steps: readonly Step[]; readonly from: number; readonly to: number }
  /** Exchanges the Markdown below the front matter. */
  | { readonly kind: 'body'; readonly markdown: string };

/** The text of a pack's file after a change. Undefined when the text's front matter cannot be read, or the steps lead nowhere. */
export function editPack(text: string, edit: Edit, order: readonly string[] = []): string | undefined {
  const bounds = frontMatterOf(text);
  if (!bounds) return undefined;
  const { begin, end, bodyBegin } = bounds;
  if (edit.kind === 'body') return text.slice(0, bodyBegin) + edit.markdown;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const yaml = new YamlText(text.slice(begin, end), newline, order);
  const changed = yaml.changed(edit);
  return changed === undefined ? undefined : text.slice(0, begin) + changed + text.slice(end);
}

/** Where the YAML and the body of a file begin and end; offsets in the text. */
function frontMatterOf(text: string): { begin: number; end: number; bodyBegin: number } | undefined {
  const opening = /^\ufeff?---[ \t]*\r?\n/.exec(text);
  if (!opening) return undefined;
  const begin = opening[0].length;
  const closing = /^---[ \t]*(?:\r?\n|$)/m.exec(text.slice(begin));
  if (!closing) return undefined;
  return { begin, end: begin + closing.index, bodyBegin: begin + closing.index + closing[0].length };
}

type Found = { readonly node: unknown; readonly holder: YAMLMap | YAMLSeq | undefined; readonly pair: Pair | undefined; readonly index: number };

class YamlText {
  readonly #root: unknown;

  constructor(
    readonly yaml: string,
    readonly newline: string,
    readonly order: readonly string[],
  ) {
    const document = parseDocument(yaml, { prettyErrors: false, schema: 'failsafe', merge: false, stringKeys: true, logLevel: 'silent', keepSourceTokens: true });
    this.#root = document.errors.length > 0 ? undefined : document.contents;
  }

  changed(edit: Exclude<Edit, { kind: 'body' }>): string | undefined {
    if (!isMap(this.#root) && !(this.#root === null && this.yaml.trim() === '')) return undefined;
    switch (edit.kind) {
      case 'set':
        return this.#set(edit.steps, edit.value);
      case 'remove':
        return this.#remove(edit.steps);
      case 'insert':
        return this.#insert(edit.steps, edit.index, edit.value);
      case 'move':
        return this.#move(edit.steps, edit.from, edit.to);
    }
  }

  #find(steps: readonly Step[]): Found | undefined {
    let found: Found = { node: this.#root, holder: undefined, pair: undefined, index: 0 };
    for (const step of steps) {
      const holder = found.node;
      if (isMap(holder) && typeof step === 'string') {
        const index = holder.items.findIndex((pair) => nameOf(pair) === step);
        const pair = holder.items[index];
        if (!pair) return undefined;
        found = { node: pair.value, holder, pair, index };
      } else if (isSeq(holder) && typeof step === 'number') {
        if (holder.items[step] === undefined) return undefined;
        found = { node: holder.items[step], holder, pair: undefined, index: step };
      } else return undefined;
    }
    return found;
  }

  #set(steps: readonly Step[], value: Tree): string | undefined {
    const found = this.#find(steps);
    if (found) return this.#replace(found, value);
    const above = steps.slice(0, -1);
    const last = steps.at(-1);
    if (last === undefined) return undefined;
    const holder = this.#find(above);
    if (!holder) {
      // The group or list itself is not there yet: it is made with this value in it.
      if (typeof last === 'number' && last !== 0) return undefined;
      return this.#set(above, typeof last === 'number' ? [value] : { [last]: value });
    }
    if (typeof last === 'number')
      return isSeq(holder.node) ? this.#insert(above, holder.node.items.length, value, last) : isEmpty(holder.node) && last === 0 ? this.#replace(holder, [value]) : undefined;
    if (isMap(holder.node)) return this.#addField(holder.node, above, last, value);
    return isEmpty(holder.node) || holder.node === null
      ? above.length === 0
        ? this.yaml + fieldText(last, value, 0, this.newline) + this.newline
        : this.#replace(holder, { [last]: value })
      : undefined;
  }

  /** A scalar is exchanged where it stands; a list or group is written anew below its field's name. */
  #replace(found: Found, value: Tree): string | undefined {
    const { node, pair, holder } = found;
    const inFlow = holder?.flow === true;
    if (inFlow && typeof value === 'object') return undefined;
    const [begin, end] = this.#valueRange(node, pair);
    // A list's item stands where its author put it behind the dash; a field's value two spaces in from its name.
    const indent = pair || !holder ? (holder ? this.#columnOf(holder) : 0) + 2 : begin - this.#lineStart(begin);
    const before = pair && this.yaml[begin - 1] === ':' ? ' ' : '';
    // What ends with a line break, a list or a text of several lines, leaves one behind.
    const tail = this.yaml[end - 1] === '\n' ? this.newline : '';
    if (typeof value !== 'object') {
      const manner: Manner = { quotes: isScalar(node) ? quotesOf(node) : 'none', inFlow, indent };
      // In place of a list or group below its name, a text stands beside the name.
      const below = pair && isCollection(node) && node.flow !== true;
      return this.#splice(below ? this.#afterColon(pair) : begin, end, (below ? ' ' : before) + this.#lines(scalarText(value, manner)) + tail);
    }
    if (Array.isArray(value) ? value.length === 0 : Object.keys(value).length === 0) return undefined;
    if (!pair) return this.#splice(begin, end, this.#lines(treeText(value, indent, this.newline)) + tail);
    // A remark behind the field's name stays there; the tree goes onto the lines below it.
    const colon = this.#afterColon(pair);
    const text = this.newline + ' '.repeat(indent) + this.#lines(treeText(value, indent, this.newline));
    if (tail !== '') return this.#splice(isCollection(node) ? this.#lineEnd(colon) : colon, end, text + tail);
    const lineEnd = this.#lineEnd(end);
    return this.#splice(colon, lineEnd, this.yaml.slice(end, lineEnd).trimEnd() + text);
  }

  #addField(map: YAMLMap, above: readonly Step[], field: string, value: Tree): string | undefined {
    if (map.flow) {
      if (typeof value === 'object') return undefined;
      const last = map.items.at(-1);
      const text = `${field}: ${scalarText(value, { quotes: 'none', inFlow: true, indent: 0 })}`;
      const at = last ? this.#valueRange(last.value, last)[1] : (map.range?.[0] ?? 0) + 1;
      return this.#splice(at, at, last ? `, ${text}` : text);
    }
    const column = this.#columnOf(map);
    const before = this.#neighbourBefore(map, field, above);
    const text = this.#lines(fieldText(field, value, column, this.newline));
    if (!before) {
      // It becomes the first: behind the dash of a list's item, or on a line of its own.
      const first = keyStart(map.items[0]);
      return this.#splice(first, first, text + this.newline + ' '.repeat(column));
    }
    const at = this.#endOfLines(before.value, before);
    const lead = this.yaml[at - 1] === '\n' || at === 0 ? '' : this.newline;
    return this.#splice(at, at, `${lead}${' '.repeat(column)}${text}${this.newline}`);
  }

  /** The field after which a new one goes: the last of those that stand before it in the usual order, else the last of all. */
  #neighbourBefore(map: YAMLMap, field: string, above: readonly Step[]): Pair | undefined {
    const path = (name: string) => [...above.map((step) => (typeof step === 'number' ? '*' : step)), name].join('.');
    const place = this.order.indexOf(path(field));
    if (place === -1) return map.items.at(-1);
    return map.items.findLast((pair) => {
      const other = this.order.indexOf(path(nameOf(pair)));
      return other !== -1 && other < place;
    });
  }

  #insert(steps: readonly Step[], index: number, value: Tree, mustBe = index): string | undefined {
    const found = this.#find(steps);
    const list = found?.node;
    if (!isSeq(list) || index > list.items.length || index < 0 || index !== mustBe) return undefined;
    if (list.flow) {
      if (typeof value === 'object') return list.items.length === 0 && found ? this.#replace(found, [value]) : undefined;
      const text = scalarText(value, { quotes: 'none', inFlow: true, indent: 0 });
      const next = rangeOf(list.items[index]);
      if (next) return this.#splice(next[0], next[0], `${text}, `);
      const last = rangeOf(list.items.at(-1));
      const at = last ? last[1] : (list.range?.[0] ?? 0) + 1;
      return this.#splice(at, at, last ? `, ${text}` : text);
    }
    const column = this.#columnOf(list);
    const text = `${' '.repeat(column)}- ${this.#lines(treeText(value, column + 2, this.newline))}${this.newline}`;
    if (index < list.items.length) {
      const at = this.#itemLines(list, index)[0];
      return this.#splice(at, at, text);
    }
    const at = this.#endOfLines(list.items.at(-1), undefined);
    const lead = this.yaml[at - 1] === '\n' ? '' : this.newline;
    return this.#splice(at, at, lead + text);
  }

  #remove(steps: readonly Step[]): string | undefined {
    const found = this.#find(steps);
    const { holder } = found ?? {};
    if (!found || !holder) return undefined;
    if (holder.items.length === 1 && steps.length > 1) return this.#remove(steps.slice(0, -1));
    if (holder.flow) return this.#removeFromFlow(holder, found);
    if (isSeq(holder)) {
      const [begin, end] = this.#itemLines(holder, found.index, false);
      return this.#splice(begin, end, '');
    }
    const { pair } = found;
    if (!pair) return undefined;
    const begin = keyStart(pair);
    const lineStart = this.#lineStart(begin);
    // The first field behind a dash: the next one takes its place.
    if (this.yaml.slice(lineStart, begin).trim() !== '') {
      const next = (holder.items as readonly Pair[])[found.index + 1];
      return next ? this.#splice(begin, keyStart(next), '') : undefined;
    }
    return this.#splice(lineStart, this.#endOfLines(found.node, pair), '');
  }

  #removeFromFlow(holder: YAMLMap | YAMLSeq, found: Found): string {
    const range = (index: number): readonly [number, number] => {
      const item = holder.items[index];
      return isPair(item) ? [keyStart(item), this.#valueRange(item.value, item)[1]] : (rangeOf(item) ?? [0, 0]);
    };
    const [begin, end] = range(found.index);
    if (found.index + 1 < holder.items.length) return this.#splice(begin, range(found.index + 1)[0], '');
    return this.#splice(range(found.index - 1)[1], end, '');
  }

  #move(steps: readonly Step[], from: number, to: number): string | undefined {
    const list = this.#find(steps)?.node;
    if (!isSeq(list) || list.items[from] === undefined || list.items[to] === undefined) return undefined;
    if (from === to) return this.yaml;
    if (list.flow) {
      const texts = list.items.map((item) => this.yaml.slice(...(rangeOf(item) ?? [0, 0])));
      const moved = [...texts.slice(0, from), ...texts.slice(from + 1)];
      moved.splice(to, 0, texts[from] ?? '');
      // The signs and spaces between the items stay where they are.
      return list.items.reduceRight<string>((yaml, item, index) => {
        const [begin, end] = rangeOf(item) ?? [0, 0];
        return yaml.slice(0, begin) + (moved[index] ?? '') + yaml.slice(end);
      }, this.yaml);
    }
    const [begin, end] = this.#itemLines(list, from);
    const lines = this.yaml.slice(begin, end);
    const whole = lines.endsWith('\n') ? lines : lines + this.newline;
    const at = to < from ? this.#itemLines(list, to)[0] : this.#itemLines(list, to)[1];
    return at <= begin
      ? this.yaml.slice(0, at) + whole + this.yaml.slice(at, begin) + this.yaml.slice(end)
      : this.yaml.slice(0, begin) + this.yaml.slice(end, at) + (this.yaml[at - 1] === '\n' ? '' : this.newline) + whole + this.yaml.slice(at);
  }

  /** From the start of an item's first line to behind its last; with the remarks right above it, unless told otherwise. */
  #itemLines(list: YAMLSeq, index: number, withRemarks = true): readonly [number, number] {
    const item = list.items[index];
    let begin = this.#lineStart(dashOf(list, index));
    const least = index === 0 ? 0 : this.#endOfLines(list.items[index - 1], undefined);
    while (withRemarks && begin > least) {
      const above = this.#lineStart(begin - 1);
      if (above < least || !/^[ \t]*#/.test(this.yaml.slice(above, begin))) break;
      begin = above;
    }
    return [begin, this.#endOfLines(item, undefined)];
  }

  /** From where a value begins to where it ends, without what follows it on the line. An empty one begins and ends behind the colon. */
  #valueRange(node: unknown, pair: Pair | undefined): readonly [number, number] {
    const range = rangeOf(node);
    if (pair && (!range || isEmpty(node))) {
      const colon = this.#afterColon(pair);
      return [colon, colon];
    }
    if (!range) return [0, 0];
    if (isCollection(node) && node.flow !== true) return [range[0], this.#endOfLines(node, undefined)];
    return [range[0], range[1]];
  }

  /** Behind the last line that a value stands on, with the remark that ends the line. */
  #endOfLines(node: unknown, pair: Pair | undefined): number {
    let deepest: unknown = node;
    let holder = pair;
    while (isCollection(deepest) && deepest.flow !== true && deepest.items.length > 0) {
      const last: unknown = deepest.items.at(-1);
      if (isPair(last)) {
        holder = last;
        deepest = last.value;
      } else {
        holder = undefined;
        deepest = last;
      }
    }
    const range = rangeOf(deepest);
    const end = range && !(isEmpty(deepest) && holder) ? range[1] : holder ? this.#afterColon(holder) : 0;
    // A text of several lines ends behind its own last line break.
    if (isScalar(deepest) && (deepest.type === 'BLOCK_LITERAL' || deepest.type === 'BLOCK_FOLDED') && this.yaml[end - 1] === '\n') return end;
    const lineEnd = this.yaml.indexOf('\n', end);
    return lineEnd === -1 ? this.yaml.length : lineEnd + 1;
  }

  #afterColon(pair: Pair): number {
    const colon = pair.srcToken?.sep?.find((token) => token.type === 'map-value-ind');
    return colon ? colon.offset + 1 : (rangeOf(pair.key)?.[1] ?? 0);
  }

  #columnOf(collection: YAMLMap | YAMLSeq): number {
    const first = collection.items[0];
    const start = isPair(first) ? keyStart(first) : isSeq(collection) ? dashOf(collection, 0) : (collection.range?.[0] ?? 0);
    return start - this.#lineStart(start);
  }

  #lineStart(offset: number): number {
    return this.yaml.lastIndexOf('\n', offset - 1) + 1;
  }

  #lineEnd(offset: number): number {
    const end = this.yaml.indexOf('\n', offset);
    const at = end === -1 ? this.yaml.length : end;
    return this.yaml[at - 1] === '\r' ? at - 1 : at;
  }

  #lines(text: string): string {
    return text.replace(/\r?\n/g, this.newline);
  }

  #splice(begin: number, end: number, text: string): string {
    return this.yaml.slice(0, begin) + text + this.yaml.slice(end);
  }
}

function nameOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : '';
}

function keyStart(pair: Pair | undefined): number {
  return rangeOf(pair?.key)?.[0] ?? 0;
}

/** Where the dash of a list's item stands. */
function dashOf(list: YAMLSeq, index: number): number {
  const token = list.srcToken;
  const dash = token?.type === 'block-seq' ? token.items[index]?.start.find((each) => each.type === 'seq-item-ind') : undefined;
  return dash?.offset ?? list.range?.[0] ?? 0;
}

function rangeOf(node: unknown): readonly [number, number] | undefined {
  const range = (node as { range?: readonly [number, number, number] | null } | null | undefined)?.range;
  return range ? [range[0], range[1]] : undefined;
}

/** `answer:` with nothing behind it. */
function isEmpty(node: unknown): boolean {
  return node === null || node === undefined || (isScalar(node) && node.type === 'PLAIN' && (node.value === '' || node.value === null));
}

function quotesOf(scalar: Scalar): Manner['quotes'] {
  if (scalar.type === 'QUOTE_DOUBLE') return 'double';
  return scalar.type === 'QUOTE_SINGLE' ? 'single' : 'none';
}
