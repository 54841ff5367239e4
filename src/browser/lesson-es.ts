import { lessonInSpanish } from '../core/languages/es-lesson.ts';
import { startLesson } from './lesson.tsx';

/** The lesson page's script in Spanish. */
startLesson(lessonInSpanish);
