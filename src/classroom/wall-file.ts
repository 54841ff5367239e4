import { fileStyle, fileStyleHash } from '../core/booklet/file-style.ts';
import { directionOf } from '../core/languages/about-language.ts';
import { entryHtml, escaped, type FileWords } from '../core/booklet/write-booklet-file.ts';
import type { WallPage } from './wall-page.ts';

export interface WallWords {
  readonly title: (book: string) => string;
  readonly lead: string;
  readonly answers: string;
  readonly feelings: string;
  readonly feelingLine: (answered: number, words: readonly (readonly [word: string, children: number])[]) => string;
  readonly stars: string;
  readonly chosen: string;
  readonly chosenLine: (book: string, children: number) => string;
  readonly starLine: (stars: number, children: number, words: string) => string;
  readonly howMany: (children: number) => string;
}

/** The page for families as one HTML file that needs nothing else, loads nothing and runs nothing. */
export function writeWallFile(page: WallPage, words: WallWords, file: FileWords, language: string): string {
  const title = escaped(words.title(page.pack.title));
  const lang = language === page.pack.language ? '' : ` lang="${escaped(page.pack.language)}" dir="${directionOf(page.pack.language)}"`;
  return [
    '<!DOCTYPE html>',
    `<html lang="${escaped(language)}" dir="${directionOf(language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '${fileStyleHash}'; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${title}</title>`,
    `<style>${fileStyle}</style>`,
    '</head>',
    '<body>',
    '<main>',
    `<h1>${title}</h1>`,
    `<p class="quiet">${escaped(words.lead)}</p>`,
    ...page.answers.map(({ stop, entries }) => `<section>\n<h2${lang}>${escaped(stop.ask)}</h2>\n<div${lang}>${entries.map((entry) => entryHtml(entry, file)).join('\n')}</div>\n</section>`),
    ...feelingSection(page, words, lang),
    ...lineSection(words.stars, starLines(page.stars, page.starWords, words)),
    ...lineSection(words.chosen, chosenLines(page.chosen, words)),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function feelingSection({ feelings }: WallPage, words: WallWords, lang: string): readonly string[] {
  if (feelings.length === 0) return [];
  const lines = feelings.map((each) => `<p class="kind"${lang}>${escaped(each.ask)}</p>\n<p>${escaped(feelingLine(each, words))}</p>`);
  return ['<section>', `<h2>${escaped(words.feelings)}</h2>`, ...lines, '</section>'];
}

export function feelingLine({ answered, words: found }: WallPage['feelings'][number], words: WallWords): string {
  return found.length === 0
    ? words.howMany(answered)
    : words.feelingLine(
        answered,
        found.map(({ word, children }) => [word, children] as const),
      );
}

function lineSection(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['<section>', `<h2>${escaped(title)}</h2>`, ...lines.map((line) => `<p>${escaped(line)}</p>`), '</section>'];
}

/** The stars as lines of words, the most first; only how many where the rules for small numbers say so; none at all below. */
export function starLines(shown: WallPage['stars'], starWords: readonly string[], words: WallWords): readonly string[] {
  if (shown.kind === 'nothing') return [];
  if (shown.kind === 'only how many') return [words.howMany(shown.n)];
  return shown.counts.counts.map((count, index) => words.starLine(index + 1, count, starWords[index] ?? '')).reverse();
}

/** The first choices among a few books, book by book in the order in which they were offered: a list, and no ranking. */
export function chosenLines(shown: WallPage['chosen'], words: WallWords): readonly string[] {
  if (shown.kind === 'nothing') return [];
  if (shown.kind === 'only how many') return [words.howMany(shown.n)];
  return shown.counts.books.map(({ book, best }) => words.chosenLine(book, best));
}
