import { finding, type Finding } from '../finding.ts';
import { nearest } from '../pack/nearest.ts';
import { placeOf, type Pack, type Stop } from '../pack/pack.ts';
import { holds, indexOfRun, languageOf, plain, sentencesOf, wordsOf, type KnownLanguage } from './plain-words.ts';
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

/** Words of the book in quotation marks, words that say where it was seen or heard, or three words of a cue. */
export function pointsToBook(text: string, pack: Pack, language: KnownLanguage): boolean {
  if (/[“"«][^”"»]+[”"»]/u.test(text) || bookWords[language].test(plain(text))) return true;
  const words = wordsOf(text);
  return pack.stops.some(({ at }) => {
    const cue = wordsOf(at.cue);
    return cue.length >= 3 && cue.slice(2).some((_, i) => indexOfRun(words, cue.slice(i, i + 3)) >= 0);
  });
}

/**
 * A model answer shows the traits it says it shows, so that answers are judged alike. Common practice, no source; that rubrics need
 * exemplars: Jonsson & Svingby 2007. Only model answers are looked at, never what a child wrote.
 */
export function* modelsShow(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  const traits = pack.rubric?.map(({ trait }) => trait);
  for (const prompt of promptsOf(pack)) {
    for (const [index, model] of prompt.models.entries()) {
      for (const [place, trait] of (model.shows ?? []).entries()) {
        const at = placeOf(pack, ...prompt.steps, 'models', index, 'shows', place);
        if (traits !== undefined && !pack.partial && !traits.some((each) => plain(each) === plain(trait))) {
          const suggestion = nearest(trait, traits);
          yield finding('models/unknown-trait', 'warn', at, { trait, ...(suggestion === undefined ? {} : { suggestion }) });
        }
        const lacks = language === undefined ? undefined : missingIn(model.text, trait, prompt.stop, pack, language);
        // A sentence can be told for certain, what is a reason or a fitting word cannot.
        if (lacks !== undefined) yield finding('models/does-not-show', lacks === 'sentence' ? 'warn' : 'note', at, { trait, model: model.text, lacks });
      }
    }
  }
}

function missingIn(text: string, trait: string, stop: Stop | undefined, pack: Pack, language: KnownLanguage): Shown | undefined {
  const named = plain(trait);
  const shown = (Object.keys(traitNames) as Shown[]).find((each) => traitNames[each].test(named));
  if (shown === undefined) return undefined;
  const does = {
    sentence: () => isWholeSentence(text, language),
    reason: () => reasonWords[language].test(plain(text)),
    book: () => pointsToBook(text, pack, language),
    word: () => wordsTaught(stop, pack).some((word) => holds(text, word, language)),
  }[shown]();
  return does ? undefined : shown;
}

/** The words that a pack offers: taught words, feelings, word banks, and what is listed as allowed, except names. */
function wordsTaught(stop: Stop | undefined, pack: Pack): readonly string[] {
  return [
    ...(stop?.words ?? []),
    ...(pack.words ?? []).map(({ word }) => word),
    ...(pack.feelings ?? []).map(({ word }) => word),
    ...pack.stops.flatMap((each) => each.words ?? []),
    ...(pack.allowWords ?? []).filter((word) => /^\p{Ll}/u.test(word)),
  ];
}
