import type { PageContext } from '../../src/outputs/views.ts';

/** The library's name in a page's language. */
export function nameOf({ library, language }: PageContext): string {
  return library.names?.[language] ?? library.name;
}
