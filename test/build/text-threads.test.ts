/** Packs are read and pages are made on threads where there are many. What comes of it is what would come of one thread, whatever happens to the others. */
import { cp, mkdir, symlink } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { deserialize } from 'node:v8';
import { expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { defaultLibrary } from '../../src/core/pack/library.ts';
import { lookAt } from '../../src/build/look-at.ts';
import { textThreads, threadScript, type TextThreadsOptions } from '../../src/build/text-threads.ts';
import { bundler } from '../../src/build/bundle.ts';
import { smallLibrary, soundPack, textsIn, type SmallLibrary } from './small-library.ts';

/** The site and the findings, with nothing taken from before. */
async function made(library: SmallLibrary, name: string, threads: TextThreadsOptions) {
  const [site, cache] = [join(library.folder, name, 'site'), join(library.folder, name, 'cache')];
  await mkdir(cache, { recursive: true });
  await symlink(resolve('.cache/code'), join(cache, 'code'), 'junction');
  const { findings, published } = await build({ content: library.content, site, cache, strict: false, threads });
  return { findings, published, texts: await textsIn(site) };
}

async function library(): Promise<SmallLibrary> {
  const packs = await Promise.all(
    Array.from({ length: 8 }, async (_, index) => [`packs/hen-${String(index)}/pack.md`, await soundPack(['title: The Wheelbarrow Goes Home', `title: Wheelbarrow ${String(index)}`])] as const),
  );
  const small = await smallLibrary({ ...Object.fromEntries(packs), 'packs/broken/pack.md': await soundPack(['kind: predict', 'kind: prophesy']), 'packs/blank/pack.md': '' });
  await cp('test/packs/sound/every-field', join(small.content, 'packs/ferry'), { recursive: true });
  return small;
}

const two = { worth: 1, most: 2 };

test('two threads make the site that one makes, and find the same', async () => {
  const small = await library();
  const alone = await made(small, 'alone', { most: 1 });
  expect(alone.published).toBeGreaterThan(8);
  expect(alone.findings.length).toBeGreaterThan(2);
  expect(await made(small, 'two', two)).toEqual(alone);
});

const ready = "const { parentPort } = require('node:worker_threads'); parentPort.postMessage('ready');";

test.each([
  ['cannot begin', () => 'throw new Error("not here")'],
  ['end at their first task', () => `${ready} parentPort.once('message', () => process.exit(1));`],
  ['end at their second task', (sound: string) => `${sound}; let tasks = 0; require('node:worker_threads').parentPort.on('message', () => { if (++tasks > 1) process.exit(1); });`],
])('where threads %s, nothing is missing', async (_, script) => {
  const bundle = await bundler('.cache');
  const text = await soundPack();
  const packs = Array.from({ length: 45 }, (_each, index) => ({
    source: { slug: `hen-${String(index)}`, file: `packs/hen-${String(index)}/pack.md`, text, languageOfFile: undefined, pictureFiles: [], passage: undefined },
  }));
  const threads = textThreads(() => Promise.resolve(bundle), { ...two, script: script(await threadScript(bundle)) });
  const told = new Map<string, unknown>();
  await threads.look(defaultLibrary, packs, ({ source }, content) => {
    told.set(source.slug, deserialize(content));
    return Promise.resolve();
  });
  await threads.close();
  expect(told.size).toBe(packs.length);
  for (const { source } of packs.slice(0, 3)) expect(told.get(source.slug)).toEqual(lookAt(source, defaultLibrary));
});

test('a fault of a layout is told as where there are no threads', async () => {
  const threads = textThreads(() => bundler('.cache'), two);
  // A page without a view, as only a fault of ours could make it.
  const pages = Array.from({ length: 4 }, () => ({ page: { library: defaultLibrary, view: { kind: 'family' } } as never }));
  await expect(threads.make(pages, () => undefined)).rejects.toThrow(TypeError);
  await threads.close();
});
