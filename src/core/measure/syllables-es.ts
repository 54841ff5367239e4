/**
 * Syllables of Spanish by the orthographic rules of the RAE, word by word, with no synalepha between words.
 */
import { readAloudInSpanish } from './read-aloud-es.ts';

/** Anything longer is no word and is not read aloud as figures or letters. */
const longestWord = 100;

/** Syllables of one written word: plain, hyphenated, abbreviated or in figures. At least one. */
export function syllablesInSpanish(written: string): number {
  const spoken = (written.length > longestWord ? undefined : readAloudInSpanish(written)) ?? written;
  const words = spoken
    .normalize('NFC')
    .toLowerCase()
    .split(/[^\p{L}\p{M}]+/u);
  return Math.max(
    1,
    words.reduce((sum, word) => sum + (word === '' ? 0 : spokenWord(word)), 0),
  );
}

function spokenWord(word: string): number {
  const runs = vowelsOf(word).match(/[aeoiuíú]+/gu) ?? [];
  return Math.max(
    1,
    runs.reduce((sum, run) => sum + syllablesInRun(run), 0),
  );
}

/**
 * The word with its vowels evened out: open ones without accents, í and ú kept, y and ü as the vowels they sound, the
 * silent u of que and gui left off, h left off where it parts nothing. Consonants stay as they are.
 */
function vowelsOf(word: string): string {
  return word
    .replace(/qu(?=[eiéí])|gu(?=[eiéí])/gu, (pair) => pair.charAt(0))
    .replace(/h(?=[iuü][aeoáéó])/gu, '|')
    .replace(/h/gu, '')
    .replace(/y(?![aeiouáéíóúü])/gu, 'i')
    .normalize('NFD')
    .replace(/([iu])\u0301/gu, (_, vowel: string) => (vowel === 'i' ? '\ue000' : '\ue001'))
    .replace(/\p{M}/gu, '')
    .replace(/\ue000/gu, 'í')
    .replace(/\ue001/gu, 'ú');
}

const isOpen = (vowel: string): boolean => 'aeo'.includes(vowel);
const isStressedClosed = (vowel: string): boolean => 'íú'.includes(vowel);
const plain = (vowel: string): string => (vowel === 'í' ? 'i' : vowel === 'ú' ? 'u' : vowel);

/** Syllables in vowels that stand together: one, and one more at each place where two part. */
function syllablesInRun(run: string): number {
  let count = 1;
  for (let index = 1; index < run.length; index++) {
    if (part(run.charAt(index - 1), run.charAt(index), run.charAt(index + 1))) count++;
  }
  return count;
}

/** Whether a syllable ends between two vowels: le-er, pa-ís, chi-i-ta; and pa-ra-no-ia, where the closed one goes right. */
function part(left: string, right: string, following: string): boolean {
  if (isOpen(left) && isOpen(right)) return true;
  if (isOpen(left) || isOpen(right)) {
    if (isStressedClosed(left) || isStressedClosed(right)) return true;
    return isOpen(left) && following !== '' && isOpen(following);
  }
  return plain(left) === plain(right);
}
