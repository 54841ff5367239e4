/** No picture is published as it came: metadata goes, it stands upright, and what is no picture is told. */
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { Code } from '../../src/core/finding.ts';
import { buildSmall, filesIn, smallLibrary, soundPack } from './small-library.ts';

/** A picture of 60 x 40 pixels, its left half red and its right half blue, or the same in another kind of file. */
function halves() {
  const blue = sharp({ create: { width: 30, height: 40, channels: 3, background: '#0000ff' } }).png();
  return blue.toBuffer().then((right) => sharp({ create: { width: 60, height: 40, channels: 3, background: '#ff0000' } }).composite([{ input: right, left: 30, top: 0 }]));
}

async function builtWith(name: string, bytes: Buffer) {
  const pictures = `pictures:\n  - file: ${name}\n    alt: Two halves in two colours.\nhome:\n`;
  const library = await smallLibrary({ 'packs/hill/pack.md': await soundPack(['home:\n', pictures]), [`packs/hill/pictures/${name}`]: bytes });
  const built = await buildSmall(library);
  const files = (await filesIn(library.site)).filter((file) => /\.(?:jpg|webp|png|svg)$/.test(file));
  return { built, files: files.map((file) => join(library.site, file)), names: files };
}

describe('a photograph', () => {
  test('loses its camera, its place and its thumbnail', async () => {
    const photo = await (
      await halves()
    )
      .withExif({ IFD0: { Make: 'canary-camera', Copyright: 'canary-person' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
      .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="canary-xmp"/></rdf:RDF></x:xmpmeta>')
      .jpeg()
      .toBuffer();
    expect(photo.includes('canary-camera') && photo.includes('canary-xmp')).toBe(true);
    const { files, built } = await builtWith('photo.jpg', photo);
    expect(built.published).toBe(1);
    expect(files.length).toBeGreaterThanOrEqual(2);
    for (const file of files) {
      const bytes = await readFile(file);
      const { exif, xmp, icc, iptc } = await sharp(bytes).metadata();
      expect([exif, xmp, icc, iptc]).toEqual([undefined, undefined, undefined, undefined]);
      expect(bytes.includes('canary')).toBe(false);
    }
  });

  test.each([
    [1, 60, 40, 'red', 'blue'],
    [3, 60, 40, 'blue', 'red'],
    // A quarter turn to the right: what was left is at the top. Source: the orientation tag of Exif 2.3.
    [6, 40, 60, 'red', 'blue'],
    [8, 40, 60, 'blue', 'red'],
  ] as const)('with orientation %i stands upright, %i x %i, %s first', async (orientation, width, height, first, last) => {
    const photo = await (await halves()).withMetadata({ orientation }).jpeg({ quality: 100 }).toBuffer();
    const { files } = await builtWith('photo.jpg', photo);
    for (const file of files) {
      const { data, info } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
      expect([info.width, info.height]).toEqual([width, height]);
      const colourAt = (x: number, y: number) => ((data[(y * info.width + x) * info.channels] ?? 0) > 128 ? 'red' : 'blue');
      expect([colourAt(3, 3), colourAt(info.width - 4, info.height - 4)]).toEqual([first, last]);
    }
  });

  test('is made no larger than it is', async () => {
    const { names } = await builtWith('photo.png', await (await halves()).png().toBuffer());
    expect(names.map((name) => name.replace(/-[0-9a-f]{8}-/, '-HASH-'))).toEqual(['packs/hill/pictures/photo-HASH-60.jpg', 'packs/hill/pictures/photo-HASH-60.webp']);
  });
});

describe('what is no picture', () => {
  const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>hostile()</script></svg>');
  const cases: readonly (readonly [string, () => Buffer | Promise<Buffer>, Code])[] = [
    ['an SVG that is called PNG', () => svg, 'picture/format'],
    ['a text that is called PNG', () => Buffer.from('not a picture'), 'picture/format'],
    ['a PNG of which only the beginning is there', async () => (await (await halves()).png().toBuffer()).subarray(0, 60), 'picture/unreadable'],
    ['an empty file', () => Buffer.alloc(0), 'picture/unreadable'],
    ['a PNG that says it has 50,000 x 50,000 pixels', () => headerOnly(50_000, 50_000), 'picture/too-large'],
    ['a PNG that says it is 1 pixel wide and 60,000 high', () => headerOnly(1, 60_000), 'picture/too-large'],
  ];
  test.each(cases)('%s is told and not published', async (_, bytes, code) => {
    const { built, names } = await builtWith('harbour.png', await bytes());
    expect(built.findings.map((found) => [found.place.file, found.level, found.code])).toEqual([['packs/hill/pack.md', 'stop', code]]);
    expect([built.published, names]).toEqual([0, []]);
  });
});

test('a picture that no field names is not published', async () => {
  const bytes = await (await halves()).png().toBuffer();
  const library = await smallLibrary({ 'packs/hill/pack.md': await soundPack(), 'packs/hill/pictures/spare.png': bytes });
  const built = await buildSmall(library);
  expect(built.findings.map((found) => [found.level, found.code])).toEqual([['note', 'picture/not-named']]);
  expect((await filesIn(library.site)).filter((file) => file.includes('spare'))).toEqual([]);
  expect((await stat(join(library.site, 'packs/hill/index.html'))).size).toBeGreaterThan(0);
});

/** The first bytes of a PNG with sizes in its header and a little data that is not enough for them. */
function headerOnly(width: number, height: number): Buffer {
  const header = Buffer.alloc(25);
  header.writeUInt32BE(13, 0);
  header.write('IHDR', 4, 'latin1');
  header.writeUInt32BE(width, 8);
  header.writeUInt32BE(height, 12);
  header.set([8, 2, 0, 0, 0], 16);
  header.writeUInt32BE(crc32(header.subarray(4, 21)), 21);
  const data = Buffer.from([0, 0, 0, 0, 0x49, 0x44, 0x41, 0x54, 0x35, 0xaf, 0x06, 0x1e, 0, 0, 0, 0, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82]);
  return Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), header, data]);
}

/** The check sum that each chunk of a PNG ends with. Source: PNG specification, annex D. */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
