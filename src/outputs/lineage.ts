import type { Library } from '../core/pack/library.ts';
import { meantBy, namesOf, type Named, type Names } from '../core/pack/lineage.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import { packUrls } from './addresses.ts';
import type { Related, ShownPack } from './views.ts';

/** Each companion with the one it was made from and those that were made from it, as far as they are in this library. */
export function withLineage(shown: readonly ShownPack[], retired: readonly RetiredPack[], library: Library): readonly ShownPack[] {
  const names = namesIn(shown, retired, library);
  const parentOf = new Map<ShownPack, string>();
  const forksOf = new Map<string, Set<string>>();
  for (const each of shown) {
    const { by, owner, slug } = each.pack;
    const meant = by.basedOn === undefined ? undefined : meantBy(by.basedOn, owner?.prefix, names);
    if (meant?.kind !== 'here' || meant.slug === slug) continue;
    parentOf.set(each, meant.slug);
    forksOf.set(meant.slug, (forksOf.get(meant.slug) ?? new Set()).add(slug));
  }
  if (parentOf.size === 0) return shown;
  const choose = chooser(shown, retired, library);
  return shown.map((each) => {
    const parent = parentOf.get(each);
    const forks = [...(forksOf.get(each.pack.slug) ?? [])].flatMap((slug) => choose(slug, each.pack.language) ?? []);
    const found = parent === undefined ? undefined : choose(parent, each.pack.language);
    return found === undefined && forks.length === 0 ? each : { ...each, lineage: { parent: found, forks: forks.sort((a, b) => (a.url < b.url ? -1 : 1)) } };
  });
}

/** Everything that can be named in a library. */
export function namesIn(shown: readonly ShownPack[], retired: readonly RetiredPack[], { address }: Library): Names {
  const named: Named[] = [...shown.map(({ pack }) => ({ slug: pack.slug, title: pack.title, maker: pack.by.name })), ...retired.map(({ slug, title }) => ({ slug, title, maker: undefined }))];
  return namesOf(named, address);
}

/** Finds the companion with a slug: in the reader's language, or the library's own, or whichever there is. */
export function chooser(shown: readonly ShownPack[], retired: readonly RetiredPack[], library: Library): (slug: string, language: string) => Related | undefined {
  const bySlug = new Map<string, Related[]>();
  const add = (slug: string, related: Related) => bySlug.set(slug, [...(bySlug.get(slug) ?? []), related]);
  for (const { pack, urls } of shown) add(pack.slug, { title: pack.title, language: pack.language, url: urls.family, from: pack.owner?.name ?? pack.by.school });
  for (const { slug, title, language, owner } of retired) add(slug, { title, language, url: packUrls(slug, language, library.language).family, from: owner?.name });
  return (slug, language) => {
    const versions = bySlug.get(slug) ?? [];
    return versions.find((each) => each.language === language) ?? versions.find((each) => each.language === library.language) ?? versions[0];
  };
}
