import type { Assets, View } from './views.ts';

/** Kinds of pages that look like another kind. */
const alike: Readonly<Partial<Record<View['kind'], View['kind']>>> = { missing: 'library', unsaved: 'library', programs: 'prose' };

/** The style sheet of a kind of page: its own where it has one, or else the whole. */
export function styleOf({ css, printCss, ownStyles }: Assets, medium: 'screen' | 'print', kind: View['kind']): string {
  return ownStyles?.[`${medium}-${alike[kind] ?? kind}`] ?? (medium === 'screen' ? css : printCss);
}
