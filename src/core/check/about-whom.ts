import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack, type Stop } from '../pack/pack.ts';
import { languageOf, plain, wordsOf, type KnownLanguage } from './plain-words.ts';
import { canBeWeighed } from './prompts.ts';
import { asksWhy } from './why-and-how.ts';

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '));
const firstPerson = {
  en: words("i i'm i'd i've i'll me my mine myself we us our ours"),
  es: words('yo me mi mis mio mia conmigo nos nosotros nosotras nuestro nuestra estoy soy siento senti sentiria tengo'),
};
const thirdPerson = { en: words('he she they him her them his their character'), es: words('el ella ellos ellas personaje') };
/** A frame that begins by saying what the speaker feels. */
const ownFeeling = { en: /^(?:i feel|i felt|i am|i'm|i would feel|i'd feel)\b/u, es: /^(?:yo )?(?:me siento|me senti|me sentiria|estoy|estaria)\b/u };

/**
 * Two different prompts: what a character feels, with something in the book that shows it, and what I feel, where every answer is
 * true. Common practice, no source; standards for reading tell one's own view from a character's.
 */
export function* aboutWhom(pack: Pack): Iterable<Finding> {
  const feelings = pack.stops.filter((stop) => stop.kind === 'feeling');
  if (feelings.length > 0 && canBeWeighed(pack)) {
    // A feeling stop that does not say whose it is may well be the character's. That "me" is missing, kinds-of-prompts.ts tells.
    if (feelings.every((stop) => stop.about === 'me') && !pack.stops.some((stop) => stop.about === 'character')) {
      yield finding('balance/only-own-feelings', 'note', placeOf(pack, 'stops'), {});
    }
  }
  const language = languageOf(pack);
  const names = pack.stops.some((stop) => stop.about !== undefined) ? namesIn(pack) : new Set<string>();
  for (const [index, stop] of pack.stops.entries()) {
    if (stop.kind === 'feeling' && stop.about === undefined) yield finding('stop/no-about', 'note', placeOf(pack, 'stops', index, 'kind'), { stop: stop.id });
    if (language === undefined) continue;
    if (stop.kind === 'feeling' && stop.about === 'character' && !asksForEvidence(stop, language)) {
      yield finding('stop/no-evidence-asked', 'note', placeOf(pack, 'stops', index, 'ask'), { stop: stop.id });
    }
    if (stop.about === undefined) continue;
    for (const [place, frame] of (stop.frames ?? []).entries()) {
      const at = placeOf(pack, 'stops', index, 'frames', place);
      const found = wordsOf(frame);
      const someoneElse = found.some((word) => thirdPerson[language].has(word) || names.has(word));
      if (stop.about === 'me' && someoneElse && !found.some((word) => firstPerson[language].has(word))) {
        yield finding('frames/not-first-person', 'note', at, { frame });
      }
      if (stop.about === 'character' && !someoneElse && ownFeeling[language].test(plain(frame))) yield finding('frames/own-feeling-for-character', 'note', at, { frame });
    }
  }
}

/** The question, what is said when it stays quiet, or a frame with "because" asks for what shows the feeling. */
function asksForEvidence(stop: Stop, language: KnownLanguage): boolean {
  const how = {
    en: /\bhow (?:do|can|did|could) (?:you|we)\b|\bwhat (?:in|on|can you see)\b|\bshow me where\b/u,
    es: /\bque (?:ves|lo (?:dice|muestra)|te (?:lo )?(?:dice|muestra))\b|\bdonde lo (?:ves|dice)\b/u,
  }[language];
  const because = { en: 'because', es: 'porque' }[language];
  // "How does she feel?" asks for the feeling alone, so the question for it is taken out first.
  const without = (text: string): string => plain(text).replace({ en: /\bhow (?:does|do|did|is|are|might|would|must) (?!you know)[^?]*/u, es: /¿?como (?:se|esta)[^?]*/u }[language], '');
  const texts = [stop.ask, stop.ifQuiet ?? ''];
  if ((stop.frames ?? []).some((frame) => wordsOf(frame).includes(because))) return true;
  return texts.some((text) => how.test(plain(text)) || asksWhy(without(text), language) || (language === 'es' && /c[oó]mo (?:lo )?sabe/iu.test(text)));
}

/** Capitalised words inside sentences of the pack: most likely its characters. In plain form. */
function namesIn(pack: Pack): ReadonlySet<string> {
  const texts = [pack.summary, ...pack.stops.flatMap((stop) => [stop.ask, stop.expand ?? '', stop.ifQuiet ?? ''])];
  return new Set(texts.flatMap((text) => text.match(/(?<=[\p{Ll},;] )\p{Lu}\p{Ll}+/gu) ?? []).map(plain));
}
