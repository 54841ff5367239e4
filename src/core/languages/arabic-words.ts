import { listsIn } from './formats.ts';

/**
 * What Arabic phrases are made with: counted nouns, numbers in words, lists.
 * Digits are the European ones (0 to 9) everywhere, on the page and on paper, as Intl writes "ar" without a region.
 */

/** A noun with its forms for counting: alone, for two (as subject, and after a verb or preposition), for 3 to 10, for 11 to 99, and after a hundred. */
export interface Counted {
  readonly one: string;
  readonly two: readonly [subject: string, object: string];
  readonly few: string;
  readonly many: string;
  readonly other: string;
}

const plural = new Intl.PluralRules('ar');

/** "دقيقة واحدة", "دقيقتان", "5 دقائق", "20 دقيقة". The sorts of number come from Intl; `object` is the form after a verb or preposition. */
export function count(n: number, noun: Counted, as: 'subject' | 'object' = 'subject'): string {
  const sort = plural.select(n);
  if (sort === 'one') return noun.one;
  if (sort === 'two') return noun.two[as === 'subject' ? 0 : 1];
  return `${String(n)} ${sort === 'few' ? noun.few : sort === 'many' ? noun.many : noun.other}`;
}

/** The forms as phrases with a gap, for a page's script that counts by itself: one, two, few, many, other. */
export const counting = (noun: Counted, as: 'subject' | 'object' = 'subject'): readonly string[] => [
  noun.one,
  noun.two[as === 'subject' ? 0 : 1],
  `{n} ${noun.few}`,
  `{n} ${noun.many}`,
  `{n} ${noun.other}`,
];

const feminine = (one: string, two: string, few: string, counted = one): Counted => ({ one: `${one} واحدة`, two: [`${two}ان`, `${two}ين`], few, many: counted, other: counted });
const masculine = (one: string, two: string, few: string, many: string): Counted => ({ one: `${one} واحد`, two: [`${two}ان`, `${two}ين`], few, many, other: one });

export const nouns = {
  minute: feminine('دقيقة', 'دقيقت', 'دقائق'),
  second: feminine('ثانية', 'ثانيت', 'ثوانٍ'),
  word: feminine('كلمة', 'كلمت', 'كلمات'),
  sentence: feminine('جملة', 'جملت', 'جمل'),
  stop: feminine('وقفة', 'وقفت', 'وقفات'),
  star: feminine('نجمة', 'نجمت', 'نجوم'),
  page: feminine('صفحة', 'صفحت', 'صفحات'),
  language: feminine('لغة', 'لغت', 'لغات'),
  answer: feminine('إجابة', 'إجابت', 'إجابات'),
  opening: { one: 'صفحة مزدوجة واحدة', two: ['صفحتان مزدوجتان', 'صفحتين مزدوجتين'], few: 'صفحات مزدوجة', many: 'صفحة مزدوجة', other: 'صفحة مزدوجة' },
  book: masculine('كتاب', 'كتاب', 'كتب', 'كتابًا'),
  guide: masculine('دليل', 'دليل', 'أدلّة', 'دليلًا'),
  booklet: masculine('كتيّب', 'كتيّب', 'كتيّبات', 'كتيّبًا'),
  file: masculine('ملف', 'ملف', 'ملفات', 'ملفًا'),
  line: masculine('سطر', 'سطر', 'أسطر', 'سطرًا'),
  child: masculine('طفل', 'طفل', 'أطفال', 'طفلًا'),
  thing: masculine('شيء', 'شيئ', 'أشياء', 'شيئًا'),
  field: masculine('حقل', 'حقل', 'حقول', 'حقلًا'),
  letter: masculine('حرف', 'حرف', 'أحرف', 'حرفًا'),
  level: masculine('مستوى', 'مستوي', 'مستويات', 'مستوى'),
  question: masculine('سؤال', 'سؤال', 'أسئلة', 'سؤالًا'),
  blank: masculine('فراغ', 'فراغ', 'فراغات', 'فراغًا'),
  kind: masculine('نوع', 'نوع', 'أنواع', 'نوعًا'),
  way: feminine('طريقة', 'طريقت', 'طرق'),
  year: feminine('سنة', 'سنت', 'سنوات'),
  remark: feminine('ملاحظة', 'ملاحظت', 'ملاحظات'),
} as const satisfies Readonly<Record<string, Counted>>;

/** Text out of a pack or of a file's name, in quotation marks. It keeps the way its own letters run, and does not mix with the sentence around it. */
export const quoted = (text: string): string => `«${apart(text)}»`;

