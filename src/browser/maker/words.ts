import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';

/** A phrase of the page with its gaps filled: `{n}` and the like. */
export function fill(phrase: string, facts: Readonly<Record<string, string | number>>): string {
  return phrase.replace(/\{(\w+)\}/g, (whole, name: string) => (name in facts ? String(facts[name]) : whole));
}

/** A name among other words: in a list it keeps its place, whichever way its letters run. */
export const isolated = (name: string): string => `\u2068${name}\u2069`;

/** The sorts of number that Arabic tells apart, in the order of its phrases. */
const sorts: readonly Intl.LDMLPluralRule[] = ['one', 'two', 'few', 'many', 'other'];

/** The phrase for so many: of a pair, for one and for several; of five, for the sorts of number in Arabic. */
export function counted(words: readonly string[], n: number): string {
  const several = words.length > 2 ? sorts.indexOf(new Intl.PluralRules('ar').select(n)) : n === 1 ? 0 : 1;
  return fill(words.at(several) ?? '', { n });
}

/** Steps as one text, and back: `stops.2.ask`. */
export function pathOf(steps: readonly Step[]): string {
  return steps.join('.');
}

/** The path in any pack: `stops.*.ask`. */
export function anyPath(steps: readonly Step[]): string {
  return steps.map((step) => (typeof step === 'number' ? '*' : step)).join('.');
}

/** An id for a field's input that is sound in a page. */
export function idOf(steps: readonly Step[]): string {
  return `field-${steps.join('-').replace(/ /g, '_')}`;
}

/** What stands at some steps of the fields as typed. */
export function valueAt(raw: Raw | undefined, steps: readonly Step[]): Raw | undefined {
  return steps.reduce<Raw | undefined>((at, step) => (typeof at === 'object' && Object.hasOwn(at, step) ? (at as Readonly<Record<Step, Raw>>)[step] : undefined), raw);
}

export function textAt(raw: Raw | undefined, steps: readonly Step[]): string {
  const value = valueAt(raw, steps);
  return typeof value === 'string' ? value : '';
}

export function listAt(raw: Raw | undefined, steps: readonly Step[]): readonly Raw[] {
  const value = valueAt(raw, steps);
  return Array.isArray(value) ? (value as readonly Raw[]) : [];
}

/** A language of the library by its name, any other by its tag. */
export function languageName({ languages }: { readonly languages: readonly (readonly [tag: string, name: string])[] }, tag: string): string {
  return languages.find(([each]) => each === tag)?.[1] ?? tag;
}

/** The day as the reader's clock has it. */
export function today(): string {
  return new Date().toLocaleDateString('sv-SE');
}
