import type { KeptPicture } from './storage.ts';

/** What the desk begins with: a text, and what is known of it from before. */
export interface Opening {
  readonly id: string;
  readonly text: string;
  /** The name of its file; `pack.md` where nobody says. */
  readonly fileName?: string;
  readonly earlier?: readonly string[];
  readonly pictures?: readonly KeptPicture[];
  readonly passage?: string;
  /** The text of another language that stands beside this one. */
  readonly beside?: string;
  /** Set for what has been kept before, so that looking at it changes nothing: the count of its record. */
  readonly revision?: number;
}
