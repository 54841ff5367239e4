/** Zips of strangers, as the form and the preview read them: a pack or nothing, never an exception, and no more memory than a pack may take. */
import { zipSync, type Zippable } from 'fflate';
import { afterAll, expect, test } from 'vitest';
import { packZip, packZipLimits, readPackZip } from '../../src/outputs/pack-zip.ts';
import { tries } from '../runs.ts';
import { sound } from './hostile-case.ts';
import { measured } from './peak.ts';
import { record } from './record.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const pack = bytesOf(sound);
const picture = new Uint8Array(2000).fill(7);
const good = packZip({ slug: 'hen', name: 'pack.md', text: sound, pictures: { 'hen.png': picture } });
const zip = (files: Zippable): Uint8Array => zipSync(files);

/** Where the directory at a zip's end begins, and where each of its entries does. Source: the layout in APPNOTE.TXT 6.3.10, 4.3.12 and 4.3.16. */
function entriesOf(bytes: Uint8Array): readonly number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.length - 22;
  const found: number[] = [];
  let at = view.getUint32(end + 16, true);
  for (let count = view.getUint16(end + 10, true); count > 0; count--) {
    found.push(at);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return found;
}

/** A zip with a number in its directory exchanged: at so many bytes behind the beginning of the first entry. */
function with32(bytes: Uint8Array, entry: number, behind: number, value: number): Uint8Array {
  const copy = bytes.slice();
  new DataView(copy.buffer).setUint32((entriesOf(copy)[entry] ?? 0) + behind, value, true);
  return copy;
}
const with16 = (bytes: Uint8Array, entry: number, behind: number, value: number): Uint8Array => {
  const copy = bytes.slice();
  new DataView(copy.buffer).setUint16((entriesOf(copy)[entry] ?? 0) + behind, value, true);
  return copy;
};

/** One packed file that so many entries of the directory name, each as another file: what is a kilobyte here is gigabytes when unpacked. */
function overlapping(count: number, size: number): Uint8Array {
  const one = zip({ 'pictures/0000.png': new Uint8Array(size), 'pack.md': pack });
  const [first = 0, second = 0] = entriesOf(one);
  const entry = one.slice(first, second);
  const directory: number[] = [];
  for (let index = 0; index < count; index++) {
    entry.set(bytesOf(`pictures/${String(index).padStart(4, '0')}.png`), 46);
    directory.push(...entry);
  }
  directory.push(...one.slice(second, one.length - 22));
  const end = one.slice(one.length - 22);
  const view = new DataView(end.buffer);
  view.setUint16(8, count + 1, true);
  view.setUint16(10, count + 1, true);
  view.setUint32(12, directory.length, true);
  return new Uint8Array([...one.slice(0, first), ...directory, ...end]);
}

