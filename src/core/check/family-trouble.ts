import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack, type Step } from '../pack/pack.ts';
import { foundIn, languageOf, plain, sentencesOf, type KnownLanguage } from './plain-words.ts';

/** A child's own people, and trouble that nobody should have to tell a class. Quarrels count when grown-ups quarrel. A list of our own. */
const people = {
  en: /\byour (?:own )?(?:family|mom|mum|mother|dad|father|parents?|grand\w+|brothers?|sisters?|house|home)\b|\bat home\b/u,
  es: /\btus? (?:propia )?(?:familia|mama|papa|madre|padre|padres|papas|abuel\w+|herman\w+|casa)\b|\ben casa\b/u,
};
const trouble = {
  en: /\b(?:die|dies|died|dead|death|hospital|divorced?|separated|jail|prison|arrested|deported|drunk|hits?|(?:lost|lose) (?:a|his|her|their) job)\b/u,
  es: /\b(?:muri\w+|muere|muert[oa]s?|muerte|hospital|divorci\w+|separad[oa]s|separaron|carcel|prision|deport\w+|borrach[oa]s?|pegan|pega|pego|(?:perdio|perdido) (?:el|su) trabajo)\b/u,
};
const quarrel = {
  en: /\b(?:parents|grown-ups|mom and dad|mum and dad|mother and father)\b[^.?!]*\b(?:fight|fights|fighting|argue|arguing|yell|yelling|shout|shouting)\b/u,
  es: /\b(?:padres|papas|mayores|mama y (?:tu )?papa)\b[^.?!]*\b(?:pelean|discuten|gritan|pelear|discutir|gritar)\b/u,
};

/** No prompt asks a child to tell of trouble in the family. Common practice, no source. */
export function* familyTrouble(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined) return;
  for (const [text, steps] of asksOf(pack)) {
    const words = text === undefined ? undefined : troubleIn(text, language);
    if (words !== undefined) yield finding('ask/family-trouble', 'warn', placeOf(pack, ...steps), { words });
  }
}

function troubleIn(text: string, language: KnownLanguage): string | undefined {
  for (const sentence of sentencesOf(text)) {
    const said = plain(sentence);
    const found = foundIn(sentence, quarrel[language]) ?? (people[language].test(said) ? foundIn(sentence, trouble[language]) : undefined);
    if (found !== undefined) return found;
  }
  return undefined;
}

function asksOf(pack: Pack): readonly (readonly [string | undefined, readonly Step[]])[] {
  return [
    ...pack.stops.flatMap((stop, i): [string | undefined, Step[]][] => [
      [stop.ask, ['stops', i, 'ask']],
      [stop.ifQuiet, ['stops', i, 'if quiet']],
    ]),
    ...(pack.questions ?? []).map(({ ask }, i): [string, Step[]] => [ask, ['questions', i, 'ask']]),
    ...(pack.home?.prompts ?? []).map((prompt, i): [string, Step[]] => [prompt, ['home', 'prompts', i]]),
  ];
}
