import type { ShownPack } from './views.ts';

/** A title without its leading article: "The Lamp" stands under L. */
export function titleKey(title: string): string {
  return title.replace(/^(?:(?:the|a|an|el|la|los|las|un|una)\s+|ال(?=\p{L}))/iu, '');
}

/** In the order of the alphabet of a language, without a leading article. */
export function byTitle(shown: readonly ShownPack[], language: string): readonly ShownPack[] {
  const collator = new Intl.Collator(language);
  return shown
    .map((each) => ({ each, key: titleKey(each.pack.title) }))
    .sort((a, b) => collator.compare(a.key, b.key) || (a.each.pack.file < b.each.pack.file ? -1 : 1))
    .map(({ each }) => each);
}
