import { lstat, open, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { finding, type Finding } from '../core/finding.ts';
import type { PictureFile, RecordingFile, Source } from '../core/pack/pack.ts';
import { inspectPicture } from './pictures.ts';

/**
 * Reads the content folder: what lies there, as text, before anything is understood.
 * Folders are listed before files are opened, links are told and never followed, and sizes are bounded.
 */

export interface Page {
  /** File relative to the content folder. */
  readonly file: string;
  readonly name: string;
  readonly languageOfFile: string | undefined;
  readonly text: string;
}

export interface Content {
  readonly sources: readonly Source[];
  readonly pages: readonly Page[];
  readonly library: string | undefined;
  /** Names that no published text may hold, from `private/roster.txt` of the whole library. */
  readonly roster: readonly string[] | 'unread';
  readonly findings: readonly Finding[];
}

/** Most kilobytes of one pack file. A full pack has about 15. */
const mostKilobytes = 512;
/** File names of a pack: `pack.md`, `pack.es.md`. */
const packFile = /^pack(?:\.([a-z]{2,3}(?:-[A-Za-z]{2,4})?))?\.md$/;
/** Private texts of a book, one a language: `passage.txt`, `passage.es.txt`. */
const passageFile = /^passage(?:\.([a-z]{2,3}(?:-[A-Za-z]{2,4})?))?\.txt$/;
const pageFile = /^([a-z0-9]+(?:-[a-z0-9]+)*)(?:\.([a-z]{2,3}))?\.md$/;
/** Names that Windows keeps for devices; a folder of that name could not be copied there. */
const reserved = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** Everything of a content folder. Only a folder that cannot be listed at all is an exception. */
export async function readContent(content: string): Promise<Content> {
  const findings: Finding[] = [];
  const sources: Source[] = [];
  const roster = await readRoster(content, 'private', findings);
  for (const folder of await namesIn(join(content, 'packs'), 'packs', findings)) {
    const path = `packs/${folder}`;
    const status = await statusOf(join(content, path));
    if (status === 'link') {
      findings.push(finding('file/link', 'stop', { file: path, line: 1, column: 1 }, { name: folder }));
      continue;
    }
    if (status !== 'folder') continue;
    const slug = slugOf(folder);
    if (slug !== folder) {
      findings.push(finding('folder/name', 'stop', { file: path, line: 1, column: 1 }, { folder, suggestion: slug }));
      continue;
    }
    sources.push(...(await readPackFolder(content, slug, roster, findings)));
  }
  return { sources, pages: await readPages(content, findings), library: await readText(content, 'library.yaml', findings, true), roster, findings };
}

/** The sources of one pack's folder; nothing where there is none. */
export async function readOnePack(content: string, slug: string): Promise<readonly Source[]> {
  return readPackFolder(content, slug, [], []);
}

async function readPackFolder(content: string, slug: string, libraryRoster: readonly string[] | 'unread', findings: Finding[]): Promise<readonly Source[]> {
  const path = `packs/${slug}`;
  const names = await namesIn(join(content, path), path, findings);
  // The pack without a language in its name is the book's first; its translations follow.
  const packs = names.filter((name) => packFile.test(name)).sort((a, b) => Number(b === 'pack.md') - Number(a === 'pack.md'));
  if (packs.length === 0) {
    findings.push(finding('folder/no-pack', 'stop', { file: path, line: 1, column: 1 }, { folder: slug }));
    return [];
  }
  const pictureFiles = await readPictures(content, `${path}/pictures`, findings);
  const passages = await readPassages(content, `${path}/private`, findings);
  const ownRoster = await readRoster(content, `${path}/private`, findings);
  const roster = libraryRoster === 'unread' || ownRoster === 'unread' ? 'unread' : [...libraryRoster, ...ownRoster];
  const recordingFiles = await readRecordings(content, `${path}/recording`, findings);
  const sources: Source[] = [];
  for (const name of packs) {
    const file = `${path}/${name}`;
    const text = await readText(content, file, findings, false);
    if (text === undefined) continue;
    const languageOfFile = packFile.exec(name)?.[1];
    const otherPassages = [...passages].filter(([language]) => language !== languageOfFile).map(([, passage]) => passage);
    sources.push({ slug, file, text, languageOfFile, pictureFiles, recordingFiles, passage: passages.get(languageOfFile), otherPassages, roster });
  }
  return sources;
}

/** The private texts of a book by the language in their names. */
async function readPassages(content: string, path: string, findings: Finding[]): Promise<ReadonlyMap<string | undefined, string>> {
  const passages = new Map<string | undefined, string>();
  if (!(await isPrivateFolder(content, path, findings))) return passages;
  for (const name of await namesIn(join(content, path), path, findings)) {
    const match = passageFile.exec(name);
    const text = match ? await readText(content, `${path}/${name}`, findings, false) : undefined;
    if (match && text !== undefined) passages.set(match[1], text);
  }
  return passages;
}

/** The names in a folder's `roster.txt`, one a line; a line that begins with # is a remark. `unread` where there is a roster that cannot be read. */
async function readRoster(content: string, path: string, findings: Finding[]): Promise<readonly string[] | 'unread'> {
  if ((await statusOf(join(content, path))) !== 'folder') return [];
  const file = `${path}/roster.txt`;
  const text = await readText(content, file, findings, true);
  if (text === undefined) return (await statusOf(join(content, file))) === 'missing' ? [] : 'unread';
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|[\n\r]/);
  return lines.map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('#'));
}

