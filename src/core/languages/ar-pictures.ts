import type { PicturePhrases } from './en-pictures.ts';
import { count, listed, nouns } from './arabic-words.ts';

/** The phrases of a pack's pictures in Arabic. */
export const picturesInArabic: PicturePhrases = {
  spent: {
    title: 'كيف تُقضى الدقائق',
    table: 'الدقائق في جدول',
    on: 'في ماذا',
    takes: 'المدة',
    minutes: 'دقائق',
    spending: {
      reading: 'القراءة بصوت عالٍ',
      pages: 'قلب الصفحات والنظر',
      asking: 'طرح السؤال',
      thinking: 'وقت للتفكير',
      doing: 'القول والكتابة والرسم والتمثيل',
      hearing: 'الاستماع إلى الأطفال',
      ends: 'البداية والختام',
    },
    text: (total, reading, children, stops) =>
      `درس مدته نحو ${count(total, nouns.minute, 'object')}. منها نحو ${String(reading)} للقراءة والنظر، ${stops === 0 ? 'ولا شيء للوقفات' : `ونحو ${String(children)} للأطفال: يفكرون ويجيبون ويُستمع إليهم في ${count(stops, nouns.stop, 'object')}`}.`,
  },
  heading: 'الكتاب ووقفاته في رسم',
  inLedger: 'رسوم',
  table: 'الأرقام في جدول',
  stopMap: {
    title: 'أين تتوقف القراءة',
    text: (stops, openings, words, must) =>
      `${count(stops, nouns.stop)} على مدى ${count(openings, nouns.opening, 'object')} و${count(words, nouns.word, 'object')}. ${must === 0 ? 'يمكن ترك أيّ منها' : must === 1 ? 'وقفة واحدة منها لا تُترك' : `${count(must, nouns.stop)} منها لا تُترك`} حين يضيق الوقت.`,
    none: 'ليس في هذا الدليل وقفات، فلا شيء يُرسم على مدى الكتاب.',
    counted: 'الكلمات معدودة في نص الكتاب نفسه، حتى نهاية كل صفحة مزدوجة.',
    shared: 'الكلمات موزّعة بالتساوي على الصفحات المزدوجة؛ لم يعدّها أحد صفحةً صفحة.',
    openings: 'صفحة مزدوجة',
    words: 'كلمات',
    stop: 'الوقفة',
    opening: 'الصفحة المزدوجة',
    read: 'كلمات مقروءة',
    answer: 'الإجابة',
    depth: 'العمق',
    keep: 'حين يضيق الوقت',
    must: 'لا تُترك',
    may: 'يمكن أن تنتظر',
    mustKey: 'ساق متصلة: لا تُترك حين يضيق الوقت',
    mayKey: 'ساق متقطعة: يمكن أن تنتظر',
    depthKey: 'كلما طالت الساق وكثرت أوراقها كان السؤال أعمق',
  },
  path: {
    title: 'درب المشاعر',
    text: (feelings) => `ما قد تقوله الإجابات عن مشاعر شخصية: ${feelings.map(([stop, words]) => `${listed(words)} عند الوقفة ${String(stop)}`).join('؛ ')}.`,
    none: 'ليس في هذا الدليل وقفة تسأل عن شخصية بكلمات مشاعر تعرفها المكتبة، فلا درب يُرسم.',
    note: 'المواضع تقدير المكتبة لمعنى الكلمة، ولا تقول شيئًا عن طفل.',
    stop: (n, opening) => `الوقفة ${String(n)}، الصفحة المزدوجة ${String(opening)}`,
    unpleasant: 'شعور صعب',
    pleasant: 'شعور طيب',
    strokes: 'الخطوط تحت الكلمة تبيّن شدّتها، من خط إلى ثلاثة.',
    at: 'الوقفة',
    opening: 'الصفحة المزدوجة',
    feeling: 'الشعور',
    strength: 'الشدّة',
    valence: 'طيب الشعور (‎−100 إلى 100)',
  },
};
