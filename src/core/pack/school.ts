import type { Owner } from './library-sources.ts';
import type { PackFields } from './pack.ts';

/** The school that a pack is from: the one its maker names, or else the owner of the folder that it came in. */
export function schoolOf({ by, owner }: Pick<PackFields, 'by'> & { readonly owner?: Owner }): string | undefined {
  return by.school ?? owner?.name;
}
