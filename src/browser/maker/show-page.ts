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
  /** Shows it as it comes out of a printer. */
  readonly onPaper: boolean;
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
  // This is no place to browse: a link to another page asks for a window of its own, which the frame may not open, so it leads nowhere.
  // The library's page has its pictures from the library; here they are on this device, and the page's own policy has to let them in.
  const shownHere = html
    .replaceAll(up, 'blob:')
    .replace("img-src 'self' data:;", "img-src 'self' data: blob:;")
    .replace(/<a (?=[^>]*href="(?!#))/g, '<a target="_blank" ');
  return { html: `<!DOCTYPE html>\n${input.onPaper ? asOnPaper(shownHere) : shownHere}`, whole: found.whole };
}

/** The page with the styles of paper in place of those of the screen. */
function asOnPaper(html: string): string {
  return html.replaceAll('media="screen"', 'media="not all"').replaceAll('media="print"', 'media="all"').replace('content="light dark"', 'content="light"');
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
