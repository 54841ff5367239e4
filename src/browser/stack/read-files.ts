import { limits } from '../../core/booklet/booklet-schema.ts';
import { withColleague } from '../../classroom/scoring-files.ts';
import { readStackFile, type StackFile } from '../../classroom/read-stack-file.ts';
import { answersIn, putBooklet, putPack } from '../../classroom/stack.ts';
import { randomId, type Desk, type SetAside } from './desk.ts';

/** So long may reading hold the page, in milliseconds, before it is drawn anew: a touch is answered within a tenth of a second. */
const breath = 40;

/** Puts files on the desk, one after the other, with a line that says how far it is. Files that a folder holds beside booklets and that only a system uses are passed over. */
export async function readFiles(desk: Desk, chosen: readonly File[]): Promise<void> {
  const say = desk.words.stack.pile;
  const files = chosen.filter(({ name }) => !name.startsWith('.') && !/^(?:desktop\.ini|thumbs\.db)$/i.test(name));
  const counts = { fresh: 0, merged: 0 };
  const aside: SetAside[] = [];
  const told: string[] = [];
  let since = performance.now();
  desk.set({ reading: { done: 0, of: files.length } });
  // The stack grows here and is put on the desk at each breath: a line for each file would draw the page 300 times.
  let { stack } = desk.state;
  for (const [done, file] of files.entries()) {
    const read = await readOne(file);
    if (read === 'unread') aside.push({ file: file.name, reason: 'unread' });
    else if (read.kind === 'unreadable') aside.push({ file: file.name, reason: read.reason });
    else if (read.kind === 'booklet') {
      const { stack: next, put } = putBooklet(stack, read.booklet, file.name, read.leftOut);
      stack = next;
      // The answers get their names now, one booklet at a time: all at once they would hold the page.
      for (const each of next.booklets.slice(-1)) answersIn(each);
      counts[put === 'merged' ? 'merged' : 'fresh'] += 1;
    } else if (read.kind === 'pack') {
      stack = putPack(stack, read.pack);
      told.push(say.packRead(read.pack.title));
    } else told.push(take(desk, read));
    if (performance.now() - since > breath) {
      desk.set({ stack, reading: { done: done + 1, of: files.length } });
      await new Promise((next) => setTimeout(next));
      since = performance.now();
    }
  }
  const { fresh, merged } = counts;
  desk.set({ stack, reading: undefined, aside: [...desk.state.aside.filter((each) => !files.some(({ name }) => name === each.file)), ...aside] });
  desk.announce([...(told.length === 0 || fresh + merged + aside.length > 0 ? [say.read(fresh, merged, aside.length)] : []), ...told].join(' '));
}

async function readOne(file: File): Promise<StackFile | 'unread'> {
  if (file.size > limits.file) return { kind: 'unreadable', reason: 'too-big' };
  // A photo or a film in a folder is no booklet, and need not be looked into.
  if (/^(?:image|video|audio)\//.test(file.type)) return { kind: 'unreadable', reason: 'not-a-booklet' };
  try {
    return readStackFile(await file.text());
  } catch {
    return 'unread';
  }
}

/** A sheet opens; scores go to whose they are. What is told of it comes back. */
function take(desk: Desk, read: Extract<StackFile, { kind: 'sheet' | 'scores' }>): string {
  const say = desk.words.stack.pile;
  const { scoring, sheet, sheetScoring } = desk.state;
  if (read.kind === 'sheet') {
    desk.set({
      sheet: read.sheet,
      sheetScoring: { steps: read.sheet.steps, seed: sheet?.id === read.sheet.id ? sheetScoring.seed : randomId(), scores: sheet?.id === read.sheet.id ? sheetScoring.scores : {} },
    });
    // Who opens a sheet on a clear desk came to judge it.
    if (desk.state.stack.booklets.length === 0) desk.turnTo('judge');
    return say.sheetRead(read.sheet.answers.length);
  }
  const { scores, by, steps } = read.scores;
  const n = Object.keys(scores).length;
  if (by === 'first') {
    desk.set({ scoring: { ...scoring, steps, scores: { ...scoring.scores, ...scores } } });
    return say.scoresFirst(n);
  }
  if (sheet !== undefined && read.scores.sheet === sheet.id)
    desk.set({ sheetScoring: { ...sheetScoring, seed: read.scores.scorer ?? sheetScoring.seed, scores: { ...sheetScoring.scores, ...scores } } });
  else desk.set({ others: withColleague(desk.state.others, read.scores) });
  return say.scoresSecond(n);
}

/** Every file of what was dropped, those in folders included. */
export async function filesIn(items: DataTransferItemList): Promise<readonly File[]> {
  // The list is empty once the event is over, so all of it is taken before anything is waited for.
  const roots = [...items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  return (await Promise.all(roots.map(filesBelow))).flat();
}

async function filesBelow(entry: FileSystemEntry): Promise<readonly File[]> {
  if (entry.isFile) {
    const file = await new Promise<File | undefined>((found) => (entry as FileSystemFileEntry).file(found, () => found(undefined)));
    return file ? [file] : [];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const inside: FileSystemEntry[] = [];
  // A reader gives a hundred at a time, and none when it is done.
  for (;;) {
    const some = await new Promise<readonly FileSystemEntry[]>((found) => reader.readEntries(found, () => found([])));
    if (some.length === 0) break;
    inside.push(...some);
  }
  return (await Promise.all(inside.map(filesBelow))).flat();
}
