import { keep, readKept, without, type KeptLesson } from '../core/plan/kept-lesson.ts';

/** Where kept lessons lie: in this browser's own store, under one name. Nothing is written before somebody presses the button. */
const name = 'bookfellow lessons 1';

/** Every lesson kept; none where the browser keeps nothing. */
export function keptLessons(): readonly KeptLesson[] {
  try {
    return readKept(localStorage.getItem(name));
  } catch {
    return [];
  }
}

/** Keeps one more; false where the browser does not let it, or has no room. */
export function keepLesson(lesson: KeptLesson): boolean {
  try {
    localStorage.setItem(name, keep(keptLessons(), lesson));
    return true;
  } catch {
    return false;
  }
}

/** Erases what was kept of one pack, and the whole entry when nothing else is in it. */
export function eraseLessons(pack: string): void {
  try {
    const rest = without(keptLessons(), pack);
    if (rest === undefined) localStorage.removeItem(name);
    else localStorage.setItem(name, rest);
  } catch {
    // A store that cannot be opened holds nothing of ours.
  }
}
