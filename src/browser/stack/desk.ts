import { localeOf } from '../../core/languages/about-language.ts';
import type { enBookletFile } from '../../core/languages/en-booklet-file.ts';
import type { enBookletScreen } from '../../core/languages/en-booklet-screen.ts';
import type { Phrases } from '../../core/languages/en.ts';
import type { StackPhrases } from '../../core/languages/en-stack.ts';
import type { StackPack } from '../../core/pack/stack-pack.ts';
import type { Unreadable } from '../../core/booklet/read-booklet.ts';
import type { Scoring } from '../../classroom/judging.ts';
import type { ScoresFile, ScoringSheet } from '../../classroom/scoring-files.ts';
import { emptyStack, packBehind, packsAnswered, type Stack, type StackBooklet } from '../../classroom/stack.ts';

export const views = ['pile', 'look', 'judge', 'agree', 'tomorrow', 'take'] as const;
export type ViewName = (typeof views)[number];

/** A file that nobody could read. */
export interface SetAside {
  readonly file: string;
  readonly reason: Unreadable | 'unread';
}

/** All that lies on the desk. It lives in memory; `keep.ts` keeps it where a teacher says so. */
export interface DeskState {
  readonly stack: Stack;
  readonly aside: readonly SetAside[];
  readonly reading: { readonly done: number; readonly of: number } | undefined;
  /** The first scorer's own scores. */
  readonly scoring: Scoring;
  /** Colleagues' scores that have come back, a file for each. */
  readonly others: readonly ScoresFile[];
  /** A sheet that somebody else made: then this page is the second scorer's. */
  readonly sheet: ScoringSheet | undefined;
  readonly sheetScoring: Scoring;
  /** Keys of answers to read aloud, and of those that may be seen by others. */
  readonly aloud: readonly string[];
  readonly shared: readonly string[];
  /** What fell flat, by pack and stop. */
  readonly notes: Readonly<Record<string, string>>;
  readonly keeping: 'no' | 'yes' | 'full' | 'blocked';
  /** Which of the books on the desk is looked at. */
  readonly book: number;
}

export type StackWords = {
  readonly stack: StackPhrases;
  readonly booklet: typeof enBookletScreen & typeof enBookletFile;
} & Pick<Phrases, 'pictures' | 'strengths' | 'comma'>;

/** Sixteen random letters, in the manner of a booklet's own id. */
export function randomId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

const newScoring = (): Scoring => ({ steps: 1, seed: randomId(), scores: {} });

export function clearDesk(packs: readonly StackPack[]): DeskState {
  return {
    stack: { ...emptyStack, packs },
    aside: [],
    reading: undefined,
    scoring: newScoring(),
    others: [],
    sheet: undefined,
    sheetScoring: newScoring(),
    aloud: [],
    shared: [],
    notes: {},
    keeping: 'no',
    book: 0,
  };
}

/** The book that is looked at, with its booklets. */
export interface Here {
  readonly pack: StackPack;
  /** Whether its rubric and models are there. */
  readonly known: boolean;
  readonly booklets: readonly StackBooklet[];
}

/** The desk and what can be done at it. Every change is told to those who listen. */
export class Desk {
  state: DeskState;
  /** Key of the answer that is to be judged next, when somebody came for that one. */
  judging: string | undefined;
  /** What the next paper shows: the leaf that is open, the teacher's page, or the one for families. */
  onPaper: 'leaf' | 'teacher' | 'wall' = 'leaf';
  readonly #listeners = new Set<() => void>();

  constructor(
    /** The packs that came with the page. */
    readonly packs: readonly StackPack[],
    readonly words: StackWords,
    /** Language of the page. */
    readonly language: string,
    /** Says something to those who listen to the page, without moving anything. */
    readonly announce: (text: string) => void,
    readonly turnTo: (view: ViewName) => void,
  ) {
    this.state = clearDesk(packs);
  }

  set(change: Partial<DeskState>): void {
    this.state = { ...this.state, ...change };
    for (const listener of this.#listeners) listener();
  }

  listen(listener: () => void): void {
    this.#listeners.add(listener);
  }

  /** The pack that is looked at, and whether its rubric and models are known; undefined on a clear desk. */
  get here(): Here | undefined {
    const { stack, book } = this.state;
    const all = packsAnswered(stack);
    const name = all[Math.min(book, all.length - 1)];
    if (!name) return undefined;
    const booklets = stack.booklets.filter(({ booklet }) => booklet.pack.slug === name.slug && booklet.pack.language === name.language);
    return { ...packBehind(stack, name), booklets };
  }

  /** Prints a page of its own. */
  print(what: 'teacher' | 'wall'): void {
    this.onPaper = what;
    print();
  }

  /** A coefficient with two decimals, as the page's language writes it. */
  decimal(value: number): string {
    return new Intl.NumberFormat(localeOf(this.language), { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(value).replace('-', '−');
  }

  /** A booklet in words: its bookmark, and which of two with the same one it is. */
  markOf({ booklet: { bookmark }, copy }: StackBooklet): string {
    return this.words.stack.mark(this.words.booklet.screen.bookmark(bookmark.pattern, bookmark.colour), copy);
  }

  /** The language of a pack's own words, where it is not the page's. */
  langOf(pack: Pick<StackPack, 'language'>): string | undefined {
    return pack.language === this.language ? undefined : pack.language;
  }
}
