import { arNames, nameOf } from './ar-booklet-screen.ts';
import { count, nouns } from './arabic-words.ts';
import type { enBookletFile } from './en-booklet-file.ts';

/** Arabic phrases of the file that a family hands over; the stack says them too. */
export const arBookletFile: typeof enBookletFile = {
  stars: (n) => count(n, nouns.star),
  starWords: ['ليس لي', 'لا بأس به', 'أعجبني', 'أعجبني كثيرًا', 'أريده مرة بعد مرة'],
  file: {
    title: (book) => `${book}: صفحة إجاباتي`,
    lead: 'أجاب طفل عن هذه الأسئلة حول كتاب مصوّر. ليس في هذا الملف غير هذه الصفحات. يمكن قراءتها هنا، وإعادتها إلى الكتيّب على جهاز آخر.',
    mark: (pattern, colour) => `محفوظ بالعلامة التي عليها ${nameOf(arNames.patterns, pattern)}، ولونها ${nameOf(arNames.colours, colour)}`,
    open: (opening) => `الصفحة المزدوجة ${String(opening)}`,
    whole: 'الكتاب كله',
    about: { character: 'عن شخصية في القصة', me: 'عن الطفل: كل إجابة صحيحة' },
    nothing: 'لا شيء هنا بعد.',
    kinds: {
      written: 'كتابة',
      feeling: 'كلمة شعور',
      'cannot-tell': 'كلمة شعور',
      said: 'قول دوّنه شخص كبير',
      voice: 'بالصوت',
      drawing: 'رسم',
      photo: 'صورة',
      acted: 'تمثيل',
      passed: 'تُرك',
      stars: 'نجوم',
      because: 'لأنّ',
      chosen: 'كتاب من بين كتب',
    },
    passed: 'أترك هذا السؤال.',
    cannotTell: 'لا أعرف كيف أقول.',
    stars: (stars, of, words) => `${String(stars)} من ${String(of)}: ${words}`,
    chosen: (best, last) => [best, last && `في آخر القائمة: ${last}`].filter(Boolean).join('؛ '),
    untitledDrawing: 'رسم بلا كلمات بجانبه',
    untitledPhoto: 'صورة بلا كلمات بجانبها',
    seconds: (n) => count(n, nouns.second),
  },
  unreadable: {
    empty: 'هذا الملف فارغ. اختاروا الملف المحفوظ من كتيّب: ينتهي اسمه بـ ‎“.booklet.html”‎.',
    'too-big': 'هذا الملف أكبر من أن يكون كتيّبًا، فلم يُفتح. اختاروا ملفًا ينتهي اسمه بـ ‎“.booklet.html”‎.',
    'not-a-booklet': 'هذا الملف ليس كتيّبًا. اختاروا ملفًا محفوظًا من كتيّب: ينتهي اسمه بـ ‎“.booklet.html”‎.',
    'cut-short': 'نهاية هذا الملف ناقصة، كأن النسخ توقف في منتصفه. انسخوه مرة أخرى من مكان حفظه.',
    newer: 'حُفظ هذا الملف بنسخة أحدث من هذه الصفحات. أعيدوا تحميل الصفحة وحاولوا مرة أخرى.',
    damaged: 'تغيّر شيء في هذا الملف، فلا يمكن استرجاع إجاباته. وقد يُفتح للقراءة كأي صفحة.',
  },
};
