import * as v from 'valibot';
import { rightsOf } from './choices.ts';

/** A folder of packs that is not the library's own: a school's checkout or share, as `library.yaml` names it. */

const line = (most: number) => v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(most));

const sourceSchema = v.object({
  /** Relative to the content folder, or from the root of the disk. */
  folder: line(500),
  /** The school or person as pages name them. */
  owner: line(120),
  /** How to reach them: what stands here is meant to be public. */
  contact: v.optional(line(200)),
  /** Stands before the address of each of their packs. */
  prefix: v.optional(v.pipe(v.string(), v.trim(), v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), v.maxLength(30), v.examples(['saltmarsh']))),
  /** The licence of companions that name none. */
  licence: v.optional(line(80)),
  /** The rights of books of which the pack says none. */
  rights: v.optional(v.picklist(rightsOf)),
});

/** A library of a thousand schools would be another kind of thing. */
export const sourcesSchema = v.optional(v.pipe(v.array(sourceSchema), v.maxLength(200)));

/** Whose folder a pack came from. */
export interface Owner {
  readonly name: string;
  /** How to reach them; undefined where `library.yaml` says nothing. */
  readonly contact: string | undefined;
  /** What stands before the addresses of their packs. */
  readonly prefix: string | undefined;
}

/** What is taken for packs that say nothing. */
export interface Given {
  readonly licence: string | undefined;
  readonly rights: (typeof rightsOf)[number] | undefined;
}
