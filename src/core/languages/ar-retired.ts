import type { RetiredPhrases } from './en-retired.ts';

/** Arabic phrases of the page that is left of a companion that was taken out; awaiting a native reader. */
export const retiredInArabic: RetiredPhrases = {
  kind: 'لم يعد في المكتبة',
  title: (title) => `${title}، لم يعد في المكتبة`,
  description: (title) => `سُحب دليل «${title}» من هذه المكتبة. هنا متى ولماذا، وإلى أين تذهبون الآن.`,
  since: (date) => `سُحب هذا الدليل في ${date}.`,
  why: 'لماذا',
  ask: (owner) => `جاء من ${owner}. للسؤال عنه:`,
  where: 'إلى أين الآن',
  instead: 'يحلّ محلّه',
  elsewhere: 'ما يحلّ محلّه محفوظ في عنوان آخر',
  stillIn: (language) => `ما زال هنا: ${language}`,
  find: 'ابحثوا عن كتاب آخر',
  answers: 'ما أجاب به طفل هنا',
  answersThere: 'الإجابات التي حُفظت على جهاز ما زالت عليه.',
  toAnswers: 'اعرضوها واحفظوها',
  answersOnDevice: 'حفظ المتصفح الإجابات على الجهاز الذي أُعطيت عليه. افتحوا هذه الصفحة هناك مع السماح بالبرامج النصية، فتعرضها عليكم ملفًا.',
  answersHere: 'هذه الإجابات على هذا الجهاز وحده. احفظوا كلًّا منها ملفًا يفتحه أي متصفح، واحتفظوا بالملف.',
  noAnswers: 'لا توجد إجابات عن هذا الكتاب على هذا الجهاز.',
  news: (title) => `سُحب: ${title}`,
};
