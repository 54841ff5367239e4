import { count, nouns } from './arabic-words.ts';
import type { LibrarianPhrases } from './en-librarian.ts';

const companions = (n: number, as: 'subject' | 'object' = 'subject') => count(n, nouns.guide, as);

/** Arabic phrases of the page for whoever looks after a library. */
export const librarianInArabic: LibrarianPhrases = {
  title: 'لمن يدير المكتبة',
  titleOfPage: (n) => `لمن يدير المكتبة، صفحة ${String(n)}`,
  description: 'ما الذي وصل، وما الذي لم يُنشر، وأي الأدلّة تحتاج إلى مراجعة، ولأي الصفوف والمهارات أدلّة، ولمن تكتبون.',
  lead: 'ما تطلبه منكم هذه المكتبة عند آخر بناء لها. يجوز للجميع أن يروا هذه الصفحة، ولذلك لا تقول عن الأدلّة غير المنشورة إلا عددها.',
  toSum: 'المكتبة إجمالًا',
  toOwners: 'لمن تكتبون',
  link: 'لمن يدير المكتبة',

  news: 'ما حدث',
  newsNote: 'الأحدث أولًا. يُعدّ الدليل واصلًا حين يجده بناء الموقع أول مرة؛ ويُعدّ مراجَعًا في اليوم الذي يذكره ملفه.',
  since: 'منذ',
  sinceShown: 'منذ ذلك اليوم: {n}',
  what: { 'came in': 'وصل', 'looked over': 'روجع', 'taken out': 'سُحب' },
  day: 'اليوم',
  happened: 'ما حدث',
  companion: 'الدليل',
  from: 'من',
  noNews: 'لا دليل يذكر يومًا بعد.',
  moreLines: (n) => `وغيرها ${count(n, nouns.line)}، وهي أقدم. وكل الأيام في القائمة التي للبرامج الأخرى.`,

  keptOff: 'غير منشورة',
  keptOffNone: 'كل الأدلّة منشورة.',
  keptOffNote: 'في كل منها خطأ يمنع نشره. والأمر «npx bookfellow check» يذكر الملف والسطر وما يُكتب بدلًا منه.',
  keptOffOf: (owner, n) => `${owner}: ${companions(n)}`,
  own: 'أدلّة المكتبة نفسها',

  past: 'فات موعد مراجعتها',
  pastNone: 'لا دليل فات موعد مراجعته.',
  pastNote: 'بعد سنتين من آخر نظر ينبغي أن يُقرأ الدليل من جديد. هذا عرف شائع، بلا مصدر.',
  lastLooked: 'آخر مراجعة',
  morePast: (n) => `وغيرها ${companions(n)}، روجعت بعد هذه.`,
  never: (n) => `أدلّة لا تذكر يوم مراجعة: ${String(n)}.`,

  coverage: 'الصفوف والمهارات',
  coverageIn: (language) => `الصفوف والمهارات، ${language}`,
  coverageNote: 'يكبر المربّع مع العدد الذي بجانبه؛ والشرطة مكان خالٍ. والدليل الذي لصفين أو لمهارتين يُعدّ في كليهما.',
  skill: 'المهارة',
  otherSkills: 'مهارات أخرى',
  noSkill: 'بلا مهارة مذكورة',
  allPacks: 'كل الأدلّة',

  owners: 'لمن تكتبون',
  ownersNone: 'ليس لدى الفحوص ما تقوله عن أدلّة أحد.',
  ownersNote: 'نص لكل مدرسة أو شخص، جاهز للإرسال. لا يُرسل شيء من هنا: انسخوه، أو افتحوه في برنامج بريدكم.',
  ownerPacks: (n) => companions(n),
  ownerOff: (n) => `غير منشور: ${String(n)}`,
  ownerLook: (n) => `لنظرة أخرى: ${String(n)}`,
  ownerNotes: (n) => `من المفيد معرفته: ${String(n)}`,
  text: 'النص',
  copy: 'انسخوا النص',
  copied: 'نُسخ.',
  notCopied: 'لم يمكن نسخه. حدّدوه وانسخوه بأنفسكم.',
  mail: 'افتحوه في برنامج بريدكم',
  pages: 'صفحات هذه القائمة',
  page: 'صفحة',

  subject: (library) => `أدلّتكم في ${library}`,
  opening: (library, n) => `عن أدلّتكم في ${library}، وعددها ${String(n)}:`,
  letterOff: (n) => `أدلّة لم تُنشر لخطأ يمنع نشرها: ${String(n)}. لتعرفوا أيها، وما يُكتب بدلًا من الخطأ، نفّذوا في مجلّدكم: npx bookfellow check`,
  letterLook: 'نرجو أن تنظروا في هذه مرة أخرى:',
  letterNotes: 'من المفيد معرفته:',
  letterMore: (n) => `… وغيرها ${String(n)}. والأمر «npx bookfellow check» يذكرها كلها.`,
  closing: 'شكرًا لكم. إن كان هنا خطأ فاكتبوا إلى:',
};
