/**
 * How much of a book's text a pack publishes: the longest run of words that one of its texts shares with the book, and how
 * many words of the book stand in its texts all in all, each word of the book counted once.
 *
 * The lines are our own, stricter than the 1976 classroom guidelines (at most 10 % of the words and two pages; H.R. Rep.
 * 94-1476, p. 69; US Copyright Office, Circular 21), which were made for copies in a class and not for the web. General
 * caution, no legal advice: no number of words is safe by itself, and local rules come first.
 */
import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { publishedTexts, type PublishedText } from '../pack/published-texts.ts';
import type { Copied } from './passage-measures.ts';
import type { PassageSentence } from './passage-text.ts';
import { runFinder, type SharedRun } from './shared-runs.ts';
import { plainWord, tokensOf } from './words.ts';

/** Most words of one quotation. Common practice, no source. */
export const longestQuote = 12;
/** Most words of all quotations together: this share of the book, and never more than so many. Common practice, no source. */
export const mostQuoted = { share: 0.1, words: 60 } as const;
/**
 * From so many words in a row a text quotes. Two or three words meet by chance in any two stories (out of the, and then
 * she); in the demo library four do so rarely. No source.
 */
export const shortestQuote = 4;
/** A cue is a quotation by its nature, so two words of it count. */
const shortestCue = 2;

/** What of one text of the book a pack publishes, and what is to be told about it. `own` is the text in the pack's language. */
export function copySafety(pack: Pack, sentences: readonly PassageSentence[]): { readonly copied: Copied; readonly findings: readonly Finding[] } {
  const book = sentences.flatMap(({ tokens }) => tokens.map(({ word }) => plainWord(word)));
  const quoted = quotedIn(pack, book);
  const words = coveredBy(
    quoted.map(({ run }) => run),
    book.length,
  );
  const most = Math.min(Math.floor(book.length * mostQuoted.share), mostQuoted.words);
  const exempt = pack.book.rights !== 'in copyright';
  const copied: Copied = {
    longestRun: quoted.reduce((longest, { run }) => Math.max(longest, run.words), 0),
    words,
    share: book.length === 0 ? 0 : words / book.length,
    most,
    exempt,
  };
  if (exempt) return { copied, findings: [] };
  const long = longestOfEach(quoted).filter(({ run }) => run.words > longestQuote);
  const findings = long.map(({ text, run, begins }) => finding('copy/long-quote', 'stop', text.place, { words: run.words, most: longestQuote, begins }));
  if (words > most) findings.push(finding('copy/too-much', 'stop', placeOf(pack, 'book', 'rights'), { words, most, percent: Math.ceil(copied.share * 100) }));
  return { copied, findings };
}

interface Quote {
  readonly text: PublishedText;
  readonly run: SharedRun;
  /** Its first three words: enough to find it, too few to give anything away. */
  readonly begins: string;
}

/** All quotations in the published texts. What names the book is none: its title and its makers may always be told. */
function quotedIn(pack: Pack, book: readonly string[]): readonly Quote[] {
  const finder = runFinder(book);
  const title = ` ${wordsOf(pack.book.title).join(' ')} `;
  return publishedTexts(pack).flatMap((text) => {
    if (['book', 'by', 'title'].includes(String(text.steps[0]))) return [];
    const words = wordsOf(text.text);
    const shortest = text.steps.at(-1) === 'cue' ? shortestCue : shortestQuote;
    return finder
      .runsIn(words)
      .filter((run) => run.words >= shortest && !title.includes(` ${words.slice(run.from, run.from + run.words).join(' ')} `))
      .map((run) => ({ text, run, begins: words.slice(run.from, run.from + 3).join(' ') }));
  });
}

function wordsOf(text: string): readonly string[] {
  return tokensOf(text).map(({ word }) => plainWord(word));
}

/** Words of the book that runs cover, each once. */
function coveredBy(runs: readonly SharedRun[], length: number): number {
  const change = new Int32Array(length + 1);
  for (const { source, words } of runs) {
    change[source] = (change[source] ?? 0) + 1;
    change[source + words] = (change[source + words] ?? 0) - 1;
  }
  let open = 0;
  let covered = 0;
  for (let index = 0; index < length; index++) {
    open += change[index] ?? 0;
    if (open > 0) covered += 1;
  }
  return covered;
}

/** The longest quotation of each published text. */
function longestOfEach(quoted: readonly Quote[]): readonly Quote[] {
  const longest = new Map<PublishedText, Quote>();
  for (const quote of quoted) if (quote.run.words > (longest.get(quote.text)?.run.words ?? 0)) longest.set(quote.text, quote);
  return [...longest.values()];
}
