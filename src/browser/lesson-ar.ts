import { lessonInArabic } from '../core/languages/ar-lesson.ts';
import { lessonInEnglish } from '../core/languages/en-lesson.ts';
import { filledUp } from '../core/languages/unfinished.ts';
import { startLesson } from './lesson.tsx';

/** The lesson page's script in Arabic; a phrase that is missing is said in English. */
startLesson(filledUp(lessonInEnglish, lessonInArabic));
