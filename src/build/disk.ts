import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { finding, type Finding, type Place } from '../core/finding.ts';
import { slugOf } from './slug.ts';

/**
 * The few ways in which content is read from the disk. Links are told and never followed, and sizes are bounded. A call that waits
 * for nobody costs a third of one that is handed to another thread, and a library has tens of thousands of small files.
 */

/** A folder that content is read from: the library's own, or a source's. */
export interface Root {
  /** Where it lies on this machine. */
  readonly at: string;
  /** What its files are called in findings and on pages, where a path of this machine has no place: empty for the content folder, `sources/saltmarsh/`. */
  readonly label: string;
}

/** Most kilobytes of one pack file. A full pack has about 15. */
const mostKilobytes = 512;

/** The beginning of a file, as findings name it. */
export function placeIn(root: Root, path: string): Place {
  return { file: root.label + path, line: 1, column: 1 };
}

/** The text of a file, or undefined with a finding. Links, devices, giants and files that are no UTF-8 text are not read. */
export function readText(root: Root, path: string, findings: Finding[], optional: boolean): string | undefined {
  const place = placeIn(root, path);
  const name = path.slice(path.lastIndexOf('/') + 1);
  const status = statusOf(join(root.at, path));
  if (status === 'missing' && optional) return undefined;
  if (status === 'link') return told(findings, finding('file/link', 'stop', place, { name }));
  if (status !== 'file' && status !== 'missing') return told(findings, finding('file/not-a-file', 'stop', place, { name }));
  try {
    // Asked before it is read: a file of gigabytes would not fit.
    const { size } = lstatSync(join(root.at, path));
    if (size > mostKilobytes * 1024) return told(findings, finding('file/too-big', 'stop', place, { kilobytes: Math.ceil(size / 1024), most: mostKilobytes }));
    const bytes = readFileSync(join(root.at, path));
    const strange = encodingOf(bytes);
    if (strange !== undefined) return told(findings, finding('file/encoding', 'stop', place, { found: strange }));
    return bytes.toString('utf8');
  } catch (error) {
    return told(findings, finding('file/unreadable', 'stop', place, { reason: reasonOf(error) }));
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
export function namesIn(root: Root, path: string, findings: Finding[]): readonly string[] {
  let entries: Buffer[];
  try {
    entries = readdirSync(join(root.at, path), { encoding: 'buffer' });
  } catch (error) {
    findings.push(finding('file/unreadable', 'stop', placeIn(root, path), { reason: reasonOf(error) }));
    return [];
  }
  const names: string[] = [];
  for (const entry of entries) {
    const name = entry.toString('utf8');
    if (Buffer.from(name, 'utf8').equals(entry)) names.push(name);
    else findings.push(finding('folder/name', 'stop', placeIn(root, path), { folder: name, suggestion: slugOf(name) }));
  }
  return names.filter((name) => !name.startsWith('.')).sort();
}

/** What the operating system says is wrong: `EACCES`. */
export function reasonOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? 'unknown';
}

/** What stands at a path; a link is a link, wherever it leads. */
export function statusOf(path: string): 'file' | 'folder' | 'link' | 'other' | 'missing' {
  try {
    const status = lstatSync(path);
    if (status.isSymbolicLink()) return 'link';
    if (status.isDirectory()) return 'folder';
    return status.isFile() ? 'file' : 'other';
  } catch {
    return 'missing';
  }
}
