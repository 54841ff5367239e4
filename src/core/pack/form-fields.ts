import { unwrapped, type Shape } from './schema-shape.ts';
import { packSchema } from './schema.ts';

/** The schema as a form sees it: each field with its kind and limits. There is no other list of fields; a form adds words and order. */

/** What a field takes. `by language` is a group whose names are language tags, as in `in other languages`. */
export type FieldKind = 'text' | 'whole number' | 'number' | 'yes or no' | 'choice' | 'date' | 'group' | 'list' | 'by language';

export interface FormField {
  /** The author's own name of it; empty for the item of a list. */
  readonly name: string;
  /** Its place in any pack, with `*` for the number of a list's item: `stops.*.at.opening`. */
  readonly path: string;
  readonly kind: FieldKind;
  readonly required: boolean;
  /** Least and most of a number; the most characters of a text. */
  readonly least?: number;
  readonly most?: number;
  readonly choices?: readonly string[];
  /** Fields of a group. */
  readonly fields?: readonly FormField[];
  /** What a list, or a group by language, holds. */
  readonly item?: FormField;
}

/** Every field of a pack, in the order of the schema. */
export const formFields: readonly FormField[] = fieldsOf(packSchema, '');

/** Paths in the order in which a pack's file has them, for `editPack`. */
export const fieldOrder: readonly string[] = everyField(formFields).map((field) => field.path);

/** The fields with everything in them, from the top down. */
export function everyField(fields: readonly FormField[]): readonly FormField[] {
  return fields.flatMap((field) => [field, ...everyField(field.fields ?? []), ...everyField(field.item ? [field.item] : [])]);
}

function fieldsOf(group: Shape, above: string): readonly FormField[] {
  return Object.entries(group.entries ?? {}).map(([name, shape]) => fieldOf(name, shape, above === '' ? name : `${above}.${name}`));
}

function fieldOf(name: string, shape: Shape, path: string): FormField {
  const inner = unwrapped(shape);
  const field = { name, path, required: shape.type !== 'optional' };
  switch (inner.type) {
    case 'object':
      return { ...field, kind: 'group', fields: fieldsOf(inner, path) };
    case 'array':
      return { ...field, kind: 'list', ...(inner.item && { item: fieldOf('', inner.item, `${path}.*`) }) };
    case 'record':
      return { ...field, kind: 'by language', ...(inner.value && { item: fieldOf('', inner.value, `${path}.*`) }) };
    case 'picklist':
      return { ...field, kind: 'choice', choices: inner.options ?? [] };
    case 'boolean':
      return { ...field, kind: 'yes or no' };
    case 'number':
      return { ...field, kind: has(inner, 'integer') ? 'whole number' : 'number', ...limit('least', inner, 'min_value'), ...limit('most', inner, 'max_value') };
    default:
      return { ...field, kind: has(inner, 'iso_date') ? 'date' : 'text', ...limit('most', inner, 'max_length') };
  }
}

function actions(shape: Shape): readonly { readonly type?: string; readonly requirement?: unknown }[] {
  return (shape.pipe ?? []) as readonly { readonly type?: string; readonly requirement?: unknown }[];
}

function has(shape: Shape, type: string): boolean {
  return actions(shape).some((action) => action.type === type);
}

function limit(name: 'least' | 'most', shape: Shape, type: string): { readonly least?: number; readonly most?: number } {
  const requirement = actions(shape).find((action) => action.type === type)?.requirement;
  return typeof requirement === 'number' ? { [name]: requirement } : {};
}
