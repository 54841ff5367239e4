/** Texts of YAML of all plain kinds, as somebody may type them: sound ones, and ones that just miss. */
import fc, { type Arbitrary, type GeneratorValue } from 'fast-check';

/** A text with fields at its top, three levels deep, written in every style. It begins with a line break, as what stands between the lines of dashes does. */
export const anyYaml: Arbitrary<string> = fc.gen().map((g) => new Writer(g).text());

/** A run of lines out of one of some texts, with up to three slips of the hand. */
export function anySlip(texts: readonly string[]): Arbitrary<string> {
  return fc.tuple(fc.constantFrom(...texts), fc.nat(), fc.integer({ min: 1, max: 12 }), fc.array(anEdit, { maxLength: 3 })).map(([text, from, many, edits]) => {
    const lines = text.split('\n');
    const begin = from % lines.length;
    return edits.reduce(
      (slipped, { at, out, put }) => slipped.slice(0, 1 + (at % slipped.length)) + put + slipped.slice(1 + (at % slipped.length) + out),
      `\n${lines.slice(begin, begin + many).join('\n')}`,
    );
  });
}

/** Characters that mean something in YAML, or look as if they did. */
const signs = [
  ...Array.from(' \n:-#,[]{}"\'|>?\\%@`~&*!=\t\r'),
  '  ',
  '\n  ',
  ': ',
  '- ',
  ' #',
  '? ',
  '<<: ',
  '...',
  '---',
  '\\"',
  '\\n',
  '\\x1b',
  '\u0085',
  '\u00a0',
  '\u2028',
  '\u202e',
  '\ufeff',
  '\ud800',
  'a',
  'é',
  '😀',
];
const anEdit = fc.record({ at: fc.nat(), out: fc.constantFrom(0, 0, 0, 1, 2, 3), put: fc.constantFrom('', ...signs) });

/** Signs in a row, most of which is no YAML. */
export const anySigns: Arbitrary<string> = fc
  .tuple(fc.constantFrom('', 'a: ', 'a:\n  b: ', 'a: [', 'a: {', 'a: "', 'a: |\n  '), fc.array(fc.constantFrom(...signs, 'b: ', '\nb: ', '\n- ', '\n    ', ']', '}', '"x"', "'y'"), { maxLength: 12 }))
  .map(([begin, parts]) => `\n${begin}${parts.join('')}`);

const words = ['a', 'bb', 'hen', 'd e', 'it is', 'x-y', 'z_1', 'é', 'three plain words', '12', 'no', '2026-09-01'];
const oddWords = [
  'with: colon',
  'K, 1',
  '#x',
  'a #b',
  '-',
  '- x',
  '"q"',
  "it's",
  '',
  'a\\b',
  '?',
  'what?',
  '? x',
  '[x',
  'x]',
  '{',
  '}',
  '!',
  '!t x',
  '&a x',
  '*a',
  '@',
  '%',
  '|',
  '>',
  '~',
  'a\u00a0',
  'x:y',
  'x :y',
  ':x',
  ' lead',
  'trail ',
  '`',
  '😀',
  "''",
  '\\n',
  '\\x41',
  'a: b',
  '<<',
  '__proto__',
  '\t',
  '\u2028',
];

class Writer {
  private readonly g: GeneratorValue;
  /** In a hundred: how often something odd is written. */
  private readonly odd: number;

  constructor(g: GeneratorValue) {
    this.g = g;
    this.odd = this.of([0, 0, 3, 10, 30]);
  }

  text(): string {
    return this.block(0, 3, this.chance(2)).replace(/^\n?/, '\n');
  }

  private upTo(most: number): number {
    return this.g(fc.integer, { min: 0, max: most });
  }

  private chance(ofAHundred: number): boolean {
    return this.upTo(99) >= 100 - ofAHundred;
  }

  private of<T>(list: readonly T[]): T {
    return list[this.upTo(list.length - 1)] as T;
  }

  private several(least: number, most: number, make: (index: number) => string): readonly string[] {
    return Array.from({ length: least + this.upTo(most - least) }, (_, index) => make(index));
  }

  private word(): string {
    return this.chance(this.odd) ? this.of(oddWords) : this.of(words);
  }

  /** A line break, rarely more, and the spaces of the next line: enough of them, but for a slip. */
  private newLine(indent: number): string {
    return '\n'.repeat(this.chance(15) ? 2 : 1) + ' '.repeat(this.chance(this.odd) ? this.upTo(indent + 1) : indent + this.of([0, 0, 0, 1, 2]));
  }