async function isPrivateFolder(content: string, path: string, findings: Finding[]): Promise<boolean> {
  const status = await statusOf(join(content, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', { file: path, line: 1, column: 1 }, { name: 'private' }));
  return status === 'folder';
}

async function readPictures(content: string, path: string, findings: Finding[]): Promise<readonly PictureFile[]> {
  const status = await statusOf(join(content, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', { file: path, line: 1, column: 1 }, { name: 'pictures' }));
  if (status !== 'folder') return [];
  const files: PictureFile[] = [];
  for (const name of await namesIn(join(content, path), path, findings)) {
    if (name.startsWith('.')) continue;
    const kind = await statusOf(join(content, path, name));
    if (kind === 'link') findings.push(finding('file/link', 'stop', { file: `${path}/${name}`, line: 1, column: 1 }, { name }));
    if (kind === 'file') files.push(await inspectPicture(join(content, path, name), name));
  }
  return files;
}

/** Films and captions of a pack. Of a film only the first bytes are read. */
async function readRecordings(content: string, path: string, findings: Finding[]): Promise<readonly RecordingFile[]> {
  const status = await statusOf(join(content, path));
  if (status === 'link') findings.push(finding('file/link', 'stop', { file: path, line: 1, column: 1 }, { name: 'recording' }));
  if (status !== 'folder') return [];
  const files: RecordingFile[] = [];
  for (const name of await namesIn(join(content, path), path, findings)) {
    const kind = await statusOf(join(content, path, name));
    if (kind === 'link') findings.push(finding('file/link', 'stop', { file: `${path}/${name}`, line: 1, column: 1 }, { name }));
    if (kind !== 'file') continue;
    const { size: bytes } = await lstat(join(content, path, name));
    if (name.endsWith('.vtt')) {
      const text = await readText(content, `${path}/${name}`, findings, false);
      files.push({ name, format: 'captions', bytes, ...(text === undefined ? {} : { text }) });
    } else files.push({ name, format: filmFormat(await firstBytes(join(content, path, name), 16)), bytes });
  }
  return files;
}

/** The kind of a film by its first bytes; its name is not asked. Sources: Matroska's EBML head, and ISO 14496-12's file type box. */
function filmFormat(bytes: Buffer): RecordingFile['format'] {
  if (bytes.subarray(0, 4).equals(Buffer.from([0x1a, 0x45, 0xdf, 0xa3]))) return 'webm';
  return bytes.subarray(4, 8).toString('latin1') === 'ftyp' ? 'mp4' : 'other';
}

async function firstBytes(path: string, count: number): Promise<Buffer> {
  try {
    const file = await open(path);
    try {
      const { bytesRead, buffer } = await file.read(Buffer.alloc(count), 0, count, 0);
      return buffer.subarray(0, bytesRead);
    } finally {
      await file.close();
    }
  } catch {
    return Buffer.alloc(0);
  }
}

async function readPages(content: string, findings: Finding[]): Promise<readonly Page[]> {
  const pages: Page[] = [];
  if ((await statusOf(join(content, 'pages'))) !== 'folder') return pages;
  for (const fileName of await namesIn(join(content, 'pages'), 'pages', findings)) {
    const match = pageFile.exec(fileName);
    const text = match ? await readText(content, `pages/${fileName}`, findings, false) : undefined;
    if (match?.[1] !== undefined && text !== undefined) pages.push({ file: `pages/${fileName}`, name: match[1], languageOfFile: match[2], text });
  }
  return pages;
}

/** The text of a file, or undefined with a finding. Links, devices, giants and files that are no UTF-8 text are not read. */
async function readText(content: string, file: string, findings: Finding[], optional: boolean): Promise<string | undefined> {
  const place = { file, line: 1, column: 1 };
  const name = file.slice(file.lastIndexOf('/') + 1);
  const status = await statusOf(join(content, file));
  if (status === 'missing' && optional) return undefined;
  if (status === 'link') return told(findings, finding('file/link', 'stop', place, { name }));
  if (status !== 'file' && status !== 'missing') return told(findings, finding('file/not-a-file', 'stop', place, { name }));
  try {
    const bytes = await readFile(join(content, file));
    if (bytes.length > mostKilobytes * 1024) return told(findings, finding('file/too-big', 'stop', place, { kilobytes: Math.ceil(bytes.length / 1024), most: mostKilobytes }));
    const strange = encodingOf(bytes);
    if (strange !== undefined) return told(findings, finding('file/encoding', 'stop', place, { found: strange }));
    return bytes.toString('utf8');
  } catch (error) {
    return told(findings, finding('file/unreadable', 'stop', place, { reason: (error as NodeJS.ErrnoException).code ?? 'unknown' }));
  }
}

function told(findings: Finding[], found: Finding): undefined {
  findings.push(found);
  return undefined;
}

function encodingOf(bytes: Buffer): string | undefined {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return 'UTF-16';
  if (bytes.includes(0)) return 'NUL';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return undefined;
  } catch {
    return 'not UTF-8';
  }
}

/** Names in a folder, sorted. Read as bytes: a name that is no UTF-8 would otherwise fail later, with no file named. */
async function namesIn(folder: string, path: string, findings: Finding[]): Promise<readonly string[]> {
  let entries: Buffer[];
  try {
    entries = await readdir(folder, { encoding: 'buffer' });
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
    findings.push(finding('file/unreadable', 'stop', { file: path, line: 1, column: 1 }, { reason }));
    return [];
  }
  const names: string[] = [];
  for (const entry of entries) {
    const name = entry.toString('utf8');
    if (Buffer.from(name, 'utf8').equals(entry)) names.push(name);
    else findings.push(finding('folder/name', 'stop', { file: path, line: 1, column: 1 }, { folder: name, suggestion: slugOf(name) }));
  }
  return names.filter((name) => !name.startsWith('.')).sort();
}

async function statusOf(path: string): Promise<'file' | 'folder' | 'link' | 'other' | 'missing'> {
  try {
    const status = await lstat(path);
    if (status.isSymbolicLink()) return 'link';
    if (status.isDirectory()) return 'folder';
    return status.isFile() ? 'file' : 'other';
  } catch {
    return 'missing';
  }
}

/** The address that a folder's name makes: small letters, digits and single dashes, at most 80. */
export function slugOf(name: string): string {
  const slug = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80)
    .replace(/-+$/, '');
  return slug === '' || reserved.test(slug) ? `pack-${slug}`.replace(/-$/, '') : slug;
}
