/**
 * Sentences: . ? ! or a final ellipsis ends one, with the quotation marks that close on it. Abbreviations, initials,
 * decimals and times do not; a quoted ? or ! with its reporting clause is one sentence; : and ; end none.
 */
import { abbreviationsOf, reportingVerbs, type Abbreviations } from './abbreviations.ts';
import type { Token } from './words.ts';

type Stop = { readonly kind: 'full stop' | 'mark' | 'ellipsis'; readonly quoteCloses: boolean };

const marks = /[?!؟‽？！]/u;
const fullStops = /[.。۔।։]/u;
const ellipsis = /…|\.\.|\.\s\./u;
const closingQuote = /["”’»'›」]/u;
const openingMark = /["“‘«‹¿¡([「]/u;
const significant = /[.?!…,;:؟‽？！。۔।։،؛]/u;

/** The words of a block, sentence by sentence. The end of the block always ends one. */
export function sentencesOf(tokens: readonly Token[], language: string): readonly (readonly Token[])[] {
  const abbreviations = abbreviationsOf(language);
  const usesCapitals = tokens.some((each) => /\p{Lu}/u.test(each.word));
  const sentences: Token[][] = [];
  let sentence: Token[] = [];
  tokens.forEach((token, index) => {
    sentence.push(token);
    if (!endsSentence(tokens, index, abbreviations, usesCapitals)) return;
    sentences.push(sentence);
    sentence = [];
  });
  if (sentence.length > 0) sentences.push(sentence);
  return sentences;
}

function endsSentence(tokens: readonly Token[], index: number, known: Abbreviations, usesCapitals: boolean): boolean {
  const token = tokens[index];
  const next = tokens[index + 1];
  const stop = token && stopAfter(token.after);
  if (!token || !stop) return false;
  if (!next) return true;
  if (stop.quoteCloses && isReportingClause(tokens, index + 1, known)) return false;
  // Without any capital in the block a small letter tells nothing about where a sentence begins.
  const goesOn = startsSmall(next) && usesCapitals;
  switch (stop.kind) {
    case 'mark':
      return !goesOn;
    case 'ellipsis':
      return !startsSmall(next);
    case 'full stop':
      if (goesOn && stop.quoteCloses) return false;
      return !isListNumber(token, index) && !isAbbreviated(token, next, known);
  }
}

/** The stop that the punctuation behind a word ends with, if its last telling character is one. */
function stopAfter(after: string): Stop | undefined {
  let at = after.length - 1;
  while (at >= 0 && !significant.test(after.charAt(at))) at--;
  if (at < 0 || /[,;:،؛]/u.test(after.charAt(at))) return undefined;
  const quoteCloses = closingQuote.test(after.slice(at + 1));
  if (marks.test(after)) return { kind: 'mark', quoteCloses };
  if (ellipsis.test(after)) return { kind: 'ellipsis', quoteCloses };
  return fullStops.test(after) ? { kind: 'full stop', quoteCloses } : undefined;
}

/** `Bear laughed`, `Mrs. Fox said`, `I whispered`; and, where nothing has a capital, `said bear`. */
function isReportingClause(tokens: readonly Token[], start: number, known: Abbreviations): boolean {
  for (let index = start; index < start + 4; index++) {
    const token = tokens[index];
    if (!token) return false;
    if (reportingVerbs.has(token.word)) return true;
    const isName = token.word === 'I' || token.word === 'and' || !startsAsSentence(token, known);
    const pauses = token.after !== '' && !(token.after === '.' && known.never.has(token.word));
    if (!isName || pauses) return false;
    if (startsSmall(token) && token.word !== 'and' && index > start) return false;
  }
  return false;
}

/** `1.` at the head of a block numbers it. */
function isListNumber(token: Token, index: number): boolean {
  return index === 0 && /^\d{1,2}$/u.test(token.word);
}

function isAbbreviated(token: Token, next: Token, known: Abbreviations): boolean {
  const { word } = token;
  const nextIsNumber = /^\p{N}/u.test(next.word);
  if (known.never.has(word)) return true;
  if (known.beforeNumber.has(word)) return nextIsNumber;
  if (known.beforeCapital.has(word)) return startsSmall(next) || nextIsNumber;
  if (known.beforeName.has(word)) return !startsAsSentence(next, known);
  if (isInitial(word, next)) return !nextIsNumber && !startsAsSentence(next, known);
  return isDotted(word) && (startsSmall(next) || nextIsNumber);
}

/** `A. Lee`, `J.R. Lee`, `a. m.` The pronoun I ends sentences, so it is an initial only before another one. */
function isInitial(word: string, next: Token): boolean {
  if (/^\p{Ll}$/u.test(word)) return startsSmall(next);
  if (word === 'I') return /^\p{Lu}$/u.test(next.word) && next.after.startsWith('.');
  return /^\p{Lu}(?:\.\p{Lu})?$/u.test(word);
}

/** Letters with stops between them: `A.T.M`. */
function isDotted(word: string): boolean {
  return /^(?:\p{L}\.)+\p{L}$/u.test(word);
}

function startsSmall(token: Token): boolean {
  return /^\p{Ll}/u.test(token.word);
}

/** Whether a word looks like the first of a sentence and not like a name that goes on. */
function startsAsSentence(token: Token, known: Abbreviations): boolean {
  if (openingMark.test(token.before)) return true;
  return /^\p{Lu}/u.test(token.word) && known.starters.has(token.word.toLowerCase());
}
