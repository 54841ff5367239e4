/** The form's pack goes into the content folder by the preview on the own machine, and nothing else does. */
import { spawn } from 'node:child_process';
import { lstat, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { savePack } from '../../src/build/save-pack.ts';
import { serve, type Serving } from '../../src/build/serve.ts';
import { packZip, packZipLimits, readPackZip } from '../../src/outputs/pack-zip.ts';
import { zipOf } from '../../src/outputs/zip.ts';
import { eachCase, type Faults } from '../faults/each-case.ts';
import { cases, spread } from '../faults/moments.ts';
import { filesIn, smallLibrary, soundPack, type SmallLibrary } from './small-library.ts';

const text = await soundPack();
const zip = packZip({ slug: 'wheelbarrow', name: 'pack.md', text, pictures: { 'hill.jpg': Buffer.from('a picture') } });
let library: SmallLibrary;
let server: Serving;
let port: number;
let token: string;
beforeAll(async () => {
  library = await smallLibrary({ 'packs/there/pack.md': 'as it was', 'outside.txt': 'outside' });
  await mkdir(join(library.site, 'make'), { recursive: true });
  await writeFile(join(library.site, 'make/index.html'), '<html><head></head></html>');
  await writeFile(join(library.site, 'index.html'), '<html><head></head></html>');
  server = await serve(library.site, 0, library.content);
  port = Number(new URL(server.address).port);
  token = /bookfellow-save" content="(\w+)"/.exec((await send('GET', '/make/')).body)?.[1] ?? '';
});
afterAll(() => server.close());

interface Answer {
  readonly status: number;
  readonly body: string;
}
/** A request as any program could send it, with every head its own. */
function send(method: string, path: string, headers: Readonly<Record<string, string>> = {}, body?: Uint8Array): Promise<Answer> {
  return new Promise((done, failed) => {
    const asked = request({ host: '127.0.0.1', port, method, path, headers: { host: `localhost:${port}`, ...headers } }, (answer) => {
      let said = '';
      answer.setEncoding('utf8').on('data', (part: string) => (said += part));
      answer.on('end', () => done({ status: answer.statusCode ?? 0, body: said }));
      answer.on('error', failed);
    });
    asked.on('error', failed);
    asked.end(body);
  });
}
const heads = () => ({ origin: `http://localhost:${port}`, 'content-type': 'application/zip', 'x-bookfellow-save': token });
const refusedFor = async (headers: Readonly<Record<string, string>>, body: Uint8Array = zip, method = 'POST') => {
  const { body: said } = await send(method, '/-/save', { ...heads(), ...headers }, body);
  const answer = JSON.parse(said) as { refused?: string; why?: string };
  expect(answer.why, 'a sentence comes with it').toMatch(/^[A-Z].*\.$/);
  return answer.refused;
};

test('a pack from the form’s own page is written as it is, and what was there before is kept beside it', async () => {
  expect(token).toHaveLength(48);
  expect((await send('POST', '/-/save', heads(), zip)).body).toBe('{"saved":"packs/wheelbarrow/pack.md"}');
  expect(await readFile(join(library.content, 'packs/wheelbarrow/pack.md'), 'utf8')).toBe(text);
  expect(await readFile(join(library.content, 'packs/wheelbarrow/pictures/hill.jpg'), 'utf8')).toBe('a picture');
  const changed = packZip({ slug: 'wheelbarrow', name: 'pack.md', text: text.replace('Odile', 'Ottla'), pictures: {} });
  expect((await send('POST', '/-/save', heads(), changed)).status).toBe(200);
  expect(await readFile(join(library.content, 'packs/wheelbarrow/pack.md'), 'utf8')).toContain('Ottla');
  const kept = await readdir(join(library.content, 'packs/wheelbarrow/private/earlier'));
  expect(kept).toHaveLength(1);
  expect(await readFile(join(library.content, 'packs/wheelbarrow/private/earlier', kept[0] ?? ''), 'utf8')).toBe(text);
});

describe('is refused with a sentence, and nothing is written:', () => {
  test.each<readonly [string, string, Readonly<Record<string, string>>]>([
    ['another origin', 'origin', { origin: 'https://elsewhere.example' }],
    ['an origin of another port', 'origin', { origin: 'http://localhost:1' }],
    ['an origin that is none', 'origin', { origin: 'null' }],
    ['another site, as the browser says', 'origin', { 'sec-fetch-site': 'cross-site' }],
    ['a name elsewhere that leads to this machine', 'host', { host: 'rebound.example', origin: 'http://rebound.example' }],
    ['no token', 'token', { 'x-bookfellow-save': '' }],
    ['another token of the same length', 'token', { 'x-bookfellow-save': '0'.repeat(48) }],
    ['a form of a page, which browsers send without asking', 'type', { 'content-type': 'text/plain' }],
  ])('%s', async (_, refused, headers) => {
    const before = await filesIn(library.content);
    expect(await refusedFor(headers)).toBe(refused);
    expect(await filesIn(library.content)).toEqual(before);
  });
  test('a request without an origin', async () => {
    const { 'content-type': type, 'x-bookfellow-save': mark } = heads();
    expect((await send('POST', '/-/save', { 'content-type': type, 'x-bookfellow-save': mark }, zip)).status).toBe(403);
  });
  test('another method', async () => {
    expect(await refusedFor({}, undefined, 'PUT')).toBe('method');
    expect((await send('GET', '/-/save', heads())).status).toBe(405);
  });
  test('a huge body, by what its head says and by what comes', async () => {
    expect(await refusedFor({ 'content-length': String(packZipLimits.all * 2) }, new Uint8Array(10)).catch(() => 'cut off')).toMatch(/too big|cut off/);
    const much = Buffer.alloc(packZipLimits.all + 6_000_000);
    const cut = await send('POST', '/-/save', { ...heads(), 'transfer-encoding': 'chunked' }, much).then(
      ({ status }) => status,
      () => 413,
    );
    expect(cut).toBe(413);
  });
  test('what is no zip, a zip without a pack, one that leads out of its folder, and one that swells', async () => {
    const pack = Buffer.from(text);
    for (const bytes of [
      Buffer.from('no zip'),
      zipOf({ 'a/readme.txt': pack }),
      zipOf({ '../out/pack.md': pack }),
      zipOf({ '/root/pack.md': pack }),
      zipOf({ 'a\\..\\..\\pack.md': pack }),
      zipOf({ 'a/pack.md': pack, 'a/pictures/../../../x.png': pack }),
      zipOf({ 'a/pack.md': pack, 'a/pictures/bomb.png': new Uint8Array(packZipLimits.each + 1) }),
      zipOf({ 'a/pack.md': Buffer.from(`---\n${'#'.repeat(600_000)}\n---\n`) }),
    ])
      expect(await refusedFor({}, bytes)).toBe('not a pack');
  });
  test.each(['', '.', '..', '../up', 'a/b', 'A', 'con', 'ñu', 'a'.repeat(300), '%2e%2e', 'a b', '-', 'a\0b'])('a folder named %j', async (slug) => {
    expect(await savePack(library.content, { slug, name: 'pack.md', text, pictures: {} })).toEqual({ refused: 'folder name' });
  });
  test.each(['pack.MD', 'other.md', '../pack.md', 'pack.es.md/x'])('a file named %j', async (name) => {
    expect(await savePack(library.content, { slug: 'a', name, text, pictures: {} })).toEqual({ refused: 'file name' });
  });
  test.each(['../up.png', '.hidden.png', 'a.svg', 'a/b.png', 'C:a.png', 'a.png\0.svg'])('a picture named %j', async (picture) => {
    expect(await savePack(library.content, { slug: 'a', name: 'pack.md', text, pictures: { [picture]: Buffer.from('x') } })).toEqual({ refused: 'file name' });
  });
  test('a link on the way, wherever it stands, and where it leads stays as it is', async () => {
    const { content } = library;
    const there = join(content, 'packs/there');
    const save = (slug: string) => savePack(content, { slug, name: 'pack.md', text, pictures: { 'a.png': Buffer.from('x') } });
    await symlink(there, join(content, 'packs/linked'));
    expect(await save('linked')).toEqual({ refused: 'link' });
    for (const [slug, path] of [
      ['one', 'pack.md'],
      ['two', 'pictures'],
      ['three', 'private'],
      ['four', 'pictures/a.png'],
      ['five', 'private/earlier'],
    ] as const) {
      await mkdir(join(content, 'packs', slug, ...path.split('/').slice(0, -1)), { recursive: true });
      await symlink(path.endsWith('.md') || path.endsWith('.png') ? join(content, 'outside.txt') : there, join(content, 'packs', slug, path));
      expect(await save(slug), path).toEqual({ refused: 'link' });
    }
    expect(await readFile(join(content, 'outside.txt'), 'utf8')).toBe('outside');
    expect(await filesIn(there)).toEqual(['pack.md']);
    expect((await lstat(join(content, 'packs/one/pack.md'))).isSymbolicLink()).toBe(true);
  });
});

test('only the form’s page has the token', async () => {
  expect((await send('GET', '/')).body).not.toContain(token);
  expect((await send('GET', '/make/')).body).toContain(token);
});

test('a zip gives back what went into it, the same bytes each time', () => {
  const folder = { slug: 'hat', name: 'pack.es.md', text, pictures: { 'a b.png': new Uint8Array([1, 2, 3]) } };
  expect(readPackZip(packZip(folder))).toEqual(folder);
  expect(packZip(folder)).toEqual(packZip(folder));
});

test('a kill in the middle loses neither version', async () => {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const { content } = await smallLibrary({ 'packs/killed/pack.md': '---\n# version 0\n---\n' });
  const script = `
    import { savePack } from ${JSON.stringify(join(root, 'src/build/save-pack.ts'))};
    const filling = '#'.repeat(400_000);
    for (let version = Number(process.argv.at(-1)), first = true; ; version++, first = false) {
      await savePack(${JSON.stringify(content)}, { slug: 'killed', name: 'pack.md', text: \`---\\n# version \${version}\\n\${filling}\\n---\\n\`, pictures: {} });
      if (first) process.stdout.write('saved');
    }`;
  const versionOf = (whole: string): number => Number(/^---\n# version (\d+)\n(?:#+\n)?---\n$/.exec(whole)?.[1] ?? NaN);
  let last = 0;
  // A save takes some milliseconds, so a few dozen of them hold every moment of one.
  const delays = cases(0, 1) === 1 ? spread(100, 60, 7) : [3, 11, 17, 29];
  const faults = await eachCase('the form’s save killed at a time', delays, async (delay): Promise<Faults> => {
    const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script, String(last + 1)], { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
    await new Promise((done) => child.stdout.once('data', done));
    await new Promise((done) => setTimeout(done, delay));
    child.kill('SIGKILL');
    await new Promise((done) => child.once('close', done));
    const before = last;
    const now = versionOf(await readFile(join(content, 'packs/killed/pack.md'), 'utf8'));
    const earlier = join(content, 'packs/killed/private/earlier');
    const copies = (await readdir(earlier).catch(() => [])).filter((name) => !name.startsWith('.'));
    const kept = await Promise.all(copies.map(async (name) => versionOf(await readFile(join(earlier, name), 'utf8'))));
    if (!Number.isNaN(now)) last = now;
    return [
      ...(now >= before ? [] : [`after ${delay} ms: the file is ${now}, and was ${before}`]),
      ...(kept.some(Number.isNaN) ? [`after ${delay} ms: a copy is not whole`] : []),
      ...(now === 0 || kept.includes(now - 1) ? [] : [`after ${delay} ms: the one before it is not kept`]),
    ];
  });
  expect(faults).toEqual([]);
  expect(last, 'something was saved before the kills').toBeGreaterThan(0);
});
