/** The sentences of the checks of balance and fit: what a kind colleague would say, and what to write instead. */
import type { Code, FactsOf } from '../finding.ts';

type Sentences = { readonly [C in Code]?: (facts: FactsOf[C]) => string };

const kinds = (list: readonly string[]) => list.map((kind) => `"kind: ${kind}"`).join(' or ');
const words = (list: readonly string[]) => list.map((word) => `"${word}"`).join(', ');
const deep = {
  prompt: 'No prompt goes to depth 3, where children reason. One "why" with what in the book shows it is enough.',
  model: 'No prompt at depth 3 has a model answer. Write one that names what in the book shows it, so that you know what you are listening for.',
  evidence: 'No model answer at depth 3 points to the book. Add one such as "…, and in the picture …" or "…, and the book says …".',
};
const shows = {
  sentence: 'Give it a capital, an end mark and at least three words',
  reason: 'Add the why, with because, so or since',
  book: 'Name what was heard or seen, as in "the book says …" or "in the picture …"',
  word: 'Use a word that the pack offers, list the word under "words" or "allow words"',
};

export const balanceInEnglish = {
  'balance/few-kinds': (f) =>
    `The stops are of ${f.found === 1 ? 'one kind' : `${String(f.found)} kinds`} only. Children answer in more ways when there are ${String(f.least)} or more, for example a guess, a "why" and something of their own.`,
  'balance/no-own-life': () => 'No stop reaches into the children\'s own lives. One with "kind: own life" or "about: me" lets a child who is unsure of the story still have something to say.',
  'balance/mostly-completion': (f) => `${String(f.found)} of ${String(f.stops)} stops ask children to fill in words. In grade 1 and up, let most stops ask for a thought instead.`,
  'balance/mostly-recall': (f) => `${String(f.found)} of ${String(f.of)} prompts ask what happened (depth 1). A third is plenty: turn one or two into "why" or "how do you know".`,
  'balance/no-deep-prompt': (f) => deep[f.missing],
  'balance/few-why': (f) => `${String(f.found)} of ${String(f.of)} prompts ask why or how, or leave room for more than one answer. Two in five is a good aim; such questions draw longer answers.`,
  'balance/few-ways': (f) =>
    `Children answer in ${f.found === 1 ? 'one way' : `${String(f.found)} ways`} only. With ${String(f.least)} or more, such as say, draw and act, more of them find one that suits.`,
  'balance/only-own-feelings': () => 'All the feelings that are asked for are the children\'s own. Add a stop with "about: character", where something in the book shows the feeling.',
  'reading/no-why': (f) => `Reading ${String(f.reading)} has no question that asks why or how. One near its end gives the reading something to think on.`,
  'reading/many-first-stops': (f) => `The first reading has ${String(f.found)} stops. ${String(f.most)} or fewer let children hear the story first; "readings: [2]" moves a stop to a later day.`,
  'reading/first-has-most': (f) =>
    `The first reading has more stops (${String(f.first)}) than the second (${String(f.second)}). Talk grows as children know the story: could one stop wait for the second reading?`,
  'reading/hands-twice': (f) => `In reading ${String(f.reading)} children write or draw at "${f.first}" and at once again at "${f.second}". Let them talk or move at one of the two.`,
  'stop/needs-handwriting': (f) => `At "${f.stop}" a child who does not write yet has no way to answer. Add a line "or: say" (or draw, act, partner); what is said or dictated counts the same.`,
  'stop/needs-a-pencil': (f) => `At "${f.stop}" everyone needs a pencil. Add a line "or: say" for those who would rather tell what they would draw.`,
  'stop/no-seated-way': (f) => `"${f.stop}" is acted out. Add a line "seated: …" that says how to act it in a chair, with hands or face.`,
  'stop/too-close': (f) =>
    `${f.words < 1 ? 'Next to nothing is read' : `${f.estimated ? 'By estimate, about' : 'Only'} ${String(f.words)} ${f.words === 1 ? 'word is' : 'words are'} read`} between "${f.before}" and "${f.stop}". ${String(f.least)} or more keep the story going; could one of the two move, or wait for another reading?`,
  'stop/too-early': (f) => `"${f.stop}" comes before the story has begun. Only a guess about what is to come works so early; move it a page or two on.`,
  'stop/at-the-end': (f) => `"${f.stop}" stands at the very end of the book. Let the ending be heard, and move the question up or to "questions", for afterwards.`,
  'stop/short-wait': (f) => `At "${f.stop}" the wait is ${String(f.wait)} s. Give ${String(f.least)} s or more: quiet is when most children find their answer.`,
  'stop/depth-four-must': (f) => `"${f.stop}" is a must at depth 4, which reaches beyond one book. Keep it as an offer, and let a stop of depth 3 be the must.`,
  'stop/deep-word-first': (f) => `"${f.word}" is met at "${f.first}" with a harder question than at "${f.later}". Ask the easier one first, while the word is new.`,
  'stop/no-about': (f) => `"${f.stop}" does not say whose feeling it asks for. Add "about: character" (something in the book shows it) or "about: me" (any answer is true).`,
  'stop/no-evidence-asked': (f) => `"${f.stop}" asks what a character feels and not how one can tell. Add "How do you know?"`,
  'ask/family-trouble': (f) =>
    `This question may lead a child to tell the class of trouble at home ("${f.words}"). Ask about the character instead, or about a small thing of the child's own, and let anyone pass.`,
  'frames/too-many-blanks': (f) => `"${f.frame}" has ${String(f.found)} blanks. ${String(f.most)} are the most that children can hold in mind; split it or fill one in.`,
  'frames/article-before-blank': (f) => `"${f.frame}" has "${f.article}" just before a blank, which shuts out good words. Write "${f.instead} ___" or leave the article to the child.`,
  'frames/not-first-person': (f) => `This stop is about me, and "${f.frame}" speaks of someone else. Begin it with I, me or my.`,
  'frames/own-feeling-for-character': (f) => `This stop is about a character, and "${f.frame}" speaks of the child. Begin it with the character's name, he, she or they.`,
  'models/fits-no-frame': (f) => `"${f.model}" fits none of the frames of "${f.stop}". Word it as a child would who uses one, or add the frame that it needs.`,
  'models/does-not-show': (f) => `This model is said to show "${f.trait}", and that cannot be seen in "${f.model}". ${shows[f.lacks]}, or take the trait off.`,
  'models/unknown-trait': (f) => `"${f.trait}" is no trait of this pack's rubric.${f.suggestion === undefined ? ' Add it there, or take it off here.' : ` Did you mean "${f.suggestion}"?`}`,
  'models/alike': (f) => `At "${f.stop}" two model answers are the same: "${f.model}". Change one, so that they show two ways to be right.`,
  'models/no-short-one': (f) => `The shortest model answer at "${f.stop}" has ${String(f.shortest)} words. Add one of ${String(f.most)} or fewer, so that a short answer is not taken for a poor one.`,
  'home/needs-the-book': (f) => `"${f.words}" needs the book, and most families do not have it at hand. Ask for what the child remembers instead.`,
  'home/example-length': (f) =>
    `The example for home has ${f.found === 1 ? 'one line' : `${String(f.found)} lines`}. ${String(f.wanted)} are best: what the grown-up asks, what the child says, and the answer said back with a little more.`,
  'aims/no-prompt': (f) => `No prompt practises the aim "${f.skill}". Add a stop with ${kinds(f.kinds)}, or leave the aim out.`,
  'feelings/no-entry': (f) =>
    `The word bank of "${f.stop}" offers ${words(f.words)} without an entry under "feelings". Add family, strength and a one-line situation; a small story tells a feeling better than a face.`,
  'feelings/situation-names-word': (f) => `The situation for "${f.word}" names the feeling. Tell only what happens, and let children find the word.`,
  'words/meaning-uses-word': (f) => `The explanation of "${f.word}" uses the word itself. Say it in words that children have already, as in "If you are …, you …".`,
  'words/long-meaning': (f) => `The explanation of "${f.word}" has ${String(f.found)} words. Children keep one of ${String(f.most)} or fewer.`,
  'words/too-many': (f) => `${String(f.found)} words are taught with this book. Choose the ${String(f.most)} most useful; two or three of them go deep, the rest in passing.`,
  'care/no-note': (f) => `The word "${f.word}" stands ${f.where === 'pack' ? 'here' : 'in the passage'}, and the pack has no "care" note. Add one: which page may touch a child, and what to do.`,
} satisfies Sentences;
