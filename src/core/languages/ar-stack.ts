import { judgingInArabic } from './ar-stack-judging.ts';
import { count, listed, nouns } from './arabic-words.ts';
import type { StackPhrases } from './en-stack.ts';

/** Arabic phrases of the stack: the booklets that came back. Here what is put down, looked through and counted; judging and what follows from it is in a file of its own. */

type As = 'subject' | 'object';
const booklets = (n: number, as: As = 'subject') => count(n, nouns.booklet, as);
const children = (n: number, as: As = 'subject') => count(n, nouns.child, as);
const answers = (n: number, as: As = 'subject') => count(n, nouns.answer, as);
const told = (words: readonly (readonly [word: string, n: number])[]) => listed(words.map(([word, n]) => `${word} (${String(n)})`));
/** A label in a drawing runs from left to right as long as nothing says otherwise: a figure at its beginning would be torn off. */
const fromRight = '\u200f';

export const stackInArabic: StackPhrases = {
  title: 'رزمة الكتيّبات',
  description: 'تصفّحوا على جهازكم الكتيّبات التي عادت: ماذا رأى الصف، وكيف تقيّمون الإجابات بمقياس واحد مع زميل، وماذا تفعلون غدًا.',
  kind: 'بعد الدرس',
  lead: 'عادت الكتيّبات ملفات. ضعوها هنا وتصفّحوها كما تتصفّحون كومة على مكتبكم. تُقرأ على هذا الجهاز ولا تُرسل إلى أحد.',
  about: 'ما يمكنكم فعله هنا',
  abouts: [
    ['القراءة', 'ضعوا ملفات صف على المكتب، أو مجلّدًا كاملًا. النسختان من كتيّب واحد تصيران واحدة، والملف التالف يُذكر اسمه ويُنحّى جانبًا.'],
    ['النظر', 'كل الإجابات عن سؤال واحد جنبًا إلى جنب، أو صفحات طفل واحد، أو كل إجابة فيها كلمة الشعور نفسها.'],
    ['التقييم', 'إجابة في كل مرة، بسمات الكتاب نفسه، ومن لوحة المفاتيح. لا يُقيَّم الإملاء ولا الخط أبدًا، ولا ما يشعر به الطفل.'],
    ['الاتفاق', 'يقيّم زميل الإجابات نفسها من غير أن يرى تقييمكم. ثم ترون كم تتفقون، وأي الإجابات تستحق الحديث عنها.'],
    ['غدًا', 'ما كان في أكثر الإجابات وما نقصها، وثلاث تُقرأ بصوت عالٍ، وملاحظة للمرة القادمة التي تقرؤون فيها الكتاب.'],
    ['ما تأخذونه معكم', 'جدول، وصفحة تطبعونها لأنفسكم، وصفحة للأسر ليس فيها ما يدلّ على طفل.'],
  ],
  needsScript:
    'تعمل هذه الصفحة بالملفات التي على جهازكم، وتحتاج لذلك إلى برنامجها النصي. إن لم تروا شيئًا أدناه فالبرنامج متوقف أو لم يُحمَّل. ويمكن فتح كل كتيّب وحده أيضًا: فهو صفحة.',
  large:
    'هذه المكتبة أكبر من أن تحمل الصفحة أسئلة كل كتاب وسماته. في صفحة درس كل كتاب ملف صغير للرزمة: احفظوه مرة، وضعوه هنا مع الكتيّبات. ومن دونه يمكنكم أن تنظروا وتعدّوا.',
  footer: 'رزمة الكتيّبات',
  fromLesson: 'حين تعود الكتيّبات',
  fromLessonNote: 'تصفّحوا الملفات على جهازكم، وقيّموها مع زميل، وانظروا ماذا تفعلون غدًا.',
  packFile: 'أسئلة هذا الكتاب وسمات إجاباته، في ملف للرزمة',
  views: { pile: 'الكومة', look: 'النظر', judge: 'التقييم', agree: 'الاتفاق', tomorrow: 'غدًا', take: 'ما تأخذونه' },
  viewsName: 'في هذه الرزمة',
  booklets: (n) => booklets(n),
  children: (n) => children(n),
  answers: (n) => answers(n),
  which: 'أي كتاب؟',
  bookOf: (title, n) => `${title} (${booklets(n)})`,
  unknownPack:
    'ليس في هذه الصفحة سمات هذا الكتاب ولا إجاباته النموذجية. يمكن تصفّح الإجابات وعدّها؛ ولتقييمها ضعوا على المكتب أيضًا ملف الكتاب الخاص بالرزمة. تجدونه في صفحة درسه.',
  mark: (words, copy) => (copy === 1 ? words : `${words}، رقم ${String(copy)}`),
  fromPaper: 'منقول من الورق',

  pile: {
    heading: 'الكومة',
    empty: 'المكتب خالٍ.',
    drop: 'ألقوا الكتيّبات أو مجلّدًا هنا',
    files: 'اختاروا ملفات',
    folder: 'اختاروا مجلّدًا',
    note: 'تنتهي أسماء الملفات بـ ‎“.booklet.html”‎. وهنا أيضًا توضع درجات زميل، وملف الكتاب الخاص بالرزمة.',
    reading: (done, of) => `تجري قراءة ${String(done)} من ${String(of)} …`,
    read: (fresh, merged, aside) =>
      [
        fresh > 0 ? `ما وُضع على الكومة: ${booklets(fresh)}.` : '',
        merged > 0 ? `نسخ من كتيّبات كانت هنا من قبل، جُمعت معها: ${String(merged)}.` : '',
        aside > 0 ? `ما نُحّي جانبًا: ${count(aside, nouns.file)}.` : '',
        fresh + merged + aside === 0 ? 'لم يكن في ذلك كتيّب.' : '',
      ]
        .filter((each) => each !== '')
        .join(' '),
    packRead: (title) => `أسئلة «${title}» وسماته هنا الآن.`,
    scoresFirst: (n) => `عادت درجاتكم أنتم على ${answers(n, 'object')}.`,
    scoresSecond: (n) => `وصلت درجات الشخص الثاني على ${answers(n, 'object')}. انظروا «الاتفاق».`,
    sheetRead: (n) => `فُتحت ورقة تقييم فيها ${answers(n)}. انظروا «التقييم».`,
    aside: 'نُحّي جانبًا',
    asideNote: 'لم يمكن قراءة هذه. ولا شيء منها على الكومة.',
    unreadFile: 'لم يستطع المتصفح فتح هذا الملف. لعله نُقل أو هو مفتوح في مكان آخر؛ اختاروه مرة أخرى.',
    leftOut: (n) => `ما لم يمكن قراءته فيه: ${answers(n)}`,
    answersIn: (n) => answers(n),
    twins: 'العلامة نفسها مرّتين',
    twinsNote: (mark) => `كتيّبان لهما العلامة نفسها (${mark}). هل هما لطفل واحد من جهازين، أم لطفلين؟`,
    join: 'طفل واحد: اجمعوهما',
    apart: 'طفلان',
    takeOff: 'ارفعوه عن الكومة',
    off: (mark) => `ارفعوا عن الكومة: ${mark}`,
    takenOff: 'رُفع عن الكومة. والملف نفسه باقٍ في مكانه.',
    typed: 'أضيفوا كتيّبًا من الورق',
    keep: {
      legend: 'حفظ الرزمة',
      label: 'احفظوا هذه الرزمة على هذا الجهاز',
      note: 'وإلا زال كل شيء حين تغلقون هذه النافذة، وتبقى الملفات في مكانها. احفظوها فقط على جهاز لا يفتحه غيركم.',
      kept: 'محفوظة على هذا الجهاز، مع درجاتكم وملاحظاتكم.',
      not: 'غير محفوظة. إغلاق هذه النافذة يُخلي المكتب.',
      cannot: 'هذا المتصفح لا يسمح للصفحة بحفظ شيء. احفظوا درجاتكم ملفًا قبل أن تغلقوا النافذة.',
      full: 'لا مكان على هذا الجهاز لحفظ كل شيء. احفظوا درجاتكم ملفًا قبل أن تغلقوا النافذة.',
      erase: 'أخلوا المكتب وامحوا المحفوظ',
      eraseAsk: 'ستزول من هذا الجهاز كل الكتيّبات والدرجات والملاحظات التي في هذه الصفحة. وتبقى الملفات التي تسلّمتموها في مكانها.',
      eraseYes: 'امحوا',
      eraseNo: 'اتركوا كل شيء',
      erased: 'المكتب خالٍ، ولا شيء محفوظ.',
    },
  },

  paper: {
    heading: 'كتيّب من الورق',
    note: 'اكتبوا ما كتبه الطفل أو قاله حرفًا حرفًا؛ لا أحد يصحّحه. أما الرسم فيبقى على ورقه: يمكنكم أن تقولوا ما فيه.',
    book: 'الكتاب',
    pattern: 'علامة القراءة',
    colour: 'اللون',
    written: 'كتابة',
    said: 'قول',
    drawn: 'ما في الرسم',
    feeling: 'كلمة شعور',
    none: 'لا شيء',
    stars: 'النجوم',
    noStars: 'لم تُعطَ نجوم',
    best: 'اختير أولًا',
    last: 'يمكن أن ينتظر',
    because: 'لأنّ',
    add: 'ضعوه على الكومة',
    cancel: 'اتركوه',
    added: 'الكتيّب على الكومة.',
    nothing: 'ليس فيه إجابة بعد.',
  },

  look: {
    heading: 'النظر',
    how: 'الترتيب',
    ways: { stop: 'بحسب السؤال', mark: 'بحسب العلامة', feeling: 'بحسب كلمة الشعور', class: 'الصف كله' },
    stop: 'السؤال',
    stopOf: (n, ask) => `${String(n)}. ${ask}`,
    place: (n, opening) => `الوقفة ${String(n)}، الصفحة المزدوجة ${String(opening)}`,
    next: 'السؤال التالي',
    back: 'السؤال السابق',
    answered: (n, of) => `أجاب ${String(n)} من أصل ${children(of, 'object')}.`,
    passed: (n) => `وترك السؤالَ ${children(n)}، وهذه إجابة أيضًا.`,
    nobody: 'لم يجب أحد عن هذا السؤال.',
    aboutMe: 'عن الطفل: كل إجابة صحيحة. لا تُقيَّم أبدًا ولا تدخل في أي عدّ.',
    booklet: 'الكتيّب',
    nextBooklet: 'الكتيّب التالي',
    bookletBefore: 'الكتيّب السابق',
    feelingNote: 'كلمات اختارها الأطفال أو كتبوها أو قالوها عن شخصية في القصة. أما ما قالوه عن أنفسهم فمتروك.',
    noFeelings: 'ليس في الإجابات بعد شعور لأحد في القصة.',
    chose: (n) => `اختارها ${children(n)}`,
    cannotTell: (n) => `ولم يعرف كيف يقول ${children(n)}، وهذه إجابة أيضًا.`,
  },

  counts: {
    feelings: 'كلمات المشاعر على مدى القصة',
    feelingsText: (stops) => stops.map(([n, words, answered]) => `عند الوقفة ${String(n)}، من ${children(answered, 'object')}: ${told(words)}.`).join(' '),
    feelingsKey: 'بذرة لكل طفل. الشعور الصعب على اليمين، والشعور الطيب على اليسار.',
    feelingHeads: ['الوقفة', 'كلمة الشعور', 'الأطفال', 'اختاروها من القائمة', 'أجابوا عند الوقفة'],
    besidePath: 'وبجانبه الدرب الذي توقّعه دليل الكتاب.',
    frames: 'جمل للإكمال',
    framesNote: 'أي جملة توافق كلمات الطفل. يُعدّ كل طفل مرة واحدة عند الوقفة؛ ومن لا يستعمل جملة منها فقد وجد طريقته.',
    framesHeads: ['الجملة', 'الأطفال'],
    framesCaption: (n, wrote) => `الوقفة ${String(n)}: كتب، أو كُتب عنه، ${children(wrote)}`,
    ownWay: 'بطريقتهم هم',
    noFrames: 'لا كلمات بعدُ تُقارَن بجملة.',
    stars: 'نجوم الكتاب',
    starsNone: 'لم يعطِ أحد نجومًا بعد.',
    starRow: (n, words) => fromRight + (words === '' ? count(n, nouns.star) : `${count(n, nouns.star)}: ${words}`),
    starsText: (some, n, from, of) => `من أصل ${children(n, 'object')} أعطى ${String(some)} منهم ${from === of ? '' : `${String(from)} أو `}${count(of, nouns.star, 'object')}.`,
    middle: (low, high) => (low === high ? `ومن في الوسط أعطى ${count(low, nouns.star, 'object')}.` : `والوسط بين ${String(low)} و${String(high)}.`),
    mostOften: (most) => `وأكثر ما أُعطي: ${listed(most.map(String))}.`,
    wilson: (low, high) => `مع عدد قليل كهذا يكون للمصادفة نصيب: فالكتاب نفسه في صفوف أخرى قد يعجب ما بين ${String(low)} و${String(high)} من كل 100.`,
    starsNote: 'النجوم ترتيب، فلا متوسط لها. وفي الخامسة والسادسة من العمر يعطي كثير من الأطفال كل شيء أو لا شيء.',
    starsHeads: ['النجوم', 'الأطفال'],
    because: 'لأنّ',
    chosen: {
      title: 'كتاب من بين كتب',
      none: 'لم يختر أحد بعد.',
      text: (best, n, last, nLast) =>
        [`ما اختاره أولًا ${children(n)}: ${told(best)}.`, ...(nLast > 0 ? [`وما يمكن أن ينتظر عند ${children(nLast, 'object')}: ${told(last)}.`] : [])].join(' '),
      key: 'النقطة الممتلئة: اختير أولًا. والفارغة: يمكن أن ينتظر.',
      note: 'صف واحد في يوم واحد؛ لا يضع كتابًا فوق آخر.',
      heads: ['الكتاب', 'اختير أولًا', 'يمكن أن ينتظر'],
    },
    table: 'الأرقام في جدول',
    ways: 'من أجاب، وكيف',
    waysHeads: ['الوقفة', 'أجابوا', 'كيف'],
    couldNotTell: 'لا يعرف كيف يقول',
    way: (kind, n) => `${kind} ${String(n)}`,
    onlyYou: 'هذه الأرقام لكم. وما يجوز أن يراه غيركم في «ما تأخذونه».',
  },

  ...judgingInArabic,

  fellFlat: 'لم ينجح من قبل',
};
