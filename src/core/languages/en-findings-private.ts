import type { FactsOf } from '../finding.ts';

/** Sentences for some of the codes. */
type Sentences<C extends keyof FactsOf> = { readonly [K in C]: (facts: FactsOf[K]) => string };

/** Findings about the private text of the book: what is counted in it, and how much of it a pack may quote. */
export const passageFindingsInEnglish: Sentences<'passage/word-count' | 'passage/opening-mark' | 'words/not-in-passage' | 'words/first-met' | 'copy/long-quote' | 'copy/too-much'> = {
  'passage/word-count': (f) =>
    `"words" says ${String(f.said)}, and ${String(f.counted)} are counted in the passage. The minutes of the lesson come from this number, so write "words: ${String(f.counted)}", or check whether the passage is whole.`,
  'passage/opening-mark': (f) => {
    if (f.why === 'past the end') return `The passage marks opening ${String(f.opening)}, but the book has ${String(f.openings)}. Correct the mark, or "openings".`;
    const wrong = f.why === 'form' ? 'looks like the mark of an opening and is not read as one' : 'does not come after the one before it';
    return `In the passage, the mark in line ${String(f.line)} ${wrong}. Write "[opening 4]" in a line of its own, with the numbers going up.`;
  },
  'words/not-in-passage': (f) => `The taught word "${f.word}" is not found in the text of the book. Choose a word that children will hear, or leave it if it tells about a picture.`,
  'words/first-met': (f) => `"first met" says opening ${String(f.said)}, and the book has "${f.word}" first at opening ${String(f.found)}. Change the number, so that the word is ready when it comes.`,
  'copy/long-quote': (f) =>
    `This text repeats ${String(f.words)} words of the book in a row, from "${f.begins} …". A pack quotes ${String(f.most)} at most, since the book is in copyright. Say it in your own words, or keep only the few words you need.`,
  'copy/too-much': (f) =>
    `All together, this pack repeats ${String(f.words)} words of the book (${String(f.percent)} %), and ${String(f.most)} is the most for it. Shorten cues and quotations, and tell the rest in your own words.`,
};

type PrivacyCode =
  | 'privacy/roster-name'
  | 'privacy/roster-unread'
  | 'privacy/email'
  | 'privacy/phone'
  | 'privacy/room'
  | 'privacy/picture-place'
  | 'rights/book-note'
  | 'rights/picture-note'
  | 'translation/unchecked'
  | 'by/review-past'
  | 'by/review-ahead';

/** Findings about persons, rights, and what should be looked at again before it is published. */
export const privacyFindingsInEnglish: Sentences<PrivacyCode> = {
  'privacy/roster-name': (f) => `"${f.name}" is on your private list of names. Take the name out of this text, or, if it belongs to a character of the book, add it to "allow words".`,
  'privacy/roster-unread': () =>
    'There is a list of names in private/roster.txt, and it cannot be read, so nobody knows whether a name stands in this pack. Save the list as plain text in UTF-8, one name a line.',
  'privacy/email': (f) => `The address "${f.found}" would be public. Take it out. If everybody may write there, put it into "contact" in library.yaml.`,
  'privacy/phone': (f) => `"${f.found}" looks like a telephone number, and it would be public. Take it out. If everybody may call there, put it into "contact" in library.yaml.`,
  'privacy/room': (f) => `"${f.found}" says where a group of children is. Write "our class" or "the room", or, if it belongs to the story, add the name to "allow words".`,
  'privacy/picture-place': (f) =>
    f.holds === 'place'
      ? `The file "${f.picture}" holds the place where it was taken. The published picture does not, but whoever gets the folder can read it. Save the picture again without location.`
      : `The file "${f.picture}" holds the camera it was taken with. The published picture does not. If you share the folder, save the picture again without such data.`,
  'rights/book-note': (f) =>
    `The book is marked as "${f.rights}". Add a line "rights note: …" that says ${f.rights === 'licensed' ? 'under which licence, and who gave it' : 'why: the year, or the date of the author’s death'}.`,
  'rights/picture-note': (f) =>
    f.cover
      ? `"${f.picture}" looks like a cover, and covers belong to their makers. Add a line "rights: …" that says who allowed it, or leave the picture out.`
      : `The picture "${f.picture}" does not say whose it is. Add "rights: …" (for example "Drawn for this pack, CC BY 4.0") or "credit: …". Pictures from a book in copyright need permission.`,
  'translation/unchecked': (f) =>
    `Nobody has signed that they checked this translation ("${f.missing}" is missing).${f.careful ? ' It holds words of care or of permission, where a mistake can hurt, so it waits.' : ''} Ask somebody who speaks the language well, and add "checked by" and "checked".`,
  'by/review-past': (f) => `This pack was last looked through on ${f.reviewed}, more than ${String(f.years)} years ago. Read it once more, and change "reviewed".`,
  'by/review-ahead': (f) => `"reviewed" is ${f.reviewed}, and that day is still to come (today is ${f.today}). Write the day on which it was looked through.`,
};