const whole = { slug: 'hen', name: 'pack.md', pictures: ['hen.png'] };
const none = undefined;
/** What is tried, the zip, and what comes of it: nothing, or a pack with these pictures. */
const cases: readonly (readonly [string, () => Uint8Array, typeof whole | undefined])[] = [
  ['a good one', () => good, whole],
  ['nothing at all', () => new Uint8Array(), none],
  ['a text', () => pack, none],
  ['a picture', () => picture, none],
  ['a zip of nothing', () => zip({}), none],
  ['a zip without a pack', () => zip({ 'hen/notes.md': pack }), none],
  ...['../pack.md', 'hen/../../pack.md', '/pack.md', '/etc/pack.md', 'c:/pack.md', 'c:\\pack.md', 'hen\\..\\pack.md', 'hen/\u0000/pack.md', 'hen\n/pack.md'].map(
    (path) => [`a way out, ${JSON.stringify(path)}`, () => zip({ [path]: pack }), none] as const,
  ),
  ['a way out of a file that nobody wants', () => zip({ 'hen/pack.md': pack, '../../.profile': pack }), none],
  ['a pack that is a picture', () => zip({ 'hen/pack.md': picture }), none],
  ['a pack with an empty name before it', () => zip({ 'pack.md': pack }), { slug: '', name: 'pack.md', pictures: [] }],
  ['a pack that is no UTF-8', () => zip({ 'hen/pack.md': new Uint8Array([0x2d, 0x2d, 0x2d, 0x0a, 0xff, 0xfe]) }), none],
  ['a pack of 512,001 bytes', () => zip({ 'hen/pack.md': bytesOf(`---\n${'a'.repeat(511_997)}`) }), none],
  ['names that objects have', () => zip({ 'hen/pack.md': pack, 'hen/pictures/__proto__.png': picture, '__proto__/pictures/a.png': picture }), { ...whole, pictures: ['__proto__.png'] }],
  ['a pack in a folder that objects have', () => zip({ '__proto__/pack.md': pack }), { slug: '__proto__', name: 'pack.md', pictures: [] }],
  ['a link, by its marks', () => zip({ 'hen/pack.md': [pack, { os: 3, attrs: 0o120777 << 16 }] }), { ...whole, pictures: [] }],
  ['a picture of 21 megabytes of nothing', () => zip({ 'hen/pack.md': pack, 'hen/pictures/a.png': new Uint8Array(21_000_000) }), none],
  ['four pictures of 19 megabytes of nothing', () => zip({ 'hen/pack.md': pack, ...Object.fromEntries([1, 2, 3, 4].map((n) => [`hen/pictures/${String(n)}.png`, new Uint8Array(19_000_000)])) }), none],
  ['401 files', () => zip({ 'hen/pack.md': pack, ...Object.fromEntries(Array.from({ length: 400 }, (_, n) => [`hen/other/${String(n)}.txt`, bytesOf('a')])) }), none],
  ['20,000 files', () => zip({ ...Object.fromEntries(Array.from({ length: 20_000 }, (_, n) => [`hen/${String(n)}`, new Uint8Array()])), 'hen/pack.md': pack }), none],
  ['300 names for one picture of ten megabytes', () => overlapping(300, 10_000_000), none],
  ['three names for one small picture', () => overlapping(3, 100), { slug: '', name: 'pack.md', pictures: ['0000.png', '0001.png', '0002.png'] }],
  ['a head that says less than comes out', () => with32(zip({ 'hen/pictures/a.png': new Uint8Array(50_000_000), 'hen/pack.md': pack }), 0, 24, 10), { ...whole, pictures: ['a.png'] }],
  ['a head that says four gigabytes', () => with32(good, 0, 24, 0xffff_fff0), none],
  ['a head that says that more is packed than there is: what is there is read', () => with32(good, 0, 20, 0x7fff_ffff), whole],
  ['a head that leads behind the end', () => with32(good, 0, 42, 0x7fff_ffff), none],
  ['a way of packing that there is not', () => with16(good, 0, 10, 99), none],
  ['a directory that is longer than it says', () => with16(good, 0, 28, 0xffff), none],
  ['a remark behind it', () => new Uint8Array([...good, ...new Uint8Array(70_000)]), none],
];

const faulty = new Set<string>();
let spent = 0;
let peak = 0;
afterAll(() => record({ class: 'zips of strangers', cases: cases.length, held: cases.length - faulty.size, ms: spent, peakMB: peak }));

test.each(cases)('%s', async (name, make, expected) => {
  const bytes = make();
  const before = process.memoryUsage().rss / 1e6;
  faulty.add(name);
  const { value, ms, peakMB } = await measured(() => readPackZip(bytes));
  spent += ms;
  peak = Math.max(peak, peakMB);
  expect(value && { slug: value.slug, name: value.name, pictures: Object.keys(value.pictures).sort() }).toEqual(expected);
  if (value) expect(value.text).toBe(sound);
  // As much as all that is wanted may be, once packed and once unpacked, with room for the collector.
  expect(peakMB - before).toBeLessThan((4 * packZipLimits.all) / 1e6);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  faulty.delete(name);
});

test('a good one that is cut, or in which bytes are changed, is a pack or nothing', () => {
  let seed = 20_261_128;
  const random = (below: number): number => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) & 0x7fff_ffff;
    return seed % below;
  };
  const came = { packs: 0, nothing: 0 };
  const cuts = Array.from({ length: tries(150) }, () => good.slice(0, random(good.length)));
  const changed = Array.from({ length: tries(600) }, () => {
    const copy = good.slice();
    // The directory is where most can be broken.
    for (let times = 1 + random(4); times > 0; times--) copy[random(2) === 0 ? random(copy.length) : copy.length - 1 - random(200)] = random(256);
    return copy;
  });
  for (const bytes of [...cuts, ...changed]) {
    const found = readPackZip(bytes);
    if (found) came.packs += 1;
    else came.nothing += 1;
    const size = Object.values(found?.pictures ?? {}).reduce((sum, each) => sum + each.length, 0);
    expect(size).toBeLessThanOrEqual(packZipLimits.all);
  }
  expect(cuts.every((bytes) => readPackZip(bytes) === undefined)).toBe(true);
  expect(Math.min(came.packs, came.nothing)).toBeGreaterThan(50);
});
