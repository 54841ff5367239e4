import { meantBy } from '../core/pack/lineage.ts';
import type { Library } from '../core/pack/library.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import { packUrls } from './addresses.ts';
import { chooser, namesIn } from './lineage.ts';
import type { Output, RetiredView, ShownPack, ShownRetired } from './views.ts';

/** What is left of companions that were taken out of the library: a page that says so at each of their addresses, and a line for other programs. */

/** With what takes their place, and what is still here of the same book. */
export function showRetired(retired: readonly RetiredPack[], shown: readonly ShownPack[], library: Library): readonly ShownRetired[] {
  if (retired.length === 0) return [];
  const names = namesIn(shown, retired, library);
  const choose = chooser(shown, retired, library);
  return retired.map((pack) => {
    const named = pack.retired.instead;
    const meant = named === undefined ? undefined : meantBy(named, pack.owner?.prefix, names);
    return {
      pack,
      urls: packUrls(pack.slug, pack.language, library.language),
      instead: meant?.kind === 'here' && meant.slug !== pack.slug ? choose(meant.slug, pack.language) : undefined,
      elsewhere: meant?.kind === 'elsewhere' ? meant.url : undefined,
      stillIn: shown.filter((each) => each.pack.slug === pack.slug).map((each) => ({ title: each.pack.title, language: each.pack.language, url: each.urls.family, from: undefined })),
    };
  });
}

/** Its pages: one at each address that the companion had, so that a link on paper or in a message still says something. */
export function retiredPages(retired: ShownRetired): readonly { readonly url: string; readonly view: RetiredView }[] {
  const parts = ['family', 'booklet', 'lesson', ...(retired.pack.hadRecording ? (['recording'] as const) : [])] as const;
  return parts.map((part) => ({ url: retired.urls[part], view: { kind: 'retired', part, retired } }));
}

/** What other programs find at the address of its front matter. */
export function retiredJson(retired: readonly ShownRetired[]): readonly Output[] {
  return retired.map((each) => ({ url: `${each.urls.family}pack.json`, text: `${JSON.stringify(retiredFields(each), null, 2)}\n` }));
}

/** A retired companion as data; addresses are relative to the root of the site. */
export function retiredFields({ pack, urls, instead, elsewhere }: ShownRetired): object {
  const { title, language, retired, owner } = pack;
  return {
    title,
    language,
    retired: { on: retired.on, because: retired.because, instead: instead?.url ?? elsewhere },
    provider: owner && { name: owner.name, contact: owner.contact },
    page: urls.family,
  };
}
