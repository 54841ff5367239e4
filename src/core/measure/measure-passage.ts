/**
 * Reads the private text of a book for numbers, and lets nothing else of it go on: what comes out are counts, single words
 * with their places, and findings that name at most three words of what a pack published itself.
 */
import type { CheckedPack } from '../check/check-pack.ts';
import { finding, type Finding } from '../finding.ts';
import { placeOf, type Source } from '../pack/pack.ts';
import { candidatesIn } from './candidates.ts';
import { copySafety } from './copy-safety.ts';
import { countText } from './count-text.ts';
import { familiarBy } from './familiar-words.ts';
import { honestEstimate } from './honest-estimate.ts';
import type { OpeningCount, PassageMeasure } from './passage-measures.ts';
import { readPassage, type PassageText } from './passage-text.ts';
import { placesOfWords, type FoundWord } from './vocabulary.ts';

/** `words` in a pack may differ from the count by so much before that is told: editions and notes differ. Common practice, no source. */
const wordCountLeeway = 0.1;

/** The numbers of a pack's passage, and what there is to tell. Nothing without a passage. */
export function measurePassage(pack: CheckedPack, source: Pick<Source, 'passage' | 'otherPassages'>): { readonly value: PassageMeasure | undefined; readonly findings: readonly Finding[] } {
  const inOtherLanguages = (source.otherPassages ?? []).flatMap((text) => copySafety(pack, readPassage(text, '').sentences).findings);
  if (source.passage === undefined) return { value: undefined, findings: inOtherLanguages };
  const text = readPassage(source.passage, pack.language);
  const english = pack.language.split('-')[0] === 'en';
  const counts = countText(text.blocks, pack.language, english ? { familiar: familiarBy('spache', pack.allowWords) } : {});
  const taught = placesOfWords(
    (pack.words ?? []).map((each) => each.word),
    text.sentences,
    pack.language,
  );
  const known = [...(pack.allowWords ?? []), ...(pack.words ?? []).map((each) => each.word), ...(pack.feelings ?? []).map((each) => each.word)];
  const { copied, findings } = copySafety(pack, text.sentences);
  const value: PassageMeasure = {
    words: counts.words,
    sentences: counts.sentences,
    wordsPerSentence: counts.sentences === 0 ? 0 : counts.words / counts.sentences,
    longestSentence: counts.longestSentence,
    estimate: honestEstimate(counts, pack.language, 'passage'),
    openings: openingsOf(text),
    vocabulary: taught.map(({ word, places }) => ({ word, places: places.map(({ opening, sentence }) => ({ opening, sentence })) })),
    candidates: candidatesIn(text.sentences, pack.language, known),
    copied,
  };
  return { value, findings: [...findings, ...inOtherLanguages, ...wordCount(pack, counts.words), ...oddMarks(pack, text), ...taughtWords(pack, taught, text.openings.length > 0)] };
}

function openingsOf({ openings, sentences }: PassageText): readonly OpeningCount[] {
  return openings.map((opening) => {
    const own = sentences.filter((sentence) => sentence.opening === opening);
    return { opening, words: own.reduce((sum, { tokens }) => sum + tokens.length, 0), sentences: own.length };
  });
}

function* wordCount(pack: CheckedPack, counted: number): Iterable<Finding> {
  if (counted > 0 && Math.abs(pack.book.words - counted) > counted * wordCountLeeway) {
    yield finding('passage/word-count', 'note', placeOf(pack, 'book', 'words'), { said: pack.book.words, counted });
  }
}

/** Marks that would make the counts by opening wrong. They stand in a private file, so the pack's own field for openings is the place. */
function* oddMarks(pack: CheckedPack, { oddMarks: odd, openings }: PassageText): Iterable<Finding> {
  const at = placeOf(pack, 'book', 'openings');
  for (const { line, why } of odd) yield finding('passage/opening-mark', 'warn', at, { line, why });
  const last = openings.reduce((highest, opening) => Math.max(highest, opening), 0);
  if (last > pack.book.openings) yield finding('passage/opening-mark', 'warn', at, { line: 0, why: 'past the end', opening: last, openings: pack.book.openings });
}

/** A taught word that the book does not have, or has first at another opening than the pack says. */
function* taughtWords(pack: CheckedPack, taught: readonly FoundWord[], marked: boolean): Iterable<Finding> {
  for (const [index, { word, places }] of taught.entries()) {
    if (places.length === 0) {
      yield finding('words/not-in-passage', 'note', placeOf(pack, 'words', index, 'word'), { word });
      continue;
    }
    const said = pack.words?.[index]?.firstMet;
    if (!marked || said === undefined) continue;
    const [first] = places;
    const exact = places.find((place) => place.exact);
    // Another form earlier on may be another word; only the word itself, or its absence from the page named, is told.
    const found = exact?.opening !== undefined && exact.opening < said ? exact.opening : places.some((place) => place.opening === said) ? undefined : first?.opening;
    if (found !== undefined) yield finding('words/first-met', 'note', placeOf(pack, 'words', index, 'first met'), { word, said, found });
  }
}
