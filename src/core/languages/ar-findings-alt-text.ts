import type { altTextInEnglish } from './en-findings-alt-text.ts';
import { count, nouns, quoted, written } from './arabic-words.ts';

/** What is told about descriptions of pictures, in Arabic, and what to write instead. */
export const altTextInArabic: typeof altTextInEnglish = {
  'alt-text/missing': (f) => `ليس للصورة ${quoted(f.picture)} وصف. أضيفوا سطرًا ${written('alt: …')} يقول ماذا تُظهر، أو ${written('decorative: true')} إن كانت زينة فقط.`,
  'alt-text/decorative-with-alt': (f) => `الصورة ${quoted(f.picture)} معلَّمة زينةً، ولها وصف أيضًا. احذفوا أحدهما.`,
  'alt-text/link-without-words': (f) => `رابط ليس فيه إلا الزينة ${quoted(f.picture)}، فلا يعرف من يستمع إلى أين يوصل. اكتبوا بضع كلمات في الرابط أيضًا.`,
  'alt-text/encoding': (f) => `في وصف ${quoted(f.picture)} أحرف معطوبة: ${quoted(f.found)}. اكتبوا الكلمة من جديد واحفظوا الملف بترميز UTF-8.`,
  'alt-text/no-words': (f) => `ليس في وصف ${quoted(f.picture)} كلمات، بل ${quoted(f.found)} فقط. قولوا في جملة ماذا تُظهر الصورة.`,
  'alt-text/file-name': (f) => `${quoted(f.found)} اسم ملف. قولوا في جملة ماذا تُظهر الصورة ${quoted(f.picture)}: من فيها، وماذا يفعل، وأين.`,
  'alt-text/placeholder': (f) => `${quoted(f.found)} يحجز مكان الوصف فقط. قولوا ماذا تُظهر الصورة ${quoted(f.picture)}، أو اكتبوا ${written('decorative: true')} إن كانت زينة فقط.`,
  'alt-text/personal-data': (f) =>
    `قد يدلّ وصف ${quoted(f.picture)} على إنسان حقيقي: ${quoted(f.found)}. احذفوه وقولوا ما يُرى: «أطفال يرفعون قوارب من ورق». وإن كان من الكتاب فأضيفوه إلى ${written('allow words')}.`,
  'alt-text/markup': (f) => `في وصف ${quoted(f.picture)} علامات ستُقرأ بصوت عالٍ: ${quoted(f.found)}. اكتبوا كلمات عادية؛ أما العنوان فضعوه في نص الصفحة.`,
  'alt-text/credit': (f) => `يقول ${quoted(f.found)} في وصف ${quoted(f.picture)} من صنع الصورة. انقلوا ذلك إلى ${written('credit')}، وهو يظهر تحتها، وقولوا هنا ماذا تُظهر الصورة.`,
  'alt-text/image-of': (f) => `من يستمع يقال له من قبل إن ${quoted(f.picture)} صورة. احذفوا ${quoted(f.found)} وابدؤوا بما تُظهره: «بنت معها طائرة ورقية على تلّ».`,
  'alt-text/points-elsewhere': (f) => `يرسل ${quoted(f.found)} من يستمع إلى مكان آخر. قولوا هنا، في كلمات قليلة، ماذا تُظهر الصورة ${quoted(f.picture)}.`,
  'alt-text/not-purpose': (f) => `الصورة ${quoted(f.picture)} هي كل ما في رابط، و${quoted(f.found)} لا يقول إلى أين يوصل. اكتبوا إلى أين يصل المرء: «الكتيّب».`,
  'alt-text/too-long': (f) =>
    `في وصف ${quoted(f.picture)} ${count(f.length, nouns.letter)}، ولا يستطيع من يستمع أن يتوقف فيه أو يعود إليه. ابقوا دون ${String(f.most)}: احتفظوا بما يهمّ القصة، وضعوا الباقي في النص الذي بجانبها.`,
  'alt-text/text-left-out': (f) => `في الصورة ${quoted(f.picture)} كلمات تُقرأ، هي ${quoted(f.found)}، وليست في وصفها. أضيفوها: … لافتة كُتب عليها ${quoted(f.found)}.`,
  'alt-text/repeats': (f) => `يقول وصف ${quoted(f.picture)} ما هو مكتوب بجانبها: ${quoted(f.found)}. قولوا ما لا تقوله إلا الصورة: من يقف وأين، وماذا في يديه، وكيف هو الضوء.`,
  'alt-text/same-as-another': (f) => `للصورتين ${quoted(f.picture)} و${quoted(f.other)} الوصف نفسه. قولوا بماذا تختلف هذه.`,
  'alt-text/gives-answer': (f) => `يكشف وصف ${quoted(f.picture)} إجابة عن سؤال وقفتها: ${quoted(f.found)}. صفوا ما يدلّ عليها، كوجه أو يدين أو حال الطقس، ودعوا الأطفال يقولون ماذا يعني ذلك.`,
  'alt-text/too-vague': (f) => `قد يصلح ${quoted(f.found)} لصور كثيرة. قولوا ماذا يحدث في ${quoted(f.picture)}: من، وماذا يفعل، وأين.`,
  'alt-text/wrong-language': (f) => `يبدو أن وصف ${quoted(f.picture)} ليس بلغة الدليل (${quoted(f.language)}). سيُقرأ بصوت لغة أخرى: ترجموه.`,
  'alt-text/all-caps': (f) => `${quoted(f.found)} في وصف ${quoted(f.picture)} مكتوب بأحرف لاتينية كبيرة، وبعض الأصوات تتهجّاها حرفًا حرفًا. اكتبوا بأحرف صغيرة؛ وضعوا ما كُتب في الصورة بين علامتي اقتباس.`,
  'alt-text/ending': (f) => `ينتهي وصف ${quoted(f.picture)} بـ ${quoted(f.found)}، كأن شيئًا ينقصه. أتمّوا الجملة، أو اختموها بنقطة واحدة.`,
  'alt-text/spaces': (f) => `في وصف ${quoted(f.picture)} أسطر جديدة أو مسافات زائدة، وقد يتوقف الصوت عندها. اكتبوه في سطر واحد بمسافات مفردة.`,
  'alt-text/long-sentence': (f) => `في وصف ${quoted(f.picture)} جملة فيها ${count(f.words, nouns.word)}، ومن يستمع لا يستطيع أن يعود إلى الوراء. اجعلوها جملتين، كل منهما دون ${String(f.most)} كلمة.`,
  'alt-text/opinion': (f) => `يقول ${quoted(f.found)} في وصف ${quoted(f.picture)} رأيكم فيها. قولوا ما الذي يجعلها كذلك، كلون أو شكل أو نظرة، ودعوا المستمع يحكم.`,
};
