import type { FactsOf, Level } from '../../finding.ts';
import type { Stop } from '../../pack/pack.ts';
import { folded, tidy, wordsOf, withoutQuotes } from './alt-words.ts';

/** The codes that an alt text can be told about. */
export type AltCode = Extract<keyof FactsOf, `alt-text/${string}`>;

/** One alt text and what is known about its picture. Only the first three are always there: a form can ask while somebody types. */
export interface AltContext {
  readonly file: string;
  /** As the author wrote it. */
  readonly alt: string | undefined;
  /** The language of the page, as a BCP 47 tag. */
  readonly language: string;
  readonly decorative?: boolean | undefined;
  /** What the picture is there for: a picture of a taught word may be one word long; one that is all of a link says where the link goes. */
  readonly use?: 'illustration' | 'word picture' | 'link';
  readonly credit?: string | undefined;
  /** What can be read in the picture. */
  readonly textInPicture?: string | undefined;
  /** The stop at which the picture is shown. */
  readonly stop?: AltStop | undefined;
  /** Texts that stand next to the picture: title, question, the paragraphs around it. */
  readonly beside?: readonly string[];
  /** Other pictures that are compared with this one. */
  readonly others?: readonly { readonly file: string; readonly alt?: string | undefined }[];
  /** Names and words that belong to the book: taught words, allowed words. */
  readonly known?: readonly string[];
  /** Who wrote and drew the book. */
  readonly makers?: readonly string[];
}

export type AltStop = Pick<Stop, 'ask' | 'kind'> & Partial<Pick<Stop, 'about' | 'frames' | 'words' | 'models'>> & { readonly pictureHidden?: boolean };

/** What is told about an alt text: the parts of a finding that need no place. */
export type AltProblem = { readonly [C in AltCode]: { readonly code: C; readonly level: Level; readonly facts: FactsOf[C] } }[AltCode];

/** An alt text made ready for the rules. */
export interface ReadAlt extends AltContext {
  /** As written. */
  readonly written: string;
  /** Without white space at its edges, one space where there were more. */
  readonly text: string;
  /** The text without what stands in quotation marks: that is what somebody says, or what can be read in the picture. */
  readonly unquoted: string;
  /** Characters that were too many to be read. */
  readonly unread: number;
  /** `text` without accents, letter for letter: for phrases, in which one is soon forgotten. */
  readonly unaccented: string;
  /** The words of `text`, in small letters. */
  readonly words: readonly string[];
  /** `en` of `en-GB`. */
  readonly baseLanguage: string;
}

/** One rule: looks at an alt text and gives its facts when there is something to tell. */
export interface AltRule<C extends AltCode = AltCode> {
  readonly code: C;
  readonly level: Level;
  readonly look: (alt: ReadAlt) => Omit<FactsOf[C], 'picture'> | undefined;
}

/** Characters of an alt text that the rules read; what comes after is only counted. A pack's field holds 600. */
const mostRead = 2000;

export function readAlt(context: AltContext): ReadAlt {
  const written = context.alt ?? '';
  const text = tidy(written.slice(0, mostRead));
  return {
    ...context,
    written,
    text,
    unquoted: withoutQuotes(text),
    unread: Math.max(0, written.length - mostRead),
    words: wordsOf(text),
    unaccented: folded(text),
    baseLanguage: context.language.toLowerCase().split('-', 1)[0] ?? '',
  };
}

/** True for a word or a run of words that the book itself brings. */
export function isKnown(alt: AltContext, found: string): boolean {
  const plain = wordsOf(found).join(' ');
  return plain !== '' && (alt.known ?? []).some((each) => wordsOf(each).join(' ') === plain);
}
