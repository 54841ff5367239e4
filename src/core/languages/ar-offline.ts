import type { Unfinished } from './unfinished.ts';
import type { offlineInEnglish } from './en-offline.ts';

/** What pages say about the copy of a book on the device, in Arabic. */
export const offlineInArabic: Unfinished<typeof offlineInEnglish> = {
  kept: (size) => `هذا الكتاب محفوظ على هذا الجهاز (${size} ميغابايت)، فتُفتح صفحاته بلا شبكة.`,
  remove: 'أزيلوا النسخة',
  removed: 'لا توجد نسخة من هذا الكتاب على هذا الجهاز.',
  keep: 'احفظوا نسخة لاستعمالها بلا شبكة',
  newer: 'توجد نسخة أحدث من هذا الكتاب، محفوظة وجاهزة. وما كتبتموه باقٍ.',
  show: 'استعملوها الآن',
  noRoom: 'لم يبقَ على هذا الجهاز مكان لنسخة من هذا الكتاب. وهو يعمل ما دامت الشبكة موجودة.',
  title: 'هذه الصفحة غير محفوظة على هذا الجهاز',
  text: 'لا توجد شبكة الآن. الكتب التي فتحتموها على هذا الجهاز محفوظة وتعمل. وستعمل هذه الصفحة من جديد حين تعود الشبكة.',
  back: 'إلى المكتبة',
  description: 'لا توجد شبكة، وهذه الصفحة غير محفوظة على هذا الجهاز. أما الكتب التي فُتحت من قبل فما زالت تعمل.',
};
