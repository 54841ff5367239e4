import { passageBeside, readTexts, type TextToCount } from '../build/read-text.ts';
import { countSentences, sentencesIn } from '../core/measure/count-text.ts';
import { familiarBy } from '../core/measure/familiar-words.ts';
import { qualityInEnglish as say } from '../core/languages/en-quality.ts';
import { measureProse } from '../core/measure/measure-prose.ts';
import { childrenText, familyText } from '../core/measure/pack-texts.ts';
import { scoresOf } from '../core/measure/scores.ts';
import { unfamiliarIn } from '../core/measure/unfamiliar.ts';
import { readArguments } from './arguments.ts';
import { measureInWords, type MeasuredPart } from './measure-report.ts';
import { passageInWords, passageNumbers } from './passage-report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow measure`: raw counts for scripts, an honest estimate for people. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['language'], ['json']);
  if (rest.length === 0) throw new WrongUse('Name a file to count: bookfellow measure letter-home.md');
  const texts: TextToCount[] = [];
  for (const path of rest) {
    texts.push(
      ...(await readTexts(path).catch((error: unknown) => {
        throw new WrongUse(`"${path}" cannot be opened. Check the name.`, { cause: error });
      })),
    );
  }
  const languageOf = (text: TextToCount): string => values.language ?? text.language ?? 'en';
  if (flags.has('json')) {
    const plain: object[] = [];
    for (const text of texts) plain.push({ ...rawFigures(text, languageOf(text)), passage: text.pack && (await passageNumbers(text.file)) });
    console.log(JSON.stringify(plain.length === 1 && rest.length === 1 ? plain[0] : plain, null, 2));
    return 0;
  }
  const told: string[] = [];
  for (const text of texts) {
    const passage = text.pack ? await passageBeside(text.file) : undefined;
    const isListed = texts.some((each) => each.file === passage?.file);
    const numbers = text.pack && (await passageNumbers(text.file));
    told.push([measureInWords(partsOf(text, isListed ? undefined : passage, languageOf(text)), text.file), ...(numbers ? passageInWords(numbers) : [])].join('\n'));
  }
  console.log(told.join('\n\n'));
  return 0;
}

/** Every count and every score of a file's running prose, whatever may be said of them. */
function rawFigures({ file, prose }: TextToCount, language: string): object {
  const english = language.split('-')[0] === 'en';
  const sentences = sentencesIn(prose, language);
  const { words, sentences: number, letters, syllables, polysyllables, unfamiliar } = countSentences(sentences, language, english ? { familiar: familiarBy('dale-chall') } : {});
  // Spache has a list of its own, and counts each unfamiliar word once.
  const uniqueUnfamiliar = english ? unfamiliarIn(sentences, familiarBy('spache')).words.length : undefined;
  const counts = { words, sentences: number, syllables, letters, polysyllables, unfamiliar, uniqueUnfamiliar };
  return { file, language, counts, scores: scoresOf(counts, language) };
}

/** The parts of a pack by their readers. Any other text is taken as one for families, and a book's passage as what it is. */
function partsOf(text: TextToCount, passage: TextToCount | undefined, language: string): readonly MeasuredPart[] {
  const { pack, file } = text;
  const aim = say.aim[language.split('-')[0] ?? ''];
  const whole = ({ prose, leftOut, isPassage }: TextToCount) => measureProse(prose, { language, reader: isPassage ? 'passage' : 'family', leftOut });
  if (!pack) return [{ name: text.isPassage ? say.parts.passage : undefined, file, aim: text.isPassage ? undefined : aim, measure: whole(text) }];
  const options = { language, allowed: pack.allowWords ?? [] };
  return [
    { name: say.parts.family, file, aim, measure: measureProse(familyText(pack).prose, { ...options, reader: 'family', leftOut: familyText(pack).leftOut }) },
    { name: say.parts.children, file, aim: undefined, measure: measureProse(childrenText(pack).prose, { ...options, reader: 'child', leftOut: childrenText(pack).leftOut }) },
    ...(passage ? [{ name: say.parts.passage, file: passage.file, aim: undefined, measure: whole(passage) }] : []),
  ];
}
