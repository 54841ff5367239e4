import { directionOf } from '../../core/languages/about-language.ts';
import type { Phrases } from '../../core/languages/en.ts';
import { phrasesFor } from '../../core/languages/pick-language.ts';
import type { Library } from '../../core/pack/library.ts';
import type { Stop } from '../../core/pack/pack.ts';
import type { Durations } from '../../core/plan/seconds.ts';
import type { BuiltPicture, PaperKind, ShownPack } from '../views.ts';

/**
 * A sheet to be printed, worked out as plain values: a template in `layouts/print/` only sets them.
 * Everything a template shows is in its data, labels too, and is text to it, never code.
 */
export interface Sheet<Data extends SheetData = SheetData> {
  readonly kind: PaperKind;
  readonly url: string;
  readonly data: Data;
}

/** What every template is given. Further values are the template's own. */
export interface SheetData {
  readonly language: string;
  readonly dir: 'ltr' | 'rtl';
  readonly paper: 'us-letter' | 'a4';
  /** The document's title, as a reader's window shows it. */
  readonly title: string;
  readonly author: string;
  /** Stands at the foot of each page, before the page's number. */
  readonly foot: string;
}

/** A name and what it stands for. */
export interface Line {
  readonly label: string;
  readonly text: string;
}

/** A picture on a sheet: the address of its JPEG in the site, of a smaller one for when a sheet would get too heavy, and its sides in pixels. */
export interface SheetPicture {
  readonly url: string;
  readonly smaller: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly credit: string;
}

/** What a sheet is made from. */
export interface SheetInput {
  readonly shown: ShownPack;
  readonly library: Library;
  readonly say: Phrases;
}

export function sheetInput(shown: ShownPack, library: Library): SheetInput {
  return { shown, library, say: phrasesFor(shown.pack.language) };
}

/** The part that all sheets of a pack have alike. Letter in a library of English or Spanish, as in most of the Americas, A4 in any other; `paper` in library.yaml comes first. */
export function sheetBase({ shown, library, say }: SheetInput, kind: PaperKind): SheetData {
  const { pack } = shown;
  const paper = library.paper ?? (['en', 'es'].includes(library.language) ? 'letter' : 'a4');
  return {
    language: pack.language.split('-')[0] ?? pack.language,
    dir: directionOf(pack.language),
    paper: paper === 'letter' ? 'us-letter' : 'a4',
    title: `${pack.title}: ${say.paper.kinds[kind].toLocaleLowerCase(pack.language)}`,
    author: [pack.by.name, pack.by.school].filter((part) => part !== undefined).join(', '),
    foot: `${pack.title} · ${say.paper.kinds[kind]}`,
  };
}

/** With a capital at its beginning, as the text's own language has it: that of the machine may be another one. */
export function capital(text: string, language: string): string {
  return text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
}

/** A picture for a sheet that shows it `width` pixels wide or less; undefined for an ornament, which paper can do without. */
export function sheetPicture(picture: BuiltPicture | undefined, width: number, say: Phrases): SheetPicture | undefined {
  const size = picture?.jpeg.find((each) => each.width >= width) ?? picture?.jpeg.at(-1);
  if (!picture || picture.decorative || !size) return undefined;
  return {
    url: size.url,
    smaller: picture.jpeg[0]?.url ?? size.url,
    alt: picture.alt,
    width: size.width,
    height: Math.round((picture.height * size.width) / picture.width),
    credit: picture.credit === undefined ? '' : say.book.pictureBy(picture.credit),
  };
}

/** Lines whose text is there. */
export function linesOf(pairs: readonly (readonly [label: string, text: string | undefined])[]): readonly Line[] {
  return pairs.flatMap(([label, text]) => (text === undefined || text === '' ? [] : [{ label, text }]));
}

/** "5 seconds of silence, 90 seconds for it, hear 2." The usual wait where the author named none. */
export function timingOf(stop: Stop, durations: Durations, say: Phrases): string {
  const { silence, work, hear } = say.paper;
  return `${[silence(stop.wait ?? durations.wait), ...(stop.task === undefined || stop.task === 0 ? [] : [work(stop.task)]), ...(stop.shares === undefined ? [] : [hear(stop.shares)])].join(say.comma)}.`;
}
