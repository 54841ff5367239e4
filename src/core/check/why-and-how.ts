import { finding, type Finding } from '../finding.ts';
import { placeOf, stopsOf, type Pack } from '../pack/pack.ts';
import { languageOf, plain, type KnownLanguage } from './plain-words.ts';
import { canBeWeighed, promptsOf, type Prompt } from './prompts.ts';

/**
 * Words that ask for a reason or a way. "How many" and "how old" ask for a fact.
 * In Spanish the accent tells "cómo" (how) from "como" (like), so it is looked for before accents are dropped.
 */
const why: Readonly<Record<KnownLanguage, RegExp>> = {
  en: /\bwhy\b|\bhow\b(?! (?:many|much|old|long|far|big|tall|high|often|heavy)\b)|\bwhat (?:makes|made) (?:you|her|him|them|it)\b|\bwhat (?:tells|shows|told)\b|\breasons?\b|\bexplain\b/u,
  es: /\bpor que\b|\bpara que\b|¿(?:y |pero )?como\b(?! se llama)|\bque (?:te|le|nos|les) (?:hace|hizo|dice|muestra)\b|\b(?:razon|razones)\b|\bexplica\w*/u,
};
const accented = /(?<!\p{L})cómo(?!\p{L})(?! se llama)/iu;
const open: Readonly<Record<KnownLanguage, RegExp>> = {
  en: /\b(?:could|might|would|should|think|what if|what else)\b/u,
  es: /\b(?:podri\w+|puede|crees|piensas|seria|harias|debe|deberi\w+|que mas|que pasaria)\b/u,
};

/** True when a text asks why or how, or for a reason. */
export function asksWhy(text: string, language: KnownLanguage): boolean {
  return why[language].test(plain(text)) || (language === 'es' && accented.test(text));
}

/** Does a prompt ask for reasons, by its words, its kind or its depth? */
function reasons(prompt: Pick<Prompt, 'ask' | 'kind' | 'depth'>, language: KnownLanguage): boolean {
  return prompt.kind === 'reason' || prompt.kind === 'opinion' || prompt.depth >= 3 || asksWhy(prompt.ask, language);
}

/** At least two in five: about that many the authors want to see; they heard about one in six. Source: Deshmukh et al. 2019. */
const share = 2 / 5;

/** Enough prompts ask why or how, or are open to more than one answer. */
export function whyAndHow(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined || !canBeWeighed(pack)) return [];
  const prompts = promptsOf(pack);
  const found = prompts.filter((prompt) => reasons(prompt, language) || open[language].test(plain(prompt.ask))).length;
  return found < prompts.length * share ? [finding('balance/few-why', 'note', placeOf(pack, 'stops'), { found, of: prompts.length })] : [];
}

/** Each reading with two stops or more asks why or how at least once. Common practice, no source; built on the readings of McGee & Schickedanz 2007. */
export function* whyInEachReading(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined || pack.partial) return;
  for (const [index, { reading }] of pack.readings.entries()) {
    const stops = stopsOf(pack, reading);
    if (stops.length >= 2 && !stops.some((stop) => reasons(stop, language))) yield finding('reading/no-why', 'note', placeOf(pack, 'readings', index), { reading });
  }
}
