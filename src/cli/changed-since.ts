import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { Finding } from '../core/finding.ts';
import { WrongUse } from './wrong-use.ts';

const run = promisify(execFile);

/**
 * Files of the content folder that differ from a revision of its git history, changed and new ones, relative to that folder.
 *
 * @throws WrongUse when the folder is in no git history, the revision is not known, or there is no git.
 */
export async function changedSince(content: string, revision: string): Promise<readonly string[]> {
  if (revision === '' || revision.startsWith('-')) throw new WrongUse(`--since takes a revision of the history, such as main; "${revision}" is none.`);
  const git = async (...args: readonly string[]): Promise<readonly string[]> => {
    const { stdout } = await run('git', ['-C', content, ...args], { maxBuffer: 256 * 1024 * 1024 });
    return stdout.split('\0').filter((name) => name !== '');
  };
  try {
    // Both ends are files: what was renamed counts under both names.
    const changed = await git('diff', '--name-only', '--relative', '--no-renames', '-z', `${revision}^{commit}`, '--', '.');
    const untracked = await git('ls-files', '--others', '--exclude-standard', '-z', '--', '.');
    return [...new Set([...changed, ...untracked])].sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') throw new WrongUse('--since needs git, and there is none here.', { cause: error });
    if ((await rootOfHistory(content)) === undefined) throw new WrongUse(`--since needs a git history, and ${content} has none.`, { cause: error });
    throw new WrongUse(`git knows no revision "${revision}" here. Name a branch, a tag or a commit; a shallow checkout may lack it.`, { cause: error });
  }
}

/**
 * Says of a finding whether it belongs to what was changed: to a pack of which any file was, so that a new picture is checked with the text
 * that describes it; or to a file that was itself changed. A change of the library's own settings concerns every pack.
 */
export function concernedBy(changed: readonly string[]): (found: Finding) => boolean {
  if (changed.some((file) => !file.includes('/'))) return () => true;
  const folderOf = (file: string) => /^packs\/[^/]+/.exec(file)?.[0] ?? file;
  const folders = new Set(changed.map(folderOf));
  return ({ place }) => folders.has(folderOf(place.file));
}

/** The root of the git history that a folder is in; undefined when there is none, or no git. */
export async function rootOfHistory(folder: string): Promise<string | undefined> {
  return run('git', ['-C', folder, 'rev-parse', '--show-toplevel']).then(
    ({ stdout }) => stdout.replace(/\n$/, ''),
    () => undefined,
  );
}
