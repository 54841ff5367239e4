import { languageNameIn } from '../core/languages/about-language.ts';
import type { Phrases } from '../core/languages/en.ts';
import type { MakerPhrases } from '../core/languages/en-maker.ts';
import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { linkFrom } from './addresses.ts';
import { makerForm, orderOfFile, type FormChapter } from './maker-form.ts';
import type { Assets, MakerView, PageOf } from './views.ts';

/** A pack of the library that may be copied. Addresses are relative to the page. */
export interface Copy {
  readonly title: string;
  readonly by: string;
  readonly licence: string;
  readonly language: string;
  readonly slug: string;
  readonly file: string;
  readonly pictures: readonly { readonly file: string; readonly url: string }[];
}

/** Everything that the page's script needs to know, in the page's language. */
export interface MakerData {
  readonly language: string;
  readonly library: Library;
  /** The page's own address, from the root of the site. */
  readonly url: string;
  readonly assets: Assets;
  readonly chapters: readonly FormChapter[];
  readonly order: readonly string[];
  readonly say: Omit<MakerPhrases, 'fields' | 'chapters' | 'choices' | 'body' | 'copyHere'>;
  /** What stands between things that are named one after another. */
  readonly comma: string;
  readonly semicolon: string;
  readonly kinds: Phrases['kinds'];
  readonly ways: Phrases['ways'];
  /** The languages of the library with their names. */
  readonly languages: readonly (readonly [tag: string, name: string])[];
  readonly copies: readonly Copy[];
  /** Where the part that reads and checks is, and where a file by hand is explained. */
  readonly worker: string | undefined;
  readonly handOver: string;
}

export function makerDataOf(page: PageOf<MakerView>): MakerData {
  const { language, library, url, assets, view } = page;
  const phrases = phrasesFor(language);
  const say = withoutFields(phrases.maker);
  const worker = assets.scripts['maker-worker'];
  return {
    language,
    library,
    url,
    assets,
    chapters: makerForm(phrases),
    order: orderOfFile,
    say,
    comma: phrases.comma,
    semicolon: phrases.semicolon,
    kinds: phrases.kinds,
    ways: phrases.ways,
    languages: library.languages.map((tag) => [tag, languageNameIn(tag, language)] as const),
    copies: view.copies.map((each) => ({
      title: each.pack.title,
      by: each.pack.by.name,
      licence: each.pack.by.licence,
      language: each.pack.language,
      slug: each.pack.slug,
      file: linkFrom(url, `${each.urls.family}pack.md`),
      pictures: each.pictures.flatMap((picture) => {
        const largest = picture.jpeg.at(-1);
        return largest ? [{ file: picture.file, url: linkFrom(url, largest.url) }] : [];
      }),
    })),
    worker: worker === undefined ? undefined : linkFrom(url, worker),
    handOver: linkFrom(url, `${url}hand-over/`),
  };
}

/** The phrases that the script says; the words of fields go with the fields. */
function withoutFields(phrases: MakerPhrases): MakerData['say'] {
  return Object.fromEntries(Object.entries(phrases).filter(([name]) => !['fields', 'chapters', 'choices', 'body', 'copyHere'].includes(name))) as MakerData['say'];
}