  private remark(indent: number): string {
    return this.chance(8) ? `${this.newLine(indent)}# a remark: of "some" [kind` : '';
  }

  private tail(): string {
    return this.of(['', '', '', '', '', '', '', '', ' # after', ' ']);
  }

  private scalar(indent: number, inFlow: boolean): string {
    const lines = () => this.several(1, 3, () => this.word()).join(this.newLine(indent + 1));
    switch (this.upTo(inFlow ? 7 : 9)) {
      case 0:
        return JSON.stringify(this.word());
      case 1:
        return `'${this.word().replaceAll("'", "''")}'`;
      case 2:
        return lines();
      case 3:
        return `"${lines().replaceAll('"', String.raw`\"`)}"`;
      case 4:
        return `'${lines().replaceAll("'", "''")}'`;
      case 8:
      case 9:
        return this.blockScalar(indent);
      default:
        return this.word();
    }
  }

  private blockScalar(indent: number): string {
    const deep = indent + 1 + this.upTo(2);
    const line = () => {
      if (this.chance(15)) return ' '.repeat(this.upTo(this.chance(this.odd) ? deep + 2 : 0));
      return ' '.repeat(this.chance(this.odd) ? this.upTo(deep + 3) : deep + this.of([0, 0, 0, 0, 1, 2])) + this.word() + this.of(['', '', '', '', ' ']);
    };
    const sign = this.chance(this.odd) ? String(1 + this.upTo(3)) : '';
    return [this.of(['|', '>']) + this.of(['', '', '-', '+']) + sign + this.tail(), ...this.several(0, 4, line)].join('\n');
  }

  private name(index: number): string {
    const name = this.of(['k', 'm', 'n', 'o p']) + (this.chance(this.odd) ? '' : String(index));
    return this.of([name, name, name, `"${name}"`, `'${name}'`, this.chance(this.odd) ? this.scalar(0, true) : name]);
  }

  private flow(indent: number, depth: number): string {
    if (depth === 0 || this.chance(40)) return this.scalar(indent, true);
    const gap = () => (this.chance(20) ? this.of([' ', this.newLine(indent + 1), ` # within${this.newLine(indent + 1)}`]) : '');
    const item = (index: number) => (this.chance(5) ? `${this.name(index)}: ` : '') + this.flow(indent, depth - 1);
    const field = (index: number) => this.name(index) + gap() + (this.chance(7) ? '' : this.of([': ', ': ', ': ', ':', ' : ']) + this.flow(indent, depth - 1));
    const isList = this.chance(50);
    const inside = gap() + this.several(0, 3, isList ? item : field).join(`${gap()},${this.of([' ', ' ', '', this.newLine(indent + 1)])}`) + (this.chance(10) ? ',' : '') + gap();
    return isList ? `[${inside}]` : `{${inside}}`;
  }

  /** Items or fields, each on a line of its own. */
  private block(indent: number, depth: number, isList: boolean): string {
    return this.several(1, 3, (index) => {
      const begin = this.remark(indent) + '\n'.repeat(this.chance(6) ? 2 : 1) + ' '.repeat(this.chance(this.odd / 10) ? this.upTo(indent + 2) : indent);
      if (isList) return `${begin}-${this.value(indent, depth, isList)}`;
      const asked = this.chance(3) ? `? ${this.scalar(indent, true)}${begin}` : `${this.name(index)}${this.chance(3) ? ' ' : ''}`;
      return `${begin}${asked}:${this.value(indent, depth, isList)}`;
    }).join('');
  }

  private value(indent: number, depth: number, inList: boolean): string {
    if (depth > 0 && this.chance(40)) {
      const isList = this.chance(40);
      // A list may begin where the name of its field does.
      const deeper = !inList && isList && this.chance(40) ? indent : indent + this.of([2, 2, 2, 2, 1, 3, 4]);
      const below = this.block(deeper, depth - 1, isList);
      return inList && this.chance(70) ? below.replace(/^\n */, ' '.repeat(deeper - indent - 1)) : this.tail() + below;
    }
    if (this.chance(5)) return this.tail();
    const gap = this.of([' ', ' ', ' ', '  ', this.newLine(indent + 1)]);
    return gap + (this.chance(30) ? this.flow(indent, 2) : this.scalar(indent, false)) + this.tail();
  }
}
