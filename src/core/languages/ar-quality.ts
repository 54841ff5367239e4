import type { EstimateToSay, QualityPhrases } from './en-quality.ts';
import type { Unfinished } from './unfinished.ts';
import { count, listed, nouns, type Counted } from './arabic-words.ts';
import { numbersIn } from './formats.ts';

/** Arabic phrases of the page that shows how packs measure up, and of `bookfellow measure`. */

const bands = { 'muy difícil': 'صعب جدًا', 'algo difícil': 'صعب بعض الشيء', normal: 'متوسط السهولة', 'bastante fácil': 'سهل إلى حد كبير', 'muy fácil': 'سهل جدًا' };

function estimate(found: EstimateToSay): string {
  switch (found.kind) {
    case 'too short':
      return 'أقصر من أن يُقدَّر له صف: يحتاج التقدير إلى 100 كلمة و10 جمل.';
    case 'no formula':
      return 'لا معادلة تناسب هذه اللغة، فلا تقدير.';
    case 'grades': {
      const { low, high, belowFloor, aboveCeiling, formula } = found;
      const band = belowFloor
        ? `نحو الصف ${String(high)} أو دونه`
        : aboveCeiling
          ? `نحو الصف ${String(low)} أو فوقه`
          : low === high
            ? `نحو الصف ${String(low)}`
            : `نحو الصفوف من ${String(low)} إلى ${String(high)}`;
      return `${band}، تقديرًا بمعادلة ${formula}، وهي لا ترى إلا الطول.`;
    }
    case 'ease':
      return `${bands[found.band]} لقارئ بالغ («${found.band}» في سلّم INFLESZ)، تقديرًا بمعادلة ${found.formula}، وهي لا ترى إلا الطول.${found.shortSample ? ' وُضع السلّم على نصوص من 500 كلمة فأكثر، وهذا النص أقصر.' : ''}`;
  }
}

const pieces: Readonly<Record<'headings' | 'listItems' | 'meanings' | 'frames' | 'bankWords', Counted>> = {
  headings: { one: 'عنوان واحد', two: ['عنوانان', 'عنوانين'], few: 'عناوين', many: 'عنوانًا', other: 'عنوان' },
  listItems: { one: 'بند واحد من قائمة', two: ['بندان من قوائم', 'بندين من قوائم'], few: 'بنود من قوائم', many: 'بندًا من قوائم', other: 'بند من قوائم' },
  meanings: { one: 'سطر واحد من قائمة الكلمات', two: ['سطران من قائمة الكلمات', 'سطرين من قائمة الكلمات'], few: 'أسطر من قائمة الكلمات', many: 'سطرًا من قائمة الكلمات', other: 'سطر من قائمة الكلمات' },
  frames: { one: 'جملة واحدة للإكمال', two: ['جملتان للإكمال', 'جملتين للإكمال'], few: 'جمل للإكمال', many: 'جملة للإكمال', other: 'جملة للإكمال' },
  bankWords: { one: 'كلمة مساعدة واحدة', two: ['كلمتان مساعدتان', 'كلمتين مساعدتين'], few: 'كلمات مساعدة', many: 'كلمة مساعدة', other: 'كلمة مساعدة' },
};

