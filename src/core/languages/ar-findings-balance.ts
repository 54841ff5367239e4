/** The Arabic sentences of the checks of balance and fit: what a kind colleague would say, and what to write instead. */
import { count, either, listed, nouns, quoted, written } from './arabic-words.ts';
import type { balanceInEnglish } from './en-findings-balance.ts';

const deep = {
  prompt: 'لا سؤال يبلغ العمق 3، حيث يستنتج الأطفال. يكفي سؤال واحد بـ «لماذا» مع ما يدلّ على ذلك في الكتاب.',
  model: 'لا سؤال في العمق 3 له إجابة نموذجية. اكتبوا واحدة تسمّي ما يدلّ عليها في الكتاب، لتعرفوا إلى ماذا تنتبهون.',
  evidence: 'لا إجابة نموذجية في العمق 3 تشير إلى الكتاب. أضيفوا واحدة مثل «…، وفي الصورة …» أو «…، والكتاب يقول …».',
};
const shows = {
  sentence: 'اجعلوا لها بداية جملة وعلامة في آخرها وثلاث كلمات على الأقل',
  reason: 'أضيفوا السبب، بكلمة مثل «لأنّ» أو «لذلك» أو «بما أنّ»',
  book: 'سمّوا ما سُمع أو شوهد، كما في «الكتاب يقول …» أو «في الصورة …»',
  word: `استعملوا كلمة يقدّمها الدليل، أو ضعوا الكلمة في ${written('words')} أو ${written('allow words')}`,
};

