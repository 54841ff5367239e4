import { everyField, formFields, type FormField } from '../core/pack/form-fields.ts';
import type { Pack } from '../core/pack/pack.ts';
import { treeText, type Tree } from '../core/pack/scalar-text.ts';
import type { Output, OutputInput } from './views.ts';

/**
 * A pack's own text as published: the fields of the schema in its order, and the body. Remarks and fields of the author's
 * own are not in it, since nobody meant them for the public.
 */
export function packFiles({ shown }: OutputInput): readonly Output[] {
  return shown.map((of) => ({
    url: `${of.urls.family}pack.md`,
    of,
    get text() {
      return packFile(of.pack);
    },
  }));
}

/** The fields of the schema, in its order and under the author's names. */
export function packTree(pack: Pack): { readonly [field: string]: Tree } {
  return groupOf(pack as unknown as Readonly<Record<string, unknown>>, formFields);
}

export function packFile(pack: Pack): string {
  const tree = packTree(pack);
  return `---\n${treeText(tree, 0, '\n')}\n---\n\n${pack.body.markdown.replace(/\n{3,}/g, '\n\n').trim()}\n`;
}

/** What a field is called in a pack: `listenFor` for `listen for`. */
const ownNames: ReadonlyMap<FormField, string> = new Map(everyField(formFields).map((field) => [field, field.name.replace(/ ([a-z])/g, (_, letter: string) => letter.toUpperCase())]));

function groupOf(group: Readonly<Record<string, unknown>>, fields: readonly FormField[]): { readonly [field: string]: Tree } {
  const tree: Record<string, Tree> = {};
  for (const field of fields) {
    const value = group[ownNames.get(field) ?? field.name];
    const made = value === undefined ? undefined : treeOf(value, field);
    if (made !== undefined) tree[field.name] = made;
  }
  return tree;
}

function treeOf(value: unknown, field: FormField): Tree | undefined {
  const { fields, item } = field;
  // Where a list has to be, an empty one says so.
  if (Array.isArray(value)) return value.length === 0 && !field.required ? undefined : (value as readonly unknown[]).flatMap((each) => (item ? (treeOf(each, item) ?? []) : []));
  if (field.kind === 'by language') return Object.keys(value as object).length === 0 ? undefined : (value as { readonly [tag: string]: string });
  return fields ? groupOf(value as Readonly<Record<string, unknown>>, fields) : (value as string | number | boolean);
}
