import type { Library } from '../../core/pack/library.ts';
import { editPack, type Edit } from '../../core/pack/write-pack.ts';
import { fieldsIn, type Fields } from '../../outputs/maker-fields.ts';
import type { Look, TextToLook } from '../../outputs/maker-look.ts';
import type { ShownPage, ShowInput } from './show-page.ts';

/** The heavy part of the form, away from the page: reads, changes, checks and shows the text that it is given, and keeps nothing. */
export interface Work {
  fields(text: string): Fields;
  /** The text after some changes and what stands in it then; undefined when one of them cannot be made. */
  edit(text: string, edits: readonly Edit[], order: readonly string[]): { readonly text: string; readonly fields: Fields } | undefined;
  look(to: TextToLook, library: Library, language: string, today: string): Promise<Look>;
  page(input: ShowInput): Promise<ShownPage | undefined>;
}

export const work: Work = {
  fields: fieldsIn,
  edit(text, edits, order) {
    let changed = text;
    for (const edit of edits) {
      const after = editPack(changed, edit, order);
      if (after === undefined) return undefined;
      changed = after;
    }
    return { text: changed, fields: fieldsIn(changed) };
  },
  // The checks with their lists of words are the largest part, and the form is of use before they are here.
  look: async (...given) => (await import('../../outputs/maker-look.ts')).lookAt(...given),
  page: async (input) => (await import('./show-page.ts')).showPage(input),
};
