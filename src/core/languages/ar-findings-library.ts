import type { libraryFindingsInEnglish } from './en-findings-library.ts';
import { apart, listed, quoted, written } from './arabic-words.ts';

/** What is wrong with a source's folder, and what helps. */
const sourceFolder = {
  missing: 'غير موجود. تحقّقوا من مساره، أو من أن المجلّد المشترك متصل',
  'not a folder': 'ليس مجلّدًا. اذكروا المجلّد الذي فيه الأدلّة',
  link: 'رابط إلى مكان آخر. اذكروا ذلك المكان نفسه؛ فالروابط لا تُتبع',
  unreadable: 'لا يمكن فتحه. تحقّقوا من أن لكم أن تقرؤوه',
  twice: 'جزء من المكتبة من قبل. اذكروا كل مجلّد مرة واحدة',
};

const meant = (suggestion: string | undefined) => (suggestion === undefined ? '' : ` هل قصدتم ${quoted(suggestion)}؟`);

/** Arabic sentences for what shows when a whole library is seen together. */
export const libraryFindingsInArabic: typeof libraryFindingsInEnglish = {
  'source/folder': (f) => `مجلّد ${apart(f.owner)}، وهو ${quoted(f.folder)}، ${sourceFolder[f.why]}.${f.why === 'twice' ? '' : ' وحتى ذلك الحين لا يظهر في الموقع أي دليل منه.'}`,
  'source/clash': (f) =>
    `يطلب هذا المجلّد و${listed(f.others.map(apart))} العنوان نفسه، ${quoted(f.slug)}. لا يُنشر أيّ منها. أعطوا أحد المصادر ${written('prefix')} أخرى في ${apart('library.yaml')}، أو غيّروا اسم مجلّد.`,
  'page/address-taken': (f) =>
    f.by === undefined
      ? `للموقع صفحة خاصة به في العنوان ${quoted(f.address)}. أعطوا هذا الملف اسمًا آخر. وحتى ذلك الحين لا تُنشر هذه الصفحة.`
      : `تطلب هذه الصفحة و${apart(f.by)} العنوان نفسه، ${quoted(f.address)}. أبقوا واحدة من الاثنتين. وحتى ذلك الحين لا تُنشر إلا الأخرى.`,
  'by/parent-missing': (f) => `يذكر ${written('based on')} الاسم ${quoted(f.named)}، وليس هنا دليل بهذا العنوان.${meant(f.suggestion)} اذكروا مجلّد الدليل الذي أُعدّ منه هذا، أو قولوا ذلك بالكلمات.`,
  'retired/instead': (f) =>
    f.why === 'itself'
      ? `هذا الدليل المسحوب يحيل إلى نفسه. اذكروا غيره في ${written('instead')}، أو احذفوا السطر.`
      : f.why === 'retired'
        ? `${quoted(f.named)} مسحوب أيضًا. اذكروا في ${written('instead')} ما يحلّ محلّه الآن.`
        : `يذكر ${written('instead')} الاسم ${quoted(f.named)}، وهو غير موجود هنا.${meant(f.suggestion)} اذكروا مجلّدًا من هذه المكتبة، أو عنوانًا كاملًا على الشبكة.`,
  'retired/ahead': (f) => `يبقى هذا الدليل حتى ${apart(f.on)}. والموقع الذي يُبنى في ذلك اليوم أو بعده يُظهره مسحوبًا.`,
};
