/**
 * A finding is something a check has to say about a pack. It is data: a code, a level, a place and
 * the facts. The words come last, in the author's language (`languages/*-findings.ts`).
 */

/** `stop` keeps the pack off the site, `warn` asks for a second look, `note` is good to know. */
export type Level = 'stop' | 'warn' | 'note';

/** Where in a file. `file` is relative to the content folder; `line` and `column` count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** What a field should have held, in words that a catalogue can translate. */
export type Expected = 'text' | 'number' | 'whole number' | 'list' | 'group' | 'yes or no';

/** The facts that go with each code. Adding a code here makes every language file ask for its sentence. */
export interface FactsOf {
  'file/unreadable': { readonly reason: string };
  'file/empty': Record<never, never>;
  'file/too-big': { readonly kilobytes: number; readonly most: number };
  'file/encoding': { readonly found: string };
  'file/control-character': { readonly character: string };
  'file/link': { readonly name: string };
  'file/not-a-file': { readonly name: string };
  'folder/name': { readonly folder: string; readonly suggestion: string };
  'folder/no-pack': { readonly folder: string };
  'source/folder': { readonly owner: string; readonly folder: string; readonly why: 'missing' | 'not a folder' | 'link' | 'unreadable' | 'twice' };
  'page/address-taken': { readonly address: string; readonly by?: string };
  'source/clash': { readonly slug: string; readonly others: readonly string[] };
  'front-matter/missing': Record<never, never>;
  'front-matter/unclosed': Record<never, never>;
  'front-matter/not-yaml': { readonly found: string };
  'yaml/syntax': { readonly problem: string };
  'yaml/duplicate': { readonly field: string };
  'yaml/alias': { readonly name: string };
  'yaml/tag': { readonly tag: string };
  'yaml/too-deep': { readonly most: number };
  'yaml/too-many': { readonly most: number };
  'pack/unknown-field': { readonly field: string; readonly within: string };
  'pack/misspelt-field': { readonly field: string; readonly within: string; readonly suggestion: string };
  'pack/missing-field': { readonly field: string; readonly within: string };
  'pack/empty-field': { readonly field: string };
  'pack/wrong-type': { readonly field: string; readonly expected: Expected; readonly found: string };
  'pack/not-a-choice': { readonly field: string; readonly found: string; readonly choices: readonly string[]; readonly suggestion?: string };
  'pack/out-of-range': { readonly field: string; readonly found: string; readonly least?: number; readonly most?: number };
  'pack/too-long': { readonly field: string; readonly length: number; readonly most: number };
  'pack/bad-format': { readonly field: string; readonly found: string; readonly example: string };
  'pack/language-of-file': { readonly file: string; readonly language: string };
  'pack/unknown-language': { readonly language: string };
  'pack/two-of-a-language': { readonly language: string; readonly other: string };
  'pack/blank': { readonly field: string };
  'more/of-the-same': { readonly code: string; readonly more: number };
  'body/too-deep': { readonly most: number };
  'body/too-long': { readonly most: number; readonly found: number };
  'body/comment': Record<never, never>;
  'body/comment-unclosed': Record<never, never>;
  'body/link-refused': { readonly link: string };
  'body/picture-not-listed': { readonly picture: string };
  'alt-text/missing': { readonly picture: string };
  'alt-text/decorative-with-alt': { readonly picture: string };
  'alt-text/link-without-words': { readonly picture: string };
  'alt-text/encoding': { readonly picture: string; readonly found: string };
  'alt-text/no-words': { readonly picture: string; readonly found: string };
  'alt-text/file-name': { readonly picture: string; readonly found: string };
  'alt-text/placeholder': { readonly picture: string; readonly found: string };
  'alt-text/personal-data': { readonly picture: string; readonly found: string };
  'alt-text/markup': { readonly picture: string; readonly found: string };
  'alt-text/credit': { readonly picture: string; readonly found: string };
  'alt-text/image-of': { readonly picture: string; readonly found: string };
  'alt-text/points-elsewhere': { readonly picture: string; readonly found: string };
  'alt-text/not-purpose': { readonly picture: string; readonly found: string };
  'alt-text/too-long': { readonly picture: string; readonly length: number; readonly most: number };
  'alt-text/text-left-out': { readonly picture: string; readonly found: string };
  'alt-text/repeats': { readonly picture: string; readonly found: string };
  'alt-text/same-as-another': { readonly picture: string; readonly other: string };
  'alt-text/gives-answer': { readonly picture: string; readonly found: string };
  'alt-text/too-vague': { readonly picture: string; readonly found: string };
  'alt-text/wrong-language': { readonly picture: string; readonly language: string };
  'alt-text/all-caps': { readonly picture: string; readonly found: string };
  'alt-text/ending': { readonly picture: string; readonly found: string };
  'alt-text/spaces': { readonly picture: string };
  'alt-text/long-sentence': { readonly picture: string; readonly words: number; readonly most: number };
  'alt-text/opinion': { readonly picture: string; readonly found: string };
  'paper/no-program': { readonly machine: string };
  'paper/not-made': { readonly sheet: string; readonly reason: string };
  'paper/letters': { readonly characters: string };
  'picture/missing-file': { readonly picture: string; readonly suggestion?: string };
  'picture/not-named': { readonly picture: string };
  'picture/format': { readonly picture: string };
  'picture/too-large': { readonly picture: string; readonly width: number; readonly height: number; readonly most: number };
  'picture/unreadable': { readonly picture: string };
  'picture/unknown-stop': { readonly picture: string; readonly stop: string };
  'recording/none': Record<never, never>;
  'recording/nothing-to-play': Record<never, never>;
  'recording/missing-file': { readonly file: string; readonly suggestion?: string };
  'recording/format': { readonly file: string };
  'recording/too-large': { readonly file: string; readonly megabytes: number; readonly most: number };
  'recording/no-captions': { readonly file: string };
  'recording/captions-unreadable': { readonly file: string; readonly line: number; readonly why: 'no header' | 'times' | 'order' | 'empty' };
  'recording/captions-too-fast': { readonly file: string; readonly line: number; readonly count: number; readonly most: number };
  'recording/out-of-order': { readonly stop: string; readonly time: string };
  'stop/duplicate-id': { readonly id: string; readonly firstLine: number };
  'stop/unknown-reference': { readonly field: string; readonly id: string; readonly suggestion?: string };
  'stop/after-itself': { readonly id: string };
  'stop/opening-past-the-end': { readonly id: string; readonly opening: number; readonly openings: number };
  'reading/unknown': { readonly reading: number };
  'frames/missing': { readonly stop: string };
  'models/missing': { readonly stop: string; readonly found: number };
  'best-of/how-many': { readonly found: number; readonly least: number; readonly most: number };
  'best-of/twice': { readonly book: string };
  'home/too-many-prompts': { readonly found: number; readonly most: number };
  'privacy/roster-name': { readonly name: string };
  'privacy/roster-unread': Record<never, never>;
  'privacy/email': { readonly found: string };
  'privacy/phone': { readonly found: string };
  'privacy/room': { readonly found: string };
  'privacy/picture-place': { readonly picture: string; readonly holds: 'place' | 'camera' };
  'rights/book-note': { readonly rights: string };
  'rights/picture-note': { readonly picture: string; readonly cover: boolean };
  'translation/unchecked': { readonly missing: 'checked by' | 'checked'; readonly careful: boolean };
  'library/logo': { readonly file: string; readonly problem: 'missing' | 'format' | 'unreadable' | 'too large' };
  'library/logo-alt': { readonly languages: readonly string[] };
  'library/layout': { readonly part: string; readonly problem: 'missing' | 'syntax' | 'import' | 'no function' | 'failed' | 'refused' | 'no heading' | 'link'; readonly detail: string };
  'library/contrast': { readonly field: 'ink' | 'accent'; readonly found: string; readonly paper: string; readonly ratio: number; readonly least: number; readonly nearest: string };
  'by/parent-missing': { readonly named: string; readonly suggestion?: string };
  'retired/instead': { readonly named: string; readonly why: 'missing' | 'itself' | 'retired'; readonly suggestion?: string };
  'retired/ahead': { readonly on: string };
  'by/review-past': { readonly reviewed: string; readonly years: number };
  'by/review-ahead': { readonly reviewed: string; readonly today: string };
  'passage/word-count': { readonly said: number; readonly counted: number };
  'passage/opening-mark': { readonly line: number; readonly why: 'order' | 'form' | 'past the end'; readonly opening?: number; readonly openings?: number };
  'words/not-in-passage': { readonly word: string };
  'words/first-met': { readonly word: string; readonly said: number; readonly found: number };
  'copy/long-quote': { readonly words: number; readonly most: number; readonly begins: string };
  'copy/too-much': { readonly words: number; readonly most: number; readonly percent: number };
  'text/too-hard': { readonly low: number; readonly high: number; readonly most: number; readonly lines: readonly number[] };
  'text/low-ease': { readonly band: string; readonly lines: readonly number[] };
  'balance/few-kinds': { readonly found: number; readonly least: number };
  'balance/no-own-life': Record<never, never>;
  'balance/mostly-completion': { readonly found: number; readonly stops: number };
  'balance/mostly-recall': { readonly found: number; readonly of: number };
  'balance/no-deep-prompt': { readonly missing: 'prompt' | 'model' | 'evidence' };
  'balance/few-why': { readonly found: number; readonly of: number };
  'balance/few-ways': { readonly found: number; readonly least: number };
  'balance/only-own-feelings': Record<never, never>;
  'reading/no-why': { readonly reading: number };
  'reading/many-first-stops': { readonly found: number; readonly most: number };
  'reading/first-has-most': { readonly first: number; readonly second: number };
  'reading/hands-twice': { readonly reading: number; readonly first: string; readonly second: string };
  'stop/needs-handwriting': { readonly stop: string };
  'stop/needs-a-pencil': { readonly stop: string };
  'stop/no-seated-way': { readonly stop: string };
  'stop/too-close': { readonly stop: string; readonly before: string; readonly words: number; readonly estimated: boolean; readonly least: number };
  'stop/too-early': { readonly stop: string };
  'stop/at-the-end': { readonly stop: string };
  'stop/short-wait': { readonly stop: string; readonly wait: number; readonly least: number };
  'stop/depth-four-must': { readonly stop: string };
  'stop/deep-word-first': { readonly word: string; readonly first: string; readonly later: string };
  'stop/no-about': { readonly stop: string };
  'stop/no-evidence-asked': { readonly stop: string };
  'ask/family-trouble': { readonly words: string };
  'frames/too-many-blanks': { readonly frame: string; readonly found: number; readonly most: number };
  'frames/article-before-blank': { readonly frame: string; readonly article: string; readonly instead: string };
  'frames/not-first-person': { readonly frame: string };
  'frames/own-feeling-for-character': { readonly frame: string };
  'models/fits-no-frame': { readonly stop: string; readonly model: string };
  'models/does-not-show': { readonly trait: string; readonly model: string; readonly lacks: 'sentence' | 'reason' | 'book' | 'word' };
  'models/unknown-trait': { readonly trait: string; readonly suggestion?: string };
  'models/alike': { readonly stop: string; readonly model: string };
  'models/no-short-one': { readonly stop: string; readonly shortest: number; readonly most: number };
  'home/needs-the-book': { readonly words: string };
  'home/example-length': { readonly found: number; readonly wanted: number };
  'aims/no-prompt': { readonly skill: string; readonly kinds: readonly string[] };
  'feelings/no-entry': { readonly stop: string; readonly words: readonly string[] };
  'feelings/situation-names-word': { readonly word: string };
  'words/meaning-uses-word': { readonly word: string };
  'words/long-meaning': { readonly word: string; readonly found: number; readonly most: number };
  'words/too-many': { readonly found: number; readonly most: number };
  'care/no-note': { readonly word: string; readonly where: 'pack' | 'passage' };
  'plan/over-minutes': { readonly planned: number; readonly minutes: number };
}

