import { contentWords, folded, sameStem } from './alt-words.ts';
import { feelingsIn } from './feeling-words.ts';
import type { AltRule, AltStop, ReadAlt } from './alt-context.ts';

/**
 * The alt text does not say what the children are asked to find out; it describes what they find it out from. Only where a picture has to be
 * read between its lines: a feeling, a guess, a reason, and a recall whose picture stays hidden. What a seeing child sees, a listening child may hear.
 *
 * Compared are the words of a model answer that its question, its frames and the book's names do not give already, up to "because": the rest is
 * evidence. A feeling is given away by its one word. Otherwise it takes two words at least: all of them up to three, and 60 in 100 of more. The
 * people and things in a picture alone so never make an answer. Source: the share is common practice; the rest is our own.
 */
const share = 0.6;
const becauses = /(?<!\p{L})(?:because|since|cause|and the book|and in the picture|porque|ya que|pues|y el libro|y en el dibujo)(?!\p{L})/iu;

export const givesAnswer: AltRule<'alt-text/gives-answer'> = {
  code: 'alt-text/gives-answer',
  level: 'warn',
  look: (alt) => {
    const stop = alt.stop;
    if (!stop || alt.use === 'word picture' || !isReadBetweenTheLines(stop)) return undefined;
    const given = contentWords([stop.ask, ...(stop.frames ?? []), ...(alt.known ?? [])].join(' '));
    const said = contentWords(alt.unquoted);
    const feelings = stop.kind === 'feeling' ? (stop.words ?? []) : [];
    const answers = [...(stop.models ?? []).map((model) => model.text), ...feelings];
    // An alt text that says why has answered a question that asks why, be it in one word.
    const fewest = stop.kind === 'feeling' || (stop.kind === 'reason' && becauses.test(alt.unquoted)) ? 1 : 2;
    const found = answers.find((answer) => (stop.kind === 'feeling' && namesTheFeeling(answer, alt.unquoted)) || isSaid(answerWords(answer, given), said, fewest));
    return found === undefined ? undefined : { found: found.replace(/\.$/u, '').slice(0, 120) };
  },
};

function isReadBetweenTheLines(stop: AltStop): boolean {
  if (stop.about === 'me') return false;
  return stop.kind === 'feeling' || stop.kind === 'predict' || stop.kind === 'reason' || (stop.kind === 'recall' && stop.pictureHidden === true);
}

/** True when the alt text names a feeling that the answer claims, in any form: happy, happier. */
function namesTheFeeling(answer: string, alt: string): boolean {
  const claimed = feelingsIn(answer.split(becauses, 1)[0] ?? '').map(folded);
  const named = feelingsIn(alt).map(folded);
  return claimed.some((feeling) => named.some((each) => sameStem(each, feeling)));
}

/** What an answer adds to the question: its claim, or, where the claim is the question's own, its reason. */
function answerWords(answer: string, given: readonly string[]): readonly string[] {
  const [claim = '', ...reasons] = answer.split(becauses);
  const added = (text: string) => [...new Set(contentWords(text))].filter((word) => !given.some((each) => sameStem(each, word)));
  const ofClaim = added(claim);
  return ofClaim.length > 0 ? ofClaim : added(reasons.join(' '));
}

function isSaid(answer: readonly string[], said: ReadAlt['words'], fewest: number): boolean {
  const hits = answer.filter((word) => said.some((each) => sameStem(each, word))).length;
  return hits >= fewest && (answer.length <= 3 ? hits === answer.length : hits / answer.length >= share);
}
