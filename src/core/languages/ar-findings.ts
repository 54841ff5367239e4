import type { FindingSentences } from './en-findings.ts';
import { apart, count, either, listed, nouns, quoted, written } from './arabic-words.ts';
import { altTextInArabic } from './ar-findings-alt-text.ts';
import { balanceInArabic } from './ar-findings-balance.ts';
import { libraryFindingsInArabic } from './ar-findings-library.ts';
import { lookFindingsInArabic } from './ar-findings-look.ts';
import { passageFindingsInArabic, privacyFindingsInArabic } from './ar-findings-private.ts';

/** Arabic sentences for findings. Names of fields and files are Latin and stand apart from the sentence: see `written` and `quoted` in `arabic-words.ts`. */

const kinds = {
  text: 'نصًّا',
  number: 'عددًا',
  'whole number': 'عددًا صحيحًا',
  list: `قائمة (أسطر تبدأ بـ ${written('- ')})`,
  group: 'مجموعة حقول',
  'yes or no': `${written('true')} أو ${written('false')}`,
};
const within = (place: string) => (place === '' ? '' : ` في ${written(place)}`);
const meant = (suggestion: string | undefined) => (suggestion === undefined ? '' : ` هل قصدتم ${quoted(suggestion)}؟`);
const found = (text: string) => (text === '[list]' ? 'قائمة' : text === '[group]' ? 'مجموعة حقول' : text === '' ? 'لا شيء' : quoted(text));

const gradesFromTo = (low: number, high: number) => (low === high ? `للصف ${String(low)}` : `للصفوف من ${String(low)} إلى ${String(high)}`);
const linesThatCost = (lines: readonly number[]) => (lines.length === 0 ? '' : `ابدؤوا ${lines.length === 1 ? 'بالسطر' : lines.length === 2 ? 'بالسطرين' : 'بالأسطر'} ${listed(lines.map(String))}. `);

/** What the YAML parser stumbled over, in words. */
const yamlProblems: Readonly<Record<string, string>> = {
  BAD_INDENT: 'الأسطر هنا غير مصطفّة. ضعوا أمام الحقول التي هي معًا العدد نفسه من المسافات.',
  BLOCK_AS_IMPLICIT_KEY: `في هذا السطر ${written(': ')} مرة ثانية. ضعوا النص كله بين علامتي اقتباس مزدوجتين.`,
  MULTILINE_IMPLICIT_KEY: 'اسم حقل يمتدّ هنا على أكثر من سطر. انظروا هل تنقص نقطتان أو علامة اقتباس قبل هذا.',
  MISSING_CHAR: 'تنقص علامة هنا: كثيرًا ما تكون النقطتين بعد اسم الحقل، أو علامة اقتباس أو قوسًا في آخره.',
  TAB_AS_INDENT: 'في أول هذا السطر علامة جدولة. استعملوا مسافات بدلًا منها.',
  UNEXPECTED_TOKEN: 'هنا شيء لم يكن متوقعًا. إن كان نصًّا فضعوه بين علامتي اقتباس مزدوجتين.',
  BAD_SCALAR_START: 'لا يبدأ نص بهذه العلامة. ضعوه بين علامتي اقتباس مزدوجتين.',
  BAD_DQ_ESCAPE: 'للشرطة المائلة إلى الخلف معنى خاص بين علامتي اقتباس مزدوجتين. ضعوا النص بين علامتين مفردتين.',
};

