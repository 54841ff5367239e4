/**
 * Arabic letters in Latin ones, for names of folders and files alone: vowels that are not written stay out, and letters that
 * differ by a dot may fall together. After the romanization of the Library of Congress without its marks; from memory.
 */
const latin: Readonly<Record<string, string>> = {
  ...{ ا: 'a', ب: 'b', ت: 't', ث: 'th', ج: 'j', ح: 'h', خ: 'kh', د: 'd', ذ: 'dh', ر: 'r', ز: 'z', س: 's', ش: 'sh', ص: 's' },
  ...{ ض: 'd', ط: 't', ظ: 'z', ع: 'a', غ: 'gh', ف: 'f', ق: 'q', ك: 'k', ل: 'l', م: 'm', ن: 'n', ه: 'h', ة: 'h', و: 'w', ي: 'y', ى: 'a' },
};

/** A name for a folder or file made of a title: small letters, digits and dashes. Two titles in Arabic get two names, so that one pack does not come to lie in the other's folder. */
export function slugOf(title: string): string {
  const slug = title
    .normalize('NFD')
    .replace(/[\p{M}\u0640]/gu, '')
    .toLowerCase()
    .replace(/\p{Script=Arabic}/gu, (letter) => latin[letter] ?? '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
    .replace(/-$/, '');
  return slug === '' ? 'my-companion' : slug;
}
