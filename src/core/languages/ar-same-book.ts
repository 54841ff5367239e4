import { count, nouns } from './arabic-words.ts';
import type { sameBookInEnglish } from './en-same-book.ts';
import type { Unfinished } from './unfinished.ts';

/** Arabic for the page that shows packs of one book beside each other. */
const books = (n: number) => count(n, nouns.book);

export const sameBookInArabic: Unfinished<typeof sameBookInEnglish> = {
  title: 'الكتاب نفسه مرّتين',
  titleOfPage: (n) => `الكتاب نفسه مرّتين، صفحة ${String(n)}`,
  description: 'أدلّة كتاب واحد جنبًا إلى جنب: ما تتشابه فيه وما تختلف فيه، ومن أعدّها، وما يمكن فعله.',
  lead: 'قد يعدّ أكثر من شخص دليلًا للكتاب نفسه، وقد يكون أحدها نسخة من آخر. تقف هنا جنبًا إلى جنب ليقرّر أحد أيّها يبقى.',
  none: 'لا كتاب له دليلان لم ينظر فيهما أحد.',
  count: (n) => `${books(n)} لها أكثر من دليل باللغة نفسها.`,
  what: 'ما يمكن فعله',
  ways: [
    ['يحلّ أحدهما محلّ الآخر.', 'اسحبوا الآخر: اكتبوا «retired» في ملفه مع اليوم والسبب، وفي «instead» اسم المجلد الباقي، فتدلّ صفحته عندئذ على المكان البديل.'],
    ['أُعدّ أحدهما من الآخر.', 'اكتبوا ذلك في ملف الأحدث: «based on» واسم مجلد الأقدم. فيُسمّيان قريبين ولا يظهران هنا.'],
    ['كلاهما جيد.', 'اكتبوا اسمي مجلديهما في «both stay» في library.yaml، فلا يُسأل أحد ثانية.'],
  ],
  grounds: { isbn: 'رقم ISBN نفسه', title: 'العنوان والمؤلف نفسهما، كما هما أو مع خطأ في الكتابة', prompts: 'كثير من الأسئلة نفسها' },
  why: 'لماذا هي هنا',
  alike: 'متشابه في الكل',
  differs: 'ما تختلف فيه',
  same: 'لا شيء غير الأسئلة والنصوص نفسها.',
  shared: (n) => `أسئلة مشتركة: ${String(n)}`,
  andMore: (n) => `وغيرها: ${String(n)}`,
  others: 'من الكتاب نفسه أيضًا',
  pages: 'صفحات هذه القائمة',
  notGiven: 'غير مذكور',
  facts: {
    book: 'عنوان الكتاب',
    author: 'المؤلف',
    illustrator: 'الرسوم',
    edition: 'الطبعة',
    maker: 'أعدّه',
    grades: 'الصفوف',
    minutes: 'الدقائق',
    stops: 'الوقفات',
    reviewed: 'آخر مراجعة',
    version: 'الإصدار',
    licence: 'الرخصة',
    from: 'مأخوذ من',
    file: 'الملف',
  },
  relatedHeading: 'أقارب لا يحتاج أحد إلى البتّ فيها',
  relatedLead: 'ترجمات الدليل الواحد في مجلد واحد ولا تُذكر هنا.',
  how: { fork: 'أُعدّ أحدهما من الآخر، أو كلاهما من ثالث', 'both stay': 'نظر أحد في كليهما، وكلاهما باقٍ', language: 'الكتاب نفسه بلغتين، في مجلدين' },
  and: 'و',
};
