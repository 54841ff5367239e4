import { allCaps } from './all-caps.ts';
import { readAlt, type AltCode, type AltContext, type AltProblem, type AltRule } from './alt-context.ts';
import { credit } from './credit.ts';
import { decorativeWithAlt } from './decorative-with-alt.ts';
import { encoding } from './encoding.ts';
import { ending } from './ending.ts';
import { fileName } from './file-name.ts';
import { givesAnswer } from './gives-answer.ts';
import { imageOf } from './image-of.ts';
import { linkWithoutWords } from './link-without-words.ts';
import { longSentence } from './long-sentence.ts';
import { markup } from './markup.ts';
import { missing } from './missing.ts';
import { noWords } from './no-words.ts';
import { notPurpose } from './not-purpose.ts';
import { opinion } from './opinion.ts';
import { personalData } from './personal-data.ts';
import { placeholder } from './placeholder.ts';
import { pointsElsewhere } from './points-elsewhere.ts';
import { repeats } from './repeats.ts';
import { sameAsAnother } from './same-as-another.ts';
import { spaces } from './spaces.ts';
import { textLeftOut } from './text-left-out.ts';
import { tooLong } from './too-long.ts';
import { tooVague } from './too-vague.ts';
import { wrongLanguage } from './wrong-language.ts';

/** Rules for a picture that is only an ornament: it has no words to look at. */
const forOrnaments: readonly AltRule[] = [decorativeWithAlt, linkWithoutWords, textLeftOut];

/** Every rule, in the order in which they look. What keeps a pack off the site comes first, so that a slight fault never hides a grave one. */
const forPictures: readonly AltRule[] = [
  missing,
  encoding,
  noWords,
  fileName,
  placeholder,
  personalData,

  markup,
  credit,
  imageOf,
  pointsElsewhere,
  notPurpose,
  tooLong,
  textLeftOut,
  repeats,
  sameAsAnother,
  givesAnswer,
  tooVague,
  wrongLanguage,

  allCaps,
  ending,
  spaces,
  longSentence,
  opinion,
];

/** What is to be told about one alt text: the first thing that a rule finds, or nothing. Never throws, whatever the text. */
export function checkAlt(context: AltContext): AltProblem | undefined {
  const alt = readAlt(context);
  for (const rule of context.decorative === true ? forOrnaments : forPictures) {
    const facts = rule.look(alt);
    if (facts) return { code: rule.code, level: rule.level, facts: { picture: context.file, ...facts } } as AltProblem;
  }
  return undefined;
}

/** The codes of all rules, each once. */
export const altCodes: readonly AltCode[] = [...new Set([...forOrnaments, ...forPictures].map((rule) => rule.code))];
