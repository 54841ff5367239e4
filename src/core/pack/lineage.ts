import { nearest } from './nearest.ts';

/** Which companion of this library another one names: the one it was made from, or the one that takes its place. */

/** A companion as it can be named. */
export interface Named {
  readonly slug: string;
  readonly title: string;
  /** Who made it; undefined of a retired one. */
  readonly maker: string | undefined;
}

export type Meant =
  | { readonly kind: 'here'; readonly slug: string }
  | { readonly kind: 'elsewhere'; readonly url: string }
  /** It looks like a name of this library, and nothing here has it. */
  | { readonly kind: 'missing'; readonly suggestion: string | undefined }
  /** Words that name no companion of this library. */
  | { readonly kind: 'words' };

export interface Names {
  readonly slugs: ReadonlySet<string>;
  /** Slugs by "title, maker", as the form writes it into a copy. */
  readonly byTitle: ReadonlyMap<string, ReadonlySet<string>>;
  /** Where the library lives, if it says so. */
  readonly address: string | undefined;
}

export function namesOf(all: readonly Named[], address: string | undefined): Names {
  const byTitle = new Map<string, Set<string>>();
  for (const { slug, title, maker } of all) {
    if (maker === undefined) continue;
    const key = `${title}, ${maker}`;
    byTitle.set(key, (byTitle.get(key) ?? new Set()).add(slug));
  }
  return { slugs: new Set(all.map(({ slug }) => slug)), byTitle, address };
}

/** What a field means that names a companion: by its folder's name, its address, or, as the form writes it, by title and maker. A school's own folder comes first. */
export function meantBy(text: string, prefix: string | undefined, { slugs, byTitle, address }: Names): Meant {
  const isWeb = /^https?:\/\//.test(text);
  if (isWeb && (address === undefined || !text.startsWith(address))) return { kind: 'elsewhere', url: text };
  const inAddress = /(?:^|\/)packs\/([a-z0-9]+(?:-[a-z0-9]+)*)(?:\/|$)/.exec(text)?.[1];
  const slug = inAddress ?? (/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text) ? text : undefined);
  if (slug !== undefined) {
    const here = [...(prefix === undefined ? [] : [`${prefix}-${slug}`]), slug].find((each) => slugs.has(each));
    if (here !== undefined) return { kind: 'here', slug: here };
    // One small word may be just a word; with a dash or in an address it is meant as a name.
    return inAddress !== undefined || slug.includes('-') ? { kind: 'missing', suggestion: nearest(slug, [...slugs]) } : { kind: 'words' };
  }
  const parts = text.split(', ');
  for (let length = parts.length; length > 1; length--) {
    const found = byTitle.get(parts.slice(0, length).join(', '));
    const [only] = found ?? [];
    if (only !== undefined && found?.size === 1) return { kind: 'here', slug: only };
  }
  return { kind: 'words' };
}
