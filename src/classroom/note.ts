import { fieldText } from '../core/pack/scalar-text.ts';

/**
 * What fell flat, as a piece of a pack's front matter: `what fell flat`, a list of notes with the stop's id, the day and the words. It is
 * put into the pack's file by adding lines and changing none. The reckoning is about lines, so that the page of the stack needs no parser
 * of YAML; `test/classroom/note.test.ts` reads what comes of it with the pack's own reader.
 */
export interface Note {
  readonly stop: string;
  readonly note: string;
  /** `2026-11-30`. */
  readonly seen: string;
}

const field = 'what fell flat';

/** The piece as YAML, to be pasted above the line that ends the front matter. */
export function noteField(notes: readonly Note[]): string {
  return fieldText(
    field,
    notes.map(({ stop, note, seen }) => ({ stop, note: oneLine(note), seen })),
    0,
    '\n',
  );
}

/** The text of a pack's file with the notes added behind those that it has. Undefined where it has no front matter, or has the field in another form than a list with a dash a note. */
export function withNotes(text: string, notes: readonly Note[]): string | undefined {
  const opening = /^\ufeff?---[ \t]*\r?\n/.exec(text);
  const closing = opening && /^---[ \t]*(?:\r?\n|$)/m.exec(text.slice(opening[0].length));
  if (!closing || notes.length === 0) return closing ? text : undefined;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const end = opening[0].length + closing.index;
  const yaml = text.slice(0, end);
  const there = new RegExp(`^["']?${field}["']?[ \\t]*:`, 'm').exec(yaml);
  if (!there) return yaml + lines(noteField(notes), newline) + newline + text.slice(end);
  const head = yaml.slice(there.index).split(/\r?\n/, 1)[0] ?? '';
  if (!/:[ \t]*(?:#.*)?$/.test(head)) return undefined;
  // The list goes on until a line that begins at the margin and is neither a dash nor a remark.
  const from = there.index + head.length;
  const after = /\n(?=[^\s#-])/.exec(yaml.slice(from));
  const listEnd = after ? from + after.index + 1 : end;
  const list = yaml.slice(from, listEnd);
  const dash = /\n([ \t]*)- /.exec(list)?.[1];
  if (dash === undefined) return undefined;
  // Whole lines at its end that are empty or a remark belong to what comes next.
  const rows = list.split('\n');
  while (rows.length > 1 && /^[ \t]*(?:#.*)?\r?$/.test(rows.at(-1) ?? '')) rows.pop();
  const at = from + rows.join('\n').replace(/\r$/, '').length;
  const added = noteField(notes)
    .split('\n')
    .slice(1)
    .map((line) => newline + dash + line.replace(/^ {2}/, ''))
    .join('');
  return text.slice(0, at) + added + (text.slice(at).startsWith('\n') || text.slice(at).startsWith('\r\n') ? '' : newline) + text.slice(at);
}

function oneLine(note: string): string {
  return note.trim().replace(/\s+/gu, ' ').slice(0, 300);
}

function lines(text: string, newline: string): string {
  return text.replace(/\n/g, newline);
}