export type Code = keyof FactsOf;

/** One finding of one code, or, without a type argument, of any. */
export type Finding<C extends Code = Code> = {
  readonly [K in C]: { readonly code: K; readonly level: Level; readonly place: Place; readonly facts: FactsOf[K] };
}[C];

/** What a stage returns: a value if there is one, and what there is to tell. A stage does not throw for what an author wrote. */
export interface Outcome<T> {
  readonly value: T | undefined;
  readonly findings: readonly Finding[];
}

/** Makes a finding; the compiler holds the facts to the code. */
export function finding<C extends Code>(code: C, level: Level, place: Place, facts: FactsOf[C]): Finding {
  return { code, level, place, facts } as Finding;
}

/** True when one of the findings keeps its pack off the site. */
export function stops(findings: Iterable<Finding>): boolean {
  for (const each of findings) if (each.level === 'stop') return true;
  return false;
}

/** How many findings of one code are told for one file. The rest are counted. */
export const mostOfOneCause = 10;

/** Findings in the order of the file, at most `mostOfOneCause` of a code in a file, the rest as one `more/of-the-same`. */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  const sorted = [...findings].sort((a, b) => compareText(a.place.file, b.place.file) || a.place.line - b.place.line || a.place.column - b.place.column || compareText(a.code, b.code));
  const told = new Map<string, number>();
  const kept: Finding[] = [];
  const first = new Map<string, Finding>();
  for (const each of sorted) {
    const cause = `${each.place.file}\n${each.code}`;
    const count = (told.get(cause) ?? 0) + 1;
    told.set(cause, count);
    if (count <= mostOfOneCause) kept.push(each);
    else if (count === mostOfOneCause + 1) first.set(cause, each);
  }
  for (const [cause, each] of first) {
    const more = (told.get(cause) ?? 0) - mostOfOneCause;
    kept.push(finding('more/of-the-same', each.level, each.place, { code: each.code, more }));
  }
  return kept;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
