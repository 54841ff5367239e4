import { finding, type Finding } from '../finding.ts';
import { nearest } from '../pack/nearest.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { keyOf, languageOf, plain, sentencesOf, wordsOf, type KnownLanguage } from './plain-words.ts';
import { promptsOf } from './prompts.ts';

/** What a trait of a rubric asks for, as far as a program can see it. */
export type Shown = 'sentence' | 'reason' | 'book' | 'word';

/** How rubrics name these four; a trait by another name is passed over. */
const traitNames: Readonly<Record<Shown, RegExp>> = {
  sentence: /\b(?:whole|full|complete) (?:sentence|thought)|\b(?:oracion|frase|idea) (?:completa|entera)/u,
  reason: /\breasons?\b|\bsays why\b|\bbecause\b|\b(?:razon|razones|motivo|porque|por que)\b/u,
  book: /\b(?:points? to|clues? (?:from|in)|evidence (?:from|in)|from) the (?:book|text|story|pictures?)|\bevidence\b|\b(?:señala|pistas? del?|prueba del?) (?:el )?(?:libro|cuento|texto)/u,
  word: /\b(?:precise|exact|strong|well-chosen) word|\bpalabras? (?:precisa|exacta|justa)/u,
};

const reasonWords = {
  en: /\b(?:because|'?cause|so|since|that is why|that's why|in order to)\b/u,
  es: /\b(?:porque|por eso|ya que|como|pues|asi que|puesto que|para que|por lo que|debido a)\b/u,
};
const bookWords = {
  en: /\b(?:in|on|from) the (?:first |last |next |other )?(?:pictures?|book|page|drawing|cover|story|words?|text|end)\b|\b(?:book|words?|pictures?|story|text|page) (?:says?|said|shows?|showed|tells?|told|calls?)\b|\bit (?:says|said)\b|\b(?:you|we|i) (?:can see|could see|saw|see|heard|read)\b/u,
  es: /\ben (?:el|la|los|las) (?:ultim[oa] |primer[oa]? )?(?:dibujos?|libro|pagina|imagen|imagenes|cuento|portada|texto|palabras?|ilustracion)\b|\b(?:libro|dibujo|cuento|texto|imagen|palabra|pagina) (?:dice|decia|muestra|cuenta)\b|\bdice que\b|\bse ve\b|\b(?:veo|vi|vimos|oimos|lei|leimos)\b/u,
};

/** The word or words with which a text gives a reason, in plain form, or undefined. */
export function reasonIn(text: string, language: KnownLanguage): string | undefined {
  return reasonWords[language].exec(plain(text))?.[0];
}

/** Words of the shortest sentence. Spanish leaves the pronoun out: "Pueden saludarse." is whole. Common practice, no source. */
const fewestWords = { en: 3, es: 2 };

/** A capital, an end mark and enough words. */
export function isWholeSentence(text: string, language?: KnownLanguage): boolean {
  return (
    /^[\p{P}\s]*[\p{Lu}\p{N}]/u.test(text) &&
    /[.!?…]["”’»)]*$/u.test(text.trim()) &&
    sentencesOf(text).some((sentence) => wordsOf(sentence).length >= (language === undefined ? 3 : fewestWords[language]))
  );
}

/** Tells whether an answer points to the book: words in quotation marks, words that say where it was seen or heard, or three words of a cue. */
export function bookPointers(pack: { readonly stops: readonly { readonly at: Pick<Pack['stops'][number]['at'], 'cue'> }[] }, language: KnownLanguage): (text: string) => boolean {
  const cues = new Set(pack.stops.flatMap(({ at }) => runsOf(wordsOf(at.cue), 3)));
  return (text) => /[“"«][^”"»]+[”"»]/u.test(text) || bookWords[language].test(plain(text)) || runsOf(wordsOf(text), 3).some((run) => cues.has(run));
}

function runsOf(words: readonly string[], length: number): readonly string[] {
  return words.slice(length - 1).map((_, i) => words.slice(i, i + length).join(' '));
}

/**
 * A model answer shows the traits it says it shows, so that answers are judged alike. Common practice, no source; that rubrics need
 * exemplars: Jonsson & Svingby 2007. Only model answers are looked at, never what a child wrote.
 */
export function* modelsShow(pack: Pack): Iterable<Finding> {
  const prompts = promptsOf(pack).filter(({ models }) => models.some(({ shows }) => shows !== undefined));
  if (prompts.length === 0) return;
  const language = languageOf(pack);
  const traits = pack.rubric?.map(({ trait }) => trait);
  const known = new Set(traits?.map(plain));
  const lacksOf = language === undefined ? undefined : watcher(pack, language);
  for (const prompt of prompts) {
    for (const [index, model] of prompt.models.entries()) {
      for (const [place, trait] of (model.shows ?? []).entries()) {
        const at = placeOf(pack, ...prompt.steps, 'models', index, 'shows', place);
        if (traits !== undefined && !pack.partial && !known.has(plain(trait))) {
          const suggestion = nearest(trait, traits);
          yield finding('models/unknown-trait', 'warn', at, { trait, ...(suggestion === undefined ? {} : { suggestion }) });
        }
        const lacks = lacksOf?.(model.text, trait);
        // A sentence can be told for certain, what is a reason or a fitting word cannot.
        if (lacks !== undefined) yield finding('models/does-not-show', lacks === 'sentence' ? 'warn' : 'note', at, { trait, model: model.text, lacks });
      }
    }
  }
}

/** Says which of the four a text lacks that a trait asks for; nothing for a trait by another name. */
function watcher(pack: Pack, language: KnownLanguage): (text: string, trait: string) => Shown | undefined {
  const taught = new Set(wordsTaught(pack).map((word) => keyOf(word, language)));
  const does: Readonly<Record<Shown, (text: string) => boolean>> = {
    sentence: (text) => isWholeSentence(text, language),
    reason: (text) => reasonWords[language].test(plain(text)),
    book: bookPointers(pack, language),
    word: (text) => {
      const stems = keyOf(text, language).split(' ');
      return [1, 2, 3, 4].some((length) => runsOf(stems, length).some((run) => taught.has(run)));
    },
  };
  return (text, trait) => {
    const named = plain(trait);
    const shown = (Object.keys(traitNames) as Shown[]).find((each) => traitNames[each].test(named));
    return shown === undefined || does[shown](text) ? undefined : shown;
  };
}

/** The words that a pack offers: taught words, feelings, word banks, and what is listed as allowed, except names. */
function wordsTaught(pack: Pack): readonly string[] {
  const listed = [...(pack.words ?? []), ...(pack.feelings ?? [])].map(({ word }) => word);
  return [...listed, ...pack.stops.flatMap(({ words }) => words ?? []), ...(pack.allowWords ?? []).filter((word) => /^\p{Ll}/u.test(word))];
}
