import type { Unfinished } from './unfinished.ts';
import type { recordingInEnglish } from './en-recording.ts';

/** What the page of a recording says, in Arabic. */
export const recordingInArabic: Unfinished<typeof recordingInEnglish> = {
  kind: 'قراءة مسجّلة لكم',
  of: 'التسجيل',
  link: 'التسجيل',
  linkNote: 'الكتاب مقروءًا بصوت عالٍ، مع توقّف عند كل وقفة',
  lead: 'هنا من يقرأ لكم الكتاب. عند كل وقفة ينتظر الفيلم، ولكم كل الوقت الذي تريدونه للإجابة.',
  film: (megabytes, length) => `حجم الفيلم ${megabytes} ميغابايت ومدّته ${length}. ولا يبدأ إلا حين تبدؤونه.`,
  captionsName: 'نص مرافق',
  chaptersName: 'الوقفات',
  waits: 'لينتظر الفيلم عند كل وقفة',
  waiting: (n) => `الفيلم ينتظر عند الوقفة ${String(n)}.`,
  goesOn: 'الفيلم يتابع.',
  goOn: 'تابعوا الفيلم',
  again: 'اسمعوا ما قبلها مرة أخرى',
  heading: (n) => `الوقفة ${String(n)}`,
  youCan: (ways) => `يمكنكم ${ways}.`,
  feels: { character: 'السؤال عن شخصية في القصة.', me: 'السؤال عنك أنت. كل إجابة صحيحة.' },
  noFilm: 'لا يمكن عرض الفيلم هنا. الوقفات والنص أدناه يعملان من دونه.',
  elsewhere: 'الفيلم محفوظ في مكان آخر',
  elsewhereNote: 'يُفتح في موقع آخر، ربما بعد تسجيل الدخول إلى موقع المدرسة. ولذلك الموقع قواعده. أوقفوا الفيلم بأنفسكم في الأوقات المذكورة أدناه.',
  toFilm: 'افتحوا الفيلم في موقعه',
  stops: 'الوقفات وأوقاتها',
  stopsNote: 'إذا لم ينتظر الفيلم وحده فأوقفوه في هذه الأوقات.',
  at: (clock) => `عند ${clock}`,
  transcript: 'النص، وفيه الوقفات',
  permission: 'الإذن',
  description: (title) => `«${title}» مقروءًا بصوت عالٍ في فيلم، مع نص مرافق وتوقّف عند كل وقفة.`,
};
