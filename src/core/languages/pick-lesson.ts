import { lessonInEnglish, type LessonPhrases } from './en-lesson.ts';
import { lessonInSpanish } from './es-lesson.ts';

/** The lesson's phrases apart from all others, so that the page's script carries these and no more. */
const catalogues: Readonly<Record<string, LessonPhrases>> = { en: lessonInEnglish, es: lessonInSpanish };

/** The lesson's phrases in a language, or in English where there are none yet. */
export function lessonPhrasesFor(language: string): LessonPhrases {
  return catalogues[language.split('-')[0] ?? ''] ?? lessonInEnglish;
}
