import { finding, type Finding } from '../finding.ts';
import { placeOf, type Kind, type Pack } from '../pack/pack.ts';
import { languageOf, plain, type KnownLanguage } from './plain-words.ts';
import { promptsOf, type Prompt } from './prompts.ts';
import { asksWhy } from './why-and-how.ts';

/** Skills that can be recognised by their words, and the prompts that practise them: by their kind, or by how they ask. */
const skills: readonly { readonly named: RegExp; readonly kinds: readonly Kind[]; readonly asks?: RegExp; readonly why?: true }[] = [
  {
    named: /\bretell|\brecount|\btells? (?:the|a|this) (?:\w+ )?story\b|\bin order\b|\bsequence|\bact out\b|\b(?:volver a )?contar (?:el|un) cuento|\brecontar|\ben orden\b|\brepresentar lo que\b/u,
    kinds: ['retell'],
    asks: /\bretell|\btell (?:me |us )?the story|\bin order\b|\bcuent\w+ (?:el cuento|la historia)|\ben orden\b/u,
  },
  {
    named: /\bpredict|\bguess what\b|\bpredecir|\bpredic\w+|\badivinar lo que\b|\banticipar/u,
    kinds: ['predict'],
    asks: /\bwhat (?:will|might) \w+ (?:\w+ )?(?:do|happen)|\bwhat happens next|\bque (?:va a|pasara|hara)\b/u,
  },
  { named: /\bfeels?\b|\bfeelings?\b|\bemotions?\b|\bse siente\b|\bsentimientos?\b|\bemociones\b/u, kinds: ['feeling'], asks: /\bfeel(?:s|ing|ings)?\b|\bsient\w+|\bsentim\w+/u },
  {
    named: /\bvocabular|\bnew (?:words?|phrases?)\b|\bmeanings? of (?:a |the |new )?words?\b|\blearn (?:\w+ ){0,3}words?\b|\bpalabras? (?:\w+ )?nuevas?\b/u,
    kinds: ['word'],
    asks: /\bwhat does\b[^?]*\bmean\b|\bque (?:quiere decir|significa)\b/u,
  },
  {
    named: /\bopinions?\b|\bown view\b|\bopinion(?:es)?\b|\bopinar\b/u,
    kinds: ['opinion'],
    asks: /\bdo you think\b|\bwould you\b|\bshould\b|\bwas (?:it|that) (?:all )?(?:right|fair)\b|\bcrees que\b|\bte parece\b|\bharias\b/u,
  },
  { named: /\bwhy\b|\breasons?\b|\bcauses?\b|\bmotives?\b|\bpor que\b|\brazon(?:es)?\b|\bcausas?\b|\bmotivos?\b/u, kinds: ['reason', 'opinion'], why: true },
  { named: /\bown (?:life|lives|experience)\b|\b(?:propia vida|propias experiencias|vida propia)\b/u, kinds: ['own life'], asks: /\b(?:have you|when did you|did you ever)\b|\b(?:has|alguna vez)\b/u },
  { named: /\bdetails?\b|\bdetalles?\b/u, kinds: ['recall', 'reason', 'retell'], asks: /\b(?:who|what|where|when|quien|que|donde|cuando)\b/u },
];

/** An aim has at least one prompt that practises it. Common practice, no source. A skill in other words than these is passed over. */
export function* aimsHavePrompts(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined || pack.partial || pack.stops.length === 0) return;
  const prompts = promptsOf(pack);
  for (const [index, { skill }] of (pack.aims ?? []).entries()) {
    const meant = skills.filter(({ named }) => named.test(plain(skill)));
    if (meant.length === 0 || meant.some((each) => prompts.some((prompt) => practises(prompt, each, language)))) continue;
    const kinds = [...new Set(meant.flatMap((each) => each.kinds))];
    yield finding('aims/no-prompt', 'note', placeOf(pack, 'aims', index, 'skill'), { skill, kinds });
  }
}

function practises(prompt: Prompt, { kinds, asks, why }: (typeof skills)[number], language: KnownLanguage): boolean {
  if (prompt.kind !== undefined && kinds.includes(prompt.kind)) return true;
  return asks?.test(plain(prompt.ask)) === true || (why === true && asksWhy(prompt.ask, language));
}
