import { count, nouns } from './arabic-words.ts';
import type { findInEnglish } from './en-find.ts';
import type { Unfinished } from './unfinished.ts';

/** Arabic for finding a book: the search, and the index at the back of the library. */
const books = (n: number) => count(n, nouns.book);

export const findInArabic: Unfinished<typeof findInEnglish> = {
  title: 'ابحثوا عن كتاب',
  lead: 'ابحثوا عن عنوان أو اسم أو كلمة تريدون تعليمها أو شعور أو شيء يتعلّمه الأطفال. ولا بأس بخطأ في الكتابة.',
  description: (n) => `ابحثوا في ${count(n, nouns.book, 'object')} بالعنوان أو بكلمة للتعليم أو بشعور أو بالصف أو بالدقائق أو بطريقة إجابة الأطفال.`,
  words: 'كلمات البحث',
  look: 'ابحثوا',
  narrow: 'وفقط',
  fields: {
    language: 'باللغة',
    grade: 'الصف',
    minutes: 'الدقائق على الأكثر',
    way: 'طريقة الإجابة',
    kind: 'وقفة من أجل',
    feeling: 'شعور',
    skill: 'ما يتعلّمه الأطفال',
    school: 'من المدرسة',
    rights: 'حقوق الكتاب',
    since: 'روجع منذ',
    order: 'الترتيب حسب',
  },
  recording: 'مع تسجيل',
  any: 'أيّ',
  anyLanguage: 'أيّ لغة',
  orders: { best: 'الأنسب', title: 'العنوان', minutes: 'الدقائق', reviewed: 'آخر مراجعة' },
  all: 'من جديد',
  found: { none: 'لا كتاب يوافق هذا. احذفوا كلمة، أو اختاروا أقل.', one: 'كتاب واحد.', some: 'الكتب: {n}.', failed: 'تعذّر جلب القائمة. والفهرس أدناه يعمل من دونها.' },
  results: 'ما وُجد',
  pages: 'صفحات النتائج',
  page: (n) => `صفحة ${String(n)}`,
  withoutScript: 'يحتاج البحث إلى برنامج نصي، وهو متوقف هنا. أما الفهرس فيوصل إلى كل كتاب من دونه.',
  toIndex: 'فهرس المكتبة',
  newest: 'آخر ما روجع',
  allInIndex: (n) => `${books(n)} في الفهرس`,
  index: {
    title: 'الفهرس',
    lead: 'كل كتب المكتبة، كما في فهرس آخر الكتاب: ابحثوا عن صف أو شعور أو ما يتعلّمه الأطفال.',
    description: (n) => `فهرس فيه ${books(n)}: بحسب الصف والشعور وما يتعلّمه الأطفال والمدرسة، وبحسب الحروف.`,
    groups: { grade: 'بحسب الصف', feeling: 'بحسب الشعور', skill: 'بحسب ما يتعلّمه الأطفال', school: 'بحسب المدرسة', letter: 'بحسب الحروف', language: 'بلغات أخرى' },
    other: 'علامات أخرى',
    books,
    listDescription: (name, n) => `${books(n)} في فهرس المكتبة تحت «${name}».`,
    back: 'إلى الفهرس',
    pages: 'صفحات هذه القائمة',
  },
};