export const balanceInArabic: typeof balanceInEnglish = {
  'balance/few-kinds': (f) =>
    `الوقفات كلها من ${count(f.found, nouns.kind, 'object')} فقط. يجيب الأطفال بطرق أكثر حين تكون الأنواع ${String(f.least)} أو أكثر، مثل توقّع، وسؤال بـ «لماذا»، وشيء من حياتهم.`,
  'balance/no-own-life': () => `لا وقفة تمسّ حياة الأطفال أنفسهم. بوقفة فيها ${written('kind: own life')} أو ${written('about: me')} يجد الطفل غير الواثق من القصة شيئًا يقوله.`,
  'balance/mostly-completion': (f) => `${String(f.found)} من ${count(f.stops, nouns.stop, 'object')} تطلب من الأطفال أن يملؤوا كلمات ناقصة. من الصف الأول فصاعدًا اجعلوا أكثر الوقفات تسأل عن فكرة.`,
  'balance/mostly-recall': (f) => `${String(f.found)} من ${count(f.of, nouns.question, 'object')} تسأل عمّا حدث (العمق 1). الثلث يكفي وزيادة: اجعلوا واحدًا أو اثنين منها يسأل «لماذا» أو «كيف عرفتم».`,
  'balance/no-deep-prompt': (f) => deep[f.missing],
  'balance/few-why': (f) =>
    `${String(f.found)} من ${count(f.of, nouns.question, 'object')} تسأل «لماذا» أو «كيف»، أو تتسع لأكثر من إجابة. اثنان من كل خمسة هدف جيد؛ فمثل هذه الأسئلة تأتي بإجابات أطول.`,
  'balance/few-ways': (f) =>
    `يجيب الأطفال ${f.found < 3 ? 'ب' : 'بـ '}${count(f.found, nouns.way, 'object')} فقط. حين تكون ${String(f.least)} أو أكثر، كالقول والرسم والتمثيل، يجد عدد أكبر منهم ما يناسبه.`,
  'balance/only-own-feelings': () => `كل المشاعر التي يُسأل عنها مشاعر الأطفال أنفسهم. أضيفوا وقفة فيها ${written('about: character')}، في الكتاب ما يدلّ فيها على الشعور.`,
  'reading/no-why': (f) => `ليس في القراءة ${String(f.reading)} سؤال بـ «لماذا» أو «كيف». سؤال كهذا قرب نهايتها يعطي القراءة ما يُفكَّر فيه.`,
  'reading/many-first-stops': (f) => `في القراءة الأولى ${count(f.found, nouns.stop)}. إن كانت ${String(f.most)} أو أقل سمع الأطفال القصة أولًا؛ و${written('readings: [2]')} تنقل وقفة إلى يوم لاحق.`,
  'reading/first-has-most': (f) =>
    `في القراءة الأولى وقفات (${String(f.first)}) أكثر مما في الثانية (${String(f.second)}). يزداد كلام الأطفال كلما عرفوا القصة: هل يمكن أن تنتظر وقفة إلى القراءة الثانية؟`,
  'reading/hands-twice': (f) => `في القراءة ${String(f.reading)} يكتب الأطفال أو يرسمون عند ${quoted(f.first)} ثم مباشرة عند ${quoted(f.second)}. دعوهم في إحداهما يتكلمون أو يتحركون.`,
  'stop/needs-handwriting': (f) =>
    `عند ${quoted(f.stop)} لا طريقة للإجابة لطفل لا يكتب بعد. أضيفوا سطرًا ${written('or: say')} (أو ${written('draw')} أو ${written('act')} أو ${written('partner')})؛ وما يقال أو يُملى له القيمة نفسها.`,
  'stop/needs-a-pencil': (f) => `عند ${quoted(f.stop)} يحتاج كل طفل إلى قلم. أضيفوا سطرًا ${written('or: say')} لمن يفضّل أن يحكي ماذا كان سيرسم.`,
  'stop/no-seated-way': (f) => `الإجابة عند ${quoted(f.stop)} بالتمثيل. أضيفوا سطرًا ${written('seated: …')} يقول كيف تُمثَّل على الكرسي، باليدين أو بالوجه.`,
  'stop/too-close': (f) =>
    `${f.words < 1 ? 'لا يكاد يُقرأ شيء' : `${f.estimated ? 'تقديرًا، يُقرأ نحو' : 'لا يُقرأ إلا'} ${count(f.words, nouns.word, f.estimated ? 'object' : 'subject')}`} بين ${quoted(f.before)} و${quoted(f.stop)}. تبقى القصة متصلة إن كانت الكلمات ${String(f.least)} أو أكثر؛ هل يمكن أن تنتقل إحداهما، أو تنتظر قراءة أخرى؟`,
  'stop/too-early': (f) => `تأتي ${quoted(f.stop)} قبل أن تبدأ القصة. لا ينفع في هذا الوقت المبكر إلا توقّع ما سيأتي؛ انقلوها صفحة أو صفحتين إلى الأمام.`,
  'stop/at-the-end': (f) => `تقع ${quoted(f.stop)} في آخر الكتاب تمامًا. دعوا الأطفال يسمعون النهاية، وقدّموا السؤال، أو انقلوه إلى ${written('questions')}، لما بعد الكتاب.`,
  'stop/short-wait': (f) => `وقت الانتظار عند ${quoted(f.stop)} هو ${count(f.wait, nouns.second)}. أعطوا ${String(f.least)} أو أكثر: ففي الصمت يجد أكثر الأطفال إجابتهم.`,
  'stop/depth-four-must': (f) => `${quoted(f.stop)} وقفة لا تُترك وعمقها 4، أي أنها تتجاوز كتابًا واحدًا. أبقوها عرضًا، ولتكن الوقفة التي لا تُترك من العمق 3.`,
  'stop/deep-word-first': (f) => `تأتي الكلمة ${quoted(f.word)} عند ${quoted(f.first)} مع سؤال أصعب مما عند ${quoted(f.later)}. اطرحوا الأسهل أولًا، ما دامت الكلمة جديدة.`,
  'stop/no-about': (f) => `لا تقول ${quoted(f.stop)} عن شعور مَن تسأل. أضيفوا ${written('about: character')} (في الكتاب ما يدلّ عليه) أو ${written('about: me')} (كل إجابة صحيحة).`,
  'stop/no-evidence-asked': (f) => `تسأل ${quoted(f.stop)} بماذا تشعر شخصية، ولا تسأل كيف نعرف ذلك. أضيفوا «كيف عرفتم؟»`,
  'ask/family-trouble': (f) => `قد يجعل هذا السؤال طفلًا يحكي للصف عن متاعب في البيت (${quoted(f.words)}). اسألوا عن الشخصية، أو عن شيء صغير من حياة الطفل، وليكن لكل طفل أن يترك السؤال.`,
  'frames/too-many-blanks': (f) => `في ${quoted(f.frame)} ${count(f.found, nouns.blank)}. لا يحفظ الأطفال في أذهانهم أكثر من ${String(f.most)}؛ قسموا الجملة أو املؤوا فراغًا.`,
  'frames/article-before-blank': (f) => `في ${quoted(f.frame)} تقف ${quoted(f.article)} قبل فراغ مباشرة، وهذا يمنع كلمات جيدة. اكتبوا ${quoted(`${f.instead} ___`)} أو اتركوا الأداة للطفل.`,
  'frames/not-first-person': (f) => `هذه الوقفة عن الطفل نفسه، و${quoted(f.frame)} تتكلم عن غيره. ابدؤوها بلسان الطفل: «أنا» أو «لي» (بلغة الدليل).`,
  'frames/own-feeling-for-character': (f) => `هذه الوقفة عن شخصية، و${quoted(f.frame)} تتكلم عن الطفل. ابدؤوها باسم الشخصية، أو «هو» أو «هي» أو «هم» (بلغة الدليل).`,
  'models/fits-no-frame': (f) => `لا توافق ${quoted(f.model)} أيًّا من جمل الإكمال في ${quoted(f.stop)}. صوغوها كما يقولها طفل يستعمل واحدة منها، أو أضيفوا الجملة التي تحتاج إليها.`,
  'models/does-not-show': (f) => `مكتوب أن هذه الإجابة النموذجية تُظهر ${quoted(f.trait)}، ولا يُرى ذلك في ${quoted(f.model)}. ${shows[f.lacks]}، أو احذفوا السمة.`,
  'models/unknown-trait': (f) =>
    `${quoted(f.trait)} ليست من سمات هذا الدليل (${written('rubric')}).${f.suggestion === undefined ? ' أضيفوها هناك، أو احذفوها هنا.' : ` هل قصدتم ${quoted(f.suggestion)}؟`}`,
  'models/alike': (f) => `عند ${quoted(f.stop)} إجابتان نموذجيتان متطابقتان: ${quoted(f.model)}. غيّروا إحداهما، لتُظهرا طريقتين للإصابة.`,
  'models/no-short-one': (f) =>
    `أقصر إجابة نموذجية عند ${quoted(f.stop)} فيها ${count(f.shortest, nouns.word)}. أضيفوا واحدة لا تزيد على ${count(f.most, nouns.word, 'object')}، كي لا تُحسب الإجابة القصيرة إجابة ضعيفة.`,
  'home/needs-the-book': (f) => `يحتاج ${quoted(f.words)} إلى الكتاب، وليس الكتاب عند أكثر الأسر. اسألوا عمّا يتذكّره الطفل.`,
  'home/example-length': (f) => `في مثال البيت ${count(f.found, nouns.line)}. الأفضل ${String(f.wanted)}: ما يسأله الكبير، وما يقوله الطفل، والإجابة معادة مع زيادة قليلة.`,
  'aims/no-prompt': (f) => `لا سؤال يتدرّب على الهدف ${quoted(f.skill)}. أضيفوا وقفة فيها ${either(f.kinds.map((kind) => written(`kind: ${kind}`)))}، أو اتركوا الهدف.`,
  'feelings/no-entry': (f) =>
    `في الكلمات المساعدة عند ${quoted(f.stop)}: ${listed(f.words.map(quoted))}، بلا مدخل في ${written('feelings')}. أضيفوا قريبه من المشاعر وشدّته وموقفًا في سطر واحد؛ فالحكاية الصغيرة تبيّن الشعور أكثر مما يبيّنه وجه.`,
  'feelings/situation-names-word': (f) => `الموقف المكتوب لـ ${quoted(f.word)} يسمّي الشعور. احكوا ما يحدث فقط، ودعوا الأطفال يجدون الكلمة.`,
  'words/meaning-uses-word': (f) => `شرح ${quoted(f.word)} يستعمل الكلمة نفسها. قولوه بكلمات يعرفها الأطفال من قبل، كما في «إذا كنت …، فأنت …».`,
  'words/long-meaning': (f) => `في شرح ${quoted(f.word)} ${count(f.found, nouns.word)}. يحفظ الأطفال شرحًا لا يزيد على ${String(f.most)}.`,
  'words/too-many': (f) => `تُعلَّم مع هذا الكتاب ${count(f.found, nouns.word)}. اختاروا أنفع ${String(f.most)} منها؛ اثنتان أو ثلاث بعمق، والباقي مرورًا.`,
  'care/no-note': (f) =>
    `الكلمة ${quoted(f.word)} ${f.where === 'pack' ? 'مكتوبة هنا' : 'في نص الكتاب'}، وليس في الدليل ملاحظة عناية (${written('care')}). أضيفوا واحدة: أي صفحة قد تمسّ طفلًا، وماذا يُفعل عندئذ.`,
};
