/** What a pack's fields may choose from, and how long they may be; apart from the schema, since some pages need these and not the schema. */

/** Longest text of any field, in characters: enough for a paragraph, too little for a book. */
export const longestText = 2000;
/** Longest list of any field. */
export const longestList = 200;

/** Ways to answer: say, write, draw, act, or talk with a partner. */
export const ways = ['say', 'write', 'draw', 'act', 'partner'] as const;
/** What a prompt asks for. The first seven follow the prompt types of dialogic reading (Whitehurst et al. 1988), widened. */
export const kinds = ['predict', 'feeling', 'word', 'recall', 'reason', 'opinion', 'own life', 'retell', 'completion'] as const;
/** Depth of a question, 1 to 4: recall, connect, reason, extend. */
export const depths = ['recall', 'connect', 'reason', 'extend'] as const;
export const rightsOf = ['in copyright', 'public domain', 'licensed', 'our own'] as const;
export const grades = ['PreK', 'K', '1', '2', '3', '4'] as const;
/**
 * What kind of book it is, by what it is and not by what it is about; a book may be several. Source: terms of the genre lists of libraries for children's
 * books (Library of Congress Genre/Form Terms has "Stories in rhyme", "Fables", "Folk tales", "Fairy tales", "Biographies"), said more plainly; the choice
 * of these twelve is common practice, no source.
 */
export const kindsOfBook = ['story', 'folk tale', 'fable', 'fairy tale', 'story in rhyme', 'poems', 'without words', 'alphabet', 'counting', 'concept', 'information', 'biography'] as const;
/** How far apart the lines stand that children write on; `src/outputs/sheets/ruling.ts` has the measures. */
export const rulings = ['large', 'middle', 'small'] as const;
/** Families of feeling words; words of a family differ in strength. */
export const families = ['glad', 'sad', 'cross', 'afraid', 'surprised', 'disgusted', 'calm', 'caring', 'proud', 'ashamed', 'curious', 'lonely'] as const;