export const qualityInArabic: Unfinished<QualityPhrases> = {
  title: 'الأدلّة بالأرقام',
  titleOfPage: (n) => `الأدلّة بالأرقام، صفحة ${String(n)}`,
  description: 'الكلمات والجمل وتقدير صادق لمستوى القراءة وما تقوله الفحوص عن كل دليل في هذه المكتبة.',
  lead: 'كل دليل يُعدّ ويُفحص قبل أن يظهر هنا. الأرقام عن نص الدليل نفسه، لا عن الكتاب ولا عن طفل ولا عن معلم.',
  toMeaning: 'ماذا تعني الأرقام، وماذا لا تعني',
  toSum: 'المكتبة إجمالًا',
  data: 'الأرقام نفسها ملفَّ بيانات',
  sum: 'المكتبة إجمالًا',
  companions: 'الأدلّة',
  inLanguages: (n) => count(n, nouns.language),
  stops: 'الوقفات',
  familyWords: 'كلمات للأسر',
  pictures: 'صور لها وصف',
  ofPictures: (described, all) => (all === 0 ? 'لا صور' : `${String(described)} من ${String(all)}`),
  withFindings: 'عليها ملاحظة من الفحوص',
  ofAll: (n, all) => `${String(n)} من ${String(all)}${all === 0 ? '' : `، ${numbersIn('ar-u-nu-latn', { style: 'percent' }).format(n / all)}`}`,
  keptOff: 'غير منشورة',
  keptOffNote: (n) => `${count(n, nouns.guide)}، إلى أن يُصلَح الأمر؛ والسبب يقوله «bookfellow check»`,
  coverage: 'الصفوف واللغات',
  language: 'اللغة',
  coverageNote: 'عدد الأدلّة لكل صف. والدليل الذي لصفين يُعدّ في كليهما.',
  gradeShort: (grade) => (grade === 'PreK' ? 'ما قبل الروضة' : grade === 'K' ? 'الروضة' : grade),
  allFindings: 'كل ما تقوله الفحوص',
  code: 'النوع',
  noFindingsAtAll: 'ليس لدى الفحوص ما تقوله عن أي دليل.',
  each: 'الأدلّة واحدًا واحدًا',
  filter: {
    legend: 'أي الأدلّة تريدون أن تروا',
    language: 'اللغة',
    grade: 'الصف',
    level: 'ما تقوله الفحوص',
    kind: 'عن',
    any: 'أيّ',
    findings: 'ما عليه ملاحظة فقط',
    all: 'أظهروا الكل',
    shown: { none: 'لا يوجد دليل كهذا.', one: 'دليل واحد من {all}.', some: 'الأدلّة المعروضة: {n} من {all}.', all: 'كل الأدلّة معروضة.' },
    elsewhere: 'في الصفحات الأخرى',
    failed: 'أمكن البحث في هذه الصفحة فقط؛ الباقي لم يُحمَّل.',
  },
  pages: 'صفحات هذه القائمة',
  page: 'صفحة',
  together: 'المجموع',
  stopsIn: (stops, minutes) => `${count(stops, nouns.stop)} في ${count(minutes, nouns.minute, 'object')}`,
  parts: { family: 'للأسر', children: 'ما يقرؤه الأطفال', passage: 'نص الكتاب نفسه' },
  passageNote: 'معدود على جهاز صاحب الدليل؛ ولا يُنشر منه شيء.',
  counted: (words, sentences) => `${count(words, nouns.word)} في ${count(sentences, nouns.sentence, 'object')}`,
  lengths: (mean, longest) => `${count(mean, nouns.word)} في الجملة المتوسطة، و${String(longest)} في أطول جملة`,
  nothing: 'لا شيء يُعدّ.',
  estimate,
  aim: { en: 'الهدف هو الصف 6 أو دونه.', es: 'الهدف هو «bastante fácil» أو أسهل.' },
  longWords: 'كلمات طويلة:',
  longOrRareWords: 'كلمات طويلة أو أقل شيوعًا:',
  andMore: (n) => `، و${String(n)} غيرها`,
  leftOut: (left) => {
    const told = (Object.keys(pieces) as (keyof typeof pieces)[]).flatMap((name) => {
      const n = left[name];
      return n === undefined || n === 0 ? [] : [count(n, pieces[name])];
    });
    return told.length === 0 ? '' : `تُرك ما ليس نصًا متصلًا: ${listed(told)}.`;
  },
  costliest: 'أكثر الجمل كلفة',
  sees: 'لا ترى المعادلة إلا الطول: لا ترى الصور ولا التكرار ولا السجع ولا الأصوات ولا شكل الصفحة ولا ما يعرفه القارئ من قبل. فاطلبوا من أحد الوالدين أن يقرأ النص.',
  findings: 'ما تقوله الفحوص',
  noFindings: 'ليس لدى الفحوص ما تقوله.',
  withheld: 'ملاحظة عن الخصوصية؛ يقول ما هي «bookfellow check».',
  levels: { stop: 'يمنع النشر', warn: 'انظروا مرة أخرى', note: 'من المفيد معرفته' },
  line: (n) => `السطر ${String(n)}`,
  kinds: {
    aims: 'الأهداف',
    'alt-text': 'وصف الصور',
    ask: 'صياغة الأسئلة',
    balance: 'توازن الوقفات',
    body: 'النص تحت الحقول',
    by: 'من صنعه ومتى',
    care: 'ملاحظات العناية',
    copy: 'كلمات مقتبسة من الكتاب',
    feelings: 'كلمات المشاعر',
    file: 'الملف',
    folder: 'المجلّد',
    frames: 'جمل للإكمال',
    'front-matter': 'رأس الملف',
    home: 'أسئلة للبيت',
    models: 'إجابات نموذجية',
    pack: 'الحقول',
    passage: 'نص الكتاب نفسه',
    picture: 'الصور',
    plan: 'الدقائق',
    privacy: 'الخصوصية',
    reading: 'القراءات',
    recording: 'التسجيل',
    rights: 'الحقوق',
    stop: 'الوقفات',
    text: 'نص الأسر',
    translation: 'الترجمة',
    words: 'كلمات للتعليم',
    yaml: 'الحقول كما كُتبت',
  },
  meaning: 'ماذا تعني الأرقام، وماذا لا تعني',
  meanings: [
    ['الكلمات والجمل', 'معدودة في النص المتصل. تُترك العناوين والقوائم والكلمات المساعدة وجمل الإكمال، ويُذكر ذلك في كل مدخل.'],
    ['الجملة المتوسطة وأطول جملة', 'قد تكون الجملة القصيرة صعبة والطويلة سهلة؛ وهذه الأرقام تدلّ فقط على موضع النظر.'],
    [
      'التقدير',
      'مجال من الصفوف تعطيه معادلة تعدّ المقاطع والجمل، أو الكلمات الأقل شيوعًا. وهي لا ترى إلا الطول، لا الصور ولا التكرار ولا السجع ولا الأصوات ولا شكل الصفحة ولا ما يعرفه القارئ من قبل. والنص الذي دون 100 كلمة أو 10 جمل لا تقدير له. التقدير لمن يكتب، وليس مستوى لمن يقرأ.',
    ],
    [
      'أي معادلة',
      'لا تُستعمل كل معادلة إلا لمن وُضعت لهم من القراء: Flesch-Kincaid أو INFLESZ للأسر، وSpache بالإنجليزية وCrawford بالإسبانية للأطفال. والكتاب الذي يقرؤه كبير بصوت عالٍ لا تقيّده أي منها. ولا معادلة هنا للعربية.',
    ],
    ['الكلمات الطويلة', 'ما كان من ثلاثة مقاطع فأكثر، وللأطفال أيضًا ما ليس في قائمة الكلمات الشائعة. أما الأسماء والكلمات التي يعلّمها الدليل فلا تُحسب. وقد تكون الكلمة الطويلة هي الأفضل.'],
    ['أكثر الجمل كلفة', 'هي التي لولاها لوجدت المعادلة النص أسهل. إعادة صياغتها تحسّن الرقم؛ أما هل تفيد القارئ فاسألوا أحد الوالدين.'],
    ['صور لها وصف', 'هل لكل صورة ذات معنى وصف. أما جودة الوصف فلا يحكم فيها إلا إنسان.'],
    ['الوقفات والدقائق', 'كم لحظة يقدّم الدليل وكم تستغرق. والأكثر ليس أفضل.'],
    ['ما تقوله الفحوص', 'قواعد تستطيع آلة أن تنظر فيها. قد يكون دليل لا ملاحظة عليه مملًّا، ودليل عليه ثلاث ملاحظات أفضل ما في المكتبة.'],
  ],
};
