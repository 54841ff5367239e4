/** One build at a time: who has the lock, who is dead, and who only bears a dead one's number. */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CannotPublish } from '../../src/build/cannot-publish.ts';
import { takeLock, type Lock } from '../../src/build/lock.ts';

let folder: string;
let path: string;
const other = spawn(process.execPath, ['-e', 'setInterval(() => 0, 1e6)'], { stdio: 'ignore' });
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-lock-'));
  path = join(folder, 'site.lock');
});
afterAll(async () => {
  other.kill('SIGKILL');
  await rm(folder, { recursive: true });
});
const alone = () => readdir(folder);

test('a lock that is held keeps everybody out, and leaves nothing when it is given back', async () => {
  const lock = await takeLock(path);
  expect(await lock.isOurs()).toBe(true);
  await expect(takeLock(path)).rejects.toThrow(`Another build (process ${process.pid}) is writing this site`);
  await lock.release();
  expect(await alone()).toEqual([]);
});

test('one that was left by an earlier process with our own number, as in a container that is started anew, is taken over', async () => {
  await writeFile(path, `${process.pid} 0123456789ab`);
  await (await takeLock(path)).release();
  expect(await alone()).toEqual([]);
});

test.skipIf(!existsSync('/proc/self/stat'))('one whose number now belongs to somebody else is taken over, and one of a process that lives is not', async () => {
  const stat = readFileSync(`/proc/${other.pid}/stat`, 'utf8');
  // Field 22 by proc_pid_stat(5), counted here with the name's brackets as the second field.
  const born = `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()}:${stat.replace(/\(.*\)/s, 'name').split(' ')[21]}`;
  await writeFile(path, `${other.pid} 0123456789ab ${born}`);
  await expect(takeLock(path)).rejects.toThrow(CannotPublish);
  await writeFile(path, `${other.pid} 0123456789ab ${born}1`);
  await (await takeLock(path)).release();
  expect(await alone()).toEqual([]);
});

test('of many who come to a dead one’s lock at once, one gets it', async () => {
  await writeFile(path, '');
  const came = await Promise.allSettled(Array.from({ length: 20 }, () => takeLock(path)));
  const got = came.flatMap((each) => (each.status === 'fulfilled' ? [each.value] : []));
  const keep = await Promise.all(got.map(async (lock: Lock) => ((await lock.isOurs()) ? [lock] : [])));
  expect(keep.flat()).toHaveLength(1);
  for (const each of came) if (each.status === 'rejected') expect(each.reason).toBeInstanceOf(CannotPublish);
  for (const lock of got) await lock.release();
  expect(await alone()).toEqual([]);
});

test('a lock that somebody else has taken is no longer ours, and is not taken away', async () => {
  const lock = await takeLock(path);
  await writeFile(path, 'somebody else');
  expect(await lock.isOurs()).toBe(false);
  await lock.release();
  expect(await readFile(path, 'utf8')).toBe('somebody else');
});
