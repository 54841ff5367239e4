/** Words of a text as they are looked for: without accents, capitals and vowel signs, so that "corazón" is found by "corazon". */
export function foldedWords(text: string): readonly string[] {
  return fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}

/**
 * Source of the folding: Unicode normalisation form KD with all marks taken off (UAX 15), and for Arabic the usual
 * search folding of alef, yeh and teh marbuta (common practice, no source).
 */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\p{M}\u0640]/gu, '')
    .toLowerCase()
    .replace(/[’']s\b/gu, '')
    .replace(/[’']/gu, '')
    .replace(/ß/gu, 'ss')
    .replace(/[أإآٱ]/gu, 'ا')
    .replace(/ى/gu, 'ي')
    .replace(/ة/gu, 'ه');
}