/** The same without marks. */
export const apart = (text: string): string => `\u2068${text}\u2069`;

/** What is to be written in a file just so, as `rights note: …`: from left to right, with its signs in their places. */
export const written = (text: string): string => `«\u2066${text}\u2069»`;

/** "أ وب وج". */
export function listed(items: readonly string[]): string {
  return listsIn('ar').format(items);
}

/** "أ أو ب أو ج". */
export function either(items: readonly string[]): string {
  return listsIn('ar', 'disjunction').format(items);
}

/** "الوقفة 3", "الوقفتان 1 و3", "الوقفات 1 و3 و4". */
export function stops(numbers: readonly number[], as: 'subject' | 'object' = 'subject'): string {
  const name = numbers.length === 1 ? 'الوقفة' : numbers.length === 2 ? (as === 'subject' ? 'الوقفتان' : 'الوقفتين') : 'الوقفات';
  return `${name} ${listed(numbers.map(String))}`;
}

/** "دقيقتان و10 ثوانٍ", for what a stop takes. */
export function span(seconds: number, as: 'subject' | 'object' = 'subject'): string {
  const minutes = Math.floor(seconds / 60);
  const rest = Math.round(seconds % 60);
  return listed([...(minutes > 0 ? [count(minutes, nouns.minute, as)] : []), ...(rest > 0 || minutes === 0 ? [count(rest, nouns.second, as)] : [])]);
}

const plain = ['صفر', 'واحد', 'اثنان', 'ثلاثة', 'أربعة', 'خمسة', 'ستة', 'سبعة', 'ثمانية', 'تسعة', 'عشرة'];
const plainTeens = ['', 'أحد عشر', 'اثنا عشر', 'ثلاثة عشر', 'أربعة عشر', 'خمسة عشر', 'ستة عشر', 'سبعة عشر', 'ثمانية عشر', 'تسعة عشر'];
const beforeFeminine = ['', '', '', 'ثلاث', 'أربع', 'خمس', 'ست', 'سبع', 'ثماني', 'تسع', 'عشر'];
const feminineTeens = ['', 'إحدى عشرة', 'اثنتا عشرة', 'ثلاث عشرة', 'أربع عشرة', 'خمس عشرة', 'ست عشرة', 'سبع عشرة', 'ثماني عشرة', 'تسع عشرة'];
const feminineOnes = ['', 'إحدى', 'اثنتان', 'ثلاث', 'أربع', 'خمس', 'ست', 'سبع', 'ثمانٍ', 'تسع'];
const tens = ['', '', 'عشرون', 'ثلاثون', 'أربعون', 'خمسون', 'ستون', 'سبعون', 'ثمانون', 'تسعون'];

/** A number by itself, in words up to 99. */
export function inWords(n: number): string {
  if (n <= 10) return plain[n] ?? String(n);
  if (n > 99) return String(n);
  if (n < 20) return plainTeens[n - 10] ?? String(n);
  const one = n % 10;
  return `${one === 0 ? '' : `${plain[one] ?? ''} و`}${tens[Math.floor(n / 10)] ?? ''}`;
}

/** Minutes in words: the number takes the form that "دقيقة" asks for. */
export function minutesInWords(n: number): string {
  if (n < 3 || n > 99) return count(n, nouns.minute);
  if (n <= 10) return `${beforeFeminine[n] ?? String(n)} دقائق`;
  if (n < 20) return `${feminineTeens[n - 10] ?? String(n)} دقيقة`;
  const one = n % 10;
  return `${one === 0 ? '' : `${feminineOnes[one] ?? ''} و`}${tens[Math.floor(n / 10)] ?? ''} دقيقة`;
}

const ordinals = ['', 'الأول', 'الثاني', 'الثالث', 'الرابع'];

/** "الروضة والصف الأول", "الصفان الثاني والثالث". */
export function gradesInWords(grades: readonly string[], as: 'subject' | 'object' = 'subject'): string {
  const early = grades.filter((grade) => !/^\d$/.test(grade)).map((grade) => (grade === 'PreK' ? 'ما قبل الروضة' : 'الروضة'));
  const numbered = grades.filter((grade) => /^\d$/.test(grade)).map((grade) => ordinals[Number(grade)] ?? grade);
  const name = numbered.length === 1 ? 'الصف' : numbered.length === 2 ? (as === 'subject' ? 'الصفان' : 'الصفين') : 'الصفوف';
  return listed([...early, ...(numbered.length === 0 ? [] : [`${name} ${listed(numbered)}`])]);
}
