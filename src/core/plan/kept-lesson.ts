/**
 * What a teacher keeps of a lesson, on the device and nowhere else: how long each part was to take and took.
 * Numbers only. Nothing in it is about a child, and who spoke is nowhere written down.
 */

export interface KeptPart {
  /** `opening`, `closing`, or a stop's id. */
  readonly key: string;
  /** Whole seconds. */
  readonly planned: number;
  readonly took: number;
}

export interface KeptLesson {
  readonly version: 1;
  readonly pack: string;
  readonly language: string;
  /** Day of the lesson, `2026-11-30`. */
  readonly day: string;
  readonly reading: number;
  /** Minutes there were. */
  readonly minutes: number;
  readonly parts: readonly KeptPart[];
  /** Children in the room, and how many of them spoke; missing where nobody counted. */
  readonly children?: number;
  readonly heard?: number;
}

/** The most lessons that are kept: when there are more, the oldest go. */
export const mostKept = 60;

/** What a text that was kept holds. What is not a lesson of this version is passed over, and nothing is thrown. */
export function readKept(text: string | null): readonly KeptLesson[] {
  if (text === null) return [];
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return [];
  }
  return Array.isArray(value) ? value.filter(isKept) : [];
}

/** The text with one lesson more. */
export function keep(kept: readonly KeptLesson[], lesson: KeptLesson): string {
  return JSON.stringify([...kept, lesson].slice(-mostKept));
}

/** The text without the lessons of one pack; undefined when nothing is left. */
export function without(kept: readonly KeptLesson[], pack: string): string | undefined {
  const rest = kept.filter((each) => each.pack !== pack);
  return rest.length === 0 ? undefined : JSON.stringify(rest);
}

function isKept(value: unknown): value is KeptLesson {
  if (typeof value !== 'object' || value === null) return false;
  const { version, pack, language, day, reading, minutes, parts, children, heard } = value as Record<keyof KeptLesson, unknown>;
  return (
    version === 1 &&
    typeof pack === 'string' &&
    typeof language === 'string' &&
    typeof day === 'string' &&
    /^\d{4}-\d{2}-\d{2}$/.test(day) &&
    isCount(reading) &&
    isCount(minutes) &&
    Array.isArray(parts) &&
    parts.every(isPart) &&
    (children === undefined || isCount(children)) &&
    (heard === undefined || isCount(heard))
  );
}

function isPart(value: unknown): value is KeptPart {
  if (typeof value !== 'object' || value === null) return false;
  const { key, planned, took } = value as Record<keyof KeptPart, unknown>;
  return typeof key === 'string' && isCount(planned) && isCount(took);
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}
