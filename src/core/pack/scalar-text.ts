/** How a text, number or yes/no is written into front matter, so that it is read back as it was. */

/** A value as an author could have typed it: text, number, yes/no, or lists and groups of these under the author's own field names. */
export type Tree = string | number | boolean | readonly Tree[] | { readonly [field: string]: Tree };

/** How a scalar was or shall be written. Inside `[a, b]` a plain text may hold less. */
export interface Manner {
  readonly quotes: 'none' | 'single' | 'double';
  readonly inFlow: boolean;
  /** Spaces before the lines of a text of several lines. */
  readonly indent: number;
}

/** The YAML of one scalar. It keeps the quotes it had where they can hold the new value, and takes double quotes where nothing else can. */
export function scalarText(value: string | number | boolean, manner: Manner): string {
  const text = String(value);
  if (typeof value === 'string' && text.includes('\n') && !manner.inFlow && canBeBlock(text)) return blockText(text, manner.indent);
  if (manner.quotes === 'single' && /^[^\n\t\\]*$/.test(text) && !needsEscapes(text)) return `'${text.replaceAll("'", "''")}'`;
  if (manner.quotes === 'double' || !canBePlain(text, manner.inFlow)) return doubleQuoted(text);
  return text;
}

/** The YAML of a tree as lines, for a place `indent` spaces in. The first line has no indent of its own. */
export function treeText(value: Tree, indent: number, newline: string): string {
  const pad = ' '.repeat(indent);
  if (typeof value !== 'object') return scalarText(value, { quotes: 'none', inFlow: false, indent: indent + 2 });
  if (Array.isArray(value)) return (value as readonly Tree[]).map((item) => `- ${treeText(item, indent + 2, newline)}`).join(newline + pad);
  return Object.entries(value)
    .map(([field, item]) => fieldText(field, item, indent, newline))
    .join(newline + pad);
}

/** The YAML of a field and its value. */
export function fieldText(field: string, value: Tree, indent: number, newline: string): string {
  const name = canBePlain(field, true) ? field : doubleQuoted(field);
  if (Array.isArray(value) && value.length === 0) return `${name}: []`;
  if (typeof value === 'object') return `${name}:${newline}${' '.repeat(indent + 2)}${treeText(value, indent + 2, newline)}`;
  return `${name}: ${scalarText(value, { quotes: 'none', inFlow: false, indent: indent + 2 })}`;
}

/** Words of plain letters and nothing else: the name of every field, and many a short text. */
const plainWords = /^[A-Za-z]+(?: [A-Za-z]+)*$/;

/** Begins with a letter, digit or harmless sign, and holds nothing that YAML takes for more than text. */
function canBePlain(text: string, inFlow: boolean): boolean {
  if (plainWords.test(text)) return true;
  // Other readers of YAML take 2:40 for a number on the base of sixty.
  if (/^\d+:\d/.test(text)) return false;
  if (!/^[\p{L}\p{N}_¿¡(“‘«/.+…–—_]/u.test(text) || /[\s:]$/u.test(text) || hasMark(text)) return false;
  if (inFlow && /[,[\]{}:]/.test(text)) return false;
  return !needsEscapes(text) && !/[\n\t]/.test(text) && !/^(?:\.\.\.|---)/.test(text);
}

/** Holds a colon or number sign that is more than a part of a word: most texts hold neither. */
function hasMark(text: string): boolean {
  return /[:#]/.test(text) && /[:#]/.test(text.replace(/[^\s:#]:(?=\S)|\S#/g, ''));
}

/** Characters that only double quotes can hold, as escapes. */
function needsEscapes(text: string): boolean {
  if (/^[ -~]*$/.test(text)) return false;
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  return /[\u0000-\u0008\u000b-\u001f\u007f-\u00a0\u2028\u2029\ufeff\ufffe\uffff]|[\ud800-\udfff]/.test(text.replace(/[\ud800-\udbff][\udc00-\udfff]/g, ''));
}

function doubleQuoted(text: string): string {
  const escapes: Readonly<Record<string, string>> = { '"': '\\"', '\\': '\\\\', '\n': '\\n', '\t': '\\t', '\r': '\\r' };
  const escaped = text
    .replace(/["\\\n\t\r]/g, (character) => escapes[character] ?? character)
    // eslint-disable-next-line no-control-regex -- control characters are what is escaped
    .replace(/[\u0000-\u001f\u007f-\u00a0\u2028\u2029\ufeff\ufffe\uffff]/g, (character) => `\\u${hex(character)}`);
  return `"${escaped.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, (character) => `\\u${hex(character)}`)}"`;
}

function hex(character: string): string {
  return character.charCodeAt(0).toString(16).padStart(4, '0');
}

function canBeBlock(text: string): boolean {
  return !needsEscapes(text) && /^[^\s]/.test(text) && text.split('\n').every((line) => !/[\s]$/.test(line)) && !text.endsWith('\n');
}

function blockText(text: string, indent: number): string {
  const pad = ' '.repeat(indent);
  return ['|-', ...text.split('\n').map((line) => (line === '' ? '' : pad + line))].join('\n');
}
