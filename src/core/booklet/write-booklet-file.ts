import { paper } from './booklet-schema.ts';
import { bestOf, entriesOf, wholeBook, type Booklet, type Entry, type Kind, type Prompt } from './booklet.ts';
import { isAtNoStop } from './chosen.ts';
import { dataBegin, dataEnd, dataText } from './data-block.ts';
import { drawingSvg, paperColour } from './drawing.ts';
import { fileStyle, fileStyleHash } from './file-style.ts';

/** The words of a handed-over file, in the language of the pack. */
export interface FileWords {
  readonly title: (book: string) => string;
  readonly lead: string;
  readonly mark: (pattern: string, colour: string) => string;
  readonly open: (opening: number) => string;
  readonly whole: string;
  readonly about: { readonly character: string; readonly me: string };
  readonly nothing: string;
  readonly kinds: Readonly<Record<Kind, string>>;
  readonly passed: string;
  readonly cannotTell: string;
  readonly stars: (stars: number, of: number, words: string) => string;
  readonly chosen: (best?: string, last?: string) => string;
  readonly untitledDrawing: string;
  readonly untitledPhoto: string;
  readonly seconds: (n: number) => string;
}

/**
 * A booklet as one HTML file that needs nothing else: anyone can open and read it, and it holds its data for reading back.
 * It can load nothing and run nothing: its policy allows pictures and sound from inside the file, and one style.
 */
export function writeBookletFile(booklet: Booklet, words: FileWords, direction: 'ltr' | 'rtl' = 'ltr'): string {
  const title = escaped(words.title(booklet.pack.title));
  return [
    '<!DOCTYPE html>',
    `<html lang="${escaped(booklet.pack.language)}" dir="${direction}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; media-src data:; style-src '${fileStyleHash}'; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="referrer" content="no-referrer">',
    '<meta name="generator" content="Bookfellow">',
    `<title>${title}</title>`,
    `<style>${fileStyle}</style>`,
    '</head>',
    '<body>',
    '<main>',
    `<h1>${title}</h1>`,
    `<p class="quiet">${escaped(words.mark(booklet.bookmark.pattern, booklet.bookmark.colour))}</p>`,
    `<p class="quiet">${escaped(words.lead)}</p>`,
    ...sheetsOf(booklet).map((sheet) => sheetHtml(sheet, words)),
    '</main>',
    dataBegin + dataText(booklet) + dataEnd,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** A file name that names the book and the bookmark, and nobody. Letters that some disk might refuse are left out. */
export function bookletFileName({ pack, bookmark }: Booklet): string {
  return `${pack.slug}-${pack.language}-${bookmark.colour}-${bookmark.pattern}.booklet.html`;
}

export interface AnsweredSheet {
  readonly of: string;
  /** The question as it was shown; more than one when the pack was reworded, none in a file that lost it. */
  readonly prompts: readonly Prompt[];
  readonly entries: readonly Entry[];
}

/** Every question in the book's order with its answers; last come answers whose question is missing. */
export function sheetsOf(booklet: Booklet): readonly AnsweredSheet[] {
  const names = [...new Set([...booklet.prompts.map(({ of }) => of), ...booklet.entries.map(({ to }) => to)])];
  return [...names.filter((name) => !isAtNoStop(name)), ...[wholeBook, bestOf].filter((name) => names.includes(name))].map((of) => ({
    of,
    prompts: booklet.prompts.filter((each) => each.of === of),
    entries: entriesOf(booklet, of),
  }));
}

function sheetHtml({ of, prompts, entries }: AnsweredSheet, words: FileWords): string {
  const first = prompts[0];
  const place = of === wholeBook ? words.whole : of === bestOf ? words.kinds.chosen : first?.opening === undefined ? of : words.open(first.opening);
  const asked = prompts.map(({ ask }) => `<h2 dir="auto">${escaped(ask)}</h2>`).join('') || `<h2>${escaped(of)}</h2>`;
  const about = first?.about === undefined ? '' : `<p class="quiet">${escaped(words.about[first.about])}</p>`;
  const answers = entries.length === 0 ? `<p class="quiet">${escaped(words.nothing)}</p>` : entries.map((each) => entryHtml(each, words)).join('\n');
  return `<section>\n<p class="place">${escaped(place)}</p>\n${asked}\n${about}\n${answers}\n</section>`;
}

/** One thing kept as HTML for a page that can load and run nothing. */
export function entryHtml({ value }: Entry, words: FileWords): string {
  const kind = `<p class="kind">${escaped(words.kinds[value.kind])}</p>`;
  switch (value.kind) {
    case 'written':
    case 'said':
    case 'acted':
    case 'because':
      return `${kind}<p class="answer" dir="auto">${escaped(value.text)}</p>`;
    case 'feeling':
      return `${kind}<p class="answer" dir="auto">${escaped(value.word)}</p>`;
    case 'cannot-tell':
      return `${kind}<p class="answer">${escaped(words.cannotTell)}</p>`;
    case 'passed':
      return `${kind}<p class="answer">${escaped(words.passed)}</p>`;
    case 'stars':
      return `${kind}<p class="answer">${escaped(words.stars(value.stars, value.of, value.words))}</p>`;
    case 'chosen':
      return `${kind}<p class="answer" dir="auto">${escaped(words.chosen(value.best, value.last))}</p>`;
    case 'voice':
      return `${kind}<p><audio controls preload="none" src="data:${value.type};base64,${value.data}"></audio></p><p class="quiet">${escaped(words.seconds(value.seconds))}</p>`;
    case 'photo':
      return `${kind}<p><img src="data:${value.type};base64,${value.data}" width="${String(value.width)}" height="${String(value.height)}" alt="${escaped(value.about || words.untitledPhoto)}"></p>${caption(value.about)}`;
    case 'drawing':
      return `${kind}<p><svg viewBox="0 0 ${String(paper.width)} ${String(paper.height)}" role="img" aria-label="${escaped(value.about || words.untitledDrawing)}" stroke-linecap="round" stroke-linejoin="round"><rect width="${String(paper.width)}" height="${String(paper.height)}" fill="${paperColour}"/>${drawingSvg(value.marks)}</svg></p>${caption(value.about)}`;
  }
}

function caption(about: string): string {
  return about === '' ? '' : `<p class="answer" dir="auto">${escaped(about)}</p>`;
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text as HTML. Control characters, which HTML cannot hold, show as a mark; the data holds them as they are. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? '').replace(/\p{Cc}/gu, (character) => (character === '\n' || character === '\t' ? character : '\uFFFD'));
}
