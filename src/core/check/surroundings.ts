/** What a check may know beyond the pack itself. Nothing of it is published. */
export interface Surroundings {
  /** Names from `private/roster.txt`, as written there: `Ana`, `Ana Quillón`, `Quillón, Ana`. `unread` where there is a roster that cannot be read. */
  readonly roster: readonly string[] | 'unread';
  /** The day on which the check runs, `2026-09-01`; undefined where nobody says, and then no rule speaks of dates. */
  readonly today: string | undefined;
  /** The line of `library.yaml` that says who may be asked. What stands there is meant to be public. */
  readonly contact: string;
  /** The private text of the book without its opening marks. A finding may name a number or a single word of it, and no more. */
  readonly passage?: string | undefined;
}

/** A pack looked at by itself: in the form that makes packs, and in tests. */
export const nothingAround: Surroundings = { roster: [], today: undefined, contact: '' };
