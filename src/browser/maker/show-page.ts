import type { JSX } from 'preact';
import { Booklet } from '../../../layouts/booklet.tsx';
import { Family } from '../../../layouts/family.tsx';
import { Lesson } from '../../../layouts/lesson.tsx';
import { pictureHtml } from '../../../layouts/parts/picture.tsx';
import { toHtml } from '../../../layouts/to-html.ts';
import { phrasesFor } from '../../core/languages/pick-language.ts';
import type { Library } from '../../core/pack/library.ts';
import { bodyHtml } from '../../core/pack/markdown.ts';
import { linkFrom, packUrls } from '../../outputs/addresses.ts';
import { packToShow, type TextToLook } from '../../outputs/maker-look.ts';
import type { Assets, BuiltPicture, Page, PageOf, PackView, ShownPack } from '../../outputs/views.ts';

export type PreviewKind = PackView['kind'];

export interface ShowInput {
  readonly to: TextToLook;
  readonly kind: PreviewKind;
  readonly library: Library;
  readonly language: string;
  readonly today: string;
  /** Address of the form, from the site's root: the page is shown there, so its links start there. */
  readonly url: string;
  readonly assets: Assets;
  /** Addresses of the pictures on this device, by the name of their file. */
  readonly pictures: Readonly<Record<string, { readonly url: string; readonly width: number; readonly height: number }>>;
}

export interface ShownPage {
  readonly html: string;
  /** False when something is missing and a gap stands for it. */
  readonly whole: boolean;
}

/** The page of a pack as a library would publish it, made by the library's own layouts. */
export function showPage(input: ShowInput): ShownPage | undefined {
  const { to, kind, library, language, today, url, assets } = input;
  const found = packToShow(to, library, language, today);
  if (!found) return undefined;
  const { pack } = found;
  const pictures = (pack.pictures ?? []).flatMap((each): readonly BuiltPicture[] => {
    const file = input.pictures[each.file];
    if (!file) return [];
    // The link is made relative to the page's own address, and an address on this device is not: `linkFrom` leaves it alone below.
    const sizes = [{ url: file.url, width: file.width }];
    return [{ file: each.file, alt: each.alt ?? '', decorative: each.decorative === true, credit: each.credit, stop: each.stop, width: file.width, height: file.height, webp: sizes, jpeg: sizes }];
  });
  const urls = packUrls(to.slug, pack.language, library.language);
  const shown: ShownPack = {
    pack,
    pictures,
    recording: undefined,
    bodyHtml: bodyHtml(pack.body, {
      topHeading: 3,
      showPicture: (name, alt) => {
        const picture = pictures.find((each) => each.file === name);
        return picture ? pictureHtml({ ...picture, alt: alt === '' ? picture.alt : alt }, (address) => linkFrom(url, address)) : '';
      },
      tableName: phrasesFor(pack.language).wideTable,
    }),
    urls,
    papers: [],
    versions: [{ language: pack.language, urls }],
  };
  const page: PageOf<PackView> = { library, language: pack.language, url, alternates: [], assets: { ...assets, scripts: {} }, view: { kind, shown } };
  const html = toHtml(layoutOf(page));
  const up = linkFrom(url, 'blob:');
  return { html: `<!DOCTYPE html>\n${html.replaceAll(up, 'blob:')}`, whole: found.whole };
}

function layoutOf(page: Page & PageOf<PackView>): JSX.Element {
  switch (page.view.kind) {
    case 'family':
      return Family(page);
    case 'booklet':
      return Booklet(page);
    case 'lesson':
      return Lesson(page);
  }
}
