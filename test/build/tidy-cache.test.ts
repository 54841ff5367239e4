/** The cache of made pictures and sheets: what is used stays, what no build has used for a month goes. */
import { mkdir, mkdtemp, readdir, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { tidyCache } from '../../src/build/tidy-cache.ts';

let cache: string;
beforeEach(async () => {
  cache = await mkdtemp(join(tmpdir(), 'bookfellow-cache-'));
  await mkdir(join(cache, 'pdf'));
  await mkdir(join(cache, 'pictures', 'aa11'), { recursive: true });
});
afterEach(() => rm(cache, { recursive: true }));

const now = Date.UTC(2026, 10, 25);
async function kept(path: string, daysAgo: number): Promise<string> {
  await writeFile(join(cache, path), 'kept');
  const then = now / 1000 - daysAgo * 86_400;
  await utimes(join(cache, path), then, then);
  return join(cache, path);
}

test('a sheet of last summer goes, one of last week stays, and one that is used again counts as new', async () => {
  await kept('pdf/summer-2.pdf', 120);
  await kept('pdf/week-2.pdf', 7);
  const again = await kept('pdf/again-2.pdf', 120);
  expect(await tidyCache(cache, [again], now)).toBe(1);
  expect((await readdir(join(cache, 'pdf'))).sort()).toEqual(['again-2.pdf', 'week-2.pdf']);
  expect((await stat(again)).mtimeMs).toBe(now);
  expect(await tidyCache(cache, [], now + 20 * 86_400_000)).toBe(0);
});

test('a picture is kept with its folder, and a time in the future is set right', async () => {
  const picture = join(cache, 'pictures', 'aa11', '640.jpg');
  await writeFile(picture, 'kept');
  await utimes(join(cache, 'pictures', 'aa11'), now / 1000 + 900 * 86_400, now / 1000 + 900 * 86_400);
  expect(await tidyCache(cache, [picture], now)).toBe(0);
  expect((await stat(join(cache, 'pictures', 'aa11'))).mtimeMs).toBe(now);
  expect(await tidyCache(cache, [], now + 31 * 86_400_000)).toBe(1);
});

test('a cache that is not there, and what else lies in it, is left alone', async () => {
  await kept('notes.txt', 400);
  expect(await tidyCache(join(cache, 'nowhere'), [], now)).toBe(0);
  expect(await tidyCache(cache, [], now + 400 * 86_400_000)).toBe(1);
  expect(await readdir(cache)).toContain('notes.txt');
});
