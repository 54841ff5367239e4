import { lessonInEnglish } from '../core/languages/en-lesson.ts';
import { startLesson } from './lesson.tsx';

/** The lesson page's script in English: a page carries the phrases of its own language and no others. */
startLesson(lessonInEnglish);
