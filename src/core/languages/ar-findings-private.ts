import { apart, count, nouns, quoted, written } from './arabic-words.ts';
import type { passageFindingsInEnglish, privacyFindingsInEnglish } from './en-findings-private.ts';

/** Findings about the private text of the book, in Arabic: what is counted in it, and how much of it a pack may quote. */
export const passageFindingsInArabic: typeof passageFindingsInEnglish = {
  'passage/word-count': (f) =>
    `يقول ${written('words')} إن العدد ${String(f.said)}، والمعدود في نص الكتاب ${String(f.counted)}. ومن هذا العدد تأتي دقائق الدرس، فاكتبوا ${written(`words: ${String(f.counted)}`)}، أو تحقّقوا من أن النص كامل.`,
  'passage/opening-mark': (f) => {
    if (f.why === 'past the end') return `في نص الكتاب علامة للصفحة المزدوجة ${String(f.opening)}، وعدد الصفحات المزدوجة في الكتاب ${String(f.openings)}. صحّحوا العلامة، أو ${written('openings')}.`;
    const wrong = f.why === 'form' ? 'تشبه علامة صفحة مزدوجة ولا تُقرأ كذلك' : 'لا تأتي بعد التي قبلها';
    return `في نص الكتاب، العلامة التي في السطر ${String(f.line)} ${wrong}. اكتبوا ${written('[opening 4]')} في سطر وحدها، والأرقام تتصاعد.`;
  },
  'words/not-in-passage': (f) => `الكلمة ${quoted(f.word)}، وهي للتعليم، لا توجد في نص الكتاب. اختاروا كلمة سيسمعها الأطفال، أو أبقوها إن كانت تحكي عن صورة.`,
  'words/first-met': (f) =>
    `يقول ${written('first met')} الصفحة المزدوجة ${String(f.said)}، وأول ظهور للكلمة ${quoted(f.word)} في الكتاب في الصفحة المزدوجة ${String(f.found)}. غيّروا الرقم، لتكون الكلمة جاهزة حين تأتي.`,
  'copy/long-quote': (f) =>
    `يكرّر هذا النص ${count(f.words, nouns.word, 'object')} متتالية من الكتاب، من ${quoted(`${f.begins} …`)}. ولا يقتبس الدليل أكثر من ${String(f.most)}، لأن الكتاب محميّ بحقوق النشر. قولوا ذلك بكلماتكم، أو أبقوا الكلمات القليلة التي تحتاجون إليها فقط.`,
  'copy/too-much': (f) =>
    `يكرّر هذا الدليل في مجموعه ${count(f.words, nouns.word, 'object')} من الكتاب (${apart(`${String(f.percent)}%`)})، وأكثر ما يجوز له ${String(f.most)}. اختصروا علامات التوقّف والاقتباسات، واحكوا الباقي بكلماتكم.`,
};

/** Findings about persons, rights, and what should be looked at again before it is published. */
export const privacyFindingsInArabic: typeof privacyFindingsInEnglish = {
  'privacy/roster-name': (f) => `الاسم ${quoted(f.name)} في قائمة الأسماء الخاصة بكم. احذفوا الاسم من هذا النص، أو، إن كان لشخصية في الكتاب، أضيفوه إلى ${written('allow words')}.`,
  'privacy/roster-unread': () => `في ${apart('private/roster.txt')} قائمة أسماء لا يمكن قراءتها، فلا يعرف أحد هل في هذا الدليل اسم منها. احفظوا القائمة نصًّا عاديًا بترميز UTF-8، كل اسم في سطر.`,
  'privacy/email': (f) => `سيكون العنوان ${quoted(f.found)} ظاهرًا للجميع. احذفوه. وإن كان لكل الناس أن يكتبوا إليه فضعوه في ${written('contact')} في ${apart('library.yaml')}.`,
  'privacy/phone': (f) => `يشبه ${quoted(f.found)} رقم هاتف، وسيكون ظاهرًا للجميع. احذفوه. وإن كان لكل الناس أن يتصلوا به فضعوه في ${written('contact')} في ${apart('library.yaml')}.`,
  'privacy/room': (f) => `يقول ${quoted(f.found)} أين يوجد أطفال. اكتبوا «صفنا» أو «الغرفة»، أو، إن كان من القصة، أضيفوا الاسم إلى ${written('allow words')}.`,
  'privacy/picture-place': (f) =>
    f.holds === 'place'
      ? `في الملف ${quoted(f.picture)} المكان الذي أُخذت فيه الصورة. ليس ذلك في الصورة المنشورة، لكن من يحصل على المجلّد يستطيع أن يقرأه. احفظوا الصورة من جديد بلا مكان.`
      : `في الملف ${quoted(f.picture)} الكاميرا التي أُخذت بها الصورة. ليس ذلك في الصورة المنشورة. وإن شاركتم المجلّد مع أحد فاحفظوا الصورة من جديد بلا هذه البيانات.`,
  'rights/book-note': (f) =>
    `حقوق الكتاب معلَّمة بأنها ${quoted(f.rights)}. أضيفوا سطرًا ${written('rights note: …')} يقول ${f.rights === 'licensed' ? 'بأي رخصة، ومن أعطاها' : 'لماذا: السنة، أو تاريخ وفاة المؤلف'}.`,
  'rights/picture-note': (f) =>
    f.cover
      ? `تبدو ${quoted(f.picture)} غلافًا، والأغلفة لمن صنعها. أضيفوا سطرًا ${written('rights: …')} يقول من سمح بها، أو اتركوا الصورة.`
      : `لا تقول الصورة ${quoted(f.picture)} لمن هي. أضيفوا ${written('rights: …')} (مثل «رُسمت لهذا الدليل، ${apart('CC BY 4.0')}») أو ${written('credit: …')}. وصور كتاب محميّ بحقوق النشر تحتاج إلى إذن.`,
  'translation/unchecked': (f) =>
    `لم يوقّع أحد بأنه راجع هذه الترجمة (ينقص ${written(f.missing)}).${f.careful ? ' وفيها كلمات عناية أو إذن قد يؤذي الخطأ فيها، فلا تُنشر حتى تُراجَع.' : ''} اطلبوا ذلك من شخص يتقن اللغة، وأضيفوا ${written('checked by')} و${written('checked')}.`,
  'by/review-past': (f) => `كانت آخر مراجعة لهذا الدليل في ${apart(f.reviewed)}، أي قبل أكثر من ${count(f.years, nouns.year, 'object')}. اقرؤوه مرة أخرى، وغيّروا ${written('reviewed')}.`,
  'by/review-ahead': (f) => `مكتوب في ${written('reviewed')} اليوم ${apart(f.reviewed)}، وهو لم يأتِ بعد (اليوم ${apart(f.today)}). اكتبوا اليوم الذي رُوجع فيه.`,
};