export const findingsInArabic: FindingSentences = {
  ...balanceInArabic,
  ...libraryFindingsInArabic,
  'file/unreadable': (f) => `لا يمكن فتح هذا الملف (${apart(f.reason)}). تحقّقوا من أنه موجود ومن أن لكم أن تقرؤوه.`,
  'file/empty': () => `هذا الملف فارغ. ابدؤوا بـ ${written('bookfellow new')} أو انسخوا دليلًا يعمل.`,
  'file/too-big': (f) => `حجم هذا الملف ${String(f.kilobytes)} كيلوبايت؛ وأقصى ما للدليل ${String(f.most)} كيلوبايت. هل فيه نص الكتاب؟ مكان ذلك ${apart('private/passage.txt')}.`,
  'file/encoding': (f) => `هذا الملف غير محفوظ بترميز UTF-8 (الموجود: ${apart(f.found)}). احفظوه من جديد بترميز UTF-8.`,
  'file/control-character': (f) => `هنا حرف خفيّ (${apart(f.character)}) قد يفسد الصفحات. امحوه واكتبوا الكلمة من جديد.`,
  'file/link': (f) => `${quoted(f.name)} رابط إلى مكان آخر على القرص. ضعوا الملف نفسه هنا؛ فالروابط لا تُتبع.`,
  'file/not-a-file': (f) => `${quoted(f.name)} ليس ملفًا عاديًا. الدليل ملف نصي اسمه ${apart('pack.md')}.`,
  'folder/name': (f) => `اسم المجلّد ${quoted(f.folder)} لا يصلح عنوانًا على الشبكة. غيّروه إلى ${quoted(f.suggestion)}.`,
  'folder/no-pack': (f) => `ليس في المجلّد ${quoted(f.folder)} ملف ${apart('pack.md')}. أضيفوا واحدًا، أو انقلوا المجلّد من هنا.`,
  'front-matter/missing': () => `رأس الملف ناقص: يجب أن يبدأ الملف بسطر ${written('---')}، ثم حقول مثل ${written('title: …')}، ثم سطر ${written('---')}.`,
  'front-matter/unclosed': () => `ليس لرأس الملف نهاية. أضيفوا سطر ${written('---')} بعد الحقل الأخير.`,
  'front-matter/not-yaml': (f) => `ليس في سطر الشرطات إلا ${written('---')}؛ ومكتوب فيه ${quoted(f.found)}. لا يُقرأ إلا YAML البسيط، ولا يُشغَّل شيء.`,
  'yaml/syntax': (f) => yamlProblems[f.problem] ?? 'لا يمكن قراءة رأس الملف من هنا فصاعدًا. ابحثوا عن علامة اقتباس ناقصة أو سطر غير مصطفّ.',
  'yaml/duplicate': (f) => `الحقل ${written(f.field)} مكتوب هنا مرة ثانية. أبقوا واحدًا من الاثنين.`,
  'yaml/alias': (f) => `${written(`*${f.name}`)} يكرّر جزءًا آخر من الملف بالإحالة إليه، والأدلّة لا تستعمل ذلك. اكتبوا النص كاملًا.`,
  'yaml/tag': (f) => `${written(f.tag)} علامة نوع، والأدلّة لا تستعملها. ضعوا النص بين علامتي اقتباس مزدوجتين، أو احذفوا العلامة.`,
  'yaml/too-deep': (f) => `القوائم والمجموعات هنا بعضها داخل بعض بأكثر من ${count(f.most, nouns.level, 'object')}. لا يحتاج الدليل إلى أكثر من ستة.`,
  'yaml/too-many': (f) => `بين سطري الشرطات أكثر من ${String(f.most)} من الحقول والبنود. في الدليل الكامل نحو أربعمئة، فانظروا هل نُسخ شيء مرات كثيرة.`,
  'pack/unknown-field': (f) => `${written(f.field)}${within(f.within)} ليس من حقول الدليل، فلا يُلتفت إليه. احذفوه أو تحقّقوا من كتابته.`,
  'pack/misspelt-field': (f) => `${written(f.field)}${within(f.within)} ليس من حقول الدليل.${meant(f.suggestion)}`,
  'pack/missing-field': (f) => `الحقل ${written(f.field)}${within(f.within)} ناقص. أضيفوا سطرًا ${written(`${f.field}: …`)}.`,
  'pack/empty-field': (f) => `الحقل ${written(f.field)} فارغ. املؤوه، أو احذفوا السطر.`,
  'pack/wrong-type': (f) => `يجب أن يكون ${written(f.field)} ${kinds[f.expected]}، والمكتوب هنا ${found(f.found)}.`,
  'pack/not-a-choice': (f) => `لا يصحّ ${quoted(f.found)} في ${written(f.field)}.${meant(f.suggestion)} ما يصحّ: ${either(f.choices.map(apart))}.`,
  'pack/out-of-range': (f) =>
    f.least !== undefined ? `يجب أن يكون ${written(f.field)} ${String(f.least)} أو أكثر؛ وهو ${apart(f.found)}.` : `يجب أن يكون ${written(f.field)} ${String(f.most)} أو أقل؛ وهو ${apart(f.found)}.`,
  'pack/too-long': (f) => `${written(f.field)} أطول مما يجوز: ${String(f.length)}، وأقصى ما يكون ${String(f.most)}. اختصروه.`,
  'pack/bad-format': (f) => `مكتوب في ${written(f.field)}: ${quoted(f.found)}، وليس هذا هو الشكل المطلوب. اكتبوه هكذا: ${apart(f.example)}`,
  'pack/language-of-file': (f) => `اسم هذا الملف يقول ${quoted(f.file)}، ولغته ${quoted(f.language)}. اجعلوا الاثنين متفقين.`,
  'pack/unknown-language': (f) => `ليس في المكتبة صفحات باللغة ${quoted(f.language)}. أضيفوها إلى ${written('languages')} في ${apart('library.yaml')}، أو تحقّقوا من رمزها.`,
  'pack/two-of-a-language': (f) => `هذا الدليل و${apart(f.other)} كلاهما باللغة ${quoted(f.language)}. أبقوا واحدًا من الاثنين.`,
  'pack/blank': (f) => (f.field === '' ? 'هذا الجزء من النص ما زال فراغًا.' : `${written(f.field)} ما زال فراغًا.`) + ' اكتبوا نصّكم مكان « … »، أو احذفوه.',
  'more/of-the-same': (f) => `… و${String(f.more)} غيرها من النوع نفسه (${apart(f.code)}).`,
  'body/too-long': (f) => `في النص الذي تحت رأس الملف ${count(f.found, nouns.letter)}؛ وأقصى ما للدليل ${String(f.most)}، والمعتاد 1000. ما كان بهذا الطول قد يكون خطأ في اللصق. اختصروه.`,
  'body/too-deep': (f) => `القوائم أو الاقتباسات بعضها داخل بعض بأكثر من ${count(f.most, nouns.level, 'object')}. اجعلوها أقل.`,
  'body/comment': () => `هذه الملاحظة (${apart('<!-- … -->')}) لا تظهر في الصفحات.`,
  'body/comment-unclosed': () => `هنا تبدأ ملاحظة بـ ${written('<!--')} ولا تنتهي. أضيفوا ${written('-->')} حيث تنتهي.`,
  'body/link-refused': (f) => `الرابط ${quoted(f.link)} يظهر نصًّا فقط. يجوز أن تبدأ الروابط بـ ${either(['https:', 'http:', 'mailto:', 'tel:'].map(apart))}، أو أن توصل إلى صفحة من هذا الموقع.`,
  'body/picture-not-listed': (f) => `الصورة ${quoted(f.picture)} التي في النص ليست في القائمة ${written('pictures')}. أضيفوها هناك مع وصفها.`,
  ...altTextInArabic,
  'picture/missing-file': (f) => `لا توجد صورة ${quoted(f.picture)} في المجلّد ${apart('pictures/')}.${meant(f.suggestion)}`,
  'picture/not-named': (f) => `الصورة ${quoted(f.picture)} في المجلّد، ولا يذكرها أي حقل، فلا تُنشر. أضيفوها إلى ${written('pictures')}، أو احذفوها.`,
  'picture/format': (f) => `${quoted(f.picture)} ليست صورة PNG أو JPEG أو WebP. احفظوها بواحد من هذه الأنواع.`,
  'picture/too-large': (f) => `أبعاد ${quoted(f.picture)} هي ${apart(`${String(f.width)} × ${String(f.height)}`)} بكسل؛ ولا يجوز أن يزيد أي بُعد على ${String(f.most)}. صغّروها.`,
  'picture/unreadable': (f) => `لا يمكن فتح ${quoted(f.picture)} صورةً؛ قد تكون معطوبة. احفظوها من جديد.`,
  'picture/unknown-stop': (f) => `الصورة ${quoted(f.picture)} للوقفة ${quoted(f.stop)}، وهي ليست في هذا الدليل.`,
  'recording/none': () => `لهذه الوقفة وقت في تسجيل، والدليل لا يذكر تسجيلًا. أضيفوا ${written('recording')} مع ملفه أو رابطه، أو احذفوا الوقت.`,
  'recording/nothing-to-play': () => `ليس للتسجيل ${written('file')} في المجلّد ${apart('recording/')} ولا ${written('link')} إلى مكان حفظه. أضيفوا واحدًا من الاثنين.`,
  'recording/missing-file': (f) => `لا يوجد ملف ${quoted(f.file)} في المجلّد ${apart('recording/')}.${meant(f.suggestion)}`,
  'recording/format': (f) => `${quoted(f.file)} ليس فيلم WebM أو MP4. احفظوه بواحد من هذين النوعين.`,
  'recording/too-large': (f) =>
    `حجم ${quoted(f.file)} هو ${String(f.megabytes)} ميغابايت؛ وأقصى ما يجوز ${String(f.most)}. صغّروا الصورة، أو اتركوا الفيلم حيث تحفظ المدرسة أفلامها واذكروا ${written('link')}.`,
  'recording/no-captions': (f) => `ليس لـ ${quoted(f.file)} نص مرافق، فيُحرم منه الطفل الذي لا يسمعه. أضيفوا ملف WebVTT واذكروه في ${written('captions')}.`,
  'recording/captions-unreadable': (f) =>
    `لا يمكن قراءة النص المرافق ${quoted(f.file)} عند السطر ${String(f.line)}: ${
      {
        'no header': `يجب أن يكون السطر الأول ${written('WEBVTT')}`,
        times: `تُكتب الأوقات هكذا ${written('00:01:05.000 --> 00:01:08.000')}، والثاني بعد الأول`,
        order: 'يبدأ مقطع قبل المقطع الذي فوقه',
        empty: 'لا نص فيه',
      }[f.why]
    }.`,
  'recording/captions-too-fast': (f) =>
    `${f.count === 1 ? 'مقطع واحد من النص المرافق تصعب قراءته في وقته، وهو' : `مقاطع من النص المرافق تصعب قراءتها في وقتها، وعددها ${String(f.count)}؛ أولها`} في السطر ${String(f.line)} من ${quoted(f.file)}. أعطوا كل مقطع ثانيتين، ولا أكثر من ${String(f.most)} كلمة في الدقيقة.`,
  'recording/out-of-order': (f) => `في التسجيل تأتي الوقفة ${quoted(f.stop)} عند ${apart(f.time)}، قبل الوقفة التي فوقها. تحقّقوا من الأوقات.`,
  'stop/duplicate-id': (f) => `الاسم القصير ${written(f.id)} مستعمل من قبل للوقفة التي في السطر ${String(f.firstLine)}. أعطوا كل وقفة اسمًا لها وحدها.`,
  'stop/unknown-reference': (f) => `يذكر ${written(f.field)} الوقفة ${quoted(f.id)}، وهي ليست في هذا الدليل.${meant(f.suggestion)}`,
  'stop/after-itself': (f) => `يلزم أن تأتي الوقفة ${quoted(f.id)} بعد نفسها. غيّروا واحدًا من أسطر ${written('after')}.`,
  'stop/opening-past-the-end': (f) => `الوقفة ${quoted(f.id)} عند الصفحة المزدوجة ${String(f.opening)}، وعدد الصفحات المزدوجة في الكتاب ${String(f.openings)}.`,
  'reading/unknown': (f) => `القراءة ${String(f.reading)} ليست في القائمة ${written('readings')}. أضيفوها هناك مع غرضها.`,
  'frames/missing': (f) => `يكتب الأطفال عند الوقفة ${quoted(f.stop)}، وليس لها جمل للإكمال. جملتان أو ثلاث تساعد من لا يعرف كيف يبدأ.`,
  'models/missing': (f) =>
    `${f.found === 0 ? `ليس للوقفة ${quoted(f.stop)} إجابة نموذجية` : `ليس للوقفة ${quoted(f.stop)} إلا إجابة نموذجية واحدة`}. أعطوا اثنتين، إحداهما قصيرة، لتُقيَّم الإجابات بالمقياس نفسه.`,
  'best-of/how-many': (f) => `في ${written('best of')} ${count(f.found, nouns.book)}. يستطيع الطفل أن يختار من ${String(f.least)} إلى ${String(f.most)}.`,
  ...lookFindingsInArabic,
  'best-of/twice': (f) => `يذكر ${written('best of')} الكتاب ${quoted(f.book)} مرتين، فلا يعرف أحد أيّ الاثنين اختير. اذكروا كل كتاب مرة واحدة.`,
  'home/too-many-prompts': (f) => `الأسئلة للبيت عددها ${String(f.found)}. اختاروا أفضل ${String(f.most)} منها؛ فللأسرة عشر دقائق.`,
  ...passageFindingsInArabic,
  ...privacyFindingsInArabic,
  'text/too-hard': (f) => `نص الأسر يُقرأ كنص ${gradesFromTo(f.low, f.high)}، تقديرًا. الهدف هو الصف 6: جمل أقصر، وكلمات من كل يوم. ${linesThatCost(f.lines)}ثم اطلبوا من أحد الوالدين أن يقرأه.`,
  'text/low-ease': (f) =>
    `نص الأسر ${quoted(f.band)} في سلّم INFLESZ، تقديرًا. الهدف هو ${quoted('bastante fácil')}: جمل أقصر، وكلمات من كل يوم. ${linesThatCost(f.lines)}ثم اطلبوا من أحد الوالدين أن يقرأه.`,
  'paper/no-program': (f) => `لم تُصنع أوراق الطباعة (PDF): البرنامج الذي يصنعها لا يعمل على هذا النوع من الأجهزة (${apart(f.machine)}). الموقع كامل من دونها، ويمكن طباعة صفحاته من المتصفح.`,
  'paper/not-made': (f) => `تعذّر صنع الورقة ${quoted(f.sheet)} ملفَّ PDF (${apart(f.reason)}). يمكن طباعة الصفحة من المتصفح. أخبروا من يتولّى هذا البرنامج.`,
  'paper/letters': (f) => `ليس في خطوط الأوراق المطبوعة أشكال لهذه الأحرف: ${apart(f.characters)}. تُترك على الورق، وتظهر في الصفحات.`,
  'plan/over-minutes': (f) =>
    `تستغرق القراءة الأولى مع كل وقفاتها نحو ${count(f.planned, nouns.minute, 'object')}، و${written('minutes')} تقول ${String(f.minutes)}. ضعوا فيها وقفات أقل، أو أعطوها وقتًا أكثر.`,
};
