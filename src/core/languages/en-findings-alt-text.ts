import type { Code, FactsOf } from '../finding.ts';

type AltCode = Extract<Code, `alt-text/${string}`>;

/** What is told about alt texts, and what to write instead. */
export const altTextInEnglish: { readonly [C in AltCode]: (facts: FactsOf[C]) => string } = {
  'alt-text/missing': (f) => `The picture "${f.picture}" has no alt text. Add a line "alt: …" that says what it shows, or "decorative: true" if it is only an ornament.`,
  'alt-text/decorative-with-alt': (f) => `The picture "${f.picture}" is marked as decorative and has an alt text as well. Delete one of the two.`,
  'alt-text/link-without-words': (f) => `A link holds nothing but the ornament "${f.picture}", so nobody who listens knows where it leads. Write a few words into the link as well.`,
  'alt-text/encoding': (f) => `The alt text of "${f.picture}" has damaged letters: "${f.found}". Type the word again and save the file as UTF-8.`,
  'alt-text/no-words': (f) => `The alt text of "${f.picture}" has no words in it, only "${f.found}". Say in a sentence what the picture shows.`,
  'alt-text/file-name': (f) => `"${f.found}" is the name of a file. Say in a sentence what the picture "${f.picture}" shows: who is there, doing what, and where.`,
  'alt-text/placeholder': (f) => `"${f.found}" only keeps the place of an alt text. Say what the picture "${f.picture}" shows, or write "decorative: true" if it is only an ornament.`,
  'alt-text/personal-data': (f) =>
    `The alt text of "${f.picture}" could lead to a real person: "${f.found}". Leave it out and say what is seen: "Children hold up paper boats." If it comes from the book, add it to "allow words".`,
  'alt-text/markup': (f) => `The alt text of "${f.picture}" holds signs that would be read aloud: "${f.found}". Write plain words; put an address into the text of the page.`,
  'alt-text/credit': (f) => `"${f.found}" in the alt text of "${f.picture}" says who made the picture. Move that to "credit", which is shown below it, and say here what the picture shows.`,
  'alt-text/image-of': (f) => `Whoever listens is told that "${f.picture}" is a picture. Leave out "${f.found}" and begin with what it shows: "A girl with a kite on a hill."`,
  'alt-text/points-elsewhere': (f) => `"${f.found}" sends whoever listens to another place. Say here, in a few words, what the picture "${f.picture}" shows.`,
  'alt-text/not-purpose': (f) => `The picture "${f.picture}" is all that a link holds, and "${f.found}" does not say where it leads. Write where one gets: "The booklet".`,
  'alt-text/too-long': (f) =>
    `The alt text of "${f.picture}" has ${String(f.length)} characters, and it cannot be paused or looked over while listening. Stay under ${String(f.most)}: keep what matters for the story, and put the rest into the text beside it.`,
  'alt-text/text-left-out': (f) => `In the picture "${f.picture}" one can read "${f.found}", but not in its alt text. Add it: … a sign that says "${f.found}".`,
  'alt-text/repeats': (f) => `The alt text of "${f.picture}" says what stands beside it already: "${f.found}". Say what only the picture tells: who stands where, what they hold, how the light is.`,
  'alt-text/same-as-another': (f) => `The pictures "${f.picture}" and "${f.other}" have the same alt text. Say what is different in this one.`,
  'alt-text/gives-answer': (f) =>
    `The alt text of "${f.picture}" gives away an answer to the question at its stop: "${f.found}". Describe what one can see it from, such as a face, hands or the weather, and let the children say what it means.`,
  'alt-text/too-vague': (f) => `"${f.found}" could stand under many pictures. Say what happens in "${f.picture}": who, doing what, where.`,
  'alt-text/wrong-language': (f) => `The alt text of "${f.picture}" does not seem to be in the language of the pack ("${f.language}"). It would be read out in the wrong voice: translate it.`,
  'alt-text/all-caps': (f) =>
    `"${f.found}" in the alt text of "${f.picture}" is in capitals, and some voices spell capitals out. Write small letters; put what is written in the picture in quotation marks.`,
  'alt-text/ending': (f) => `The alt text of "${f.picture}" ends with "${f.found}", as if something were missing. Finish the sentence, or end it with one full stop.`,
  'alt-text/spaces': (f) => `The alt text of "${f.picture}" has line breaks or spaces too many, where a voice may halt. Write it in one line with single spaces.`,
  'alt-text/long-sentence': (f) =>
    `A sentence in the alt text of "${f.picture}" has ${String(f.words)} words, and one cannot look back while listening. Make two of it, each under ${String(f.most)} words.`,
  'alt-text/opinion': (f) => `"${f.found}" in the alt text of "${f.picture}" tells what you think of it. Say what makes it so, such as a colour, a shape or a look, and let the listener judge.`,
};
