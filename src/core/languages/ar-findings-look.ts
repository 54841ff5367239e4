import type { FactsOf } from '../finding.ts';
import { apart, listed, quoted, written } from './arabic-words.ts';
import type { lookFindingsInEnglish } from './en-findings-look.ts';

const logoProblems: Readonly<Record<FactsOf['library/logo']['problem'], string>> = {
  missing: `ليس بجانب ${apart('library.yaml')}`,
  format: 'ليس صورة PNG أو JPEG أو WebP',
  unreadable: 'لا يمكن فتحه صورةً',
  'too large': 'أكبر مما يجوز لصورة',
};

/** How a library looks, in Arabic: findings about `library.yaml` and the library's own layouts. */
export const lookFindingsInArabic: typeof lookFindingsInEnglish = {
  'library/contrast': (f) =>
    `اللون ${written(f.field)}، وهو ${apart(f.found)}، تباينه مع لون الورق ${apart(f.paper)} ${apart(`${String(f.ratio)} : 1`)}؛ ويحتاج النص إلى ${apart(`${String(f.least)} : 1`)} ليقرأه الجميع (${apart('WCAG 2.2, AA')}). ${f.nearest === '' ? 'اختاروا ورقًا أفتح أو أغمق.' : `أقرب لون يمكن أن يُقرأ هو ${quoted(f.nearest)}.`} وحتى ذلك الحين تُستعمل الألوان المعتادة.`,
  'library/logo': (f) => `الشعار ${quoted(f.file)} ${logoProblems[f.problem]}. وإلى أن يُصلَح ذلك تبقى الصفحات بلا شعار.`,
  'library/logo-alt': (f) =>
    `ليس للشعار وصف بهذه اللغات: ${listed(f.languages.map(apart))}. قولوا بكل لغة ماذا يُظهر، أو اكتبوا ${written('decorative: true')} إن كان الاسم الذي بجانبه يقول كل شيء. وحتى ذلك الحين تبقى الصفحات بلا شعار.`,
  'library/layout': (f) => `${layoutProblem(f)} وإلى أن يُصلَح ذلك يُستعمل الجزء المعتاد (${apart(f.part)}).`,
};

function layoutProblem({ part, problem, detail }: FactsOf['library/layout']): string {
  switch (problem) {
    case 'missing':
      return `يذكر ${written('layouts')} الجزء ${apart(part)}، ولا يوجد ملف ${apart(`layouts/${part}.tsx`)}.`;
    case 'syntax':
      return `لا يمكن قراءة هذا على أنه TSX: ${apart(detail)}.`;
    case 'import':
      return `لا يمكن استيراد ${quoted(detail)} هنا. يجوز للقالب أن يستورد ${written('bookfellow/layouts')} ولا شيء غيره.`;
    case 'no function':
      return `ليس في هذا الملف ${written('export default function')} تأخذ صفحة وتعيد ما يقف فيها.`;
    case 'failed':
      return `تعطّل القالب: ${apart(detail)}`;
    case 'refused':
      return `لا يجوز أن يكون ${apart(detail)} في قالب: ليس في الصفحة برامج نصية أو أنماط أو صور غير ما للموقع.`;
    case 'no heading':
      return `تحتاج بداية الصفحة الأولى إلى ${written('<h1>')} واحد، وفي هذه ${apart(detail)}.`;
    case 'link':
      return `الرابط ${quoted(detail)} لا يوصل إلى أي صفحة من الموقع. اصنعوه بـ ${written('linkFrom(page.url, …)')}.`;
  }
}
