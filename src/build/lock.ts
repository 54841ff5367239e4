import { randomBytes } from 'node:crypto';
import { link, open, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { CannotPublish } from './cannot-publish.ts';

/** One build at a time writes a site: a file beside it names the process that does. */
export interface Lock {
  /** True while the file still says that it is ours. */
  isOurs(): Promise<boolean>;
  release(): Promise<void>;
}

/** What this process holds: a lock with our own number that is not among them was left by an earlier process of that number. */
const held = new Set<string>();

/**
 * Takes the lock at a path. One that was left by a process that has ended is taken over.
 *
 * @throws CannotPublish while another process that is alive has it.
 */
export async function takeLock(path: string): Promise<Lock> {
  const token = randomBytes(6).toString('hex');
  const mark = [String(process.pid), token, await bornAt(process.pid)].join(' ').trim();
  for (let tries = 0; tries < 5; tries++) {
    if (await putIfFree(path, mark, token)) {
      held.add(mark);
      return { isOurs: async () => (await markAt(path)) === mark, release: () => release(path, mark) };
    }
    const seen = await markAt(path);
    if (seen === undefined) continue;
    const [owner = '', , born = ''] = seen.split(' ');
    if (held.has(seen) || (await isAlive(Number(owner), born))) throw new CannotPublish(`Another build (process ${owner}) is writing this site. Wait until it is done.`);
    await takeAway(path, seen, token);
  }
  throw new CannotPublish('Another build is writing this site. Wait until it is done.');
}

/** Puts the mark at the path, whole from its first moment, unless something is there. */
async function putIfFree(path: string, mark: string, token: string): Promise<boolean> {
  const beside = `${path}.${token}`;
  try {
    await writeFile(beside, mark, { flag: 'wx' });
    await link(beside, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    // What we put beside it may have been taken for a dead build's, by the one that has the lock.
    if (code === 'EEXIST' || code === 'ENOENT') return false;
    // Some disks know no second name for a file; there the mark is empty for a moment.
    if (code === 'EPERM' || code === 'ENOTSUP' || code === 'ENOSYS' || code === 'EMLINK') return await putByOpening(path, mark);
    throw error;
  } finally {
    await rm(beside, { force: true }).catch(() => undefined);
  }
}

async function putByOpening(path: string, mark: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx');
    try {
      await file.writeFile(mark);
    } finally {
      await file.close();
    }
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** Takes away the mark that was seen and no other: a build that was quicker may have put its own there. */
async function takeAway(path: string, seen: string, token: string): Promise<void> {
  const aside = `${path}.${token}`;
  const moved = await rename(path, aside).then(
    () => true,
    (error: unknown) => {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
      throw error;
    },
  );
  if (!moved) return;
  if ((await markAt(aside)) !== seen) await link(aside, path).catch(() => undefined);
  await rm(aside, { force: true });
}

async function release(path: string, mark: string): Promise<void> {
  held.delete(mark);
  // A lock that cannot be taken away is one of a dead process soon.
  if ((await markAt(path)) === mark) await rm(path, { force: true }).catch(() => undefined);
}

async function markAt(path: string): Promise<string | undefined> {
  return readFile(path, 'utf8').catch(() => undefined);
}

/** Whether the process that left a mark still runs. A number is given again after a while, and in a container at once: so the moment when it began is asked as well, where the system tells it. */
async function isAlive(owner: number, born: string): Promise<boolean> {
  if (!Number.isInteger(owner) || owner <= 0 || owner === process.pid) return false;
  try {
    process.kill(owner, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  const now = await bornAt(owner);
  return born === '' || now === '' || born === now;
}

/** When a process began, as Linux tells it (field 22 of `/proc/…/stat`, see proc_pid_stat(5)) with the mark of that start of the machine; nothing elsewhere. */
async function bornAt(process_: number): Promise<string> {
  try {
    const [stat, start] = await Promise.all([readFile(`/proc/${String(process_)}/stat`, 'utf8'), readFile('/proc/sys/kernel/random/boot_id', 'utf8')]);
    // The program's name stands in brackets and may hold anything.
    const ticks = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
    return ticks === '' ? '' : `${start.trim()}:${ticks}`;
  } catch {
    return '';
  }
}
