import { closeSync, lstatSync, openSync, readSync } from 'node:fs';
import { join } from 'node:path';
import { finding, type Finding } from '../core/finding.ts';
import type { PictureFile, RecordingFile, Source } from '../core/pack/pack.ts';
import { namesIn, placeIn, readText, statusOf, type Root } from './disk.ts';
import { inspectPicture } from './pictures.ts';

/** Reads one pack's folder: its texts, and what lies beside them. */

/** Names that no published text may hold, from `private/roster.txt`. */
export type Roster = readonly string[] | 'unread';

/** A folder that should hold a pack. */
export interface PackFolder extends Pick<Source, 'slug' | 'owner' | 'given'> {
  /** Below its root, with forward slashes. */
  readonly path: string;
}

/** File names of a pack: `pack.md`, `pack.es.md`. */
const packFile = /^pack(?:\.([a-z]{2,3}(?:-[A-Za-z]{2,4})?))?\.md$/;
/** Private texts of a book, one a language: `passage.txt`, `passage.es.txt`. */
const passageFile = /^passage(?:\.([a-z]{2,3}(?:-[A-Za-z]{2,4})?))?\.txt$/;

/** The sources of one pack's folder of the library's own; nothing where there is none. */
export async function readOnePack(content: string, slug: string): Promise<readonly Source[]> {
  return readPackFolder({ at: content, label: '' }, { path: `packs/${slug}`, slug }, [], []);
}

/** Two rosters as one; nobody knows what stands in one that cannot be read. */
export function together(first: Roster, second: Roster): Roster {
  return first === 'unread' || second === 'unread' ? 'unread' : [...first, ...second];
}

/** The packs of one folder, one for each language; what lies beside them belongs to all. */
export async function readPackFolder(root: Root, { path, slug, owner, given }: PackFolder, rosterAround: Roster, findings: Finding[]): Promise<readonly Source[]> {
  const names = namesIn(root, path, findings);
  // The pack without a language in its name is the book's first; its translations follow.
  const packs = names.filter((name) => packFile.test(name)).sort((a, b) => Number(b === 'pack.md') - Number(a === 'pack.md'));
  if (packs.length === 0) {
    findings.push(finding('folder/no-pack', 'stop', placeIn(root, path), { folder: path.slice(path.lastIndexOf('/') + 1) }));
    return [];
  }
  const pictureFiles = await readPictures(root, `${path}/pictures`, findings);
  const passages = readPassages(root, `${path}/private`, findings);
  const ownRoster = readRoster(root, `${path}/private`, findings);
  const roster = together(rosterAround, ownRoster);
  const recordingFiles = readRecordings(root, `${path}/recording`, findings);
  const sources: Source[] = [];
  for (const name of packs) {
    const file = `${path}/${name}`;
    const text = readText(root, file, findings, false);
    if (text === undefined) continue;
    const languageOfFile = packFile.exec(name)?.[1];
    const otherPassages = [...passages].filter(([language]) => language !== languageOfFile).map(([, passage]) => passage);
    sources.push({
      slug,
      file: root.label + file,
      text,
      languageOfFile,
      pictureFiles,
      recordingFiles,
      passage: passages.get(languageOfFile),
      otherPassages,
      roster,
      ...(owner && { owner }),
      ...(given && { given }),
    });
  }
  return sources;
}

/** The private texts of a book by the language in their names. */
function readPassages(root: Root, path: string, findings: Finding[]): ReadonlyMap<string | undefined, string> {
  const passages = new Map<string | undefined, string>();
  if (!isPrivateFolder(root, path, findings)) return passages;
  for (const name of namesIn(root, path, findings)) {
    const match = passageFile.exec(name);
    const text = match ? readText(root, `${path}/${name}`, findings, false) : undefined;
    if (match && text !== undefined) passages.set(match[1], text);
  }
  return passages;
}

/** The names in a folder's `roster.txt`, one a line; a line that begins with # is a remark. `unread` where there is a roster that cannot be read. */
export function readRoster(root: Root, path: string, findings: Finding[]): Roster {
  if (statusOf(join(root.at, path)) !== 'folder') return [];
  const file = `${path}/roster.txt`;
  const text = readText(root, file, findings, true);
  if (text === undefined) return statusOf(join(root.at, file)) === 'missing' ? [] : 'unread';
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|[\n\r]/);
  return lines.map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('#'));
}

function isPrivateFolder(root: Root, path: string, findings: Finding[]): boolean {
  const status = statusOf(join(root.at, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', placeIn(root, path), { name: 'private' }));
  return status === 'folder';
}

async function readPictures(root: Root, path: string, findings: Finding[]): Promise<readonly PictureFile[]> {
  const status = statusOf(join(root.at, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', placeIn(root, path), { name: 'pictures' }));
  if (status !== 'folder') return [];
  const files: PictureFile[] = [];
  for (const name of namesIn(root, path, findings)) {
    if (name.startsWith('.')) continue;
    const kind = statusOf(join(root.at, path, name));
    if (kind === 'link') findings.push(finding('file/link', 'stop', placeIn(root, `${path}/${name}`), { name }));
    if (kind === 'file') files.push(await inspectPicture(join(root.at, path, name), name));
  }
  return files;
}

/** Films and captions of a pack. Of a film only the first bytes are read. */
function readRecordings(root: Root, path: string, findings: Finding[]): readonly RecordingFile[] {
  const status = statusOf(join(root.at, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', placeIn(root, path), { name: 'recording' }));
  if (status !== 'folder') return [];
  const files: RecordingFile[] = [];
  for (const name of namesIn(root, path, findings)) {
    const kind = statusOf(join(root.at, path, name));
    if (kind === 'link') findings.push(finding('file/link', 'stop', placeIn(root, `${path}/${name}`), { name }));
    if (kind !== 'file') continue;
    const { size: bytes } = lstatSync(join(root.at, path, name));
    if (name.endsWith('.vtt')) {
      const text = readText(root, `${path}/${name}`, findings, false);
      files.push({ name, format: 'captions', bytes, ...(text === undefined ? {} : { text }) });
    } else files.push({ name, format: filmFormat(firstBytes(join(root.at, path, name), 16)), bytes });
  }
  return files;
}

/** The kind of a film by its first bytes; its name is not asked. Sources: Matroska's EBML head, and ISO 14496-12's file type box. */
function filmFormat(bytes: Buffer): RecordingFile['format'] {
  if (bytes.subarray(0, 4).equals(Buffer.from([0x1a, 0x45, 0xdf, 0xa3]))) return 'webm';
  return bytes.subarray(4, 8).toString('latin1') === 'ftyp' ? 'mp4' : 'other';
}

function firstBytes(path: string, count: number): Buffer {
  try {
    const file = openSync(path, 'r');
    try {
      const buffer = Buffer.alloc(count);
      return buffer.subarray(0, readSync(file, buffer, 0, count, 0));
    } finally {
      closeSync(file);
    }
  } catch {
    return Buffer.alloc(0);
  }
}
