/** Arabic phrases that the booklet on the screen says before its first answer. A file of its own: a slow phone loads these first, and the rest when it has time. */
import { count, nouns } from './arabic-words.ts';
import type { enBookletScreen } from './en-booklet-screen.ts';

export const arNames: Readonly<Record<'patterns' | 'colours', Readonly<Record<string, string>>>> = {
  patterns: { waves: 'أمواج', leaves: 'أوراق شجر', stitches: 'غُرَز', roofs: 'سطوح', rain: 'مطر' },
  colours: { red: 'أحمر', blue: 'أزرق', green: 'أخضر', yellow: 'أصفر', brown: 'بنّي' },
};

export const nameOf = (names: Readonly<Record<string, string>>, slug: string) => (Object.hasOwn(names, slug) ? names[slug] : undefined) ?? slug;
export const answers = (n: number, as: 'subject' | 'object' = 'subject') => count(n, nouns.answer, as);

export const arBookletScreen: typeof enBookletScreen = {
  bookmarks: { waves: 'أمواج', leaves: 'أوراق شجر', stitches: 'غُرَز', roofs: 'سطوح', rain: 'مطر' },
  blank: 'فراغ للملء',
  screen: {
    whose: 'لمن هذا الكتيّب؟',
    openIt: (n) => (n === 0 ? 'لا إجابة بعد' : answers(n)),
    another: 'ابدأ كتيّبًا آخر',
    choose: 'اختر علامة القراءة',
    chooseNote: 'هي تمثّلك بدل اسمك. يحفظ الكتيّب إجاباتك على هذا الجهاز ولا يرسلها إلى أحد.',
    pattern: 'ماذا عليها؟',
    colour: 'ما لونها؟',
    bookmark: (pattern, colour) => `العلامة التي عليها ${nameOf(arNames.patterns, pattern)}، ولونها ${nameOf(arNames.colours, colour)}`,
    yours: (pattern, colour) => `علامتك: عليها ${nameOf(arNames.patterns, pattern)}، ولونها ${nameOf(arNames.colours, colour)}`,
    taken: 'هذه العلامة لكتيّب موجود على هذا الجهاز. فتحها يتابع ذلك الكتيّب.',
    colours: { red: 'أحمر', blue: 'أزرق', green: 'أخضر', yellow: 'أصفر', brown: 'بنّي' },
    when: 'متى تريد أن تجيب؟',
    flows: { each: 'عند كل وقفة، ونحن نقرأ', end: 'بعد انتهاء القصة: نقرؤها أو نشاهدها كلها أولًا' },
    begin: 'افتح الكتيّب',
    change: 'أعده إلى مكانه واختر علامة أخرى',
    goneElsewhere: 'مُحي هذا الكتيّب في نافذة أخرى.',
    readFirst: 'القصة كلها أولًا',
    readFirstNote: 'اقرؤوا الكتاب معًا، أو شاهدوه، من أول صفحة إلى آخر صفحة. لا أحد مطالب بالإجابة في الطريق. لا داعي للعجلة.',
    readDone: 'انتهت القصة: اقلب الصفحة',
    pages: 'قلب الصفحات',
    page: (n, of) => `صفحة ${String(n)} من ${String(of)}`,
    forward: 'اقلب الصفحة',
    back: 'الصفحة السابقة',
    keeping: {
      kept: 'محفوظ على هذا الجهاز.',
      full: 'لم يبقَ مكان على هذا الجهاز، فلم تُحفظ الإجابة الأخيرة. اذهب إلى صفحة إجاباتك واطبعها أو احفظها ملفًا قبل أن تغلق هذه النافذة.',
      blocked: 'هذا المتصفح لا يسمح للكتيّب بحفظ شيء. يمكنك أن تتابع، لكن اطبع صفحة إجاباتك أو احفظها ملفًا قبل أن تغلق هذه النافذة.',
    },
    toMine: 'إلى صفحة إجاباتي',
    how: 'كيف ستجيب؟',
    ways: { write: 'أكتب', draw: 'أرسم', feeling: 'أختار كلمة شعور', say: 'أقول', act: 'أمثّل', pass: 'أترك السؤال' },
    has: 'فيه شيء',
    write: {
      label: 'كلماتك',
      frames: 'ضع واحدة من هذه لتبدأ:',
      bank: 'كلمات تضعها:',
      undo: 'تراجع عن آخر تغيير',
      look: 'انظر إليه مرة أخرى',
      looks: ['هل هي جملة كاملة؟', 'هل تقول السبب، بكلمة «لأنّ»؟', 'هل في آخرها علامة؟'],
      lookNote: 'لا أحد يضع علامة على هذا. غيّر شيئًا، أو اتركه كما هو.',
      two: 'هنا اثنتان: كُتبتا على جهازين أو في نافذتين. كلتاهما محفوظة. يمكنك أن تزيل إحداهما.',
      takeAway: 'أزل هذه',
    },
    say: {
      partner: 'احكِ ذلك لمن بجانبك، واستمع إلى ما يحكيه.',
      aloud: 'قل ذلك لأحد بصوت عالٍ.',
      label: 'يمكن لشخص كبير أن يدوّن ما تقوله كلمة كلمة',
      micOff: 'إن أرادت الأسرة فيمكن للكتيّب أن يحفظ صوتك أيضًا على هذا الجهاز. يسمح بذلك شخص كبير في الصفحة الأولى.',
    },
    act: {
      note: 'أظهر ذلك بيديك أو بوجهك أو بجسمك كله.',
      label: 'ماذا فعلت؟ تكفي كلمة واحدة',
    },
    pass: {
      note: 'يمكنك أن تترك السؤال. لن يسأل أحد لماذا.',
      do: 'أترك هذا السؤال',
      done: 'تركت هذا السؤال.',
      undo: 'بل أجيب',
    },
    models: 'بماذا قد يجيب آخرون',
    modelsFirst: 'بماذا قد يجيب آخرون: الأفضل بعد إجابتك',
    expand: 'قد يعيد شخص كبير قولها هكذا:',
    late: {
      wait: 'هذه الصفحة في الطريق.',
      missing: 'لم يصل هذا الجزء من الصفحة، ربما لأنه لا توجد شبكة. ما أجبت به محفوظ. والورق الحقيقي صالح مثله.',
      again: 'حاول مرة أخرى',
    },
    mine: { title: 'صفحة إجاباتي' },
    grown: { title: 'للكبار' },
  },
};
