import { limits } from '../core/booklet/booklet-schema.ts';
import type { Booklet } from '../core/booklet/booklet.ts';
import { readBooklet, type Unreadable } from '../core/booklet/read-booklet.ts';
import { readStackPack, stackFormat, type StackPack } from '../core/pack/stack-pack.ts';
import { readScores, readSheet, scoresFormat, sheetFormat, type ScoresFile, type ScoringSheet } from './scoring-files.ts';

/** What a file that was put on the stack holds. Never throws; a file that nobody can use has a reason in words (`booklet.unreadable`). */
export type StackFile =
  | { readonly kind: 'booklet'; readonly booklet: Booklet; readonly leftOut: number }
  | { readonly kind: 'pack'; readonly pack: StackPack }
  | { readonly kind: 'sheet'; readonly sheet: ScoringSheet }
  | { readonly kind: 'scores'; readonly scores: ScoresFile }
  | { readonly kind: 'unreadable'; readonly reason: Unreadable };

export function readStackFile(text: string): StackFile {
  if (text.length > limits.file) return { kind: 'unreadable', reason: 'too-big' };
  const other = otherFormat(text);
  if (other !== undefined) return other;
  const found = readBooklet(text);
  return found.booklet ? { kind: 'booklet', booklet: found.booklet, leftOut: found.leftOut } : { kind: 'unreadable', reason: found.reason };
}

/** One of the stack's own formats, which are bare JSON; undefined when the text is none of them. */
function otherFormat(text: string): StackFile | undefined {
  const bare = text.replace(/^\uFEFF/, '').trimStart();
  // The format stands at the beginning: a booklet with drawings need not be parsed twice.
  const named = bare.startsWith('{') ? [stackFormat, sheetFormat, scoresFormat].find((format) => bare.slice(0, 200).includes(`"${format}"`)) : undefined;
  if (named === undefined) return undefined;
  let data: unknown;
  try {
    data = JSON.parse(bare);
  } catch {
    return { kind: 'unreadable', reason: 'cut-short' };
  }
  const version = (data as { version?: unknown }).version;
  if (typeof version === 'number' && version > 1) return { kind: 'unreadable', reason: 'newer' };
  const pack = named === stackFormat ? readStackPack(data) : undefined;
  if (pack) return { kind: 'pack', pack };
  const sheet = named === sheetFormat ? readSheet(data) : undefined;
  if (sheet) return { kind: 'sheet', sheet };
  const scores = named === scoresFormat ? readScores(data) : undefined;
  return scores ? { kind: 'scores', scores } : { kind: 'unreadable', reason: 'damaged' };
}
